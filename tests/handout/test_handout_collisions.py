"""No ink on ink: the shipped lessons as they are printed, checked by painted pixels."""

from __future__ import annotations

import numpy as np
import pytest

from tests.engraving.test_engrave_paint import ink, parts
from workbench.fingering.engine import solve
from workbench.handout.page import Handout, HandoutOptions
from workbench.instrument.table import hand, instrument
from workbench.teaching.demo import demo_lessons

LESSONS = demo_lessons()


@pytest.mark.parametrize("lesson", LESSONS, ids=[x.title for x in LESSONS])
def test_finger_marks_of_the_shipped_lessons_stand_free(lesson) -> None:
    player = instrument(lesson.instrument, lesson.capo)
    fingering = solve(lesson.piece, player, hand(lesson.hand), settings=lesson.settings,
                      pins=lesson.pins)
    handout = Handout(lesson, fingering, HandoutOptions())
    marks = 0
    for system in handout.systems():
        flat = system.flat
        bare, alone = parts(flat, ground="#ffffff")
        ground = ink(bare, flat.width, flat.height) > 100
        total = np.zeros(ground.shape, dtype=np.uint8)
        for name, root in alone.items():
            mark = ink(root, flat.width, flat.height) > 100
            assert mark.sum() > 10, f"{name} is not painted"
            assert not (mark & ground).any(), f"{name} lies on other signs"
            total += mark
            marks += 1
        assert total.max(initial=0) <= 1, "finger marks lie on one another"
    assert marks > 20
