"""Rows of the shelf for a table: any number of them, a cell made only when it is looked at."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import datetime
from typing import Any, Generic, TypeVar

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableView, QWidget

from workbench.instrument.table import INSTRUMENTS
from workbench.language.names import key_words
from workbench.language.speech import mark, say
from workbench.music.errors import BadInput
from workbench.store.documents import fold
from workbench.store.rows import LessonRow, PieceRow
from workbench.teaching.techniques.catalogue import technique
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import plain_tip

FIRST = 11  # the least width of the first column, in line heights
Index = QModelIndex | QPersistentModelIndex
Row = TypeVar("Row", LessonRow, PieceRow)
Column = tuple[str, Callable[[Row], str], Callable[[Row], Any]]  # head, words, order


def instrument_name(instrument: str) -> str:
    """An instrument's name, or the tuning of an own one."""
    found = INSTRUMENTS.get(instrument)
    return say(found.name) if found else instrument.removeprefix("custom:")


def technique_name(name: str) -> str:
    """A technique's name in the language spoken; a teacher's own word as it is."""
    try:
        return say(technique(name).name)
    except BadInput:
        return name


def grade_words(row: LessonRow) -> str:
    """The grade a teacher gave, "" where none."""
    level = say(row.grade_level) if row.grade_level else ""
    return "" if row.grade is None else f"{row.grade} {level}".strip()


def _date(time: datetime) -> str:
    return f"{time.astimezone():%Y-%m-%d %H:%M}"


LESSONS: tuple[Column[LessonRow], ...] = (
    (mark("Title"), lambda r: r.title, lambda r: fold(r.title)),
    (mark("Student"), lambda r: r.student, lambda r: fold(r.student)),
    (mark("Instrument"), lambda r: instrument_name(r.instrument), lambda r: r.instrument),
    (mark("Key"), lambda r: key_words(r.key), lambda r: key_words(r.key)),
    (mark("Grade"), grade_words, lambda r: (r.grade is None, r.grade or 0, r.grade_level)),
    (
        mark("Techniques"),
        lambda r: ", ".join(map(technique_name, r.techniques)),
        lambda r: len(r.techniques),
    ),
    (mark("Last used"), lambda r: _date(r.used), lambda r: r.used),
)
PIECES: tuple[Column[PieceRow], ...] = (
    (mark("Title"), lambda r: r.title, lambda r: fold(r.title)),
    (mark("Composer"), lambda r: r.composer, lambda r: fold(r.composer)),
    (mark("Key"), lambda r: key_words(r.key), lambda r: key_words(r.key)),
    (mark("Bars"), lambda r: str(r.bars), lambda r: r.bars),
    (mark("Lessons"), lambda r: str(r.lessons), lambda r: r.lessons),
    (mark("File"), lambda r: r.source, lambda r: fold(r.source)),
    (mark("Added"), lambda r: _date(r.created), lambda r: r.created),
)


class RowsModel(QAbstractTableModel, Generic[Row]):
    """``rows`` as they are listed; sorting a column reorders them."""

    def __init__(self, columns: tuple[Column[Row], ...]) -> None:
        super().__init__()
        self._columns: tuple[Column[Row], ...] = columns
        self.rows: tuple[Row, ...] = ()
        self._sorted: tuple[int, bool] | None = None  # column, descending

    def set_rows(self, rows: Sequence[Row]) -> None:
        """List other rows, in the order that was chosen."""
        self.beginResetModel()
        self.rows = self._in_order(rows)
        self.endResetModel()

    def _in_order(self, rows: Sequence[Row]) -> tuple[Row, ...]:
        if self._sorted is None:
            return tuple(rows)
        column, descending = self._sorted
        return tuple(sorted(rows, key=self._columns[column][2], reverse=descending))

    def rowCount(self, parent: Index | None = None) -> int:
        return 0 if parent is not None and parent.isValid() else len(self.rows)

    def columnCount(self, parent: Index | None = None) -> int:
        return 0 if parent is not None and parent.isValid() else len(self._columns)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        wanted = (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole)
        if not index.isValid() or role not in wanted:
            return None
        words = self._columns[index.column()][1](self.rows[index.row()])
        tip = role == Qt.ItemDataRole.ToolTipRole and isinstance(words, str)
        return plain_tip(words) if tip else words

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> object:
        if orientation == Qt.Orientation.Horizontal and role == Qt.ItemDataRole.DisplayRole:
            return say(self._columns[section][0])
        return None

    def sort(self, column: int, order: Qt.SortOrder = Qt.SortOrder.AscendingOrder) -> None:
        """Order the rows by a column; below 0 as they come."""
        down = order == Qt.SortOrder.DescendingOrder
        self._sorted = (column, down) if column >= 0 else None
        self.layoutAboutToBeChanged.emit()
        self.rows = self._in_order(self.rows)
        self.layoutChanged.emit()


class RowsView(QTableView):
    """A table of rows of one height, whole rows selected, sorted by its heads."""

    def __init__(self, name: str, model: QAbstractTableModel, widths: Sequence[float]) -> None:
        super().__init__()
        self.setAccessibleName(name)
        self.setModel(model)
        self._widths = widths  # in line heights; the first column takes what is left
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setTabKeyNavigation(False)
        self.setShowGrid(False)
        self.setAlternatingRowColors(True)
        self.setWordWrap(False)
        self.setCornerButtonEnabled(False)
        self.verticalHeader().hide()
        self.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        self.verticalHeader().setDefaultSectionSize(em(self, 1.45))
        header = self.horizontalHeader()
        header.setSectionsClickable(True)
        header.setSortIndicatorShown(True)
        header.setSortIndicatorClearable(True)
        header.setSortIndicator(-1, Qt.SortOrder.AscendingOrder)
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        header.setMinimumSectionSize(em(self, 2))
        header.sortIndicatorChanged.connect(model.sort)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Widths by the text; where that is too much, all columns give way alike."""
        super().resizeEvent(event)
        if event.oldSize().width() == event.size().width():
            return
        wanted = sum(self._widths) + FIRST
        share = min(1.0, self.viewport().width() / max(1, em(self, wanted)))
        for column, width in enumerate(self._widths, 1):
            self.setColumnWidth(column, em(self, width * share))

    @property
    def picked(self) -> tuple[int, ...]:
        """The selected rows, from the top."""
        return tuple(sorted(index.row() for index in self.selectionModel().selectedRows()))

    def pick(self, row: int) -> None:
        """Select one row and show it."""
        self.selectRow(row)
        self.scrollTo(self.model().index(row, 0))


def named(part: QWidget, name: str) -> QWidget:
    """Give a control its name to be read out, and the same to be shown."""
    part.setAccessibleName(name)
    part.setToolTip(plain_tip(name))
    return part
