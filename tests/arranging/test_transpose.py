"""Transposition: exact, rightly spelled, and undone by its reverse."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from music21 import interval
from music21 import pitch as m21pitch

from tests.arranging.make import piece, pieces, pitch
from workbench.arranging.transpose import (
    Shift,
    move_chord,
    move_pitch,
    parse_key,
    shift_by,
    transposed,
)
from workbench.music.errors import BadInput
from workbench.music.model import Key


@given(pieces(), st.integers(-14, 14))
def test_there_and_back_is_the_same_piece(made, semitones):
    shift = shift_by(made.key, semitones)
    there = transposed(made, shift)
    assert [n.midi for n in there.notes] == [n.midi + semitones for n in made.notes]
    assert abs(there.key.fifths) <= 6
    assert transposed(there, shift.back) == made


@given(st.integers(-5, 5), st.integers(-11, 11), st.sampled_from("CDEFGAB"), st.integers(-1, 1))
def test_spelling_agrees_with_music21(fifths, semitones, step, alter):
    """Outside reference: music21's transposition by the interval between two tonics."""
    shift = shift_by(Key(fifths), semitones)
    line = "FCGDAEB"

    def tonic(f: int) -> str:
        sharps = (f + 1) // 7
        return line[(f + 1) % 7] + ("#" * sharps if sharps > 0 else "-" * -sharps)

    low = m21pitch.Pitch(tonic(fifths) + "4")
    high = m21pitch.Pitch(tonic(fifths + shift.fifths) + "4")
    while high.ps - low.ps > semitones:
        high.octave -= 1
    while high.ps - low.ps < semitones:
        high.octave += 1
    ours = pitch(step + {-1: "b", 0: "", 1: "#"}[alter] + "4")
    theirs = m21pitch.Pitch(ours.name.replace("b", "-")).transpose(interval.Interval(low, high))
    moved = move_pitch(ours, shift)
    if abs(theirs.alter) <= 2:
        assert moved.name.replace("b", "-") == theirs.nameWithOctave
    else:  # three accidentals are written otherwise, and sound the same
        assert moved.midi == theirs.midi and abs(moved.alter) <= 2


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("F", "F major"),
        ("Bb", "Bb major"),
        ("bb major", "Bb major"),
        ("F#m", "F# minor"),
        ("D minor", "D minor"),
        ("DM", "D major"),
        ("E-flat", "Eb major"),
        ("A♭", "Ab major"),
        (" c minor ", "C minor"),
    ],
)
def test_keys_are_understood_as_musicians_write_them(text, name):
    assert parse_key(text, Key(0)).name == name


def test_a_letter_alone_keeps_the_mode():
    assert parse_key("G", Key(-1, "minor")).name == "G minor"


@pytest.mark.parametrize("text", ["H", "", "F flat flat", "7", "Fmajorish", "major"])
def test_what_is_no_key_is_named(text):
    with pytest.raises(BadInput, match="not understood"):
        parse_key(text, Key(0))


def test_a_key_of_eight_sharps_is_answered_with_its_other_name():
    with pytest.raises(BadInput, match="Ab major"):
        parse_key("G#", Key(0))


@pytest.mark.parametrize(
    ("text", "semitones", "out"),
    [
        ("Bb7/D", 2, "C7/E"),
        ("F", -1, "E"),
        ("F#m7b5", 1, "Gm7b5"),
        ("Gm/B♭", 2, "Am/C"),
        ("C6/9", 5, "F6/9"),
        ("N.C.", 5, "N.C."),
    ],
)
def test_chord_names_move(text, semitones, out):
    assert move_chord(text, shift_by(Key(-1), semitones)) == out


def test_signatures_and_chords_move_together():
    made = piece("C4 E4 G4 B4", key=Key(0))
    there = transposed(made, Shift(-7, -1))
    assert there.key.name == there.bars[0].key.name == "F major"
    assert [n.pitch.name for n in there.notes] == ["F3", "A3", "C4", "E4"]
