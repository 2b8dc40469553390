"""Small widgets used all over the window."""

from __future__ import annotations

import html

from PySide6.QtCore import QEvent, QRect, QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QScrollArea, QSizePolicy, QWidget

from workbench.language.speech import say
from workbench.ui.kit.look import colours, em
from workbench.ui.kit.marks import draw_mark


def plain_tip(text: str) -> str:
    """A tooltip that shows the text as it stands, whatever it looks like."""
    if "<" not in text:
        return text
    return f"<span>{html.escape(text)}</span>".replace("\n", "<br>")


WIDEST = 32  # em, that words may insist on


class Words(QLabel):
    """Words shown as they stand: a title is never taken for a document with pictures."""

    def __init__(self, text: str = "", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setText(text)

    def minimumSizeHint(self) -> QSize:
        """At most so wide: a whole page pasted as a title must not widen the window."""
        return self._bounded(super().minimumSizeHint(), WIDEST)

    def sizeHint(self) -> QSize:
        return self._bounded(super().sizeHint(), 2 * WIDEST)

    def _bounded(self, hint: QSize, most: float) -> QSize:
        if not self.text():  # a picture
            return hint
        return QSize(min(hint.width(), em(self, most)), hint.height())


class Heading(Words):
    """The name of a part of the window."""

    def __init__(self, text: str, parent: QWidget | None = None) -> None:
        super().__init__(text, parent)
        self.setProperty("role", "heading")
        self.setAccessibleName(text)


class Wrapped(QLabel):
    """Wrapped words that claim the height they need: splitters do not ask for it."""

    def __init__(self, text: str = "", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWordWrap(True)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.setAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop)
        self.setText(text)

    def sizeHint(self) -> QSize:
        return QSize(self.width(), self.minimumHeight())

    def setText(self, text: str) -> None:
        super().setText(text)
        self._claim()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._claim()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._claim()

    def _claim(self) -> None:
        # Not heightForWidth: that never answers less than the height claimed before.
        room = QRect(0, 0, max(1, self.width()), 1_000_000)
        flags = Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignLeft
        found = self.fontMetrics().boundingRect(room, int(flags), self.text()).height()
        needed = found + 2 if self.text() else 0
        if needed != self.minimumHeight():
            self.setMinimumHeight(needed)
            self.updateGeometry()


class Faint(Wrapped):
    """Secondary words."""

    def __init__(self, text: str = "", parent: QWidget | None = None) -> None:
        super().__init__(text, parent)
        self.setProperty("role", "faint")


class Sign(QWidget):
    """One of the small signs."""

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._name = name
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        return QSize(em(self, 1.1), em(self, 1.1))

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        draw_mark(painter, self._name, self.rect().toRectF(), colours(self).alarm)
        painter.end()


class Caution(QWidget):
    """A caution: a sign and words; hidden while there is nothing to say."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.words = Wrapped()
        self.words.setProperty("role", "caution")
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(Sign("caution"), 0, Qt.AlignmentFlag.AlignTop)
        layout.addWidget(self.words, 1)
        self.setAccessibleName(say("Caution"))
        self.hide()

    def say(self, text: str) -> None:
        self.words.setText(text)
        self.setAccessibleDescription(text)
        self.setVisible(bool(text))


class Scrolled(QScrollArea):
    """A part of the window that scrolls up and down, on the ground it lies on."""

    def __init__(self, inner: QWidget, name: str, *, across: bool = False) -> None:
        super().__init__()
        self.setWidget(inner)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        if not across:
            self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.viewport().setAutoFillBackground(False)
        inner.setAutoFillBackground(False)
        self.setAccessibleName(name)
