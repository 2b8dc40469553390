"""How well weights explain an edition's fingers, and which way they should go.

A conditional random field over the lattice (Lafferty, McCallum and Pereira 2001): a way
through a chain is exp(-cost) likely, in units of a thousand thousandths, and forward and
backward sums give the chance of every printed finger by itself, all others left free. The
weights are fitted to these chances (labelwise training: Gross, Russakovsky, Do and
Batzoglou 2006), dulled by SLIP so that a slip of the print pulls little.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from workbench.fingering.hand.holding import IntArray
from workbench.fingering.learning.observed import Chain, Link

NEVER = -1e9
SLIP = 0.1  # what a printed finger of no chance counts
NUDGE = 0.02
#: Printed fingers that a printed string counts: an edition prints one only where a player would
#: take another.
STRING_WORTH = 4.0
BLOCK = 400_000  # steps priced at a time


class Field:
    """Chains side by side. ``loss(w)`` tells how badly weights explain the print; ``w`` holds
    those of the terms and after them those of the ``habits``."""

    def __init__(self, chains: Sequence[Chain], habits: Sequence[str] = ()) -> None:
        rows = sorted((c for c in chains if c.links), key=lambda c: -len(c.links))
        self.many = len(rows)
        self.moments: list[_Moment] = []
        self.marks = 0
        worth: list[float] = []
        amounts, at = [], 0
        starts = np.arange(self.many)
        sizes, width = [1] * self.many, self.many
        for t in range(len(rows[0].links) if rows else 0):
            live = [i for i, c in enumerate(rows) if t < len(c.links)]
            links = [rows[i].links[t] for i in live]
            ends = np.cumsum([0] + [x.states for x in links])
            before = np.concatenate(
                [x.before + starts[i] for i, x in zip(live, links, strict=True)]
            )
            into = np.concatenate([x.into + e for x, e in zip(links, ends[:-1], strict=True)])
            going_on = int(starts[live[-1]] + sizes[live[-1]])
            fits = self._fits(links, ends[:-1], worth)
            self.moments.append(_Moment(before, into, int(ends[-1]), width, going_on, at, fits))
            amounts += [x.with_habits(habits) for x in links]
            at += len(before)
            starts, sizes, width = ends[:-1], [x.states for x in links], int(ends[-1])
        self.worth = np.array(worth)
        self.amounts = np.concatenate(amounts) if amounts else np.zeros((0, 1), np.uint8)

    def _fits(
        self, links: list[Link], starts: IntArray, worth: list[float]
    ) -> tuple[IntArray, IntArray]:
        marks: list[int] = []
        states: list[int] = []
        for link, start in zip(links, starts, strict=True):
            for mark in link.marks:
                fine = [i for i, p in enumerate(link.places) if mark.fits(p[mark.slot])]
                if 0 < len(fine) < link.states:  # else no weights can turn it
                    marks += [self.marks] * len(fine)
                    states += [int(start) + i for i in fine]
                    self.marks += 1
                    worth.append(1.0 if mark.string is None else STRING_WORTH)
        return np.array(marks, int), np.array(states, int)

    def scale(self) -> IntArray:
        """How much each term moves the cost: its root mean square over the steps."""
        some = self.amounts[:: max(1, len(self.amounts) // 200_000)].astype(float)
        return np.asarray(np.sqrt(np.maximum((some**2).mean(axis=0), 0.03)))

    def costs(self, weights: IntArray) -> IntArray:
        """Cost of every step in units, for weights in units."""
        parts = [self.amounts[i : i + BLOCK].astype(float) @ weights for i in self._blocks()]
        return np.concatenate(parts) if parts else np.zeros(0)

    def _blocks(self) -> range:
        return range(0, len(self.amounts), BLOCK)

    def loss(self, weights: IntArray) -> tuple[float, IntArray]:
        """(minus the sum over printed fingers of log(SLIP + chance), its gradient by weight).

        The gradient of a sum of chances is a covariance with the terms; it is taken as the
        difference of two sweeps in which agreeing states are made a little dearer and cheaper.
        """
        price = self.costs(weights)
        chance = self._chances(self._sweep(price, {}))
        pull = self.worth / (SLIP + chance)
        bonus = self._bonus(pull / pull.max())
        up = self._sweep(price, {t: NUDGE * b for t, b in bonus.items()})
        down = self._sweep(price, {t: -NUDGE * b for t, b in bonus.items()})
        away = (up - down) * (pull.max() / (2 * NUDGE))
        slope = np.zeros(len(weights))
        for i in self._blocks():
            slope += away[i : i + BLOCK] @ self.amounts[i : i + BLOCK].astype(float)
        return -float(self.worth @ np.log(SLIP + chance)), slope

    def chances(self, weights: IntArray) -> IntArray:
        """How likely each printed finger is."""
        return self._chances(self._sweep(self.costs(weights), {}))

    def _chances(self, steps: IntArray) -> IntArray:
        out = np.zeros(self.marks)
        for m in self.moments:
            if len(m.fit_mark):
                mass = np.bincount(m.into, steps[m.steps], minlength=m.states)
                np.add.at(out, m.fit_mark, mass[m.fit_state])
        return out

    def _bonus(self, pull: IntArray) -> dict[int, IntArray]:
        """By moment and state, the pulls of the marks that the state agrees with."""
        return {
            t: np.bincount(m.fit_state, pull[m.fit_mark], minlength=m.states)
            for t, m in enumerate(self.moments)
            if len(m.fit_mark)
        }

    def _sweep(self, price: IntArray, bonus: dict[int, IntArray]) -> IntArray:
        """How likely each step is; ``bonus`` by moment makes states cheaper."""
        onward = np.empty(len(price))
        below: IntArray | None = None
        for t in range(len(self.moments) - 1, -1, -1):
            m = self.moments[t]
            if below is None:
                below = np.zeros(m.states)
            if t in bonus:
                below = below + bonus[t]
            value = below[m.into] - price[m.steps]
            top = np.maximum.reduceat(value, m.first)
            share = np.exp(value - np.repeat(top, m.counts))
            whole = np.add.reduceat(share, m.first)
            onward[m.steps] = share / np.repeat(whole, m.counts)
            below = np.full(m.width, NEVER)
            below[m.going_on :] = 0.0  # chains that ended
            below[m.sources] = top + np.log(whole)
        out = np.empty(len(price))
        here: IntArray = np.ones(self.many)
        for m in self.moments:
            out[m.steps] = here[m.before] * onward[m.steps]
            here = np.bincount(m.into, out[m.steps], minlength=m.states)
        return out


class _Moment:
    """One moment of all chains: its steps, states before that go on, and for every mark the
    states that agree with it (``fit_mark``, ``fit_state`` side by side)."""

    def __init__(
        self,
        before: IntArray,
        into: IntArray,
        states: int,
        width: int,
        going_on: int,
        at: int,
        fits: tuple[IntArray, IntArray],
    ) -> None:
        self.before, self.into, self.states = before, into, states
        self.width, self.going_on = width, going_on
        self.steps = slice(at, at + len(before))
        self.sources, self.first = np.unique(before, return_index=True)
        self.counts = np.diff(np.append(self.first, len(before)))
        self.fit_mark, self.fit_state = fits
