"""A lead sheet made into a solo: the tune stays on top, the chords come in the pattern's order."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import music21
import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.arranging.make import piece
from workbench.arranging.arrange import arrange
from workbench.arranging.keys import candidate_keys
from workbench.arranging.leadsheet import (
    PATTERNS,
    is_lead_sheet,
    pattern_for,
    pattern_named,
    patterns_for,
    solo,
    solo_on,
    solos,
    tones,
)  # fmt: skip
from workbench.arranging.sounds import TUNE, texture
from workbench.arranging.weights import Wishes
from workbench.fingering.engine import solve
from workbench.fingering.types import LEVELS
from workbench.instrument.table import hand, instrument
from workbench.music.errors import BadInput
from workbench.music.model import ChordName
from workbench.music.reading.score import read_score
from workbench.music.telling.warnings import warnings

UKULELE = instrument("ukulele")


def sheet(text="E5:2 D5 C5 | B4:2 D5:2 | C5:4", symbols=(("C",), ("G7", "G7/B"), ("C",)), **more):
    """Tune with symbols spread evenly over the bars."""
    made = piece(text, **more)
    bars = tuple(
        replace(
            bar,
            chords=tuple(ChordName(bar.length * k / len(row), s) for k, s in enumerate(row)),
        )
        for bar, row in zip(made.bars, symbols, strict=True)
    )
    return replace(made, bars=bars)


@pytest.mark.parametrize(
    "figure", ["C", "Am", "G7", "F#m7", "Bbmaj7", "Dsus4", "Bm7b5", "Edim", "Caug", "A7sus4", "D6"]
)
def test_symbols_mean_what_music21_takes_them_for(figure):
    """music21.harmony.ChordSymbol, an outside reading of chord symbols."""
    wanted = {p.pitchClass for p in music21.harmony.ChordSymbol(figure.replace("Bb", "B-")).pitches}
    bass, chord = tones(figure)
    assert set(chord) == wanted and bass in wanted


def test_the_tune_is_kept_and_everything_else_lies_below_it():
    made = sheet()
    for pattern in patterns_for(made):
        done = solo(made, pattern)
        tune = [n for n in done.notes if n.voice == 1]
        assert [(n.id, n.midi, n.duration) for n in tune] == [
            (n.id, n.midi, n.duration) for n in made.notes
        ]
        for bar in done.bars:
            for n in bar.notes:
                end = n.onset + n.duration
                with_it = [t for t in bar.notes if t.voice == 1 and t.onset < end]
                over = [t.midi for t in with_it if t.onset + t.duration > n.onset]
                assert n.voice == 1 or n.midi < min(over)
        sounding = texture(done)
        top = {n.id for s in sounding.sounds if s.role == TUNE for n in s.notes}
        assert {n.id for n in tune} <= top


def test_the_strokes_are_those_of_the_letters():
    made = sheet("C5:4 | B4:4 | C5:4", symbols=(("C",), ("G",), ("C",)))
    first = solo(made, pattern_named(made, "p i m i")).bars[0]
    below = [n for n in first.notes if n.voice == 2]
    assert [n.onset for n in below] == [Fraction(k, 2) for k in range(8)]
    p, i, m, again = (n.midi for n in below[:4])
    assert p % 12 == 0 and p < i < m and i == again
    assert {i % 12, m % 12} <= {4, 7}


def test_a_new_chord_begins_the_pattern_anew_with_its_bass():
    done = solo(sheet(), pattern_named(sheet(), "p i m i"))
    bass = {n.onset: n.midi % 12 for n in done.bars[1].notes if n.voice == 2 and n.duration > 1}
    assert bass == {0: 7, 2: 11}


@pytest.mark.parametrize("meter", [(4, 4), (2, 4), (3, 4), (6, 8), (12, 8)])
def test_every_metre_has_patterns_that_fill_it_and_get_fuller_with_the_level(meter):
    long = Fraction(4 * meter[0], meter[1])
    made = sheet(f"C5:{long} | B4:{long} | C5:{long}", (("C",), ("G",), ("C",)), meter=meter)
    count = [len(solo(made, pattern_for(made, level)).notes) for level in LEVELS]
    assert count == sorted(count) and count[0] < count[-1]
    for pattern in patterns_for(made):
        ends = [n.onset + n.duration for n in solo(made, pattern).bars[0].notes]
        assert max(ends) == long


@given(st.text(alphabet="pima+ x", max_size=12))
def test_letters_are_a_pattern_or_refused_in_one_sentence(letters):
    made = sheet()
    try:
        pattern = pattern_named(made, letters)
    except BadInput as wrong:
        assert "p i m a" in str(wrong)
    else:
        assert all(set(stroke) <= set("pima") for stroke in pattern.strokes)


def test_what_is_not_known_is_told_and_the_tune_goes_on_alone():
    made = sheet(symbols=(("C",), ("Gxyz",), ("N.C.",)))
    done = solo(made, PATTERNS["even"][1])
    assert {n.voice for n in done.bars[1].notes} == {1} == {n.voice for n in done.bars[2].notes}
    assert len(done.warnings) == 1 and "Gxyz" in warnings(done)[0] and "Bar 2" in warnings(done)[0]


def test_what_is_no_lead_sheet_is_refused():
    two = piece("C5:4 | D5:4", "C4:4 | B3:4")
    assert not is_lead_sheet(two) and not is_lead_sheet(piece("C5:4 | D5:4"))
    with pytest.raises(BadInput, match="lead sheet"):
        solo(two, PATTERNS["even"][0])


#: Tunes of our own, one in each kind of metre.
SHEETS = {
    "River Stones": """M:4/4
L:1/4
K:G
"G" G A B d | "Em" e2 d B | "C" c B A G | "D7" A3 D | "G" G A B d | "Em" e f g e |
"Am7" c2 "D7" A F | "G" G4 | "C" e3 c | "G/B" d2 B2 | "Am" c/B/A/G/ A c | "D7" F2 A2 |]
""",
    "Orchard Swing": """M:3/4
L:1/8
K:F
c2 | "F" A4 c2 | "C7" B3 A G2 | "F" A2 F2 A2 | "Dm" d4 d2 | "Gm" d2 c2 B2 | "C7" c2 B2 G2 |
"F" F4 c2 | "Bb" d4 f2 | "F/A" c4 A2 | "Gm7" B2 A2 G2 | "C7" G2 E2 G2 | "F" F4 |]
""",
    "Lamp Lighter's Jig": """M:6/8
L:1/8
K:D
"D" d2A F2A | "G" B2d "D" A3 | "Bm" d2f "Em" e2g | "A7" f2e e3 | "D" d2A F2A |
"G" GAB "A7" AGE | "D" D6 | "A" e2c A2c | "D" d2f a3 | "G" GBd "Bm" f2d | "D" d6 |]
""",
}


@pytest.fixture(params=SHEETS)
def own(request, tmp_path):
    path = tmp_path / "tune.abc"
    path.write_text(f"X:1\nT:{request.param}\n{SHEETS[request.param]}", encoding="utf-8")
    return read_score(path)


@pytest.mark.parametrize("on", ["ukulele", "ukulele-low-g", "guitar"])
@pytest.mark.parametrize("level", ["beginner", "advanced"])
def test_what_is_made_for_an_instrument_lies_on_it(own, on, level):
    wood = instrument(on)
    made, move = solo_on(own, pattern_for(own, level), wood)
    placed = arrange(made, wood, transpose=move)
    assert placed.transposition == move
    assert placed.kept.tune == 1 and placed.kept.bass >= 0.97 and placed.kept.inner >= 0.9
    tune = {n.id: n.midi + move for n in own.notes}
    assert {n.id: n.midi for n in placed.piece.notes if n.voice == 1} == tune


@pytest.mark.parametrize("on", ["ukulele", "ukulele-low-g", "guitar"])
def test_every_chord_has_a_bass_wherever_a_note_of_it_lies_below_the_tune(own, on):
    wood = instrument(on)
    made, move = solo_on(own, pattern_for(own, "middle"), wood)
    now = ""
    for bar in made.bars:
        for mark in bar.chords or [ChordName(Fraction(0), now)]:
            now = mark.text
            if bar.pickup:
                continue
            tune = next(n for n in bar.notes if n.voice == 1 and n.onset <= mark.onset
                        < n.onset + n.duration)  # fmt: skip
            below = [n.midi for n in bar.notes if n.voice == 2 and n.onset == mark.onset]
            there = [m for m in range(tune.midi)
                     if m % 12 in tones(now)[1] and wood.places(m + move)]  # fmt: skip
            assert below or not there, (bar.number, now)
            assert all(m % 12 in {tones(now)[0], *tones(now)[1]} for m in below)


def test_nothing_is_struck_twice_at_once(own):
    for level in LEVELS:
        made, _ = solo_on(own, pattern_for(own, level), UKULELE)
        for bar in made.bars:
            struck = [(n.onset, n.midi) for n in bar.notes]
            assert len(set(struck)) == len(struck)


@pytest.mark.parametrize("level", ["easy", "middle"])
def test_a_tune_that_lies_low_is_not_moved_up_for_its_chords(tmp_path, level):
    """A waltz in G between D4 and E5: in first position on a ukulele, a fourth higher at its
    twelfth fret. The shapes of a guitar, which other music keeps, are no reason here."""
    path = tmp_path / "waltz.abc"
    path.write_text(
        'X:1\nT:Boat in the reeds\nM:3/4\nL:1/4\nK:G\n"G"D G B|"C"e2 c|"D7"A d c|"G"B3|'
        '"Em"G B e|"Am"c2 A|"D7"F A d|"G"G3|]',
        encoding="utf-8",
    )
    own = read_score(path)
    assert solo_on(own, pattern_for(own, level), UKULELE)[1] == 0


def test_keys_are_ranked_by_the_solo_that_each_would_have(own):
    """What a key is said to lose is what the solo made for it loses, not the chords before they
    are fitted to the instrument."""
    pattern, medium = pattern_for(own, "easy"), hand("medium")
    made = solos(own, pattern, UKULELE, medium, Wishes())
    ranked = candidate_keys(solo(own, pattern), UKULELE, medium, made=made)
    plain = candidate_keys(solo(own, pattern), UKULELE, medium)
    lost = {c.transposition: c.unplayable for c in plain}
    assert {c.transposition for c in ranked} == lost.keys()
    assert sum(c.unplayable for c in ranked) < 0.3 * sum(lost.values())
    there, move = solo_on(own, pattern, UKULELE)
    taken = next(c for c in ranked if c.transposition == move)
    assert taken.tune == 0 and taken.unplayable <= 1
    assert made(move).notes == there.notes


def test_a_key_or_semitones_asked_for_are_kept_to(own):
    pattern = pattern_for(own, "easy")
    made, move = solo_on(own, pattern, UKULELE, key="C")
    assert arrange(made, UKULELE, transpose=move).key == "C major"
    assert solo_on(own, pattern, UKULELE, transpose=1)[1] == 1
    with pytest.raises(BadInput, match="either a key"):
        solo_on(own, pattern, UKULELE, key="C", transpose=1)


def test_thumb_and_fingers_play_what_their_letters_say():
    """p i m i over C on a low-G ukulele, the tune on string 1."""
    wood = instrument("ukulele-low-g")
    text = "C5:4 | C5:4 | C5:4"
    made = sheet(text, symbols=(("C",), ("C",), ("C",)))
    done, move = solo_on(made, pattern_named(made, "p i m i"), wood, transpose=0)
    placed = arrange(done, wood, transpose=move).piece
    right = {n.id: n.right for bar in solve(placed, wood, hand("medium")).bars for n in bar.notes}
    below = [n for n in placed.bars[1].notes if n.voice == 2]
    assert [right[n.id] for n in below] == ["p", "i", "m", "i"] * 2
