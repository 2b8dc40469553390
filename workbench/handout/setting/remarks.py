"""Teaching notes on the page, and the lines for the student's own."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QPainter, QPainterPath, QPen

from workbench.engraving.app import SANS
from workbench.handout.files.tags import ARTIFACT, begin
from workbench.handout.setting.blocks import LEADING, rule
from workbench.handout.setting.typeset import BODY, HEADING, INK, Line, Style, draw, draw_line, wrap
from workbench.language.speech import say

LONG = 10  # lines; shorter notes stay in one piece


def continued(heading: str) -> str:
    """The heading of what goes on from another place."""
    words = say("{heading} (continued)", heading="")
    return heading if heading.endswith(words) else heading + words


def note_sheet(x: float, y: float, radius: float) -> QPainterPath:
    """The sheet with a corner turned down that bears a teaching note's number, as in the
    score; ``radius`` is half its side."""
    side, corner = 2 * radius, 0.56 * radius
    path = QPainterPath(QPointF(x, y))
    for dx, dy in ((side - corner, 0), (side, corner), (side, side), (0, side), (0, 0)):
        path.lineTo(x + dx, y + dy)
    path.moveTo(x + side - corner, y)
    path.lineTo(x + side - corner, y + corner)
    path.lineTo(x + side, y + corner)
    return path


class NoteBlock:
    """A teaching note: its number on a sheet, where it belongs, its text."""

    def __init__(
        self, number: int, heading: str, lines: Sequence[Line], scale: float, style: Style
    ) -> None:
        self._number, self._heading, self._lines = number, heading, list(lines)
        self._scale, self._style = scale, style

    @classmethod
    def made(
        cls,
        number: int,
        heading: str,
        text: str,
        width: float,
        scale: float,
        size: float = BODY.size,
    ) -> NoteBlock:
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
        """Two blocks of which the first fits into ``room``; None where no two lines would,
        or the note is not long."""
        each = self._style.size * LEADING
        fit = int((room - self._head - 4.5 * self._scale) // each)
        whole = len(self._lines)
        if fit < 2 or fit >= whole or whole < LONG:
            return None
        first = NoteBlock(self._number, self._heading, self._lines[:fit], self._scale, self._style)
        heading = continued(self._heading)
        rest = NoteBlock(self._number, heading, self._lines[fit:], self._scale, self._style)
        return first, rest

    def paint(self, painter: QPainter, x: float, y: float) -> None:
        scale = self._scale
        begin(painter, "P")
        radius = 5.6 * scale
        text = str(self._number)
        figure = Style((7.4 if len(text) < 2 else 6.2) * scale, SANS, bold=True)
        painter.setPen(QPen(INK, 0.7 * scale))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPath(note_sheet(x + 0.5, y, radius))
        draw(
            painter,
            x + radius + 0.5 - figure.width(text) / 2,
            y + radius + figure.size * 0.36,
            text,
            figure,
        )
        left = x + 17 * scale
        draw(painter, left, y + 8.4 * scale, self._heading, HEADING.scaled(0.9 * scale))
        at = y + self._head + self._style.size
        for line in self._lines:
            draw_line(painter, left, at, line)
            at += self._style.size * LEADING


class ColumnsBlock:
    """Notes side by side."""

    def __init__(
        self, columns: Sequence[Sequence[NoteBlock]], step: float, heading: str, scale: float
    ) -> None:
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
        if self.heading:
            begin(painter, "H2")
            draw(
                painter,
                x,
                y + HEADING.size * self._scale,
                self.heading,
                HEADING.scaled(self._scale),
            )
        for column in self._columns:
            at = y + self._head
            for note in column:
                note.paint(painter, x, at)
                at += note.height
            x += self._step


class OwnNotesBlock:
    """Ruled lines for the student's own notes."""

    def __init__(self, width: float, scale: float, lines: int, heading: str = "") -> None:
        self._width, self._scale, self._lines = width, scale, lines
        self._heading = heading or say("My notes")

    @property
    def step(self) -> float:
        return 21.0 * self._scale

    @property
    def height(self) -> float:
        return HEADING.size * 1.5 * self._scale + self._lines * self.step

    def with_lines(self, lines: int) -> OwnNotesBlock:
        return OwnNotesBlock(self._width, self._scale, lines, self._heading)

    def paint(self, painter: QPainter, x: float, y: float) -> None:
        begin(painter, "H2")
        draw(painter, x, y + HEADING.size * self._scale, self._heading, HEADING.scaled(self._scale))
        y += HEADING.size * 1.5 * self._scale
        begin(painter, ARTIFACT)
        for k in range(self._lines):
            rule(painter, x, y + (k + 1) * self.step - 3, self._width, 0.4)
