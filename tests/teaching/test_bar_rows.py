"""The rows of the bar list."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.teaching.hand_made import bar, build, n
from workbench.fingering.types import Pin
from workbench.language.fact import Fact
from workbench.music.model import ChordName
from workbench.teaching.bars.likeness import Likeness
from workbench.teaching.grading.bar_facts import facts_of
from workbench.teaching.lessons.bar_rows import FILTERS, BarFacts, bar_rows, kept
from workbench.teaching.lessons.lesson import BarNote, Lesson


@pytest.fixture
def rows_of():
    piece, fingering = build(
        bar(n("C4"), n("E4"), n("G4"), n("A4"), repeat_start=True),
        bar(n("A4", 4, held=1, cut="shift"), endings=(1,), repeat_end=True),
        bar(n("C5", 4), endings=(2,), chords=(ChordName(0, "F"),)),
        bar(n("C4"), n("E4"), n("G4"), n("A4"), fine=True),
    )
    lesson = Lesson(
        "l", "Study", piece, "ukulele",
        pins=(Pin("b0n1", string=2, fret=0), Pin("b0n2", right="i")),
        notes=(BarNote("a", "sound", "x", 0, 2), BarNote("b", "form", "y", 3, 3)),
        sections=((0, "A"), (3, "B")),
    )  # fmt: skip
    return lesson, bar_rows(lesson, fingering)


def test_rows_stand_in_playing_order(rows_of):
    _, rows = rows_of
    assert [row.index for row in rows] == [0, 1, 0, 2, 3]
    assert [row.position for row in rows] == [0, 1, 2, 3, 4]
    assert [str(row.title) for row in rows] == [
        "Bar 1, 1st time", "Bar 2", "Bar 1, 2nd time", "Bar 3", "Bar 4",
    ]  # fmt: skip


def said(rows):
    return [tuple(map(str, row)) for row in rows]


def test_marks_have_numbers_and_words(rows_of):
    _, rows = rows_of
    assert [(row.notes, row.pins, row.cuts) for row in rows] == [
        (1, 2, 0), (1, 0, 1), (1, 2, 0), (1, 0, 0), (1, 0, 0),
    ]  # fmt: skip
    assert said(rows[1].marks) == [("note", "1 remark"), ("cut", "1 cut")]
    assert said(rows[0].marks) == [("note", "1 remark"), ("pin", "2 pins")]
    assert str(rows[1].spoken) == "Bar 2, section A, 1st ending, repeat, 1 remark, 1 cut"


def test_sections_and_form(rows_of):
    _, rows = rows_of
    assert [row.section for row in rows] == ["A", "A", "A", "A", "B"]
    assert [row.starts_section for row in rows] == [True, False, False, False, True]
    assert said([(rows[4].form, rows[4].jumps)]) == [("Fine", "Fine")]
    assert said([(rows[0].form, rows[0].jumps)]) == [("repeat from here", "")]
    assert rows[0].repeat_start
    assert (rows[1].endings, rows[1].repeat_end, rows[3].endings) == ((1,), True, (2,))
    assert str(rows[3].chords) == "F"


def test_facts_are_measured_and_compared(rows_of):
    lesson, _ = rows_of
    _, fingering = build(
        bar(n("C4"), n("E4"), n("G4"), n("A4")), bar(n("A4", 4)), bar(n("C5", 4)),
        bar(n("C4"), n("E4"), n("G4"), n("A4")),
    )  # fmt: skip
    facts = facts_of(lesson, fingering)
    assert facts[3].like == Likeness("music", 0)
    assert str(facts[3].spoken).endswith("same music as bar 1")
    assert facts[0].difficulty == facts[3].difficulty
    hardest = max(facts.values(), key=lambda f: f.difficulty)
    assert hardest.share == 1.0
    assert all(f.share == f.difficulty / hardest.difficulty for f in facts.values())
    assert str(facts[0].figure) == f"{facts[0].difficulty:.1f}"
    early = facts_of(lesson, None)
    assert said((f.figure, f.seen) for f in early.values()) == [("", "")] * 3 + [
        ("", "same music as bar 1")
    ]


def passing(rows, facts):
    return {which: [r.position for r in kept(rows, which, facts)] for which, _ in FILTERS}


def test_filters(rows_of):
    _, rows = rows_of
    facts = {0: BarFacts(1.0), 1: BarFacts(3.5), 2: BarFacts(2.0), 3: BarFacts(1.0)}
    assert passing(rows, facts) == {
        "all": [0, 1, 2, 3, 4],
        "unfinished": [],
        "cuts": [1],
        "hardest": [1],
        "no notes": [],
        "pins": [0, 2],
    }
    assert passing(rows, {})["hardest"] == []


def test_a_bar_is_unfinished_until_the_teacher_has_been_there(rows_of):
    lesson, _ = rows_of
    bare = replace(lesson, notes=lesson.notes[:0], pins=lesson.pins[:1])  # bar 1 is pinned
    rows = bar_rows(bare, None)
    assert [r.index for r in kept(rows, "unfinished", {})] == [1, 2, 3]
    again = {3: BarFacts(like=Likeness("music", 0), like_number="1")}
    assert [r.index for r in kept(rows, "unfinished", again)] == [1, 2]
    grips = {3: BarFacts(like=Likeness("grips", 0), like_number="1")}
    assert [r.index for r in kept(rows, "unfinished", grips)] == [1, 2, 3]


def test_what_cannot_be_played_is_unfinished_and_rests_are_finished():
    piece, fingering = build(bar(n("C4", 4)), bar())
    broken = replace(fingering.bars[0], impossible=Fact.from_text("bar 1, beat 1: too low"))
    lesson = Lesson("l", "Study", piece, "ukulele", notes=(BarNote("a", "sound", "x", 0, 0),))
    rows = bar_rows(lesson, replace(fingering, bars=(broken, fingering.bars[1])))
    assert [r.index for r in kept(rows, "unfinished", {})] == [0]
    assert said(rows[0].marks)[0] == ("impossible", "cannot be played")


def test_notes_of_a_section_count_in_its_bars(rows_of):
    lesson, _ = rows_of
    note = BarNote("c", "sound", "z", 0, 0, section="A")
    rows = bar_rows(replace(lesson, notes=(note,)), None)
    assert [row.notes for row in rows] == [1, 1, 1, 1, 0]


def test_rows_without_a_fingering_yet(rows_of):
    lesson, _ = rows_of
    rows = bar_rows(lesson, None)
    assert [(row.cuts, row.impossible) for row in rows] == [(0, None)] * 5
