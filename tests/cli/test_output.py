"""How results are laid out."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest

from workbench.commands.output import Result, show, table
from workbench.language.speech import choose
from workbench.music.beats import beat_at, beat_in_digits
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
    bar = Bar(index=0, number="1", time_signature=signature, length=Fraction(length), pickup=pickup)
    assert beat_in_digits(beat_at(bar, Fraction(onset)), "+") == said


def test_columns_line_up():
    lines = table(["bar", "note"], [[1, "C4"], [12, None]], right=(0,))
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


@pytest.mark.parametrize(
    ("verb", "heads"),
    [
        ("read", ["Takt", "Taktart", "Töne", "Stimmen", "Tonhöhen", "Form"]),
        ("keys", ["Tonart", "Halbtöne", "unspielbar", "geändert", "Aufwand"]),
        ("finger", ["Takt", "Schlag", "Ton", "Saite", "Bund", "links", "rechts"]),
    ],
)
def test_tables_speak_the_chosen_language_and_stay_in_line(verb, heads, call, tune, monkeypatch):
    monkeypatch.setenv("PLUCKWRIGHT_LANGUAGE", "de")
    try:
        lines = call(verb, tune).out.splitlines()
    finally:
        choose("en")
    top = next(k for k, line in enumerate(lines) if line.split()[: len(heads)] == heads)
    ends = [at + len(rule) for at, rule in columns(lines[top + 1])]
    numbers = {"read": 0, "keys": 2, "finger": 4}[verb]  # a column of numbers, flush right
    for row in lines[top + 2 : top + 4]:
        assert (
            row[: ends[numbers]].rstrip()[-1].isdigit()
            and len(row[: ends[numbers]].rstrip()) == ends[numbers]
        )


def columns(rule):
    """Where each run of dashes begins, and the run."""
    return [(found.start(), found.group()) for found in re.finditer("-+", rule)]
