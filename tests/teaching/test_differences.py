"""What changed between two states of a lesson, told in sentences."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import hypothesis.strategies as st
import pytest
from hypothesis import given

from tests.teaching.hand_made import bar, build, n, spelled
from workbench.fingering.types import Pin, Settings
from workbench.music.model import ChordName
from workbench.teaching.lessons.differences import LONGEST_QUOTE, differences
from workbench.teaching.lessons.lesson import BarNote, Lesson

PIECE, _ = build(
    bar(n("C4"), n("E4"), n("G4"), n("A4")),
    bar(n("A4"), n("G4"), n("F4"), n("E4")),
    bar(n("D4"), n("F4"), n("B4"), n("C5")),
)
LESSON = Lesson("l", "Study", PIECE, "ukulele")


def told(**changes):
    return differences(LESSON, replace(LESSON, **changes))


def test_nothing_is_told_of_what_is_the_same():
    assert differences(LESSON, LESSON) == ()


@pytest.mark.parametrize(
    ("changes", "sentence"),
    [
        ({"title": "Song"}, "Title: Study, now Song."),
        ({"student": "Ada"}, "Student: none, now Ada."),
        ({"instrument": "guitar"}, "Instrument: Concert ukulele, high G, now Classical guitar."),
        ({"capo": 2}, "Capo: none, now fret 2."),
        ({"hand": "small"}, "Hand: medium, now small."),
        ({"key": "G major"}, "Key: C major, now G major."),
        ({"grade": 3, "grade_level": "early"}, "Grade: none, now 3 early."),
        ({"minutes_a_day": 30}, "Practice a day: 20 min, now 30 min."),
        ({"tempo_percent": 60}, "Tempo: 100 %, now 60 %."),
        ({"techniques": ("barre", "slide")}, "Techniques added: barre, slide."),
        ({"sections": ((0, "A"),)}, "Sections have changed."),
        ({"script_edits": ((0, "Hello"),)}, "Script: the words of 1 bar changed."),
        ({"plan_done": ("a", "b")}, "Practice plan: 2 items more are done."),
    ],
)
def test_a_change_of_one_field_is_one_sentence(changes, sentence):
    assert [one.casefold() for one in told(**changes)] == [sentence.casefold()]


def test_back_again_is_told_the_other_way_round():
    after = replace(LESSON, techniques=("barre",), plan_done=("a",), student="Ada")
    assert differences(after, LESSON) == (
        "Student: Ada, now none.",
        "Techniques taken out: barre.",
        "Practice plan: 1 item is open again.",
    )


def test_settings_are_told_each_by_itself():
    calm = replace(LESSON.settings, relaxed_hand=not LESSON.settings.relaxed_hand)
    (one,) = told(settings=calm)
    assert "relaxed" in one
    (bells,) = told(settings=replace(LESSON.settings, campanella=True))
    assert "Campanella" in bells
    (two,) = told(settings=replace(Settings(), weights=(("reach", 2000),)))
    assert "learnt from choices" in two


# Pins.


def test_a_pin_is_told_with_bar_beat_and_pitch():
    note = PIECE.bars[1].notes[2].id
    pinned = replace(LESSON, pins=(Pin(note, string=2, fret=1, left=1),))
    assert differences(LESSON, pinned) == (
        "Bar 2, beat 3, F4: pinned to string 2, fret 1, finger 1.",
    )
    moved = replace(LESSON, pins=(Pin(note, string=3, fret=5, right="m"),))
    assert differences(pinned, moved) == (
        "Bar 2, beat 3, F4: pinned to string 2, fret 1, finger 1, now string 3, fret 5, "
        "right finger m.",
    )
    assert differences(moved, LESSON) == ("Bar 2, beat 3, F4: not pinned any more.",)


def test_many_pins_of_one_bar_are_counted():
    pins = tuple(Pin(note.id, right="i") for note in PIECE.bars[0].notes)
    assert told(pins=pins) == ("Bar 1: 4 pins changed.",)
    assert len(told(pins=pins[:3])) == 3


def test_pins_that_went_with_their_notes_are_counted():
    pins = (Pin(PIECE.bars[2].notes[0].id, right="i"),)
    shorter = replace(PIECE, bars=PIECE.bars[:2])
    before = replace(LESSON, pins=pins)
    found = differences(before, replace(before, piece=shorter, pins=()))
    assert found == (
        "Length: 3 bars, now 2 bars.", "Music taken out: bar 3.", "1 pin went with its note.",
    )  # fmt: skip


# The music.


def with_notes(at, notes):
    bars = list(PIECE.bars)
    bars[at] = replace(bars[at], notes=notes)
    return replace(PIECE, bars=tuple(bars))


def test_a_note_that_changed_names_its_bar_and_no_other():
    first, *rest = PIECE.bars[1].notes
    changed = with_notes(1, (replace(first, pitch=spelled(first.midi + 3)), *rest))
    assert told(piece=changed) == ("Notes changed: bar 2.",)


@given(st.integers(-12, 12).filter(bool))
def test_a_piece_moved_as_a_whole_is_one_sentence(by):
    bars = tuple(
        replace(b, notes=tuple(replace(x, pitch=spelled(x.midi + by)) for x in b.notes))
        for b in PIECE.bars
    )
    (sentence,) = told(piece=replace(PIECE, bars=bars))
    assert f" {abs(by)} semitone" in sentence
    assert ("higher" in sentence) == (by > 0)


@given(st.integers(0, 2))
def test_a_bar_taken_out_or_put_in_is_the_only_one_named(at):
    shorter = replace(PIECE, bars=PIECE.bars[:at] + PIECE.bars[at + 1 :])
    gone = differences(LESSON, replace(LESSON, piece=shorter))
    assert gone == ("Length: 3 bars, now 2 bars.", f"Music taken out: bar {at + 1}.")
    back = differences(replace(LESSON, piece=shorter), LESSON)
    assert back == ("Length: 2 bars, now 3 bars.", f"Music added: bar {at + 1}.")


def test_form_and_chord_names_are_told():
    repeated = replace(PIECE.bars[2], repeat_end=True)
    found = told(piece=replace(PIECE, bars=(*PIECE.bars[:2], repeated)))
    assert found == ("Repeats, endings or jumps have changed.",)
    named = replace(PIECE.bars[0], chords=(ChordName(Fraction(0), "C"),))
    found = told(piece=replace(PIECE, bars=(named, *PIECE.bars[1:])))
    assert found == ("Chord names have changed.",)
    # A bar that goes with its repeat sign changes the form, one without does not.
    before = replace(LESSON, piece=replace(PIECE, bars=(*PIECE.bars[:2], repeated)))
    shorter = replace(LESSON, piece=replace(PIECE, bars=PIECE.bars[:2]))
    assert differences(before, shorter)[-1] == "Repeats, endings or jumps have changed."


# Teaching notes.

NOTE = BarNote("n1", "sound", "Sing *before* you play.", 0, 1)


def test_notes_are_told_in_the_order_of_their_bars():
    before = replace(LESSON, notes=(NOTE, BarNote("n2", "form", "Old.", 2, 2)))
    after = replace(
        LESSON,
        notes=(
            BarNote("n3", "caution", "Breathe.", 1, 1),
            replace(NOTE, text="Sing it."),
        ),
    )
    assert differences(before, after) == (
        "Bars 1–2: remark was “Sing before you play.”, now “Sing it.”",
        "Bar 2: remark added: “Breathe.”",
        "Bar 3: remark deleted: “Old.”",
    )


def test_a_note_whose_words_stay_but_not_its_kind_has_changed():
    before = replace(LESSON, notes=(NOTE,))
    after = replace(LESSON, notes=(replace(NOTE, kind="rhythm"),))
    assert differences(before, after) == ("Bars 1–2: remark changed: “Sing before you play.”",)


def test_long_words_are_cut_with_a_sign():
    (sentence,) = told(notes=(replace(NOTE, text="legato " * 40),))
    quote = sentence[sentence.index("“") + 1 : sentence.index("”")]
    assert len(quote) <= LONGEST_QUOTE and quote.endswith("…")
