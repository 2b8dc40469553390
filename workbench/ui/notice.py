"""A sentence across the top of the window: what went wrong, and what to do."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QWidget

from workbench.language.speech import say
from workbench.ui.look import colours
from workbench.ui.parts import Sign, Wrapped


class Notice(QWidget):
    """Stays until it is dismissed or another sentence takes its place."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.words = Wrapped()
        self.words.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.words.setAccessibleName(say("Notice"))
        self.words.setAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.report_button = QPushButton(say("What happened …"))
        self.report_button.setToolTip(say("Read the error report, and keep it as a file"))
        self.close_button = QPushButton(say("Dismiss"))
        layout = QHBoxLayout(self)
        layout.addWidget(Sign("caution"), 0, Qt.AlignmentFlag.AlignVCenter)
        layout.addWidget(self.words, 1)
        layout.addWidget(self.report_button)
        layout.addWidget(self.close_button)
        self.close_button.clicked.connect(self.hide)
        self.setAccessibleName(say("Notice"))
        self.hide()

    def say(self, sentence: str, *, fault: bool = False) -> None:
        """Show a sentence; with ``fault`` a button leads to the error report."""
        self.report_button.setVisible(fault)
        self.words.setText(sentence)
        self.setAccessibleDescription(sentence)
        self.show()

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        c = colours(self)
        painter.fillRect(self.rect(), self.palette().base())
        painter.setPen(c.alarm)
        painter.drawLine(self.rect().bottomLeft(), self.rect().bottomRight())
        painter.end()
