"""Laying a piece on an instrument: everything fits, and everything altered is said."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from itertools import permutations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.arranging.make import piece, pieces
from workbench.arranging.arrange import arrange
from workbench.arranging.spots import KINDS
from workbench.arranging.transpose import shift_by, transposed
from workbench.instrument.table import instrument
from workbench.music.errors import BadInput
from workbench.music.model import Key

UKULELE = instrument("ukulele")
LOW_G = instrument("ukulele-low-g")
GUITAR = instrument("guitar")
NAMES = ["ukulele", "ukulele-low-g", "guitar", "mandolin", "custom:C4@345"]


def names(result) -> list[str]:
    return [n.pitch.name for n in result.piece.notes]


def kinds(result) -> list[str]:
    return [c.kind for c in result.changes]


def strings_suffice(midis, wood) -> bool:
    """Written apart from the code under test: try every order of strings."""
    if len(midis) > wood.strings:
        return False
    return any(
        all(0 <= m - wood.open_midi[s] <= wood.playable_frets
            for m, s in zip(midis, order, strict=True))
        for order in permutations(range(wood.strings), len(midis))
    )  # fmt: skip


@settings(max_examples=60, deadline=None)
@given(pieces(), st.sampled_from(NAMES), st.integers(-7, 7))
def test_every_note_fits_and_every_difference_is_accounted_for(made, name, semitones):
    wood = instrument(name)
    got = arrange(made, wood, transpose=semitones)
    plain = {n.id: n for n in transposed(made, shift_by(made.key, got.transposition)).notes}
    now = {n.id: n for n in got.piece.notes}
    told = {c.note for c in got.changes if c.note}
    assert told == {i for i, note in plain.items() if now.get(i) != note}
    assert set(now) <= set(plain)
    assert all(wood.places(n.midi) for n in now.values())
    assert all(c.kind in KINDS and c.reason.endswith(".") for c in got.changes)
    assert (got.transposition - semitones) % 12 == 0
    # never more at once than there are strings, unisons included
    timed = [
        (got.piece.starts[b.index] + n.onset, got.piece.starts[b.index] + n.onset + n.duration, n)
        for b in got.piece.bars
        for n in b.notes
    ]
    for start in {row[0] for row in timed}:
        sounding = [n.midi for a, b, n in timed if a <= start < b]
        assert strings_suffice(sounding, wood)


@settings(max_examples=40, deadline=None)
@given(pieces(), st.sampled_from(NAMES))
def test_what_lies_well_is_left_alone_the_second_time(made, name):
    wood = instrument(name)
    once = arrange(made, wood)
    again = arrange(once.piece, wood)
    assert again.piece == once.piece and again.transposition == 0
    assert not again.changes


@settings(max_examples=40, deadline=None)
@given(pieces(), st.sampled_from(["C", "F", "G", "D", "A", "Bb"]))
def test_a_key_asked_for_is_the_key_got(made, key):
    got = arrange(made, UKULELE, key=key)
    assert got.key == f"{key} {made.key.mode}" == got.piece.key.name
    assert (made.key.fifths * 7 + got.transposition - got.piece.key.fifths * 7) % 12 == 0


@settings(max_examples=40, deadline=None)
@given(pieces(lowest=60, highest=84, voices=3))
def test_the_melody_is_never_dropped(made):
    got = {n.id: n for n in arrange(made, UKULELE).piece.notes}
    for bar in made.bars:
        for onset in {n.onset for n in bar.notes if n.voice == 1}:
            chord = [n for n in bar.notes if n.onset == onset and n.voice == 1]
            top = max(n.midi for n in chord)
            assert any(n.id in got and got[n.id].midi == top for n in chord)


def test_nearest_direction_in_range():
    made = piece("C4 D4 E4 F4")
    assert arrange(made, UKULELE, key="D").transposition == 2
    assert arrange(made, UKULELE, key="Bb").transposition == 10  # down a tone is below C4
    assert arrange(made, LOW_G, key="Bb").transposition == -2


def test_a_low_piece_goes_up_as_a_whole_and_says_so():
    got = arrange(piece("C3 D3 E3 G3 | F3 E3 D3 C3"), UKULELE)
    assert got.transposition == 12
    assert kinds(got) == ["whole piece"]
    assert "up an octave" in got.changes[0].reason
    assert names(got) == ["C4", "D4", "E4", "G4", "F4", "E4", "D4", "C4"]


def test_on_reentrant_ukulele_a_low_bass_voice_goes_up_together():
    made = piece("C5 A4 G4 E4 | F4 A4 G4:2", "C4:2 G3:2 | A3:2 G3:2")
    got = arrange(made, UKULELE)
    assert got.transposition == 0
    bass = [n.pitch.name for n in got.piece.notes if n.voice == 2]
    assert bass == ["C5", "G4", "A4", "G4"]
    assert set(kinds(got)) == {"voice"}
    assert "below the lowest string (C4)" in got.changes[1].reason


def test_a_lower_voice_is_not_lifted_over_the_melody():
    """Only what lies out of range goes up; the tune stays on top of the rest."""
    made = piece("E4 F4 G4 E4 | E4 F4 E4:2", "D4 D4 C4 G3 | G3 D4 G3:2")
    got = arrange(made, UKULELE)
    bass = [n.pitch.name for n in got.piece.notes if n.voice == 2]
    assert bass == ["D4", "D4", "C4", "G4", "G4", "D4", "G4"]
    assert set(kinds(got)) == {"octave"}


def test_a_phrase_moves_rather_than_a_note():
    low = "C4 A3 B3 C4 | D4 E4 D4 -"
    far = " | ".join(["E4 G4 A4 G4"] * 12)
    got = arrange(piece(f"{far} | {low}"), UKULELE)
    moved = [n.pitch.name for n in got.piece.bars[12].notes]
    assert moved == ["C5", "A4", "B4", "C5"]
    assert set(kinds(got)) == {"phrase"}
    assert {c.bar_number for c in got.changes} == {"13", "14"}


def test_five_notes_on_four_strings_lose_the_doubling_first():
    got = arrange(piece("C5:4", "C4+E4+G4+C5:4"), UKULELE)
    assert len(got.piece.notes) == 4
    assert {n.voice for n in got.piece.notes} == {1, 2}
    assert "unison" in got.changes[0].reason and "five notes" in got.changes[0].reason


def test_a_keyboard_chord_keeps_melody_and_bass():
    got = arrange(piece("E5:4", "C3+E3+G3+C4+G4:4"), GUITAR)
    left = names(got)
    assert "E5" in left and "C3" in left
    assert all(c.kind == "dropped" for c in got.changes)


def test_a_unison_stays_only_where_two_strings_have_it():
    # C4 is on the third string alone; G4 is on the fourth and, fretted, on two others
    assert len(arrange(piece("C4:4", "C4:4"), UKULELE).piece.notes) == 1
    assert len(arrange(piece("G4:4", "G4:4"), UKULELE).piece.notes) == 2


def test_a_note_struck_again_on_its_only_string_ends_the_held_one():
    got = arrange(piece("C4:4", "- C4 -:2"), UKULELE)
    held = next(n for n in got.piece.notes if n.voice == 1)
    assert held.duration == 1
    assert kinds(got) == ["shortened"]


def test_a_note_the_instrument_has_in_no_octave_is_dropped():
    got = arrange(piece("C4 F#4 C4 C4"), replace(UKULELE, tuning=(60,), frets=5))
    assert names(got) == ["C4", "C4", "C4"]
    assert kinds(got) == ["dropped"] and "no octave" in got.changes[0].reason


def test_the_beat_of_a_pickup_counts_from_the_end_of_its_bar():
    made = piece("B3 | C4 D4 E4 F4 " + "| E4 G4 A4 G4" * 12)
    first = replace(made.bars[0], length=Fraction(1), pickup=True, number="0")
    made = replace(made, bars=(first, *made.bars[1:]))
    (change, *_) = arrange(made, UKULELE).changes
    assert (change.bar_number, change.beat) == ("0", 4)


def test_the_other_mode_is_taken_by_its_signature():
    made = piece("D4 F4 A4 D4", key=Key(0, "major"))
    got = arrange(made, UKULELE, key="E minor")
    assert got.key == "G major"
    assert kinds(got)[0] == "key" and "E minor" in got.changes[0].reason


def test_an_empty_piece_passes_through():
    made = piece("- - - -")
    assert arrange(made, UKULELE, key="D").piece.key.name == "D major"


def test_key_and_semitones_together_are_refused():
    with pytest.raises(BadInput, match="not both"):
        arrange(piece("C4"), UKULELE, key="D", transpose=2)
    with pytest.raises(BadInput, match="too far"):
        arrange(piece("C4"), UKULELE, transpose=99)


def test_a_grace_note_goes_with_the_note_it_leads_to():
    made = piece("C5:4", "C4+E4+G4+C5:4")
    doubled = next(n for n in made.notes if n.voice == 2 and n.pitch.name == "C5")
    grace = replace(
        doubled, id="grace", grace=True, duration=Fraction(0), pitch=made.notes[1].pitch
    )
    bar = made.bars[0]
    only = tuple(n for n in bar.notes if n.voice == 1 or n is doubled)
    made = replace(made, bars=(replace(bar, notes=(grace, *only)),))
    got = arrange(made, instrument("custom:C4@345"))
    assert [n.voice for n in got.piece.notes] == [1]
    assert sorted(kinds(got)) == ["dropped", "dropped"]
    assert any("grace note" in c.reason for c in got.changes)


def test_a_tied_note_counts_over_the_bar_line():
    """Held from bar 1 into bar 2, C4 has to go when its only string is needed."""
    made = piece("C4:6 | ", "-:4 | C4:4")
    got = arrange(made, UKULELE)
    assert [n.duration for n in got.piece.notes] == [4, 4]
    assert kinds(got) == ["shortened"]


def test_the_capo_counts():
    capo = instrument("ukulele", 2)
    assert arrange(piece("C4 D4 E4 D4"), capo).piece.notes[0].midi >= 62


@settings(max_examples=30, deadline=None)
@given(pieces(lowest=55, highest=81, voices=3))
def test_what_is_struck_together_has_a_string_and_a_finger_each(made):
    """Checked apart from the code under test, by trying every order of strings."""
    wood = GUITAR
    got = arrange(made, wood)
    reach = 130.0  # mm, the greatest reach in the table of hands
    for bar in got.piece.bars:
        for onset in {n.onset for n in bar.notes}:
            chord = [n.midi for n in bar.notes if n.onset == onset]
            assert any(
                all(0 <= f <= wood.playable_frets for f in frets)
                and (not down or wood.fret_mm(max(down)) - wood.fret_mm(min(down)) <= reach)
                for order in permutations(range(wood.strings), len(chord))
                for frets in [[m - wood.open_midi[s] for m, s in zip(chord, order, strict=True)]]
                for down in [[f for f in frets if f > 0]]
            ), chord
