"""Ranking keys: what lies under the hand comes first, and the figures are real."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.arranging.make import piece
from tests.arranging.proof import shortened
from workbench.arranging.arrange import arrange
from workbench.arranging.keys import LEADING, by_key, candidate_keys, excerpt
from workbench.arranging.options import Options
from workbench.arranging.search import Search
from workbench.arranging.sounds import texture
from workbench.arranging.weights import Wishes
from workbench.arranging.words import key_reason
from workbench.fingering.engine import solve
from workbench.fingering.types import Settings
from workbench.instrument.table import hand, instrument
from workbench.music.errors import BadInput
from workbench.music.model import Key
from workbench.music.reading.score import read_score

STUDIES = Path(__file__).parents[1] / "data" / "guitar-editions"

UKULELE = instrument("ukulele")
MEDIUM = hand("medium")
TUNE = piece("C#4 E#4 G#4 A#4 | G#4 E#4 C#4:2 | F#4 A#4 G#4 E#4 | D#4:2 C#4:2", key=Key(7, "major"))


@pytest.fixture(scope="module")
def ranked():
    return by_key(candidate_keys(TUNE, UKULELE, MEDIUM))


def test_all_twelve_keys_are_there_once(ranked):
    assert len({c.transposition % 12 for c in ranked}) == 12


def test_the_key_of_the_open_strings_comes_first(ranked):
    """C, F and G are where ukulele books begin (common practice, no source)."""
    assert ranked[0].key == "C major"
    place = [c.transposition % 12 for c in ranked].index(0)
    assert place > 2
    assert "open strings" in key_reason(ranked[0])


def test_leading_keys_rest_on_a_real_fingering(ranked):
    for candidate in ranked[:LEADING]:
        assert candidate.fingered
        placed = arrange(TUNE, UKULELE, key=candidate.key)
        assert placed.transposition == candidate.transposition
        cost = solve(placed.piece, UKULELE, MEDIUM).cost
        assert candidate.effort == round(cost / 1000 / len(placed.piece.notes), 3)
    assert not all(c.fingered for c in ranked)


def test_every_octave_that_holds_the_tune_is_ranked():
    tune = piece("C4 E4 G4 E4")
    moves = {c.transposition for c in candidate_keys(tune, UKULELE, MEDIUM)}
    # from C4 itself to the G string's twelfth fret: an octave and a half of room
    assert moves == set(range(15))
    guitar = {c.transposition for c in candidate_keys(tune, instrument("guitar"), MEDIUM)}
    assert min(guitar) == 40 - 60 and max(guitar) == 76 - 67


def test_the_ranking_grows_and_ends_as_it_is_returned():
    seen = []
    got = candidate_keys(TUNE, UKULELE, MEDIUM, growing=seen.append)
    assert [len(one) for one in seen[:3]] == [1, 2, 3]
    assert seen[-1] == got
    assert all(list(one) == sorted(one, key=lambda c: (c.cost, abs(c.transposition)))
               for one in seen)  # fmt: skip


def test_lost_and_changed_notes_are_counted():
    wide = piece("C5 G4 E4 C4 | C5 G4 E4 C4", "C3:4 | C2:4")
    for candidate in candidate_keys(wide, UKULELE, MEDIUM)[:4]:
        placed = arrange(wide, UKULELE, transpose=candidate.transposition)
        assert placed.transposition == candidate.transposition
        out = {c.note for c in placed.changes if c.kind == "dropped"}
        other = {c.note for c in placed.changes if c.note} - out
        assert candidate.unplayable >= len(out)
        assert candidate.changed == len(other)


@pytest.mark.parametrize("name", ["sor-op35-no13", "sor-op60-12"])
def test_a_guitar_study_is_offered_a_fourth_up(name):
    """The shapes of the guitar's four upper strings (common practice, no source)."""
    study = read_score(STUDIES / f"{name}.mxl")
    first = by_key(candidate_keys(study, instrument("ukulele-low-g"), MEDIUM))[:3]
    assert 5 in [c.transposition for c in first]


def test_guitar_music_keeps_its_shapes_a_fourth_up_on_a_ukulele():
    study = read_score(STUDIES / "sor-op35-no13.mxl")
    kept = {
        name: Search(texture(study), Options(instrument(name), MEDIUM, Wishes())).shapes_kept
        for name in ("ukulele", "ukulele-low-g", "baritone-ukulele", "mandolin", "guitar")
    }
    assert kept == {
        "ukulele": 5, "ukulele-low-g": 5, "baritone-ukulele": 0, "mandolin": None, "guitar": None,
    }  # fmt: skip
    song = Search(texture(TUNE), Options(UKULELE, MEDIUM, Wishes()))
    assert song.shapes_kept is None, "a tune alone is nobody's shapes"
    ranked = candidate_keys(shortened(study, 4), UKULELE, MEDIUM)
    assert [c.transposition for c in ranked if c.shapes] == [5]
    said = [key_reason(c) for c in ranked if c.shapes]
    assert all("shapes are those of the guitar's upper strings" in words for words in said)


def test_a_minor_piece_is_offered_minor_keys():
    sad = piece("A4 C5 B4 A4", key=Key(0, "minor"))
    assert all(c.key.endswith("minor") for c in candidate_keys(sad, UKULELE, MEDIUM))


def test_a_long_piece_is_measured_on_an_excerpt():
    long = piece(" | ".join(["C4 E4 G4 E4"] * 20 + ["C4:1/2 E4:1/2 G4:1/2 A4:1/2 G4:2"] * 6))
    part = excerpt(long)
    assert [bar.index for bar in part.bars] == list(range(12))
    assert len(part.bars[-1].notes) == 5  # the densest bars are in it


def test_progress_is_told():
    seen = []
    candidate_keys(TUNE, UKULELE, MEDIUM, progress=lambda done, of: seen.append((done, of)))
    assert [done for done, _ in seen] == list(range(1, len(seen) + 1))
    assert len(seen) > 12 and all(done <= of for done, of in seen)


def test_a_piece_without_notes_is_refused():
    with pytest.raises(BadInput, match="no notes"):
        candidate_keys(piece("- - - -"), UKULELE, MEDIUM)


def test_the_level_of_the_student_is_heard():
    beginner = Settings(level="beginner")
    best = candidate_keys(TUNE, UKULELE, MEDIUM, settings=beginner)[0]
    placed = arrange(TUNE, UKULELE, transpose=best.transposition).piece
    cost = solve(placed, UKULELE, MEDIUM, settings=beginner).cost
    assert best.effort == round(cost / 1000 / len(placed.notes), 3)


def test_a_tune_at_singing_pitch_is_offered_an_octave_lower_on_the_guitar():
    """Guitar music sounds an octave below where it is sung (common practice, no source)."""
    guitar = instrument("guitar")
    tune = piece("C5 D5 E5 F5 | G5 A5 G5 E5 | F5 D5 E5 C5")
    own = next(c for c in by_key(candidate_keys(tune, guitar, MEDIUM)) if c.key == "C major")
    assert own.transposition == -12
    assert arrange(tune, guitar, key="C").transposition == -12


def test_a_tune_that_lies_well_stays_in_its_octave():
    ukulele = instrument("ukulele")
    assert arrange(piece("C4 D4 E4 F4 | G4 A4 G4 E4"), ukulele, key="C").transposition == 0
