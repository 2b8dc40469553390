"""The shelf: everything the program keeps, behind one object.

    with Shelf() as shelf:
        same = shelf.find_same(piece)
        row = same or shelf.add_piece(piece, "minuet.musicxml")
        shelf.add(lesson, row.id)
        shelf.save(changed, "Note written")
        lesson = shelf.undo(lesson.id)

Every call is one transaction and may come from any thread. Faults that the
user can mend (a full disk, a locked, damaged or newer store) are BadInput and
leave the store as it was.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from pathlib import Path

from sqlalchemy import Engine

from workbench.language.message import Message
from workbench.store.archiving import Archiving
from workbench.store.base import WAIT_SECONDS, Store, utc_now
from workbench.store.finding import Finding
from workbench.store.fingerings import Fingerings
from workbench.store.forgetting import Forgetting
from workbench.store.lessons import Lessons
from workbench.store.opening import StorePlace
from workbench.store.pieces import Pieces
from workbench.store.putting_away import PuttingAway
from workbench.store.scores import Scores
from workbench.store.states import LessonStates
from workbench.store.studio import Studio
from workbench.store.versions import Versions


class Shelf:
    """Pieces, lessons with their undo histories, versions, groups, settings, choices: what each
    part of the shelf offers, under one roof."""

    def __init__(
        self,
        url: str | Path | None = None,
        *,
        wait_seconds: float = WAIT_SECONDS,
        now: Callable[[], datetime] = utc_now,
    ) -> None:
        """Open the store of that place; see ``Store``."""
        self.store = store = Store(url, wait_seconds=wait_seconds, now=now)
        self.close = store.close
        scores = Scores()
        states = LessonStates(scores)

        pieces = Pieces(store, scores)
        self.find_same = pieces.find_same
        self.add_piece = pieces.add_piece
        self.piece = pieces.piece
        self.pieces = pieces.pieces
        self.load_piece = pieces.load_piece
        self.delete_piece = pieces.delete_piece
        self.restore_piece = pieces.restore_piece

        lessons = Lessons(store, scores, states, pieces)
        self.add = lessons.add
        self.load = lessons.load
        self.open = lessons.open
        self.revision = lessons.revision
        self.save = lessons.save
        self.save_all = lessons.save_all
        self.undo = lessons.undo
        self.redo = lessons.redo
        self.go_to = lessons.go_to
        self.state_at = lessons.state_at
        self.history = lessons.history
        self.view = lessons.view
        self.save_view = lessons.save_view
        self.duplicate = lessons.duplicate

        finding = Finding(store, states)
        self.lessons = finding.lessons
        self.lesson_row = finding.lesson_row
        self.techniques = finding.techniques
        self.key_names = finding.key_names
        self.instruments = finding.instruments
        self.excerpt = finding.excerpt
        self.students = finding.students

        versions = Versions(store, scores, states, lessons)
        self.keep_version = versions.keep_version
        self.keep_state = versions.keep_state
        self.versions = versions.versions
        self.load_version = versions.load_version
        self.go_back = versions.go_back
        self.delete_version = versions.delete_version

        putting_away = PuttingAway(store, scores, states)
        self.archive = putting_away.archive
        self.delete = putting_away.delete
        self.restore = putting_away.restore
        self.move = putting_away.move
        self.empty_bin = putting_away.empty_bin

        fingerings = Fingerings(store, scores)
        self.cached_fingering = fingerings.cached_fingering
        self.put_fingering = fingerings.put_fingering

        studio = Studio(store)
        self.groups = studio.groups
        self.set_group = studio.set_group
        self.delete_group = studio.delete_group
        self.setting = studio.setting
        self.settings = studio.settings
        self.set_setting = studio.set_setting
        self.set_settings = studio.set_settings
        self.choices = studio.choices
        self.remember_choice = studio.remember_choice

        archiving = Archiving(store, scores, states, pieces, lessons, versions)
        self.write_archive = archiving.write_archive
        self.merge_archive = archiving.merge_archive
        forgetting = Forgetting(store, scores)
        self.erase_student = forgetting.erase_student
        self.clear_room = forgetting.clear_room

    @property
    def place(self) -> StorePlace:
        """Where the store lies."""
        return self.store.place

    @property
    def engine(self) -> Engine:
        """The database below, for what no part of the shelf does."""
        return self.store.engine

    @property
    def read_only(self) -> Message | None:
        """Why nothing can be changed in this store, in one sentence; None where it can."""
        return self.store.read_only

    def __enter__(self) -> Shelf:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()
