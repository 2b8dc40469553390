"""Paints one row of the bar list."""

from __future__ import annotations

from typing import Protocol

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPixmap
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from workbench.language.speech import say
from workbench.teaching.lessons.bar_rows import NO_FACTS, BarFacts, BarRow
from workbench.ui.bars.band import band_width, draw_band
from workbench.ui.kit.look import Colours, colours
from workbench.ui.kit.marks import draw_mark

ROW = Qt.ItemDataRole.UserRole + 1
FACTS = Qt.ItemDataRole.UserRole + 2
Index = QModelIndex | QPersistentModelIndex


def small(font: QFont, times: float = 0.88) -> QFont:
    """The font a little smaller."""
    out = QFont(font)
    out.setPointSizeF(font.pointSizeF() * times)
    return out


class Shown(Protocol):
    """What is shown beside a row, and how tall its picture is."""

    def picture_height(self) -> float: ...

    def picture(self, index: int) -> QPixmap | None: ...

    def is_heard(self, row: BarRow) -> bool: ...

    def band_of(self, row: BarRow) -> tuple[str, bool]: ...

    def dragged(self, row: BarRow) -> bool: ...


class BarDelegate(QStyledItemDelegate):
    """The form, the bar's name and marks, what is special about it, a picture of it, and
    how hard it is."""

    def __init__(self, view: QWidget, shown: Shown) -> None:
        super().__init__(view)
        self._view, self._shown = view, shown

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        line = QFontMetricsF(option.font).height()
        return QSize(round(line * 11), round(line * 2.95 + self._shown.picture_height()))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        row: BarRow = index.data(ROW)
        facts: BarFacts = index.data(FACTS) or NO_FACTS
        c = colours(self._view)
        chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        line = QFontMetricsF(option.font).height()
        box = QRectF(option.rect)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        wash = QColor(c.accent)
        if chosen:
            wash.setAlphaF(0.17)
            painter.fillRect(box, wash)
            painter.fillRect(QRectF(box.right() - 3, box.top(), 3, box.height()), QColor(c.accent))
        if self._shown.is_heard(row):
            heard = QColor(c.warm)
            heard.setAlphaF(0.28)
            painter.fillRect(box, heard)
        band = QRectF(box.left(), box.top(), band_width(line), box.height())
        letter, begins = self._shown.band_of(row)
        draw_band(painter, option.font, band, row, letter, begins, c, self._shown.dragged(row))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QColor(c.line))
        painter.drawLine(QPointF(band.right(), box.bottom() - 0.5), box.bottomRight())
        body = QRectF(box.left() + band.width() + line * 0.2, box.top() + line * 0.2, 0, 0)
        body.setBottomRight(box.bottomRight() - QPointF(line * 0.45, line * 0.2))
        self._words(painter, option.font, row, facts, body, c, line)
        self._picture(painter, row, body, line)
        self._difficulty(painter, option.font, facts, body, c, line)
        if option.state & QStyle.StateFlag.State_HasFocus:
            painter.setPen(QColor(c.accent))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(box.adjusted(1, 1, -1.5, -1.5))
        painter.restore()

    def _words(
        self, painter: QPainter, font: QFont, row: BarRow, facts: BarFacts, body: QRectF,
        c: Colours, line: float,
    ) -> None:  # fmt: skip
        """Name and marks above, what is special about the bar below."""
        room = body.width() - self._marks(painter, font, row, body, c, line) - line * 0.3
        bold = QFont(font)
        bold.setBold(True)
        painter.setFont(bold)
        painter.setPen(QColor(c.ink))
        metrics = QFontMetricsF(bold)
        # beside large marks the number says more than the first letter of "Bar"
        short = str(row.short)
        name = short if metrics.horizontalAdvance(short) <= room else row.number
        words = metrics.elidedText(name, Qt.TextElideMode.ElideRight, room)
        painter.drawText(QRectF(body.left(), body.top(), room, line), 0, words)
        lower = small(font)
        painter.setFont(lower)
        painter.setPen(QColor(c.faint))
        used = metrics.horizontalAdvance(words) + line * 0.4
        turn = str(row.which)
        beside = QFontMetricsF(lower).horizontalAdvance(turn) <= room - used
        if beside:
            painter.drawText(
                QRectF(body.left() + used, body.top(), room - used, line * 0.96),
                Qt.AlignmentFlag.AlignVCenter, turn,
            )  # fmt: skip
        which = "" if beside else turn
        # The band has room for a letter; a name stands whole in its first bar.
        section = row.section if row.starts_section and len(row.section) > 2 else ""
        parts = [str(part) for part in (section, which, row.chords, row.jumps, facts.seen) if part]
        if row.impossible:
            parts, ink = [say("cannot be played")], c.alarm
            painter.setPen(QColor(ink))
        words = QFontMetricsF(lower).elidedText(
            "  ·  ".join(parts), Qt.TextElideMode.ElideRight, body.width()
        )
        painter.drawText(QRectF(body.left(), body.top() + line, body.width(), line), 0, words)

    def _picture(self, painter: QPainter, row: BarRow, body: QRectF, line: float) -> None:
        picture = self._shown.picture(row.index)
        if picture is not None:
            painter.drawPixmap(QPointF(body.left(), body.top() + line * 1.95), picture)

    def _marks(
        self, painter: QPainter, font: QFont, row: BarRow, body: QRectF, c: Colours, line: float
    ) -> float:
        """Signs with numbers at the right end; the width they take."""
        inks = {"note": c.accent, "pin": c.warm, "cut": c.alarm, "impossible": c.alarm}
        numbers = {"note": row.notes, "pin": row.pins, "cut": row.cuts}
        painter.setFont(font)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        metrics = QFontMetricsF(font)
        right = body.right()
        for name, _ in reversed(row.marks):
            text = str(numbers.get(name, ""))
            width = metrics.horizontalAdvance(text)
            painter.setPen(QColor(inks[name]))
            painter.drawText(QRectF(right - width, body.top(), width + 1, line), 0, text)
            right -= width + line * 0.15 + line * 0.78
            sign = QRectF(right, body.top() + line * 0.12, line * 0.78, line * 0.78)
            draw_mark(painter, name, sign, inks[name])
            right -= line * 0.4
        return body.right() - right

    def _difficulty(
        self, painter: QPainter, font: QFont, facts: BarFacts, body: QRectF, c: Colours,
        line: float,
    ) -> None:  # fmt: skip
        """A thin bar as long as the bar of music is hard, and its figure at the end."""
        if not facts.figure:
            return
        lower = small(font, 0.8)
        metrics = QFontMetricsF(lower)
        room = metrics.horizontalAdvance("0.0") + line * 0.25
        middle, tall = body.bottom() - line * 0.32, max(2.0, line * 0.16)
        track = QRectF(body.left(), middle - tall / 2, body.width() - room, tall)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(c.line))
        painter.drawRoundedRect(track, tall / 2, tall / 2)
        track.setWidth(max(tall, track.width() * facts.share))
        painter.setBrush(QColor(c.faint))
        painter.drawRoundedRect(track, tall / 2, tall / 2)
        painter.setFont(lower)
        painter.setPen(QColor(c.faint))
        painter.drawText(
            QRectF(body.right() - room, middle - line * 0.5, room, line),
            Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, str(facts.figure),
        )  # fmt: skip
