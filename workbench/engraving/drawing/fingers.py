"""Finger marks set by hand's rule: the left hand's number beside its note head,
the right hand's letter under its tablature figure, nothing on top of anything.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Literal

from workbench.engraving.app import SANS, SERIF, text_width
from workbench.engraving.drawing.boxes import Box
from workbench.engraving.mei.marked import FingerMark

LEFT_SIZE = 245.0
GRACE_SIZE = 225.0
RIGHT_SIZE = 290.0
_CAP = 0.714  # height of a figure of the sans face over its size
_X_HEIGHT = 0.55
_GAP = 30.0
_ROW = 275.0
RING = 150.0  # radius of the circle around a string number
STRING_SIZE = 225.0
_COLUMN = 60.0  # figures so near stand over one another
_NEAR = 330.0  # right of a number: a head there seems to own it


@dataclass(frozen=True)
class Set:
    """A mark at its place: baseline start ``x``, ``y``."""

    mark: FingerMark
    x: float
    y: float
    size: float
    box: Box
    kind: Literal["left", "string", "right", "grace"]


def place(
    marks: Iterable[FingerMark], drawn: Sequence[Box], tab_lines: Sequence[float]
) -> list[Set]:
    """Find a place for every mark whose target is drawn. ``tab_lines`` are the
    heights of the tablature's lines (or the staff's, where there is none)."""
    marks = list(marks)
    heads = {b.owner: b for b in drawn if b.kind == "notehead"}
    figures = {b.owner: b for b in drawn if b.kind == "note"}
    graces = _grace_figures(
        [m for m in marks if m.kind == "grace" and m.target in heads], heads, tab_lines
    )
    figures |= {s.mark.id: s.box for s in graces}
    tab_bottom = max(tab_lines)
    left = [m for m in marks if m.kind in ("left", "string") and m.target in heads]
    right = [m for m in marks if m.kind == "right"]
    out = graces + _left_hand(left, heads, drawn)
    out += _right_hand([m for m in right if m.target in figures], figures, drawn, tab_bottom)
    return out


def _grace_figures(
    marks: Sequence[FingerMark], heads: dict[str, Box], tab_lines: Sequence[float]
) -> list[Set]:
    """Small figures on their line, under the grace note's head."""
    out = []
    for mark in marks:
        if mark.string > len(tab_lines):
            continue
        head = heads[mark.target]
        wide = text_width(mark.text, GRACE_SIZE, SANS, True, False)
        x = (head.left + head.right - wide) / 2
        high = GRACE_SIZE * _CAP
        middle = tab_lines[mark.string - 1]
        box = Box(x, middle - high / 2, x + wide, middle + high / 2, "note", mark.id)
        out.append(Set(mark, x, box.bottom, GRACE_SIZE, box, "grace"))
    return out


def _left_hand(
    marks: Sequence[FingerMark], heads: dict[str, Box], drawn: Sequence[Box]
) -> list[Set]:
    fixed = _Shelf(b.grown(16.0) for b in drawn)
    placed = _Shelf(())
    followers = _Shelf(heads.values())
    signs = {b.owner: b for b in drawn if b.kind == "accid"}
    out: list[Set] = []
    order = sorted(
        marks, key=lambda m: (m.kind == "string", heads[m.target].left, heads[m.target].top)
    )  # fingers first: they have the places beside their heads
    for mark in order:
        head = heads[mark.target]
        ringed = mark.kind == "string"
        wide = 2 * RING if ringed else text_width(mark.text, LEFT_SIZE, SANS, True, False)
        high = 2 * RING if ringed else LEFT_SIZE * _CAP
        best: tuple[float, Box] | None = None
        for penalty, x, y in _seats(head, signs.get(mark.target), wide, high, mark.below):
            box = Box(x, y, x + wide, y + high, "finger", mark.id)
            if best is not None and penalty >= best[0]:
                continue
            cost = penalty + sum(14 + area / 500 for area in fixed.overlaps(box))
            cost += 14.0 * len(placed.overlaps(box))
            if x > head.right and followers.overlaps(box.moved(_NEAR, 0.0)):
                cost += 2.2  # it would be read as the next note's
            if best is None or cost < best[0]:
                best = (cost, box)
            if cost == penalty and penalty == 0:
                break
        assert best is not None
        box = best[1]
        placed.add(box.grown(6.0))
        if ringed:
            figure = text_width(mark.text, STRING_SIZE, SANS, True, False)
            x, y = box.left + RING - figure / 2, box.top + RING + STRING_SIZE * _CAP / 2
            out.append(Set(mark, x, y, STRING_SIZE, box, "string"))
        else:
            out.append(Set(mark, box.left, box.bottom, LEFT_SIZE, box, "left"))
    return out


class _Shelf:
    """Boxes sorted into columns, so that only near ones are compared."""

    _WIDE = 500.0

    def __init__(self, members: Iterable[Box]) -> None:
        self._columns: dict[int, list[Box]] = defaultdict(list)
        for box in members:
            self.add(box)

    def _span(self, box: Box) -> range:
        return range(int(box.left // self._WIDE), int(box.right // self._WIDE) + 1)

    def add(self, box: Box) -> None:
        for column in self._span(box):
            self._columns[column].append(box)

    def overlaps(self, box: Box) -> list[float]:
        """Shared areas with the boxes it touches."""
        near = {id(b): b for column in self._span(box) for b in self._columns[column]}
        return [area for b in near.values() if (area := box.overlap(b)) > 0]


def _seats(
    head: Box, accidental: Box | None, wide: float, high: float, below: bool
) -> Iterable[tuple[float, float, float]]:
    """(penalty, left, top) of possible places, the usual ones first."""
    middle = (head.top + head.bottom) / 2
    start = min(head.left, accidental.left) if accidental else head.left
    beside = middle - high / 2
    yield 0.0, start - _GAP - wide, beside
    for shift in (45.0, 90.0):
        for sign in (-1, 1):
            yield shift / 60, start - _GAP - wide, beside + sign * shift
    over = head.left + (head.right - head.left - wide) / 2
    for step in range(24):
        up = head.top - _GAP - high - 60.0 * step
        down = head.bottom + _GAP + 60.0 * step
        first, second = (down, up) if below else (up, down)
        yield 2.0 + step / 6, over, first
        yield 3.0 + step / 6, over, second
        for aside in (-170.0, 170.0):
            yield 3.6 + step / 6, over + aside, first
            yield 4.2 + step / 6, over + aside, second
    yield 2.4, head.right + _GAP, beside
    for sign in (-1, 1):
        yield 3.0, head.right + _GAP, beside + sign * 90


def _columns(marks: Sequence[FingerMark], figures: dict[str, Box]) -> Iterable[list[FingerMark]]:
    """Marks whose figures stand over one another."""

    def middle(mark: FingerMark) -> float:
        box = figures[mark.target]
        return (box.left + box.right) / 2

    column: list[FingerMark] = []
    for mark in sorted(marks, key=middle):
        if column and middle(mark) - middle(column[0]) > _COLUMN:
            yield column
            column = []
        column.append(mark)
    if column:
        yield column


def _right_hand(
    marks: Sequence[FingerMark],
    figures: dict[str, Box],
    drawn: Sequence[Box],
    tab_bottom: float,
) -> list[Set]:
    """Letters in rows under the tablature, those plucked together one under the other."""
    first = tab_bottom + 235.0 + RIGHT_SIZE * 0.62
    out = []
    for members in _columns(marks, figures):
        members.sort(key=lambda m: figures[m.target].top)
        for row, mark in enumerate(members):
            figure = figures[mark.target]
            wide = text_width(mark.text, RIGHT_SIZE, SERIF, True, True)
            x = (figure.left + figure.right) / 2 - wide / 2
            y = first + row * _ROW
            drop = RIGHT_SIZE * 0.24 if mark.text == "p" else 0.0
            box = Box(x, y - RIGHT_SIZE * _X_HEIGHT, x + wide, y + drop, "finger", mark.id)
            out.append(Set(mark, x, y, RIGHT_SIZE, box, "right"))
    return out
