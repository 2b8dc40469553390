"""Fingerings asked for by hand: what they bring, or why no hand can hold them."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.fingering.build import piece
from workbench.fingering.engine import Solver
from workbench.fingering.hand.grips import grips
from workbench.fingering.pins.conflicts import conflict
from workbench.fingering.telling.words import words
from workbench.fingering.types import Pin
from workbench.instrument.table import HANDS, INSTRUMENTS
from workbench.music.errors import BadInput

UKULELE, HAND = INSTRUMENTS["ukulele"], HANDS["medium"]
TOP, LOW = "b0v1n0a", "b0v1n0b"


def refused(music, *pins, bar=0):
    with pytest.raises(BadInput) as wrong:
        Solver(piece(*music), UKULELE, HAND).why_not(bar, pins)
    return str(wrong.value)


@pytest.mark.parametrize(
    ("pins", "words"),
    [
        ((Pin(TOP, string=1, fret=2),), "beat 1: string 1, fret 2 sounds B4, not C5"),
        ((Pin(TOP, string=4, fret=4),), "string 4, fret 4 sounds B4, not C5"),
        ((Pin(TOP, fret=9),), "no string sounds C5 at fret 9"),
        ((Pin(LOW, string=1),), "string 1 does not sound F4"),
        ((Pin(TOP, string=1, left=0),), "C5 is stopped there and needs a finger"),
        ((Pin(TOP, string=3, fret=12, left=1), Pin(LOW, string=3)), "same string at once"),
        ((Pin(TOP, string=1, left=1), Pin(LOW, string=2, left=2)),
         "finger 1 would stand in front of finger 2: fret 3 and fret 1"),
        ((Pin(TOP, string=1, left=2), Pin(LOW, string=2, left=2)),
         "finger 2 cannot stop frets 1 and 3 at once"),
        ((Pin(TOP, string=2, left=2), Pin(LOW, string=3, left=2)),
         "finger 2 cannot stop frets 5 and 8 at once"),
        ((Pin(TOP, string=3, fret=12, left=4), Pin(LOW, string=2, left=1)),
         "would be"),
    ],
)  # fmt: skip
def test_the_first_thing_in_the_way_is_named(pins, words):
    said = refused(["C5+F4:4"], *pins)
    assert said.startswith("Bar 1, beat 1: ") and words in said and said.endswith(".")


def test_reach_is_told_in_millimetres_of_this_hand():
    said = refused(
        ["C5+F4:4"], Pin(TOP, string=3, fret=12, left=2), Pin(LOW, string=2, fret=1, left=1)
    )
    assert "fingers 1 and 2 would be" in said and f"{round(HAND.max_12)} mm at most" in said


def test_the_beat_is_that_of_the_conflict():
    said = refused(["A4:1 C5:1 A4:2"], Pin("b0v1n1a", string=1, fret=5))
    assert said.startswith("Bar 1, beat 2: string 1, fret 5 sounds D5")


def test_an_open_string_takes_no_finger():
    assert "open string there" in refused(["A4:4"], Pin("b0v1n0a", string=1, left=2))


def test_what_can_be_held_is_told_with_its_cost():
    s = Solver(piece("C5:1 B4:1 A4:2"), UKULELE, HAND)
    present = s.solution()
    other = s.why_not(0, [Pin("b0v1n0a", string=2, fret=8, left=4)])
    assert other.cost > present.cost
    assert (other.notes[0].string, other.notes[0].fret, other.notes[0].left) == (2, 8, 4)
    assert "C on string 2, fret 8" in words(other.reason) and ": " in words(other.reason)


def test_right_fingers_asked_for_are_held_and_told():
    s = Solver(piece("C4:1 E4:1 G4:1 A4:1"), UKULELE, HAND)
    before = s.solution().bars[0].notes
    other = s.why_not(0, [Pin("b0v1n0a", right="a"), Pin("b0v1n1a", right="a")])
    assert [n.right for n in other.notes[:2]] == ["a", "a"]
    assert [n.string for n in other.notes] == [n.string for n in before]
    assert words(other.reason).startswith("Right hand, a on the C; a on the E")
    assert ": " in words(other.reason) and "effort" not in words(other.reason)
    both = s.why_not(0, [Pin("b0v1n3a", string=2, fret=5), Pin("b0v1n0a", right="a")])
    assert "string 2, fret 5" in words(both.reason) and "Right hand" in words(both.reason)


def test_one_finger_does_not_pluck_two_strings_at_once():
    said = refused(["C5+F4:4"], Pin(TOP, right="m"), Pin(LOW, right="m"))
    assert "one right finger" in said
    thumb = Solver(piece("C5+F4:4"), UKULELE, HAND).why_not(0, [Pin(TOP, right="p")])
    assert thumb.notes[0].right == "p"


def test_a_piece_with_impossible_pins_elsewhere_can_still_be_asked():
    s = Solver(piece("C5:4", "A4:4"), UKULELE, HAND, pins=[Pin("b0v1n0a", string=1, fret=4)])
    assert s.solution().bars[0].impossible
    other = s.why_not(1, [Pin("b1v1n0a", string=2, fret=5)])
    assert (other.notes[0].string, other.notes[0].fret) == (2, 5)


NOTES = st.sampled_from(["C4", "E4", "F4", "G4", "A4", "C5"])
ASKED = st.builds(
    dict,
    string=st.one_of(st.none(), st.integers(1, 4)),
    left=st.one_of(st.none(), st.integers(0, 4)),
)


@given(NOTES, NOTES, ASKED, ASKED)
def test_a_conflict_is_named_exactly_where_no_grip_holds_the_pins(high, low, a, b):
    music = piece(f"{high}+{low}:4" if high != low else f"{high}:4")
    bar = music.bars[0]
    pins = {n.id: Pin(n.id, **word) for n, word in zip(bar.notes, (a, b), strict=False)}
    solver = Solver(music, UKULELE, HAND)
    possible = bool(grips(bar.notes, UKULELE, solver.neck, pins))
    assert (conflict(bar, pins, UKULELE, HAND, solver.neck) is None) == possible
