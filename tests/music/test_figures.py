"""Broken chords ring until the figure turns (common practice, no source)."""

from __future__ import annotations

from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from tests.fingering.build import piece
from workbench.music.model import Piece
from workbench.music.ringing.figures import ringing


def lasts(music: Piece) -> dict[str, Fraction]:
    """How long every note rings, by the name of its pitch; the last of a name counts."""
    told = ringing(music)
    return {n.pitch.name: told[n.id] for n in music.notes if n.id in told}


def test_an_arpeggio_rings_to_its_end() -> None:
    assert lasts(piece("C3:1/2 E3:1/2 G3:1/2 C4:1/2 r:2")) == {
        "C3": 2, "E3": Fraction(3, 2), "G3": 1,
    }  # fmt: skip


def test_a_note_struck_again_begins_anew() -> None:
    told = ringing(piece("C3:1/2 G3:1/2 E4:1/2 G3:1/2 C3:1/2 r:3/2"))
    assert [told.get(f"b0v1n{i}a") for i in range(5)] == [2, 1, Fraction(3, 2), 1, None]


def test_a_scale_and_a_slow_tune_ring_as_written() -> None:
    assert not ringing(piece("C4:1/2 D4:1/2 E4:1/2 F4:1/2 G4:1/2 A4:1/2 B4:1/2 C5:1/2"))
    assert not ringing(piece("C4:1 E4:1 G4:1 C5:1"))


def test_what_leaps_within_an_octave_alone_is_a_tune() -> None:
    reel = "G3:1/4 B3:1/4 D4:1/4 G3:1/4 B3:1/4 D4:1/4 B3:1/4 D4:1/4 r:2"
    assert lasts(piece(reel)) and not ringing(piece(reel), 12)
    for bass in (f"{reel} | G2:2 r:2", f"G2:1 {reel}"):  # held under it, or struck before it
        over = piece(bass)
        assert ringing(over, 12) == ringing(over) and len(ringing(over)) > 4
    wide = piece("G3:1/4 B3:1/4 D4:1/4 G4:1/4 B3:1/4 D4:1/4 B3:1/4 D4:1/4 r:2")
    assert ringing(wide, 12) == ringing(wide)  # G3 to G4


def test_a_run_through_more_pitches_than_strings_is_parted_where_it_leaps_widest() -> None:
    up = "C3:1/4 E3:1/4 G3:1/4 C4:1/4 E4:1/4 G4:1/4 C5:1/4 E5:1/4 r:2"
    six, four = ringing(piece(up)), ringing(piece(up), 0, 4)
    stops = {n.pitch.name: n.onset + six[n.id] for n in piece(up).notes if n.id in six}
    assert stops["C3"] == stops["E3"] == Fraction(3, 4), "G3 to C4 leaps widest, and first so"
    assert stops["C4"] == stops["G4"] == 2
    assert set(four) == set(six), "parts of four moments cannot be parted again"
    one = "C3:1/4 E3:1/4 G3:1/4 C4:1/4 E4:1/4 G4:1/4 r:5/2"
    assert lasts(piece(one))["C3"] == Fraction(3, 2), "six pitches on six strings"


def test_a_seventh_rings_beside_its_root() -> None:
    told = lasts(piece("D#3:1/2 F#4:1/2 A3:1/2 B3:1/2 A3:1/2 B3:1/2 r:1"))
    assert told["D#3"] == 3 and told["F#4"] == Fraction(5, 2)


def test_the_tune_that_moves_on_ends_its_own_note_alone() -> None:
    told = ringing(piece("C3:1/2 E4:1/2 G3:1/2 | r:1 D4:2"))
    assert told["b0v1n0a"] == Fraction(3, 2)
    assert told.get("b0v1n1a") is None or told["b0v1n1a"] <= Fraction(1, 2)


def test_a_tune_rings_through_a_pedal_struck_again_and_again() -> None:
    bar = "D3:1/4 F#4:1/4 E4:1/4 E4:1/4 C#3:1/4 E4:1/4 E4:1/4 E4:1/4 r:2"
    told = lasts(piece(bar))
    assert told["F#4"] == Fraction(7, 4)


def test_a_chord_that_moves_on_a_step_ends_the_note_it_leaves() -> None:
    told = lasts(piece("D3:1/4 A3:1/4 E4:1/4 E4:1/4 C#3:1/4 G3:1/4 E4:1/4 E4:1/4 r:2"))
    assert told["D3"] == 1 and told["A3"] == 1


NAMES = ["C3", "E3", "G3", "Bb3", "C4", "D4", "E4"]


@given(st.lists(st.sampled_from(NAMES), min_size=1, max_size=8))
def test_nothing_rings_into_itself_or_past_its_bar(names: list[str]) -> None:
    music = piece(" ".join(f"{n}:1/2" for n in names) + f" r:{Fraction(len(names) % 2, 2) or 1}")
    told = ringing(music)
    for bar in music.bars:
        for n in bar.notes:
            end = n.onset + told.get(n.id, n.duration)
            assert n.onset + n.duration <= end <= max(bar.length, n.onset + n.duration)
            assert not any(m.midi == n.midi and n.onset < m.onset < end for m in bar.notes)
