"""Circles are for strings: what the score prints, what the teacher asks for, and nothing else.

Circled string numbers, B for a barre and ½B for a half one: common practice, no source.
The studies are those of ``tests/data/guitar-editions``.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from functools import cache
from pathlib import Path

import pytest
from lxml import etree

from tests.fingering.build import piece as build
from workbench.engraving.app import ensure_gui
from workbench.engraving.drawing.flatten import Flat
from workbench.engraving.drawing.render import Engraver
from workbench.engraving.mei.document import to_mei
from workbench.engraving.options import EVERY, PRINTED, MeiOptions
from workbench.engraving.strip import Strip
from workbench.fingering.engine import solve
from workbench.fingering.types import Barre, Fingering, Pin
from workbench.handout.options import HandoutOptions
from workbench.handout.sheets.page import Handout
from workbench.instrument.table import hand, instrument
from workbench.music.model import Piece, WrittenFingers
from workbench.music.reading.score import read_score
from workbench.teaching.lessons.lesson import BarNote, Lesson
from workbench.ui.score.bar import VOICE_INKS

EDITIONS = Path(__file__).parents[1] / "data" / "guitar-editions"
GUITAR, UKULELE = instrument("guitar"), instrument("ukulele")
SVG = "{http://www.w3.org/2000/svg}"
MEI = "{http://www.music-encoding.org/ns/mei}"


@pytest.fixture(scope="module", autouse=True)
def application():
    ensure_gui()


@cache
def fingered(music: Piece, pins: tuple[Pin, ...] = ()) -> Fingering:
    return solve(music, UKULELE, hand("medium"), pins=pins)


def drawn(music: Piece, pins: tuple[Pin, ...] = (), **options) -> Flat:
    mei = to_mei(music, fingered(music, pins), UKULELE, MeiOptions(**options))
    return Engraver().pages(mei, None)[0]


def circles(flat: Flat) -> dict[str, str]:
    """What stands in a circle, by the id of its group."""
    root = etree.fromstring(flat.svg)
    found = {}
    for ring in root.iter(f"{SVG}circle"):
        group = ring.getparent()
        found[group.get("id")] = "".join(group.itertext()).strip()
    return found


MUSIC = build("C5:1 D5:1 E5:1 F5:1")


def test_a_teaching_note_stands_on_a_sheet_and_in_no_circle():
    flat = drawn(MUSIC, marks=((0, 1), (0, 2)))
    assert circles(flat) == {}
    texts = ["".join(t.itertext()) for t in etree.fromstring(flat.svg).iter(f"{SVG}text")]
    assert {"1", "2"} <= set(texts)


def test_a_string_number_of_the_score_is_printed_as_long_as_it_is_played_there():
    ids = [n.id for n in MUSIC.notes]
    written = (WrittenFingers(ids[0], string=2), WrittenFingers(ids[1], string=3))
    music = replace(MUSIC, written=written)
    pins = (Pin(ids[0], string=2), Pin(ids[1], string=1))
    assert circles(drawn(music, pins)) == {f"sn-{ids[0]}": "2"}
    assert circles(drawn(music, pins, strings="")) == {}


def test_a_published_study_keeps_its_string_numbers():
    piece = read_score(EDITIONS / "carcassi-op26-03.mxl")
    printed = {f"sn-{w.note}": str(w.string) for w in piece.written if w.string}
    assert len(printed) > 10
    systems = Engraver().systems(piece, None, GUITAR, MeiOptions(tab=False), 16000.0)
    shown = {k: v for s in systems for k, v in circles(s.flat).items()}
    assert shown == printed


def test_the_teacher_asks_for_them_where_a_note_is_elsewhere_than_at_sight():
    ids = [n.id for n in MUSIC.notes]
    pins = tuple(Pin(i, string=s) for i, s in zip(ids, (1, 2, 2, 1), strict=True))
    assert circles(drawn(MUSIC, pins)) == {}
    asked = circles(drawn(MUSIC, pins, strings=EVERY))
    assert asked[f"sn-{ids[1]}"] == "2"
    assert f"sn-{ids[2]}" not in asked, "the tune stays on the string"
    assert f"sn-{ids[3]}" not in asked, "its usual string"


def test_the_page_prints_them_where_its_option_says_so():
    ids = [n.id for n in MUSIC.notes]
    pins = tuple(Pin(i, string=s) for i, s in zip(ids, (1, 2, 2, 1), strict=True))
    lesson = Lesson("l", "Study", MUSIC, "ukulele", pins=pins,
                    notes=(BarNote("n", "sound", "Listen.", 0, 0),))  # fmt: skip
    told = fingered(MUSIC, pins)
    for asked, wanted in ((False, 0), (True, 1)):
        handout = Handout(lesson, told, HandoutOptions(plan=False, strings=asked))
        assert sum(len(circles(s.flat)) for s in handout.systems()) == wanted
    assert PRINTED != EVERY


@pytest.mark.parametrize(
    ("strings", "player", "sign"),
    [((1, 2), GUITAR, "½B V"), ((1, 2, 3, 4), GUITAR, "½B V"), ((1, 2, 3, 4, 5), GUITAR, "B V"),
     ((1, 2, 3, 4, 5, 6), GUITAR, "B V"), ((1, 2, 3), UKULELE, "½B V"),
     ((1, 2, 3, 4), UKULELE, "B V")],
)  # fmt: skip
def test_half_and_full_barre_are_told_apart(strings, player, sign):
    told = fingered(MUSIC)
    bar = replace(told.bars[0], barres=(Barre(Fraction(0), 5, strings),))
    mei = to_mei(MUSIC, replace(told, bars=(bar,)), player).mei
    assert [d.text for d in etree.fromstring(mei.encode()).iter(f"{MEI}dir")] == [sign]


def test_printed_slurs_stay():
    piece = read_score(EDITIONS / "jolyd_tyrolienne.mxl")
    slurred = sum(n.slur_start for n in piece.notes)
    assert slurred > 10
    mei = etree.fromstring(to_mei(piece, None, GUITAR).mei.encode())
    assert len(list(mei.iter(f"{MEI}slur"))) == slurred


def test_one_fermata_stands_over_a_moment():
    music = build("C5:1 E5:1|C4:1 C4:1|E4:1 E4:1")
    notes = tuple(
        replace(n, articulations=("fermata",)) if n.onset == 1 else n for n in music.bars[0].notes
    )
    music = replace(music, bars=(replace(music.bars[0], notes=notes),))
    mei = etree.fromstring(to_mei(music).mei.encode())
    assert len(list(mei.iter(f"{MEI}fermata"))) == 1


def test_voices_past_four_have_inks_of_their_own():
    music = build("C5:4|A4:4|F4:4|E4:4|D4:4|C4:4")
    ids = [next(n.id for n in music.notes if n.voice == v) for v in range(1, 7)]
    for inks in VOICE_INKS.values():
        assert len(set(inks)) == len(inks) >= 5
        image = Strip(1200.0, ink="#111111", voices=inks).image(music)
        svg = etree.fromstring(image.placed[0].system.flat.svg)
        groups = {g.get("id"): g for g in svg.iter(f"{SVG}g")}
        fills = [ink_of(groups[i]) for i in ids]
        assert fills[0] is None
        assert None not in fills[1:] and len(set(fills[1:])) == 5


def ink_of(group) -> str | None:
    """The ink of its own that a group or one around it has."""
    own = (g.get("data-ink") for g in (group, *group.iterancestors()))
    return next((i for i in own if i), None)
