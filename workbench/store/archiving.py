"""Carrying lessons to another shelf, and forgetting a student for good."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from pathlib import Path

from sqlalchemy import delete, or_, select, update
from sqlalchemy.orm import Session

from workbench.language.kept import kept as as_kept
from workbench.language.kept import written
from workbench.language.speech import say
from workbench.store.archive import Archive, Carried, Kept, read_archive, write_archive
from workbench.store.base import aware, kept_time
from workbench.store.documents import as_text, clean, lesson_state, pack_text, read_text
from workbench.store.finding import FindingShelf
from workbench.store.schema import (
    NAME,
    GroupMember,
    LessonRecord,
    PieceRecord,
    StepRecord,
    VersionRecord,
)
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


class ArchivingShelf(FindingShelf):
    """Archives, and the right to be forgotten."""

    def write_archive(
        self,
        path: Path,
        lesson_ids: Iterable[str] | None = None,
        progress: Callable[[int], None] = lambda done: None,
    ) -> int:
        """Write lessons into an archive, by default the whole shelf but the bin; how many.

        Raises BadInput where it cannot be written, and then leaves an older file as it was.
        """
        with self._reading() as session:
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
            return write_archive(path, carried, groups, self._now(), progress)

    def _carried(self, session: Session, ids: list[str]) -> Iterator[Carried]:
        for lesson_id in ids:
            record = self._record(session, lesson_id)
            query = select(VersionRecord).where(VersionRecord.lesson == record.number)
            versions = session.scalars(query.order_by(VersionRecord.id))
            piece = session.get_one(PieceRecord, record.piece_id)
            what = say("Piece '{title}'", title=piece.title)
            yield Carried(
                self._lesson(session, record, self._present(session, record)),
                aware(record.created),
                aware(record.updated),
                record.archived,
                tuple(
                    Kept(v.name, aware(v.made), self._lesson(session, record, v)) for v in versions
                ),
                self._read_music(session, piece.music, what),
                piece.source,
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
        with self._writing() as session:
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
                self._name_state(
                    session, record, self._lesson(session, record, self._present(session, record)),
                    say("Before the archive was merged"),
                )  # fmt: skip
                self._push(session, record, lesson, say("From an archive"), False)
                updated.append(title)
            else:
                self._name_state(session, record, lesson, say("From an archive"))
                newer.append(title)
            for kept in carried.versions:
                self._name_state(session, record, kept.lesson, kept.name, kept_time(kept.made))
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
            known = self._same(session, carried.original)
            piece_id = (known or self._add_piece(session, carried.original, carried.source)).id
        self._add(session, carried.lesson, piece_id, say("From an archive"))
        record = self._record(session, carried.lesson.id)
        record.created, record.updated = kept_time(carried.created), kept_time(carried.updated)
        record.archived = carried.archived
        return record

    def _same_state(self, session: Session, record: LessonRecord, lesson: Lesson) -> bool:
        step = self._present(session, record)
        plain = lesson_state(lesson)
        return step.state in (plain, pack_text(plain)) and step.music == self._keep_music(
            session, lesson.piece
        )

    def _name_state(
        self, session: Session, record: LessonRecord, lesson: Lesson, name: str, made: object = None
    ) -> None:
        """Keep a state as a version, unless there is one of that name and state."""
        state = pack_text(lesson_state(lesson))
        music = self._keep_music(session, lesson.piece)
        same = select(VersionRecord.id).where(
            VersionRecord.lesson == record.number, VersionRecord.name == clean(as_kept(name)),
            VersionRecord.state == state, VersionRecord.music == music,
        )  # fmt: skip
        if session.scalar(same) is None:
            session.add(
                VersionRecord(
                    lesson=record.number, name=clean(as_kept(name)), made=made or self._time(),
                    state=state, music=music,
                )
            )  # fmt: skip

    def keep_state(self, lesson: Lesson, name: str) -> None:
        """Keep a state of a lesson that is on the shelf as a version; its present state and
        its history stay as they are."""
        with self._writing() as session:
            self._name_state(session, self._record(session, lesson.id), lesson, name)

    # Forgetting.

    def erase_student(self, name: str) -> int:
        """Forget a student for good: the lessons that are theirs, wherever they lie, their
        places in groups, and their name in what other lessons were before. How many lessons.

        The room is cleared, so that the file holds the name no more. Backups and archives
        made before still do.
        """
        with self._writing() as session:
            mine = list(
                session.scalars(select(LessonRecord.number).where(LessonRecord.student == name))
            )
            session.execute(delete(LessonRecord).where(LessonRecord.number.in_(mine)))
            session.execute(delete(GroupMember).where(GroupMember.student == name))
            for table in (StepRecord, VersionRecord):
                self._forget_in(session, table, name)
            session.execute(
                update(StepRecord)
                .where(or_(*(StepRecord.label.contains(n, autoescape=True) for n in written(name))))
                .values(label=as_kept(say("Edit")))
            )
            self._drop_unused_music(session)
        self.clear_room()
        return len(mine)

    def _forget_in(
        self, session: Session, table: type[StepRecord] | type[VersionRecord], name: str
    ) -> None:
        for number, state in session.execute(select(table.id, table.state)).all():
            data = read_text(state, say("A kept state"))
            if isinstance(data, dict) and data.get("student") == name:
                plain = replace_student(data)
                session.execute(
                    update(table).where(table.id == number).values(state=pack_text(plain))
                )

    def clear_room(self) -> None:
        """Give back the room of what was deleted, so that no trace of it is left."""
        if self.place.sqlite:
            with self._write_lock, self.engine.connect() as connection:
                raw = connection.connection.driver_connection
                assert raw is not None
                if self._full_text:
                    raw.execute("INSERT INTO lesson_search(lesson_search) VALUES ('optimize')")
                raw.execute("VACUUM")
                raw.execute("PRAGMA wal_checkpoint(TRUNCATE)")


def replace_student(data: dict[str, object]) -> str:
    """A lesson's state without its student, as text."""
    return as_text({**data, "student": ""})
