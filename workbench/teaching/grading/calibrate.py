"""Fit the grade model to grades the teacher has given to pieces of their own.

A cumulative (proportional odds) model: the chance that a piece lies in a grade, or in
the early, middle or late third of it, follows from a weighted sum of its demands and
eight cuts between the grades. Weights are held at zero or above and cuts in order, so
the grade stays monotone in every demand. A pull towards the shipped model keeps a few
pieces from twisting it. How well it does is told by leaving each piece out in turn.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from workbench.language.message import Figure, Listed, Message, Unsaid, message
from workbench.music.errors import BadInput
from workbench.teaching.grading.features import Feature
from workbench.teaching.grading.grade import (
    THIRDS,
    Grade,
    GradeModel,
    grade_features,
    parts_of_score,
    place_of,
    shipped_model,
)
from workbench.teaching.lessons.lesson import GradeThird, NoThird

SPREAD = 0.4  # in grades: how far two teachers' words on one piece scatter (no source)
PULL_WEIGHTS = 6.0  # strength of the pull towards the shipped weights ...
PULL_CUTS = 0.5  # ... and cuts, in log likelihood
FEWEST = 5  # graded pieces below which nothing is fitted
LEAST_GAP = 0.05

Vector = NDArray[np.float64]


@dataclass(frozen=True)
class GradedPiece:
    """A piece's features and the grade (0-8) the teacher gives it; ``level`` is "early",
    "middle", "late", or empty where they gave the whole grade only."""

    title: str
    features: tuple[Feature, ...]
    grade: int
    level: GradeThird | NoThird = ""

    @property
    def words(self) -> Message:
        """For example "grade 2, early"."""
        if not self.level:
            return message("grade {number}", number=self.grade)
        return Grade(self.grade, self.level, 0.0, "").words


@dataclass(frozen=True)
class Refit:
    """What a fit found. ``before`` and ``after`` are the estimates of every piece by the
    model in force until now and by the fitted ``model``; ``unseen`` those of a fit that
    has not seen the piece."""

    model: GradeModel
    pieces: tuple[GradedPiece, ...]
    before: tuple[Grade, ...]
    after: tuple[Grade, ...]
    unseen: tuple[Grade, ...]


def miss(piece: GradedPiece, estimate: Grade) -> float:
    """How far an estimate lies from the teacher's word, in grades: by thirds where they
    gave a third, else by whole grades."""
    if not piece.level:
        return float(abs(estimate.number - piece.grade))
    here = place_of(estimate.number, estimate.level)
    return abs(here - place_of(piece.grade, piece.level))


def refit(
    pieces: Sequence[GradedPiece],
    name: str = "refit",
    progress: Callable[[int, int], None] | None = None,
    force: GradeModel | None = None,
) -> Refit:
    """The model refitted to the teacher's grades, and what it makes of every piece.

    ``force`` is the model in force until now (the shipped one where not given).
    ``progress(done, all)`` is called after every piece left out. Raises BadInput
    with fewer than five pieces, all of one grade, or a grade outside 0 to 8.
    """
    for piece in pieces:
        if not 0 <= piece.grade <= 8:
            raise BadInput(
                "'{title}': grade {grade} is not one of 0 to 8; correct it.",
                title=piece.title,
                grade=piece.grade,
            )
    if len(pieces) < FEWEST or len({(p.grade, p.level) for p in pieces}) < 2:
        raise BadInput(
            "{n} graded pieces are too few to learn from; "
            "grade at least {fewest}, of two or more different grades.",
            n=len(pieces),
            fewest=FEWEST,
        )
    shipped = shipped_model()
    unseen: list[Grade] = []
    for i, left_out in enumerate(pieces):
        model = _fit([*pieces[:i], *pieces[i + 1 :]], shipped, name)
        unseen.append(grade_features(left_out.features, model))
        if progress:
            progress(i + 1, len(pieces))
    by_shipped = [grade_features(p.features, shipped) for p in pieces]
    fitted = replace(
        _fit(pieces, shipped, name),
        graded=len(pieces),
        error=sum(map(miss, pieces, unseen)) / len(pieces),
        shipped_error=sum(map(miss, pieces, by_shipped)) / len(pieces),
    )
    return Refit(
        fitted,
        tuple(pieces),
        tuple(grade_features(p.features, force or shipped) for p in pieces),
        tuple(grade_features(p.features, fitted) for p in pieces),
        tuple(unseen),
    )


def fit_in_words(model: GradeModel) -> Unsaid:
    """What the refit achieved, and whether to prefer it, in a sentence or two."""
    if model.error is None or model.shipped_error is None:
        return message(
            "The model is as shipped; grade pieces of your own to fit it to your judgement."
        )
    said = message(
        "Fitted to {n} pieces: with each piece left out in turn it misses your grade "
        "by {error} on average, the shipped model by {shipped}.",
        n=model.graded,
        error=Figure(model.error, 2),
        shipped=Figure(model.shipped_error, 2),
    )
    if model.error > model.shipped_error:
        better = message("The shipped model does better; keep it, or grade more pieces.")
        return Listed((said, better))
    return said


def bounds_of(piece: GradedPiece) -> tuple[int, int]:
    """The thirds of grades (0 to 27) between which the teacher's word lies."""
    if piece.level in THIRDS:
        low = 3 * piece.grade + THIRDS.index(piece.level)
        return low, low + 1
    return 3 * piece.grade, 3 * piece.grade + 3


def thirds() -> tuple[Vector, Vector]:
    """Where the 26 limits between thirds lie, as ``rows @ cuts + shift``: what
    ``grade_of_score`` does, for all of them at once."""
    rows, shift = np.zeros((26, 8)), np.zeros(26)
    for k in range(1, 27):
        number, part = divmod(k, 3)
        low, high, moved = np.zeros(8), np.zeros(8), 0.0
        if number:
            low[number - 1] = 1.0
        else:
            low[0], moved = 1.0, -1.0
        if number < 8:
            high[number] = 1.0
        else:
            high[7], high[0] = 1.0 + 1 / 7, -1 / 7
        rows[k - 1] = low + (high - low) * part / 3
        shift[k - 1] = moved * (1 - part / 3)
    return rows, shift


def _fit(pieces: Sequence[GradedPiece], start: GradeModel, name: str) -> GradeModel:
    from scipy.optimize import minimize  # takes long to load
    from scipy.special import expit

    names = [n for n, _ in start.weights]
    parts = [parts_of_score(p.features) for p in pieces]
    x = np.array([[row.get(n, 0.0) for n in names] for row in parts])
    spans = np.array([bounds_of(p) for p in pieces])
    w0 = np.array([w for _, w in start.weights])
    c0 = np.array(start.cuts)
    k = len(names)
    rows, shift = thirds()

    def loss(theta: Vector) -> tuple[float, Vector]:
        w, cuts = theta[:k], _cuts(theta[k:])
        eta = (x * w).sum(axis=1)  # small sums: not worth the threads of a matrix product
        limits = (rows * cuts).sum(axis=1) + shift
        lined = np.concatenate(([-np.inf], limits, [np.inf]))
        low = expit((lined[spans[:, 0]] - eta) / SPREAD)
        high = expit((lined[spans[:, 1]] - eta) / SPREAD)
        chance = np.maximum(high - low, 1e-12)
        d_low, d_high = low * (1 - low) / SPREAD, high * (1 - high) / SPREAD
        grad_w = (x * ((d_high - d_low) / chance)[:, None]).sum(axis=0)
        grad_l = np.zeros(28)
        np.add.at(grad_l, spans[:, 1], -d_high / chance)
        np.add.at(grad_l, spans[:, 0], d_low / chance)
        grad_c = (rows * grad_l[1:27, None]).sum(axis=0)
        pull_w, pull_c = (w - w0) / np.maximum(w0, 0.01), cuts - c0
        value = -np.log(chance).sum() + PULL_CUTS * (pull_c**2).sum()
        value += PULL_WEIGHTS / k * (pull_w**2).sum()
        grad_w = grad_w + 2 * PULL_WEIGHTS / k * pull_w / np.maximum(w0, 0.01)
        inner = grad_c + 2 * PULL_CUTS * pull_c
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
