"""The form map: the sections in playing order as boxes, as wide as they are long."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QPainter, QPen

from workbench.engraving.app import SANS
from workbench.handout.files.tags import begin
from workbench.handout.parts.words import first_numbered, pickup_joined
from workbench.handout.setting.typeset import INK, Style, draw
from workbench.language.speech import say
from workbench.music.model import Piece
from workbench.music.order.form import playing_order, sections

MOST = 16  # more boxes than this cannot be read at a glance


@dataclass(frozen=True)
class PlayedSection:
    """A section, or the part of it, that is played at one go."""

    letter: str
    first: int
    last: int

    @property
    def bars(self) -> int:
        return self.last - self.first + 1


def played_sections(piece: Piece) -> tuple[PlayedSection, ...]:
    """The sections in playing order; endings belong to the pass they close."""
    of_bar = {
        bar: place
        for place, s in enumerate(sections(piece))
        for bar in range(s.first_bar, s.last_bar + 1)
    }
    letters = [s.letter for s in sections(piece)]
    out: list[PlayedSection] = []
    before = -1
    for bar in playing_order(piece):
        same = before >= 0 and of_bar[bar] == of_bar[before]
        if out and same and bar > before:
            out[-1] = PlayedSection(out[-1].letter, out[-1].first, bar)
        else:
            out.append(PlayedSection(letters[of_bar[bar]], bar, bar))
        before = bar
    return tuple(out)


class FormMap:
    """One row of boxes: letter, and the bars below it."""

    def __init__(self, piece: Piece, width: float, scale: float) -> None:
        piece = pickup_joined(piece)
        self._played = played_sections(piece)
        numbers = {b.index: b.number for b in piece.bars}
        self._words = [
            (p.letter, self._bars(numbers, first_numbered(piece, p.first, p.last), p.last))
            for p in self._played
        ]
        self._scale, self._width = scale, width
        shares = [max(2.0, p.bars**0.8) for p in self._played]
        self._wide = [s / sum(shares) * width for s in shares]

    @staticmethod
    def _bars(numbers: dict[int, str], first: int, last: int) -> str:
        if first == last:
            return numbers[first]
        return f"{numbers[first]}–{numbers[last]}"

    @property
    def useful(self) -> bool:
        """A map is drawn where there is a way to find."""
        return 1 < len(self._played) <= MOST

    @property
    def height(self) -> float:
        return 29.0 * self._scale

    def paint(self, painter: QPainter, x: float, y: float) -> None:
        told = ", ".join(
            say("{letter} bars {bars}", letter=letter, bars=bars) for letter, bars in self._words
        )
        begin(painter, "Figure", say("Form map: {sections}", sections=told))
        scale = self._scale
        for wide, (letter, bars) in zip(self._wide, self._words, strict=True):
            painter.setPen(QPen(INK, 0.7 * scale))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(QRectF(x, y, wide, 22 * scale))
            for words, style, base in (
                (letter, Style(9.5 * scale, SANS, bold=True), 10.5),
                (bars, Style(6.6 * scale, SANS), 18.8),
            ):
                while style.width(words) > wide - 3 and style.size > 4:
                    style = style.scaled(0.93)
                draw(painter, x + (wide - style.width(words)) / 2, y + base * scale, words, style)
            x += wide
