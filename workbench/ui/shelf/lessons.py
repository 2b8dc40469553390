"""The lessons of the shelf: found, opened, copied, archived, deleted and brought back."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent, QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QInputDialog, QPushButton, QVBoxLayout, QWidget

from workbench.language.speech import count, mark, say
from workbench.music.errors import BadInput
from workbench.store.rows import LessonRow
from workbench.teaching.lessons.lesson import Lesson
from workbench.ui.bench.session import Session
from workbench.ui.kit.parts import Faint
from workbench.ui.shelf.filters import OnShelf, ShelfFilters, on_shelf
from workbench.ui.shelf.model import LESSONS, RowsModel, RowsView

LANE = "shelf"
WIDTHS = (8, 10, 5.5, 5.5, 12, 8.5)
WHERE = {
    "composer": mark("Composer: “{line}”"),
    "student": mark("Student: “{line}”"),
    "techniques": mark("Techniques: “{line}”"),
    "notes": mark("In a remark: “{line}”"),
}


class ShelfLessons(QWidget):
    """Tells ``opened`` when a lesson was put on the bench."""

    opened = Signal()

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._wanted_id = session.lesson.id if session.lesson else ""
        self._undo: Callable[[], None] | None = None
        self._offer_anew = False  # until a list has come with it: a newer one may call it off
        self.filters = ShelfFilters()
        self.filters.same_piece.setEnabled(session.lesson is not None)
        self.model = RowsModel(LESSONS)
        self.table = RowsView(say("Lessons"), self.model, WIDTHS)
        self.status = Faint()
        self.found = Faint()
        self.found.setAccessibleName(say("Where the words were found"))
        self.undo_button = QPushButton(say("&Undo"))
        self.undo_button.hide()
        self.open_button = QPushButton(say("&Open"))
        self.copy_button = QPushButton(say("&Copy for a student …"))
        self.archive_button = QPushButton(say("&Archive"))
        self.delete_button = QPushButton(say("&Delete"))
        self._lay_out()
        self.filters.changed.connect(self.refresh)
        self.table.selectionModel().selectionChanged.connect(lambda *_: self._enable())
        self.table.activated.connect(lambda _: self.open_lesson())
        self.open_button.clicked.connect(self.open_lesson)
        self.copy_button.clicked.connect(self.copy)
        self.archive_button.clicked.connect(self.archive)
        self.delete_button.clicked.connect(self.delete)
        self.undo_button.clicked.connect(self.undo)
        undo = QShortcut(QKeySequence(QKeySequence.StandardKey.Undo), self)
        undo.activated.connect(self.undo)
        self._enable()

    def _lay_out(self) -> None:
        said = QHBoxLayout()
        said.addWidget(self.status, 1)
        said.addWidget(self.undo_button)
        bottom = QHBoxLayout()
        for button in (
            self.open_button, self.copy_button, self.archive_button, self.delete_button,
        ):  # fmt: skip
            bottom.addWidget(button)
        bottom.addStretch(1)
        layout = QVBoxLayout(self)
        layout.addWidget(self.filters)
        layout.addWidget(self.table, 1)
        layout.addWidget(self.found)
        layout.addLayout(said)
        layout.addLayout(bottom)

    @property
    def rows(self) -> tuple[LessonRow, ...]:
        """The lessons that are listed."""
        return self.model.rows

    @property
    def picked(self) -> tuple[LessonRow, ...]:
        """The lessons that are selected."""
        return tuple(self.rows[at] for at in self.table.picked)

    def refresh(self, *, offer: bool = False) -> None:
        """List what passes the filters, in the background; with ``offer`` look as well for
        what there is to choose by."""
        picked = self.picked
        if picked:
            self._wanted_id = picked[0].id
        wanted = self.filters.wanted
        shelf, lesson = self._session.shelf, self._session.lesson
        same = lesson.id if lesson and self.filters.same_piece.isChecked() else None

        self._offer_anew = self._offer_anew or offer
        anew = self._offer_anew

        def work(_progress: object) -> tuple[tuple[LessonRow, ...], OnShelf | None]:
            piece = shelf.lesson_row(same).piece_id if same else None
            return shelf.lessons(piece_id=piece, **wanted), on_shelf(shelf) if anew else None

        self._session.jobs.start(
            "shelf list", say("Looking through the shelf"), work, self._show, lane=LANE,
            wrong=self._refused,
        )  # fmt: skip

    def _show(self, found: tuple[tuple[LessonRow, ...], OnShelf | None]) -> None:
        rows, choices = found
        if choices is not None:
            self.filters.offer(choices)
            self._offer_anew = False
        self.model.set_rows(rows)
        ids = [row.id for row in self.rows]
        if ids:
            self.table.pick(ids.index(self._wanted_id) if self._wanted_id in ids else 0)
        place = self.filters.place.currentData()
        self.archive_button.setText(say("&Back to the shelf") if place else say("&Archive"))
        self.archive_button.setVisible(place != 2)
        self.delete_button.setText(say("&Restore") if place == 2 else say("&Delete"))
        if not self.undo_button.isVisible():
            self._tell_count()
        self._enable()

    def _refused(self, sentence: str) -> None:
        self.model.set_rows(())
        self.status.setText(sentence)
        self._enable()

    def _tell_count(self) -> None:
        picked, every = len(self.picked), len(self.rows)
        words = count(every, "{n} lesson", "{n} lessons")
        if picked > 1:
            words += ", " + count(picked, "{n} selected", "{n} selected")
        self.status.setText(words)

    def _enable(self) -> None:
        picked = self.picked
        for button in (self.archive_button, self.delete_button):
            button.setEnabled(bool(picked))
        self.copy_button.setEnabled(len(picked) == 1)
        self.open_button.setEnabled(len(picked) == 1 and picked[0].deleted is None)
        if not self.undo_button.isVisible():
            self._tell_count()
        self._tell_found(picked)

    def _tell_found(self, picked: tuple[LessonRow, ...]) -> None:
        """Where the selected lesson has the words that were looked for."""
        search = self.filters.search.text()
        place = None
        if len(picked) == 1 and search.strip():
            try:
                place = self._session.shelf.excerpt(picked[0].id, search)
            except BadInput:
                place = None
        told = WHERE.get(place[0]) if place else None
        self.found.setText(say(told, line=place[1].replace("*", "")) if told and place else "")

    def open_lesson(self) -> None:
        """Open the selected lesson."""
        if self.open_button.isEnabled() and self._session.open(self.picked[0].id):
            self.opened.emit()

    def copy(self) -> None:
        """The same lesson for another student."""
        row = self.picked[0]
        student, agreed = QInputDialog.getText(
            self, say("Copy the lesson"), say("For whom is the copy?")
        )
        if not agreed:
            return
        shelf = self._session.shelf
        made: list[Lesson] = []
        if self._session.guard(
            lambda: made.append(shelf.duplicate(row.id, student=student.strip()))
        ):
            copied = made[0].id
            self._wanted_id = copied
            self.table.clearSelection()
            self._done(
                say("'{title}' is copied for {student}.", title=row.title,
                    student=student.strip() or say("nobody by name")),
                lambda: shelf.move([copied], deleted=True),
            )  # fmt: skip

    def archive(self) -> None:
        """To the archive, or back to the shelf."""
        rows = self.picked
        there = not rows[0].archived
        shelf, ids = self._session.shelf, [row.id for row in rows]
        if self._session.guard(lambda: shelf.move(ids, archived=there)):
            words = (
                count(len(rows), "{n} lesson is in the archive.", "{n} lessons are in the archive.")
                if there
                else count(len(rows), "{n} lesson is on the shelf again.",
                           "{n} lessons are on the shelf again.")
            )  # fmt: skip
            self._done(words, lambda: shelf.move(ids, archived=not there))

    def delete(self) -> None:
        """To the bin, or back from it."""
        rows = self.picked
        gone = not self.filters.bin
        shelf, ids = self._session.shelf, [row.id for row in rows]
        if not self._session.guard(lambda: shelf.move(ids, deleted=gone)):
            return
        if not gone:
            words = count(len(rows), "{n} lesson is on the shelf again.",
                          "{n} lessons are on the shelf again.")  # fmt: skip
        elif len(rows) == 1:
            words = say(
                "'{title}' is in the bin; it can be restored from there.", title=rows[0].title
            )
        else:
            words = say("{n} lessons are in the bin; they can be restored from there.",
                        n=len(rows))  # fmt: skip
        lesson = self._session.lesson
        open_one = lesson.id if gone and lesson and lesson.id in ids else None
        if open_one:
            self._session.put_away()

        def back() -> None:
            shelf.move(ids, deleted=not gone)
            if open_one:
                self._session.open(open_one)

        self._done(words, back)

    def _done(self, words: str, undo: Callable[[], None]) -> None:
        """Tell what was done, offer to take it back, and list anew."""
        self._undo = undo
        self.status.setText(words)
        self.undo_button.show()
        self.refresh(offer=True)

    def undo(self) -> None:
        """Take the last thing that was done here back."""
        undo, self._undo = self._undo, None
        if undo is None:
            return
        self.undo_button.hide()
        self._session.guard(undo)
        self.refresh(offer=True)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = event.key()
        if key in (Qt.Key.Key_Down, Qt.Key.Key_Up) and self.filters.search.hasFocus():
            self.table.setFocus()
        elif key == Qt.Key.Key_Delete and self.table.hasFocus() and self.picked:
            self.delete()
        else:
            super().keyPressEvent(event)
