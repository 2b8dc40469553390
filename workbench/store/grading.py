"""The teacher's grades on the shelf: a model fitted to them, and what has been printed."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from workbench.fingering.types import Fingering
from workbench.instrument.table import hand, instrument
from workbench.music.codec import from_dict, to_dict
from workbench.music.errors import BadInput
from workbench.store.location import store_place
from workbench.store.setting_names import GRADE_MODEL, GRADE_MODEL_BEFORE, PRINTED_GRADE
from workbench.store.shelf import Shelf
from workbench.teaching.grading.features import piece_features
from workbench.teaching.grading.grade import Grade, GradeModel, grade_piece, shown_grade
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.lessons.playing import fingered_on

if TYPE_CHECKING:
    from workbench.teaching.grading.calibrate import GradedPiece, Refit

NAME = "fitted to the teacher's grades"
Progress = Callable[[int, int], None]


@dataclass(frozen=True)
class GradedLesson:
    """A lesson of the shelf that carries the teacher's grade, with its features."""

    id: str
    piece: GradedPiece


def studio_model(shelf: Shelf) -> GradeModel | None:
    """The model fitted to the teacher's grades; None while the shipped one is in force,
    or where the kept one is of another edition of the program and cannot be read."""
    kept = shelf.setting(GRADE_MODEL)
    if kept is None:
        return None
    try:
        return from_dict(GradeModel, kept)
    except (BadInput, KeyError, TypeError, ValueError):
        return None


def model_in_force() -> GradeModel | None:
    """The fitted model of the user's own store; None where there is none, or no store
    yet. Makes no store."""
    place = store_place()
    if isinstance(place, Path) and not place.exists():
        return None
    with Shelf() as shelf:
        return studio_model(shelf)


def graded_lessons(shelf: Shelf, progress: Progress | None = None) -> tuple[GradedLesson, ...]:
    """All lessons (archived ones too) to which the teacher gave a grade, fingered where
    they are not yet. A lesson that cannot be read or has no notes teaches nothing."""
    rows = [row for row in shelf.lessons(archived=None) if row.grade is not None]
    out: list[GradedLesson] = []
    for at, row in enumerate(rows):
        if progress:
            progress(at, len(rows))
        try:
            lesson = shelf.load(row.id)
            features = piece_features(
                lesson.piece,
                fingering_of(shelf, lesson),
                instrument(lesson.instrument, lesson.capo),
                hand(lesson.hand),
            )
        except BadInput:
            continue
        if lesson.grade is None or not lesson.piece.notes:
            continue
        from workbench.teaching.grading.calibrate import GradedPiece

        piece = GradedPiece(lesson.title, features, lesson.grade, lesson.grade_level)
        out.append(GradedLesson(row.id, piece))
    return tuple(sorted(out, key=lambda g: (g.piece.grade, g.piece.title)))


def fingering_of(shelf: Shelf, lesson: Lesson) -> Fingering:
    """The kept fingering of a lesson, or one solved and kept now."""
    kept = shelf.cached_fingering(lesson)
    if kept is not None:
        return kept
    from workbench.fingering.engine import solve  # numpy: not before the window is shown

    made = solve(
        lesson.piece,
        *fingered_on(lesson),
        settings=lesson.settings,
        pins=lesson.pins,
    )
    shelf.put_fingering(lesson, made)
    return made


def fit_to_grades(shelf: Shelf, progress: Progress | None = None) -> Refit:
    """Fit the grade model to the teacher's grades. Nothing is put in force.

    Raises BadInput with fewer than five graded lessons, or all of one grade.
    """
    pieces = [g.piece for g in graded_lessons(shelf, progress)]
    from workbench.teaching.grading.calibrate import refit

    return refit(pieces, NAME, force=studio_model(shelf))


def apply_fit(shelf: Shelf, model: GradeModel) -> None:
    """Put a fitted model in force for every estimate from now on. No lesson changes, and
    no grade that is printed."""
    before = shelf.setting(GRADE_MODEL)
    shelf.set_settings({GRADE_MODEL: to_dict(model), GRADE_MODEL_BEFORE: {"model": before}})


def undo_grade_fit(shelf: Shelf) -> GradeModel | None:
    """Put the model from before the last fit in force again; gives it (None: as shipped).

    Raises BadInput where no fit was applied.
    """
    kept = shelf.setting(GRADE_MODEL_BEFORE)
    if kept is None:
        raise BadInput("There is no fit to grades to take back; 'fit --grades' makes one.")
    shelf.set_settings({GRADE_MODEL: kept["model"], GRADE_MODEL_BEFORE: None})
    return studio_model(shelf)


def can_undo(shelf: Shelf) -> bool:
    """Whether there is a fit to take back."""
    return shelf.setting(GRADE_MODEL_BEFORE) is not None


# What has been printed.


def printed_grade(shelf: Shelf, lesson_id: str) -> Grade | None:
    """The grade that stands on the last handout of a lesson; None where none does."""
    kept = shelf.setting(PRINTED_GRADE.format(lesson_id))
    if kept is None:
        return None
    try:
        return from_dict(Grade, kept)
    except (BadInput, KeyError, TypeError, ValueError):
        return None


def grade_to_print(shelf: Shelf, lesson: Lesson, fingering: Fingering) -> Grade:
    """The grade for a handout: the teacher's word, else what is already printed, else
    the estimate of today.

    Raises BadInput for a piece without notes.
    """
    printed = printed_grade(shelf, lesson.id)
    if lesson.grade is None and printed is not None:
        return printed
    estimate = grade_piece(
        lesson.piece,
        fingering,
        instrument(lesson.instrument, lesson.capo),
        hand(lesson.hand),
        studio_model(shelf),
    )
    return shown_grade(lesson, estimate)


def remember_printed(shelf: Shelf, lesson_id: str, grade: Grade | None) -> None:
    """Keep what a handout says, so that no later estimate changes it silently; None
    forgets it, and the next handout says what is estimated then."""
    shelf.set_setting(PRINTED_GRADE.format(lesson_id), None if grade is None else to_dict(grade))
