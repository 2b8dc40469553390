"""Fret distances, pitches and the table of instruments, against outside rules."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from music21.pitch import Pitch as OutsidePitch

from workbench.instrument.model import frequency, fret_mm
from workbench.instrument.table import HANDS, INSTRUMENTS, hand, instrument
from workbench.music.errors import BadInput
from workbench.music.model import Pitch

EVERY = list(INSTRUMENTS.values())

#: Open strings, string 1 first: common practice, no source.
STRINGS = {
    "ukulele": "A4 E4 C4 G4",
    "ukulele-soprano": "A4 E4 C4 G4",
    "ukulele-soprano-low-g": "A4 E4 C4 G3",
    "ukulele-concert-low-g": "A4 E4 C4 G3",
    "ukulele-tenor": "A4 E4 C4 G4",
    "ukulele-low-g": "A4 E4 C4 G3",
    "baritone-ukulele": "E4 B3 G3 D3",
    "guitar": "E4 B3 G3 D3 A2 E2",
    "tenor-guitar": "A4 D4 G3 C3",
    "mandolin": "E5 A4 D4 G3",
    "mandola": "A4 D4 G3 C3",
    "octave-mandolin": "E4 A3 D3 G2",
}


def test_concert_pitch_is_that_of_iso_16():
    """ISO 16:1975: A4 is 440 Hz."""
    assert frequency(69) == 440.0


@pytest.mark.parametrize("midi", range(12, 109))
def test_frequencies_and_names_agree_with_music21(midi):
    outside = OutsidePitch(midi=midi)
    assert frequency(midi) == pytest.approx(outside.frequency, rel=1e-9)
    spelled = Pitch(outside.step, int(outside.alter), outside.octave)
    assert spelled.midi == midi


@pytest.mark.parametrize("one", EVERY, ids=lambda one: one.id)
def test_strings_are_tuned_as_players_tune_them(one):
    assert [OutsidePitch(name).midi for name in STRINGS[one.id].split()] == list(one.tuning)


def test_the_octave_lies_half_way():
    """Half a string sounds the octave: the twelfth fret lies half way to the saddle."""
    for one in EVERY:
        assert one.fret_mm(12) == pytest.approx(one.scale_mm / 2)


def test_frets_follow_the_makers_rule():
    """The instrument makers' rule of 17.817 (common practice): every fret lies a
    17.817th of what is left of the string beyond the one before."""
    for one in EVERY:
        at = 0.0
        for fret in range(1, one.frets + 1):
            at += (one.scale_mm - at) / 17.817
            assert one.fret_mm(fret) == pytest.approx(at, abs=0.05)


@given(st.floats(200, 1200), st.integers(0, 24))
def test_a_fretted_string_sounds_a_semitone_a_fret(scale, fret):
    """A string's frequency goes by the inverse of its length (Mersenne's first law)."""
    left = scale - fret_mm(scale, fret)
    assert frequency(60) * scale / left == pytest.approx(frequency(60 + fret))


@given(st.sampled_from(EVERY), st.integers(0, 7))
def test_a_capo_takes_the_place_of_the_nut(one, capo):
    with_capo = instrument(one.id, min(capo, one.frets - 5))
    sits = with_capo.capo
    assert with_capo.open_midi == tuple(midi + sits for midi in one.tuning)
    for fret in range(with_capo.playable_frets + 1):
        from_nut = one.fret_mm(sits + fret) - one.fret_mm(sits)
        assert with_capo.fret_mm(fret) == pytest.approx(from_nut)
    assert with_capo.highest == one.highest


@given(st.sampled_from(EVERY), st.integers(20, 110))
def test_places_are_all_places_and_only_these(one, midi):
    every = {
        (string, fret)
        for string, opened in enumerate(one.open_midi, 1)
        for fret in range(one.playable_frets + 1)
        if opened + fret == midi
    }
    assert set(one.places(midi)) == every
    assert bool(every) <= (one.lowest <= midi <= one.highest)


def test_re_entrant_stringing_is_told():
    reentrant = {one.id for one in EVERY if one.reentrant}
    assert reentrant == {"ukulele", "ukulele-soprano", "ukulele-tenor"}


def test_an_own_instrument_is_written_from_the_highest_numbered_string():
    own = instrument("custom:G4,C4,E4,A4@345")
    assert own.tuning == INSTRUMENTS["ukulele-soprano"].tuning
    assert own.scale_mm == 345.0
    assert instrument("custom:F#3,Bb3@500").tuning == (58, 54)


@pytest.mark.parametrize(
    "name, says",
    [
        ("zither", "zither"),
        ("custom:", "1 to 10 strings"),
        ("custom:H4@345", "H4"),
        ("custom:G4,C4@5", "200 to 1200 mm"),
        ("custom:G4,C4@long", "200 to 1200 mm"),
    ],
)
def test_what_is_no_instrument_is_told(name, says):
    with pytest.raises(BadInput, match=says):
        instrument(name)


@pytest.mark.parametrize("capo", [-1, 14])
def test_a_capo_that_leaves_no_room_is_told(capo):
    with pytest.raises(BadInput, match="frets 0 to 13"):
        instrument("ukulele", capo)


def test_a_larger_hand_reaches_further_and_reach_goes_beyond_comfort():
    hands = [HANDS[name] for name in ("small", "medium", "large")]
    for name in ("comfort_12", "comfort_14", "comfort_24", "max_12", "max_14", "max_24"):
        spans = [getattr(one, name) for one in hands]
        assert spans == sorted(set(spans))
    for one in hands:
        assert one.comfort_12 < one.comfort_24 < one.comfort_14
        assert one.max_12 > one.comfort_12 and one.max_24 > one.comfort_24
        assert one.max_14 > one.comfort_14


def test_a_measured_hand():
    assert hand("own:34,74,53").comfort_14 == 74.0
    for wrong in ("own:", "own:1,2,3", "own:80,60,50", "huge"):
        with pytest.raises(BadInput):
            hand(wrong)
