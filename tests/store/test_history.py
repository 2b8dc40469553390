"""Undo and redo, against a plain list as the model."""

from __future__ import annotations

import shutil
import tempfile
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, rule
from sqlalchemy import text

from tests.store.lessons_made import lesson, piece
from workbench.fingering.types import Pin
from workbench.store.rows import View
from workbench.store.shelf import Shelf
from workbench.teaching.lessons.lesson import BarNote

LONGEST = 6


class UndoHistory(RuleBasedStateMachine):
    """``states`` and ``at`` are the model; the shelf must always agree."""

    @initialize()
    def begin(self):
        self.folder = Path(tempfile.mkdtemp())
        self.shelf = self.open()
        self.now = lesson()
        self.shelf.add(self.now)
        self.states, self.at = [(self.now, "New lesson")], 0
        self.bar = 0
        self.versions = []

    def open(self):
        shelf = Shelf(self.folder / "lessons.db")
        shelf.store.longest_history = LONGEST
        return shelf

    def push(self, label):
        self.states = [*self.states[: self.at + 1], (self.now, label)][-LONGEST:]
        self.at = len(self.states) - 1

    def edit(self, label, merge=False, bar=None, **changes):
        before = self.now
        self.now = replace(self.now, **changes)
        self.bar = self.bar if bar is None else bar
        told = self.shelf.save(self.now, label, merge=merge, bar=bar)
        assert told == (self.now != before)
        if not told:
            return
        last = self.at == len(self.states) - 1
        if merge and self.at > 0 and last and self.states[self.at][1] == label:
            self.states[self.at] = (self.now, label)
        else:
            self.push(label)

    @rule(title=st.sampled_from("abc"))
    def retitle(self, title):
        self.edit("Title", title=title)

    @rule(words=st.text("no", max_size=3))
    def type_note(self, words):
        self.edit("Note", merge=True, notes=(BarNote("b", "sound", words, 0, 0),))

    @rule(fret=st.integers(0, 3))
    def pin(self, fret):
        self.edit("Pin", pins=(Pin("n1-0", string=1, fret=fret),))

    @rule(shift=st.integers(0, 2), bar=st.integers(0, 9))
    def change_music(self, shift, bar):
        self.edit("Music", piece=piece(shift=shift), bar=bar)

    @rule(bar=st.integers(0, 9))
    def only_look(self, bar):
        self.edit("Look", bar=bar)

    @rule(bar=st.integers(0, 9))
    def only_keep_the_view(self, bar):
        self.shelf.save_view(self.now.id, View(bar))
        self.bar = bar

    def go(self, by, given):
        if not 0 <= self.at + by < len(self.states):
            assert given is None
            return
        self.at += by
        self.now = self.states[self.at][0]
        assert given == self.now

    @rule()
    def undo(self):
        self.go(-1, self.shelf.undo(self.now.id))

    @rule()
    def redo(self):
        self.go(+1, self.shelf.redo(self.now.id))

    @rule()
    def keep_version(self):
        kept = self.shelf.keep_version(self.now.id, f"v{len(self.versions)}")
        self.versions.append((kept, self.now))

    @rule(which=st.integers(0, 20))
    def go_back(self, which):
        if self.versions:
            kept, then = self.versions[which % len(self.versions)]
            changed = then != self.now
            self.now = self.shelf.go_back(kept.id)
            assert self.now == then
            if changed:
                self.push(f"Back to '{kept.name}'")

    @rule()
    def close_and_open(self):
        self.shelf.close()
        self.shelf = self.open()

    @invariant()
    def the_shelf_agrees(self):
        assert self.shelf.load(self.now.id) == self.now
        assert self.shelf.view(self.now.id).selected_bar == self.bar
        history = self.shelf.history(self.now.id)
        assert [step.label for step in history.steps] == [label for _, label in self.states]
        assert history.at == self.at
        assert [v for v, _ in self.versions] == list(self.shelf.versions(self.now.id))

    @invariant()
    def no_music_is_kept_that_nothing_needs(self):
        needed = {then.piece for then, _ in self.states} | {then.piece for _, then in self.versions}
        needed.add(piece())  # as imported
        with self.shelf.engine.connect() as connection:
            assert connection.scalar(text("SELECT count(*) FROM music")) == len(needed)

    def teardown(self):
        if hasattr(self, "shelf"):
            self.shelf.close()
            shutil.rmtree(self.folder)


UndoHistory.TestCase.settings = settings(max_examples=12, stateful_step_count=30, deadline=None)
TestUndoHistory = UndoHistory.TestCase


def test_the_history_says_what_undo_and_redo_would_do(shelf):
    made = lesson()
    shelf.add(made)
    shelf.save_view(made.id, View(2))
    shelf.save(replace(made, title="x"), "Title", bar=7)
    history = shelf.history(made.id)
    assert (history.undo_label, history.redo_label) == ("Title", None)
    assert [step.bar for step in history.steps] == [0, 7]
    assert history.steps[0].made < history.steps[1].made
    shelf.undo(made.id)
    history = shelf.history(made.id)
    assert (history.undo_label, history.redo_label) == (None, "Title")


def test_undo_and_redo_survive_closing(file):
    made = lesson()
    with Shelf(file) as shelf:
        shelf.add(made)
        shelf.save(replace(made, title="x"), "Title")
        shelf.save(replace(made, title="x", capo=2), "Capo")
        shelf.undo(made.id)
    with Shelf(file) as shelf:
        assert shelf.redo(made.id).capo == 2
        shelf.undo(made.id)
        assert shelf.undo(made.id) == made
        assert shelf.undo(made.id) is None


def test_lists_and_search_follow_undo(shelf):
    made = lesson()
    shelf.add(made)
    shelf.save(replace(made, title="Harbour", techniques=("barre",)), "Title")
    assert shelf.lessons("harbour", technique="barre")
    shelf.undo(made.id)
    assert shelf.lessons("harbour") == () == shelf.lessons(technique="barre")
    assert [row.title for row in shelf.lessons("mondays", technique="pickup")] == [made.title]


def test_several_lessons_are_saved_together_or_not_at_all(shelf):
    assert shelf.save_all(lesson(f"l{i}") for i in range(3)) == 3

    def broken():
        yield lesson("l0", title="changed")
        raise RuntimeError("the reader fell over")

    with pytest.raises(RuntimeError):
        shelf.save_all(broken())
    assert {row.title for row in shelf.lessons()} == {lesson().title}
