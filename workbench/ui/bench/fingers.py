"""The fingers of the open lesson: its fingering, and other fingerings of the selected bar.

Fingering, and the search for other fingerings, run in one lane behind the
interface; a solver lives as long as piece, instrument, hand and settings stay.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Protocol, TypeVar

from PySide6.QtCore import QObject, QTimer, Signal, SignalInstance

from workbench.fingering.telling.moments import pinned
from workbench.fingering.types import Alternative, FingeredBar, FingeredNote, Fingering, Pin
from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.store.shelf import Shelf
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.lessons.playing import fingered_on
from workbench.ui.bench.jobs import Jobs, Progress
from workbench.ui.bench.selecting import Selection
from workbench.ui.bench.services import LessonSolver, Services
from workbench.ui.bench.verdict import verdict

CHOICES = 4  # alternatives shown for a bar
RIGHTS = 2  # other right hands shown after them
ASK_AFTER = 150  # milliseconds
T = TypeVar("T")


class Fingered(Protocol):
    """What has a lesson to finger, and is told what came of it."""

    shelf: Shelf
    services: Services
    jobs: Jobs
    lesson: Lesson | None

    @property
    def told(self) -> SignalInstance: ...


class _LastSolver:
    """The solver that was asked last, for the fingers' lane alone."""

    def __init__(self) -> None:
        self._solver: LessonSolver | None = None
        self._lesson: Lesson | None = None

    def ask(
        self, lesson: Lesson, services: Services, progress: Progress,
        question: Callable[[LessonSolver], T],
    ) -> T:  # fmt: skip
        """Ask the solver of this lesson; a new one where the last cannot serve."""

        def tell(done: int, every: int) -> None:
            progress(done / every if every else -1.0)

        before, solver = self._lesson, self._solver
        try:
            if solver is None or before is None or not _same_task(before, lesson):
                solver = services.solver(lesson, *fingered_on(lesson), tell)
            solver.progress = tell
            answer = question(solver)
        except BaseException:
            self._solver = None  # left half way
            raise
        self._solver, self._lesson = solver, lesson
        return answer


class Fingers(QObject):
    """What the open lesson's notes are played with, as far as it is known. All signals come on
    the interface thread."""

    fingered = Signal()
    choices_changed = Signal()

    def __init__(self, bench: Fingered, selection: Selection, parent: QObject) -> None:
        super().__init__(parent)
        self._bench = bench
        self._selection = selection
        self.fingering: Fingering | None = None
        self.choices: tuple[Alternative, ...] | None = None
        self._before_edit: Fingering | None = None
        self._judge = False  # whether the next fingering is to be compared with the last
        self._last = _LastSolver()
        self._ask_soon = QTimer(self)  # those who only pass through a bar ask nothing of it
        self._ask_soon.setSingleShot(True)
        self._ask_soon.setInterval(ASK_AFTER)
        self._ask_soon.timeout.connect(self.ask_choices)
        selection.moved.connect(self._moved)
        # Bars of the present fingering, and those already asked for with the present pins.
        self._hands_from: tuple[Fingering | None, tuple[Pin, ...]] = (None, ())
        self._bars: dict[int, FingeredBar] = {}
        self._hands: dict[int, FingeredBar] = {}

    def forget(self) -> None:
        """Another lesson is open, or none: nothing is known of it yet."""
        self.fingering = self.choices = None

    def outdated(self, before: Lesson, after: Lesson) -> None:
        """The lesson was changed; a fingering of other music goes, one of the same notes stays
        until it is found anew (see ``solve``)."""
        if after.piece is not before.piece:
            self.fingering = None
        if not fingered_alike(after, before):
            self._before_edit = self.fingering
            self._judge = after.pins != before.pins
            self.choices = None

    def _moved(self) -> None:
        self.choices = None
        self.choices_changed.emit()
        self._ask_soon.start()

    def hands_of(self, index: int) -> FingeredBar | None:
        """The fingering of a written bar where it is solved, the latest pins on it."""
        if self._bench.lesson is None or self.fingering is None:
            return None
        source = (self.fingering, self._bench.lesson.pins)
        if any(old is not new for old, new in zip(self._hands_from, source, strict=True)):
            if self._hands_from[0] is not self.fingering:
                self._bars = {bar.index: bar for bar in self.fingering.bars}
            self._hands_from, self._hands = source, {}
        if index not in self._hands and index in self._bars:
            self._hands[index] = pinned(self._bars[index], self._bench.lesson.pins)
        return self._hands.get(index)

    @property
    def bar_hands(self) -> FingeredBar | None:
        return self.hands_of(self._selection.bar_index)

    @property
    def note_hands(self) -> FingeredNote | None:
        """The selected note with its fingers."""
        hands = self.bar_hands
        return (
            next((n for n in hands.notes if n.id == self._selection.note_id), None)
            if hands
            else None
        )

    @property
    def chosen_hands(self) -> tuple[FingeredNote, ...]:
        """The selected notes with their fingers, as far as they are fingered."""
        known = {n.id: n for index in self._selection.note_bars if (bar := self.hands_of(index))
                 for n in bar.notes}  # fmt: skip
        return tuple(known[note] for note in self._selection.note_ids if note in known)

    def recall(self) -> None:
        """Take up the fingering that is kept of the lesson; finger it where there is none.
        A long one takes long to read, so that is done in the background."""
        lesson = self._bench.lesson
        if lesson is None:
            return

        shelf = self._bench.shelf

        def work(_progress: Progress) -> Fingering | None:
            try:
                return shelf.cached_fingering(lesson)
            except BadInput:  # what cannot be read is found again
                return None

        def done(kept: Fingering | None) -> None:
            if kept is None:
                self.solve()
            else:
                self._take(lesson, kept, keep=False)

        self._bench.jobs.start("solve", say("Fingering"), work, done, lane="fingers")

    def solve(self) -> None:
        """Finger the lesson anew, in the background."""
        lesson = self._bench.lesson
        if lesson is None:
            return
        self._bench.jobs.cancel("choices")

        work = self._asking(lesson, lambda s: s.with_pins(lesson.pins))

        def done(fingering: Fingering) -> None:
            self._take(lesson, fingering)

        self._bench.jobs.start("solve", say("Fingering"), work, done, lane="fingers")

    def _take(self, lesson: Lesson, fingering: Fingering, *, keep: bool = True) -> None:
        if self._bench.lesson is None or not fingered_alike(self._bench.lesson, lesson):
            return
        self.fingering = fingering
        self.fingered.emit()
        if self._judge and self._before_edit:
            self._bench.told.emit(verdict(self._before_edit, fingering))
        self._judge = False
        if keep:
            shelf = self._bench.shelf
            self._bench.jobs.start(
                "keep", say("Keeping the fingering"),
                lambda _: shelf.put_fingering(lesson, fingering), lambda _: None,
                lane="keep",
            )  # fmt: skip
        self.ask_choices()

    def ask_choices(self) -> None:
        """Look for other fingerings of the selected bar, in the background."""
        lesson, index = self._bench.lesson, self._selection.bar_index
        self.choices = None
        self.choices_changed.emit()
        if lesson is None or index < 0 or self.fingering is None:
            return

        work = self._asking(
            lesson, lambda s: s.alternatives(index, CHOICES) + s.right_alternatives(index, RIGHTS)
        )

        def done(found: tuple[Alternative, ...]) -> None:
            here = self._bench.lesson
            if here and fingered_alike(here, lesson) and self._selection.bar_index == index:
                self.choices = found
                self.choices_changed.emit()

        self._bench.jobs.start(
            "choices", say("Looking for other fingerings"), work, done, lane="fingers"
        )

    def try_fingering(
        self, index: int, pins: tuple[Pin, ...], told: Callable[[Alternative | BadInput], None]
    ) -> None:
        """What a fingering asked for in a bar would bring, or why it is impossible; found in
        the background and handed to ``told``."""
        lesson = self._bench.lesson
        if lesson is None:
            return

        def ask(solver: LessonSolver) -> Alternative | BadInput:
            try:
                return solver.why_not(index, pins)
            except BadInput as wrong:  # an answer, not a failure of the solver
                return wrong

        work = self._asking(lesson, ask)
        self._bench.jobs.start("why", say("Trying the fingering"), work, told, lane="fingers")

    def _asking(
        self, lesson: Lesson, question: Callable[[LessonSolver], T]
    ) -> Callable[[Progress], T]:
        """Work that asks the solver of this lesson."""
        last, services = self._last, self._bench.services
        return lambda progress: last.ask(lesson, services, progress, question)


def fingered_alike(one: Lesson, other: Lesson) -> bool:
    """Whether both lessons have the same fingering."""
    return one.piece is other.piece and (
        (one.instrument, one.capo, one.hand, one.settings, one.pins, one.top_fret)
        == (other.instrument, other.capo, other.hand, other.settings, other.pins, other.top_fret)
    )


def _same_task(one: Lesson, other: Lesson) -> bool:
    """Whether a solver made for one lesson serves the other, pins aside."""
    return one.piece is other.piece and (
        (*fingered_on(one), one.settings) == (*fingered_on(other), other.settings)
    )
