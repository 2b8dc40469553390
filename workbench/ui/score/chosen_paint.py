"""What is selected, painted over the engraved music."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QPainter, QPen


def paint_bar(painter: QPainter, rect: QRectF, accent: QColor) -> None:
    """A box around a bar, in pixels of the view, and a faint wash in it."""
    shown = rect.adjusted(1, 1, -1, -1)
    wash = QColor(accent)
    wash.setAlphaF(0.10)
    painter.fillRect(shown, wash)
    painter.setPen(QPen(accent, 1.6))
    painter.drawRoundedRect(shown, 4, 4)


def paint_notes(painter: QPainter, rects: Iterable[QRectF], accent: QColor) -> None:
    """A ring around each note head, in pixels of the view."""
    painter.setPen(QPen(accent, 2.0))
    for rect in rects:
        painter.drawRoundedRect(rect.adjusted(-3, -3, 3, 3), 5, 5)
