"""Quarter tones, a key signature that is missing, and faults that are our own."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest
from music21 import converter, corpus

from workbench.music.errors import BadInput
from workbench.music.model import STEP_SEMITONES, Key, Pitch
from workbench.music.parsing.heardkey import with_heard_key
from workbench.music.reading import score as reading
from workbench.music.reading.score import read_score
from workbench.music.telling.warnings import warnings

SCORE = """<?xml version="1.0" encoding="UTF-8"?>
<score-partwise version="4.0"><part-list><score-part id="P1"><part-name>A</part-name>
</score-part></part-list><part id="P1">{bars}</part></score-partwise>"""
NOTE = "<note><pitch><step>{}</step>{}<octave>4</octave></pitch><duration>1</duration></note>"


def score(tmp_path, *bars, key=""):
    written = []
    for number, bar in enumerate(bars, 1):
        head = ("<attributes><divisions>1</divisions>" + key +
                "<time><beats>4</beats><beat-type>4</beat-type></time></attributes>")  # fmt: skip
        notes = "".join(
            NOTE.format(word[0], f"<alter>{word[1:]}</alter>" if word[1:] else "")
            for word in bar.split()
        )
        written.append(f'<measure number="{number}">{head if number == 1 else ""}{notes}</measure>')
    path = tmp_path / "made.musicxml"
    path.write_text(SCORE.format(bars="".join(written)), encoding="utf-8")
    return path


def test_quarter_tones_are_named_with_their_bars(tmp_path):
    piece = read_score(score(tmp_path, "C D E F", "C F0.5 E-0.5 F", "G A B1.0 C"))
    said = [w for w in warnings(piece) if "quarter tone" in w]
    assert len(said) == 1 and said[0].startswith("2 quarter tones (bars 2)")
    assert not read_score(score(tmp_path, "C D E F1")).warnings


STEPS = "FCGDAEB"
SHARPS = ("D E F1 G", "A B C1 D", "F1 E D C1", "D F1 A D")


def test_a_score_without_signature_is_shown_in_the_key_that_is_heard(tmp_path):
    piece = read_score(score(tmp_path, *SHARPS))
    assert piece.key.name == "D major" and {b.key.fifths for b in piece.bars} == {2}
    assert any("D major" in w for w in warnings(piece))
    unsigned = "<key><fifths>0</fifths></key>"
    assert read_score(score(tmp_path, *SHARPS, key=unsigned)).key.name == "D major"
    mixed = read_score(score(tmp_path, "D E F1 G", "A B C D", "F E D C", "C E G C"))
    assert mixed.key.fifths == 0, "sharps here and there are no signature"
    signed = "<key><fifths>1</fifths></key>"
    assert read_score(score(tmp_path, *SHARPS, key=signed)).key.fifths == 1


def test_chord_symbols_tell_the_key_where_the_notes_are_in_two_minds(tmp_path):
    def harmony(step, alter=0):
        sign = f"<root-alter>{alter}</root-alter>" if alter else ""
        return (
            f"<harmony><root><root-step>{step}</root-step>{sign}</root><kind>major</kind></harmony>"
        )

    bars = ("F A C F", "B-1 D B-1 D", "B G D B", "F A C F")  # bar 3 leads to C, by its B
    path = score(tmp_path, *bars)
    assert read_score(path).key.fifths == 0
    text = path.read_text(encoding="utf-8")
    heads = iter([harmony("F"), harmony("B", -1), harmony("C"), harmony("F")])
    text = re.sub(
        r"(<measure[^>]*>(?:<attributes>.*?</attributes>)?)", lambda m: m[1] + next(heads), text
    )
    path.write_text(text, encoding="utf-8")
    assert read_score(path).key.name == "F major"


@pytest.mark.parametrize("name", ["fosterBrownHair", "berlinAlexandersRagtime"])
def test_lead_sheets_in_f_that_are_written_without_a_flat(name):
    """Two lead sheets of music21's corpus; their files say no flats, their chords F."""
    assert read_score(corpus.getWork(f"leadSheet/{name}")).key.name == "F major"


def test_a_chorale_in_the_dorian_mode_keeps_its_empty_signature():
    """BWV 276, with two B flats among its notes."""
    assert read_score(corpus.getWork("bach/bwv276")).key.fifths == 0


def key_taken_away(piece):
    return replace(piece, key=Key(0), bars=tuple(replace(b, key=Key(0)) for b in piece.bars))


def lowered(piece, fifths):
    """The piece so many fifths further down, with an empty signature."""

    def moved(pitch):
        step = STEPS.index(pitch.step) - fifths + 7 * pitch.alter
        letter, alter = STEPS[step % 7], step // 7
        high = pitch.midi - 7 * fifths % 12
        octave = (high - alter - STEP_SEMITONES[letter]) // 12 - 1
        return Pitch(letter, alter, octave)

    bars = [
        replace(b, notes=tuple(replace(n, pitch=moved(n.pitch)) for n in b.notes))
        for b in piece.bars
    ]
    return key_taken_away(replace(piece, bars=tuple(bars)))


@pytest.mark.slow
def test_keys_come_back_and_c_is_never_left():
    """Sixty chorales with one printed key: without their signature most come back to it or
    to one that fits their mode, and laid into C none leaves it."""
    tried = back = wrong = 0
    for work in [w for w in corpus.getComposer("bach") if w.suffix == ".mxl"][:60]:
        piece = read_score(work)
        heard = reading._heard_key(converter.parse(work))
        fifths = piece.bars[0].key.fifths
        if len({b.key.fifths for b in piece.bars}) > 1:
            continue
        there = lowered(piece, fifths)
        down = Key(heard.fifths - fifths, heard.mode)
        assert with_heard_key(there, down).bars[0].key.fifths == 0, work
        if fifths:
            tried += 1
            shown = with_heard_key(key_taken_away(piece), heard).bars[0].key.fifths
            back += shown == fifths
            wrong += abs(shown) > 0 and shown != fifths
    assert tried > 30 and back > 0.55 * tried and wrong < 0.1 * tried


def test_a_fault_of_ours_is_not_called_bad_input(tmp_path, monkeypatch):
    path = score(tmp_path, "C D E F")

    def of_the_library(*_args, **_options):
        raise ZeroDivisionError("its own")

    monkeypatch.setattr(reading, "build", of_the_library)  # not in the program's folder
    with pytest.raises(BadInput, match="cannot be understood"):
        read_score(path)
    monkeypatch.setattr(reading, "build", lambda *_a, **_o: reading.spelled(None))
    with pytest.raises(AttributeError):
        read_score(path)
