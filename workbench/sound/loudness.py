"""How loud a note is by the score's dynamics and accents."""

from __future__ import annotations

from bisect import bisect_right
from fractions import Fraction

from workbench.music.model import WEDGE_END, WEDGES, Note, Piece

#: From softest (0) to loudest (1); steps by ear, no source.
LEVELS = {
    "ppp": 0.05, "pp": 0.2, "p": 0.35, "mp": 0.45, "mf": 0.55, "f": 0.7, "ff": 0.85, "fff": 1.0,
    "sf": 0.8, "sfz": 0.8, "fp": 0.6,
}  # fmt: skip
PLAIN = LEVELS["mf"]
ACCENTS = {"accent": 0.15, "strong accent": 0.22}
STEP = 0.15  # by which a wedge leads up or down where no mark says how far; by ear, no source
NEAR = 2  # quarters after its end in which a mark still belongs to a wedge
RANGE_DECIBELS = 26.0  # between softest and loudest


def gain_of(loud: float) -> float:
    """The gain of a loudness, 1 for mezzoforte."""
    return float(10 ** ((loud - PLAIN) * RANGE_DECIBELS / 20))


class Loudness:
    """The loudness of every note of a piece, 0 to 1: a mark holds until the next, a wedge
    leads evenly from what is to the mark at its end, or by a step where none stands there."""

    def __init__(self, piece: Piece) -> None:
        self._starts = piece.starts
        marks = sorted(
            (piece.starts[bar.index] + mark.onset, _order(mark.text), mark.text)
            for bar in piece.bars
            for mark in bar.dynamics
            if mark.text in LEVELS or mark.text in (*WEDGES, WEDGE_END)
        )
        level = PLAIN
        self._spans: list[tuple[Fraction, float, Fraction, float]] = []
        for at, (time, _, text) in enumerate(marks):
            if text in LEVELS:
                level = LEVELS[text]
                self._spans.append((time, level, time, level))
            elif text in WEDGES:
                rest = [m for m in marks[at + 1 :] if m[0] > time]
                end = next((m[0] for m in rest), None)
                if end is None:
                    continue  # a wedge without an end leads nowhere
                up = 1 if text == WEDGES[0] else -1
                aim = next((LEVELS[m[2]] for m in rest if m[2] in LEVELS
                            and m[0] - end <= NEAR), None)  # fmt: skip
                if aim is None or (aim - level) * up <= 0:
                    aim = min(1.0, max(0.05, level + STEP * up))
                self._spans.append((time, level, end, aim))
                level = aim
        self._times = [span[0] for span in self._spans]

    def at(self, bar: int, note: Note) -> float:
        """The loudness of a note of a written bar, its accent counted in."""
        time, level = self._starts[bar] + note.onset, PLAIN
        place = bisect_right(self._times, time) - 1
        if place >= 0:
            begin, low, end, high = self._spans[place]
            share = float((time - begin) / (end - begin)) if end > begin else 1.0
            level = low + (high - low) * min(1.0, share)
        return min(1.0, level + max((ACCENTS.get(a, 0.0) for a in note.articulations), default=0))


def _order(text: str) -> int:
    return 0 if text == WEDGE_END else 1 if text in LEVELS else 2
