"""The shelf: lessons and pieces, found by their words; open, copy, archive, delete."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QCheckBox,
    QComboBox,
    QDialog,
    QHBoxLayout,
    QHeaderView,
    QInputDialog,
    QLabel,
    QLineEdit,
    QPushButton,
    QTableWidget,
    QTableWidgetItem,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from workbench.instrument.table import INSTRUMENTS
from workbench.music.errors import BadInput
from workbench.store.rows import LessonRow
from workbench.ui.look import em
from workbench.ui.parts import Faint
from workbench.ui.session import Session

COLUMNS = ("Title", "Student", "Instrument", "Key", "Grade", "Last used")
PLACES = ("On the shelf", "In the archive", "In the bin")


class ShelfDialog(QDialog):
    """A table of lessons."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self.rows: tuple[LessonRow, ...] = ()
        self.setWindowTitle("Shelf")
        self.setAccessibleName("Shelf")
        self.search = QLineEdit()
        self.search.setPlaceholderText("Words in title, student, techniques, notes")
        self.search.setAccessibleName("Search the shelf")
        self.search.setClearButtonEnabled(True)
        for clear in self.search.findChildren(QToolButton):
            clear.setAccessibleName("Clear the search")
        self.place = QComboBox()
        self.place.addItems(list(PLACES))
        self.place.setAccessibleName("Which lessons")
        self.instrument = QComboBox()
        self.instrument.setAccessibleName("Instrument")
        self.instrument.addItem("Any instrument", None)
        for found in INSTRUMENTS.values():
            self.instrument.addItem(found.name, found.id)
        self.same_piece = QCheckBox("Only this &piece")
        self.same_piece.setToolTip("Only lessons on the same piece as the open one")
        self.table = QTableWidget(0, len(COLUMNS))
        self.table.setAccessibleName("Lessons")
        self.table.setHorizontalHeaderLabels(list(COLUMNS))
        self.table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.table.verticalHeader().hide()
        self.table.setTabKeyNavigation(False)
        self.table.setShowGrid(False)
        self.table.setAlternatingRowColors(True)
        header = self.table.horizontalHeader()
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        self.status = Faint()
        self.open_button = QPushButton("&Open")
        self.open_button.setDefault(True)
        self.copy_button = QPushButton("&Copy for a student …")
        self.archive_button = QPushButton("&Archive")
        self.delete_button = QPushButton("&Delete")
        self.close_button = QPushButton("C&lose")

        top = QHBoxLayout()
        find = QLabel("&Find")
        find.setBuddy(self.search)
        top.addWidget(find)
        top.addWidget(self.search, 1)
        narrow = QHBoxLayout()
        for part in (self.place, self.instrument, self.same_piece):
            narrow.addWidget(part)
        narrow.addStretch(1)
        bottom = QHBoxLayout()
        for button in (
            self.open_button, self.copy_button, self.archive_button, self.delete_button,
        ):  # fmt: skip
            bottom.addWidget(button)
        bottom.addStretch(1)
        bottom.addWidget(self.close_button)
        layout = QVBoxLayout(self)
        layout.addLayout(top)
        layout.addLayout(narrow)
        layout.addWidget(self.table, 1)
        layout.addWidget(self.status)
        layout.addLayout(bottom)

        self.search.textChanged.connect(self.refresh)
        self.place.currentIndexChanged.connect(self.refresh)
        self.instrument.currentIndexChanged.connect(self.refresh)
        self.same_piece.toggled.connect(self.refresh)
        self.table.itemSelectionChanged.connect(self._enable)
        self.table.itemDoubleClicked.connect(lambda _: self.open_lesson())
        self.open_button.clicked.connect(self.open_lesson)
        self.copy_button.clicked.connect(self.copy)
        self.archive_button.clicked.connect(self.archive)
        self.delete_button.clicked.connect(self.delete)
        self.close_button.clicked.connect(self.reject)
        self.refresh()
        self.search.setFocus()

    def sizeHint(self) -> QSize:
        return QSize(em(self, 54), em(self, 26))

    def refresh(self) -> None:
        """List what passes the filters."""
        place = self.place.currentIndex()
        piece = None
        if self.same_piece.isChecked() and self._session.lesson:
            piece = piece_of(self._session)
        try:
            self.rows = self._session.shelf.lessons(
                self.search.text(), archived=None if place == 2 else place == 1,
                deleted=place == 2, instrument=self.instrument.currentData(), piece_id=piece,
            )  # fmt: skip
        except BadInput as wrong:
            self.rows = ()
            self._session.failed.emit(str(wrong))
        self.table.setRowCount(len(self.rows))
        for at, row in enumerate(self.rows):
            instrument = INSTRUMENTS.get(row.instrument)
            grade = "" if row.grade is None else f"{row.grade} {row.grade_level}".strip()
            used = row.used.astimezone().strftime("%Y-%m-%d %H:%M")
            cells = (
                row.title, row.student, instrument.name if instrument else row.instrument,
                row.key, grade, used,
            )  # fmt: skip
            for column, words in enumerate(cells):
                self.table.setItem(at, column, QTableWidgetItem(words))
        self.table.resizeRowsToContents()
        count = len(self.rows)
        self.status.setText(f"{count} lesson" + ("s" if count != 1 else ""))
        if self.rows:
            ids = [row.id for row in self.rows]
            here = self._session.lesson.id if self._session.lesson else ""
            self.table.selectRow(ids.index(here) if here in ids else 0)
        self.archive_button.setText("&Back to the shelf" if place else "&Archive")
        self.archive_button.setVisible(place != 2)
        self.delete_button.setText("&Restore" if place == 2 else "&Delete")
        self._enable()

    @property
    def current(self) -> LessonRow | None:
        at = self.table.currentRow()
        return self.rows[at] if 0 <= at < len(self.rows) else None

    def _enable(self) -> None:
        row = self.current
        for button in (self.copy_button, self.archive_button, self.delete_button):
            button.setEnabled(row is not None)
        self.open_button.setEnabled(row is not None and row.deleted is None)

    def open_lesson(self) -> None:
        """Open the selected lesson."""
        row = self.current
        if row and row.deleted is None and self._session.open(row.id):
            self.accept()

    def copy(self) -> None:
        """The same lesson for another student."""
        row = self.current
        if row is None:
            return
        student, agreed = QInputDialog.getText(self, "Copy the lesson", "For whom is the copy?")
        if agreed:
            self._do(lambda: self._session.shelf.duplicate(row.id, student=student.strip()))

    def archive(self) -> None:
        row = self.current
        if row is not None:
            self._do(lambda: self._session.shelf.archive(row.id, not row.archived))

    def delete(self) -> None:
        """To the bin, or back from it."""
        row = self.current
        if row is None:
            return
        shelf = self._session.shelf
        if row.deleted is not None:
            self._do(lambda: shelf.restore(row.id))
            return
        self._do(lambda: shelf.delete(row.id))
        self.status.setText(f"'{row.title}' is in the bin; it can be restored from there.")
        if self._session.lesson and self._session.lesson.id == row.id:
            self._session.put_away()

    def _do(self, work: Callable[[], object]) -> None:
        self._session.guard(work)
        self.refresh()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Down, Qt.Key.Key_Up) and self.search.hasFocus():
            self.table.setFocus()
        super().keyPressEvent(event)


def piece_of(session: Session) -> str | None:
    """The shelf's id of the open lesson's piece."""
    here = session.lesson.id if session.lesson else None
    rows = session.shelf.lessons(archived=None)
    return next((row.piece_id for row in rows if row.id == here), None)
