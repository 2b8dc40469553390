"""What a handout said stays until the teacher changes it; a fitted model put in force."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.fingering.build import piece
from workbench.language.message import message
from workbench.music.errors import BadInput
from workbench.store.grading import (
    apply_fit,
    fingering_of,
    grade_to_print,
    remember_printed,
    studio_model,
    undo_grade_fit,
)
from workbench.teaching.grading.grade import shipped_model
from workbench.teaching.lessons.lesson import Lesson


def test_a_printed_grade_outlives_another_model_until_it_is_forgotten(shelf):
    lesson = Lesson("one", "Tune", piece("C4:2 E4:2"), "ukulele")
    shelf.add(lesson)
    fingering = fingering_of(shelf, lesson)
    first = grade_to_print(shelf, lesson, fingering)
    remember_printed(shelf, "one", first)
    strict = replace(shipped_model(), name="strict", cuts=tuple(0.01 * k for k in range(1, 9)))
    apply_fit(shelf, strict)
    assert studio_model(shelf) == strict
    assert grade_to_print(shelf, lesson, fingering) == first
    remember_printed(shelf, "one", None)
    assert grade_to_print(shelf, lesson, fingering).model == "strict"
    told = replace(lesson, grade=3, grade_level="late")
    assert grade_to_print(shelf, told, fingering).words == message("grade {number}, late", number=3)
    assert undo_grade_fit(shelf) is None and studio_model(shelf) is None
    with pytest.raises(BadInput, match="no fit to grades"):
        undo_grade_fit(shelf)
