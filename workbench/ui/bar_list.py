"""The bars down the left side, in playing or written order, with their marks."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import (
    QAbstractListModel,
    QItemSelectionModel,
    QModelIndex,
    QPersistentModelIndex,
    Qt,
)
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QCheckBox,
    QComboBox,
    QListView,
    QVBoxLayout,
    QWidget,
)

from workbench.ui import note_keys
from workbench.ui.bar_delegate import ROW, BarDelegate
from workbench.ui.bar_rows import FILTERS, BarRow, keeps
from workbench.ui.parts import Heading
from workbench.ui.session import Session

Index = QModelIndex | QPersistentModelIndex


class BarModel(QAbstractListModel):
    """The rows that are shown."""

    def __init__(self) -> None:
        super().__init__()
        self.rows: list[BarRow] = []

    def show_rows(self, rows: list[BarRow]) -> None:
        if [row.position for row in rows] == [row.position for row in self.rows]:
            changed = [at for at, row in enumerate(rows) if row != self.rows[at]]
            self.rows = rows
            if changed:
                self.dataChanged.emit(self.index(changed[0]), self.index(changed[-1]))
            return
        self.beginResetModel()
        self.rows = rows
        self.endResetModel()

    def rowCount(self, parent: Index | None = None) -> int:
        return 0 if parent is not None and parent.isValid() else len(self.rows)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not 0 <= index.row() < len(self.rows):
            return None
        row = self.rows[index.row()]
        if role == Qt.ItemDataRole.DisplayRole:
            return row.title
        if role == ROW:
            return row
        if role in (Qt.ItemDataRole.ToolTipRole, Qt.ItemDataRole.AccessibleTextRole):
            return f"{row.spoken}\n{row.impossible}" if row.impossible else row.spoken
        return None


class _View(QListView):
    def __init__(self, session: Session) -> None:
        super().__init__()
        self._session = session

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if not note_keys.handle(self._session, event):
            super().keyPressEvent(event)


class BarList(QWidget):
    """The list with its filter. Several rows may be selected, for one note on all of them."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._follows = False
        self.filter = QComboBox()
        self.filter.setAccessibleName("Which bars are listed")
        self.filter.addItems([name[0].upper() + name[1:] for name in FILTERS])
        self.written = QCheckBox("As &written")
        self.written.setToolTip("Every bar once, as written, instead of as played")
        self.model = BarModel()
        self.view = _View(session)
        self.view.setAccessibleName("Bars")
        self.view.setAccessibleDescription("The bars in playing order with their marks")
        self.view.setModel(self.model)
        self.view.setItemDelegate(BarDelegate(self.view))
        self.view.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.view.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.view.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.view.setUniformItemSizes(True)
        self.heading = Heading("Bars as played")
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        for part in (self.heading, self.filter, self.written):
            layout.addWidget(part)
        layout.addWidget(self.view, 1)

        self.filter.currentIndexChanged.connect(self.refresh)
        self.written.toggled.connect(self._order_changed)
        self.view.selectionModel().currentChanged.connect(self._chosen)
        for signal in (session.opened, session.changed, session.fingered):
            signal.connect(self.refresh)
        session.selected.connect(self.follow)
        self.refresh()

    @property
    def selected_bars(self) -> tuple[int, ...]:
        """Written indices of the selected rows, lowest first."""
        rows = {self.model.rows[i.row()].index for i in self.view.selectedIndexes()}
        return tuple(sorted(rows))

    def refresh(self) -> None:
        """Show the session's rows."""
        rows = self._session.rows
        which = FILTERS[self.filter.currentIndex()]
        shown = [row for row in rows if keeps(row, which, rows)]
        if self.written.isChecked():
            first: dict[int, BarRow] = {}
            for row in shown:
                first.setdefault(row.index, row)
            shown = [first[index] for index in sorted(first)]
        self._follows = True
        self.model.show_rows(shown)
        self._follows = False
        self.follow()

    def follow(self) -> None:
        """Show the selected bar."""
        written = self.written.isChecked()
        for at, row in enumerate(self.model.rows):
            same = row.index == self._session.bar_index if written else None
            if same or (not written and row.position == self._session.position):
                index = self.model.index(at)
                if self.view.currentIndex() == index and self.view.selectedIndexes():
                    return
                self._follows = True
                self.view.selectionModel().setCurrentIndex(
                    index, QItemSelectionModel.SelectionFlag.ClearAndSelect
                )
                self.view.scrollTo(index)
                self._follows = False
                return
        self._follows = True
        self.view.selectionModel().clear()
        self._follows = False

    def _order_changed(self, written: bool) -> None:
        self.heading.setText("Bars as written" if written else "Bars as played")
        self.refresh()

    def _chosen(self, index: QModelIndex, _before: QModelIndex) -> None:
        if not self._follows and index.isValid():
            self._session.select(self.model.rows[index.row()].position)
