"""What the program itself would say in a script: opening, bars, closing."""

from __future__ import annotations

from collections.abc import Sequence

from workbench.language.message import (
    KeyName,
    Listed,
    Message,
    Opening,
    Text,
    counted,
    in_a_row,
    message,
)
from workbench.music.bar_names import the_bar
from workbench.music.model import Piece
from workbench.music.order.form import has_form
from workbench.music.telling.form import ToldForm
from workbench.teaching.lessons.lesson import BarNote, Lesson
from workbench.teaching.scripts.telling import Telling, base
from workbench.teaching.techniques.catalogue import technique
from workbench.teaching.techniques.news import Move

NAMED = 3  # techniques named again at the end


def opening_words(lesson: Lesson, marked: Piece) -> Listed:
    """Title, composer and key, and the form of the piece (``marked`` with sections)."""
    key = KeyName(lesson.key or marked.bars[0].key.name)
    if marked.composer:
        said = [
            message(
                "{title} by {composer}, in {key}.",
                title=lesson.title,
                composer=marked.composer,
                key=key,
            )
        ]
    else:
        said = [message("{title}, in {key}.", title=lesson.title, key=key)]
    if has_form(marked):
        said.append(message("The form: {form}", form=ToldForm(marked)))
    return Listed(tuple(said))


def closing_words(lesson: Lesson, taught: Sequence[Move]) -> Listed:
    """What was learned, and how to go on."""
    names = list(
        dict.fromkeys(message(technique(base(m)).name) for m in taught if m.kind == "technique")
    )
    said = [message("That was {title}.", title=lesson.title)]
    if names:
        more = len(names) - NAMED
        listed: Text = in_a_row(names[:NAMED])
        if more > 0:
            listed = counted(more, "{names} and {n} more", "{names} and {n} more", names=listed)
        said.append(message("New in it: {names}.", names=listed))
    said.append(message("Now play it through once, slowly, before anything gets faster."))
    return Listed(tuple(said))


def at_bar(
    piece: Piece,
    bar: int,
    as_bar: int | None,
    telling: Telling,
    notes: Sequence[BarNote],
) -> Listed:
    """What is said at a bar: the teacher's own words first, then what the program has to add.
    Nothing where there is nothing to say but how the bar relates to earlier ones (``as_bar``)."""
    own = [_sentence(n.text) for n in notes]
    added: list[Message] = []
    if len(telling.positions) == 1:
        place = message("position {position}", position=telling.positions[0])
        added.append(message("New here: {what}.", what=place))
    elif telling.positions:
        *most, last = telling.positions
        added.append(
            message("New here: positions {most} and {last}.", most=", ".join(most), last=last)
        )
    for move in telling.new:
        added += [
            message("New here: {what}.", what=move.words),
            message(technique(base(move)).asks),
        ]
    for move in telling.earlier:
        added += [
            message("Now to this: {what}.", what=move.words),
            message(technique(base(move)).asks),
        ]
    added += [message("Another pattern: {what}.", what=move.words) for move in telling.patterns]
    if telling.also:
        names = in_a_row(move.words for move in telling.also)
        added.append(message("Also in this bar: {names}.", names=names))
    if not own and not added:
        return Listed(())
    parts: list[Text] = [message("{bar}.", bar=Opening(the_bar(piece.bars[bar].number))), *own]
    if as_bar == bar:
        parts.append(message("It is played again."))
    elif as_bar is not None:
        parts.append(message("It is as {before}.", before=the_bar(piece.bars[as_bar].number)))
    return Listed((*parts, *added))


def _sentence(text: str) -> str:
    text = text.strip()
    ended = text.rstrip("*")
    return text if ended.endswith((".", "!", "?", ":", "…")) or not text else text + "."
