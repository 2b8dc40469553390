"""How a hand takes some places on the neck at once: the easiest fingers, and what they ask.

The same rules as the fingering's grips (fingers in order along the neck, the
first may lie as a barre over silent strings too, no pair beyond its greatest
reach), but only the easiest way of each, without naming it: arranging asks this
many thousand times.
"""

from __future__ import annotations

from functools import lru_cache
from itertools import combinations, permutations
from typing import NamedTuple

from workbench.fingering.hand.grips import Neck, apart, neck
from workbench.fingering.hand.holding import PAIRS
from workbench.instrument.model import Hand, Instrument

Places = tuple[tuple[int, int], ...]  # (string, fret), by string


class Prices(NamedTuple):
    """What holding a grip costs in thousandths: once and for each millimetre where it reaches
    beyond comfort; for finger 1 laid over two strings, for another finger so, and for each
    string more that any of them covers."""

    wide: int
    stretch: int
    barre: int
    barre_other: int
    barre_string: int


class Ease(NamedTuple):
    """The easiest way to stop some places: what holding it costs, the fingers down, and the
    millimetres beyond comfort."""

    hold: int
    fingers: int
    excess: int


class Shapes:
    """Shapes of one instrument and hand."""

    def __init__(self, instrument: Instrument, hand: Hand, prices: Prices) -> None:
        self.prices = prices
        self.table: Neck = neck(instrument, hand)
        self._span = self.table.span.tolist()
        self._pair = {pair: i for i, pair in enumerate(PAIRS)}
        self.widest = max(self.table.greatest)
        self.at: list[int] = self.table.at.tolist()
        self.shift: list[list[int]] = self.table.shift.tolist()
        self._known: dict[Places, Ease | None] = {}

    def ease(self, places: Places) -> Ease | None:
        """The easiest way to stop ``places``, which have a string each: the least to hold,
        then the fewest fingers; None where no hand can. Fewer places never cost more to hold."""
        try:
            return self._known[places]
        except KeyError:
            found = self._known[places] = self._ease(places)
            return found

    def _ease(self, places: Places) -> Ease | None:
        down = sorted((fret, string) for string, fret in places if fret)
        if not down:
            return Ease(0, 0, 0)
        if self.at[down[-1][0]] - self.at[down[0][0]] > self.widest:
            return None
        best: Ease | None = None
        for hand in self._hands(down, dict(places)):
            excess = self._worst(hand)
            if excess is not None:
                one = Ease(self._hold(hand, excess), len(hand), excess)
                best = one if best is None else min(best, one)
        return best

    def _hold(self, hand: tuple[tuple[int, int, int, int], ...], excess: int) -> int:
        p = self.prices
        cost = p.wide + p.stretch * excess if excess else 0
        for finger, _, first, last in hand:
            if last > first:
                laid = p.barre if finger == 1 else p.barre_other
                cost += laid + p.barre_string * (last - first - 1)
        return cost

    def _hands(
        self, down: list[tuple[int, int]], by_string: dict[int, int]
    ) -> list[tuple[tuple[int, int, int, int], ...]]:
        """Ways to lay fingers, each as (finger, fret, first string, last string)."""
        out: list[tuple[tuple[int, int, int, int], ...]] = []
        low = down[0][0]
        lowest = [s for f, s in down if f == low]
        rest = [d for d in down if d[0] != low]
        # the first finger may take any of the lowest places together
        for size in range(1, len(lowest) + 1):
            for barred in combinations(lowest, size):
                first, last = min(barred), max(barred)
                if size > 1 and any(by_string.get(s, low) < low for s in range(first, last + 1)):
                    continue
                if size == 1:
                    continue
                others = [(low, s) for s in lowest if s not in barred] + rest
                out += self._laid(others, (2, 3, 4), ((1, low, first, last),), by_string)
        out += self._laid(down, (1, 2, 3, 4), (), by_string)
        return out

    def _laid(
        self,
        places: list[tuple[int, int]],
        free: tuple[int, ...],
        begun: tuple[tuple[int, int, int, int], ...],
        by_string: dict[int, int],
    ) -> list[tuple[tuple[int, int, int, int], ...]]:
        groups: dict[int, list[int]] = {}
        for fret, string in places:
            groups.setdefault(fret, []).append(string)
        orders: list[list[tuple[int, int, int]]] = [[]]
        for fret in sorted(groups):
            ways = [
                order
                for blocks in _blocks(fret, sorted(groups[fret]), by_string)
                for order in permutations(blocks)
            ]
            orders = [[*done, *order] for done in orders for order in ways]
        return [
            (*begun, *((f, *block) for f, block in zip(chosen, order, strict=True)))
            for order in orders
            if len(order) <= len(free)
            for chosen in combinations(free, len(order))
        ]

    def _worst(self, hand: tuple[tuple[int, int, int, int], ...]) -> int | None:
        """The largest excess over comfort of any pair; None beyond the greatest reach."""
        worst = 0
        for i, a in enumerate(hand):
            for b in hand[i + 1 :]:
                if a[1] == b[1] and a[2] <= b[3] and b[2] <= a[3]:
                    return None
                pair = self._pair[a[0] - 1, b[0] - 1]
                span = self._span[a[1]][b[1]][apart(a[1:], b[1:])]
                if span > self.table.greatest[pair]:
                    return None
                worst = max(worst, span - self.table.comfort[pair])
        return worst


def _blocks(
    fret: int, strings: list[int], by_string: dict[int, int]
) -> list[list[tuple[int, int, int]]]:
    """Ways to share out the strings of one fret in blocks (fret, first, last), a finger each:
    a block of several lies over strings that all sound, none lower."""
    if not strings:
        return [[]]
    out = []
    for size in range(1, len(strings) + 1):
        first, last = strings[0], strings[size - 1]
        if any(by_string.get(s, -1) < fret for s in range(first, last + 1)):
            break
        rest = _blocks(fret, strings[size:], by_string)
        out += [[(fret, first, last), *more] for more in rest]
    return out


@lru_cache(maxsize=16)
def shapes(instrument: Instrument, hand: Hand, prices: Prices) -> Shapes:
    """The shapes of an instrument and hand, kept from one call to the next."""
    return Shapes(instrument, hand, prices)
