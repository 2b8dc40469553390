"""MusicXML and MIDI written, held to the W3C schema and read back."""

from __future__ import annotations

import importlib.util
import io
import os
import zipfile
from dataclasses import dataclass, fields, replace
from fractions import Fraction
from pathlib import Path
from xml.etree import ElementTree

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from lxml import etree

from tests.music.outside import corpus_files
from tests.music.small_scores import piece, sounded
from workbench.arranging.arrange import arrange
from workbench.fingering.engine import solve
from workbench.fingering.pins.printed import printed_pins
from workbench.instrument.table import hand, instrument
from workbench.music.errors import BadInput
from workbench.music.model import Bar, ChordName, Key, Note, Piece, Pitch
from workbench.music.notation.values import exactly
from workbench.music.notation.values import written as values_of
from workbench.music.order.form import playing_order
from workbench.music.reading.score import read_score
from workbench.music.writing.score import musicxml_bytes, write_midi, write_musicxml
from workbench.teaching.lessons.demo import demo_lessons

F = Fraction


def note(name, onset, duration, pitch="C4", **rest):
    return Note(name, F(onset), F(duration), Pitch(pitch[0], 0, int(pitch[-1])), **rest)


def rich():
    """A pickup, tuplets, ties over bar lines, two voices, grace notes, signs of all kinds."""
    return Piece(
        "Rich & small",
        (
            Bar(index=0, number="0", time_signature=(3, 4), length=F(1),
                notes=(note("a", 0, 1, "G4", slur_start=True),), key=Key(-1),
                tempo=132.0, pickup=True, section="A"),
            Bar(index=1, number="1", time_signature=(3, 4), length=F(3),
                notes=(note("b", 0, 5, "C3", voice=2),
                note("g", 0, 0, "D5", grace=True),
                note("c", 0, F(1, 3), "E5", tuplet=(3, 2), slur_stop=True),
                note("d", F(1, 3), F(1, 3), "F5", tuplet=(3, 2)),
                note("e", F(2, 3), F(1, 3), "G5", tuplet=(3, 2), articulations=("staccato",)),
                note("f", 1, F(5, 4), "A5"), note("f2", 1, F(5, 4), "F5"),
            ), key=Key(-1), repeat_start=True, segno=True,
                chords=(ChordName(F(0), "F/C"), ChordName(F(2), "Bb7"))),
            Bar(index=2, number="2", time_signature=(3, 4), length=F(3),
                notes=(note("h", 2, F(1), "B4", articulations=("fermata",)),),
                key=Key(-1), endings=(1,), repeat_end=True, to_coda=False),
            Bar(index=3, number="3", time_signature=(3, 4), length=F(3),
                notes=(note("i", 0, 3),), key=Key(-1), endings=(2,), to_coda=True),
            Bar(index=4, number="4", time_signature=(2, 4), length=F(2),
                notes=(note("k", 0, F(4, 5), tuplet=(5, 4)),
                       note("l", F(4, 5), F(6, 5), "D4", tuplet=(5, 4))),
                key=Key(2, "minor"), jump="D.S. al Coda", double_bar=True),
            Bar(index=5, number="5", time_signature=(2, 4), length=F(2),
                notes=(), key=Key(2, "minor"), coda=True),
        ),
        "A. Composer", "An Arranger", Key(-1), 132.0,
    )  # fmt: skip


class Resolver(etree.Resolver):
    """The two small schemas that the W3C's imports, as far as scores use them."""

    def resolve(self, url, name, context):
        if not url.startswith("http"):
            return None
        xml = url.endswith("/xml.xsd")
        space = "http://www.w3.org/XML/1998/namespace" if xml else "http://www.w3.org/1999/xlink"
        names = ["lang", "space"] if xml else ["type", "href", "role", "title", "show", "actuate"]
        rows = "".join(f'<xs:attribute name="{n}" type="xs:string"/>' for n in names)
        return self.resolve_string(
            '<xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema" '
            f'targetNamespace="{space}">{rows}</xs:schema>', context,
        )  # fmt: skip


@pytest.fixture(scope="module")
def schema():
    """The MusicXML 4.0 schema of the W3C Music Notation Community Group (final report
    of June 2021), in the copy that the package musicxml 1.6 carries unchanged."""
    home = importlib.util.find_spec("musicxml").submodule_search_locations[0]
    path = Path(home) / "generate_classes" / "musicxml_4_0.xsd"
    assert "\nVersion 4.0\n" in path.read_text(encoding="utf-8")[:1000]
    parser = etree.XMLParser()
    parser.resolvers.add(Resolver())
    return etree.XMLSchema(etree.parse(str(path), parser))


def back(source, folder, name="out.musicxml", **options):
    write_musicxml(source, folder / name, **options)
    return read_score(folder / name)


def test_nothing_is_lost(tmp_path):
    source = rich()
    again = back(source, tmp_path)
    assert sounded(again) == sounded(source)
    for one, other in zip(source.bars, again.bars, strict=True):
        for field in ("number", "time_signature", "length", "key", "pickup", "repeat_start",
                      "repeat_end", "endings", "segno", "coda", "to_coda", "fine", "jump",
                      "section", "chords"):  # fmt: skip
            assert getattr(one, field) == getattr(other, field), (one.number, field)
        assert [
            (n.voice, n.tuplet, n.slur_start, n.slur_stop, n.articulations)
            for n in sorted(one.notes, key=lambda n: (n.onset, n.duration, n.pitch))
        ] == [
            (n.voice, n.tuplet, n.slur_start, n.slur_stop, n.articulations)
            for n in sorted(other.notes, key=lambda n: (n.onset, n.duration, n.pitch))
        ]
    assert (again.title, again.composer, again.arranger) == (
        "Rich & small", "A. Composer", "An Arranger",
    )  # fmt: skip
    assert again.tempo == 132 and playing_order(again) == playing_order(source)


def test_packed_and_plain_are_the_same(tmp_path):
    assert sounded(back(rich(), tmp_path, "out.mxl")) == sounded(rich())
    with zipfile.ZipFile(tmp_path / "out.mxl") as archive:
        assert archive.namelist()[0] == "META-INF/container.xml"


@pytest.mark.parametrize(
    "mark",
    [
        {"jump": "D.C."}, {"jump": "D.C. al Fine"}, {"jump": "D.C. al Coda"}, {"jump": "D.S."},
        {"jump": "D.S. al Fine"}, {"jump": "D.S. al Coda"}, {"repeat_end": True, "times": 3},
        {"fine": True}, {"section": "Verse"}, {"double_bar": True},
    ],
    ids=str,
)  # fmt: skip
def test_each_sign_comes_back(mark, tmp_path):
    source = piece({"segno": True}, {"to_coda": True}, mark, {"coda": True})
    again = back(source, tmp_path)
    for name, value in mark.items():
        assert getattr(again.bars[2], name) == value
    assert playing_order(again) == playing_order(source)


def test_the_schema_is_kept(schema):
    symbols = tuple(ChordName(F(i), t) for i, t in enumerate(("N.C.", "C#m7/G#", "Strange")))
    for source in (
        rich(),
        piece({"endings": (1, 2), "repeat_end": True}, {"endings": (3,)}, {"chords": symbols}),
    ):
        schema.assertValid(etree.fromstring(musicxml_bytes(source, Hand())))


def test_the_schema_refuses_what_is_wrong(schema):
    bad = musicxml_bytes(rich(), Hand()).replace(b"<string>2<", b"<string>two<")
    assert not schema.validate(etree.fromstring(bad))


@pytest.mark.parametrize("lesson", demo_lessons(), ids=lambda lesson: lesson.title)
def test_a_demo_lesson_comes_back_with_its_fingering(lesson, schema, tmp_path):
    neck = instrument(lesson.instrument, lesson.capo)
    fingering = solve(
        lesson.piece, neck, hand(lesson.hand), settings=lesson.settings, pins=lesson.pins
    )
    again = back(lesson.piece, tmp_path, fingering=fingering, instrument=neck)
    schema.assertValid(etree.parse(tmp_path / "out.musicxml"))
    assert sounded(again) == sounded(lesson.piece)
    assert playing_order(again) == playing_order(lesson.piece)
    for one, other in zip(lesson.piece.bars, again.bars, strict=True):
        for field in fields(Bar):
            if field.name not in ("notes", "tempo"):
                assert getattr(one, field.name) == getattr(other, field.name), (one.number, field)
        assert (other.tempo or again.tempo) == (one.tempo or lesson.piece.tempo)
    names = ("title", "composer", "arranger", "key", "tempo")
    for name in names:
        assert getattr(again, name) == getattr(lesson.piece, name)
    # the fingers, note by note: ids are dealt by place, so that they agree as well
    assert [n.id for n in again.notes] == [n.id for n in lesson.piece.notes]
    played = [n for bar in fingering.bars for n in bar.notes]
    assert {(w.note, w.string, w.fret, w.left, w.right) for w in again.written} == {
        (n.id, n.string, n.fret, n.left, n.right) for n in played
    }
    pins = printed_pins(again, neck, hand("medium")).pins
    assert {(p.note, p.string, p.fret, p.left, p.right) for p in pins} == {
        (n.id, n.string, n.fret, n.left, n.right) for n in played
    }


@pytest.mark.parametrize("name", ["bach/bwv66.6.mxl", "schoenberg/opus19/movement2.mxl"])
def test_corpus_scores_with_fingering_keep_the_schema(name, schema):
    import music21

    source = read_score(Path(music21.__file__).parent / "corpus" / name)
    schema.assertValid(etree.fromstring(musicxml_bytes(source, Hand())))


@pytest.mark.slow
def test_a_sample_of_the_corpus_keeps_the_schema_and_its_fingering(schema, tmp_path):
    """Every sixtieth score of music21's corpus, arranged, fingered, written, read back."""
    neck = instrument("guitar")
    done = 0
    for path in corpus_files()[::60]:
        try:
            source = arrange(read_score(path), neck).piece
        except BadInput:
            continue
        fingering = solve(source, neck, hand("medium"))
        again = back(source, tmp_path, fingering=fingering, instrument=neck)
        schema.assertValid(etree.parse(tmp_path / "out.musicxml"))
        places = {n.id: (n.string, n.fret, n.left) for b in fingering.bars for n in b.notes}
        kept = {w.note: (w.string, w.fret, w.left) for w in again.written}
        assert sounded(again) == sounded(source), path
        assert len(kept) == sum(p[0] is not None for p in places.values()), path
        done += 1
    assert done >= 20


def test_the_same_piece_gives_the_same_bytes():
    assert musicxml_bytes(rich()) == musicxml_bytes(rich())


@dataclass
class Played:
    string: int | None = 2
    fret: int | None = 3
    left: int | None = 4
    right: str | None = "m"
    shares: str | None = None


class Hand:
    """A fingering of every note but one."""

    def note(self, note_id):
        if note_id == "d":
            raise KeyError(note_id)
        return Played() if note_id != "e" else Played(None, None, None, None)


@dataclass
class Neck:
    name: str = "Concert ukulele"


def test_fingering_marks():
    root = ElementTree.fromstring(musicxml_bytes(rich(), Hand(), Neck()))
    assert root.findtext("part-list/score-part/part-name") == "Concert ukulele"
    marked = root.findall(".//technical")
    # every note but two, once each: tied pieces are not marked again
    assert len(marked) == len(rich().notes) - 2
    assert {(m.findtext("string"), m.findtext("fret"), m.findtext("fingering"),
             m.findtext("pluck")) for m in marked} == {("2", "3", "4", "m")}  # fmt: skip


LENGTH = st.fractions(min_value=F(1, 64), max_value=80, max_denominator=96)


@settings(max_examples=300, deadline=None)
@given(LENGTH, st.none() | st.just((3, 2)) | st.just((7, 4)))
def test_note_values_add_up(length, tuplet):
    values = exactly(values_of(F(0), length, (), tuplet), length)
    assert sum(v.sounding for v in values) == length


@pytest.mark.parametrize(
    ("length", "written"),
    [
        (F(3), [("2", 1, (1, 1))]),
        (F(7, 2), [("2", 2, (1, 1))]),
        (F(5, 4), [("4", 0, (1, 1)), ("16", 0, (1, 1))]),
        (F(1, 3), [("8", 0, (3, 2))]),
        (F(2, 5), [("8", 0, (5, 4))]),
        (F(64), [("breve", 0, (1, 1))] * 8),
    ],
)
def test_note_values(length, written):
    assert [(v.sign, v.dots, v.ratio) for v in values_of(F(0), length)] == written


@st.composite
def crowded(draw):
    """Bars of random notes that overlap within their voice and run over bar lines."""
    bars, number = [], 0
    for index in range(draw(st.integers(1, 3))):
        notes = []
        for _ in range(draw(st.integers(0, 4))):
            number += 1
            onset = draw(st.fractions(0, 3, max_denominator=6))
            length = draw(st.fractions(F(1, 8), 4 if index else 1, max_denominator=8))
            pitch = Pitch(draw(st.sampled_from("CDEFGAB")), draw(st.integers(-1, 1)), number % 8)
            notes.append(Note(f"n{number}", onset, length, pitch, draw(st.integers(1, 3))))
        bars.append(
            Bar(
                index=index,
                number=str(index + 1),
                time_signature=(4, 4),
                length=F(4),
                notes=tuple(notes),
            )
        )
    last = Bar(
        index=len(bars), number="9", time_signature=(4, 4), length=F(8), notes=(note("z", 0, 1),)
    )
    return Piece("Crowded", (*bars, last))


@settings(max_examples=25, deadline=None)
@given(crowded())
def test_crowded_pieces_come_back(tmp_path_factory, source):
    assert sounded(back(source, tmp_path_factory.mktemp("crowded"))) == sounded(source)


def test_midi_in_playing_order(tmp_path):
    import music21

    source = piece({}, {"endings": (1,), "repeat_end": True}, {"endings": (2,)})
    write_midi(source, tmp_path / "out.mid")
    heard = music21.converter.parse(tmp_path / "out.mid", forceSource=True)
    assert [(n.pitch.midi, n.getOffsetInHierarchy(heard)) for n in heard.recurse().notes] == [
        (60, 0), (62, 4), (60, 8), (64, 12),
    ]  # fmt: skip
    assert sounded(read_score(tmp_path / "out.mid"))[0][1:3] == (0, 4)


def test_fine_rhythm_survives_midi(tmp_path):
    rhythm = [F(1, 8), F(3, 8), F(1, 2), F(1, 6), F(1, 3), F(1, 2), F(2)]
    starts = [sum(rhythm[:i], F(0)) for i in range(len(rhythm))]
    notes = [note(f"n{i}", s, d) for i, (s, d) in enumerate(zip(starts, rhythm, strict=True))]
    write_midi(
        Piece(
            "Fine",
            (Bar(index=0, number="1", time_signature=(4, 4), length=F(4), notes=tuple(notes)),),
        ),
        tmp_path / "a.mid",
    )
    assert [n.onset for n in read_score(tmp_path / "a.mid").notes] == starts


def test_a_full_disk_leaves_the_old_file(tmp_path, monkeypatch):
    path = tmp_path / "out.musicxml"
    path.write_bytes(b"old")

    def full(handle):
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "fsync", full)
    with pytest.raises(BadInput, match="No space left on device"):
        write_musicxml(rich(), path)
    assert path.read_bytes() == b"old" and os.listdir(tmp_path) == ["out.musicxml"]


def test_where_nothing_can_be_written(tmp_path):
    with pytest.raises(BadInput, match="is a folder"):
        write_musicxml(rich(), tmp_path)
    with pytest.raises(BadInput, match="cannot be written"):
        write_musicxml(rich(), tmp_path / "none" / "out.xml")


def test_odd_titles_are_legal(tmp_path):
    odd = replace(rich(), title="A\x00B <&> \x1b")
    assert back(odd, tmp_path).title == "AB <&>"
    assert io.BytesIO(musicxml_bytes(odd)).read(5) == b"<?xml"
