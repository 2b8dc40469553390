"""The parts a page is built of. Each knows its height and paints itself; points."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Protocol

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen

from workbench.engraving.app import SANS
from workbench.engraving.paint import PaintedSystem
from workbench.handout.grips import Grip, draw_grip, grip_height
from workbench.handout.typeset import (
    BODY,
    GREY,
    HEADING,
    INK,
    LABEL,
    SMALL,
    TITLE,
    Line,
    Style,
    draw,
    draw_line,
    line_width,
    wrap,
)

LEADING = 1.36


class Block(Protocol):
    """``height`` in points, white space below included."""

    @property
    def height(self) -> float: ...

    def paint(self, painter: QPainter, x: float, y: float) -> None: ...


def rule(painter: QPainter, x: float, y: float, width: float, pen: float = 0.6) -> None:
    painter.setPen(QPen(INK, pen))
    painter.drawLine(QPointF(x, y), QPointF(x + width, y))


@dataclass(frozen=True)
class Space:
    """White space."""

    height: float

    def paint(self, painter: QPainter, x: float, y: float) -> None:
        """Nothing to paint."""


class TitleBlock:
    """Title, composer and arranger over a line."""

    def __init__(self, title: str, composer: str, arranger: str, width: float, scale: float):
        self._width, self._scale = width, scale
        style = TITLE.scaled(min(scale, 1.25))
        while style.size > 13 and len(wrap(title, style, width)) > 2:
            style = style.scaled(0.9)
        self._style = style
        self._title = wrap(title.replace("*", ""), style, width)
        by = composer
        if arranger:
            by = f"{by}{', ' if by else ''}arranged by {arranger}"
        self._by_style = Style(10.5 * scale, italic=True)
        self._by = wrap(by, self._by_style, width) if by else []
        last = line_width(self._title[-1])
        self._beside = (
            len(self._by) == 1 and last + line_width(self._by[0]) + 20 * scale <= width
        )

    @property
    def height(self) -> float:
        rows = 0 if self._beside else len(self._by)
        lead = self._style.size * 1.18
        return lead * len(self._title) + rows * self._by_style.size * 1.3 + 13 * self._scale

    def paint(self, painter: QPainter, x: float, y: float) -> None:
        lead = self._style.size * 1.18
        at = y + self._style.size * 0.86
        for line in self._title:
            draw_line(painter, x, at, line)
            at += lead
        if self._beside:
            line = self._by[0]
            draw_line(painter, x + self._width - line_width(line), at - lead, line)
        else:
            at += self._by_style.size * 0.1
            for line in self._by:
                draw_line(painter, x, at, line)
                at += self._by_style.size * 1.3
        rule(painter, x, y + self.height - 7 * self._scale, self._width, 1.0)


class FactsBlock:
    """Labelled values in columns."""

    def __init__(self, rows: Sequence[tuple[str, str]], width: float, scale: float) -> None:
        self._label, self._value = LABEL.scaled(scale), BODY.scaled(scale)
        columns = 3 if scale < 1.2 else 2
        gap = 12 * scale
        self._cell = (width - gap * (columns - 1)) / columns
        self._step = self._cell + gap
        cells = [(label, wrap(value.replace("*", ""), self._value, self._cell))
                 for label, value in rows]
        self._rows = [cells[k : k + columns] for k in range(0, len(cells), columns)]

    def _row_height(self, row: Sequence[tuple[str, list[Line]]]) -> float:
        lines = max(len(lines) for _, lines in row)
        return self._label.size * 1.3 + lines * self._value.size * 1.28 + self._value.size * 0.42

    @property
    def height(self) -> float:
        return sum(self._row_height(r) for r in self._rows) + self._value.size * 0.3

    def paint(self, painter: QPainter, x: float, y: float) -> None:
        for row in self._rows:
            for column, (label, lines) in enumerate(row):
                left = x + column * self._step
                draw(painter, left, y + self._label.size, label, self._label, GREY)
                at = y + self._label.size * 1.3 + self._value.size
                for line in lines:
                    draw_line(painter, left, at, line)
                    at += self._value.size * 1.28
            y += self._row_height(row)


class TextBlock:
    """Wrapped text, perhaps under a heading."""

    def __init__(self, text: str, width: float, scale: float, *, heading: str = "",
                 style: Style = BODY, after: float = 6.0, boxed: bool = False) -> None:
        self._style = style.scaled(scale)
        self.heading, self._scale, self._after = heading, scale, after * scale
        self._pad = 5.0 * scale if boxed else 0.0
        self._width = width
        self._lines = wrap(text, self._style, width - 2 * self._pad) if text else []

    @property
    def height(self) -> float:
        head = HEADING.size * 1.6 * self._scale if self.heading else 0.0
        body = len(self._lines) * self._style.size * LEADING
        return head + body + 2 * self._pad + self._after

    def paint(self, painter: QPainter, x: float, y: float) -> None:
        if self._pad:
            painter.setPen(QPen(INK, 0.7))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(QRectF(x, y, self._width, self.height - self._after))
        y += self._pad
        if self.heading:
            draw(painter, x + self._pad, y + HEADING.size * self._scale, self.heading,
                 HEADING.scaled(self._scale))
            y += HEADING.size * 1.6 * self._scale
        for line in self._lines:
            draw_line(painter, x + self._pad, y + self._style.size, line)
            y += self._style.size * LEADING


class SystemBlock:
    """One engraved system. ``unit``: points to an engraving unit."""

    def __init__(self, system: PaintedSystem, unit: float) -> None:
        self.system, self._unit = system, unit

    @property
    def height(self) -> float:
        return self.system.size.height() * self._unit

    def paint(self, painter: QPainter, x: float, y: float) -> None:
        self.system.paint(painter, QPointF(x, y), self._unit)


class NoteBlock:
    """A teaching note: its number in a ring, where it belongs, its text."""

    def __init__(self, number: int, heading: str, lines: Sequence[Line], scale: float,
                 style: Style) -> None:
        self._number, self._heading, self._lines = number, heading, list(lines)
        self._scale, self._style = scale, style

    @classmethod
    def made(cls, number: int, heading: str, text: str, width: float, scale: float,
             size: float = BODY.size) -> NoteBlock:
        style = Style(size).scaled(scale)
        lines = wrap(text, style, width - 17 * scale)
        return cls(number, heading, lines, scale, style)

    @property
    def _head(self) -> float:
        return 11.5 * self._scale

    @property
    def height(self) -> float:
        return self._head + len(self._lines) * self._style.size * LEADING + 4.5 * self._scale

    def split(self, room: float) -> tuple[NoteBlock, NoteBlock] | None:
        """Two blocks of which the first fits into ``room``; None where no line would."""
        each = self._style.size * LEADING
        fit = int((room - self._head - 4.5 * self._scale) // each)
        if fit < 2 or fit >= len(self._lines):
            return None
        first = NoteBlock(self._number, self._heading, self._lines[:fit], self._scale, self._style)
        heading = self._heading
        if not heading.endswith("(continued)"):
            heading += " (continued)"
        rest = NoteBlock(self._number, heading, self._lines[fit:], self._scale, self._style)
        return first, rest

    def paint(self, painter: QPainter, x: float, y: float) -> None:
        scale = self._scale
        radius = 5.6 * scale
        text = str(self._number)
        figure = Style((7.4 if len(text) < 2 else 6.2) * scale, SANS, bold=True)
        painter.setPen(QPen(INK, 0.7 * scale))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawEllipse(QPointF(x + radius + 0.5, y + radius), radius, radius)
        draw(painter, x + radius + 0.5 - figure.width(text) / 2, y + radius + figure.size * 0.36,
             text, figure)
        left = x + 17 * scale
        draw(painter, left, y + 8.4 * scale, self._heading, HEADING.scaled(0.9 * scale))
        at = y + self._head + self._style.size
        for line in self._lines:
            draw_line(painter, left, at, line)
            at += self._style.size * LEADING


class ColumnsBlock:
    """Notes side by side."""

    def __init__(self, columns: Sequence[Sequence[NoteBlock]], step: float, heading: str,
                 scale: float) -> None:
        self._columns, self._step = columns, step
        self.heading, self._scale = heading, scale

    @property
    def _head(self) -> float:
        return HEADING.size * 1.8 * self._scale if self.heading else 0.0

    @property
    def height(self) -> float:
        tallest = max((sum(n.height for n in c) for c in self._columns), default=0.0)
        return self._head + tallest + 6 * self._scale

    def paint(self, painter: QPainter, x: float, y: float) -> None:
        draw(painter, x, y + HEADING.size * self._scale, self.heading, HEADING.scaled(self._scale))
        for column in self._columns:
            at = y + self._head
            for note in column:
                note.paint(painter, x, at)
                at += note.height
            x += self._step


class GripsBlock:
    """A row of grip diagrams under a heading."""

    def __init__(self, grips: tuple[Grip, ...], width: float, scale: float, mirrored: bool,
                 heading: str) -> None:
        self._grips, self._scale, self._mirrored = grips, scale, mirrored
        self.heading = heading
        self._across = max(1, int(width // (62 * scale)))
        self._cell = width / self._across

    @property
    def _rows(self) -> list[tuple[Grip, ...]]:
        n = self._across
        return [self._grips[k : k + n] for k in range(0, len(self._grips), n)]

    @property
    def height(self) -> float:
        body = sum(grip_height(row, self._scale) + 6 * self._scale for row in self._rows)
        return HEADING.size * 1.7 * self._scale + body

    def paint(self, painter: QPainter, x: float, y: float) -> None:
        draw(painter, x, y + HEADING.size * self._scale, self.heading, HEADING.scaled(self._scale))
        y += HEADING.size * 1.7 * self._scale
        for row in self._rows:
            high = grip_height(row, self._scale)
            for k, grip in enumerate(row):
                area = QRectF(x + k * self._cell, y, self._cell, high)
                draw_grip(painter, grip, area, self._scale, self._mirrored)
            y += high + 6 * self._scale


class OwnNotesBlock:
    """Ruled lines for the student's own notes."""

    def __init__(self, width: float, scale: float, lines: int, heading: str = "My notes") -> None:
        self._width, self._scale, self._lines, self._heading = width, scale, lines, heading

    @property
    def step(self) -> float:
        return 21.0 * self._scale

    @property
    def height(self) -> float:
        return HEADING.size * 1.5 * self._scale + self._lines * self.step

    def with_lines(self, lines: int) -> OwnNotesBlock:
        return OwnNotesBlock(self._width, self._scale, lines, self._heading)

    def paint(self, painter: QPainter, x: float, y: float) -> None:
        draw(painter, x, y + HEADING.size * self._scale, self._heading, HEADING.scaled(self._scale))
        y += HEADING.size * 1.5 * self._scale
        for k in range(self._lines):
            rule(painter, x, y + (k + 1) * self.step - 3, self._width, 0.4)


@dataclass(frozen=True)
class Column:
    """``share`` of the table's width."""

    title: str
    share: float


class TableRow:
    """One row of a table; a heading row has a strong line under it, a row to
    tick an empty square in its first cell."""

    def __init__(self, cells: Sequence[str], columns: Sequence[Column], width: float, scale: float,
                 head: bool = False, tick: bool = False) -> None:
        total = sum(c.share for c in columns)
        self._widths = [c.share / total * width for c in columns]
        self._style = (HEADING.scaled(0.85) if head else SMALL).scaled(scale)
        self._head, self._width, self._tick = head, width, tick
        self._cells = [
            wrap(text.replace("*", ""), self._style, w - 6)
            for text, w in zip(cells, self._widths, strict=True)
        ]

    @property
    def height(self) -> float:
        return max(len(c) for c in self._cells) * self._style.size * 1.3 + 3.5

    def paint(self, painter: QPainter, x: float, y: float) -> None:
        left = x
        if self._tick:
            side = self._style.size * 0.85
            painter.setPen(QPen(INK, 0.7))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(QRectF(x + 1, y + self._style.size * 0.22, side, side))
        for lines, wide in zip(self._cells, self._widths, strict=True):
            at = y + self._style.size
            for line in lines:
                draw_line(painter, left, at, line)
                at += self._style.size * 1.3
            left += wide
        rule(painter, x, y + self.height - 2, self._width, 0.9 if self._head else 0.25)
