"""Published chord shapes as evidence for the weights, beside the printed fingers of studies."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping
from functools import lru_cache

import numpy as np

from tests.shape.shape_charts import Published
from workbench.fingering.hand.holding import IntArray
from workbench.fingering.hand.reach import pair_limits
from workbench.fingering.lattice.terms import LEFT_TERMS
from workbench.fingering.shapes.grips import FingeredShape, Frets, grips
from workbench.fingering.shapes.shape import TERMS, shape_terms
from workbench.instrument.table import hand, instrument

WORTH = 0.1  # what a row of a chart counts beside one printed finger of a study
# A single finger in first position stands on its own fret: finger n on fret n
# (method books, from memory). Counted as so many chart rows each.
OWN_FRET_ROWS = 3
# Chords that every pupil learns first count as much: triads and sevenths among open strings.
FIRST_ROWS = 3
FIRST_SUFFIXES = ("major", "minor", "7")
FIRST_FRETS = 3


@lru_cache(maxsize=8192)
def ways(name: str, frets: Frets) -> tuple[tuple[tuple[int, ...], ...], IntArray]:
    """Every fingering of a shape that a medium hand reaches, and its terms in the order of
    LEFT_TERMS."""
    from workbench.fingering.shapes.shape import shape

    on, of = instrument(name), hand("medium")
    assert pair_limits(of)
    possible = {f.fingers for f in shape(frets, on, of).fingerings}
    held: list[FingeredShape] = []
    fingers: list[tuple[int, ...]] = []
    for grip in grips(frets):
        by_string = {s: p.finger for p in grip.presses for s in p.strings}
        row = tuple(by_string.get(len(frets) - c, 0) for c in range(len(frets)))
        if row in possible:
            held.append(grip)
            fingers.append(row)
    found = shape_terms(held, on, of)
    out = np.zeros((len(held), len(LEFT_TERMS)))
    for i, term in enumerate(LEFT_TERMS):
        if term in TERMS:
            out[:, i] = found[term]
    return tuple(fingers), out


def is_first(row: Published) -> bool:
    """Whether a chord is among those that are learned first."""
    stopped = [f for f in row.frets if f]
    return row.suffix in FIRST_SUFFIXES and 0 in row.frets and max(stopped) <= FIRST_FRETS


class Charts:
    """Chart rows: how likely the printed fingers are among all fingerings of their shape
    (a conditional logit). ``loss`` and ``scale`` as Evidence asks."""

    def __init__(self, rows: Iterable[tuple[str, Published]], worth: float = WORTH) -> None:
        counted: Counter[tuple[str, Frets, tuple[int, ...]]] = Counter()
        for name, r in rows:
            counted[name, r.frets, r.fingers] += FIRST_ROWS if is_first(r) else 1
        names = {name for name, _, _ in counted}
        for name in names:
            strings = len(instrument(name).tuning)
            for at in range(strings):
                for n in (1, 2, 3):
                    frets = tuple(n if c == at else 0 for c in range(strings))
                    counted[name, frets, frets] += OWN_FRET_ROWS
        blocks, firsts, printed, times = [], [], [], []
        at = 0
        for (name, frets, fingers), many in counted.items():
            every, matrix = ways(name, frets)
            if fingers not in every:
                continue
            blocks.append(matrix)
            firsts.append(at)
            printed.append(at + every.index(fingers))
            times.append(many * worth)
            at += len(matrix)
        self.matrix = np.concatenate(blocks)
        self.first, self.printed = np.array(firsts), np.array(printed)
        self.times = np.array(times)
        self.many = np.diff(np.append(self.first, at))

    def scale(self) -> IntArray:
        return np.sqrt(np.maximum((self.matrix**2).mean(axis=0), 0.03))

    def loss(self, weights: IntArray) -> tuple[float, IntArray]:
        cost = self.matrix @ weights
        least = np.minimum.reduceat(cost, self.first)
        share = np.exp(np.repeat(least, self.many) - cost)
        whole = np.add.reduceat(share, self.first)
        chance = share / np.repeat(whole, self.many)
        value = self.times @ (np.log(whole) + cost[self.printed] - least)
        pull = -np.repeat(self.times, self.many) * chance
        np.add.at(pull, self.printed, self.times)
        return float(value), self.matrix.T @ pull


def shares(
    rows: Iterable[tuple[str, Published]], weights: Mapping[str, int]
) -> tuple[float, float, int]:
    """Shares of rows whose printed fingers come first, or within the first three; rows."""
    price = np.array([weights[t] for t in LEFT_TERMS])
    first = three = count = 0
    for name, row in rows:
        every, matrix = ways(name, row.frets)
        count += 1
        costs = matrix @ price
        order = sorted(range(len(every)), key=lambda i: (costs[i], every[i]))
        best = [every[i] for i in order[:3]]
        first += best[:1] == [row.fingers]
        three += row.fingers in best
    return first / count, three / count, count
