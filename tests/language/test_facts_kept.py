"""What was found while English was spoken is read in German: values hold facts."""

from __future__ import annotations

import pytest

from tests.fingering.build import piece
from workbench.fingering.engine import Solver, solve
from workbench.fingering.telling.words import words
from workbench.fingering.types import FingeredBar, Fingering, Pin
from workbench.instrument.table import hand, instrument
from workbench.language.fact import Fact
from workbench.language.speech import choose, say
from workbench.language.stored import kept, shown
from workbench.music.codec import from_dict, to_dict
from workbench.store.shelf import Shelf
from workbench.teaching.lessons.lesson import Lesson

UKULELE, HAND = instrument("ukulele"), hand("medium")
MARKS = {0: {"repeat_start": True}, 1: {"repeat_end": True}}
MUSIC = piece("F4:1 D4:1", "D4:1 F4:1 C2:1", marks=MARKS)
PINS = (
    Pin("b0v1n0a", string=2, left=2), Pin("b0v1n1a", string=3, left=2), Pin("b1v1n0a", left=2),
    Pin("b1v1n1a", string=3, fret=5, left=2),
)  # fmt: skip


@pytest.fixture(autouse=True)
def english_again():
    choose("en")
    yield
    choose("en")


def told(fingering: Fingering) -> str:
    """Every sentence in a fingering."""
    found: list[Fact | None] = [join.reason for join in fingering.audit.joins]
    for bar in fingering.bars:
        found += [bar.impossible, *bar.remarks]
        found += [x for n in bar.notes for x in (n.cut_reason, n.impossible)]
    return "\n".join(words(f) for f in found if f)


def test_a_lesson_solved_in_english_and_opened_in_german_speaks_german(tmp_path):
    lesson = Lesson("l", "Study", MUSIC, "ukulele", pins=PINS)
    with Shelf(tmp_path / "lessons.db") as shelf:
        shelf.save(lesson)
        solved = solve(MUSIC, UKULELE, HAND, pins=PINS)
        english = told(solved)
        assert "lies below the range" in english and "cuts the" in english
        shelf.put_fingering(lesson, solved)
        choose("de")
        kept = shelf.cached_fingering(shelf.load("l"))
    assert kept == solved
    german = told(kept)
    assert "liegt unter dem Umfang" in german and "kürzt" in german
    assert not [word for word in ("finger ", "string ", "cuts", "below") if word in german]


def test_other_fingerings_speak_the_language_of_the_moment():
    solver = Solver(piece("B4:1 Bb4:1 F#4+C4:1 D4:1"), UKULELE, HAND)
    others = [*solver.alternatives(0, 3), *solver.right_alternatives(0, 2)]
    assert len(others) >= 4
    assert any("B♭" in words(o.reason) for o in others)
    choose("de")
    german = [words(o.reason) for o in others]
    assert any("auf B" in text for text in german), "B flat is B in German"
    assert not [w for text in german for w in ("finger ", "Right hand", "string ") if w in text]


def test_documents_with_sentences_are_still_read():
    note = solve(MUSIC, UKULELE, HAND).bars[0].notes[0]
    bar = to_dict(FingeredBar(0, "1", (note,)))
    bar["remarks"] = ["same music as bar 2, other fingers"]
    bar["notes"][0]["cut_reason"] = "the finger hops"
    bar["impossible"] = None
    read = from_dict(FingeredBar, bar)
    assert [words(r) for r in read.remarks] == ["same music as bar 2, other fingers"]
    assert words(read.notes[0].cut_reason) == "the finger hops"
    assert from_dict(FingeredBar, to_dict(read)) == read


def test_the_history_of_a_lesson_speaks_the_language_of_the_reader(tmp_path):
    with Shelf(tmp_path / "lessons.db") as shelf:
        shelf.save(Lesson("l", "Study", MUSIC, "ukulele"))
        version = shelf.keep_version("l", "Spring")
        shelf.save(Lesson("l", "Study", MUSIC, "ukulele", pins=PINS), say("Pin the bar"))
        shelf.save(Lesson("l", "Mine", MUSIC, "ukulele", pins=PINS), '{"say": the teacher\'s own')
        shelf.go_back(version.id)
        english = [step.label for step in shelf.history("l").steps]
        choose("de")
        german = [step.label for step in shelf.history("l").steps]
    assert english[1:] == ["Pin the bar", '{"say": the teacher\'s own', "Back to 'Spring'"]
    assert german[2] == english[2], "what is no sentence of ours stays as it is"
    assert "Spring" in german[3] and german[3] != english[3]
    assert german[1] == say("Pin the bar") != "Pin the bar"
    assert shown(kept("a label of an older file")) == "a label of an older file"
