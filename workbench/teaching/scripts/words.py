"""What the program itself would say in a script: opening, bars, closing."""

from __future__ import annotations

from collections.abc import Sequence

from workbench.language.names import key_words, the_bar
from workbench.language.speech import count, say
from workbench.music.model import Piece
from workbench.music.order.form import has_form
from workbench.music.telling.form import form_in_words
from workbench.teaching.bars.strokes import as_first_word
from workbench.teaching.lessons.lesson import BarNote, Lesson
from workbench.teaching.scripts.telling import Telling, base
from workbench.teaching.techniques.catalogue import technique
from workbench.teaching.techniques.news import Move

NAMED = 3  # techniques named again at the end


def opening_words(lesson: Lesson, marked: Piece) -> str:
    """Title, composer and key, and the form of the piece (``marked`` with sections)."""
    key = key_words(lesson.key or marked.bars[0].key.name)
    if marked.composer:
        said = [
            say(
                "{title} by {composer}, in {key}.",
                title=lesson.title,
                composer=marked.composer,
                key=key,
            )
        ]
    else:
        said = [say("{title}, in {key}.", title=lesson.title, key=key)]
    if has_form(marked):
        said.append(say("The form: {form}", form=form_in_words(marked)))
    return " ".join(said)


def closing_words(lesson: Lesson, taught: Sequence[Move]) -> str:
    """What was learned, and how to go on."""
    names = list(
        dict.fromkeys(say(technique(base(m)).name) for m in taught if m.kind == "technique")
    )
    said = [say("That was {title}.", title=lesson.title)]
    if names:
        more = len(names) - NAMED
        listed = ", ".join(names[:NAMED])
        if more > 0:
            listed = count(more, "{names} and {n} more", "{names} and {n} more", names=listed)
        said.append(say("New in it: {names}.", names=listed))
    said.append(say("Now play it through once, slowly, before anything gets faster."))
    return " ".join(said)


def at_bar(
    piece: Piece,
    bar: int,
    as_bar: int | None,
    telling: Telling,
    notes: Sequence[BarNote],
) -> str:
    """What is said at a bar: the teacher's own words first, then what the program has to add.
    Empty where there is nothing to say but how the bar relates to earlier ones (``as_bar``)."""
    own = [_sentence(n.text) for n in notes]
    added = []
    if len(telling.positions) == 1:
        place = say("position {position}", position=telling.positions[0])
        added.append(say("New here: {what}.", what=place))
    elif telling.positions:
        *most, last = telling.positions
        added.append(say("New here: positions {most} and {last}.", most=", ".join(most), last=last))
    for move in telling.new:
        added += [say("New here: {what}.", what=move.words), say(technique(base(move)).asks)]
    for move in telling.earlier:
        added += [say("Now to this: {what}.", what=move.words), say(technique(base(move)).asks)]
    added += [say("Another pattern: {what}.", what=move.words) for move in telling.patterns]
    if telling.also:
        names = ", ".join(move.words for move in telling.also)
        added.append(say("Also in this bar: {names}.", names=names))
    if not own and not added:
        return ""
    parts = [say("{bar}.", bar=as_first_word(the_bar(piece.bars[bar].number))), *own]
    if as_bar == bar:
        parts.append(say("It is played again."))
    elif as_bar is not None:
        parts.append(say("It is as {before}.", before=the_bar(piece.bars[as_bar].number)))
    return " ".join([*parts, *added])


def _sentence(text: str) -> str:
    text = text.strip()
    ended = text.rstrip("*")
    return text if ended.endswith((".", "!", "?", ":", "…")) or not text else text + "."
