"""Where a moment, a pitch or a string lies in the engraved strip, and what lies at a point."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from typing import Any

from PySide6.QtCore import QPointF

from workbench.instrument.model import Instrument
from workbench.music.model import Bar, Piece

OCTAVE_BELOW = 53  # instruments that go lower are written an octave up
TOP_LINE = 38  # F5, in steps from C0
#: Engraving units (staff space 180) that stand before the first note of a bar.
PAD, CLEF, SIGN, METER, REPEAT = 300.0, 650.0, 190.0, 450.0, 250.0


class Places:
    """Reads one score image. All coordinates are those of the image."""

    def __init__(self, image: Any, piece: Piece, instrument: Instrument) -> None:
        self._image, self._piece, self._instrument = image, piece, instrument
        self.written_up = 7 if instrument.lowest < OCTAVE_BELOW else 0

    def item(self, bar: int) -> Any:
        """The system that holds a bar; None where it is not drawn."""
        for item in self._image.placed:
            if item.system.first <= bar <= item.system.last:
                return item
        return None

    def lines(self, bar: int) -> tuple[list[float], list[float]]:
        """Heights of the five lines of the staff and of the strings of the tablature."""
        item = self.item(bar)
        if item is None:
            return [], []
        flat = item.system.flat
        heights = sorted(set(flat.lines)) or [flat.staff_top + 180.0 * k for k in range(5)]
        mapped = [item.corner.y() + y * item.scale for y in heights]
        return mapped[:5], mapped[5:]

    def x(self, bar: int, onset: Fraction) -> float | None:
        """How far right a moment lies."""
        anchors = self._anchors(bar)
        if not anchors:
            return None
        moments = [float(at) for at, _ in anchors]
        wanted = float(onset)
        for k in range(len(anchors) - 1):
            if moments[k] <= wanted <= moments[k + 1]:
                span = moments[k + 1] - moments[k]
                share = (wanted - moments[k]) / span if span else 0.0
                return anchors[k][1] + share * (anchors[k + 1][1] - anchors[k][1])
        return anchors[-1][1]

    def _anchors(self, index: int) -> list[tuple[Fraction, float]]:
        """Moments of a bar whose place is known, from left to right."""
        item, rect = self.item(index), self._image.bar_rect(index)
        if item is None or rect is None or index >= len(self._piece.bars):
            return []
        bar = self._piece.bars[index]
        found: dict[Fraction, float] = {}
        for note in bar.notes:
            if note.grace:
                continue
            head = self._image.rect_of(f"head-{note.id}")
            if head is not None:
                x = head.center().x()
                found[note.onset] = min(x, found.get(note.onset, x))
        first = item.system.first == index
        found.setdefault(Fraction(0), rect.left() + self._head(bar, first) * item.scale)
        last = max(found.values())
        end = rect.right() - min(PAD * item.scale, max(0.0, (rect.right() - last) / 4))
        found[bar.length] = max(end, last)
        return sorted(found.items())

    def _head(self, bar: Bar, first: bool) -> float:
        """What clef, key and time signature take before the first note, at a guess."""
        before = self._piece.bars[bar.index - 1] if bar.index else None
        wide = PAD
        if first:
            wide += CLEF + SIGN * abs(bar.key.fifths)
        elif before is not None and before.key != bar.key:
            wide += SIGN * (abs(bar.key.fifths) + 1)
        if before is None or before.time_signature != bar.time_signature:
            wide += METER
        return wide + REPEAT * bar.repeat_start

    def y_of_step(self, bar: int, step: int) -> float | None:
        """Height of a place on the staff; ``step`` counts from C0 as it sounds."""
        staff, _ = self.lines(bar)
        if len(staff) < 5:
            return None
        half = (staff[4] - staff[0]) / 8
        return staff[0] + (TOP_LINE - step - self.written_up) * half

    def y_of_string(self, bar: int, string: int) -> float | None:
        """Height of a string's line in the tablature."""
        _, tab = self.lines(bar)
        return tab[string - 1] if 0 < string <= len(tab) else None

    def has_tablature(self, bar: int) -> bool:
        return bool(self.lines(bar)[1])

    def at(
        self, point: QPointF, moments: Any
    ) -> tuple[int, Fraction, int | None, int | None] | None:
        """Bar, nearest moment, and either step or string at a point; None beside the music.

        ``moments`` gives the moments of a bar among which to choose.
        """
        bar = self._image.bar_at(point)
        if bar is None or bar >= len(self._piece.bars):
            return None
        choice: Sequence[Fraction] = moments(bar)
        onset = min(choice, key=lambda at: abs((self.x(bar, at) or 0.0) - point.x()))
        staff, tab = self.lines(bar)
        if tab and point.y() > (staff[4] + tab[0]) / 2:
            nearest = min(range(len(tab)), key=lambda k: abs(tab[k] - point.y()))
            return bar, onset, None, nearest + 1
        half = (staff[4] - staff[0]) / 8
        step = TOP_LINE - self.written_up - round((point.y() - staff[0]) / half)
        return bar, onset, step, None
