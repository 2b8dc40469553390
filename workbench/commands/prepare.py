"""From a source to what the page and the sound are made of: a lesson and its fingering."""

from __future__ import annotations

import argparse
import re
from typing import TYPE_CHECKING

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
from workbench.instrument.table import hand as find_hand
from workbench.instrument.table import instrument as find_instrument
from workbench.teaching.lessons.lesson import Lesson

if TYPE_CHECKING:
    from workbench.instrument.model import Hand, Instrument


def lesson_of(options: argparse.Namespace, source: Asked) -> Lesson:
    """The source's own lesson as it stands, or one made of its piece by the options.

    A lesson moved to another key or instrument becomes a new one without notes and pins,
    for these speak of the old fingering.
    """
    if source.lesson is not None and not _moved(options, source.lesson):
        return source.lesson
    instrument, hand = player(options, source.lesson)
    placed = arranged(options, source, instrument, hand)
    piece, wanted = placed.piece, wishes(options, source.lesson)
    held = printed(options, piece, source.lesson, instrument, hand)
    return Lesson(
        id=re.sub(r"\W+", "-", piece.title.lower()).strip("-") or "lesson",
        title=piece.title,
        piece=piece,
        instrument=instrument.id,
        capo=instrument.capo,
        hand=hand.name,
        key=placed.key,
        transposition=placed.transposition,
        settings=settings(options, source.lesson, instrument),
        pins=pins(options, piece, None, held),
        changes=tuple(m.reason for m in held.left_out),
        arranged=placed.changes,
        top_fret=wanted.top_fret,
        strict=wanted.strict,
        tune_part=wanted.tune_part,
        bass_part=wanted.bass_part,
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


def playing_of(lesson: Lesson) -> tuple[Instrument, Hand]:
    """The lesson's instrument with its capo, and its hand."""
    return find_instrument(lesson.instrument, lesson.capo), find_hand(lesson.hand)


def fingering_of(lesson: Lesson) -> Fingering:
    """The lesson's fingering, solved around its pins."""
    from workbench.fingering.engine import solve

    instrument, hand = playing_of(lesson)
    with Meter("Fingering") as meter:
        return solve(
            lesson.piece,
            instrument,
            hand,
            settings=lesson.settings,
            pins=lesson.pins,
            progress=meter,
        )
