"""From a source to what the page and the sound are made of: a lesson and its fingering."""

from __future__ import annotations

import argparse
import re
from dataclasses import replace

from workbench.commands.output import Meter
from workbench.commands.source import (
    Asked,
    arranged,
    pins,
    player,
    printed,
    settings,
    wishes,
)
from workbench.fingering.types import Fingering
from workbench.teaching.lessons.edits import new_lesson
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.lessons.playing import fingered_on


def lesson_of(options: argparse.Namespace, source: Asked) -> Lesson:
    """The source's own lesson as it stands, or one made of its piece by the options.

    A lesson moved to another key or instrument becomes a new one without notes and pins,
    for these speak of the old fingering.
    """
    if source.lesson is not None and not _moved(options, source.lesson):
        return source.lesson
    instrument, hand = player(options, source.lesson)
    placed = arranged(options, source, instrument, hand)
    piece = placed.piece
    held = printed(options, piece, source.lesson, instrument, hand)
    lesson = new_lesson(placed, instrument, hand.name, held, wishes(options, source.lesson))
    return replace(
        lesson,
        id=re.sub(r"\W+", "-", piece.title.lower()).strip("-") or "lesson",
        title=piece.title,
        settings=settings(options, source.lesson, instrument),
        pins=pins(options, piece, None, held),
    )


def _moved(options: argparse.Namespace, lesson: Lesson) -> bool:
    asked = (
        options.key, options.transpose, options.capo, options.level, options.style,
        options.top_fret, options.strict, options.campanella or None,
        options.tune_part, options.bass_part,
    )  # fmt: skip
    other = options.instrument not in (None, lesson.instrument) or options.hand not in (
        None,
        lesson.hand,
    )
    return other or bool(options.pin) or any(value is not None for value in asked)


def fingering_of(lesson: Lesson) -> Fingering:
    """The lesson's fingering, solved around its pins."""
    from workbench.fingering.engine import solve

    instrument, hand = fingered_on(lesson)
    with Meter("Fingering") as meter:
        return solve(
            lesson.piece,
            instrument,
            hand,
            settings=lesson.settings,
            pins=lesson.pins,
            progress=meter,
        )
