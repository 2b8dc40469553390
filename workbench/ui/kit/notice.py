"""A sentence over the window: what went wrong, and what to do. Nothing moves aside for it."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QRect, Qt
from PySide6.QtGui import QCursor, QPainter, QPaintEvent
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QWidget

from workbench.language.speech import say
from workbench.ui.kit.look import colours
from workbench.ui.kit.parts import Sign, Wrapped


class Notice(QWidget):
    """Stays until it is dismissed or another sentence takes its place. It lies over its
    parent's foot, or over its head where the mouse is at the foot: what is under the mouse
    stays where it is, and can be seen."""

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
        self.setAutoFillBackground(True)
        self.hide()

    def lie_over(self, around: QWidget) -> None:
        """Belong to another part of the window from now on."""
        self.setParent(around)
        around.installEventFilter(self)
        self.hide()

    def say(self, sentence: str, *, fault: bool = False) -> None:
        """Show a sentence; with ``fault`` a button leads to the error report."""
        self.report_button.setVisible(fault)
        self.words.setText(sentence)
        self.setAccessibleDescription(sentence)
        self.show()
        self.place()
        self.raise_()

    def place(self) -> None:
        """Lie over the edge of the parent that is farther from the mouse."""
        around = self.parentWidget()
        if around is None:
            return
        width = around.width()
        tall = max(self.sizeHint().height(), self.heightForWidth(width))
        foot = QRect(0, around.height() - tall, width, tall)
        mouse = around.mapFromGlobal(QCursor.pos())
        self.setGeometry(QRect(0, 0, width, tall) if foot.contains(mouse) else foot)

    def eventFilter(self, _watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Resize and self.isVisible():
            self.place()
        return False

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        c = colours(self)
        painter.fillRect(self.rect(), self.palette().base())
        painter.setPen(c.alarm)
        painter.drawRect(self.rect().adjusted(0, 0, -1, -1))
        painter.end()
