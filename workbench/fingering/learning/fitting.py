"""Weights fitted to printed fingers: as near to the print as may be, no term paid to be worse.

What is fitted starts from given weights and is held near them (a ridge, as if the old
weights were evidence too); every weight stays at or above the least that its entry in
resources/weights names, so that no effort is ever a gain and reach beyond comfort stays
the last resort, and at or below the most: editions leave open strings unsaid and print the
exceptions, so open strings are never dearer than a place further up the neck.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from typing import Protocol

import numpy as np

from workbench.fingering.habits import habits_of, is_habit, prices
from workbench.fingering.hand.holding import IntArray
from workbench.fingering.lattice.terms import LEFT_TERMS
from workbench.fingering.learning.observed import Chain
from workbench.fingering.weights import least, most

UNIT = 1000  # thousandths
RIDGE = 3.0  # price of a unit away from the old weight, squared
HABIT_RIDGE = 3.0  # the same for habits


class Evidence(Protocol):
    """What weights are held to. ``loss`` gives (value, slope) for weights in units."""

    def loss(self, weights: IntArray) -> tuple[float, IntArray]: ...

    def scale(self) -> IntArray: ...


def fit(
    evidence: Sequence[Evidence],
    start: Mapping[str, int],
    rounds: int = 50,
    ridge: float = RIDGE,
    prior: Mapping[str, int] | None = None,
    only: Collection[str] | None = None,
    floors: bool = True,
    habits: Sequence[str] = (),
) -> dict[str, int]:
    """Weights in thousandths that explain the evidence best, near ``prior`` (else ``start``).

    ``only`` names the terms that may change; without ``floors`` they may fall to nothing.
    ``habits``: those that may come to count, which the evidence knows after the terms.
    """
    from scipy.optimize import minimize

    terms = (*LEFT_TERMS, *habits)
    scale = 1.0 / evidence[0].scale()
    low = np.array([least(t) / UNIT if floors else 0.0 for t in terms])
    high = np.array([most(t) / UNIT for t in terms])
    near, first = _units(prior or start, terms), _units(start, terms)
    pull = np.where([is_habit(t) for t in terms], HABIT_RIDGE, ridge)

    def loss(scaled: IntArray) -> tuple[float, IntArray]:
        weights = scaled * scale
        value, slope = 0.0, np.zeros(len(weights))
        for part in evidence:
            v, s = part.loss(weights)
            value, slope = value + v, slope + s
        away = weights - near
        value += float((pull * away) @ away)
        return value, (slope + 2 * pull * away) * scale

    found = minimize(
        loss,
        np.clip(first, low, high) / scale,
        jac=True,
        method="L-BFGS-B",
        bounds=[
            (a / s, b / s) if only is None or t in only else (w / s, w / s)
            for t, a, b, s, w in zip(terms, low, high, scale, first, strict=True)
        ],
        options={"maxiter": rounds, "maxcor": 20, "ftol": 5e-6},
    )
    weights = found.x * scale
    return {t: round(float(w) * UNIT) for t, w in zip(terms, weights, strict=True)}


def _units(weights: Mapping[str, int], terms: Sequence[str]) -> IntArray:
    return np.array([weights.get(t, 0) / UNIT if is_habit(t) else weights[t] / UNIT for t in terms])


def best_way(chain: Chain, weights: Mapping[str, int]) -> list[int]:
    """The state of every link on the least-cost way through a chain."""
    price = np.array([weights[t] for t in LEFT_TERMS], np.int64)
    habits = habits_of(weights)
    own = np.zeros(chain.links[-1].states if chain.links else 1)
    values: list[IntArray] = []
    for i in range(len(chain.links) - 1, -1, -1):
        link = chain.links[i]
        value = link.amounts.astype(np.int64) @ price + own[link.into]
        if habits:
            value = value + prices(link.places, habits)[link.into]
        values.append(value)
        sources, first = np.unique(link.before, return_index=True)
        own = np.full(chain.links[i - 1].states if i else 1, np.inf)
        own[sources] = np.minimum.reduceat(value, first)
    out, state = [], 0
    for link, value in zip(chain.links, reversed(values), strict=True):
        lo, hi = np.searchsorted(link.before, (state, state + 1))
        state = int(link.into[lo + int(np.argmin(value[lo:hi]))])
        out.append(state)
    return out


class Agreement(tuple[int, int, int, int]):
    """(fretted fingers met, fretted fingers printed, strings met, strings printed)."""

    @property
    def fingers(self) -> float:
        """Share of the printed fretted fingers met; 1 where none is printed."""
        return self[0] / self[1] if self[1] else 1.0

    @property
    def strings(self) -> float:
        """Share of the printed strings met; 1 where none is printed."""
        return self[2] / self[3] if self[3] else 1.0


def agreement(chain: Chain, weights: Mapping[str, int]) -> Agreement:
    """How much of the print the least-cost way meets."""
    met = [0, 0, 0, 0]
    for link, state in zip(chain.links, best_way(chain, weights), strict=True):
        for mark in link.marks:
            place = link.places[state][mark.slot]
            if mark.left:
                met[1] += 1
                met[0] += place[2] == mark.left
            if mark.string is not None:
                met[3] += 1
                met[2] += place[0] == mark.string
    return Agreement(met)
