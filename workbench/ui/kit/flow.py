"""A row of controls that goes on in a second one where there is no more width."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import QLayout, QLayoutItem, QSizePolicy, QWidget


class FlowLayout(QLayout):
    """Lays its widgets from the left, each as wide as it would like to be; the last one of a
    row that would like to grow has what is left."""

    def __init__(self, parent: QWidget | None = None, gap: int = 0) -> None:
        super().__init__(parent)
        self.setSpacing(gap)
        self._items: list[QLayoutItem] = []

    def addItem(self, item: QLayoutItem) -> None:
        self._items.append(item)

    def count(self) -> int:
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    def expandingDirections(self) -> Qt.Orientation:
        return Qt.Orientation(0)

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        return self._lay(QRect(0, 0, width, 0), False)

    def setGeometry(self, rect: QRect) -> None:
        super().setGeometry(rect)
        self._lay(rect, True)

    def sizeHint(self) -> QSize:
        """All in one row."""
        hints = [item.sizeHint() for item in self._items if not item.isEmpty()]
        wide = sum(hint.width() for hint in hints) + max(0, len(hints) - 1) * self.spacing()
        return self.minimumSize().expandedTo(QSize(wide, 0))

    def minimumSize(self) -> QSize:
        size = QSize()
        for item in self._items:
            size = size.expandedTo(item.minimumSize())
        edges = self.contentsMargins()
        return size + QSize(edges.left() + edges.right(), edges.top() + edges.bottom())

    def _lay(self, rect: QRect, really: bool) -> int:
        """Lay the widgets into a rectangle; the height that takes."""
        edges, gap = self.contentsMargins(), max(0, self.spacing())
        inside = rect.adjusted(edges.left(), edges.top(), -edges.right(), -edges.bottom())
        rows: list[list[QLayoutItem]] = [[]]
        used = 0
        for item in self._items:
            widget = item.widget()
            if widget is not None and widget.isHidden():
                continue
            wide = self._wide(item)
            if rows[-1] and used + wide > inside.width():
                rows.append([])
                used = 0
            rows[-1].append(item)
            used += wide + gap
        y = inside.top()
        for row in rows:
            high = max((item.sizeHint().height() for item in row), default=0)
            x = inside.left()
            for item in row:
                wide = min(self._wide(item), inside.width())
                if self._grows(item) and item is row[-1]:
                    wide = max(0, inside.right() + 1 - x)
                if really:
                    tall = min(high, item.sizeHint().height())
                    item.setGeometry(QRect(QPoint(x, y + (high - tall) // 2), QSize(wide, tall)))
                x += wide + gap
            y += high + gap
        return y - gap + edges.bottom() - rect.top()

    def _wide(self, item: QLayoutItem) -> int:
        """What an item asks for: nothing where its widget takes what is left."""
        return 0 if self._grows(item) else item.sizeHint().width()

    @staticmethod
    def _grows(item: QLayoutItem) -> bool:
        widget = item.widget()
        return (
            widget is not None
            and widget.sizePolicy().horizontalPolicy() == QSizePolicy.Policy.Ignored
        )
