"""How loud a note is by the score's dynamics and accents."""

from __future__ import annotations

from bisect import bisect_right
from fractions import Fraction

from workbench.music.model import Note, Piece

#: From softest (0) to loudest (1); steps by ear, no source.
LEVELS = {
    "ppp": 0.05, "pp": 0.2, "p": 0.35, "mp": 0.45, "mf": 0.55, "f": 0.7, "ff": 0.85, "fff": 1.0,
    "sf": 0.8, "sfz": 0.8, "fp": 0.6,
}  # fmt: skip
PLAIN = LEVELS["mf"]
ACCENTS = {"accent": 0.15, "strong accent": 0.22}
RANGE_DECIBELS = 26.0  # between softest and loudest


def gain_of(loud: float) -> float:
    """The gain of a loudness, 1 for mezzoforte."""
    return float(10 ** ((loud - PLAIN) * RANGE_DECIBELS / 20))


class Loudness:
    """The loudness of every note of a piece, 0 to 1; a mark holds until the next."""

    def __init__(self, piece: Piece) -> None:
        marks = [
            ((bar.index, mark.onset), LEVELS[mark.text])
            for bar in piece.bars
            for mark in bar.dynamics
            if mark.text in LEVELS
        ]
        marks.sort(key=lambda m: m[0])
        self._places: list[tuple[int, Fraction]] = [place for place, _ in marks]
        self._levels = [level for _, level in marks]

    def at(self, bar: int, note: Note) -> float:
        """The loudness of a note of a written bar, its accent counted in."""
        place = bisect_right(self._places, (bar, note.onset)) - 1
        level = self._levels[place] if place >= 0 else PLAIN
        return min(1.0, level + max((ACCENTS.get(a, 0.0) for a in note.articulations), default=0))
