"""What a lesson is played on, and by whose hand."""

from __future__ import annotations

from workbench.arranging.ceiling import cut_off
from workbench.instrument.model import Hand, Instrument
from workbench.instrument.table import hand, instrument
from workbench.teaching.lessons.lesson import Lesson


def playing_of(lesson: Lesson) -> tuple[Instrument, Hand]:
    """The lesson's instrument with its capo, and its hand."""
    return instrument(lesson.instrument, lesson.capo), hand(lesson.hand)


def fingered_on(lesson: Lesson) -> tuple[Instrument, Hand]:
    """What the fingering is looked for on: the instrument up to the lesson's highest fret, or to
    what its pins and notes need above that; and the hand."""
    whole, player = playing_of(lesson)
    pinned = [(pin.note, pin.string) for pin in lesson.pins]
    fixed = (*pinned, *((mark.note, mark.string) for mark in lesson.piece.written))
    return cut_off(whole, lesson.piece, lesson.top_fret, fixed), player
