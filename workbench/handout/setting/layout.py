"""Where pages of music end: a small optimisation over the systems.

A page costs one; a turn inside a repeat costs more than a page, so that a page more is
taken where it spares the turn; emptiness and a lonely last system cost a little.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from workbench.music.model import Piece
from workbench.music.order.form import stretches

PAGE = 1.0
TURN = 1.6  # a turn inside a repeat
LONELY = 0.5  # one system alone on the last page
FOLLOWED = 0.05  # the same where grips and words follow it there
EMPTY = 0.6  # times the square of the share of a page that stays empty


@dataclass(frozen=True)
class Broken:
    """``starts`` are the systems that begin a page; ``turns`` how many page ends lie
    inside a repeat; ``cost`` as above."""

    starts: tuple[int, ...]
    turns: int
    cost: float

    @property
    def pages(self) -> int:
        return len(self.starts)


def repeat_spans(piece: Piece) -> tuple[tuple[int, int], ...]:
    """(first, last) written bar of every passage that is played again from its start:
    a page end inside one has to be turned back."""
    spans = set()
    runs = stretches(piece)
    at = 0
    for run in runs:
        if run.why == "repeat":
            spans.add((run.first, at))
        at = run.last
    return tuple(sorted(s for s in spans if s[0] < s[1]))


def joints(piece: Piece, spans: Sequence[tuple[int, int]]) -> tuple[int, ...]:
    """Bars (indices) at which a system might begin so that no system reaches over the
    edge of a repeat; none that would leave a single bar in a system."""
    count = len(piece.bars)
    edges = sorted({b for first, last in spans for b in (first, last + 1) if 0 < b < count})
    kept: list[int] = []
    before = 0
    for edge in edges:
        if sum(not b.pickup for b in piece.bars[before:edge]) > 1 and count - edge > 1:
            kept.append(edge)
            before = edge
    return tuple(kept)


def turns_back(spans: Sequence[tuple[int, int]], last_bar: int) -> bool:
    """True where a page that ends with this bar is turned inside a repeat."""
    return any(first <= last_bar < last for first, last in spans)


def break_pages(
    heights: Sequence[float],
    room: float,
    head: float,
    foot: Callable[[int, int], float],
    tail: float,
    bad: Sequence[bool],
    *,
    last: bool = True,
) -> Broken | None:
    """The best page ends; None where a system with its notes fits on no page.

    ``heights`` of the systems with the gap below; ``head`` stands over the first,
    ``tail`` under the last; ``foot(i, j)`` is the height of the notes of systems i to
    j - 1; ``bad[i]`` tells that a page must not end after system i. ``last``: nothing
    follows the music on its last page.
    """
    count = len(heights)
    best: list[tuple[float, int]] = [(0.0, -1)] + [(float("inf"), -1)] * count
    for end in range(1, count + 1):
        used = 0.0
        for start in range(end - 1, -1, -1):
            used += heights[start]
            need = used + foot(start, end) + (head if start == 0 else 0.0)
            need += tail if end == count else 0.0
            if need > room:
                if end - start > 1:
                    break
                if foot(start, end) > 0 or heights[start] <= room:
                    continue
            cost = best[start][0] + PAGE
            if end < count:
                cost += EMPTY * max(0.0, (room - need) / room) ** 2
                cost += TURN if bad[end - 1] else 0.0
            elif end - start == 1 and count > 1:
                cost += LONELY if last else FOLLOWED
            if cost < best[end][0]:
                best[end] = (cost, start)
    if best[count][1] < 0:
        return None
    starts: list[int] = []
    at = count
    while at > 0:
        at = best[at][1]
        starts.append(at)
    starts.reverse()
    turns = sum(bad[s - 1] for s in starts[1:])
    return Broken(tuple(starts), turns, best[count][0])
