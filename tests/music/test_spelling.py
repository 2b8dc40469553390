"""Names of pitches that come as MIDI numbers."""

from __future__ import annotations

from fractions import Fraction

import pytest

from workbench.music.model import Bar, Key, Note, Piece, Pitch
from workbench.music.parsing.spelling import spell
from workbench.music.reading.score import read_score
from workbench.music.writing.score import write_midi


@pytest.mark.parametrize(
    ("key", "names"),
    [
        (Key(0), "C C# D Eb E F F# G G# A Bb B"),
        (Key(-1, "minor"), "C C# D Eb E F F# G Ab A Bb B"),
        (Key(4), "B# C# D D# E E# F# G G# A A# B"),
        (Key(-4), "C Db D Eb E F Gb G Ab A Bb Cb"),
    ],
    ids=lambda v: v.name if isinstance(v, Key) else "",
)
def test_spelling_by_key(key, names):
    found = [spell(midi, key) for midi in range(60, 72)]
    assert [p.midi for p in found] == list(range(60, 72))
    assert [p.name.rstrip("0123456789") for p in found] == names.split()


@pytest.mark.parametrize("fifths", range(-7, 8))
def test_every_number_keeps_its_sound(fifths):
    assert all(spell(midi, Key(fifths)).midi == midi for midi in range(128))


def written(path, key, midis):
    notes = tuple(
        Note(f"n{i}", Fraction(i), Fraction(1), spell(m, key)) for i, m in enumerate(midis)
    )
    write_midi(
        Piece(
            "Tune",
            (
                Bar(
                    index=0,
                    number="1",
                    time_signature=(8, 4),
                    length=Fraction(8),
                    notes=notes,
                    key=key,
                ),
            ),
            key=key,
        ),
        path,
    )
    return notes


@pytest.mark.parametrize("key", [Key(-3), Key(2), Key(-1, "minor")], ids=lambda k: k.name)
def test_midi_keeps_its_key(key, tmp_path):
    tonic = (7 * key.fifths + (9 if key.mode == "minor" else 0)) % 12 + 60
    notes = written(tmp_path / "a.mid", key, [tonic, tonic + 2, tonic + 7, tonic + 8, tonic])
    piece = read_score(tmp_path / "a.mid")
    assert piece.key == key
    assert [n.pitch for n in piece.notes] == [n.pitch for n in notes]


def test_midi_without_a_key_gets_one_by_ear(tmp_path):
    path = tmp_path / "a.mid"
    written(path, Key(-3), [63, 67, 70, 63, 68, 70, 74, 75])
    data = path.read_bytes()
    place = data.index(b"\xff\x59\x02")
    # the key event is turned into an empty text
    path.write_bytes(data[:place] + b"\xff\x01\x02  " + data[place + 5 :])
    piece = read_score(path)
    assert piece.key == Key(-3)
    assert piece.notes[0].pitch == Pitch("E", -1, 4)
