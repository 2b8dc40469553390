"""What is found out about a lesson is the same in every language; only its words differ."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import fields, is_dataclass, replace
from functools import cache
from pathlib import Path

import pytest

from workbench.fingering.engine import solve
from workbench.fingering.types import Fingering, Pin
from workbench.instrument.table import hand, instrument
from workbench.language.message import (
    Figure,
    KeyName,
    Listed,
    Message,
    Nth,
    Opening,
    PitchName,
    SymbolName,
    Unsaid,
    from_plain,
    message,
    to_plain,
)
from workbench.language.speech import Said, speaking
from workbench.music.reading.score import read_score
from workbench.teaching.assess import assess
from workbench.teaching.bars.form_words import chord_rows
from workbench.teaching.bars.likeness import likenesses
from workbench.teaching.grading.easier import differs
from workbench.teaching.lessons.bar_rows import bar_rows
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.lessons.music_changed import with_piece
from workbench.teaching.planning.files import markdown
from workbench.teaching.planning.plan import make_plan
from workbench.teaching.scripts.script import make_script
from workbench.teaching.techniques.catalogue import find_techniques
from workbench.teaching.techniques.exercises import KINDS, exercise
from workbench.teaching.techniques.news import moves_of

UKULELE, HAND = instrument("ukulele"), hand("medium")
DEMO = Path(__file__).resolve().parents[2] / "resources" / "demo" / "harbour-waltz.musicxml"


@cache
def lesson() -> Lesson:
    with speaking("en"):
        return Lesson("l", "Waltz", read_score(DEMO), "ukulele", key="C major")


@cache
def fingering() -> Fingering:
    return solve(lesson().piece, UKULELE, HAND)


def all_of_it() -> dict[str, object]:
    """Everything that teaching finds out about a lesson, found in the language of the moment."""
    # copies, since what is found for the very same piece is remembered
    piece, fingers = replace(lesson().piece), replace(fingering())
    made = replace(lesson(), piece=piece)
    given = (piece, fingers, UKULELE, HAND)
    judged = assess(*given)
    less = replace(piece, bars=(replace(piece.bars[0], notes=()), *piece.bars[1:]))
    pinned = replace(made, pins=tuple(pins_of(fingers)))
    return {
        "grade": judged,
        "grade in words": (judged.evidence, judged.estimate.words, judged.hardest_in_words(piece)),
        "plan": make_plan(*given, minutes_a_day=50),
        "plan in words": make_plan(*given).time.words,
        "script": untimed(make_script(made, fingers, UKULELE, HAND)),
        "techniques": find_techniques(*given),
        "techniques in words": tuple(f.words(piece) for f in find_techniques(*given)),
        "moves": moves_of(*given),
        "moves in words": tuple(m.move.words for m in moves_of(*given)),
        "exercises": tuple(exercise(kind, piece, fingers, UKULELE, 2) for kind in KINDS),
        "chords": chord_rows(piece, fingers, UKULELE.strings),
        "likeness": tuple(x and x.words("3") for x in likenesses(piece, fingers)),
        "bars": tuple((row, row.title, row.marks, row.spoken) for row in bar_rows(made, fingers)),
        "corrected": with_piece(pinned, less).dropped,
        "versions": differs(piece, less),
    }


def pins_of(fingers) -> Iterator[Pin]:
    for note in fingers.bars[0].notes:
        yield Pin(note.id, string=note.string, fret=note.fret, left=note.left)


def untimed(script):
    """A script without its times, which are those of the words in one language."""
    cues = tuple(replace(cue, start=0.0, speaking=0.0) for cue in script.cues)
    return replace(script, cues=cues, opening_seconds=0.0, closing_seconds=0.0)


def leaves(value: object) -> Iterator[object]:
    """Whatever is said or will be, anywhere in a value."""
    if isinstance(value, str | Unsaid):
        yield value
    if isinstance(value, tuple | list | frozenset | set):
        for part in value:
            yield from leaves(part)
    if isinstance(value, dict):
        for key, held in value.items():
            yield from leaves(key)
            yield from leaves(held)
    if is_dataclass(value):
        for field in fields(value):
            yield from leaves(getattr(value, field.name))


@cache
def found(code: str) -> dict[str, object]:
    with speaking(code):
        return all_of_it()


WHAT = ("grade", "grade in words", "plan", "plan in words", "script", "techniques",
        "techniques in words", "moves", "moves in words", "exercises", "chords", "likeness",
        "bars", "corrected", "versions")  # fmt: skip


def test_nothing_is_left_out():
    assert tuple(found("en")) == WHAT


@pytest.mark.parametrize("what", WHAT)
def test_what_is_found_in_german_is_what_is_found_in_english(what):
    assert found("de")[what] == found("en")[what]


@pytest.mark.parametrize("what", WHAT)
def test_nothing_that_is_found_is_said_yet(what):
    assert [held for held in leaves(found("en")[what]) if isinstance(held, Said)] == []


@pytest.mark.parametrize("what", ["grade in words", "plan", "script", "exercises", "bars"])
def test_what_is_found_in_english_is_read_in_german(what):
    told = [held for held in leaves(found("en")[what]) if isinstance(held, Message)]
    english = {str(held) for held in told}
    with speaking("de"):
        german = {str(held) for held in told}
    assert len(english) > 2
    assert not english & german, "no sentence is the same in both"


def test_a_plan_made_in_english_is_written_down_in_german():
    plan = make_plan(lesson().piece, fingering(), UKULELE, HAND)
    assert "Left hand alone" in markdown(plan, "Waltz")
    with speaking("de"):
        german = markdown(plan, "Waltz")
    assert "Walzer" not in german and "Left" not in german and "## Tag 1" in german


ALL_KINDS = (
    PitchName("Bb4"), KeyName("E minor"), SymbolName("Bb7"), Figure(1.5), Figure(2.0, 1), Nth(3),
    Opening(message("the pickup")), Listed((message("pickup"), "A"), message(" and ")),
)  # fmt: skip


@pytest.mark.parametrize("words", ALL_KINDS, ids=lambda words: type(words).__name__)
def test_words_of_every_kind_travel_as_json(words):
    assert from_plain(json.loads(json.dumps(to_plain(words)))) == words


def test_what_says_nothing_is_false():
    assert not Listed(("", Listed(()))) and not Opening("")
    assert Listed(("", message("pickup"))) and Figure(0.0) and PitchName("A4")
