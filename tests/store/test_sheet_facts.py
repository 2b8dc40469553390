"""What a printed page takes from the shelf: history, and grips known from before."""

from __future__ import annotations

from dataclasses import replace

import pytest

from workbench.fingering.engine import solve
from workbench.instrument.table import hand, instrument
from workbench.store.sheet_facts import known_grips, lesson_history
from workbench.store.shelf import Shelf
from workbench.teaching.lessons.demo import demo_lessons


@pytest.fixture
def shelf(tmp_path):
    with Shelf(tmp_path / "lessons.sqlite") as kept:
        yield kept


def test_the_history_tells_versions_and_what_was_done(shelf) -> None:
    lesson = demo_lessons()[0]
    kept = shelf.add(lesson)
    shelf.save(replace(kept, tempo_percent=80), "Tempo")
    shelf.save(replace(kept, tempo_percent=70), "Slower tempo")
    shelf.keep_version(kept.id, "Before the concert")
    rows = lesson_history(shelf, kept.id)
    words = [what for _, what in rows]
    assert "Version 'Before the concert'" in words
    assert any("Tempo" in w and "Slower tempo" in w for w in words)
    assert all(len(when) == len("2026-03-12") and when[4] == "-" for when, _ in rows)
    assert [when for when, _ in rows] == sorted(when for when, _ in rows)


def test_what_was_undone_is_not_told(shelf) -> None:
    kept = shelf.add(demo_lessons()[0])
    shelf.save(replace(kept, tempo_percent=80), "A step too far")
    shelf.undo(kept.id)
    assert not any("too far" in what for _, what in lesson_history(shelf, kept.id))


def test_grips_of_earlier_lessons_of_the_student_are_known(shelf) -> None:
    first, second = (replace(x, student="Mira") for x in demo_lessons()[:2])
    first = shelf.add(first)
    second = shelf.add(second)
    assert known_grips(shelf, second) == frozenset(), "nothing is fingered yet"
    player = instrument(first.instrument, first.capo)
    shelf.put_fingering(
        first,
        solve(first.piece, player, hand(first.hand), settings=first.settings, pins=first.pins),
    )
    known = known_grips(shelf, second)
    assert known and all(len(name.split("-")) == player.strings for name in known)
    assert known_grips(shelf, first) == frozenset(), "the first lesson has none before it"
    assert known_grips(shelf, replace(second, student="")) == frozenset()
    assert known_grips(shelf, replace(second, instrument="guitar")) == frozenset()
