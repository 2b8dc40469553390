"""The small signs of the window, drawn as lines so that they scale and need no font."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen, QPolygonF

NAMES = ("note", "pin", "cut", "impossible", "caution")


def draw_mark(painter: QPainter, name: str, box: QRectF, colour: str) -> None:
    """Draw a sign into a square box."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    side = min(box.width(), box.height())
    painter.translate(box.center().x() - side / 2, box.center().y() - side / 2)
    painter.scale(side / 16, side / 16)
    pen = QPen(QColor(colour), 1.5)
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    painter.setPen(pen)
    {"note": _note, "pin": _pin, "cut": _cut}.get(name, _triangle)(painter, QColor(colour))
    painter.restore()


def _note(painter: QPainter, colour: QColor) -> None:
    # A slip of paper with two lines of writing.
    path = QPainterPath(QPointF(3, 2))
    for x, y in ((10, 2), (13, 5), (13, 14), (3, 14), (3, 2)):
        path.lineTo(x, y)
    painter.drawPath(path)
    painter.drawLine(QPointF(5.5, 7.5), QPointF(10.5, 7.5))
    painter.drawLine(QPointF(5.5, 10.7), QPointF(9, 10.7))


def _pin(painter: QPainter, colour: QColor) -> None:
    painter.setBrush(colour)
    painter.drawEllipse(QPointF(8, 5), 3.2, 3.2)
    painter.drawLine(QPointF(8, 8), QPointF(8, 14.5))


def _cut(painter: QPainter, colour: QColor) -> None:
    # A held sound that stops short of its written end.
    painter.setBrush(colour)
    painter.drawEllipse(QPointF(3, 8), 1.7, 1.7)
    painter.drawLine(QPointF(3, 8), QPointF(8, 8))
    painter.drawLine(QPointF(8.8, 4), QPointF(8.8, 12))
    painter.drawPoint(QPointF(11.5, 8))
    painter.drawPoint(QPointF(14, 8))


def _triangle(painter: QPainter, colour: QColor) -> None:
    painter.drawPolygon(QPolygonF([QPointF(8, 2), QPointF(14.5, 13.5), QPointF(1.5, 13.5)]))
    painter.drawLine(QPointF(8, 6.3), QPointF(8, 9.6))
    painter.drawPoint(QPointF(8, 11.7))
