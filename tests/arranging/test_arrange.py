"""Laying a piece on an instrument: everything fits, and everything altered is said."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from itertools import permutations
from typing import get_args

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.arranging.make import piece, pieces
from workbench.arranging.arrange import arrange
from workbench.arranging.changes import ChangeKind
from workbench.arranging.decisions import Decision
from workbench.arranging.transpose import shift_by, transposed
from workbench.arranging.weights import STRICT, Wishes
from workbench.arranging.words import sentence
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


@settings(max_examples=40, deadline=None)
@given(pieces(), st.sampled_from(NAMES), st.integers(-7, 7), st.sampled_from(STRICT))
def test_every_note_fits_and_every_difference_is_accounted_for(made, name, semitones, strict):
    wood = instrument(name)
    got = arrange(made, wood, transpose=semitones, wishes=Wishes(10, strict))
    plain = {n.id: n for n in transposed(made, shift_by(made.key, got.transposition)).notes}
    now = {n.id: n for n in got.piece.notes}
    told = {c.note for c in got.changes if c.note}
    assert told == {i for i, note in plain.items() if now.get(i) != note}
    assert set(now) <= set(plain)
    # no note needs a fret above the one wished for
    assert all(any(f <= 10 for _, f in wood.places(n.midi)) for n in now.values())
    assert all(c.kind in get_args(ChangeKind) and sentence(c).endswith(".") for c in got.changes)
    assert (got.transposition - semitones) % 12 == 0
    # never more at once than there are strings; two stems of one sound are one sound
    timed = [
        (got.piece.starts[b.index] + n.onset, got.piece.starts[b.index] + n.onset + n.duration, n)
        for b in got.piece.bars
        for n in b.notes
    ]
    for start in {row[0] for row in timed}:
        sounding = {(a, n.midi) for a, b, n in timed if a <= start < b}
        assert strings_suffice([m for _, m in sounding], wood)


@settings(max_examples=30, deadline=None)
@given(pieces(), st.sampled_from(["C", "F", "G", "D", "A", "Bb"]))
def test_a_key_asked_for_is_the_key_got(made, key):
    got = arrange(made, UKULELE, key=key)
    assert got.key == f"{key} {made.key.mode}" == got.piece.key.name
    assert (made.key.fifths * 7 + got.transposition - got.piece.key.fifths * 7) % 12 == 0


@settings(max_examples=30, deadline=None)
@given(pieces(lowest=60, highest=81, voices=3))
def test_the_tune_is_kept_and_stays_on_top(made):
    """Told apart from the code under test: the highest note struck, where none longer is
    above it and no note within its beat, before or after, is more than a fifth higher."""
    got = {n.id: n for n in arrange(made, UKULELE, transpose=0).piece.notes}
    top = {}
    for note in made.notes:
        bar = made.bar_of[note.id]
        key = made.starts[bar] + note.onset
        if key not in top or note.midi > top[key].midi:
            top[key] = note
    for time, note in top.items():
        bar = made.bars[made.bar_of[note.id]]
        sounding = [
            n
            for b in made.bars
            for n in b.notes
            if made.starts[b.index] + n.onset < time < made.starts[b.index] + n.onset + n.duration
        ]
        near = [n for i in (-1, 0, 1) if 0 <= bar.index + i < len(made.bars)
                for n in made.bars[bar.index + i].notes]  # fmt: skip
        if all(n.midi < note.midi for n in sounding) and note.midi == max(n.midi for n in near):
            assert note.id in got and got[note.id].midi == note.midi
            together = [got[n.id].midi for n in bar.notes if n.onset == note.onset and n.id in got]
            assert max(together) == note.midi


def test_the_octave_of_a_key_is_one_that_holds_the_tune():
    made = piece("C4 D4 E4 F4")
    assert arrange(made, UKULELE, key="D").transposition == 2
    assert arrange(made, UKULELE, key="Bb").transposition == 10  # down a tone is below C4
    assert arrange(made, LOW_G, key="Bb").transposition == -2


def test_semitones_downwards_are_taken_as_asked_where_the_tune_stays():
    made = piece("E5 G5 F5 E5")
    got = arrange(made, UKULELE, transpose=-12)
    assert got.transposition == -12 and not got.changes


def test_a_piece_below_the_instrument_goes_up_and_says_so():
    got = arrange(piece("C3 D3 E3 G3 | F3 E3 D3 C3"), UKULELE)
    assert got.transposition % 12 == 0 and got.transposition > 0
    assert kinds(got) == ["best key"]
    assert "does not lie on this instrument" in sentence(got.changes[0])
    asked = arrange(piece("C3 D3 E3 G3 | F3 E3 D3 C3"), UKULELE, transpose=0)
    assert asked.transposition == 12 and kinds(asked) == ["whole piece"]


def test_a_piece_that_lies_well_stays():
    got = arrange(piece("E4 G4 A4 C5 | B4 G4 E4:2", key=Key(4)), UKULELE)
    assert got.transposition == 0 and not got.changes


def test_on_reentrant_ukulele_a_low_bass_goes_to_the_octave_below_the_tune():
    made = piece("C5 A4 G4 E4 | F4 A4 G4:2", "C4:2 G3:2 | A3:2 C4:2")
    got = arrange(made, UKULELE, transpose=0)
    tune = {(b.index, n.onset): n.midi for b in got.piece.bars for n in b.notes if n.voice == 1}
    bass = [
        (n.midi, tune[b.index, n.onset]) for b in got.piece.bars for n in b.notes if n.voice == 2
    ]
    assert bass and all(low < high for low, high in bass)
    assert all(c.role == "bass" for c in got.changes)


def test_five_notes_on_four_strings_lose_what_is_doubled_first():
    got = arrange(piece("C5:4", "E4+G4+B4:4", "C4+C3:4"), UKULELE, transpose=0)
    assert len(got.piece.notes) <= 4
    assert "C5" in names(got)
    out = [c for c in got.changes if c.kind == "dropped"]
    assert out and all(c.role != "tune" for c in out)


def test_music_written_for_the_instrument_stays_as_it_is_written():
    """High on the neck and with barres, but every moment lies under a hand."""
    upper = "A4 C5 B4 A4 | G#4 B4 A4:2 | E5 D5 C5 B4 | A4:4"
    lower = "A3+F4 A3+E4 D4+G#4 A3 | E3+B3+E4 E3 A2+E4:2 | A2 A3+F4 A3+E4 E3+D4 | A2+E4:4"
    made = replace(piece(upper, lower), key=Key(0, "minor"))
    for strict in ("playable", "faithful"):
        got = arrange(made, GUITAR, wishes=Wishes(strict=strict))
        assert got.transposition == 0 and not got.changes
    # the same notes from two players are an ensemble's, and are arranged
    second = tuple(
        replace(b, notes=tuple(replace(n, part=n.voice) for n in b.notes)) for b in made.bars
    )
    assert arrange(replace(made, bars=second), GUITAR, transpose=0).changes
    assert arrange(made, GUITAR, transpose=0, wishes=Wishes(strict="easy")).changes


def test_a_keyboard_chord_keeps_tune_and_bass():
    got = arrange(piece("E5:4", "C3+E3+G3+C4+G4:4"), GUITAR, transpose=0)
    left = names(got)
    assert "E5" in left and "C3" in left


def test_two_stems_of_one_sound_both_stay():
    # C4 is on the third string alone: one string is enough for one sound
    assert len(arrange(piece("C4:4", "C4:4"), UKULELE).piece.notes) == 2
    assert len(arrange(piece("G4:4", "G4:4"), UKULELE).piece.notes) == 2


def test_a_note_struck_again_on_its_only_string_ends_the_held_one():
    got = arrange(piece("E4:2 E4:2", "C4:4", "- C4 -:2"), UKULELE, transpose=0)
    held = next(n for n in got.piece.notes if n.voice == 2)
    assert held.duration == 1
    assert kinds(got) == ["shortened"]


def test_a_note_the_instrument_has_in_no_octave_is_dropped():
    got = arrange(piece("C4 F#4 C4 C4"), replace(UKULELE, tuning=(60,), frets=5), transpose=0)
    assert names(got) == ["C4", "C4", "C4"]
    assert kinds(got) == ["dropped"] and "any octave" in sentence(got.changes[0])


def test_no_fret_above_the_one_wished_for():
    made = piece("C5 E5 G5 A5 | E5 C5 A4 C4")
    low = arrange(made, UKULELE, transpose=0, wishes=Wishes(top_fret=7))
    assert max(n.midi for n in low.piece.notes) <= 69 + 7
    high = arrange(made, UKULELE, transpose=0)
    assert high.piece == made
    with pytest.raises(BadInput, match="Highest fret"):
        Wishes(top_fret=0)
    with pytest.raises(BadInput, match="no way to arrange"):
        Wishes(strict="lazy")


def test_an_easy_arrangement_has_fewer_notes_than_a_faithful_one():
    made = piece("E5 D5 C5 B4 | C5:2 G4:2", "G4+C4+E4:2 F4+D4:2 | E4+C4:2 D4+B3:2")
    count = {
        strict: len(arrange(made, UKULELE, transpose=0, wishes=Wishes(12, strict)).piece.notes)
        for strict in STRICT
    }
    assert count["sparse"] <= count["easy"] < count["playable"] <= count["faithful"]


def test_the_teachers_word_on_a_note_holds():
    made = piece("C5:2 E5:2", "E4:2 G4:2", "C3:2 C3:2")
    free = arrange(made, LOW_G, transpose=0)
    inner = made.bars[0].notes[1].id
    gone = arrange(made, LOW_G, transpose=0, wanted={inner: Decision(gone=True)})
    assert inner not in {n.id for n in gone.piece.notes}
    bass = next(n.id for n in made.notes if n.voice == 3)
    up = arrange(made, LOW_G, transpose=0, wanted={bass: Decision(octaves=1)})
    assert next(n for n in up.piece.notes if n.id == bass).pitch.name == "C4"
    assert free.piece.notes[0] == gone.piece.notes[0]


def test_the_beat_of_a_pickup_counts_from_the_end_of_its_bar():
    made = piece("E4 | C5 D5 E5 D5 " + "| E5 G5 A5 G5" * 12, "B3 | C4 D4 E4 D4" + "| C4:4" * 12)
    first = replace(made.bars[0], length=Fraction(1), pickup=True, number="0")
    made = replace(made, bars=(first, *made.bars[1:]))
    (change, *_) = arrange(made, UKULELE, transpose=0).changes
    assert (change.bar_number, change.beat) == ("0", 4)


def test_the_other_mode_is_taken_by_its_signature():
    made = piece("D4 F4 A4 D4", key=Key(0, "major"))
    got = arrange(made, UKULELE, key="E minor")
    assert got.key == "G major"
    assert kinds(got)[0] == "key" and "E minor" in sentence(got.changes[0])


def test_an_empty_piece_passes_through():
    made = piece("- - - -")
    assert arrange(made, UKULELE, key="D").piece.key.name == "D major"


def test_key_and_semitones_together_are_refused():
    with pytest.raises(BadInput, match="not both"):
        arrange(piece("C4"), UKULELE, key="D", transpose=2)
    with pytest.raises(BadInput, match="too far"):
        arrange(piece("C4"), UKULELE, transpose=99)


def test_a_grace_note_goes_with_the_note_it_leads_to():
    made = piece("C5:4", "E4:4")
    low = next(n for n in made.notes if n.voice == 2)
    grace = replace(low, id="grace", grace=True, duration=Fraction(0))
    bar = made.bars[0]
    made = replace(made, bars=(replace(bar, notes=(grace, *bar.notes)),))
    got = arrange(made, instrument("custom:C4@345"), transpose=0)
    assert [n.voice for n in got.piece.notes] == [1]
    assert sorted(kinds(got)) == ["dropped", "dropped"]


def test_a_tied_note_counts_over_the_bar_line():
    """Held from bar 1 into bar 2, C4 has to go when its only string is needed."""
    made = piece("E4:4 | G4:4", "C4:6 | ", "-:4 | C4:4")
    got = arrange(made, UKULELE, transpose=0)
    assert next(n for n in got.piece.notes if n.voice == 2).duration == 4
    assert kinds(got) == ["shortened"]


def test_the_capo_counts():
    capo = instrument("ukulele", 2)
    assert arrange(piece("C4 D4 E4 D4"), capo).piece.notes[0].midi >= 62


@settings(max_examples=30, deadline=None)
@given(pieces(lowest=55, highest=81, voices=3))
def test_what_is_struck_together_has_a_string_and_a_finger_each(made):
    """Checked apart from the code under test, by trying every order of strings."""
    wood = GUITAR
    got = arrange(made, wood, transpose=0)
    reach = 130.0  # mm, the greatest reach in the table of hands
    for bar in got.piece.bars:
        for onset in {n.onset for n in bar.notes}:
            chord = sorted({n.midi for n in bar.notes if n.onset == onset})
            assert any(
                all(0 <= f <= wood.playable_frets for f in frets)
                and (not down or wood.fret_mm(max(down)) - wood.fret_mm(min(down)) <= reach)
                for order in permutations(range(wood.strings), len(chord))
                for frets in [[m - wood.open_midi[s] for m, s in zip(chord, order, strict=True)]]
                for down in [[f for f in frets if f > 0]]
            ), chord


def test_a_bass_while_the_tune_rests_may_lie_above_it_but_never_under_its_notes():
    """Otherwise the beat falls silent: the high fourth string is there for that."""
    made = piece("- E4 - E4 | - F4 - D4", "A3 - G3 - | A3 - G3 -")
    done = arrange(made, UKULELE, transpose=-2)
    bass = {n.onset for n in done.piece.notes if n.voice == 2}
    assert bass == {0, 2}
    struck = piece("E4 E4 E4 E4", "A2 - - -")
    now = arrange(struck, UKULELE, transpose=-4).piece
    top = max(n.midi for n in now.notes if n.voice == 1)
    assert all(n.midi < top for n in now.notes if n.voice == 2)


def test_above_a_resting_tune_goes_only_what_has_no_octave_below_it():
    made = piece("- E4 - E4", "A3 - A3 -")
    low = arrange(made, instrument("ukulele-low-g"), transpose=0)
    assert all(n.midi < 64 for n in low.piece.notes if n.voice == 2)
    high = arrange(made, UKULELE, transpose=0).piece
    assert [n.midi for n in high.notes if n.voice == 2] == [69, 69]


def test_what_would_ring_above_the_tune_ends_and_says_so():
    made = piece("- E4 D4 C4", "G3:4")
    done = arrange(made, UKULELE, transpose=0)
    cut = [c for c in done.changes if c.kind == "shortened"]
    assert [(c.role, c.why) for c in cut] == [("bass", "covers")]
    assert "it would sound above the tune" in sentence(cut[0])
