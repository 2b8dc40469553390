"""The reach of the left hand drawn on the neck: a band of comfort, a bracket, its figures."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QFontMetricsF, QPainter, QPen

from workbench.fingering.telling.reaches import Reach
from workbench.ui.kit.look import Colours
from workbench.ui.neck.layout import NeckLayout


def bracket(layout: NeckLayout, reach: Reach) -> tuple[float, float, float]:
    """Where the bracket over the neck begins, where the reach ends and where comfort ends:
    true millimetres along the neck, away from the nut."""
    start = layout.finger_x(reach.from_fret)
    away = -layout.scale if layout.mirrored else layout.scale
    return start, start + away * reach.apart, start + away * reach.comfort


def beside(
    ends: tuple[float, float], wide: float, gap: float, seen: tuple[float, float], mirrored: bool
) -> float:
    """Where words ``wide`` pixels begin that stand ``gap`` beside what lies between ``ends``:
    on the far side from the nut, or on its near side where only that has room in what is
    ``seen`` of the neck, else as far out as they are seen whole."""
    places = [ends[1] + gap, ends[0] - gap - wide]
    if mirrored:
        places.reverse()
    for at in places:
        if seen[0] <= at <= seen[1] - wide:
            return at
    return max(seen[0], min(places[0], seen[1] - wide))


def draw_reach(
    painter: QPainter, layout: NeckLayout, reach: Reach, c: Colours, seen: tuple[float, float]
) -> None:
    """A band as long as is comfortable, over it a bracket as long as the reach, and the
    figures; what is beyond comfort is hatched as well as coloured. ``seen``: from where to
    where the neck is in sight, in pixels."""
    start, end, easy = bracket(layout, reach)
    gap, y = layout.gap, layout.string_y(1) - layout.gap * 0.86
    tall = gap * 0.3
    band = QColor(c.accent)
    band.setAlphaF(0.25)
    painter.fillRect(_box(start, easy, y - tall / 2, tall), band)
    painter.setPen(QPen(QColor(c.accent), 1.2))
    painter.drawLine(QPointF(easy, y - tall / 2), QPointF(easy, y + tall / 2))
    ink = QColor(c.alarm if reach.wide else c.ink)
    if reach.wide:
        hatch = QBrush(ink, Qt.BrushStyle.BDiagPattern)
        painter.fillRect(_box(easy, end, y - tall / 2, tall), hatch)
    painter.setPen(QPen(ink, 2.0))
    painter.drawLine(QPointF(start, y), QPointF(end, y))
    for x in (start, end):
        painter.drawLine(QPointF(x, y - tall / 2), QPointF(x, y + tall * 0.8))
    words = str(reach.words)
    wide = QFontMetricsF(painter.font()).horizontalAdvance(words) + gap * 0.2
    ends = min(start, end, easy), max(start, end, easy)
    at = beside(ends, wide, gap * 0.3, seen, layout.mirrored)
    if at < ends[1] and at + wide > ends[0]:  # over the bracket
        painter.fillRect(QRectF(at, y - tall, wide, 2 * tall), QColor(c.ground))
    painter.drawText(
        QRectF(at, y - gap / 2, wide, gap),
        Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, words,
    )  # fmt: skip


def _box(x0: float, x1: float, y: float, tall: float) -> QRectF:
    return QRectF(min(x0, x1), y, abs(x1 - x0), tall)
