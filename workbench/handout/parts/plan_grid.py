"""The practice plan as a table to tick: passages down, days across.

A cell has a square to tick, the tempo to reach and a letter for how to practise; the
letters stand explained under the table.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import QPainter, QPen

from workbench.engraving.app import SANS
from workbench.handout.files.tags import ARTIFACT, begin
from workbench.handout.setting.blocks import Block, TextBlock, rule
from workbench.handout.setting.compose import Part, Together
from workbench.handout.setting.typeset import INK, SMALL, Style, draw, fitting
from workbench.language.message import Unsaid
from workbench.language.speech import mark, say
from workbench.teaching.planning.items import PlanItem
from workbench.teaching.planning.plan import DayPlan, Plan

DAYS_ACROSS = 14
MOST_DAYS = 28  # on a handout; the plan alone prints them all
_ROW = 13.5
_HEAD = 14.0
_LABEL = 0.21  # share of the width
_JOIN = mark("from the last beats of the one into the other, then both whole")
_KINDS = {"warm up": mark("warm up"), "play through": mark("play through")}


@dataclass(frozen=True)
class Cell:
    """What one passage asks on one day: ``times`` goes, up to ``tempo`` beats a minute
    (0: none), practised as the ``letter`` says."""

    times: int
    tempo: int
    letter: str
    done: bool


def plan_parts(
    plan: Plan, width: float, room: float, scale: float, most: int = MOST_DAYS, tracks: str = ""
) -> list[Part]:
    """The heading, tables and the key to their letters: on one page where it holds them."""
    days = plan.days[:most]
    letters = _letters(days)
    across = DAYS_ACROSS if scale < 1.2 else DAYS_ACROSS // 2
    words = say(
        "Tick what is done. The number is the tempo to reach, in quarter notes a minute; the "
        "letter says how to practise."
    )
    if tracks:
        words += " " + say(
            "The tracks to play along with lie in the folder '{folder}', named by bars and tempo.",
            folder=tracks,
        )
    out: list[Block] = []
    title = TextBlock(words, width, scale, heading=say("Practice plan"), style=SMALL, after=4)
    each = max(4, int((room - title.height - 40 * scale) / (_ROW * scale)) - 2)
    for start in range(0, len(days), across):
        part = days[start : start + across]
        rows = _rows(part, letters)
        if not rows:
            continue
        for first in range(0, len(rows), each):
            grid = PlanGrid(part, rows[first : first + each], across, width, scale)
            out.append(Titled(title, grid) if not out else grid)
    key = [f"**{letter}** {words}" for words, letter in letters.items()]
    if any(i.kind == "join" for d in days for i in d.items):
        key.append(f"**{say('join', sense='plan')}** {say(_JOIN)}.")
    out.append(TextBlock("\n".join(key), width, scale, style=SMALL, after=6))
    if len(plan.days) > len(days):
        more = say("The plan goes on to day {last}.", last=plan.days[-1].day)
        out.append(TextBlock(more, width, scale, style=SMALL, after=6))
    return [Together(out)]


def _letters(days: Sequence[DayPlan]) -> dict[Unsaid, str]:
    """A letter for every way to practise, in order; joins explain themselves."""
    out: dict[Unsaid, str] = {}
    for day in days:
        for item in day.items:
            if item.kind != "join" and item.exercise and item.exercise not in out:
                number = len(out)
                letter = "abcdefghijklmnopqrstuvwxyz"[number % 26]
                out[item.exercise] = letter * (number // 26 + 1)
    return out


def _label(item: PlanItem) -> str:
    if item.kind in _KINDS:
        return say(_KINDS[item.kind])
    return say("join {where}", where=item.where) if item.kind == "join" else str(item.where)


def _rows(
    days: Sequence[DayPlan], letters: dict[Unsaid, str]
) -> list[tuple[str, list[Cell | None]]]:
    """(passage, its cells by day), passages in order of appearance, joins after them."""
    found: dict[str, list[list[PlanItem]]] = {}
    for place, day in enumerate(days):
        for item in day.items:
            row = found.setdefault(_label(item), [[] for _ in days])
            row[place].append(item)
    order = {"warm up": 0, "learn": 1, "review": 1, "join": 2, "play through": 3}

    def rank(label: str) -> int:
        return next(order.get(i.kind, 1) for cell in found[label] for i in cell)

    return [
        (label, [_cell(items, letters) for items in found[label]])
        for label in sorted(found, key=rank)
    ]


def _cell(items: Sequence[PlanItem], letters: dict[Unsaid, str]) -> Cell | None:
    if not items:
        return None
    used = dict.fromkeys(letters.get(i.exercise, "") for i in items)
    letter = next((w for w in used if w), "")
    return Cell(len(items), max(i.beats for i in items), letter, all(i.done for i in items))


class Titled:
    """A block under its title, never parted from it."""

    def __init__(self, title: TextBlock, block: PlanGrid) -> None:
        self._title, self._block = title, block
        self.heading = title.heading

    @property
    def height(self) -> float:
        return self._title.height + self._block.height

    def paint(self, painter: QPainter, x: float, y: float) -> None:
        self._title.paint(painter, x, y)
        self._block.paint(painter, x, y + self._title.height)


class PlanGrid:
    """Up to two weeks of a plan."""

    def __init__(
        self,
        days: Sequence[DayPlan],
        rows: Sequence[tuple[str, list[Cell | None]]],
        across: int,
        width: float,
        scale: float,
    ) -> None:
        self._days, self._rows, self._width, self._scale = days, rows, width, scale
        self._label = width * (_LABEL if scale < 1.2 else 0.3)
        self._cell = (width - self._label) / across
        self._style = Style(7.4 * scale, SANS)

    @property
    def height(self) -> float:
        return (_HEAD + _ROW * (len(self._rows) + 1) + 8) * self._scale

    def paint(self, painter: QPainter, x: float, y: float) -> None:
        scale = self._scale
        wide = self._label + self._cell * len(self._days)
        row, head = _ROW * scale, _HEAD * scale
        strong = Style(7.4 * scale, SANS, bold=True)
        self._text(painter, "TH", 0, x + 2, y + head - 4 * scale, say("Day"), strong)
        for k, day in enumerate(self._days):
            self._middle(painter, "TH", 0, x, k, y + head - 4 * scale, str(day.day), strong)
        at = y + head
        for number, (label, cells) in enumerate(self._rows, 1):
            style = fitting(SMALL.scaled(scale), label, self._label - 4)
            begin(painter, "TH", within=(id(self), number))
            draw(painter, x + 2, at + row * 0.68, label, style)
            for k, cell in enumerate(cells):
                begin(painter, "TD", within=(id(self), number))
                if cell is not None:
                    self._tick(painter, x + self._label + k * self._cell, at, cell)
            at += row
        self._text(
            painter, "TH", len(self._rows) + 1, x + 2, at + row * 0.64, say("Minutes"), strong
        )
        for k, day in enumerate(self._days):
            words = say("rest", sense="day") if day.rest else f"{day.minutes:.0f}"
            self._middle(
                painter, "TD", len(self._rows) + 1, x, k, at + row * 0.64, words, self._style
            )
        begin(painter, ARTIFACT)
        for number in range(len(self._rows) + 2):
            rule(painter, x, y + head + number * row, wide, 0.9 if number == 0 else 0.25)
        painter.setPen(QPen(INK, 0.25))
        for k in range(len(self._days) + 1):
            left = x + self._label + k * self._cell
            painter.drawLine(QPointF(left, y + 3), QPointF(left, at + row))

    def _text(
        self, painter: QPainter, role: str, row: int, x: float, y: float, words: str, style: Style
    ) -> None:
        begin(painter, role, within=(id(self), row))
        draw(painter, x, y, words, style)

    def _middle(
        self,
        painter: QPainter,
        role: str,
        row: int,
        x: float,
        k: int,
        y: float,
        words: str,
        style: Style,
    ) -> None:
        left = x + self._label + (k + 0.5) * self._cell - style.width(words) / 2
        self._text(painter, role, row, left, y, words, style)

    def _tick(self, painter: QPainter, x: float, y: float, cell: Cell) -> None:
        """A square to tick for every time (ticked where it is done), the tempo, the letter."""
        scale = self._scale
        row = _ROW * scale
        number = min(cell.times, 4)
        deep = 1 if number == 1 else 2
        side = (6.8 if number == 1 else 5.0) * scale
        gap = 1.2 * scale
        left = x + 2.6 * scale
        top = y + (row - deep * side - (deep - 1) * gap) / 2
        for k in range(number):
            corner = QPointF(left + k // deep * (side + gap), top + k % deep * (side + gap))
            painter.setPen(QPen(INK, 0.7 * scale))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(QRectF(corner, QSizeF(side, side)))
            if cell.done:
                painter.setPen(QPen(INK, 1.2 * scale))
                hook = ((0.15, 0.5), (0.42, 0.82), (0.95, 0.02))
                painter.drawPolyline([corner + QPointF(side * a, side * b) for a, b in hook])
        left += -(-number // deep) * (side + gap)
        words = " ".join(w for w in (str(cell.tempo or ""), cell.letter) if w)
        small = fitting(self._style.scaled(0.92), words, self._cell - (left - x) - 1)
        draw(painter, left, y + row * 0.68, words, small)
