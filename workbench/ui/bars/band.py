"""The form beside the bars: sections as stripes under their letters, repeats and endings
as they are printed, turned to run down the page."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPen

from workbench.teaching.lessons.bar_rows import BarRow
from workbench.ui.kit.look import Colours

SECTION, FORM = 1.25, 1.15  # widths of the two columns in line heights


def band_width(line: float) -> float:
    """How wide the band is where a line of text is so high."""
    return line * (SECTION + FORM)


def section_width(line: float) -> float:
    """The part of the band that sections can be drawn into by hand."""
    return line * SECTION


def draw_band(
    painter: QPainter, font: QFont, box: QRectF, row: BarRow, letter: str, begins: bool,
    c: Colours, dragged: bool,
) -> None:  # fmt: skip
    """Draw one row's part of the band. ``letter`` and whether its section ``begins`` here
    are given apart from the row: while a section is drawn by hand they run ahead of it."""
    line = QFontMetricsF(font).height()
    left = QRectF(box.left(), box.top(), line * SECTION, box.height())
    if dragged:
        wash = QColor(c.warm)
        wash.setAlphaF(0.25)
        painter.fillRect(left, wash)
    ink = c.warm if dragged else c.accent
    _section(painter, font, left, letter, begins, row.index > 0, ink, line)
    right = QRectF(left.right(), box.top(), line * FORM, box.height())
    _endings(painter, font, right, row, c, line)
    _repeats(painter, right, row, c, line)


def _section(
    painter: QPainter, font: QFont, box: QRectF, letter: str, begins: bool, edge: bool, ink: str,
    line: float,
) -> None:  # fmt: skip
    if not letter:
        return
    stripe = QRectF(box.center().x() - line * 0.11, box.top(), line * 0.22, box.height())
    if begins:
        # An edge to take hold of, and the letter under it.
        if edge:
            inset = line * 0.15
            hold = QRectF(box.left() + inset, box.top(), box.width() - 2 * inset, line * 0.12)
            painter.fillRect(hold, QColor(ink))
        bold = QFont(font)
        bold.setBold(True)
        metrics = QFontMetricsF(bold)
        words = metrics.elidedText(letter, Qt.TextElideMode.ElideRight, box.width())
        painter.setFont(bold)
        painter.setPen(QColor(ink))
        painter.drawText(
            QRectF(box.left(), box.top() + line * 0.2, box.width(), line),
            Qt.AlignmentFlag.AlignCenter, words,
        )  # fmt: skip
        stripe.setTop(box.top() + line * 1.3)
    painter.fillRect(stripe, QColor(ink))


def _endings(
    painter: QPainter, font: QFont, box: QRectF, row: BarRow, c: Colours, line: float
) -> None:
    """A bracket down the row with its number, as it stands over the staff."""
    if not row.endings:
        return
    painter.setPen(QPen(QColor(c.ink), max(1.0, line * 0.08)))
    x = box.left() + line * 0.25
    top = box.top() + line * 0.3
    painter.drawLine(QPointF(x, top), QPointF(x, box.bottom() - line * 0.3))
    painter.drawLine(QPointF(x, top), QPointF(x + line * 0.35, top))
    figures = QFont(font)
    figures.setPointSizeF(font.pointSizeF() * 0.88)
    painter.setFont(figures)
    text = ", ".join(map(str, row.endings)) + "."
    painter.drawText(
        QRectF(x + line * 0.12, top + line * 0.05, box.width(), line), 0, text,
    )  # fmt: skip


def _repeats(painter: QPainter, box: QRectF, row: BarRow, c: Colours, line: float) -> None:
    """Repeat signs lying on their side: dots on the inner side of a thin and a thick line."""
    painter.setBrush(QColor(c.ink))
    for here, edge, inward in (
        (row.repeat_start, box.top() + line * 0.1, 1), (row.repeat_end, box.bottom(), -1),
    ):  # fmt: skip
        if not here:
            continue
        left, wide = box.left() + line * 0.1, box.width() - line * 0.25
        thick, thin = line * 0.16, max(1.0, line * 0.06)
        first = edge if inward > 0 else edge - thick - line * 0.1
        painter.setPen(Qt.PenStyle.NoPen)
        painter.drawRect(QRectF(left, first, wide, thick))
        second = first + (thick + line * 0.09 if inward > 0 else -line * 0.09 - thin)
        painter.drawRect(QRectF(left, second, wide, thin))
        dots = second + (line * 0.28 if inward > 0 else -line * 0.2)
        for share in (0.32, 0.68):
            painter.drawEllipse(QPointF(left + wide * share, dots), line * 0.09, line * 0.09)
