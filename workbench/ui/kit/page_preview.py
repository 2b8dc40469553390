"""Pages as they will be printed, to be turned and seen closer."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QImage, QKeySequence, QPixmap, QResizeEvent
from PySide6.QtWidgets import (
    QHBoxLayout,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from workbench.language.speech import say
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Words

ZOOMS = (0.5, 3.0)


class PagePreview(QWidget):
    """Shows one page of a document; asks for its picture by ``wanted``."""

    wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.count, self.number, self.zoom = 0, 0, 1.0
        self.page = Words(say("Laying out the pages …"))
        self.page.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.page.setWordWrap(True)
        self.area = QScrollArea()
        self.area.setWidget(self.page)
        self.area.setWidgetResizable(True)
        self.area.setAccessibleName(say("Preview"))
        self.back, self.on = QPushButton("‹"), QPushButton("›")
        self.smaller, self.larger = QPushButton("−"), QPushButton("+")
        self.where = Words()
        row = QHBoxLayout()
        for button, name, key, does in (
            (self.back, say("Previous page"), "PgUp", lambda: self.turn(-1)),
            (self.on, say("Next page"), "PgDown", lambda: self.turn(1)),
            (self.smaller, say("See the page smaller"), "Ctrl+-", lambda: self.see(1 / 1.25)),
            (self.larger, say("See the page larger"), "Ctrl++", lambda: self.see(1.25)),
        ):
            button.setAccessibleName(name)
            button.setShortcut(QKeySequence(key))
            button.setToolTip(f"{name} ({key})")
            button.setAutoDefault(False)
            button.clicked.connect(lambda _=False, does=does: does())
            row.addWidget(button)
            if button is self.on:
                row.insertWidget(1, self.where, 1, Qt.AlignmentFlag.AlignCenter)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.area, 1)
        layout.addLayout(row)
        self._tell()

    @property
    def wide(self) -> int:
        """Pixels of the screen that a page is to be across."""
        return round(max(em(self, 10), self.area.viewport().width() - 8) * self.zoom)

    def set_count(self, count: int) -> None:
        """Another document, of so many pages."""
        self.count = count
        self.number = max(0, min(self.number, count - 1))
        self._tell()

    def turn(self, by: int) -> None:
        number = max(0, min(self.number + by, self.count - 1))
        if number != self.number:
            self.number = number
            self._tell()
            self.wanted.emit()

    def see(self, factor: float) -> None:
        self.zoom = max(ZOOMS[0], min(ZOOMS[1], self.zoom * factor))
        self.wanted.emit()

    def show_page(self, image: QImage) -> None:
        self.page.setPixmap(QPixmap.fromImage(image))
        self.page.setAccessibleName(self.where.text())

    def show_words(self, words: str) -> None:
        """What stands in the way of a page."""
        self.set_count(0)
        self.page.setText(words)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self.count:
            self.wanted.emit()

    def _tell(self) -> None:
        said = say("Page {page} of {pages}", page=self.number + 1, pages=self.count)
        self.where.setText(said if self.count else "")
        self.back.setEnabled(self.number > 0)
        self.on.setEnabled(self.number < self.count - 1)
