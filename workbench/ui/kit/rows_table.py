"""A table to read: rows of words under heads, as tall as its words need."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)


class RowsTable(QTableWidget):
    """``rows`` of texts under ``heads``; rows in ``strong`` are set bold. The first
    column stretches alone where ``lead`` is set, else all columns share the width."""

    def __init__(
        self,
        name: str,
        heads: Sequence[str],
        rows: Sequence[Sequence[str]],
        *,
        strong: frozenset[int] = frozenset(),
        lead: bool = False,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(len(rows), len(heads), parent)
        self.setAccessibleName(name)
        self.setHorizontalHeaderLabels(list(heads))
        self.verticalHeader().hide()
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setTabKeyNavigation(False)
        self.setWordWrap(True)
        for r, row in enumerate(rows):
            for c, text in enumerate(row):
                item = QTableWidgetItem(text)
                if r in strong:
                    font = item.font()
                    font.setBold(True)
                    item.setFont(font)
                self.setItem(r, c, item)
        header = self.horizontalHeader()
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        stretch = QHeaderView.ResizeMode.Stretch
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents if lead else stretch)
        if lead:
            header.setSectionResizeMode(0, stretch)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.resizeRowsToContents()
