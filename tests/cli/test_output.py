"""How results are laid out."""

from __future__ import annotations

from fractions import Fraction

import pytest

from workbench.commands.output import Result, beat, show, table
from workbench.music.model import Bar


@pytest.mark.parametrize(
    "onset, signature, length, pickup, said",
    [
        ("0", (4, 4), "4", False, "1"),
        ("5/2", (4, 4), "4", False, "3+1/2"),
        ("1", (6, 8), "3", False, "3"),
        ("0", (3, 4), "1", True, "3"),
        ("1/2", (6, 8), "1", True, "6"),
    ],
)
def test_beats_are_counted_as_musicians_do(onset, signature, length, pickup, said):
    bar = Bar(0, "1", signature, Fraction(length), pickup=pickup)
    assert beat(Fraction(onset), bar) == said


def test_columns_line_up():
    lines = table(["bar", "note"], [[1, "C4"], [12, None]], right="bar")
    assert lines == ["bar  note", "---  ----", "  1  C4", " 12"]


def test_one_very_long_title_does_not_widen_all_rows():
    lines = table(["title", "id", "why"], [["T" * 10_000, 1, "w" * 200], ["Air", 2, ""]])
    assert lines[2].startswith("TTTT") and "…  1   w" in lines[2]
    assert lines[2].endswith("w" * 200), "the last column is told whole"
    assert max(len(line) for line in (lines[0], lines[3])) < 70


def test_json_is_one_document_with_fractions_as_text(capsys):
    show(Result({"held": Fraction(3, 2), "name": "Für"}), as_json=True)
    assert capsys.readouterr().out == '{\n "held": "3/2",\n "name": "Für"\n}\n'


def test_what_json_cannot_say_is_no_document(capsys):
    with pytest.raises(TypeError):
        show(Result({"set": {1}}), as_json=True)
    assert capsys.readouterr().out == ""
