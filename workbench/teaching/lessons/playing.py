"""What a lesson is played on, and by whose hand."""

from __future__ import annotations

from workbench.instrument.model import Hand, Instrument
from workbench.instrument.table import hand, instrument
from workbench.teaching.lessons.lesson import Lesson


def playing_of(lesson: Lesson) -> tuple[Instrument, Hand]:
    """The lesson's instrument with its capo, and its hand."""
    return instrument(lesson.instrument, lesson.capo), hand(lesson.hand)
