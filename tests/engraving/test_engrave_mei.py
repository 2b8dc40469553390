"""The MEI, read back by Verovio: the outside check on times, pitches and warnings."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
import verovio
from lxml import etree

from tests.arranging.make import piece as arranged
from tests.engraving.small_pieces import (
    bar,
    compound,
    fingered,
    overlapping,
    piece,
    tied_over,
    tuplets,
    two_voices,
    walk,
)
from workbench.engraving.mei.document import to_mei
from workbench.engraving.options import MeiOptions
from workbench.instrument.table import instrument
from workbench.music.errors import BadInput
from workbench.music.model import Piece

F = Fraction
MEI = "{http://www.music-encoding.org/ns/mei}"
XML_ID = "{http://www.w3.org/XML/1998/namespace}id"


PIECES = [walk(), tied_over(), tuplets(), two_voices(), compound(), overlapping()]
NAMES = [p.title for p in PIECES]


def load(mei: str) -> verovio.toolkit:
    verovio.enableLog(verovio.LOG_WARNING)
    kit = verovio.toolkit()
    kit.setOptions({"adjustPageHeight": True, "breaks": "auto", "xmlIdSeed": 1})
    assert kit.loadData(mei)
    return kit


@pytest.mark.parametrize("made", PIECES, ids=NAMES)
@pytest.mark.parametrize("name", ["ukulele", "guitar", None])
def test_verovio_draws_it_without_a_warning(made, name, capfd) -> None:
    player = instrument(name) if name else None
    fingering = fingered(made, player) if player else None
    kit = load(to_mei(made, fingering, player).mei)
    for page in range(1, kit.getPageCount() + 1):
        kit.renderToSVG(page)
    assert kit.getLog() == ""
    assert "Warning" not in capfd.readouterr().err


def test_the_log_would_show_a_fault(capfd) -> None:
    mei = to_mei(two_voices()).mei.replace("<staffDef", "<odd/><staffDef", 1)
    kit = load(mei)
    kit.renderToSVG(1)
    assert "odd" in kit.getLog() + capfd.readouterr().err


@pytest.mark.parametrize("made", PIECES, ids=NAMES)
def test_verovio_hears_every_note_at_its_time_and_pitch(made) -> None:
    flat = replace(
        made,
        bars=tuple(
            replace(b, endings=(), repeat_start=False, repeat_end=False, jump="", fine=False)
            for b in made.bars
        ),
    )
    kit = load(to_mei(flat).mei)
    heard = {i: e["qstamp"] for e in kit.renderToTimemap() for i in e.get("on", ())}
    ended = {i: e["qstamp"] for e in kit.renderToTimemap() for i in e.get("off", ())}
    for written, start in zip(flat.bars, flat.starts, strict=True):
        for note in written.notes:
            assert heard[note.id] == pytest.approx(float(start + note.onset), abs=1e-3)
            end = float(start + note.onset + note.duration)
            parts = [i for i in ended if i == note.id or i.startswith(f"{note.id}.")]
            assert max(ended[i] for i in parts) == pytest.approx(end, abs=1e-3)
            assert kit.getMIDIValuesForElement(note.id)["pitch"] == note.midi


@pytest.mark.parametrize(
    ("marks", "line"),
    [
        ({"double_bar": True}, "dbl"),
        ({}, None),
        ({"double_bar": True, "repeat_end": True}, "rptend"),
    ],
)
def test_a_double_bar_line_ends_the_bar_that_has_one(marks, line) -> None:
    made = piece([bar(0, "C5:4", **marks), bar(1, "D5:4")])
    first, last = etree.fromstring(to_mei(made).mei.encode()).iter(f"{MEI}measure")
    assert first.get("right") == line
    assert last.get("right") == "end"


@pytest.mark.parametrize("made", PIECES, ids=NAMES)
def test_each_layer_fills_its_bar(made) -> None:
    """Durations in the MEI, added up by hand, equal the bar's length."""
    player = instrument("ukulele")
    root = etree.fromstring(to_mei(made, fingered(made, player), player).mei.encode())
    lengths = {f"bar-{b.index}": b.length for b in made.bars}
    for measure in root.iter(f"{MEI}measure"):
        for layer in measure.iter(f"{MEI}layer"):
            total = sum(_sounding(e) for e in layer.iter() if _counts(e))
            whole = any(
                e.tag == f"{MEI}mRest" or (e.get("dur") == "1" and len(layer) == 1) for e in layer
            )
            assert whole or total == lengths[measure.get(XML_ID)]


def _counts(element) -> bool:
    return (
        element.get("dur") is not None
        and not element.get("grace")
        and element.tag.removeprefix(MEI) in ("note", "chord", "rest", "space", "tabGrp")
    )


def _sounding(element) -> Fraction:
    length = F(4, int(element.get("dur")))
    length *= 2 - F(1, 2 ** int(element.get("dots", "0")))
    for parent in element.iterancestors(f"{MEI}tuplet"):
        length *= F(int(parent.get("numbase")), int(parent.get("num")))
    return length


@pytest.mark.parametrize("made", PIECES, ids=NAMES)
def test_read_by_its_visible_signs_the_bar_gives_the_pitches(made) -> None:
    """A reader who sees only key signature and printed accidentals plays the right notes."""
    alters = {"s": 1, "f": -1, "n": 0, "x": 2, "ff": -2}
    root = etree.fromstring(to_mei(made).mei.encode())
    pitches = {n.id: n.pitch for n in made.notes}
    onsets = {n.id: n.onset for n in made.notes}
    for written in made.bars:
        measure = next(
            m for m in root.iter(f"{MEI}measure") if m.get(XML_ID) == f"bar-{written.index}"
        )
        sharps, flats = "FCGDAEB", "BEADGCF"
        fifths = written.key.fifths
        key = {s: 1 for s in sharps[:fifths]} if fifths > 0 else {s: -1 for s in flats[:-fifths]}
        state: dict[tuple[str, str], int] = {}
        heads = [n for n in measure.iter(f"{MEI}note") if n.get(XML_ID) in pitches]
        for head in sorted(heads, key=lambda n: onsets[n.get(XML_ID)]):
            place = (head.get("pname").upper(), head.get("oct"))
            if head.get("accid"):
                state[place] = alters[head.get("accid")]
            heard = state.get(place, key.get(place[0], 0))
            assert heard == pitches[head.get(XML_ID)].alter


def test_a_note_over_bar_lines_is_tied_with_numbered_ids() -> None:
    root = etree.fromstring(to_mei(tied_over()).mei.encode())
    heads = [n.get(XML_ID) for n in root.iter(f"{MEI}note") if n.get(XML_ID).startswith("long")]
    ties = [(t.get("startid"), t.get("endid")) for t in root.iter(f"{MEI}tie")]
    assert heads == ["long", "long.2", "long.3"]
    assert ties == [("#long", "#long.2"), ("#long.2", "#long.3")]


def test_a_passage_ends_its_ties_openly() -> None:
    found = to_mei(tied_over(), options=MeiOptions(first=0, last=0))
    root = etree.fromstring(found.mei.encode())
    assert [(tie.head, tie.incoming) for tie in found.ties] == [("long", False)]
    middle = to_mei(tied_over(), options=MeiOptions(first=1, last=1)).ties
    assert [(tie.head, tie.incoming) for tie in middle] == [("long.2", True), ("long.2", False)]
    assert len(list(root.iter(f"{MEI}measure"))) == 1


def test_marks_of_form_are_there() -> None:
    mei = to_mei(walk(), options=MeiOptions(marks=((2, 7),))).mei
    root = etree.fromstring(mei.encode())
    assert [e.get("label") for e in root.iter(f"{MEI}ending")] == ["1.", "2."]
    texts = ["".join(e.itertext()) for e in root.iter(f"{MEI}dir")]
    assert {"Fine", "D.C. al Fine", "[7]"} <= set(texts)
    assert ["".join(e.itertext()) for e in root.iter(f"{MEI}reh")] == ["A", "B"]
    assert ["".join(e.itertext()) for e in root.iter(f"{MEI}harm")] == ["F", "B♭7"]
    first = next(root.iter(f"{MEI}measure"))
    assert first.get("metcon") == "false"


def test_tablature_and_fingers_follow_the_fingering() -> None:
    player = instrument("ukulele")
    made = walk()
    fingering = fingered(made, player)
    found = to_mei(made, fingering, player)
    root = etree.fromstring(found.mei.encode())
    figures = {n.get(XML_ID): n for n in root.iter(f"{MEI}note") if n.get("tab.fret")}
    assert not list(root.iter(f"{MEI}fing")), "the engraver would set them far from their heads"
    marks = {mark.id: mark.text for mark in found.fingers}
    for one in (n for b in fingering.bars for n in b.notes if n.string is not None):
        figure = figures[f"t-{one.id}"]
        assert (figure.get("tab.course"), figure.get("tab.fret")) == (
            str(one.string),
            str(one.fret),
        )
        assert marks.get(f"fl-{one.id}") == (str(one.left) if one.left else None)
        assert marks[f"fr-{one.id}"] == one.right


def test_guitar_is_written_an_octave_up() -> None:
    for name, dis in (("guitar", "8"), ("baritone-ukulele", "8"), ("ukulele", None)):
        player = instrument(name)
        root = etree.fromstring(to_mei(walk(), None, player).mei.encode())
        assert next(root.iter(f"{MEI}clef")).get("dis") == dis


def test_a_piece_without_bars_is_refused_in_a_sentence() -> None:
    with pytest.raises(BadInput, match="no bars"):
        to_mei(Piece("Nothing", ()))


def test_rest_strokes_bear_a_sign_after_their_letter():
    from dataclasses import replace

    from tests.fingering.build import piece
    from workbench.fingering.engine import solve
    from workbench.fingering.types import Settings
    from workbench.instrument.table import hand, instrument

    music, ukulele = piece("A4:1 C5:1 A4:1"), instrument("ukulele")
    free = solve(music, ukulele, hand("medium"))
    rest = solve(music, ukulele, hand("medium"), settings=replace(Settings(), rest_strokes=True))
    assert not any("ˇ" in mark.text for mark in to_mei(music, free, ukulele).fingers)
    assert sum("ˇ" in mark.text for mark in to_mei(music, rest, ukulele).fingers) == 3


def test_a_chord_bears_one_slur_and_leaves_none_open():
    made = piece([bar(0, "C4+E4:1 F4:1 A4:1 B4:1")])
    ends = {0: {"slur_start": True}, 1: {"slur_stop": True}, 2: {"slur_start": True},
            3: {"slur_stop": True}}  # fmt: skip
    notes = tuple(replace(n, **ends[int(n.onset)]) for n in made.bars[0].notes)
    made = replace(made, bars=(replace(made.bars[0], notes=notes),))
    root = etree.fromstring(to_mei(made).mei.encode())
    by_id = {n.id: n.pitch.name for n in notes}
    drawn = [
        (by_id[s.get("startid")[1:]], by_id[s.get("endid")[1:]]) for s in root.iter(f"{MEI}slur")
    ]
    assert drawn == [("E4", "F4"), ("A4", "B4")]


def test_a_middle_voice_rests_unseen_while_others_sound() -> None:
    """Of three voices the middle one rests on beats 1 and 3; the others rest on beat 3."""
    made = arranged("C5 C5 - C5", "- E4 - E4", "C4 C4 - C4")
    root = etree.fromstring(to_mei(made).mei.encode())
    layers = root.findall(f".//{MEI}layer")[:3]
    shown = [[e.tag.removeprefix(MEI) for e in layer] for layer in layers]
    assert shown[0] == ["note", "note", "rest", "note"]
    assert shown[1] == ["space", "note", "space", "note"]
    assert shown[2] == ["note", "note", "space", "note"]
