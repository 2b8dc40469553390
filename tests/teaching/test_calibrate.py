import random
from dataclasses import replace

import numpy as np
import pytest
from scipy import optimize
from scipy.optimize import check_grad  # outside check: scipy's finite differences

from workbench.music.errors import BadInput
from workbench.teaching.grading import calibrate
from workbench.teaching.grading.calibrate import (
    GradedPiece,
    bounds_of,
    fit_in_words,
    miss,
    refit,
    thirds,
)
from workbench.teaching.grading.demands import table
from workbench.teaching.grading.features import features_from
from workbench.teaching.grading.grade import (
    THIRDS,
    Grade,
    GradeModel,
    grade_features,
    grade_of_score,
    shipped_model,
)


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
def fitted():
    return refit(shelf(16)).model


def test_a_refit_comes_nearer_to_the_teacher_than_the_shipped_model(fitted):
    model = fitted
    assert model.graded == 16
    assert model.error is not None and model.shipped_error is not None
    assert model.error < model.shipped_error
    assert "16 pieces" in str(fit_in_words(model))


def test_the_refit_learns_what_the_teacher_cares_for():
    before, after = dict(shipped_model().weights), dict(fit_once(shelf(40)).weights)
    assert after["speed"] > before["speed"] and after["barre"] > before["barre"]


def test_the_refit_stays_monotone(fitted):
    model = fitted
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
    assert refit(pieces).model.error == pytest.approx(sum(misses) / len(misses))


def test_the_gradient_is_that_of_the_likelihood(monkeypatch):
    caught = {}

    def spy(loss, theta, **rest):
        caught["loss"], caught["theta"] = loss, theta
        return real(loss, theta, **rest)

    real = optimize.minimize
    monkeypatch.setattr(optimize, "minimize", spy)
    calibrate._fit(shelf(12), shipped_model(), "x")
    theta = caught["theta"] + 0.01
    miss = check_grad(lambda t: caught["loss"](t)[0], lambda t: caught["loss"](t)[1], theta)
    assert miss < 1e-3 * np.linalg.norm(caught["loss"](theta)[1])


def test_progress_is_told_piece_by_piece():
    seen = []
    refit(shelf(5), progress=lambda done, of: seen.append((done, of)))
    assert seen == [(k, 5) for k in range(1, 6)]


@pytest.mark.parametrize("pieces", [shelf(4), [GradedPiece("x", (), 3)] * 6])
def test_too_little_to_learn_from_is_said(pieces):
    with pytest.raises(BadInput, match="too few to learn from"):
        refit(pieces)


def test_a_grade_outside_the_scale_is_refused():
    with pytest.raises(BadInput, match="grade 9 is not one of 0 to 8"):
        refit([*shelf(6), GradedPiece("too far", (), 9)])


def test_without_a_fit_the_words_say_so():
    assert "as shipped" in str(fit_in_words(shipped_model()))


def with_thirds(pieces, seed=5):
    """The same pieces, their words given by thirds of a grade."""
    rng = random.Random(seed)
    return [replace(p, level=rng.choice(THIRDS)) for p in pieces]


def test_the_gradient_with_thirds_is_that_of_the_likelihood(monkeypatch):
    caught = {}

    def spy(loss, theta, **rest):
        caught["loss"], caught["theta"] = loss, theta
        return real(loss, theta, **rest)

    real = optimize.minimize
    monkeypatch.setattr(optimize, "minimize", spy)
    fit_once(with_thirds(shelf(12)))
    theta = caught["theta"] + 0.01
    off = check_grad(lambda t: caught["loss"](t)[0], lambda t: caught["loss"](t)[1], theta)
    assert off < 1e-3 * np.linalg.norm(caught["loss"](theta)[1])


@pytest.mark.parametrize(
    "cuts", [tuple(g - 0.5 for g in range(1, 9)), (0.2, 1, 1.4, 3, 4, 5, 7, 8)]
)
def test_the_limits_of_thirds_are_those_of_the_grade(cuts):
    model = replace(shipped_model(), cuts=cuts)
    rows, shift = thirds()
    for third, limit in enumerate(rows @ np.array(cuts) + shift, 1):
        for nudge, expected in ((-1e-9, third - 1), (1e-9, third)):
            found = grade_of_score(float(limit) + nudge, model)
            assert 3 * found.number + THIRDS.index(found.level) == expected


def test_a_word_without_a_third_stands_for_the_whole_grade():
    assert bounds_of(GradedPiece("x", (), 2)) == (6, 9)
    assert bounds_of(GradedPiece("x", (), 2, "late")) == (8, 9)
    early = Grade(3, "early", 0.0, "")
    assert miss(GradedPiece("x", (), 2), early) == 1
    assert miss(GradedPiece("x", (), 2, "late"), early) == pytest.approx(1 / 3)
    assert miss(GradedPiece("x", (), 3, "early"), early) == 0


def test_thirds_pull_the_estimate_into_their_third():
    # one judgement that the shipped model does not share: everything a third later
    pieces = []
    for k in range(24):
        level = 0.4 + 0.3 * k
        stated = {d.id: float(np.interp(level, range(9), d.typical)) for d in table().demands}
        features = features_from(stated)
        place = grade_features(features).score + 1 / 3
        word = grade_of_score(place, shipped_model())
        pieces.append(GradedPiece(f"piece {k}", features, word.number, word.level))
    found = refit(pieces)
    assert found.model.shipped_error > 0.25 and found.model.error < 0.15
    assert len(found.before) == len(found.after) == len(found.unseen) == 24


def test_before_is_what_the_model_in_force_said():
    pieces = shelf(6)
    force = GradeModel("mine", shipped_model().weights, tuple(g - 0.1 for g in range(1, 9)))
    found = refit(pieces, force=force)
    assert found.before == tuple(grade_features(p.features, force) for p in pieces)


def test_the_words_of_a_graded_piece():
    assert str(GradedPiece("x", (), 2).words) == "grade 2"
    assert str(GradedPiece("x", (), 2, "early").words) == "grade 2, early"
