"""What the signs on the fretboard mean, drawn beside their words."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent, QPen, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from workbench.language.speech import mark, say
from workbench.ui.kit.look import Colours, colours
from workbench.ui.kit.marks import draw_mark
from workbench.ui.neck.paint import tag

SIGNS = (
    ("begins", mark("sounds now")),
    ("stays", mark("stays down")),
    ("held", mark("held, or elsewhere in the bar")),
    ("offer", mark("also possible")),
    ("comes", mark("comes from")),
    ("goes", mark("goes to")),
    ("pin", mark("pinned")),
    ("cut", mark("cut short")),
)


class Legend(QWidget):
    """Signs and words in as many lines as they need."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(say("Signs on the fretboard"))
        self.setAccessibleDescription("; ".join(say(words) for _, words in SIGNS))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def _places(self, width: float) -> list[QPointF]:
        """The left top corner of every sign."""
        metrics = QFontMetricsF(self.font())
        line = metrics.height()
        out, x, y = [], 0.0, 0.0
        for name, words in SIGNS:
            wide = line * (1.0 + _room(name)) + metrics.horizontalAdvance(say(words))
            if x > 0 and x + wide - line > width:
                x, y = 0.0, y + line * 1.2
            out.append(QPointF(x, y))
            x += wide
        return out

    def sizeHint(self) -> QSize:
        line = QFontMetricsF(self.font()).height()
        return QSize(round(line * 10), round(self._places(self.width())[-1].y() + line * 1.3))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self.minimumHeight() != self.sizeHint().height():
            self.setMinimumHeight(self.sizeHint().height())

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        c = colours(self)
        line = QFontMetricsF(self.font()).height()
        for (name, words), corner in zip(SIGNS, self._places(self.width()), strict=True):
            box = QRectF(corner.x() + 1, corner.y() + line * 0.18, line * 0.8, line * 0.8)
            painter.setPen(QPen(QColor(c.ink), 1.4))
            painter.setBrush(QColor(c.panel))
            if name in ("pin", "cut"):
                draw_mark(painter, name, box, c.warm if name == "pin" else c.alarm)
            elif name in ("comes", "goes"):
                _way(painter, name, box, c)
            elif name == "stays":
                painter.setBrush(QColor(c.marker))
                painter.drawRoundedRect(box, 3, 3)
            else:
                if name == "begins":
                    painter.setBrush(QColor(c.marker))
                if name == "offer":
                    painter.setPen(QPen(QColor(c.accent), 1.8, Qt.PenStyle.DashLine))
                painter.drawEllipse(box)
            painter.setPen(QColor(c.faint))
            said = say(words)
            left = corner.x() + line * _room(name)
            painter.drawText(QPointF(left, corner.y() + line * 0.85), said)
        painter.end()


def _way(painter: QPainter, name: str, box: QRectF, c: Colours) -> None:
    """The place a finger leaves, or goes to, and an arrow on its way."""
    comes, line = name == "comes", box.height() / 0.8
    place = QRectF(box.left(), box.top() + line * 0.1, line * 0.8, line * 0.6)
    if not comes:
        place.translate(line, 0)
    painter.setPen(QPen(QColor(c.faint), 1.4))
    painter.drawPolygon(tag(place, comes, not comes))
    start = QPointF(place.right() if comes else box.left(), box.center().y())
    end = start + QPointF(line * 0.95, 0)
    style = Qt.PenStyle.SolidLine if comes else Qt.PenStyle.DashLine
    painter.setPen(QPen(QColor(c.accent), 1.8, style))
    painter.drawLine(start, end)
    painter.setPen(QPen(QColor(c.accent), 1.8))
    for dy in (-1, 1):
        painter.drawLine(end, end + QPointF(-line * 0.2, dy * line * 0.2))


def _room(name: str) -> float:
    """How wide a sign is with the space after it, in line heights."""
    return 2.3 if name in ("comes", "goes") else 1.4
