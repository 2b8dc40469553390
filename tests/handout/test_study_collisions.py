"""The published guitar studies as they are printed: no rest and no finger lies on anything.

The studies are those of ``tests/data/guitar-editions`` (their sources stand in its README).
"""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from pathlib import Path

import pytest
from music21 import corpus

from tests.handout.collisions import collisions, rest_collisions
from workbench.engraving.drawing.render import Engraver, SystemDrawing
from workbench.engraving.options import MeiOptions
from workbench.engraving.paint import PaintedSystem
from workbench.fingering.engine import solve
from workbench.fingering.types import Fingering
from workbench.handout.sheets.page import Handout, HandoutOptions
from workbench.instrument.table import hand, instrument
from workbench.music.model import Piece
from workbench.music.reading.score import read_score
from workbench.teaching.lessons.lesson import Lesson

STUDIES = sorted((Path(__file__).parents[1] / "data" / "guitar-editions").glob("*.mxl"))
GUITAR = instrument("guitar")
WIDTHS = {"normal": 16500.0, "large": 12700.0}  # engraving units of a line of the page


@cache
def study(name: str) -> Piece:
    return read_score(next(f for f in STUDIES if f.stem == name))


def beginning(name: str, bars: int) -> Piece:
    piece = study(name)
    return replace(piece, bars=piece.bars[:bars])


def rests_on_signs(piece: Piece, size: str) -> list[str]:
    drawn = Engraver().systems(piece, None, GUITAR, MeiOptions(tab=False), WIDTHS[size])
    return [c for s in drawn for c in rest_collisions(s.flat)]


@cache
def fingered(name: str, bars: int) -> Fingering:
    return solve(beginning(name, bars), GUITAR, hand("medium"))


def on_the_page(name: str, bars: int, large: bool) -> list[str]:
    """Collisions of rests and fingers on the systems of the handout of so many bars."""
    lesson = Lesson("study", "Study", beginning(name, bars), "guitar")
    fingering = fingered(name, bars)
    handout = Handout(lesson, fingering, HandoutOptions(plan=False, large=large))
    systems = handout.systems()
    return [c for s in systems for c in (*rest_collisions(s.flat), *collisions(s))]


def test_there_are_studies_to_look_at() -> None:
    assert len(STUDIES) == 43
    crowded = beginning("air-varie", 8)
    assert max(len({n.voice for n in b.notes}) for b in crowded.bars) >= 3


@pytest.mark.parametrize("size", sorted(WIDTHS))
@pytest.mark.parametrize("name", ["air-varie", "carcassi-op1n01", "sor-op35-no7"])
def test_rests_of_three_and_more_voices_stand_free(name, size) -> None:
    assert rests_on_signs(beginning(name, 16), size) == []


def test_rests_of_two_lengths_at_one_moment_keep_clear_with_their_dots() -> None:
    """The last bar of these has a dotted quarter rest and an eighth rest on beat 4."""
    assert rests_on_signs(beginning("sor-op35-no7", 10), "normal") == []


def test_rests_of_five_voices_stand_free_and_whole() -> None:
    """A madrigal of Monteverdi (music21's corpus), its five parts on one staff: a rest finds
    room only below all else, and the picture reaches down to it."""
    piece = read_score(corpus.getWork("madrigal.3.1.mxl"), parts="all")
    piece = replace(piece, bars=piece.bars[:14])
    assert max(len({n.part for n in bar.notes}) for bar in piece.bars) == 5
    drawn = Engraver().systems(piece, None, GUITAR, MeiOptions(tab=False), WIDTHS["normal"])
    assert [c for s in drawn for c in rest_collisions(s.flat)] == []
    for one in drawn:
        system = PaintedSystem(SystemDrawing(one.flat, 0, 0))
        rests = [system.rect(x) for x in one.flat.ids if x.startswith("rest-")]
        assert all(r.bottom() <= one.flat.height for r in rests if r is not None)


@pytest.mark.parametrize("large", [False, True])
def test_rests_and_fingers_of_a_crowded_study_stand_free(large) -> None:
    assert on_the_page("air-varie", 6, large) == []


@pytest.mark.slow
@pytest.mark.parametrize("large", [False, True])
@pytest.mark.parametrize("name", [f.stem for f in STUDIES])
def test_rests_and_fingers_of_every_study_stand_free(name, large) -> None:
    assert on_the_page(name, len(study(name).bars), large) == []
