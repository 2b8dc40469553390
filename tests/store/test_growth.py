"""A shelf that is used for years: it stays quick, small and in order."""

from __future__ import annotations

import time
from dataclasses import replace
from datetime import timedelta

import pytest
from sqlalchemy import text

from tests.store.lessons_made import fingering, lesson
from workbench.store.conflict import Conflict
from workbench.store.documents import lesson_state
from workbench.teaching.lessons.lesson import NOTE_KINDS, BarNote


def test_an_edit_of_a_lesson_with_a_thousand_notes_costs_little_room(shelf):
    notes = tuple(
        BarNote(f"b{n}", NOTE_KINDS[n % 7], f"Note {n}: lean into finger {n % 4}.", 1, 2)
        for n in range(1000)
    )
    made = lesson(notes=notes)
    shelf.save(made)
    shelf.save(replace(made, capo=1))
    assert shelf.load(made.id) == replace(made, capo=1)
    whole = len(lesson_state(made))
    with shelf.engine.connect() as connection:
        kept = connection.scalar(text("SELECT max(length(state)) FROM steps"))
    assert whole > 100_000 and kept * 5 < whole


def test_a_search_of_very_many_words_costs_no_more_than_one_of_some(shelf):
    for number in range(200):
        shelf.save(lesson(f"l{number}", title=f"Boat song {number} of the quay"))

    def seconds(words):
        begun = time.process_time()
        shelf.lessons(words)
        return time.process_time() - begun

    few = " ".join(f"w{n}" for n in range(16))
    many = " ".join(f"w{n}" for n in range(400))
    ratio = min(seconds(many) for _ in range(3)) / min(seconds(few) for _ in range(3))
    assert ratio < 5
    assert shelf.lessons("boat song quay")


def test_a_clock_set_back_neither_mixes_up_versions_nor_empties_the_cache(shelf, clock):
    shelf.store.most_fingerings = 3
    made = lesson()
    shelf.save(made)
    names = []
    for number in range(6):
        clock.time -= timedelta(days=40)
        shelf.keep_version(made.id, f"v{number}")
        names.append(f"v{number}")
        changed = replace(made, capo=number)
        shelf.put_fingering(changed, fingering())
        assert shelf.cached_fingering(changed) is not None
    assert [version.name for version in shelf.versions(made.id)] == names
    assert [shelf.cached_fingering(replace(made, capo=n)) is not None for n in range(6)] == [
        False, False, False, True, True, True,
    ]  # fmt: skip


def test_a_change_made_on_an_older_state_is_refused(shelf):
    made = lesson()
    shelf.save(made)
    _, _, base = shelf.open(made.id)
    shelf.save(replace(made, capo=1), base=base)
    for change in (
        lambda: shelf.save(replace(made, capo=2), base=base),
        lambda: shelf.undo(made.id, base=base),
        lambda: shelf.go_to(made.id, 0, base=base),
    ):
        with pytest.raises(Conflict, match="changed in another window"):
            change()
    assert shelf.load(made.id).capo == 1
    _, _, base = shelf.open(made.id)
    assert shelf.undo(made.id, base=base).capo == made.capo


def test_a_store_of_ones_own_survives_a_power_cut(shelf):
    with shelf.engine.connect() as connection:
        assert connection.scalar(text("PRAGMA synchronous")) == 2  # FULL
        assert connection.scalar(text("PRAGMA journal_mode")) == "wal"
        assert connection.scalar(text("PRAGMA foreign_keys")) == 1
