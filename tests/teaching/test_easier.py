"""Easier and harder versions of one score."""

from __future__ import annotations

import pytest

from tests.arranging.make import piece
from workbench.instrument.table import hand, instrument
from workbench.music.errors import BadInput
from workbench.teaching.grading.easier import aimed, differs, versions

PAGE = piece(
    "E5 G5 E5 C5 | C5 E5 D5 C5 | B4 C5 D5 B4 | C5:4",
    "G4+C5 E4 G4+C5 E4 | E4+G4 C4 F4+G4 E4 | D4+G4 E4+G4 F4+G4 D4+F4 | E4+G4:4",
    "C3:2 G3:2 | C3:4 | G3 C3 B2 G3 | C3:4",
)


@pytest.fixture(scope="module")
def found():
    return versions(PAGE, instrument("ukulele-low-g"), hand("medium"))


def test_they_stand_in_one_key_and_get_fuller_and_harder(found):
    assert len({v.placed.transposition for v in found}) == 1 and len(found) >= 3
    assert [v.grade.score for v in found] == sorted(v.grade.score for v in found)
    notes = [len(v.placed.piece.notes) for v in found]
    assert notes == sorted(set(notes)), "none is harder without being fuller"
    assert found[0].wishes.strict == "sparse" and found[-1].wishes.strict != "easy"


def test_no_version_leaves_out_the_tune_or_what_begins_a_bar_alone(found):
    """In the sparsest the tune is whole in its octave, and bars begin with a bass."""
    sparsest = found[0].placed
    assert sparsest.kept.tune == 1
    for bar in sparsest.piece.bars:
        assert len([n for n in bar.notes if n.onset == 0]) > 1


def test_a_low_version_that_would_break_the_tune_is_not_offered():
    """A5 is on no fret up to the fifth of a ukulele."""
    high = piece("C5 A5 E5 C5 | C5:2 G4:2", "C4:2 E4:2 | C4:4")
    low = [v for v in versions(high, instrument("ukulele"), hand("medium"), transpose=0)
           if v.wishes.top_fret < 12]  # fmt: skip
    assert not low


def test_the_fullest_that_asks_no_more_is_aimed_at(found):
    top = max(v.grade.number for v in found)
    assert len(aimed(found, 8).placed.piece.notes) == max(len(v.placed.piece.notes) for v in found)
    assert aimed(found, top).grade.number <= top
    least = min(v.grade.number for v in found)
    if least:
        assert aimed(found, least - 1) is found[0]
    with pytest.raises(BadInput, match="0 to 8"):
        aimed(found, 9)


def test_what_differs_is_told_by_bar(found):
    """Notes counted by hand from the two pieces."""
    easy, full = (found[0], found[-1])
    assert differs(full.placed.piece, full.placed.piece) == ()
    told = differs(easy.placed.piece, full.placed.piece)
    for bar, other in zip(easy.placed.piece.bars, full.placed.piece.bars, strict=True):
        more = {n.id for n in other.notes} - {n.id for n in bar.notes}
        line = next((t for t in map(str, told) if t.startswith(f"Bar {bar.number}:")), "")
        assert (f"{len(more)} note" in line and "more" in line) == bool(more)
