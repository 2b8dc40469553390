"""One place of the staff struck at once by two accidentals: told, where and how often."""

from __future__ import annotations

from music21 import corpus

from tests.fingering.build import piece
from tests.fingering.editions import STUDIES
from workbench.music.reading.clashes import clashes
from workbench.music.reading.score import read_score
from workbench.music.telling.warnings import warning, warnings


def test_a_clash_is_told_with_its_place_and_once() -> None:
    one = clashes(piece("C4:1 E4+Eb4:1 r:2"))
    assert [warning(w) for w in one] == [
        "Bar 1, beat 2: E♭4 and E4 begin together; an accidental may be wrong in the score. "
        "Compare that bar with the print."
    ]
    (two,) = clashes(piece("C4:1 E4+Eb4:1 r:1 G4+G#4:1", "F4+F#4:4"))
    assert warning(two).startswith("In 3 places ") and "bar 1, beat 2;" in warning(two)


def test_what_composers_write_is_no_clash() -> None:
    assert not clashes(piece("E4+F4:1 B3+C4:1 E4+Eb5:1 F#4+Gb4:1"))
    assert not clashes(piece("E4:1 Eb4:1 E4:2"))
    chorale = next(p for p in corpus.getPaths() if p.name == "bwv66.6.mxl")
    assert not any("begin together" in w for w in warnings(read_score(chorale, parts="all")))


def test_an_edition_that_lost_an_accidental_in_one_of_two_stems() -> None:
    """Carcassi op. 26 no. 3 (Mutopia Project; README beside it): bars 17 and 19 have D#3 with
    one stem and D3 with the other."""
    (told, *_) = warnings(read_score(STUDIES / "carcassi-op26-03.mxl"))
    assert told.startswith("In 2 places ") and "D3 and D♯3 in bar 17, beat 1;" in told
