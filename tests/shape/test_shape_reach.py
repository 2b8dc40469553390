"""How far finger tips are apart and how far they can be."""

from __future__ import annotations

from itertools import combinations

import pytest

from workbench.fingering.hand.reach import pair_limits, span_mm, tip_mm
from workbench.fingering.shapes.shape import shape
from workbench.instrument.table import HANDS, INSTRUMENTS, hand, instrument


@pytest.mark.parametrize("name", HANDS)
def test_every_pair_of_fingers_has_limits_that_grow_outwards(name: str) -> None:
    limits = pair_limits(hand(name))
    assert set(limits) == set(combinations((1, 2, 3, 4), 2))
    for comfort, most in limits.values():
        assert 0 < comfort < most
    for which in (0, 1):
        assert limits[(1, 2)][which] < limits[(1, 3)][which] < limits[(1, 4)][which]
        assert limits[(2, 3)][which] < limits[(3, 4)][which] < limits[(2, 4)][which]


def test_measured_spans_are_taken_as_they_are() -> None:
    limits = pair_limits(hand("own:30,70,50"))
    assert limits[(1, 2)] == (30.0, 45.0)
    assert limits[(1, 4)] == (70.0, 105.0)
    assert limits[(2, 4)] == (50.0, 75.0)


def test_a_larger_hand_reaches_farther_everywhere() -> None:
    small, medium, large = (pair_limits(hand(n)) for n in ("small", "medium", "large"))
    for pair in small:
        assert small[pair] < medium[pair] < large[pair]


@pytest.mark.parametrize("name", INSTRUMENTS)
def test_the_tip_presses_between_its_fret_and_the_one_before(name: str) -> None:
    made = instrument(name)
    for fret in range(1, made.playable_frets + 1):
        # Twelve-tone fret rule, ISO 16 octave: fret n at L(1 - 2^(-n/12)).
        here = made.scale_mm * (1 - 0.5 ** (fret / 12))
        before = made.scale_mm * (1 - 0.5 ** ((fret - 1) / 12))
        tip = tip_mm(made, fret)
        assert before < tip < here
        assert here - tip <= 6.0 + 1e-9
        assert tip - before >= (here - before) / 2 - 1e-9
    assert tip_mm(made, 0) == 0.0


def test_across_the_neck_a_reach_counts_half() -> None:
    """Fingers bend to change the string and spread to change the fret."""
    ukulele = instrument("ukulele")
    assert span_mm(ukulele, (1, 3), (4, 3)) == pytest.approx(3 * 9.5 / 2)
    # Scale 381 mm: fret 3 lies at 60.62 mm, fret 1 at 21.38 mm from the nut.
    assert span_mm(ukulele, (2, 3), (2, 1)) == pytest.approx(60.62 - 21.38, abs=0.01)
    assert span_mm(ukulele, (1, 1), (4, 3)) == pytest.approx((39.24**2 + 14.25**2) ** 0.5, abs=0.01)


FIRST_YEAR = {
    "C": "x32010", "G7": "320001", "G": "320003", "D": "xx0232", "A7": "x02020", "E": "022100",
    "Am": "x02210", "Dm": "xx0231", "F": "133211", "B7": "x21202",
}  # fmt: skip


@pytest.mark.parametrize("name", FIRST_YEAR)
def test_a_first_years_chord_is_no_stretch(name: str) -> None:
    """Common practice, no source: every method's first chords suit a medium hand."""
    frets = [None if c == "x" else int(c) for c in FIRST_YEAR[name]]
    best = shape(frets, instrument("guitar"), hand("medium")).fingerings[0]
    told = dict(best.terms)
    assert not told.get("beyond") and not told.get("stretch")


def test_a_capo_moves_the_nut() -> None:
    plain, capo = instrument("guitar"), instrument("guitar", 5)
    assert tip_mm(capo, 1) - tip_mm(plain, 6) == pytest.approx(-plain.fret_mm(5))
