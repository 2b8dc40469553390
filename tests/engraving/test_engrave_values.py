"""Note values: whatever is split adds up again, and is cut where readers expect it."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from workbench.music.notation.values import (
    one_value,
    ratio_for,
    split,
    strong_points,
)

F = Fraction
METERS = [(4, 4), (3, 4), (2, 4), (6, 8), (9, 8), (5, 4), (7, 8), (2, 2), (3, 8)]


@given(
    st.sampled_from(METERS),
    st.integers(0, 63),
    st.integers(1, 160),
)
def test_binary_durations_add_up_and_every_part_has_a_sign(meter, start, count) -> None:
    length = F(4 * meter[0], meter[1])
    onset = F(start, 16) % length
    duration = min(F(count, 16), length - onset)
    values = split(onset, duration, strong_points(meter, length))
    assert sum(v.sounding for v in values) == duration
    assert all(one_value(v.sounding, v.ratio) for v in values)


@given(st.sampled_from([3, 5, 6, 7, 9, 11]), st.integers(1, 40))
def test_tuplet_durations_add_up(parts, count) -> None:
    duration = F(count, parts)
    values = split(F(0), duration, (), ratio_for(duration))
    assert sum(v.sounding for v in values) == duration


@pytest.mark.parametrize(
    ("onset", "duration", "parts"),
    [
        (F(0), F(3), [F(3)]),  # a dotted half stays one note
        (F(0), F(5, 2), [F(2), F(1, 2)]),
        (F(1, 2), F(1), [F(1)]),  # the usual syncopation: eighth, quarter, eighth
        (F(3, 2), F(5, 2), [F(1, 2), F(2)]),
        (F(1, 2), F(5, 2), [F(1, 2), F(2)]),
    ],
)
def test_four_four_is_cut_at_beats(onset, duration, parts) -> None:
    values = split(onset, duration, strong_points((4, 4), F(4)))
    assert [v.sounding for v in values] == parts


def test_beats_of_a_pickup_count_from_its_end() -> None:
    assert strong_points((4, 4), F(3, 2)) == (F(1, 2),)
    assert strong_points((6, 8), F(2)) == (F(1, 2),)


def test_ratios_of_common_tuplets() -> None:
    assert ratio_for(F(1, 3)) == (3, 2)
    assert ratio_for(F(2, 5)) == (5, 4)
    assert ratio_for(F(1, 7)) == (7, 4)
    assert ratio_for(F(3, 4)) == (1, 1)
