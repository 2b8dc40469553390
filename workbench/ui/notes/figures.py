"""Small figures beside a note: a grip in a box, a fingering that was not taken."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from workbench.language.speech import say
from workbench.teaching.bars.grip_words import Frets, grip_text
from workbench.ui.kit.look import colours, em
from workbench.ui.kit.parts import plain_tip

LEAST_ROWS = 4  # frets that a box shows


class GripBox(QWidget):
    """A grip as a drawn box: strings upright, string 1 to the right (left-handed: left)."""

    def __init__(self, mirrored: bool = False, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.grip: Frets | None = None
        self.mirrored = mirrored
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def show_grip(self, grip: Frets | None) -> None:
        """Show another grip, or none."""
        self.grip = grip
        self.setAccessibleName(say("Picture of the grip {grip}", grip=grip_text(grip or ())))
        self.setToolTip(plain_tip(self.accessibleName()) if grip else "")
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:
        strings = len(self.grip or (0,) * 4)
        return QSize(em(self, 1.0 * (strings - 1) + 2.6), em(self, 1.1 * LEAST_ROWS + 1.6))

    def paintEvent(self, _event: QPaintEvent) -> None:
        grip = self.grip
        if grip is None:
            return
        c, painter = colours(self), QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        played = [fret for fret in grip if fret]
        high = max(played, default=1)
        base = 1 if high <= LEAST_ROWS else min(played)
        rows = max(LEAST_ROWS, high - base + 1)
        gap = float(em(self))
        left, top = gap * 1.6, gap * 1.1
        step = (self.height() - top - gap * 0.4) / rows
        wide = gap * (len(grip) - 1)

        def x_of(place: int) -> float:
            return left + gap * (len(grip) - 1 - place if self.mirrored else place)

        line = QPen(QColor(c.wood_line), 1.2)
        painter.setPen(line)
        for place in range(len(grip)):
            painter.drawLine(QPointF(x_of(place), top), QPointF(x_of(place), top + rows * step))
        for row in range(rows + 1):
            painter.setPen(QPen(QColor(c.ink), 3.0) if row == 0 and base == 1 else line)
            y = top + row * step
            painter.drawLine(QPointF(left, y), QPointF(left + wide, y))
        small = QFont(self.font())
        small.setPointSizeF(small.pointSizeF() * 0.85)
        painter.setFont(small)
        if base > 1:
            painter.setPen(QColor(c.faint))
            where = QRectF(0, top, left - gap * 0.45, step)
            painter.drawText(where, Qt.AlignmentFlag.AlignRight, str(base))
        for place, fret in enumerate(grip):
            middle = QPointF(x_of(place), top - gap * 0.5)
            if fret:
                painter.setPen(Qt.PenStyle.NoPen)
                painter.setBrush(QColor(c.marker))
                dot = QPointF(x_of(place), top + (fret - base + 0.5) * step)
                painter.drawEllipse(dot, gap * 0.38, gap * 0.38)
                continue
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(QColor(c.ink), 1.3))
            size = gap * 0.22
            if fret == 0:
                painter.drawEllipse(middle, size, size)
            else:
                for sign in (-1, 1):
                    off = QPointF(size, size * sign)
                    painter.drawLine(middle - off, middle + off)
        painter.end()
