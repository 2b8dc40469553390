"""From a point of an engraved system to a place in the music, and back.

A place is a bar, a moment in it, and a height: a step of the staff or a string.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from PySide6.QtCore import QPointF, QRectF

from workbench.engraving import ids
from workbench.engraving.drawing.flatten import Flat
from workbench.music.model import STEPS, Bar

STAFF_LINES = 5
BOTTOM_LINE = 4 * 7 + STEPS.index("E")  # of the treble clef, in steps above C0


@dataclass(frozen=True)
class Place:
    """A place in the music. ``onset`` counts from the start of the bar of index ``bar``.
    ``step`` counts the steps above C0 of the sounding pitch (C4 is 28) and is None on the
    tablature; ``string`` is None on the staff."""

    bar: int
    onset: Fraction
    step: int | None = None
    string: int | None = None

    @property
    def pitch(self) -> tuple[str, int] | None:
        """The letter and octave of the staff's step, such as ("C", 4)."""
        return None if self.step is None else (STEPS[self.step % 7], self.step // 7)


class Geometry:
    """Where moments and heights lie in one system. Coordinates: engraving units."""

    def __init__(
        self, flat: Flat, bars: Iterable[Bar], rects: Mapping[str, QRectF], octave_below: bool
    ) -> None:
        self._flat = flat
        self.staff = flat.lines[:STAFF_LINES]
        self.strings = flat.lines[STAFF_LINES:]
        self._bottom = BOTTOM_LINE - (7 if octave_below else 0)
        self._anchors = {
            bar.index: self._anchors_of(bar, rects) for bar in bars if self.edges(bar.index)
        }

    def edges(self, bar: int) -> tuple[float, float] | None:
        """Left and right edge of a bar."""
        return self._flat.bars.get(bar)

    def _anchors_of(self, bar: Bar, rects: Mapping[str, QRectF]) -> list[tuple[Fraction, float]]:
        """(moment, middle of what stands there), in order, the bar's right edge last."""
        at: dict[Fraction, float] = {}

        def lay(onset: Fraction, rect: QRectF | None) -> None:
            if rect is not None and 0 <= onset < bar.length:
                at[onset] = min(at.get(onset, rect.center().x()), rect.center().x())

        for note in bar.notes:
            if not note.grace:
                lay(note.onset, rects.get(ids.head(note.id)))
        for name, rect in rects.items():
            found = ids.onset_of_rest(name)
            if found and found[0] == bar.index and found[1] not in at:
                lay(found[1], rect)
        left, right = self._flat.bars[bar.index]
        rows = sorted(at.items())
        if not rows or rows[0][0] > 0:
            room = (rows[0][1] if rows else right) - left
            rows.insert(0, (Fraction(0), left + min(360.0, room / 3)))
        out: list[tuple[Fraction, float]] = []
        for onset, x in rows:  # heads of two voices may stand side by side
            out.append((onset, max(x, out[-1][1] + 1.0) if out else x))
        out.append((bar.length, max(right, out[-1][1] + 1.0)))
        return out

    def x_of(self, bar: int, onset: Fraction) -> float | None:
        """Where a moment stands; None where the bar is not in this system."""
        rows = self._anchors.get(bar)
        if rows is None:
            return None
        for (a, left), (b, right) in pairwise(rows):
            if a <= onset <= b:
                return left + (right - left) * float((onset - a) / (b - a)) if b > a else left
        return rows[-1][1]

    def onset_at(self, bar: int, x: float, grid: Fraction) -> Fraction:
        """The moment nearest to ``x``: one at which something stands, or a multiple of
        ``grid``; always inside the bar."""
        rows = self._anchors[bar]
        moments = {onset for onset, _ in rows[:-1]}
        length = rows[-1][0]
        moments |= {grid * k for k in range(int(length / grid) + 1) if grid * k < length}
        places = sorted((self.x_of(bar, onset) or 0.0, onset) for onset in moments)
        at = bisect_left(places, (x, Fraction(0)))
        near = places[max(0, at - 1) : at + 1]
        return min(near, key=lambda one: abs(one[0] - x))[1]

    def bar_at(self, x: float) -> int | None:
        """The written bar at ``x``."""
        for bar in self._anchors:
            left, right = self._flat.bars[bar]
            if left <= x <= right:
                return bar
        return None

    def y_of(self, place: Place) -> float | None:
        """The height of a step or a string; None where the place has neither here."""
        if place.string is not None:
            known = 1 <= place.string <= len(self.strings)
            return self.strings[place.string - 1] if known else None
        if place.step is None or len(self.staff) < STAFF_LINES:
            return None
        return self.staff[-1] - (place.step - self._bottom) * self._half

    @property
    def _half(self) -> float:
        return (self.staff[-1] - self.staff[0]) / (2 * (STAFF_LINES - 1))

    def place_at(self, point: QPointF, grid: Fraction) -> Place | None:
        """The place under a point; None outside the bars."""
        bar = self.bar_at(point.x())
        if bar is None or len(self.staff) < STAFF_LINES:
            return None
        onset = self.onset_at(bar, point.x(), grid)
        if self.strings and point.y() > (self.staff[-1] + self.strings[0]) / 2:
            nearest = min(self.strings, key=lambda y: abs(y - point.y()))
            return Place(bar, onset, string=self.strings.index(nearest) + 1)
        step = self._bottom + round((self.staff[-1] - point.y()) / self._half)
        return Place(bar, onset, step=step)
