"""Agreement with published editions (tests/data/guitar-editions, README there).

The whole table, cross-validated, is printed by ``python -m tests.fingering.agreement``; here
a few studies stand guard over the weights, against "lowest place, one finger a fret".
"""

from __future__ import annotations

import pytest

from tests.fingering.agreement import (
    AUTHORS,
    author,
    chart_rows,
    judged,
    load,
    studies,
    total,
)
from tests.fingering.charts import Charts
from workbench.fingering.lattice.terms import LEFT_TERMS
from workbench.fingering.learning.field import Field
from workbench.fingering.learning.fitting import Agreement, agreement
from workbench.fingering.learning.observed import chain
from workbench.fingering.learning.printfit import fit_to_print
from workbench.fingering.types import Settings
from workbench.fingering.weights import least, weights_for
from workbench.instrument.table import hand, instrument

GUITAR, HAND = instrument("guitar"), hand("medium")
FEW = ("sor-op60-01", "sor-op60-04", "sor-op60-10", "sor-op35-no3", "sor-op35-no13",
       "guitar-skole-no-02", "sor-op60-12")  # fmt: skip
WEIGHTS = weights_for(Settings()).left


@pytest.fixture(scope="module")
def chains():
    return {n: chain(*load(n), GUITAR, HAND, WEIGHTS) for n in FEW}


def lowest_place(study: str) -> Agreement:
    """What the plainest rule meets: the lowest place of a note, finger n on fret n."""
    piece, marks = load(study)
    midi = {n.id: n.midi for n in piece.notes}
    met = [0, 0, 0, 0]
    for mark in marks:
        if mark.left:
            fret = min(GUITAR.places(midi[mark.note]), key=lambda p: p[1])[1]
            met[1] += 1
            met[0] += min(4, fret) == mark.left
    return Agreement(met)


def test_printed_fingers_are_met_more_often_than_by_the_plainest_rule(
    chains, record_testsuite_property
) -> None:
    ours = total([agreement(c, WEIGHTS) for c in chains.values()])
    plain = total([lowest_place(n) for n in chains])
    record_testsuite_property("printed fingers met: ours, plainest rule", (tuple(ours), plain))
    assert 250 < ours[1] <= plain[1]  # a few printed notes have no grip at all
    assert ours.fingers > plain.fingers + 0.12


def test_the_gradient_is_that_of_the_loss(chains) -> None:
    """Against central differences, term by term."""
    import numpy as np

    field = Field([chains["sor-op60-01"], chains["sor-op60-10"]])
    at = np.array([WEIGHTS[t] / 1000 for t in LEFT_TERMS])
    _, slope = field.loss(at)
    for i in range(0, len(LEFT_TERMS), 5):
        step = np.zeros(len(at))
        step[i] = 1e-4
        away = (field.loss(at + step)[0] - field.loss(at - step)[0]) / 2e-4
        assert slope[i] == pytest.approx(away, rel=2e-3, abs=2e-3), LEFT_TERMS[i]


def test_chances_are_the_shares_of_all_ways(chains) -> None:
    """Against every way through a short chain, listed one by one."""
    import numpy as np

    whole = chains["sor-op60-01"]
    first = next(i for i, link in enumerate(whole.links) if link.marks)
    short = type(whole)(whole.links[: first + 2], 0)
    weights = np.array([WEIGHTS[t] / 1000 for t in LEFT_TERMS])
    ways = [(0, 0.0, ())]
    for link in short.links:
        price = link.amounts.astype(float) @ weights
        ways = [
            (int(link.into[e]), spent + price[e], (*path, int(link.into[e])))
            for state, spent, path in ways
            for e in np.flatnonzero(link.before == state)
        ]
    odds = np.array([np.exp(-spent) for _, spent, _ in ways])
    chances = Field([short]).chances(weights)
    marks = [(t, m) for t, link in enumerate(short.links) for m in link.marks]
    fits = [
        np.array([m.fits(short.links[t].places[path[t]][m.slot]) for _, _, path in ways])
        for t, m in marks
    ]
    expected = [float((odds * f).sum() / odds.sum()) for f in fits if 0 < f.sum() < len(f)]
    assert len(expected) == len(chances) > 0
    assert chances == pytest.approx(expected, rel=1e-6)


def test_no_weight_is_a_reward_nor_below_its_least() -> None:
    assert all(WEIGHTS[t] >= least(t) >= 0 for t in LEFT_TERMS)


def test_learning_from_print_helps_on_pieces_it_has_not_seen(chains) -> None:
    lessons = [c for n, c in chains.items() if n.startswith("sor-op60")]
    start = {t: 300 for t in LEFT_TERMS}  # a hand that knows nothing
    found = fit_to_print(lessons, start)
    assert found.unseen > found.before
    assert found.after >= found.unseen
    assert dict(found.weights) and all(w >= least(t) for t, w in found.weights)


@pytest.mark.slow
def test_cross_validated_agreement_over_all_studies(record_testsuite_property) -> None:
    """Two thirds of the printed fingers, on pieces that the weights never saw."""
    names = studies()
    every = {n: chain(*load(n), GUITAR, HAND, WEIGHTS) for n in names}
    charts = Charts(chart_rows("guitar", True))
    fold = {n: i % 5 for i, n in enumerate(names)}
    assert {author(n) for n in names} == {*AUTHORS.values(), "others"}
    found = judged(every, charts, fold.__getitem__)
    agreed = total(list(found.values()))
    record_testsuite_property("cross-validated", tuple(agreed))
    assert agreed.fingers > 0.6
