"""What is selected: a bar of the playing order, a note in it, or several notes."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from PySide6.QtCore import QObject, Signal

from workbench.music.model import Bar, Note
from workbench.teaching.lessons.bar_rows import order_of
from workbench.teaching.lessons.lesson import Lesson


class Selection(QObject):
    """The selection in the open lesson. ``note_ids`` holds the selected notes in time: none,
    one, or several; ``note_id`` is the first of them."""

    moved = Signal()  # to another bar; before ``selected``
    selected = Signal()  # bar or notes

    def __init__(self, lesson: Callable[[], Lesson | None], parent: QObject) -> None:
        """``lesson`` gives the lesson that is open."""
        super().__init__(parent)
        self._lesson = lesson
        self.position = 0
        self.note_ids: tuple[str, ...] = ()

    @property
    def lesson(self) -> Lesson | None:
        """The open lesson."""
        return self._lesson()

    @property
    def order(self) -> tuple[int, ...]:
        """Written bar indices as they are played."""
        return order_of(self.lesson.piece) if self.lesson else ()

    @property
    def bar_index(self) -> int:
        """The selected written bar; -1 where there is none."""
        return self.order[self.position] if self.position < len(self.order) else -1

    @property
    def bar(self) -> Bar | None:
        index = self.bar_index
        return self.lesson.piece.bars[index] if self.lesson and index >= 0 else None

    @property
    def note_id(self) -> str | None:
        """The selected note; of several the first."""
        return self.note_ids[0] if self.note_ids else None

    @note_id.setter
    def note_id(self, note: str | None) -> None:
        self.note_ids = () if note is None else (note,)

    @property
    def note_bars(self) -> tuple[int, ...]:
        """The written bars of the selected notes, in order."""
        if self.lesson is None:
            return ()
        where = self.lesson.piece.bar_of
        return tuple(sorted({where[note] for note in self.note_ids if note in where}))

    def select(self, position: int, note: str | None = None) -> None:
        """Select a bar by its place in playing order, and a note in it."""
        self._choose(position, () if note is None else (note,))

    def _choose(self, position: int, notes: tuple[str, ...]) -> None:
        if not self.order:
            return
        position = max(0, min(position, len(self.order) - 1))
        moved = position != self.position
        if not moved and notes == self.note_ids:
            return
        self.position, self.note_ids = position, notes
        if moved:
            self.moved.emit()
        self.selected.emit()

    def take_up(self, position: int, note: str | None) -> None:
        """Select in a lesson just opened what was selected in it when it was left."""
        self._place(position, () if note is None else (note,))

    def stay_within(self) -> None:
        """Let go of what is in the music no more."""
        self._place(self.position, self.note_ids)

    def _place(self, position: int, notes: Iterable[str]) -> None:
        here = self.lesson.piece.bar_of if self.lesson else {}
        self.position = max(0, min(position, len(self.order) - 1))
        self.note_ids = tuple(note for note in notes if note in here)

    def select_note(self, note: str | None) -> None:
        """Select a note, and the bar it is in: the nearest time that bar is played."""
        self.select_notes(() if note is None else (note,))

    def select_notes(self, notes: Iterable[str]) -> None:
        """Select several notes at once, and the bar of the first of them; none at all
        leaves the bar selected."""
        where = self.lesson.piece.bar_of if self.lesson else {}
        known = {note for note in notes if note in where}
        if not self.lesson or not known:
            self._choose(self.position, ())
            return
        bars = sorted({where[note] for note in known})
        ids = [n.id for bar in bars for n in in_time(self.lesson.piece.bars[bar])]
        self._choose(self.position_of(bars[0]), tuple(note for note in ids if note in known))

    def toggle_note(self, note: str) -> None:
        """Take a note into the selection, or out of it."""
        chosen = set(self.note_ids)
        self.select_notes(chosen ^ {note})

    def position_of(self, index: int) -> int:
        """The place in playing order, nearest to the present one, of a written bar."""
        places = [at for at, bar in enumerate(self.order) if bar == index]
        return min(places, key=lambda at: abs(at - self.position), default=self.position)

    def step_note(self, by: int) -> None:
        """Select the next or previous note, over the bar line where need be; of several
        selected ones the step goes from the last or the first."""
        if not self.bar or not self.lesson:
            return
        found = self._beside(by)
        if found is not None:
            self.select(*found)

    def reach_note(self, by: int) -> None:
        """Let the selection reach one note further in time, or take it back by one."""
        if self.lesson is None or not self.note_ids:
            self.step_note(by)
            return
        if by < 0 and len(self.note_ids) > 1:
            self.select_notes(self.note_ids[:-1])
            return
        found = self._beside(by)
        if found is not None:
            self.select_notes((*self.note_ids, found[1]))

    def _beside(self, by: int) -> tuple[int, str] | None:
        """Position and id of the note after the selection, or before it."""
        assert self.lesson
        position = self.position
        if self.note_ids:
            last = self.note_ids[-1 if by > 0 else 0]
            if last in self.lesson.piece.bar_of:
                position = self.position_of(self.lesson.piece.bar_of[last])
            ids = self._ids(position)
            at = ids.index(last) + by if last in ids else -1
            if 0 <= at < len(ids):
                return position, ids[at]
            position += by
        while 0 <= position < len(self.order):
            ids = self._ids(position)
            if ids:
                return position, ids[0 if by > 0 else -1]
            position += by
        return None

    def _ids(self, position: int) -> list[str]:
        assert self.lesson
        return [n.id for n in in_time(self.lesson.piece.bars[self.order[position]])]


def in_time(bar: Bar) -> list[Note]:
    """The notes of a bar as they sound, the highest of a chord first."""
    return sorted(bar.notes, key=lambda note: (note.onset, not note.grace, -note.midi))
