"""The session: the bench together with its fingers.

Fingering, and the search for other fingerings, run in one lane behind the
interface; a solver lives as long as piece, instrument, hand and settings stay.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeVar

from PySide6.QtCore import QObject

from workbench.fingering.types import Alternative, FingeredNote, Fingering, Pin
from workbench.language.speech import count, say
from workbench.music.errors import BadInput
from workbench.store.shelf import Shelf
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.lessons.same_bars import bars_to_match, match_bars
from workbench.ui.bench import edits
from workbench.ui.bench.bar_rows import bar_rows
from workbench.ui.bench.bench import Bench, fingered_alike
from workbench.ui.bench.jobs import Progress
from workbench.ui.bench.services import Services, Solver, playing_of
from workbench.ui.bench.verdict import verdict

CHOICES = 4  # alternatives shown for a bar
RIGHTS = 2  # other right hands shown after them
T = TypeVar("T")


class Session(Bench):
    """Everything the window does, without the window."""

    def __init__(
        self, shelf: Shelf, services: Services | None = None, parent: QObject | None = None
    ) -> None:
        super().__init__(shelf, services, parent)
        self._solver: Solver | None = None
        self._solver_for: Lesson | None = None
        self.wants_recall.connect(self.recall)
        self.wants_fingering.connect(self.solve)
        self.wants_choices.connect(self.ask_choices)

    def recall(self) -> None:
        """Take up the fingering that is kept of the lesson; finger it where there is none.
        A long one takes long to read, so that is done in the background."""
        lesson = self.lesson
        if lesson is None:
            return

        def work(_progress: Progress) -> Fingering | None:
            try:
                return self.shelf.cached_fingering(lesson)
            except BadInput:  # what cannot be read is found again
                return None

        def done(kept: Fingering | None) -> None:
            if kept is None:
                self.solve()
            else:
                self._take(lesson, kept, keep=False)

        self.jobs.start("solve", say("Fingering"), work, done, lane="fingers")

    def solve(self) -> None:
        """Finger the lesson anew, in the background."""
        lesson = self.lesson
        if lesson is None:
            return
        self.jobs.cancel("choices")

        def work(progress: Progress) -> Fingering:
            return self._with_solver(lesson, progress, lambda s: s.with_pins(lesson.pins))

        def done(fingering: Fingering) -> None:
            self._take(lesson, fingering)

        self.jobs.start("solve", say("Fingering"), work, done, lane="fingers")

    def _take(self, lesson: Lesson, fingering: Fingering, *, keep: bool = True) -> None:
        if self.lesson is None or not fingered_alike(self.lesson, lesson):
            return
        self.fingering = fingering
        self.rows = bar_rows(self.lesson, fingering)
        self.fingered.emit()
        if self.judge and self.before_edit:
            self.told.emit(verdict(self.before_edit, fingering))
        self.judge = False
        if keep:
            self.jobs.start(
                "keep", say("Keeping the fingering"),
                lambda _: self.shelf.put_fingering(lesson, fingering), lambda _: None, lane="keep",
            )  # fmt: skip
        self.ask_choices()

    def ask_choices(self) -> None:
        """Look for other fingerings of the selected bar, in the background."""
        lesson, index = self.lesson, self.bar_index
        self.choices = None
        self.choices_changed.emit()
        if lesson is None or index < 0 or self.fingering is None:
            return

        def work(progress: Progress) -> tuple[Alternative, ...]:
            return self._with_solver(
                lesson, progress,
                lambda s: s.alternatives(index, CHOICES) + s.right_alternatives(index, RIGHTS),
            )  # fmt: skip

        def done(found: tuple[Alternative, ...]) -> None:
            here = self.lesson
            if here and fingered_alike(here, lesson) and self.bar_index == index:
                self.choices = found
                self.choices_changed.emit()

        self.jobs.start("choices", say("Looking for other fingerings"), work, done, lane="fingers")

    def try_fingering(
        self, index: int, pins: tuple[Pin, ...], told: Callable[[Alternative | BadInput], None]
    ) -> None:
        """What a fingering asked for in a bar would bring, or why it is impossible; found in
        the background and handed to ``told``."""
        lesson = self.lesson
        if lesson is None:
            return

        def ask(solver: Solver) -> Alternative | BadInput:
            try:
                return solver.why_not(index, pins)
            except BadInput as wrong:  # an answer, not a failure of the solver
                return wrong

        def work(progress: Progress) -> Alternative | BadInput:
            return self._with_solver(lesson, progress, ask)

        self.jobs.start("why", say("Trying the fingering"), work, told, lane="fingers")

    def _with_solver(self, lesson: Lesson, progress: Progress, ask: Callable[[Solver], T]) -> T:
        """Ask the solver of this lesson; only the fingers' lane comes here."""

        def tell(done: int, every: int) -> None:
            progress(done / every if every else -1.0)

        before, solver = self._solver_for, self._solver
        try:
            if solver is None or before is None or not _same_task(before, lesson):
                solver = self.services.solver(lesson, *playing_of(lesson), tell)
            solver.progress = tell
            answer = ask(solver)
        except BaseException:
            self._solver = None  # left half way
            raise
        self._solver, self._solver_for = solver, lesson
        return answer

    def move_note(self, note: str, string: int, fret: int) -> bool:
        """Put a note on another string."""
        return self.edit(
            say("Move a note to string {string}, fret {fret}", string=string, fret=fret),
            lambda lesson: edits.move_note(lesson, note, string, fret),
        )

    def step_string(self, by: int) -> bool:
        """Put the selected note on the next string (by +1) or the one before (-1)."""
        hands = self.note_hands
        if not hands or len(self.note_ids) > 1:
            self.failed.emit(say("Select one note first, then move it to another string."))
            return False
        places = sorted(self.instrument.places(hands.midi))
        beyond = [p for p in places if hands.string is None or (p[0] - hands.string) * by > 0]
        if not beyond:
            self.told.emit(say("This note cannot be played on a string further that way."))
            return False
        return self.move_note(hands.id, *(beyond[0] if by > 0 else beyond[-1]))

    def set_left(self, finger: int) -> bool:
        """Give every selected note this left finger; several under one finger are a barre."""
        chosen = self.chosen_hands
        if not chosen:
            self.failed.emit(say("Select a note first, then give it a left finger."))
            return False

        def change(lesson: Lesson) -> Lesson:
            for hands in chosen:
                lesson = edits.set_left(lesson, hands, finger)
            return lesson

        return self.edit(say("Left finger {finger}", finger=finger), change)

    def set_right(self, finger: str) -> bool:
        """Give every selected note this right finger."""
        chosen = self.note_ids
        if not chosen:
            self.failed.emit(say("Select a note first, then give it a right finger."))
            return False

        def change(lesson: Lesson) -> Lesson:
            for note in chosen:
                lesson = edits.set_right(lesson, note, finger)
            return lesson

        return self.edit(say("Right finger {finger}", finger=finger), change)

    def set_unison(self, wanted: bool) -> bool:
        """Play the selected note, written with two stems, on two strings or on one."""
        note = self.note_id or ""
        label = say("Play a note on two strings") if wanted else say("Play a note on one string")
        return self.edit(label, lambda lesson: edits.set_unison(lesson, note, wanted))

    def pin_notes(self) -> bool:
        """Keep the selected notes as they are fingered now; all of the bar without any."""
        bar = self.bar_hands
        chosen = self.chosen_hands or (bar.notes if bar else ())
        if not chosen:
            self.failed.emit(say("Wait until the bar is fingered, then pin its notes."))
            return False
        label = count(len(chosen), "Pin a note", "Pin {n} notes")
        return self.edit(label, lambda lesson: edits.pin_all(lesson, chosen, right=True))

    def free_note(self) -> bool:
        """Let the selected notes free, or all of the bar where none is selected."""
        if not self.bar:
            return False
        notes = self.note_ids or tuple(note.id for note in self.bar.notes)
        label = (
            count(len(notes), "Free a note", "Free {n} notes")
            if self.note_ids
            else say("Free the bar's notes")
        )
        return self.edit(label, lambda lesson: edits.unpin(lesson, notes))

    def take_choice(self, place: int) -> bool:
        """Keep one of the other fingerings of the bar."""
        if not self.choices or not 0 <= place < len(self.choices):
            return False
        found, hands, lesson = self.choices[place], self.bar_hands, self.lesson
        if not self.edit(say("Take another fingering"), lambda e: edits.pin_all(e, found.notes)):
            return False
        assert lesson
        self.guard(lambda: self._remember(lesson, found, hands.notes if hands else ()))
        return True

    @property
    def bars_to_match(self) -> tuple[int, ...]:
        """Bars with the music of the selected one that are not held as it is."""
        lesson, index = self.lesson, self.bar_index
        return bars_to_match(lesson, index) if lesson is not None and index >= 0 else ()

    def match_bars(self) -> bool:
        """Hold every bar of the same music as the selected one is held."""
        index, others = self.bar_index, self.bars_to_match
        if not others:
            return False
        label = count(len(others), "The same in {n} bar like it", "The same in {n} bars like it")
        return self.edit(label, lambda lesson: match_bars(lesson, index, others))

    def _remember(
        self, lesson: Lesson, found: Alternative, rejected: tuple[FingeredNote, ...]
    ) -> None:
        self.shelf.remember_choice(
            "alternative",
            lesson_id=lesson.id,
            bar=self.bar_index,
            chosen=found.notes,
            rejected=rejected,
            instrument=lesson.instrument,
            hand=lesson.hand,
            level=lesson.settings.level,
            reason=found.reason,
        )


def _same_task(one: Lesson, other: Lesson) -> bool:
    """Whether a solver made for one lesson serves the other, pins aside."""
    return one.piece is other.piece and (
        (one.instrument, one.capo, one.hand, one.settings)
        == (other.instrument, other.capo, other.hand, other.settings)
    )
