"""All that is kept is kept in no language: saved in English, it is read in German."""

from __future__ import annotations

import json
import re
import zlib
from dataclasses import replace
from functools import cache

import pytest
from sqlalchemy import text as sql

from workbench.arranging.arrange import arrange
from workbench.fingering.engine import Solver
from workbench.fingering.telling.words import words
from workbench.fingering.types import Fingering
from workbench.instrument.table import hand, instrument
from workbench.language import gather
from workbench.language.speech import choose, say
from workbench.language.stored import shown
from workbench.music.model import Piece, WrittenFingers
from workbench.music.reading.score import read_score
from workbench.music.telling.warnings import warnings
from workbench.store.documents import read_text
from workbench.store.recovery import Recovery
from workbench.store.shelf import Shelf
from workbench.teaching.lessons.altered import altered
from workbench.teaching.lessons.edits import new_lesson
from workbench.teaching.lessons.lesson import Lesson

UKULELE, HAND = instrument("ukulele"), hand("medium")
ODD = "X:1\nT:Trial\nM:4/4\nL:1/4\nK:C\nC E G c |B2 A G F |[CEGc] [D,Gc]2 B |A,2 C2 |]\n"
FEWEST_WORDS = 3  # of a sentence that is looked for; shorter ones may be names of things


@pytest.fixture(autouse=True)
def english_again():
    choose("en")
    yield
    choose("en")


@pytest.fixture(scope="module")
def piece(tmp_path_factory) -> Piece:
    """Music of which a warning is told and that has to be altered for a ukulele; its print
    cannot be held."""
    file = tmp_path_factory.mktemp("score") / "trial.abc"
    file.write_text(ODD)
    found = read_score(file)
    struck = found.bars[2].notes
    first, last = struck[0], struck[-1]
    printed = (WrittenFingers(first.id, string=4, fret=9, left=1, midi=first.midi),
               WrittenFingers(last.id, string=1, fret=3, left=9, midi=last.midi))  # fmt: skip
    return replace(found, written=printed)


@pytest.fixture(scope="module")
def made(piece) -> tuple[Lesson, Fingering, Solver]:
    choose("en")
    lesson = new_lesson(arrange(piece, UKULELE, transpose=0), UKULELE)
    solver = Solver(lesson.piece, UKULELE, HAND, pins=lesson.pins)
    return lesson, solver.solution(), solver


def fill(shelf: Shelf, lesson: Lesson, fingering: Fingering, solver: Solver) -> None:
    """Everything that the program itself writes into a store, in the language of the moment."""
    shelf.save(lesson)
    shelf.put_fingering(lesson, fingering)
    other = solver.alternatives(1, 2)[0]
    shelf.remember_choice(
        "alternative", lesson_id=lesson.id, bar=1, chosen=other.notes, reason=other.reason
    )
    shelf.keep_state(lesson, say("What gave way: {label}", label=say("Pin the bar")))
    (version,) = shelf.versions(lesson.id)
    shelf.save(replace(lesson, grade=3), say("Pin the bar"))
    shelf.go_back(version.id)
    shelf.duplicate(lesson.id)


def kept_texts(shelf: Shelf) -> list[str]:
    """Every text in every table, those inside documents and packed ones too."""
    out: list[str] = []
    with shelf.engine.connect() as store:
        tables = store.execute(sql("SELECT name FROM sqlite_master WHERE type = 'table'"))
        for (table,) in list(tables):
            if table.startswith("lesson_search"):
                continue
            for row in store.execute(sql(f"SELECT * FROM {table}")):
                for value in row:
                    out += leaves(opened(value))
    return out


def opened(value: object) -> object:
    """A column's value, or the document in it."""
    if isinstance(value, bytes):
        return json.loads(zlib.decompress(value))
    try:
        return read_text(value, "") if isinstance(value, str) else value
    except ValueError:
        return value


def leaves(value: object) -> list[str]:
    """The texts of a document, but not the English that a message is said from."""
    if isinstance(value, dict):
        return [t for name, held in value.items() if name != "say" for t in leaves(held)]
    if isinstance(value, list):
        return [t for held in value for t in leaves(held)]
    return [value] if isinstance(value, str) else []


@cache
def sentences() -> list[re.Pattern[str]]:
    """What sentences of the program look like once they are said."""
    known = []
    for text, _ in gather.sentences():
        if len(re.findall(r"[A-Za-z]{2,}", re.sub(r"\{[^{}]*\}", "", text))) >= FEWEST_WORDS:
            parts = [re.escape(part) for part in re.split(r"\{[^{}]*\}", text)]
            known.append(re.compile(".*".join(parts), re.S))
    assert len(known) > 1000
    return known


def said(texts: list[str]) -> list[str]:
    """The texts that are a sentence of the program with its fields filled in."""
    known = sentences()
    return [t for t in dict.fromkeys(texts) if " " in t and any(k.fullmatch(t) for k in known)]


def test_no_sentence_of_the_program_is_kept_in_any_table(tmp_path, made):
    with Shelf(tmp_path / "lessons.db") as shelf:
        fill(shelf, *made)
        texts = kept_texts(shelf)
    assert len(texts) > 100
    assert said(texts) == []


def test_the_search_for_sentences_finds_one(tmp_path, made):
    with Shelf(tmp_path / "lessons.db") as shelf:
        shelf.save(made[0], str.__str__(say("Pin the bar") + ""))  # said, and then plain text
        assert said(kept_texts(shelf)) == ["Pin the bar"]


def test_what_was_kept_in_english_is_read_in_german(tmp_path, made):
    lesson, fingering, solver = made
    with Shelf(tmp_path / "lessons.db") as shelf:
        fill(shelf, lesson, fingering, solver)
        english = told(shelf, lesson)
        choose("de")
        german = told(shelf, lesson)
    assert len(english) == len(german) > 8
    names = {"Trial"}
    alike = [(a, b) for a, b in zip(english, german, strict=True) if a == b and a not in names]
    assert alike == []
    assert not [s for s in german if re.search(r"\b(the|bar|string|finger|back|copy)\b", s, re.I)
                and not re.search(r"Finger", s)]  # fmt: skip


def told(shelf: Shelf, lesson: Lesson) -> list[str]:
    """All that the window shows of what is kept, as sentences."""
    found = shelf.load(lesson.id)
    kept = shelf.cached_fingering(found)
    assert kept is not None
    facts = [n.cut_reason or n.impossible for bar in kept.bars for n in bar.notes]
    facts += [bar.impossible for bar in kept.bars] + [c.reason for c in shelf.choices()]
    return [
        *warnings(found.piece), *altered(found), *(words(f) for f in facts if f),
        *(step.label for step in shelf.history(lesson.id).steps),
        *(version.name for version in shelf.versions(lesson.id)),
    ]  # fmt: skip


def test_an_archive_and_what_is_written_aside_speak_the_readers_language(tmp_path, made):
    lesson = made[0]
    with Shelf(tmp_path / "a.db") as shelf:
        shelf.save(lesson)
        shelf.keep_state(lesson, say("Before the archive was merged"))
        shelf.keep_version(lesson.id, "Spring")
        shelf.write_archive(tmp_path / "lessons.zip")
        Recovery(shelf.place).keep(lesson, say("Pin the bar"))
        choose("de")
        (aside,) = Recovery(shelf.place).found()
        assert str(aside.label) == say("Pin the bar") != "Pin the bar"
    with Shelf(tmp_path / "b.db") as other:
        other.merge_archive(tmp_path / "lessons.zip")
        names = [version.name for version in other.versions(lesson.id)]
    assert names == [say("Before the archive was merged"), "Spring"]


def test_an_older_lessons_sentences_stay_as_they_are(tmp_path, made):
    from workbench.music.codec import from_dict, to_dict

    document = to_dict(made[0])
    document["changes"] = ["The printed finger is left out."]
    document["piece"]["warnings"] = ["Bar 1 is too long."]
    choose("de")
    old = from_dict(Lesson, document)
    assert altered(old)[0] == "The printed finger is left out."
    assert warnings(old.piece) == ("Bar 1 is too long.",)
    with Shelf(tmp_path / "lessons.db") as shelf:
        shelf.save(old)
        assert shelf.load(old.id) == old


def test_a_text_that_only_looks_kept_is_shown_as_it_is():
    for text in ('{"say":', '{"say":1}', '{"say":"{a}","sense":"","fields":{}}', '{"say":[]}'):
        assert shown(text) in (text, "{a}")
