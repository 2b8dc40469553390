"""What converted scores carry that nobody wrote: signatures to and fro at every bar, the
name of a file as title."""

from __future__ import annotations

from fractions import Fraction
from pathlib import Path

import pytest

from tests.arranging.make import piece
from tests.cli.scores import bar_xml, score_xml
from workbench.music.model import Bar, Key, Piece
from workbench.music.order.form import sections
from workbench.music.parsing.heardkey import with_fitting_keys, with_settled_keys
from workbench.music.reading.score import read_score
from workbench.music.telling.warnings import warnings

STUDIES = Path(__file__).parents[1] / "data" / "guitar-editions"
C_MINOR, C_MAJOR, G_MAJOR = Key(-3, "minor"), Key(0), Key(1)


def written(*keys):
    bars = (
        Bar(index=k, number=str(k + 1), time_signature=(2, 4), length=Fraction(2), key=key)
        for k, key in enumerate(keys)
    )
    return Piece("Made", tuple(bars))


def test_a_published_study_has_one_key_where_its_file_has_two_by_turns():
    """Sor op. 45 no. 3: the file writes three flats and none by turns, 33 times."""
    study = read_score(STUDIES / "sor-op45n03.mxl")
    assert {b.key for b in study.bars} == {C_MAJOR} == {study.key}
    assert len(sections(study)) <= 2
    assert any("to and fro from bar 2 to bar 32" in told for told in warnings(study))
    assert any("against the signature of C minor" in told for told in warnings(study))


def test_a_signature_that_the_notes_contradict_is_set_right_and_the_notes_stay():
    """A scale of D major, four times, under a signature of one flat."""
    line = "D4 E4 F#4 G4 | A4 B4 C#5 D5 | C#5 B4 A4 G4 | F#4 E4 D4 D4"
    wrong = piece(" | ".join([line] * 4), key=Key(-1))
    right = with_fitting_keys(wrong)
    assert {b.key for b in right.bars} == {Key(2)} and right.notes == wrong.notes
    assert with_fitting_keys(right) == right


def test_a_harmonic_minor_keeps_its_signature():
    line = "A4 B4 C5 D5 | E5 F5 G#5 A5 | A5 G#5 F5 E5 | D5 C5 B4 G#4"
    made = piece(" | ".join([line] * 4), key=Key(0, "minor"))
    assert with_fitting_keys(made) == made


@pytest.mark.parametrize(
    "keys",
    [
        (C_MINOR, C_MINOR, C_MAJOR, C_MAJOR, C_MINOR),
        (C_MINOR, C_MAJOR, C_MINOR, C_MAJOR, C_MINOR),  # twice may be meant
        (C_MINOR, C_MAJOR, G_MAJOR, C_MINOR, C_MAJOR, G_MAJOR),
        (C_MAJOR,),
        (),
    ],
)
def test_other_changes_of_key_stay(keys):
    piece = written(*keys)
    assert with_settled_keys(piece) is piece


def test_bars_by_turns_take_the_key_around_them():
    piece = with_settled_keys(written(*[C_MINOR, C_MAJOR] * 4, C_MAJOR))
    assert [b.key for b in piece.bars] == [C_MINOR] * 7 + [C_MAJOR] * 2
    assert len(piece.warnings) == 1


@pytest.mark.parametrize(
    ("title", "shown"), [("tune269.mxl", "tune269"), ("No. 3 in A.", "No. 3 in A.")]
)
def test_a_file_name_is_no_title(tmp_path, title, shown):
    path = tmp_path / "x.musicxml"
    path.write_text(score_xml([bar_xml("C4", "D4", "E4", "F4")], title), encoding="utf-8")
    assert read_score(path).title == shown
