"""Where systems break: evenly filled, no lonely last bar, at ends of sections if it can be."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from itertools import pairwise

from workbench.music.model import Piece

#: A system is full at 1; bars can be drawn closer only a little.
TIGHTEST = 1.06
MARGIN = 350.0  # of a line's width that bars do not get


def line_breaks(
    piece: Piece, widths: Mapping[int, float], line: float, joints: Sequence[int] = ()
) -> tuple[int, ...]:
    """Bar indices that begin the second and later systems on lines of that width in
    engraving units. At the ``joints`` (bar indices) a system begins in any case."""
    edges = [0, *sorted({j for j in joints if 0 < j < len(piece.bars)}), len(piece.bars)]
    out: list[int] = []
    for start, end in pairwise(edges):
        part = (
            piece if end - start == len(piece.bars) else replace(piece, bars=piece.bars[start:end])
        )
        out += ([start] if start else []) + list(plan(part, widths, line - MARGIN))
    return tuple(out)


def plan(piece: Piece, widths: Mapping[int, float], width: float) -> tuple[int, ...]:
    """Bar indices that begin the second and later systems.

    ``widths`` are natural bar widths by index, the head (clef, key) under -1.
    Minimises the squared unevenness of filling; a bar wider than the line
    stands alone.
    """
    bars = piece.bars
    count = len(bars)
    natural = [widths[b.index] for b in bars]
    head = widths.get(-1, 0.0)
    best: list[tuple[float, int]] = [(0.0, 0)] + [(float("inf"), 0)] * count
    for end in range(1, count + 1):
        total = head
        for start in range(end - 1, -1, -1):
            total += natural[start]
            fill = total / width
            if fill > TIGHTEST and end - start > 1:
                break
            cost = best[start][0] + _badness(piece, start, end, fill)
            if cost < best[end][0]:
                best[end] = (cost, start)
    starts: list[int] = []
    at = count
    while at > 0:
        at = best[at][1]
        if at > 0:
            starts.append(bars[at].index)
    return tuple(reversed(starts))


def _badness(piece: Piece, start: int, end: int, fill: float) -> float:
    """How ill a system of bars ``start`` to ``end`` (exclusive) looks."""
    bars = piece.bars
    short = max(0.0, 0.9 - fill)
    tight = max(0.0, fill - 0.98)
    cost = 0.02 + 4 * short**2 + 60 * tight**2
    last = end == len(bars)
    played = sum(1 for b in bars[start:end] if not b.pickup)
    if played <= 1 and len(bars) > 2:
        cost += 1.5 if last else 0.4
    if last and start == 0:
        return 0.0
    if not last:
        after, before = bars[end], bars[end - 1]
        if after.section or after.repeat_start or before.repeat_end or before.fine:
            cost -= 0.06
        if after.endings and after.endings == before.endings:
            cost += 0.05
        if before.pickup:
            cost += 1.0
    return cost
