import random

import numpy as np
import pytest
from scipy.optimize import check_grad  # outside check: scipy's finite differences

from workbench.music.errors import BadInput
from workbench.teaching import calibrate
from workbench.teaching.calibrate import GradedPiece, fit, fit_in_words
from workbench.teaching.demands import table
from workbench.teaching.features import features_from
from workbench.teaching.grade import grade_features, shipped_model


def shelf(count=24, bias=1.0, seed=3):
    """Pieces whose teacher cares for speed and barres more than the shipped model does."""
    rng = random.Random(seed)
    out = []
    for k in range(count):
        base = rng.uniform(0, 8)
        stated = {}
        levels = {}
        for d in table().demands:
            grade = min(8.0, max(0.0, base + rng.gauss(0, 1.2)))
            levels[d.id] = grade
            low = int(min(7, grade))
            stated[d.id] = d.typical[low] + (grade - low) * (d.typical[low + 1] - d.typical[low])
        word = (levels["speed"] + levels["barre"]) / 2 + bias
        out.append(GradedPiece(f"piece {k}", features_from(stated), max(0, min(8, round(word)))))
    return out


def fit_once(pieces):
    """A fit without leaving pieces out."""
    return calibrate._fit(pieces, shipped_model(), "once")


@pytest.fixture(scope="module")
def refit():
    return fit(shelf(16))


def test_a_refit_comes_nearer_to_the_teacher_than_the_shipped_model(refit):
    model = refit
    assert model.graded == 16
    assert model.error is not None and model.shipped_error is not None
    assert model.error < model.shipped_error
    assert "16 pieces" in fit_in_words(model)


def test_the_refit_learns_what_the_teacher_cares_for():
    before, after = dict(shipped_model().weights), dict(fit_once(shelf(40)).weights)
    assert after["speed"] > before["speed"] and after["barre"] > before["barre"]


def test_the_refit_stays_monotone(refit):
    model = refit
    assert all(w >= 0 for _, w in model.weights)
    assert list(model.cuts) == sorted(model.cuts)
    for piece in shelf()[:6]:
        stated = {f.demand.id: f.value for f in piece.features}
        for which in stated:
            harder = features_from(stated | {which: stated[which] * 2 + 1})
            assert (
                grade_features(harder, model).number >= grade_features(piece.features, model).number
            )


def test_leave_one_out_error_is_what_it_says():
    pieces = shelf(6)
    misses = []
    for i, piece in enumerate(pieces):
        rest = fit_once(pieces[:i] + pieces[i + 1 :])
        misses.append(abs(grade_features(piece.features, rest).number - piece.grade))
    assert fit(pieces).error == pytest.approx(sum(misses) / len(misses))


def test_the_gradient_is_that_of_the_likelihood(monkeypatch):
    caught = {}

    def spy(loss, theta, **rest):
        caught["loss"], caught["theta"] = loss, theta
        return real(loss, theta, **rest)

    real = calibrate.minimize
    monkeypatch.setattr(calibrate, "minimize", spy)
    calibrate._fit(shelf(12), shipped_model(), "x")
    theta = caught["theta"] + 0.01
    miss = check_grad(lambda t: caught["loss"](t)[0], lambda t: caught["loss"](t)[1], theta)
    assert miss < 1e-3 * np.linalg.norm(caught["loss"](theta)[1])


def test_progress_is_told_piece_by_piece():
    seen = []
    fit(shelf(5), progress=lambda done, of: seen.append((done, of)))
    assert seen == [(k, 5) for k in range(1, 6)]


@pytest.mark.parametrize("pieces", [shelf(4), [GradedPiece("x", (), 3)] * 6])
def test_too_little_to_learn_from_is_said(pieces):
    with pytest.raises(BadInput, match="too few to learn from"):
        fit(pieces)


def test_a_grade_outside_the_scale_is_refused():
    with pytest.raises(BadInput, match="grade 9 is not one of 0 to 8"):
        fit([*shelf(6), GradedPiece("too far", (), 9)])


def test_without_a_fit_the_words_say_so():
    assert "as shipped" in fit_in_words(shipped_model())
