"""The arranging search against OR-Tools CP-SAT, and the least of its promises by hand."""

from __future__ import annotations

from itertools import product

import pytest
from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st

from tests.arranging.cp_arranging import least_cost
from tests.arranging.make import piece, pieces
from workbench.arranging.options import HeardSound, Options
from workbench.arranging.search import EXACT, QUICK, THOROUGH, Search
from workbench.arranging.sounds import BASS, TUNE, texture
from workbench.arranging.weights import Wishes
from workbench.instrument.table import hand, instrument

MEDIUM = hand("medium")
UKULELE, LOW_G, GUITAR = map(instrument, ("ukulele", "ukulele-low-g", "guitar"))
SMALL = [
    piece("E4 G4 A4 G4", "C4:2 C4:2"),
    piece("C5:2 A4 G4", "E4 F4 E4 D4", "C4:4"),
    piece("G4 - A4 B4", "E4 C4 F4 D4", "C3:2 G2:2"),
    piece("E5 D5 C5 A4", "C3+G3+E4:2 A2+E3+C4:2"),
    piece("A4:3 G4", "F3 C4 F4 E4", "F2:4"),
    piece("B4 A4 G4 F#4", "D4+G4:2 D4+A3:2", "G2:2 D3:2"),
]


@pytest.mark.parametrize("at", range(len(SMALL)))
@pytest.mark.parametrize("wood", [UKULELE, LOW_G], ids=["high G", "low G"])
@pytest.mark.parametrize("strict", ["playable", "easy"])
def test_a_small_phrase_is_laid_at_the_cost_cp_sat_proves_least(at, wood, strict):
    sounds = texture(SMALL[at])
    options = Options(wood, MEDIUM, Wishes(7, strict), small=4)
    got = Search(sounds, options).lay(0, EXACT)
    assert got is not None and got.proved
    assert got.cost == least_cost(sounds, options, 0)


@settings(max_examples=12, deadline=None, suppress_health_check=list(HealthCheck))
@given(pieces(lowest=57, highest=76, voices=2), st.integers(-2, 5))
def test_drawn_phrases_as_well(made, semitones):
    sounds = texture(made)
    assume(len(sounds.sounds) <= 8 and all(len(s) <= 3 for s in sounds.struck))
    options = Options(UKULELE, MEDIUM, Wishes(5))
    search = Search(sounds, options)
    assume(all(choice == [0] for choice in search.phrase_choices(semitones)))
    got = search.lay(semitones, EXACT)
    assert got is not None and got.proved
    assert got.cost == least_cost(sounds, options, semitones)


@settings(max_examples=25, deadline=None)
@given(pieces(lowest=45, highest=81, voices=3), st.integers(-5, 7))
def test_looking_less_wide_never_finds_less(made, semitones):
    search = Search(texture(made), Options(LOW_G, MEDIUM, Wishes()))
    quick, thorough = search.lay(semitones, QUICK), search.lay(semitones, THOROUGH)
    assert quick is not None and thorough is not None
    assert thorough.cost <= quick.cost
    assert search.lay(semitones, QUICK, most=quick.cost) is not None
    assert quick.cost == 0 or search.lay(semitones, QUICK, most=-1) is None


def test_the_roles_of_a_guitar_texture():
    """Tune above, a broken chord in the middle, a bass that is held."""
    sounds = texture(piece("E5:2 D5:2", "- G4 - G4", "C3:2 G3:2"))
    roles = {(s.midi, s.start): s.role for s in sounds.sounds}
    assert roles[76, 0] == TUNE and roles[74, 2] == TUNE
    assert roles[48, 0] == BASS and roles[55, 2] == BASS
    assert roles[67, 1] == "fifth"


def test_two_stems_of_one_note_are_one_sound():
    sounds = texture(piece("C5:2 D5:2", "C5 E4 D5 F4"))
    assert [len(s.notes) for s in sounds.sounds if s.start in (0, 2)] == [2, 2]
    assert all(s.role == TUNE for s in sounds.sounds if len(s.notes) == 2)


def test_a_lone_line_is_all_tune():
    sounds = texture(piece("C4 G4 E5 C4 | G3 E5 C4 G4"))
    assert {s.role for s in sounds.sounds} == {TUNE}


def test_the_tune_keeps_one_octave_inside_a_phrase():
    """Four bars below the instrument, then four bars inside it."""
    made = piece(" | ".join(["C3 D3 E3 F3"] * 4 + ["C5 D5 E5 F5"] * 4), "C3:4")
    search = Search(texture(made), Options(LOW_G, MEDIUM, Wishes()))
    laid = search.lay(0)
    assert laid is not None
    assert laid.phrase_octaves[0] >= 1 and len(laid.phrase_octaves) >= 2
    for m, struck in enumerate(search.texture.struck):
        for i in struck:
            if search.texture.sounds[i].role == TUNE:
                assert laid.octaves[i] == laid.phrase_octaves[search.texture.phrase[m]]


def test_every_way_of_a_moment_is_listed_wherever_on_the_neck_it_lies():
    options = Options(GUITAR, MEDIUM, Wishes())
    heard = (HeardSound(57, BASS), HeardSound(65, "fifth", 69, 4), HeardSound(69, TUNE))
    ways, whole = options.ways(heard)
    assert whole
    plain = set()
    for places in product(*([None, *GUITAR.places(h.midi)] for h in heard)):
        down = tuple(sorted(p for p in places if p))
        apart = len({s for s, _ in down}) == len(down)
        if apart and all(f <= 12 for _, f in down) and options.shapes.ease(down) is not None:
            plain.add(places)
    kept = {w.places for w in ways if all(k in (None, 0) for k in w.octaves)}
    assert kept == plain
    assert ((4, 7), (2, 6), (1, 5)) in kept


def test_a_phrase_high_on_the_neck_goes_an_octave_lower_where_the_others_cannot():
    low, high = "C4 D4 E4 F4", "F5 G5 A5 G5"
    made = piece(" | ".join([low] * 4 + [high] * 4))
    laid = Search(texture(made), Options(UKULELE, MEDIUM, Wishes())).lay(0)
    assert laid is not None and laid.phrase_octaves == (0, -1)
    alone = Search(texture(piece(" | ".join([high] * 8))), Options(UKULELE, MEDIUM, Wishes()))
    laid = alone.lay(0)  # the whole an octave lower is another transposition
    assert laid is not None and laid.phrase_octaves == (0, 0)


def test_thirds_low_down_are_opened():
    """Close thirds below the small octave are muddy (low interval limits: common practice,
    no source); the same chord an octave higher stays close."""
    options = Options(GUITAR, MEDIUM, Wishes())

    def best(bass: int) -> list[int]:
        heard = (
            HeardSound(bass, BASS, 64, strong=True),
            HeardSound(bass + 4, "third", 64),
            HeardSound(64, TUNE),
        )
        way = options.ways(heard)[0][0]
        return [h.midi + 12 * k for h, k in zip(heard, way.octaves, strict=True) if k is not None]

    assert best(48) == [48, 52, 64]
    low = best(41)
    assert 41 in low and 45 not in low and any(m % 12 == 9 for m in low)


def test_the_bass_lies_inside_the_chord_only_on_a_high_fourth_string():
    heard = (HeardSound(48, BASS, 76), HeardSound(55, "fifth", 76), HeardSound(64, TUNE))
    for wood in (UKULELE, LOW_G, GUITAR):
        options = Options(wood, MEDIUM, Wishes())
        over = "bass_over" if wood.reentrant else "bass_inside"
        inside = (1, 0, 0)  # the bass an octave up, above the fifth
        for way in options.ways(heard)[0]:
            if way.octaves == inside:
                assert way.cost >= options.weights[over]
    assert (
        Options(GUITAR, MEDIUM, Wishes()).weights["bass_inside"]
        > 2 * Options(UKULELE, MEDIUM, Wishes()).weights["bass_over"]
    )
