"""Printing a lesson of the shelf: what the shelf knows that a page wants, and the grade
that stays as it was printed."""

from __future__ import annotations

from collections.abc import Sequence

from workbench.fingering.types import Fingering
from workbench.handout.offered import OFFERED
from workbench.handout.parts.material import Extras
from workbench.handout.products import Prepared
from workbench.store.grading import grade_to_print, remember_printed, studio_model
from workbench.store.sheet_facts import known_grips, lesson_history
from workbench.store.shelf import Shelf
from workbench.teaching.lessons.lesson import Lesson


def extras_of(shelf: Shelf, lesson: Lesson, fingering: Fingering) -> Extras:
    """History, known grips and the grade to print: the one printed before, where there is
    one and the teacher has not said another; the model in force. Takes a while; for a job."""
    history, grips = lesson_history(shelf, lesson.id), known_grips(shelf, lesson)
    grade = grade_to_print(shelf, lesson, fingering) if lesson.piece.notes else None
    return Extras(history, grips, grade, studio_model(shelf))


def remember_grades(shelf: Shelf, what: str, printed: Sequence[Prepared]) -> None:
    """After ``what`` (of ``OFFERED``) has been made: its grades stand from now on."""
    if not OFFERED[what].grade:
        return
    for one in printed:
        if one.extras.grade is not None:
            remember_printed(shelf, one.lesson.id, one.extras.grade)
