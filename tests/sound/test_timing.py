"""When notes sound, and for how long."""

from __future__ import annotations

from fractions import Fraction

import pytest

from tests.sound.notes_made import bar, fingered, note, piece
from workbench.instrument.table import instrument
from workbench.music.errors import BadInput
from workbench.sound.sounding import GRACE_SECONDS
from workbench.sound.timing import bar_times, order_of, soundings

UKE = instrument("ukulele")


def two_bars(**more):
    return piece(
        bar(0, note("a", "C4", 0, 2), note("b", "E4", 2, 2)),
        bar(1, note("c", "G4", 0, 4), repeat_end=True),
        **more,
    )


def sounds(made, fingering=None, tempo=100.0, order=None, **where):
    times = bar_times(made, order_of(made, order=order, **where), tempo)
    return soundings(made, times, fingering, UKE)


def test_notes_follow_the_playing_order():
    found = [(s.start, s.seconds, s.midi) for s in sounds(two_bars())]
    once = [(0.0, 2.0, 60), (2.0, 2.0, 64), (4.0, 4.0, 67)]
    assert found == [*once, *((start + 8, long, midi) for start, long, midi in once)]


def test_the_tempo_is_in_percent_of_the_written_one():
    assert [s.start for s in sounds(two_bars(), tempo=50, order=[0, 1])] == [0.0, 4.0, 8.0]
    assert [s.start for s in sounds(two_bars(tempo=120.0), order=[0, 1])] == [0.0, 1.0, 2.0]


def test_a_tempo_mark_holds_until_the_next_wherever_one_comes_from():
    made = piece(bar(0), bar(1, tempo=120.0), bar(2), bar(3, tempo=30.0))
    times = bar_times(made, [0, 1, 2, 3, 2, 0])
    assert [t.seconds for t in times] == [4.0, 2.0, 2.0, 8.0, 2.0, 4.0]
    assert [t.start for t in times] == [0.0, 4.0, 6.0, 8.0, 16.0, 18.0]
    assert [t.position for t in times] == [0, 1, 2, 3, 4, 5]


@pytest.mark.parametrize(
    "bars, order, played",
    [
        (None, None, (0, 1, 0, 1)),
        ((0, 1), None, (0, 1)),
        ((1, 1), None, (1,)),
        ((1, 1), [0, 1, 0, 1], (1, 1)),
        (None, [1, 0], (1, 0)),
    ],
)
def test_a_passage_is_played_once_as_written_unless_an_order_is_given(bars, order, played):
    assert order_of(two_bars(), bars, order) == played


@pytest.mark.parametrize("bars", [(0, 2), (1, 0), (-1, 1)])
def test_bars_that_are_not_there(bars):
    with pytest.raises(BadInput, match="has 2 bars"):
        order_of(two_bars(), bars)


def test_other_things_that_cannot_be_played():
    with pytest.raises(BadInput, match="no bars to play"):
        order_of(two_bars(), order=[7])
    with pytest.raises(BadInput, match="no bars to play"):
        order_of(piece())
    with pytest.raises(BadInput, match="10 to 400 percent"):
        bar_times(two_bars(), [0], 5)
    with pytest.raises(BadInput, match="Bar 1 has tempo 0"):
        bar_times(piece(bar(0), tempo=0.0), [0])


def test_notes_last_as_long_as_they_are_held():
    made = two_bars()
    hand = fingered(made, a=(3, 0, "1/2"), b=(2, 0, 2), c=(1, 10, 4))
    found = sounds(made, hand, order=[0, 1])
    assert [(s.seconds, s.midi, s.string) for s in found] == [
        (0.5, 60, 3), (2.0, 64, 2), (4.0, 79, 1),
    ]  # fmt: skip


def test_what_cannot_be_played_is_left_out():
    hand = fingered(two_bars(), a=(3, 0, 2), c=(4, 0, 4))
    assert [s.note for s in sounds(two_bars(), hand, order=[0, 1])] == ["a", "c"]


def test_a_string_struck_again_stops_sounding():
    made = piece(bar(0, note("a", "C4", 0, 4), note("b", "D4", 1, 1), note("c", "G4", 0, 4)))
    hand = fingered(made, a=(3, 0, 4), b=(3, 2, 1), c=(4, 0, 4))
    assert {s.note: s.seconds for s in sounds(made, hand)} == {"a": 1.0, "b": 1.0, "c": 4.0}


def test_grace_notes_come_before_the_beat_in_their_order():
    graces = (
        note("g1", "F4", 2, 0, grace=True),
        note("g2", "D4", 2, 0, grace=True),
    )
    made = piece(bar(0, note("a", "C4", 0, 2), *graces, note("b", "E4", 2, 2)))
    found = {s.note: s.start for s in sounds(made)}
    assert found == pytest.approx(
        {"a": 0, "g1": 2 - 2 * GRACE_SECONDS, "g2": 2 - GRACE_SECONDS, "b": 2}
    )


def test_before_the_first_beat_the_main_note_waits_for_its_grace():
    made = piece(bar(0, note("g", "D4", 0, 0, grace=True), note("a", "C4", 0, 2)))
    found = {s.note: (s.start, s.seconds) for s in sounds(made)}
    assert found["g"] == (0.0, GRACE_SECONDS)
    assert found["a"] == pytest.approx((GRACE_SECONDS, 2 - GRACE_SECONDS))


def test_staccato_is_heard():
    made = piece(bar(0, note("a", "C4", 0, 1, articulations=("staccato",))))
    assert sounds(made)[0].seconds == 0.5


def test_every_note_of_a_playing_slur_but_the_first_is_soft_and_of_a_phrase_none():
    three = (note("a", "D4", 0, 1, slur_start=True), note("b", "E4", 1, 1))
    slur = piece(bar(0, *three, note("c", "D4", 2, 1, slur_stop=True)))
    assert [s.after is not None for s in sounds(slur)] == [False, True, True]
    phrase = piece(bar(0, *three, note("c", "D5", 2, 1, slur_stop=True)))
    assert [s.after is not None for s in sounds(phrase)] == [False, False, False]


def test_a_bar_without_length_does_no_harm():
    made = piece(bar(0, length=0), bar(1, note("a", "C4", 0, 1)))
    assert [s.start for s in sounds(made)] == [0.0]
    assert made.bars[0].length == Fraction(0)
