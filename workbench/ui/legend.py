"""What the signs on the fretboard mean, drawn beside their words."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent, QPen, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from workbench.language.speech import mark, say
from workbench.ui.look import colours
from workbench.ui.marks import draw_mark

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
        for _, words in SIGNS:
            wide = line * 2.4 + metrics.horizontalAdvance(say(words))
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
            middle = box.center()
            painter.setPen(QPen(QColor(c.ink), 1.4))
            painter.setBrush(QColor(c.panel))
            if name in ("pin", "cut"):
                draw_mark(painter, name, box, c.warm if name == "pin" else c.alarm)
            elif name in ("comes", "goes"):
                style = Qt.PenStyle.SolidLine if name == "comes" else Qt.PenStyle.DashLine
                painter.setPen(QPen(QColor(c.accent), 1.8, style))
                end = QPointF(box.right() + line * 0.3, middle.y())
                painter.drawLine(QPointF(box.left(), middle.y()), end)
                painter.setPen(QPen(QColor(c.accent), 1.8))
                for dy in (-1, 1):
                    painter.drawLine(end, end + QPointF(-line * 0.2, dy * line * 0.2))
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
            painter.drawText(QPointF(corner.x() + line * 1.4, corner.y() + line * 0.85), said)
        painter.end()
