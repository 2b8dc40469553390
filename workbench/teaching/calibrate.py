"""Fit the grade model to grades the teacher has given to pieces of their own.

A cumulative (proportional odds) model: the chance that a piece lies in grade n
follows from a weighted sum of its demands and eight cuts between the grades.
Weights are held at zero or above and cuts in order, so the grade stays monotone
in every demand. A pull towards the shipped model keeps a few pieces from
twisting it. How well it does is told by leaving each piece out in turn.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray
from scipy.optimize import minimize
from scipy.special import expit

from workbench.music.errors import BadInput
from workbench.teaching.features import Feature
from workbench.teaching.grade import GradeModel, grade_features, parts_of_score, shipped_model

SPREAD = 0.4  # in grades: how far two teachers' words on one piece scatter (no source)
PULL_WEIGHTS = 6.0  # strength of the pull towards the shipped weights ...
PULL_CUTS = 0.5  # ... and cuts, in log likelihood
FEWEST = 5  # graded pieces below which nothing is fitted
LEAST_GAP = 0.05

Vector = NDArray[np.float64]


@dataclass(frozen=True)
class GradedPiece:
    """A piece's features and the grade (0-8) the teacher gives it."""

    title: str
    features: tuple[Feature, ...]
    grade: int


def fit(
    pieces: Sequence[GradedPiece],
    name: str = "refit",
    progress: Callable[[int, int], None] | None = None,
) -> GradeModel:
    """The model refitted to the teacher's grades, with its leave-one-out error.

    ``progress(done, all)`` is called after every piece left out. Raises BadInput
    with fewer than five pieces, all of one grade, or a grade outside 0 to 8.
    """
    for piece in pieces:
        if not 0 <= piece.grade <= 8:
            raise BadInput(
                f"'{piece.title}': grade {piece.grade} is not one of 0 to 8; correct it."
            )
    if len(pieces) < FEWEST or len({p.grade for p in pieces}) < 2:
        raise BadInput(
            f"{len(pieces)} graded pieces are too few to learn from; "
            f"grade at least {FEWEST}, of two or more different grades."
        )
    shipped = shipped_model()
    errors, before = [], []
    for i, left_out in enumerate(pieces):
        model = _fit([*pieces[:i], *pieces[i + 1 :]], shipped, name)
        errors.append(abs(grade_features(left_out.features, model).number - left_out.grade))
        before.append(abs(grade_features(left_out.features, shipped).number - left_out.grade))
        if progress:
            progress(i + 1, len(pieces))
    return replace(
        _fit(pieces, shipped, name),
        graded=len(pieces),
        error=sum(errors) / len(errors),
        shipped_error=sum(before) / len(before),
    )


def fit_in_words(model: GradeModel) -> str:
    """What the refit achieved, and whether to prefer it, in a sentence or two."""
    if model.error is None or model.shipped_error is None:
        return "The model is as shipped; grade pieces of your own to fit it to your judgement."
    said = (
        f"Fitted to {model.graded} pieces: with each piece left out in turn it misses your grade "
        f"by {model.error:.1f} on average, the shipped model by {model.shipped_error:.1f}."
    )
    if model.error > model.shipped_error:
        return said + " The shipped model does better; keep it, or grade more pieces."
    return said


def _fit(pieces: Sequence[GradedPiece], start: GradeModel, name: str) -> GradeModel:
    names = [n for n, _ in start.weights]
    rows = [parts_of_score(p.features) for p in pieces]
    x = np.array([[row.get(n, 0.0) for n in names] for row in rows])
    grades = np.array([p.grade for p in pieces])
    w0 = np.array([w for _, w in start.weights])
    c0 = np.array(start.cuts)
    k = len(names)

    def loss(theta: Vector) -> tuple[float, Vector]:
        w, cuts = theta[:k], _cuts(theta[k:])
        eta = (x * w).sum(axis=1)  # small sums: not worth the threads of a matrix product
        lined = np.concatenate(([-np.inf], cuts, [np.inf]))
        low, high = expit((lined[grades] - eta) / SPREAD), expit((lined[grades + 1] - eta) / SPREAD)
        chance = np.maximum(high - low, 1e-12)
        d_low, d_high = low * (1 - low) / SPREAD, high * (1 - high) / SPREAD
        grad_w = (x * ((d_high - d_low) / chance)[:, None]).sum(axis=0)
        grad_c = np.zeros(10)
        np.add.at(grad_c, grades + 1, -d_high / chance)
        np.add.at(grad_c, grades, d_low / chance)
        pull_w, pull_c = (w - w0) / np.maximum(w0, 0.01), cuts - c0
        value = -np.log(chance).sum() + PULL_CUTS * (pull_c**2).sum()
        value += PULL_WEIGHTS / k * (pull_w**2).sum()
        grad_w = grad_w + 2 * PULL_WEIGHTS / k * pull_w / np.maximum(w0, 0.01)
        inner = grad_c[1:9] + 2 * PULL_CUTS * pull_c
        grad_gaps = np.cumsum(inner[::-1])[::-1]
        return float(value), np.concatenate((grad_w, grad_gaps))

    theta0 = np.concatenate((w0, [c0[0]], np.diff(c0)))
    bounds = [(0.0, None)] * k + [(None, None)] + [(LEAST_GAP, None)] * 7
    # TNC needs no linear algebra threads, which cost more than so small a fit
    found = minimize(loss, theta0, jac=True, method="TNC", bounds=bounds, options={"maxfun": 2000})
    weights = tuple((n, max(0.0, float(w))) for n, w in zip(names, found.x[:k], strict=True))
    return GradeModel(name, weights, tuple(float(c) for c in _cuts(found.x[k:])))


def _cuts(gaps: Vector) -> Vector:
    """Cuts from the first of them and the gaps between them."""
    return np.cumsum(gaps)
