"""The archive and the bin: where lessons lie that nobody teaches just now."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import timedelta

from sqlalchemy import delete, func, select

from workbench.store.base import Store
from workbench.store.schema import LessonRecord, PieceRecord
from workbench.store.scores import Scores
from workbench.store.states import LessonStates


class PuttingAway:
    """Lessons into the archive or the bin, and back."""

    def __init__(self, store: Store, scores: Scores, states: LessonStates) -> None:
        self._store = store
        self._scores = scores
        self._states = states

    def archive(self, lesson_id: str, archived: bool = True) -> None:
        """Move a lesson to the archive, or back."""
        with self._store.writing() as session:
            self._states.record(session, lesson_id).archived = archived

    def delete(self, lesson_id: str) -> None:
        """Move a lesson to the bin; ``restore`` brings it back whole."""
        with self._store.writing() as session:
            record = self._states.record(session, lesson_id)
            record.deleted = record.deleted or self._store.time()

    def restore(self, lesson_id: str) -> None:
        """Take a lesson out of the bin."""
        with self._store.writing() as session:
            self._states.record(session, lesson_id).deleted = None

    def move(
        self,
        lesson_ids: Iterable[str],
        *,
        archived: bool | None = None,
        deleted: bool | None = None,
    ) -> None:
        """Move several lessons to the archive or the bin, or back, all or none; None leaves
        that as it is. Those that are there already stay as they are."""
        with self._store.writing() as session:
            for lesson_id in lesson_ids:
                record = self._states.record(session, lesson_id)
                if archived is not None:
                    record.archived = archived
                if deleted is not None:
                    record.deleted = (record.deleted or self._store.time()) if deleted else None

    def empty_bin(self, older_than_days: float = 30) -> int:
        """Forget for good what was deleted longer ago than that; how many lessons.

        Pieces in the bin go as well once no lesson is made of them.
        """
        with self._store.writing() as session:
            before = self._store.time() - timedelta(days=older_than_days)
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
            self._scores.drop_unused(session)
            return int(count or 0)
