"""The session: what is open, and every change of it.

Knows nothing of widgets. Every change goes through ``edit`` and is on the shelf
before the call returns; fingering and engraving follow in the background.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from PySide6.QtCore import QObject, Signal

from workbench.fingering.types import Fingering
from workbench.instrument.model import Hand, Instrument
from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.store.fault_text import fault_text
from workbench.store.rows import View
from workbench.store.setting_names import LAST_LESSON, LEFT_HANDED, WINDOW_STATE
from workbench.store.shelf import Shelf
from workbench.teaching.lessons.bar_rows import BarRow, bar_rows, notes_of_bar, section_letters
from workbench.teaching.lessons.lesson import BarNote, Lesson
from workbench.teaching.lessons.own_words import own_words
from workbench.teaching.lessons.playing import playing_of
from workbench.ui.bench.fingers import Fingers, fingered_alike
from workbench.ui.bench.hand_edits import HandEdits
from workbench.ui.bench.jobs import Jobs
from workbench.ui.bench.keeper import Keeper
from workbench.ui.bench.selecting import Selection
from workbench.ui.bench.services import Services


class Session(QObject):
    """The open lesson. All signals come on the interface thread."""

    opened = Signal()  # another lesson, or none
    changed = Signal()  # the lesson's content
    history_changed = Signal()
    told = Signal(str)  # one sentence, good news
    failed = Signal(str)  # one sentence, what went wrong and what to do
    handed = Signal(bool)  # left-handed or not
    laid = Signal()  # the music was laid on an instrument, and something had to change
    conflicted = Signal()  # somebody else changed the lesson; ``conflict`` holds both

    def __init__(
        self, shelf: Shelf, services: Services | None = None, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self.shelf = shelf
        self.services = services or Services()
        self.jobs = Jobs(self)
        self.jobs.failed.connect(self.failed)
        self.jobs.fault.connect(self.report)
        self.lesson: Lesson | None = None
        self.last_fault = ""
        self.keeper = Keeper(self, self)
        self.selection = Selection(lambda: self.lesson, self)
        self.fingers = Fingers(self, self.selection, self)
        self.hand_edits = HandEdits(self, self.selection, self.fingers)
        self._rows: tuple[BarRow, ...] = ()
        self._rows_from: tuple[Lesson | None, Fingering | None] = (None, None)
        self._left_handed = self._kept_hand()

    # Whose hands.

    @property
    def left_handed(self) -> bool:
        """Whether fretboards and grips are drawn as a left-handed player sees them."""
        return self._left_handed

    def set_left_handed(self, left: bool) -> None:
        """Draw for a left-handed player, or for a right-handed one; kept."""
        if left == self._left_handed:
            return
        self._left_handed = left
        self.guard(lambda: self.shelf.set_setting(LEFT_HANDED, left))
        self.handed.emit(left)

    def _kept_hand(self) -> bool:
        try:
            found = self.shelf.setting(LEFT_HANDED)
            if found is None:  # as older programs kept it, with the window's sizes
                sizes = self.shelf.setting(WINDOW_STATE, {})
                found = isinstance(sizes, dict) and bool(sizes.get("left_handed"))
                if found:
                    self.guard(lambda: self.shelf.set_setting(LEFT_HANDED, True))
        except BadInput:
            return False
        return bool(found)

    # What is open and selected.

    @property
    def instrument(self) -> Instrument:
        assert self.lesson
        return playing_of(self.lesson)[0]

    @property
    def hand(self) -> Hand:
        assert self.lesson
        return playing_of(self.lesson)[1]

    @property
    def rows(self) -> tuple[BarRow, ...]:
        """What the bar list shows of the lesson as it is now."""
        lesson, fingering = self.lesson, self.fingers.fingering
        if lesson is not self._rows_from[0] or fingering is not self._rows_from[1]:
            self._rows = bar_rows(lesson, fingering) if lesson else ()
            self._rows_from = lesson, fingering
        return self._rows

    @property
    def bar_notes(self) -> tuple[BarNote, ...]:
        """The teaching notes that speak of the selected bar."""
        if not self.lesson or self.selection.bar_index < 0:
            return ()
        return notes_of_bar(self.lesson, self.selection.bar_index, section_letters(self.lesson))

    # Opening.

    def open(self, lesson_id: str) -> bool:
        """Open a lesson of the shelf just as it was left; False where it cannot be."""
        try:
            lesson, view, revision = self.shelf.open(lesson_id)
            playing_of(lesson)
        except BadInput as wrong:
            self.failed.emit(str(wrong))
            return False
        self._leave()
        self.keeper.take_up(lesson, revision)
        self._show(lesson, view)
        self.guard(lambda: self.shelf.set_setting(LAST_LESSON, lesson_id))
        return True

    def open_last(self) -> bool:
        """Open the lesson that was on the bench last, or the one last used."""
        last = self.shelf.setting(LAST_LESSON)
        rows = self.shelf.lessons(limit=200)
        ids = [row.id for row in rows]
        if not ids:
            return False
        return self.open(last if last in ids else ids[0])

    def fill_with_demo(self) -> None:
        """Put the demo lessons on an empty shelf, in the background, and open the first."""
        demo = self.services.demo

        def arrived(lessons: tuple[Lesson, ...]) -> None:
            self.guard(lambda: self.shelf.save_all(lessons, say("Demo lesson")))
            if self.lesson is None and lessons:
                self.open(lessons[0].id)

        self.jobs.start("demo", say("Laying out the demo shelf"), lambda _: demo(), arrived)

    def add(self, lesson: Lesson, piece_id: str | None = None) -> bool:
        """Put a new lesson on the shelf and open it."""
        return self.guard(lambda: self.shelf.add(lesson, piece_id)) and self.open(lesson.id)

    def close(self) -> None:
        """Leave the bench: everything is kept, nothing runs any more."""
        self._leave()
        self.keeper.stop()
        self.jobs.stop()

    def put_away(self) -> None:
        """Close the open lesson without opening another."""
        self._leave()
        self.lesson = None
        self.fingers.forget()
        self.selection.take_up(0, None)
        self.opened.emit()

    def _leave(self) -> None:
        self.keep_view()
        self.jobs.cancel("solve", "choices", "engrave")

    def keep_view(self) -> None:
        """Write down which bar and note are selected."""
        if self.lesson is not None:
            lesson_id, view = self.lesson.id, View(self.selection.position, self.selection.note_id)
            self.guard(lambda: self.shelf.save_view(lesson_id, view))

    def _show(self, lesson: Lesson, view: View) -> None:
        self.lesson = lesson
        self.fingers.forget()
        self.selection.take_up(view.selected_bar, view.note)
        self.opened.emit()
        self.selection.selected.emit()
        self.history_changed.emit()
        self.fingers.recall()

    # Changing.

    def edit(self, label: str, change: Callable[[Lesson], Lesson], *, merge: bool = False) -> bool:
        """Change the lesson and keep it at once; False where the change was refused.

        Where only the store refuses it, the change stands on the bench: it is written aside
        and tried again until the store takes it.
        """
        if self.lesson is None:
            return False
        before = self.lesson
        done = False

        def keep() -> None:
            nonlocal done
            after = change(before)
            if after == before:
                return
            self.lesson, done = self.keeper.save(after, label, merge=merge), True

        if not self.guard(keep):
            return False
        if done:
            self._after(before)
        return True

    def undo(self) -> None:
        self._travel(lambda i, base: self.shelf.undo(i, base=base), say("Nothing to undo."))

    def redo(self) -> None:
        self._travel(lambda i, base: self.shelf.redo(i, base=base), say("Nothing to redo."))

    def go_to_step(self, place: int) -> None:
        """Go to a step of the undo history, back or on."""
        self._travel(
            lambda i, base: self.shelf.go_to(i, place, base=base), say("This step is gone.")
        )

    def go_back(self, version_id: int) -> None:
        """Make a kept version the present state; that can be undone."""
        self._travel(lambda _, base: self.shelf.go_back(version_id, base=base), "")

    def _travel(self, step: Callable[[str, int | None], Lesson | None], nothing: str) -> None:
        if self.lesson is None:
            return
        before, found = self.lesson, None

        def go() -> None:
            nonlocal found
            found = self.keeper.travel(before.id, step)

        if not self.guard(go):
            return
        if found is None:
            self.told.emit(nothing)
            return
        self.show_state(found)

    def show_state(self, found: Lesson) -> None:
        """Show the open lesson in another state of it."""
        before = self.lesson
        assert before
        # What comes back equal is the same object, so that nothing is engraved twice.
        piece = before.piece if found.piece == before.piece else found.piece
        self.lesson = replace(found, piece=piece)
        self._after(before)

    def _after(self, before: Lesson) -> None:
        assert self.lesson
        lesson = self.lesson
        if lesson.piece is not before.piece:
            self.selection.stay_within()
        self.fingers.outdated(before, lesson)
        self.changed.emit()
        if not fingered_alike(lesson, before):
            self.fingers.solve()
        self.history_changed.emit()

    def guard(self, work: Callable[[], object]) -> bool:
        """Do something that the user's disk or data may refuse; say so if it does."""
        try:
            work()
        except BadInput as wrong:
            self.failed.emit(" ".join(str(wrong).split()))
            return False
        return True

    def report(self, fault: BaseException) -> None:
        """Tell of a fault that nobody else took care of."""
        if isinstance(fault, BadInput):
            self.failed.emit(" ".join(str(fault).split()))
            return
        self.last_fault = fault_text(fault, own_words(self.lesson) if self.lesson else ())
        self.failed.emit(
            say(
                "The program made a mistake ({kind}); your lesson is kept. "
                "Help, Error report shows what happened.",
                kind=type(fault).__name__,
            )
        )
