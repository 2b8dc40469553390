"""Quarter tones, a key signature that is missing, and faults that are our own."""

from __future__ import annotations

import pytest

from workbench.music.errors import BadInput
from workbench.music.reading import score as reading
from workbench.music.reading.score import read_score

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
    said = [w for w in piece.warnings if "quarter tone" in w]
    assert len(said) == 1 and said[0].startswith("2 quarter tones (bars 2)")
    assert not read_score(score(tmp_path, "C D E F1")).warnings


SHARPS = ("D E F1 G", "A B C1 D", "F1 E D C1", "D F1 A D")


def test_a_score_without_signature_is_shown_in_the_key_that_is_heard(tmp_path):
    piece = read_score(score(tmp_path, *SHARPS))
    assert piece.key.name == "D major" and {b.key.fifths for b in piece.bars} == {2}
    assert any("D major" in w for w in piece.warnings)
    unsigned = "<key><fifths>0</fifths></key>"
    assert read_score(score(tmp_path, *SHARPS, key=unsigned)).key.name == "D major"
    mixed = read_score(score(tmp_path, "D E F1 G", "A B C D", "F E D C", "C E G C"))
    assert mixed.key.fifths == 0, "sharps here and there are no signature"
    signed = "<key><fifths>1</fifths></key>"
    assert read_score(score(tmp_path, *SHARPS, key=signed)).key.fifths == 1


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
