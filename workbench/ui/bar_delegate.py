"""Paints one row of the bar list."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPalette
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem

from workbench.ui.bar_rows import BarRow
from workbench.ui.look import DARK, LIGHT
from workbench.ui.marks import draw_mark

ROW = Qt.ItemDataRole.UserRole + 1
Index = QModelIndex | QPersistentModelIndex


class BarDelegate(QStyledItemDelegate):
    """A section band, the bar's name, what is special about it, and its marks."""

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        line = QFontMetricsF(option.font).height()
        return QSize(round(line * 11), round(line * 2.6))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        row: BarRow = index.data(ROW)
        c = DARK if option.palette.color(QPalette.ColorRole.Window).lightnessF() < 0.5 else LIGHT
        chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        ink, faint = (c.accent_ink, c.accent_ink) if chosen else (c.ink, c.faint)
        line = QFontMetricsF(option.font).height()
        box = QRectF(option.rect)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if chosen:
            painter.fillRect(box, QColor(c.accent))
        self._band(painter, option.font, row, QRectF(box.left(), box.top(), line, box.height()),
                   ink if chosen else c.accent, c.line)
        body = box.adjusted(line * 1.25, line * 0.2, -line * 0.4, -line * 0.3)
        marks_width = self._marks(painter, option.font, row, body, chosen, c, line)
        bold = QFont(option.font)
        bold.setBold(True)
        painter.setFont(bold)
        painter.setPen(QColor(ink))
        room = body.width() - marks_width - line * 0.3
        words = QFontMetricsF(bold).elidedText(row.short, Qt.TextElideMode.ElideRight, room)
        painter.drawText(QRectF(body.left(), body.top(), room, line), 0, words)
        small = QFont(option.font)
        small.setPointSizeF(small.pointSizeF() * 0.88)
        painter.setFont(small)
        painter.setPen(QColor(faint))
        same = f"as bar {row.same_as}" if row.same_as else ""
        under = "  ·  ".join(part for part in (row.chords, row.which, row.form, same) if part)
        if row.impossible:
            under = "cannot be played"
        words = QFontMetricsF(small).elidedText(
            under, Qt.TextElideMode.ElideRight, body.width()
        )
        painter.drawText(QRectF(body.left(), body.top() + line, body.width(), line), 0, words)
        self._effort(painter, row, body, ink, line)
        if option.state & QStyle.StateFlag.State_HasFocus:
            painter.setPen(QColor(ink))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(box.adjusted(1, 1, -1.5, -1.5))
        painter.restore()

    def _band(
        self, painter: QPainter, font: QFont, row: BarRow, box: QRectF, ink: str, line: str
    ) -> None:
        """The form at a glance: an unbroken stripe for a section, its letter at the start."""
        if not row.section:
            return
        stripe = box.adjusted(box.width() * 0.42, 0, -box.width() * 0.42, 0)
        if row.starts_section:
            bold = QFont(font)
            bold.setBold(True)
            painter.setFont(bold)
            painter.setPen(QColor(ink))
            height = QFontMetricsF(bold).height()
            painter.drawText(
                QRectF(box.left(), box.top() + height * 0.2, box.width(), height),
                Qt.AlignmentFlag.AlignCenter, row.section,
            )  # fmt: skip
            stripe.setTop(box.top() + height * 1.3)
        painter.fillRect(stripe, QColor(ink))

    def _marks(
        self, painter: QPainter, font: QFont, row: BarRow, body: QRectF, chosen: bool,
        c: object, line: float,
    ) -> float:  # fmt: skip
        """Signs with numbers at the right end; the width they take."""
        colours = {"note": c.accent, "pin": c.warm, "cut": c.alarm, "impossible": c.alarm}  # type: ignore[attr-defined]
        numbers = {"note": row.notes, "pin": row.pins, "cut": row.cuts}
        painter.setFont(font)
        metrics = QFontMetricsF(font)
        right = body.right()
        for name, _ in reversed(row.marks):
            ink = c.accent_ink if chosen else colours[name]  # type: ignore[attr-defined]
            text = str(numbers.get(name, ""))
            width = metrics.horizontalAdvance(text)
            painter.setPen(QColor(ink))
            painter.drawText(QRectF(right - width, body.top(), width + 1, line), 0, text)
            right -= width + line * 0.15 + line * 0.78
            sign = QRectF(right, body.top() + line * 0.12, line * 0.78, line * 0.78)
            draw_mark(painter, name, sign, ink)
            right -= line * 0.4
        return body.right() - right

    def _effort(
        self, painter: QPainter, row: BarRow, body: QRectF, ink: str, line: float
    ) -> None:
        """A thin bar as long as the bar of music is hard."""
        if row.effort <= 0:
            return
        colour = QColor(ink)
        colour.setAlphaF(0.45)
        painter.fillRect(
            QRectF(body.left(), body.bottom() + line * 0.05, body.width() * row.effort,
                   max(1.5, line * 0.1)),
            colour,
        )  # fmt: skip
