"""The right to be forgotten: a student's lessons and name leave the store for good."""

from __future__ import annotations

from sqlalchemy import delete, or_, select, update
from sqlalchemy.orm import Session

from workbench.language.speech import say
from workbench.language.stored import kept, written
from workbench.store.base import Store
from workbench.store.documents import as_text, pack_text, read_text
from workbench.store.schema import GroupMember, LessonRecord, StepRecord, VersionRecord
from workbench.store.scores import Scores


class Forgetting:
    """Students taken out of the store, and the room they leave cleared."""

    def __init__(self, store: Store, scores: Scores) -> None:
        self._store = store
        self._scores = scores

    def erase_student(self, name: str) -> int:
        """Forget a student for good: the lessons that are theirs, wherever they lie, their
        places in groups, and their name in what other lessons were before. How many lessons.

        The room is cleared, so that the file holds the name no more. Backups and archives
        made before still do.
        """
        with self._store.writing() as session:
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
                .values(label=kept(say("Edit")))
            )
            self._scores.drop_unused(session)
        self.clear_room()
        return len(mine)

    def _forget_in(
        self, session: Session, table: type[StepRecord] | type[VersionRecord], name: str
    ) -> None:
        for number, state in session.execute(select(table.id, table.state)).all():
            data = read_text(state, say("A kept state"))
            if isinstance(data, dict) and data.get("student") == name:
                plain = _without_student(data)
                session.execute(
                    update(table).where(table.id == number).values(state=pack_text(plain))
                )

    def clear_room(self) -> None:
        """Give back the room of what was deleted, so that no trace of it is left."""
        if self._store.place.sqlite:
            with self._store.write_lock, self._store.engine.connect() as connection:
                raw = connection.connection.driver_connection
                assert raw is not None
                if self._store.full_text:
                    raw.execute("INSERT INTO lesson_search(lesson_search) VALUES ('optimize')")
                raw.execute("VACUUM")
                raw.execute("PRAGMA wal_checkpoint(TRUNCATE)")


def _without_student(data: dict[str, object]) -> str:
    """A lesson's state without its student, as text."""
    return as_text({**data, "student": ""})
