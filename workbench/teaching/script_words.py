"""What the program itself would say in a script: opening, bars, closing."""

from __future__ import annotations

from collections.abc import Sequence

from workbench.language.names import key_words
from workbench.language.speech import count, say
from workbench.music.form import form_in_words
from workbench.music.model import Piece
from workbench.teaching.lesson import BarNote, Lesson
from workbench.teaching.seen import Move
from workbench.teaching.strokes import as_first_word, bar_name
from workbench.teaching.techniques import technique

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
    form = form_in_words(marked)
    if form:
        said.append(say("The form: {form}", form=form))
    return " ".join(said)


def closing_words(lesson: Lesson, taught: Sequence[Move]) -> str:
    """What was learned, and how to go on."""
    names = list(
        dict.fromkeys(
            say(technique(m.name.partition(": ")[0]).name) for m in taught if m.kind == "technique"
        )
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
    new: tuple[Move, ...],
    notes: Sequence[BarNote],
    explained: set[str],
) -> str:
    """What is said at a bar; a technique is explained once (``explained`` is kept up to
    date), its other kinds are named."""
    here = as_first_word(bar_name(piece.bars[bar]))
    if as_bar == bar:
        parts = [say("{bar} again.", bar=here)]
    elif as_bar is not None:
        parts = [say("{bar} is as in {before}.", bar=here, before=bar_name(piece.bars[as_bar]))]
    else:
        parts = [f"{here}."]
    for move in new:
        if move.kind == "technique":
            entry = technique(move.name.partition(": ")[0])
            parts.append(say("New here: {what}.", what=move.words))
            if entry.id not in explained:
                explained.add(entry.id)
                parts.append(say(entry.asks))
        elif move.kind == "position" and move.name != "I":
            parts.append(say("New here: {what}.", what=move.words))
    parts += [_sentence(n.text) for n in notes]
    return " ".join(parts)


def _sentence(text: str) -> str:
    text = text.strip()
    ended = text.rstrip("*")
    return text if ended.endswith((".", "!", "?", ":", "…")) or not text else text + "."
