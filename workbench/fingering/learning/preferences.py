"""Learning from the teacher: weights under which the engine would propose what they chose.

Every choice is a set of preferences: the chosen fingering over each one passed
over. The cost is linear in the weights, so the fit is a linear programme with a
margin (a max-margin ranking in the sense of Joachims 2002, with absolute
instead of squared distances): as few and as small violations as possible, then
as small a change of the weights as possible, each within a factor of the file's.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from workbench.fingering.alternatives import other_ways, pinned_way
from workbench.fingering.engine import Solver
from workbench.fingering.lattice.terms import LEFT_TERMS
from workbench.fingering.types import Pin, Settings
from workbench.fingering.weights import weights_for

FACTOR = 4.0  # a weight stays between a quarter of the file's and four times it
ROOM = 3000  # thousandths a weight may grow to where the file has it at nothing
MARGIN = 0.1  # units of effort by which a chosen fingering should win
PULL = 0.02  # price of changing a weight by its own size, in units of violation
PASSED_OVER = 6  # alternatives each choice is held against
FAINT = 50  # thousandths of change that nobody would see in a fingering

Features = tuple[int, ...]  # in the order of LEFT_TERMS, in the terms' units


@dataclass(frozen=True)
class Choice:
    """What the teacher chose in a bar and what they passed over, as term totals
    of the whole piece under either."""

    bar: int
    chosen: Features
    rejected: tuple[Features, ...]


@dataclass(frozen=True)
class WeightChange:
    """A weight that the fit moved, in thousandths."""

    term: str
    before: int
    after: int

    @property
    def much(self) -> int:
        """How far it moved, either way."""
        return abs(self.after - self.before)


def worth_telling(changes: Sequence[WeightChange]) -> list[WeightChange]:
    """The changes that a reader would see, the greatest first."""
    seen = [c for c in changes if c.much >= FAINT]
    return sorted(seen, key=lambda c: (-c.much, c.term))


@dataclass(frozen=True)
class Fit:
    """The fitted ``weights`` (as Settings takes them), what changed, and how many
    of ``total`` choices are reproduced before, after, and by a fit that has not
    seen them. ``undo`` are the weights that were in force before."""

    weights: tuple[tuple[str, int], ...]
    changes: tuple[WeightChange, ...]
    total: int
    reproduced_before: int
    reproduced_after: int
    leave_one_out: int
    undo: tuple[tuple[str, int], ...]


def _features(solver: Solver, states: Sequence[int]) -> Features:
    total = dict.fromkeys(LEFT_TERMS, 0)
    for step in solver.lattice.path_terms(states):
        for term, value in step.items():
            if term in total:  # a habit is none of the choices' business
                total[term] += value
    return tuple(total[t] for t in LEFT_TERMS)


def choice_from(solver: Solver, bar: int, pins: Sequence[Pin]) -> Choice | None:
    """The teacher's fingering of a bar (its left-hand pins) against the engine's own and
    the alternatives. ``solver`` must stand without pins on that bar. None where
    the pins say nothing of the left hand.

    Raises BadInput where no hand can hold the pins.
    """
    notes = {n.id for n in solver.piece.bars[bar].notes}
    asked = tuple(
        replace(p, right=None)
        for p in pins
        if p.note in notes and (p.string, p.fret, p.left) != (None, None, None)
    )
    if not asked:
        return None
    path = solver.path()
    chosen = pinned_way(solver, path, bar, asked)
    mine = _features(solver, chosen.states)
    rejected = {_features(solver, path.states)}
    for way in other_ways(solver, path, {}, bar, PASSED_OVER):
        states = [way.get(t, s) for t, s in enumerate(path.states)]
        if not _holds(solver, states, asked):
            rejected.add(_features(solver, states))
    rejected.discard(mine)
    return Choice(bar, mine, tuple(sorted(rejected)))


def _holds(solver: Solver, states: Sequence[int], pins: tuple[Pin, ...]) -> bool:
    masks = solver.masks(solver.asked(pins)) or {}
    return all(bool(allowed[states[t]]) for t, allowed in masks.items())


def _value(features: Features, weights: dict[str, int]) -> int:
    return sum(f * weights[t] for f, t in zip(features, LEFT_TERMS, strict=True))


def reproduced(choice: Choice, weights: dict[str, int]) -> bool:
    """Whether the engine under these weights puts the choice before all it passed over."""
    mine = _value(choice.chosen, weights)
    return all(mine < _value(r, weights) for r in choice.rejected)


def _bounds(file: dict[str, int]) -> list[tuple[float, float]]:
    return [
        (file[t] / FACTOR, file[t] * FACTOR) if file[t] else (0.0, float(ROOM)) for t in LEFT_TERMS
    ]


def _solve(
    choices: Sequence[Choice], start: dict[str, int], file: dict[str, int]
) -> dict[str, int]:
    """Weights in thousandths that violate the choices least and move least."""
    import numpy as np
    from scipy.optimize import linprog
    from scipy.sparse import coo_matrix

    every = [np.array(r, float) - np.array(c.chosen, float) for c in choices for r in c.rejected]
    pairs = [p for p in every if (p > 0).any()]  # the others no weights can turn
    if not pairs:
        return dict(start)
    k, n = len(LEFT_TERMS), len(pairs)
    first = np.array([start[t] for t in LEFT_TERMS], float) / 1000
    size = np.maximum(first, 0.3)
    # unknowns: weights, how far each moves, one violation a pair
    goal = np.concatenate([np.zeros(k), PULL / size, np.full(n, 1.0 / len(choices))])
    rank = np.hstack([-np.array(pairs), np.zeros((n, k)), -np.eye(n)])
    up = np.hstack([np.eye(k), -np.eye(k), np.zeros((k, n))])
    down = np.hstack([-np.eye(k), -np.eye(k), np.zeros((k, n))])
    limits = np.concatenate([np.full(n, -MARGIN), first, -first])
    box = [(lo / 1000, hi / 1000) for lo, hi in _bounds(file)]
    box = [(min(lo, f), max(hi, f)) for (lo, hi), f in zip(box, first, strict=True)]
    found = linprog(
        goal,
        A_ub=coo_matrix(np.vstack([rank, up, down])),
        b_ub=limits,
        bounds=box + [(0, None)] * (k + n),
        method="highs",
    )
    if not found.success:
        return dict(start)
    return {t: round(float(w) * 1000) for t, w in zip(LEFT_TERMS, found.x[:k], strict=True)}


def fit(
    choices: Sequence[Choice], settings: Settings | None = None, scale_mm: float = 650.0
) -> Fit:
    """Fit the left hand's weights to the teacher's choices, starting from the weights
    of ``settings`` on an instrument of that scale length. Level and hand setting are left
    out: they shift the result later."""
    settings = settings or Settings()
    file = weights_for(Settings(), scale_mm).left
    start = weights_for(Settings(weights=settings.weights), scale_mm).left
    counted = [c for c in choices if c.rejected]
    after = _solve(counted, start, file)
    unseen = 0
    for i, choice in enumerate(counted):
        rest = _solve([*counted[:i], *counted[i + 1 :]], start, file)
        unseen += reproduced(choice, rest)
    changes = tuple(WeightChange(t, start[t], after[t]) for t in LEFT_TERMS if start[t] != after[t])
    kept = tuple((t, w) for t, w in settings.weights if t not in LEFT_TERMS)
    weights = (*kept, *((t, after[t]) for t in LEFT_TERMS if after[t] != file[t]))
    return Fit(
        weights,
        changes,
        len(counted),
        sum(reproduced(c, start) for c in counted),
        sum(reproduced(c, after) for c in counted),
        unseen,
        settings.weights,
    )


def apply(found: Fit, settings: Settings) -> Settings:
    """Settings under which the engine works with the fitted weights."""
    return replace(settings, weights=found.weights)


def undo(found: Fit, settings: Settings) -> Settings:
    """Settings as they were before the fit."""
    return replace(settings, weights=found.undo)
