"""What converted scores carry that nobody wrote: signatures to and fro at every bar, the
name of a file as title."""

from __future__ import annotations

from fractions import Fraction
from pathlib import Path

import pytest

from tests.cli.scores import bar_xml, score_xml
from workbench.music.model import Bar, Key, Piece
from workbench.music.order.form import sections
from workbench.music.parsing.heardkey import with_settled_keys
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
    piece = read_score(STUDIES / "sor-op45n03.mxl")
    assert {b.key for b in piece.bars[:33]} == {C_MINOR}
    assert len(sections(piece)) <= 2
    assert any("to and fro from bar 2 to bar 32" in told for told in warnings(piece))


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
