"""The parts a page is built of. Each knows its height and paints itself; points."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Protocol

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen

from workbench.engraving.paint import PaintedSystem
from workbench.handout.files.tags import ARTIFACT, begin
from workbench.handout.setting.typeset import (
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
from workbench.language.speech import say

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
            words = say("arranged by {arranger}", arranger=arranger)
            by = f"{by}, {words}" if by else words
        self._by_style = Style(10.5 * scale, italic=True)
        self._by = wrap(by, self._by_style, width) if by else []
        last = line_width(self._title[-1])
        self._beside = len(self._by) == 1 and last + line_width(self._by[0]) + 20 * scale <= width

    @property
    def height(self) -> float:
        rows = 0 if self._beside else len(self._by)
        lead = self._style.size * 1.18
        return lead * len(self._title) + rows * self._by_style.size * 1.3 + 13 * self._scale

    def paint(self, painter: QPainter, x: float, y: float) -> None:
        lead = self._style.size * 1.18
        at = y + self._style.size * 0.86
        begin(painter, "H1")
        for line in self._title:
            draw_line(painter, x, at, line)
            at += lead
        if self._by:
            begin(painter, "P")
        if self._beside:
            line = self._by[0]
            draw_line(painter, x + self._width - line_width(line), at - lead, line)
        else:
            at += self._by_style.size * 0.1
            for line in self._by:
                draw_line(painter, x, at, line)
                at += self._by_style.size * 1.3
        begin(painter, ARTIFACT)
        rule(painter, x, y + self.height - 7 * self._scale, self._width, 1.0)


class FactsBlock:
    """Labelled values in columns."""

    def __init__(self, rows: Sequence[tuple[str, str]], width: float, scale: float) -> None:
        self._label, self._value = LABEL.scaled(scale), BODY.scaled(scale)
        columns = 3 if scale < 1.2 else 2
        gap = 12 * scale
        self._cell = (width - gap * (columns - 1)) / columns
        self._step = self._cell + gap
        cells = [
            (label, wrap(value.replace("*", ""), self._value, self._cell)) for label, value in rows
        ]
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
                begin(painter, "P")
                draw(painter, left, y + self._label.size, label, self._label, GREY)
                at = y + self._label.size * 1.3 + self._value.size
                for line in lines:
                    draw_line(painter, left, at, line)
                    at += self._value.size * 1.28
            y += self._row_height(row)


class TextBlock:
    """Wrapped text, perhaps under a heading."""

    def __init__(
        self,
        text: str,
        width: float,
        scale: float,
        *,
        heading: str = "",
        style: Style = BODY,
        after: float = 6.0,
        boxed: bool = False,
    ) -> None:
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
            begin(painter, ARTIFACT)
            painter.setPen(QPen(INK, 0.7))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(QRectF(x, y, self._width, self.height - self._after))
        y += self._pad
        if self.heading:
            begin(painter, "H2")
            draw(
                painter,
                x + self._pad,
                y + HEADING.size * self._scale,
                self.heading,
                HEADING.scaled(self._scale),
            )
            y += HEADING.size * 1.6 * self._scale
        if self._lines:
            begin(painter, "P")
        for line in self._lines:
            draw_line(painter, x + self._pad, y + self._style.size, line)
            y += self._style.size * LEADING


class SystemBlock:
    """One engraved system. ``unit``: points to an engraving unit; ``words`` say what it
    shows to those who cannot see it."""

    def __init__(self, system: PaintedSystem, unit: float, words: str = "") -> None:
        self.system, self._unit, self._words = system, unit, words

    @property
    def height(self) -> float:
        return self.system.size.height() * self._unit

    def paint(self, painter: QPainter, x: float, y: float) -> None:
        begin(painter, "Figure", self._words or say("Music"))
        self.system.paint(painter, QPointF(x, y), self._unit)


@dataclass(frozen=True)
class Column:
    """``share`` of the table's width."""

    title: str
    share: float


class TableRow:
    """One row of a table; a heading row has a strong line under it, a row to
    tick an empty square in its first cell."""

    def __init__(
        self,
        cells: Sequence[str],
        columns: Sequence[Column],
        width: float,
        scale: float,
        head: bool = False,
        tick: bool = False,
    ) -> None:
        total = sum(c.share for c in columns)
        self._columns = columns
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
            begin(painter, ARTIFACT)
            side = self._style.size * 0.85
            painter.setPen(QPen(INK, 0.7))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(QRectF(x + 1, y + self._style.size * 0.22, side, side))
        for lines, wide in zip(self._cells, self._widths, strict=True):
            at = y + self._style.size
            begin(painter, "TH" if self._head else "TD", within=(id(self._columns), id(self)))
            for line in lines:
                draw_line(painter, left, at, line)
                at += self._style.size * 1.3
            left += wide
        begin(painter, ARTIFACT)
        rule(painter, x, y + self.height - 2, self._width, 0.9 if self._head else 0.25)
