"""A choice made in one bar, for all bars with the same music."""

from __future__ import annotations

from dataclasses import replace

from workbench.fingering.types import Pin
from workbench.music.model import Bar, Note
from workbench.teaching.bars.strokes import written_as
from workbench.teaching.lessons.lesson import Lesson


def bars_to_match(lesson: Lesson, bar: int) -> tuple[int, ...]:
    """Written bars with the same music as ``bar`` that are not held as it is; none where
    nothing is pinned in it."""
    held = {pin.note: replace(pin, note="") for pin in lesson.pins}
    wanted = _pins_of(held, lesson.piece.bars[bar])
    if not any(wanted):
        return ()
    as_ = written_as(lesson.piece)
    return tuple(
        other.index
        for other in lesson.piece.bars
        if other.index != bar and as_[other.index] == as_[bar] and _pins_of(held, other) != wanted
    )


def match_bars(lesson: Lesson, bar: int, others: tuple[int, ...]) -> Lesson:
    """The lesson with the pins of ``bar`` in other bars of the same music too."""
    source = [n.id for n in _in_order(lesson.piece.bars[bar])]
    held = {pin.note: pin for pin in lesson.pins}
    for other in others:
        for note, of in zip(_in_order(lesson.piece.bars[other]), source, strict=True):
            held.pop(note.id, None)
            if of in held:
                held[note.id] = replace(held[of], note=note.id)
    return replace(lesson, pins=tuple(held.values()))


def _in_order(bar: Bar) -> list[Note]:
    return sorted(bar.notes, key=lambda n: (n.onset, n.duration, n.midi, n.voice, n.grace))


def _pins_of(held: dict[str, Pin], bar: Bar) -> list[Pin | None]:
    """The pins of a bar's notes in order, whichever notes they are."""
    if not any(n.id in held for n in bar.notes):
        return [None] * len(bar.notes)
    return [held.get(n.id) for n in _in_order(bar)]
