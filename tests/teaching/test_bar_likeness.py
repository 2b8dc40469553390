"""Bars that are like earlier ones."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction as F

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.teaching.hand_made import bar, build, n, song
from workbench.music.errors import BadInput
from workbench.teaching.bars.likeness import Likeness, grips_of, likenesses
from workbench.teaching.bars.strokes import by_bar, strokes


def chord(*right, order=(0, 1, 2), each=1):
    """C, F and A held together and plucked one after the other."""
    tones = [
        n("F4", 4, string=2, left=1), n("A#4", 4, string=1, left=2), n("D4", 4, string=3, left=3),
    ]  # fmt: skip
    return bar(
        *(
            replace(tones[t], onset=F(k) * each, duration=F(4) - F(k) * each,
                    held=F(4) - F(k) * each, right=r)
            for k, (t, r) in enumerate(zip(order, right, strict=True))
        )
    )  # fmt: skip


def test_same_music_is_named_by_the_first_bar_of_it():
    assert likenesses(*song())[4:6] == (Likeness("music", 0), Likeness("music", 1))
    found = likenesses(*song())
    assert found[12] == Likeness("music", 0) and found[0] is None


def test_same_grips_under_other_music():
    piece, fingering = build(chord("p", "i", "m"), chord("a", "i", "m", order=(2, 0, 1)))
    assert likenesses(piece, fingering) == (None, Likeness("grips", 0))


def test_same_right_hand_over_other_grips():
    other = bar(
        n("C4", 1, string=3, right="p"), n("E4", 1, string=2, right="i"),
        n("A4", 2, string=1, right="m"),
    )  # fmt: skip
    piece, fingering = build(chord("p", "i", "m"), other)
    assert likenesses(piece, fingering) == (None, Likeness("right hand", 0))


def test_another_finger_on_the_same_fret_is_another_grip():
    one = bar(n("C5", 2, left=3), n("D5", 2, left=4))
    other = bar(n("C5", 1, left=3), n("D5", 3, left=3))
    assert likenesses(*build(one, other)) == (None, None)


def test_open_strings_alone_are_no_grip_and_two_strokes_no_pattern():
    piece, fingering = build(bar(n("C4", 2), n("A4", 2)), bar(n("A4", 2), n("E4", 2)))
    assert likenesses(piece, fingering) == (None, None)


def test_bars_of_rest_are_like_none_and_lengths_must_agree():
    short = bar(n("C4"), n("E4"), n("G4"), length=3, time_signature=(3, 4))
    long = bar(n("C4"), n("E4"), n("G4"))
    piece, fingering = build(bar(), bar(), short, long)
    assert likenesses(piece, fingering) == (None, None, None, None)


def test_a_grip_that_is_built_up_and_let_go_counts_once():
    piece, fingering = build(chord("p", "i", "m"))
    rows = by_bar(strokes(piece, fingering))[0]
    assert [len(stroke.grip) for stroke in rows] == [1, 2, 3]
    assert [len(grip) for grip in grips_of(rows)] == [3]


def test_without_a_fingering_only_the_music_speaks():
    piece, _ = song()
    found = likenesses(piece, None)
    assert {like.kind for like in found if like} == {"music"}
    _, fingering = build(bar(n("C4", 4)))
    with pytest.raises(BadInput, match="does not belong"):
        likenesses(piece, fingering)


def test_in_words():
    assert str(Likeness("music", 0).words("1")) == "same music as bar 1"
    assert str(Likeness("grips", 0).words("12a")) == "same grips as bar 12a"
    assert str(Likeness("right hand", 0).words("0")) == "same right-hand pattern as the pickup"


BARS = st.lists(
    st.sampled_from(
        [
            chord("p", "i", "m"), chord("p", "i", "m", order=(2, 1, 0)),
            chord("a", "m", "i", each=F(1, 2)),
            bar(n("C4"), n("E4"), n("G4"), n("A4")), bar(n("A4", 2), n("C4", 2)), bar(),
        ]
    ),
    min_size=1, max_size=9,
)  # fmt: skip


@given(BARS)
def test_each_bar_names_the_first_and_says_the_most(bars):
    piece, fingering = build(*bars)
    found = likenesses(piece, fingering)
    for index, (made, like) in enumerate(zip(bars, found, strict=True)):
        same = next((k for k in range(index) if bars[k] == made and made.events), None)
        if same is not None:
            assert like == Likeness("music", same)
        elif like is not None:
            assert like.bar < index and like.kind != "music"
            assert found[like.bar] is None or found[like.bar].kind != like.kind
