"""Fit the weights of the chord-shape cost to published fingerings.

Run from the repository: ``python -m tests.shape.fit_shape`` prints weights and
agreement; with ``--write`` it also puts the weights into
resources/weights/shape.json.

A conditional logit: the chance that a chart gives a fingering falls with its
cost as exp(-cost / SCALE) over all fingerings of the shape. The likelihood of
the rows in the fitting keys is maximised (convex; scipy L-BFGS-B, weights
bounded below) with a small ridge, so that terms the charts hardly speak of
stay small. FLOORS are for what the charts of a small instrument cannot tell
but a hand feels: every millimetre of stretch, every string of a barre.
"""

from __future__ import annotations

import json
import sys
from collections import Counter
from collections.abc import Iterable
from functools import cache

import numpy as np
from scipy.optimize import minimize
from workbench.fingering.shape_terms import ALL_NAMES, WEIGHTS_FILE, Frets

from tests.shape.shape_charts import Published, usable
from workbench.fingering.shape import shape
from workbench.instrument.table import hand, instrument

SCALE = 10.0  # cost for a chance smaller by the factor e
RIDGE = 0.00005
FLOORS = {"stretch": 1.0, "first_barre": 3.0, "barre_width": 2.0, "barre_beneath": 1.0}
# A single finger in first position stands on its own fret: finger n on fret n
# (method books, from memory). Counted as so many chart rows each.
OWN_FRET = tuple(
    tuple(n if column == at else 0 for column in range(4)) for at in range(4) for n in (1, 2, 3)
)
OWN_FRET_ROWS = 3
UNIT = tuple((name, 1) for name in ALL_NAMES)


@cache
def amounts(name: str, frets: Frets) -> tuple[np.ndarray, tuple[tuple[int, ...], ...]]:
    """Amounts of every term (columns) for every fingering (rows), and the fingerings."""
    found = shape(frets, instrument(name), hand("medium"), weights=UNIT).fingerings
    rows = [[dict(f.terms).get(t, 0) for t in ALL_NAMES] for f in found]
    return np.array(rows, dtype=float).reshape(-1, len(ALL_NAMES)), tuple(f.fingers for f in found)


def fit(rows: Iterable[Published], name: str = "ukulele") -> np.ndarray:
    """Weights (not rounded) in the order of ALL_NAMES."""
    counted = Counter((r.frets, r.fingers) for r in rows)
    counted.update({(frets, frets): OWN_FRET_ROWS for frets in OWN_FRET})
    choices = []
    for (frets, fingers), times in counted.items():
        matrix, all_fingers = amounts(name, frets)
        if fingers in all_fingers:
            choices.append((matrix / SCALE, all_fingers.index(fingers), times))
    total = sum(times for _, _, times in choices)

    def loss(weights: np.ndarray) -> tuple[float, np.ndarray]:
        value, slope = 0.0, np.zeros_like(weights)
        for matrix, at, times in choices:
            scores = -matrix @ weights
            scores -= scores.max()
            chances = np.exp(scores)
            whole = chances.sum()
            value += times * (np.log(whole) - scores[at])
            slope += times * (matrix[at] - (chances / whole) @ matrix)
        ridge = RIDGE / SCALE**2
        return value / total + ridge / 2 * weights @ weights, slope / total + ridge * weights

    bounds = [(FLOORS.get(t, 0.0), 300.0) for t in ALL_NAMES]
    start = np.full(len(ALL_NAMES), SCALE)
    found = minimize(
        loss, start, jac=True, method="L-BFGS-B", bounds=bounds, options={"maxiter": 4000}
    )
    return found.x


def agreement(
    rows: Iterable[Published], weights: np.ndarray, name: str = "ukulele"
) -> tuple[float, float, int]:
    """Shares of rows whose published fingers come first, or within the first three; rows."""
    first = three = count = 0
    for row in rows:
        matrix, fingers = amounts(name, row.frets)
        count += 1
        if not fingers:
            continue
        costs = matrix @ weights
        order = sorted(range(len(fingers)), key=lambda i: (costs[i], fingers[i]))
        best = [fingers[i] for i in order[:3]]
        first += best[0] == row.fingers
        three += row.fingers in best
    return first / count, three / count, count


def moved_down(frets: Frets) -> Frets:
    """The shape pushed to fret 1, so that one shape in many keys counts as one."""
    lowest = min((f for f in frets if f), default=1)
    return tuple(f - lowest + 1 if f else f for f in frets)


def by_shape(rows: list[Published], folds: int = 5) -> tuple[float, float]:
    """Agreement on shapes that were not in the fit in any key, over so many folds."""
    shapes = sorted({moved_down(r.frets) for r in rows}, key=str)
    fold = {s: i % folds for i, s in enumerate(shapes)}
    hits = np.zeros(2)
    for at in range(folds):
        weights = np.rint(fit(r for r in rows if fold[moved_down(r.frets)] != at))
        held_out = [r for r in rows if fold[moved_down(r.frets)] == at]
        hits += np.array(agreement(held_out, weights)[:2]) * len(held_out)
    return float(hits[0] / len(rows)), float(hits[1] / len(rows))


def main() -> None:
    rows, _ = usable("ukulele")
    guitar, _ = usable("guitar")
    raw = fit(r for r in rows if r.for_fit)
    weights = np.rint(raw)
    for term, exact, whole in zip(ALL_NAMES, raw, weights, strict=True):
        print(f"{term:26s} {exact:7.2f} {whole:4.0f}")
    print("fitting keys ", agreement((r for r in rows if r.for_fit), weights))
    print("other keys   ", agreement((r for r in rows if not r.for_fit), weights))
    print("guitar       ", agreement(guitar, weights, "guitar"))
    if "--folds" in sys.argv:
        print("unseen shapes", by_shape(rows))
    if "--misses" in sys.argv:
        misses(rows, weights)
        misses(guitar, weights, "guitar")
    if "--write" in sys.argv:
        document = json.loads(WEIGHTS_FILE.read_text(encoding="utf-8"))
        for term, whole in zip(ALL_NAMES, weights, strict=True):
            document["weights"][term]["weight"] = int(whole)
        WEIGHTS_FILE.write_text(json.dumps(document, indent=2) + "\n", encoding="utf-8")


def misses(rows: list[Published], weights: np.ndarray, name: str = "ukulele") -> None:
    """Print the shapes whose published fingers do not come first, commonest first."""
    counted: Counter[str] = Counter()
    for row in rows:
        matrix, fingers = amounts(name, row.frets)
        costs = matrix @ weights
        order = sorted(range(len(fingers)), key=lambda i: (costs[i], fingers[i]))
        ranked = [fingers[i] for i in order]
        if not ranked or ranked[0] != row.fingers:
            place = ranked.index(row.fingers) + 1 if row.fingers in ranked else 0
            shown = row.frets if 0 in row.frets else moved_down(row.frets)
            counted[f"{shown} {row.fingers} at {place}, ours {ranked[:1]}"] += 1
    for line, times in counted.most_common(40):
        print(times, line)


if __name__ == "__main__":
    main()
