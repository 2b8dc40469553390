"""Changes of a lesson, as plain functions."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.teaching.hand_made import bar, build, n
from workbench.fingering.types import Pin
from workbench.instrument.table import INSTRUMENTS
from workbench.music.errors import BadInput
from workbench.teaching.lessons import edits
from workbench.teaching.lessons.lesson import BarNote, Lesson

UKULELE = INSTRUMENTS["ukulele"]


@pytest.fixture
def lesson_and_hands():
    piece, fingering = build(bar(n("C4"), n("E4"), n("G4"), n("B4")), bar(n("C5", 4)))
    return Lesson("l", "Study", piece, "ukulele"), fingering


def test_moving_a_note_pins_its_place_and_frees_the_finger(lesson_and_hands):
    lesson, hands = lesson_and_hands
    b4 = hands.bars[0].notes[3]
    fixed = edits.set_left(lesson, b4, 2)
    assert fixed.pins == (Pin("b0n3", string=b4.string, fret=b4.fret, left=2),)
    moved = edits.move_note(fixed, "b0n3", 2, 7)
    assert moved.pins == (Pin("b0n3", string=2, fret=7, left=2),)
    opened = edits.move_note(edits.set_left(lesson, hands.bars[1].notes[0], 3), "b1n0", 1, 0)
    assert opened.pins == (Pin("b1n0", string=1, fret=0, left=None),)


def test_fingers_that_cannot_be_meant_are_refused(lesson_and_hands):
    lesson, hands = lesson_and_hands
    open_note, stopped = hands.bars[0].notes[0], hands.bars[0].notes[3]
    with pytest.raises(BadInput, match="open string and takes no left finger"):
        edits.set_left(lesson, open_note, 1)
    with pytest.raises(BadInput, match="stopped at fret 2"):
        edits.set_left(lesson, stopped, 0)
    with pytest.raises(BadInput, match="no place"):
        edits.set_left(lesson, replace(stopped, string=None, fret=None), 1)


def test_a_pin_that_says_nothing_is_none(lesson_and_hands):
    lesson, _ = lesson_and_hands
    pinned = edits.set_right(lesson, "b0n0", "p")
    assert pinned.pins == (Pin("b0n0", right="p"),)
    assert edits.unpin(pinned, ["b0n0"]) == lesson


def test_pinning_all_keeps_a_right_finger_set_before(lesson_and_hands):
    lesson, hands = lesson_and_hands
    kept = edits.pin_all(edits.set_right(lesson, "b0n0", "p"), hands.bars[0].notes)
    assert {pin.note: pin.right for pin in kept.pins}["b0n0"] == "p"
    assert len(kept.pins) == 4


def test_notes_are_put_changed_and_deleted(lesson_and_hands):
    lesson, _ = lesson_and_hands
    note = BarNote("x", "sound", "Ring", 0, 1)
    written = edits.put_note(lesson, note)
    changed = edits.put_note(written, replace(note, text="Ring on"))
    assert [x.text for x in changed.notes] == ["Ring on"]
    assert edits.delete_note(changed, "x") == lesson


@pytest.mark.parametrize(
    ("change", "says"),
    [
        ({"text": "  "}, "no words"),
        ({"kind": "gossip"}, "not known"),
        ({"last_bar": 2}, "not in the piece"),
        ({"first_bar": 1, "last_bar": 0}, "before its first"),
    ],
)
def test_notes_that_make_no_sense_are_refused(lesson_and_hands, change, says):
    lesson, _ = lesson_and_hands
    with pytest.raises(BadInput, match=says):
        edits.put_note(lesson, replace(BarNote("x", "sound", "Ring", 0, 1), **change))


@pytest.mark.parametrize(
    ("name", "value"),
    [("grade", 9), ("minutes_a_day", 0), ("tempo_percent", 5), ("title", " ")],
)
def test_fields_out_of_bounds_are_refused(lesson_and_hands, name, value):
    lesson, _ = lesson_and_hands
    with pytest.raises(BadInput):
        edits.set_field(lesson, name, value)
    assert edits.set_field(lesson, "grade", None).grade is None


def test_another_instrument_frees_pins_but_keeps_notes(lesson_and_hands):
    from workbench.arranging.arrange import arrange

    lesson, hands = lesson_and_hands
    lesson = edits.pin_all(lesson, hands.bars[0].notes)
    lesson = edits.put_note(lesson, BarNote("x", "sound", "Ring", 0, 1, note="b0n0"))
    same = edits.rearranged(lesson, arrange(lesson.piece, UKULELE), UKULELE)
    assert (same.pins, same.notes) == (lesson.pins, lesson.notes)
    guitar = INSTRUMENTS["guitar"]
    other = edits.rearranged(lesson, arrange(lesson.piece, guitar), guitar)
    assert (other.pins, other.instrument) == ((), "guitar")
    assert [note.text for note in other.notes] == ["Ring"]


def two_stems():
    """C4 written by two voices, and E4 after it."""
    piece, _ = build(bar(n("C4"), n("E4", 3)))
    first = piece.bars[0].notes[0]
    low = replace(first, id="low", voice=2, duration=first.duration * 4)
    bars = (replace(piece.bars[0], notes=(first, low, *piece.bars[0].notes[1:])),)
    return Lesson("l", "Study", replace(piece, bars=bars), "ukulele"), first.id


def test_two_stems_of_one_sound_have_one_pin():
    lesson, lead = two_stems()
    fixed = edits.move_note(lesson, "low", 3, 0)
    assert fixed.pins == (Pin(lead, string=3, fret=0),) and edits.pin_of(fixed, "low") == Pin(
        lead, string=3, fret=0
    )
    again = edits.set_right(edits.move_note(fixed, lead, 4, 5), "low", "p")
    assert again.pins == (Pin(lead, string=4, fret=5, right="p"),)
    assert edits.unpin(again, ["low"]).pins == ()


def test_a_unison_is_asked_for_and_taken_back():
    lesson, lead = two_stems()
    apart = edits.set_unison(edits.move_note(lesson, lead, 3, 0), lead, True)
    assert apart.pins == (Pin("low", apart=True),) and edits.is_unison(apart, lead)
    both = edits.move_note(edits.move_note(apart, "low", 4, 5), lead, 3, 0)
    assert set(both.pins) == {Pin("low", string=4, fret=5, apart=True), Pin(lead, string=3, fret=0)}
    assert edits.set_unison(both, "low", False).pins == ()
    with pytest.raises(BadInput, match="one stem"):
        edits.set_unison(lesson, "b0n1", True)
