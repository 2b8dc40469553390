"""What the teaching views ask of the music, worked out behind the interface.

Everything here runs in the lane ``LANE`` alone, so that what is remembered needs no lock.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from workbench.fingering.types import Fingering
from workbench.music.errors import BadInput
from workbench.store.earlier import by_age, companions, earlier_lessons
from workbench.store.grading import studio_model
from workbench.store.rows import LessonRow
from workbench.store.shelf import Shelf
from workbench.teaching.assess import assess
from workbench.teaching.bars.measure import BarMeasure
from workbench.teaching.grading.features import Feature
from workbench.teaching.grading.grade import (
    THIRDS,
    Grade,
    GradeModel,
    HardBar,
    grade_piece,
    shown_grade,
)
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.lessons.playing import playing_of
from workbench.teaching.techniques.catalogue import Found, find_techniques
from workbench.teaching.techniques.news import MoveAt, Profile, moves_of, profile, tune_of
from workbench.ui.bench.jobs import Progress
from workbench.ui.bench.services import Services

LANE = "teaching"


@dataclass(frozen=True)
class Analysis:
    """A fingered piece looked at once: measures, features, estimate and hardest bars by the
    ``model`` in force (None: as shipped), techniques, moves."""

    measures: tuple[BarMeasure, ...]
    features: tuple[Feature, ...]
    model: GradeModel | None
    estimate: Grade
    hardest: tuple[HardBar, ...]
    found: tuple[Found, ...]
    moves: tuple[MoveAt, ...]


@dataclass(frozen=True)
class Company:
    """The lessons around one: ``earlier`` of the same student or group, oldest first,
    ``others`` of the shelf, and how many of these are not fingered yet;
    ``has`` are the ids of all lessons that the student has, later ones as well."""

    earlier: tuple[Profile, ...]
    others: tuple[Profile, ...]
    missing: int
    here: Profile
    has: frozenset[str] = frozenset()


class Findings:
    """Remembers what is found as long as the music and its fingers stay the same."""

    def __init__(self, shelf: Shelf, services: Services) -> None:
        self._shelf, self._services = shelf, services
        self._last: tuple[Lesson, Fingering, Analysis] | None = None
        self._profiles: dict[tuple[str, object], Profile] = {}
        self._unfingered: set[tuple[str, object]] = set()
        self._model: GradeModel | None = None

    def model(self) -> GradeModel | None:
        """The grade model in force; where it is another one, what was judged by the one
        before is forgotten."""
        found = studio_model(self._shelf)
        if found != self._model:
            self._model, self._last, self._profiles = found, None, {}
        return found

    def analysis(self, lesson: Lesson, fingering: Fingering) -> Analysis:
        """The analysis of a fingered lesson. Raises BadInput for one without notes."""
        model = self.model()
        if self._last is not None:
            before, hands, known = self._last
            if hands is fingering and before.piece is lesson.piece and before.hand == lesson.hand:
                return known
        instrument, hand = playing_of(lesson)
        given = (lesson.piece, fingering, instrument, hand)
        judged = assess(*given, model)
        found = find_techniques(*given)
        made = Analysis(
            judged.measures,
            judged.features,
            model,
            judged.estimate,
            judged.hardest,
            found,
            moves_of(*given, found),
        )
        self._last = (lesson, fingering, made)
        return made

    def look_again(self) -> None:
        """Lessons that were not fingered may be so by now."""
        self._unfingered = set()

    def company(
        self, lesson: Lesson, fingering: Fingering, progress: Progress, *, finger_all: bool = False
    ) -> Company:
        """The lessons to compare with.

        Earlier lessons of the same student are fingered where they are not yet; the
        others only with ``finger_all``.
        """
        analysis = self.analysis(lesson, fingering)
        moves = tuple(dict.fromkeys(m.move for m in analysis.moves))
        grade = grade_number(shown_grade(lesson, analysis.estimate))
        instrument, _ = playing_of(lesson)
        tune = tune_of(lesson.piece)
        here = Profile(lesson.id, lesson.title, instrument.id, grade, moves, tune)
        rows = by_age(self._shelf)
        known_here = any(row.id == lesson.id for row in rows)
        found = earlier_lessons(self._shelf, lesson.student, lesson.id) if known_here else []
        before = {row.id for row in found}
        earlier: list[Profile] = []
        others: list[Profile] = []
        missing = 0
        rows = [row for row in rows if row.id != lesson.id]
        for count, row in enumerate(rows):
            progress(count / len(rows))

            def within(done: int, of: int, at: int = count) -> None:
                progress((at + done / max(1, of)) / len(rows))

            known = self._profile(row, within, finger=finger_all or row.id in before)
            if known is None:
                missing += 1
            else:
                (earlier if row.id in before else others).append(known)
        theirs = companions(self._shelf, lesson.student) if lesson.student else set()
        has = frozenset(row.id for row in rows if row.student in theirs)
        return Company(tuple(earlier), tuple(others), missing, here, has)

    def _profile(
        self, row: LessonRow, progress: Callable[[int, int], None], *, finger: bool
    ) -> Profile | None:
        key = (row.id, row.updated)
        if key in self._profiles:
            return self._profiles[key]
        if key in self._unfingered and not finger:
            return None
        try:
            lesson = self._shelf.load(row.id)
            instrument, hand = playing_of(lesson)
            fingering = self._shelf.cached_fingering(lesson)
            if fingering is None:
                if not finger:
                    self._unfingered.add(key)
                    return None
                solver = self._services.solver(lesson, instrument, hand, progress)
                fingering = solver.solution()
                self._shelf.put_fingering(lesson, fingering)
            given = (lesson.piece, fingering, instrument, hand)
            grade = grade_number(shown_grade(lesson, grade_piece(*given, self._model)))
            made = profile(lesson.id, lesson.title, grade, *given)
        except BadInput:  # a lesson that cannot be read or has no notes teaches nothing
            return None
        self._profiles[key] = made
        return made


def grade_number(grade: Grade) -> float:
    """Grade 1, middle as 1.5: the level as a fraction."""
    return grade.number + (2 * THIRDS.index(grade.level) + 1) / 6
