"""What is kept around a lesson: versions, the archive, the bin, solved fingerings."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import timedelta

from sqlalchemy import delete, func, select
from sqlalchemy.orm import Session

from workbench.fingering.types import Fingering
from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.store.base import aware
from workbench.store.documents import clean, fingering_key, music_document, pack, unpack
from workbench.store.edition import engine_edition
from workbench.store.lessons import LessonShelf, expect
from workbench.store.rows import Version
from workbench.store.schema import (
    FingeringRecord,
    LessonRecord,
    PieceRecord,
    VersionRecord,
)
from workbench.teaching.lessons.lesson import Lesson

#: How many solved fingerings are kept; the oldest are let go.
MOST_FINGERINGS = 2000
_TICK = timedelta(microseconds=1)


class KeepingShelf(LessonShelf):
    """Versions, archive, bin and solved fingerings."""

    most_fingerings = MOST_FINGERINGS

    # Versions.

    def keep_version(self, lesson_id: str, name: str) -> Version:
        """Keep the lesson as it now is under a name; undo and redo leave it alone."""
        with self._writing() as session:
            record = self._record(session, lesson_id)
            step = self._present(session, record)
            kept = VersionRecord(
                lesson=record.number, name=clean(name), made=self._time(), state=step.state,
                music=step.music,
            )  # fmt: skip
            session.add(kept)
            session.flush()
            return Version(kept.id, lesson_id, kept.name, aware(kept.made))

    def versions(self, lesson_id: str) -> tuple[Version, ...]:
        """The kept versions of a lesson, oldest first."""
        with self._reading() as session:
            record = self._record(session, lesson_id)
            columns = (VersionRecord.id, VersionRecord.name, VersionRecord.made)
            query = select(*columns).where(VersionRecord.lesson == record.number)
            return tuple(
                Version(row.id, lesson_id, row.name, aware(row.made))
                for row in session.execute(query.order_by(VersionRecord.id))
            )

    def load_version(self, version_id: int) -> Lesson:
        """The lesson as it was in a version; the shelf is not changed."""
        with self._reading() as session:
            kept, record = self._version(session, version_id)
            return self._lesson(session, record, kept)

    def go_back(self, version_id: int, *, base: int | None = None) -> Lesson:
        """Make a version the present state; a step that can be undone. ``base``: as for
        ``save``."""
        with self._writing() as session:
            kept, record = self._version(session, version_id)
            expect(record, base)
            lesson = self._lesson(session, record, kept)
            self._push(session, record, lesson, say("Back to '{name}'", name=kept.name), False)
            return lesson

    def delete_version(self, version_id: int) -> None:
        """Throw a version away."""
        with self._writing() as session:
            kept, _ = self._version(session, version_id)
            session.delete(kept)
            self._drop_unused_music(session, kept.music)

    def _version(self, session: Session, version_id: int) -> tuple[VersionRecord, LessonRecord]:
        kept = session.get(VersionRecord, version_id)
        if kept is None:
            raise BadInput("Version {id} is not on the shelf any more.", id=version_id)
        return kept, session.get_one(LessonRecord, kept.lesson)

    # Archive and bin.

    def archive(self, lesson_id: str, archived: bool = True) -> None:
        """Move a lesson to the archive, or back."""
        with self._writing() as session:
            self._record(session, lesson_id).archived = archived

    def delete(self, lesson_id: str) -> None:
        """Move a lesson to the bin; ``restore`` brings it back whole."""
        with self._writing() as session:
            record = self._record(session, lesson_id)
            record.deleted = record.deleted or self._time()

    def restore(self, lesson_id: str) -> None:
        """Take a lesson out of the bin."""
        with self._writing() as session:
            self._record(session, lesson_id).deleted = None

    def move(
        self,
        lesson_ids: Iterable[str],
        *,
        archived: bool | None = None,
        deleted: bool | None = None,
    ) -> None:
        """Move several lessons to the archive or the bin, or back, all or none; None leaves
        that as it is. Those that are there already stay as they are."""
        with self._writing() as session:
            for lesson_id in lesson_ids:
                record = self._record(session, lesson_id)
                if archived is not None:
                    record.archived = archived
                if deleted is not None:
                    record.deleted = (record.deleted or self._time()) if deleted else None

    def empty_bin(self, older_than_days: float = 30) -> int:
        """Forget for good what was deleted longer ago than that; how many lessons.

        Pieces in the bin go as well once no lesson is made of them.
        """
        with self._writing() as session:
            before = self._time() - timedelta(days=older_than_days)
            old = LessonRecord.deleted <= before
            count = session.scalar(select(func.count()).select_from(LessonRecord).where(old))
            session.execute(delete(LessonRecord).where(old))
            session.execute(
                delete(PieceRecord).where(
                    PieceRecord.deleted <= before,
                    ~select(LessonRecord.number)
                    .where(LessonRecord.piece_id == PieceRecord.id)
                    .exists(),
                )
            )
            self._drop_unused_music(session)
            return int(count or 0)

    # Solved fingerings.

    def fingering_key(self, lesson: Lesson, edition: str | None = None) -> str:
        """What a lesson's fingering is kept under: a digest of all it depends on.

        ``edition`` names the engine and its weights, by default this program's.
        """
        if edition is None:
            edition = engine_edition()
        music = self._music.digest_of(lesson.piece)
        if music is None:
            music, _ = music_document(lesson.piece)
            self._music.hold(music, lesson.piece)
        return fingering_key(lesson, music, edition)

    def cached_fingering(self, lesson: Lesson, edition: str | None = None) -> Fingering | None:
        """The kept fingering of this state of a lesson; None where it is to be solved.

        A damaged one counts as none, for it can be solved again.
        """
        key = self.fingering_key(lesson, edition)
        with self._reading() as session:
            found = session.get(FingeringRecord, key)
            if found is None:
                return None
            try:
                return unpack(Fingering, found.document, say("A kept fingering"))
            except BadInput:
                return None

    def put_fingering(
        self, lesson: Lesson, fingering: Fingering, edition: str | None = None
    ) -> None:
        """Keep the fingering of this state of a lesson, in place of an earlier one."""
        if self.read_only:
            return
        key, document = self.fingering_key(lesson, edition), pack(fingering)
        with self._writing() as session:
            # The newest is the last one kept, whatever the clock says meanwhile.
            last = session.scalar(select(func.max(FingeringRecord.made)))
            made = max(self._time(), last + _TICK) if last else self._time()
            session.merge(FingeringRecord(key=key, document=document, made=made))
            session.flush()
            newest = select(FingeringRecord.made).order_by(FingeringRecord.made.desc())
            oldest = session.scalar(newest.offset(self.most_fingerings - 1).limit(1))
            if oldest is not None:
                session.execute(delete(FingeringRecord).where(FingeringRecord.made < oldest))
