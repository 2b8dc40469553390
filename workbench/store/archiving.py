"""Carrying lessons to another shelf."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from pathlib import Path

from sqlalchemy import select
from sqlalchemy.orm import Session

from workbench.language.speech import say
from workbench.store.archive import Archive, Carried, NamedState, read_archive, write_archive
from workbench.store.base import Store, aware, kept_time
from workbench.store.documents import clean, lesson_state, pack_text
from workbench.store.lessons import Lessons
from workbench.store.pieces import Pieces
from workbench.store.schema import (
    NAME,
    GroupMember,
    LessonRecord,
    PieceRecord,
    VersionRecord,
)
from workbench.store.scores import Scores
from workbench.store.states import LessonStates, read_view
from workbench.store.versions import Versions
from workbench.teaching.lessons.lesson import Lesson


@dataclass(frozen=True)
class Merged:
    """What merging an archive brought: titles of lessons that are new here, that were
    brought up to date (what was here is a version now), whose newer state here stands (the
    archive's is a version now), and how many were the same."""

    added: tuple[str, ...] = ()
    updated: tuple[str, ...] = ()
    newer_here: tuple[str, ...] = ()
    same: int = 0


class Archiving:
    """Writing archives, and taking in what they hold."""

    def __init__(
        self,
        store: Store,
        scores: Scores,
        states: LessonStates,
        pieces: Pieces,
        lessons: Lessons,
        versions: Versions,
    ) -> None:
        self._store = store
        self._scores = scores
        self._states = states
        self._pieces = pieces
        self._lessons = lessons
        self._versions = versions

    def write_archive(
        self,
        path: Path,
        lesson_ids: Iterable[str] | None = None,
        progress: Callable[[int], None] = lambda done: None,
    ) -> int:
        """Write lessons into an archive, by default the whole shelf but the bin; how many.

        Raises BadInput where it cannot be written, and then leaves an older file as it was.
        """
        with self._store.reading() as session:
            if lesson_ids is None:
                rows = select(LessonRecord.id).where(LessonRecord.deleted.is_(None))
                ids = list(session.scalars(rows.order_by(LessonRecord.number)))
                groups: dict[str, tuple[str, ...]] = {}
                for name, student in session.execute(
                    select(GroupMember.group, GroupMember.student).order_by(
                        GroupMember.group, GroupMember.student
                    )
                ):
                    groups[name] = (*groups.get(name, ()), *([student] if student else []))
            else:
                ids, groups = list(lesson_ids), {}
            carried = self._carried(session, ids)
            return write_archive(path, carried, groups, self._store.now(), progress)

    def _carried(self, session: Session, ids: list[str]) -> Iterator[Carried]:
        for lesson_id in ids:
            record = self._states.record(session, lesson_id)
            query = select(VersionRecord).where(VersionRecord.lesson == record.number)
            versions = session.scalars(query.order_by(VersionRecord.id))
            piece = session.get_one(PieceRecord, record.piece_id)
            what = say("Piece '{title}'", title=piece.title)
            yield Carried(
                self._states.lesson(session, record, self._states.present(session, record)),
                aware(record.created),
                aware(record.updated),
                record.archived,
                tuple(
                    NamedState(v.name, aware(v.made), self._states.lesson(session, record, v))
                    for v in versions
                ),
                self._scores.read(session, piece.music, what),
                piece.source,
                read_view(record.view).selected_bar,
            )
            session.expunge_all()  # a shelf of thousands is not held whole

    def merge_archive(
        self, path: str | Path, progress: Callable[[int, int], None] = lambda done, of: None
    ) -> Merged:
        """Take in what an archive holds, all or nothing.

        A lesson that is there already in another state is brought up to date where the
        archive's is the newer one; else it stays. Either way the other state is kept as a
        version: nothing is overwritten. Raises BadInput where the archive cannot be used.
        """
        archive = read_archive(path)
        with self._store.writing() as session:
            return self._merge(session, archive, progress)

    def _merge(
        self, session: Session, archive: Archive, progress: Callable[[int, int], None]
    ) -> Merged:
        added, updated, newer, same = [], [], [], 0
        for number, carried in enumerate(archive.lessons, 1):
            lesson, title = carried.lesson, carried.lesson.title
            record = session.scalar(select(LessonRecord).where(LessonRecord.id == lesson.id))
            if record is None:
                record = self._take_in(session, carried)
                added.append(title)
            elif self._same_state(session, record, lesson):
                same += 1
            elif carried.updated > aware(record.updated):
                here = self._states.lesson(session, record, self._states.present(session, record))
                before = say("Before the archive was merged")
                self._versions.name_state(session, record, here, before)
                self._lessons.push(session, record, lesson, say("From an archive"), False)
                updated.append(title)
            else:
                self._versions.name_state(session, record, lesson, say("From an archive"))
                newer.append(title)
            for kept in carried.versions:
                self._versions.name_state(
                    session, record, kept.lesson, kept.name, kept_time(kept.made)
                )
            progress(number, len(archive.lessons))
        for name, students in archive.groups.items():
            for student in students or ("",):
                if clean(name).strip() and len(name) <= NAME:
                    member = GroupMember(group=clean(name).strip(), student=clean(student)[:NAME])
                    session.merge(member)
        return Merged(tuple(added), tuple(updated), tuple(newer), same)

    def _take_in(self, session: Session, carried: Carried) -> LessonRecord:
        piece_id = None
        if carried.original is not None:
            known = self._pieces.same(session, carried.original)
            piece_id = (known or self._pieces.take_in(session, carried.original, carried.source)).id
        self._lessons.take_in(
            session, carried.lesson, piece_id, say("From an archive"), carried.bar
        )
        record = self._states.record(session, carried.lesson.id)
        record.created, record.updated = kept_time(carried.created), kept_time(carried.updated)
        record.archived = carried.archived
        return record

    def _same_state(self, session: Session, record: LessonRecord, lesson: Lesson) -> bool:
        step = self._states.present(session, record)
        plain = lesson_state(lesson)
        return step.state in (plain, pack_text(plain)) and step.music == self._scores.keep(
            session, lesson.piece
        )
