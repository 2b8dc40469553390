"""A list of wrapped sentences, each as tall as its words."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, QSize, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QListWidget,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from workbench.ui.kit.look import em


class _Tall(QStyledItemDelegate):
    """Asks for the height the words need in the width there is."""

    def __init__(self, view: QListWidget) -> None:
        super().__init__(view)
        self._view = view

    def sizeHint(
        self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> QSize:
        line = em(self._view)
        # As if the scroll bar were there, so that its coming changes nothing.
        width = self._view.width() - self._view.verticalScrollBar().sizeHint().width() - line
        room = QRect(0, 0, max(line * 4, width), 1_000_000)
        words = str(index.data(Qt.ItemDataRole.DisplayRole))
        flags = Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignLeft
        found = self._view.fontMetrics().boundingRect(room, int(flags), words).height()
        return QSize(room.width(), found + round(line * 0.5))


class WordList(QListWidget):
    """Wrapped items without a scroll bar along the bottom."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWordWrap(True)
        self.setItemDelegate(_Tall(self))
        self.setTextElideMode(Qt.TextElideMode.ElideNone)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setMinimumHeight(em(self, 3))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if event.oldSize().width() != event.size().width():
            self.scheduleDelayedItemsLayout()
