"""The lesson on the bench: what is open, what is selected, and every command on it.

Knows nothing of widgets. Every change goes through ``edit`` and is on the shelf
before the call returns; fingering and engraving follow in the background.
"""

from __future__ import annotations

import traceback
from collections.abc import Callable
from dataclasses import replace
from typing import Any

from PySide6.QtCore import QObject, QTimer, Signal

from workbench.fingering.types import Alternative, FingeredBar, FingeredNote, Fingering
from workbench.instrument.model import Hand, Instrument
from workbench.music.errors import BadInput
from workbench.music.model import Bar
from workbench.store.rows import View
from workbench.store.shelf import Shelf
from workbench.teaching.lesson import BarNote, Lesson
from workbench.ui.bar_rows import BarRow, bar_rows, notes_of_bar, order_of, section_letters
from workbench.ui.grips import pinned
from workbench.ui.jobs import Jobs
from workbench.ui.services import Services, playing_of

LAST_LESSON = "window.lesson"
ASK_AFTER = 150  # milliseconds


class Bench(QObject):
    """The open lesson. All signals come on the interface thread."""

    opened = Signal()  # another lesson, or none
    changed = Signal()  # the lesson's content
    fingered = Signal()  # its fingering
    selected = Signal()  # bar or note
    choices_changed = Signal()
    history_changed = Signal()
    told = Signal(str)  # one sentence, good news
    failed = Signal(str)  # one sentence, what went wrong and what to do

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
        self.fingering: Fingering | None = None
        self.position = 0
        self.note_id: str | None = None
        self.choices: tuple[Alternative, ...] | None = None
        self.before_edit: Fingering | None = None
        self.rows: tuple[BarRow, ...] = ()
        self.last_fault = ""
        self._ask_soon = QTimer(self)  # those who only pass through a bar ask nothing of it
        self._ask_soon.setSingleShot(True)
        self._ask_soon.setInterval(ASK_AFTER)
        self._ask_soon.timeout.connect(self.ask_choices)
        self.judge = False  # whether the next fingering is to be compared with the last

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
    def order(self) -> tuple[int, ...]:
        return order_of(self.lesson.piece) if self.lesson else ()

    @property
    def bar_index(self) -> int:
        """The selected written bar; -1 where there is none."""
        return self.order[self.position] if self.position < len(self.order) else -1

    @property
    def bar(self) -> Bar | None:
        index = self.bar_index
        return self.lesson.piece.bars[index] if self.lesson and index >= 0 else None

    def hands_of(self, index: int) -> FingeredBar | None:
        """The fingering of a written bar where it is solved, the latest pins on it."""
        bars = self.fingering.bars if self.fingering else ()
        found = next((bar for bar in bars if bar.index == index), None)
        return pinned(found, self.lesson.pins) if found and self.lesson else found

    @property
    def bar_hands(self) -> FingeredBar | None:
        return self.hands_of(self.bar_index)

    @property
    def note_hands(self) -> FingeredNote | None:
        """The selected note with its fingers."""
        hands = self.bar_hands
        return next((n for n in hands.notes if n.id == self.note_id), None) if hands else None

    @property
    def bar_notes(self) -> tuple[BarNote, ...]:
        """The teaching notes that speak of the selected bar."""
        if not self.lesson or self.bar_index < 0:
            return ()
        return notes_of_bar(self.lesson, self.bar_index, section_letters(self.lesson))

    # Opening.

    def open(self, lesson_id: str) -> bool:
        """Open a lesson of the shelf just as it was left; False where it cannot be."""
        try:
            lesson = self.shelf.load(lesson_id)
            view = self.shelf.view(lesson_id)
            playing_of(lesson)
        except BadInput as wrong:
            self.failed.emit(str(wrong))
            return False
        self._leave()
        self._show(lesson, view)
        self.shelf.set_setting(LAST_LESSON, lesson_id)
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
            self.guard(lambda: self.shelf.save_all(lessons, "Demo lesson"))
            if self.lesson is None and lessons:
                self.open(lessons[0].id)

        self.jobs.start("demo", "Laying out the demo shelf", lambda _: demo(), arrived)

    def add(self, lesson: Lesson, piece_id: str | None = None) -> bool:
        """Put a new lesson on the shelf and open it."""
        return self.guard(lambda: self.shelf.add(lesson, piece_id)) and self.open(lesson.id)

    def close(self) -> None:
        """Leave the bench: everything is kept, nothing runs any more."""
        self._leave()
        self.jobs.stop()

    def put_away(self) -> None:
        """Close the open lesson without opening another."""
        self._leave()
        self.lesson = self.fingering = None
        self.rows, self.position, self.note_id = (), 0, None
        self.opened.emit()

    def _leave(self) -> None:
        self.keep_view()
        self.jobs.cancel("solve", "choices", "engrave")

    def keep_view(self) -> None:
        """Write down which bar and note are selected."""
        if self.lesson is not None:
            lesson_id, view = self.lesson.id, View(self.position, self.note_id)
            self.guard(lambda: self.shelf.save_view(lesson_id, view))

    def _show(self, lesson: Lesson, view: View) -> None:
        self.lesson, self.fingering, self.choices = lesson, None, None
        self.position = max(0, min(view.selected_bar, len(self.order) - 1))
        self.note_id = view.note if view.note in lesson.piece.bar_of else None
        try:
            self.fingering = self.shelf.cached_fingering(lesson)
        except BadInput:
            self.fingering = None
        self.rows = bar_rows(lesson, self.fingering)
        self.opened.emit()
        self.selected.emit()
        self.history_changed.emit()
        if self.fingering:
            self.fingered.emit()
            self.ask_choices()
        else:
            self.solve()

    # Selecting.

    def select(self, position: int, note: str | None = None) -> None:
        """Select a bar by its place in playing order, and a note in it."""
        if not self.order:
            return
        position = max(0, min(position, len(self.order) - 1))
        moved = position != self.position
        if not moved and note == self.note_id:
            return
        self.position, self.note_id = position, note
        if moved:
            self.choices = None
        self.selected.emit()
        if moved:
            self.choices_changed.emit()
            self._ask_soon.start()

    def select_note(self, note: str | None) -> None:
        """Select a note, and the bar it is in: the nearest time that bar is played."""
        if note is None or not self.lesson or note not in self.lesson.piece.bar_of:
            self.select(self.position, None)
            return
        self.select(self.position_of(self.lesson.piece.bar_of[note]), note)

    def position_of(self, index: int) -> int:
        """The place in playing order, nearest to the present one, of a written bar."""
        places = [at for at, bar in enumerate(self.order) if bar == index]
        return min(places, key=lambda at: abs(at - self.position), default=self.position)

    def step_note(self, by: int) -> None:
        """Select the next or previous note, over the bar line where need be."""
        if not self.bar or not self.lesson:
            return
        ids = [note.id for note in in_time(self.bar)]
        at = ids.index(self.note_id) + by if self.note_id in ids else (0 if by > 0 else -1)
        if ids and -len(ids) <= at < len(ids) and not (by < 0 and at < 0 and self.note_id):
            self.select(self.position, ids[at])
            return
        position = self.position + by
        while 0 <= position < len(self.order):
            notes = in_time(self.lesson.piece.bars[self.order[position]])
            if notes:
                self.select(position, notes[0 if by > 0 else -1].id)
                return
            position += by

    # Changing.

    def edit(self, label: str, change: Callable[[Lesson], Lesson], *, merge: bool = False) -> bool:
        """Change the lesson and keep it at once; False where the change was refused."""
        if self.lesson is None:
            return False
        before = self.lesson
        done = False

        def keep() -> None:
            nonlocal done
            after = replace(change(before), selected_bar=self.position)
            if replace(after, selected_bar=before.selected_bar) == before:
                return
            self.shelf.save(after, label, merge=merge)
            self.lesson, done = after, True

        if not self.guard(keep):
            return False
        if done:
            self._after(before)
        return True

    def undo(self) -> None:
        self._travel(self.shelf.undo, "Nothing to undo.")

    def redo(self) -> None:
        self._travel(self.shelf.redo, "Nothing to redo.")

    def go_back(self, version_id: int) -> None:
        """Make a kept version the present state; that can be undone."""
        self._travel(lambda _: self.shelf.go_back(version_id), "")

    def _travel(self, step: Callable[[str], Lesson | None], nothing: str) -> None:
        if self.lesson is None:
            return
        before, found = self.lesson, None

        def go() -> None:
            nonlocal found
            found = step(before.id)

        if not self.guard(go):
            return
        if found is None:
            self.told.emit(nothing)
            return
        # What comes back equal is the same object, so that nothing is engraved twice.
        piece = before.piece if found.piece == before.piece else found.piece
        self.lesson = replace(found, piece=piece)
        self._after(before)

    def _after(self, before: Lesson) -> None:
        assert self.lesson
        lesson = self.lesson
        if lesson.piece is not before.piece:
            self.position = max(0, min(self.position, len(self.order) - 1))
            if self.note_id not in lesson.piece.bar_of:
                self.note_id = None
            self.fingering = None
        if fingered_alike(lesson, before):
            self.rows = bar_rows(lesson, self.fingering)
            self.changed.emit()
        else:
            self.before_edit = self.fingering
            self.judge = lesson.pins != before.pins
            self.choices = None
            self.rows = bar_rows(lesson, self.fingering)
            self.changed.emit()
            self.solve()
        self.history_changed.emit()

    def guard(self, work: Callable[[], Any]) -> bool:
        """Do something that the user's disk or data may refuse; say so if it does."""
        try:
            work()
        except BadInput as wrong:
            self.failed.emit(" ".join(str(wrong).split()))
            return False
        return True

    def solve(self) -> None:
        """Finger the lesson anew."""
        raise NotImplementedError

    def ask_choices(self) -> None:
        """Look for other fingerings of the selected bar."""
        raise NotImplementedError

    def report(self, fault: BaseException) -> None:
        """Tell of a fault that nobody else took care of."""
        if isinstance(fault, BadInput):
            self.failed.emit(" ".join(str(fault).split()))
            return
        self.last_fault = "".join(traceback.format_exception(fault))
        self.failed.emit(
            f"The program made a mistake ({type(fault).__name__}); your lesson is kept. "
            "Help, Error report shows what happened."
        )


def in_time(bar: Bar) -> list[Any]:
    """The notes of a bar as they sound, the highest of a chord first."""
    return sorted(bar.notes, key=lambda note: (note.onset, not note.grace, -note.midi))


def fingered_alike(one: Lesson, other: Lesson) -> bool:
    """Whether both lessons have the same fingering."""
    return one.piece is other.piece and (
        (one.instrument, one.capo, one.hand, one.settings, one.pins)
        == (other.instrument, other.capo, other.hand, other.settings, other.pins)
    )
