"""A piece as moments along its playing order, for the plain re-statement of the cost."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from workbench.music.model import Note, Piece
from workbench.music.order.form import playing_order
from workbench.music.ringing.figures import ringing
from workbench.music.ringing.slurs import slurred
from workbench.music.ringing.sounds import sounds

AHEAD = 4  # beginnings over which a silent finger waits for a note that returns
Q0 = Fraction(0)


@dataclass(frozen=True)
class Moment:
    """Notes that begin together. ``parent`` is the moment before (-1: none)."""

    parent: int
    bar: int
    time: Fraction
    notes: tuple[Note, ...]


@dataclass(frozen=True)
class Jump:
    """A step of the playing order that is no mere going on."""

    source: int
    target: int
    time: Fraction  # when the jump happens, on the source's clock
    rest_first: bool


class Score:
    """A piece as moments along the playing order."""

    def __init__(self, piece: Piece, open_strings: Sequence[int]) -> None:
        piece = sounds(piece).piece
        self.slurred = slurred(piece)
        half = (max(open_strings) - min(open_strings)) // 2
        self.ringing = ringing(piece, max(7, half), len(open_strings))
        plain = [n for n in piece.notes if not n.grace]
        self.broken = 10 * sum(n.id in self.ringing for n in plain) > 3 * len(plain)
        order = playing_order(piece)
        assert set(order) == set(range(len(piece.bars))), "every bar is played"
        self.moments: list[Moment] = []
        self.jumps: list[Jump] = []
        self.start: dict[str, Fraction] = {}
        self.note: dict[str, Note] = {n.id: n for n in piece.notes}
        came_from: dict[int, int] = {}
        begins: dict[int, Fraction] = {}
        last: dict[int, int] = {-1: -1}
        first: dict[int, int] = {}
        steps: list[tuple[int, int]] = []
        before = -1
        for index in order:
            if index in came_from:
                if came_from[index] != before and (before, index) not in steps:
                    steps.append((before, index))
            else:
                came_from[index] = before
                bar = piece.bars[index]
                begins[index] = begins[before] + piece.bars[before].length if before >= 0 else Q0
                parent = last[before]
                for onset, notes in _together(bar.notes):
                    first.setdefault(index, len(self.moments))
                    time = begins[index] + onset
                    self.start.update({n.id: time for n in notes})
                    self.moments.append(Moment(parent, index, time, notes))
                    parent = len(self.moments) - 1
                last[index] = parent
            before = index
        for a, b in steps:
            if last[a] >= 0 and b in first:
                rest = self.moments[first[b]].time > begins[b]
                end = begins[a] + piece.bars[a].length
                self.jumps.append(Jump(last[a], first[b], end, rest))

    def sounds_up_to(self, note: str | None, time: Fraction) -> bool:
        """Whether a ringing note is written right up to a time."""
        if note is None or self.note[note].grace:
            return False
        return self.start[note] + self.note[note].duration >= time

    def left_over(self, note: str | None, time: Fraction) -> Fraction:
        """Quarter lengths of a ringing note that remain from a time on."""
        if note is None:
            return Q0
        return max(Q0, self.start[note] + self.note[note].duration - time)

    def rings_on(self, note: str | None, time: Fraction) -> bool:
        """Whether a ringing note goes on after a time, as written or in a broken chord."""
        if note is None or self.note[note].grace:
            return self.left_over(note, time) > 0
        lasts = max(self.note[note].duration, self.ringing.get(note, Q0))
        return self.start[note] + lasts > time

    def soon(self, t: int) -> set[int]:
        """Pitches that begin within the next moments, whichever way the music goes."""
        out: set[int] = set()
        here = {t}
        for _ in range(AHEAD):
            here = {i for i, m in enumerate(self.moments) if m.parent in here}
            out |= {n.midi for i in here for n in self.moments[i].notes}
        return out


def _together(notes: tuple[Note, ...]) -> list[tuple[Fraction, tuple[Note, ...]]]:
    out: list[tuple[Fraction, tuple[Note, ...]]] = []
    for onset in sorted({n.onset for n in notes}):
        here = [n for n in notes if n.onset == onset]
        out += [(onset, (n,)) for n in here if n.duration == 0]
        full = [n for n in here if n.duration > 0]
        if full:
            full.sort(key=lambda n: (-n.midi, n.voice, n.id))
            out.append((onset, tuple(full)))
    return out
