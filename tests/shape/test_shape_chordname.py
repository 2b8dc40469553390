"""Chord names against music21's chord tables and roots, and against printed charts."""

from __future__ import annotations

import re

import pytest
from music21 import chord, harmony, pitch

from tests.shape.shape_charts import usable
from workbench.fingering.shapes.chordname import KINDS, name_chord
from workbench.music.model import STEP_SEMITONES

# music21 9 writes these otherwise or not at all.
UNKNOWN_TO_MUSIC21 = {
    *("maj9", "69", "m69", "mmaj7", "mmaj7b5", "9sus4", "mmaj9", "alt"),
    *("maj11", "maj13", "mmaj11", "13b9", "13b5b9"),
}
# Suffixes of the charts that we write otherwise.
WRITTEN = {"major": "", "minor": "m", "b13b9": "7b9b13", "b13#9": "7#9b13"}
# Kinds that stand complete on four strings and are not another's inversion.
PLAIN = ("major", "minor", "7", "maj7", "dim", "sus4", "mmaj7", "7sus4")


def pitch_class(name: str) -> int:
    return (STEP_SEMITONES[name[0]] + name.count("#") - name[1:].count("b")) % 12


def spelled(name: str, midi: int) -> pitch.Pitch:
    """music21's pitch of that name with that MIDI number."""
    made = pitch.Pitch(name.replace("b", "-"), octave=4)
    made.octave += round((midi - made.midi) / 12)
    assert made.midi == midi
    return made


def written(notes: tuple[str, ...], midis: list[int]) -> list[tuple[str, int]]:
    by_class = {pitch_class(name): name for name in notes}
    return [(by_class[m % 12], m) for m in midis]


def parts(text: str) -> tuple[int, str] | None:
    """Root and symbol of a written name, without bass and remark."""
    found = re.match(r"([A-G](?:#|b)?)([^/(]*)", text)
    return (pitch_class(found[1]), found[2]) if found else None


@pytest.mark.parametrize(
    "kind", [k for k in KINDS if k.symbol not in UNKNOWN_TO_MUSIC21], ids=lambda k: k.symbol or "-"
)
def test_the_notes_of_each_kind_are_those_of_music21(kind) -> None:
    theirs = {p.pitchClass for p in harmony.ChordSymbol(f"C{kind.symbol}").pitches}
    assert theirs == set(kind.allowed)


@pytest.mark.parametrize("root", range(48, 60))
@pytest.mark.parametrize("shape", [(0, 4, 7), (0, 3, 7), (0, 3, 6), (0, 4, 7, 10), (0, 4, 7, 11)])
def test_root_and_inversion_are_those_of_music21(root: int, shape: tuple[int, ...]) -> None:
    for turns in range(len(shape)):
        midis = [root + s + (12 if i < turns else 0) for i, s in enumerate(shape)]
        label = name_chord(midis)
        theirs = chord.Chord([spelled(name, m) for name, m in written(label.notes, midis)])
        assert label.root is not None
        assert pitch_class(label.root) == theirs.root().pitchClass
        assert label.inversion == theirs.inversion() == turns


def test_printed_names_are_among_ours(record_testsuite_property) -> None:
    for name in ("ukulele", "guitar"):
        rows, _ = usable(name)
        asked = first = listed = plain = plain_first = 0
        for row in rows:
            if "/" in row.suffix or row.suffix == "7sg":  # slash chords; a chart's own mark
                continue
            wanted = (pitch_class(row.key), WRITTEN.get(row.suffix, row.suffix))
            label = name_chord(row.midi)
            ours = [parts(text) for text in (label.name, *label.also)]
            asked += 1
            first += ours[0] == wanted
            listed += wanted in ours
            if row.suffix in PLAIN:
                plain += 1
                plain_first += ours[0] == wanted
        record_testsuite_property(
            f"{name}: printed name is ours, is among ours, rows", (first, listed, asked)
        )
        record_testsuite_property(
            f"{name}: plain kinds, printed name is ours, rows", (plain_first, plain)
        )
        assert plain_first / plain > 0.95
        assert listed / asked > 0.95


@pytest.mark.parametrize(
    ("midis", "name", "inversion"),
    [
        ((67, 60, 64, 72), "C", 0),  # ukulele 0003: the lowest note is C on string 3
        ((69, 60, 65, 69), "F/C", 2),
        ((60, 64, 67, 69), "C6", 0),
        ((57, 60, 64, 67), "Am7", 0),
        ((64, 67, 69, 72), "C6/E", 1),
        ((67, 69, 72, 76), "Am7/G", 3),
        ((60, 63, 66, 69), "Cdim7", 0),
        ((62, 65, 68, 72), "Dm7b5", 0),
        ((60, 67), "C5", 0),
        ((60, 62, 67), "Csus2", 0),
        ((60, 65, 67), "Csus4", 0),
        ((60, 64, 70), "C7", 0),  # the fifth may be missing
        ((60, 62, 64, 67, 70), "C9", 0),
        ((60, 62, 64, 67), "Cadd9", 0),
        ((61, 65, 68), "Db", 0),
        ((61, 64, 68), "C#m", 0),
        ((64,), "E", 0),
    ],
)
def test_names_of_common_chords(midis: tuple[int, ...], name: str, inversion: int) -> None:
    """Spelling by the letters of the degrees; which name first: common practice."""
    label = name_chord(midis)
    expected = {name}
    if name == "C6/E":  # the same notes as Am7 on its fifth: both names are given
        expected.add("Am7/E")
        assert {label.name, *label.also} >= expected
        return
    assert (label.name, label.inversion) == (name, inversion)


def test_notes_are_spelled_from_the_root() -> None:
    assert name_chord((53, 56, 60)).notes == ("F", "Ab", "C")
    assert name_chord((54, 57, 61)).notes == ("F#", "A", "C#")
    assert name_chord((60, 63, 66, 69)).notes == ("C", "Eb", "Gb", "Bbb")


def test_a_foreign_bass_is_named_as_such() -> None:
    label = name_chord((48, 62, 66, 69))
    assert label.name == "D7/C"  # C belongs to D7
    foreign = name_chord((53, 62, 66, 69))
    assert foreign.name == "D/F"
    assert foreign.inversion is None


def test_notes_without_a_name_are_left_without_one() -> None:
    label = name_chord((60, 61, 62))
    assert label.name == ""
    assert label.inversion is None
    assert label.notes == ("C", "Db", "D")
    assert name_chord(()).name == ""
