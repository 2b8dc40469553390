"""The rows of the bar list."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.teaching.hand_made import bar, build, n
from workbench.fingering.types import Pin
from workbench.music.model import ChordName
from workbench.teaching.lesson import BarNote, Lesson
from workbench.ui.bar_rows import FILTERS, bar_rows, keeps, ordinal


@pytest.fixture
def rows_of():
    piece, fingering = build(
        bar(n("C4"), n("E4"), n("G4"), n("A4"), repeat_start=True),
        bar(n("A4", 4, held=1, cut="shift"), endings=(1,), repeat_end=True),
        bar(n("C5", 4), endings=(2,), chords=(ChordName(0, "F"),)),
        bar(n("C4"), n("E4"), n("G4"), n("A4"), fine=True),
    )
    fingering = replace(
        fingering, bars=tuple(replace(b, effort=e) for b, e in zip(
            fingering.bars, (10, 40, 20, 0), strict=True))
    )  # fmt: skip
    lesson = Lesson(
        "l", "Study", piece, "ukulele", pins=(Pin("b0n1", 2, 0), Pin("b0n2", right="i")),
        notes=(BarNote("a", "sound", "x", 0, 2), BarNote("b", "form", "y", 3, 3)),
        sections=((0, "A"), (3, "B")),
    )  # fmt: skip
    return lesson, bar_rows(lesson, fingering)


def test_rows_stand_in_playing_order(rows_of):
    _, rows = rows_of
    assert [row.index for row in rows] == [0, 1, 0, 2, 3]
    assert [row.position for row in rows] == [0, 1, 2, 3, 4]
    assert [row.title for row in rows] == [
        "Bar 1, 1st time", "Bar 2", "Bar 1, 2nd time", "Bar 3", "Bar 4",
    ]  # fmt: skip


def test_marks_have_numbers_and_words(rows_of):
    _, rows = rows_of
    assert [(row.notes, row.pins, row.cuts) for row in rows] == [
        (1, 2, 0), (1, 0, 1), (1, 2, 0), (1, 0, 0), (1, 0, 0),
    ]  # fmt: skip
    assert rows[1].marks == (("note", "1 note"), ("cut", "1 cut"))
    assert rows[0].marks == (("note", "1 note"), ("pin", "2 pins"))
    assert rows[1].spoken == "Bar 2, section A, 1st ending, repeat, 1 note, 1 cut"


def test_sections_form_effort_and_sameness(rows_of):
    _, rows = rows_of
    assert [row.section for row in rows] == ["A", "A", "A", "A", "B"]
    assert [row.starts_section for row in rows] == [True, False, False, False, True]
    assert [row.effort for row in rows] == [0.25, 1.0, 0.25, 0.5, 0.0]
    assert rows[4].form == "Fine"
    assert rows[4].same_as == "1"
    assert rows[3].chords == "F"


def test_filters(rows_of):
    _, rows = rows_of
    kept = {w: [r.position for r in rows if keeps(r, w, rows)] for w in FILTERS}
    assert kept == {
        "all bars": [0, 1, 2, 3, 4],
        "with cut notes": [1],
        "without teaching notes": [],
        "hardest": [1],
        "with pins": [0, 2],
    }


def test_rows_without_a_fingering_yet(rows_of):
    lesson, _ = rows_of
    rows = bar_rows(lesson, None)
    assert [(row.cuts, row.effort, row.impossible) for row in rows] == [(0, 0.0, None)] * 5


@pytest.mark.parametrize(
    ("number", "word"), [(1, "1st"), (2, "2nd"), (3, "3rd"), (4, "4th"), (11, "11th"), (22, "22nd")]
)
def test_ordinals(number, word):
    assert ordinal(number) == word
