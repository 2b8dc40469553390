"""Versions of a lesson: named states that undo and redo leave alone."""

from __future__ import annotations

from sqlalchemy import select
from sqlalchemy.orm import Session

from workbench.language.speech import say
from workbench.language.stored import kept as as_kept
from workbench.language.stored import read, shown
from workbench.music.errors import BadInput
from workbench.store.base import Store, aware
from workbench.store.documents import clean, lesson_state, pack_text
from workbench.store.lessons import Lessons, expect
from workbench.store.rows import Version
from workbench.store.schema import LessonRecord, VersionRecord
from workbench.store.scores import Scores
from workbench.store.states import LessonStates
from workbench.teaching.lessons.lesson import Lesson


class Versions:
    """Keeping states under a name, and going back to them."""

    def __init__(
        self, store: Store, scores: Scores, states: LessonStates, lessons: Lessons
    ) -> None:
        self._store = store
        self._scores = scores
        self._states = states
        self._lessons = lessons

    def keep_version(self, lesson_id: str, name: str) -> Version:
        """Keep the lesson as it now is under a name; undo and redo leave it alone."""
        with self._store.writing() as session:
            record = self._states.record(session, lesson_id)
            step = self._states.present(session, record)
            kept = VersionRecord(
                lesson=record.number, name=clean(as_kept(name)), made=self._store.time(),
                state=step.state, music=step.music,
            )  # fmt: skip
            session.add(kept)
            session.flush()
            return Version(kept.id, lesson_id, shown(kept.name), aware(kept.made))

    def versions(self, lesson_id: str) -> tuple[Version, ...]:
        """The kept versions of a lesson, oldest first."""
        with self._store.reading() as session:
            record = self._states.record(session, lesson_id)
            columns = (VersionRecord.id, VersionRecord.name, VersionRecord.made)
            query = select(*columns).where(VersionRecord.lesson == record.number)
            return tuple(
                Version(row.id, lesson_id, shown(row.name), aware(row.made))
                for row in session.execute(query.order_by(VersionRecord.id))
            )

    def load_version(self, version_id: int) -> Lesson:
        """The lesson as it was in a version; the shelf is not changed."""
        with self._store.reading() as session:
            kept, record = self._version(session, version_id)
            return self._states.lesson(session, record, kept)

    def go_back(self, version_id: int, *, base: int | None = None) -> Lesson:
        """Make a version the present state; a step that can be undone. ``base``: as for
        ``save``."""
        with self._store.writing() as session:
            kept, record = self._version(session, version_id)
            expect(record, base)
            lesson = self._states.lesson(session, record, kept)
            label = say("Back to '{name}'", name=read(kept.name))
            self._lessons.push(session, record, lesson, label, False)
            return lesson

    def delete_version(self, version_id: int) -> None:
        """Throw a version away."""
        with self._store.writing() as session:
            kept, _ = self._version(session, version_id)
            session.delete(kept)
            self._scores.drop_unused(session, kept.music)

    def _version(self, session: Session, version_id: int) -> tuple[VersionRecord, LessonRecord]:
        kept = session.get(VersionRecord, version_id)
        if kept is None:
            raise BadInput("Version {id} is not on the shelf any more.", id=version_id)
        return kept, session.get_one(LessonRecord, kept.lesson)

    def name_state(
        self, session: Session, record: LessonRecord, lesson: Lesson, name: str, made: object = None
    ) -> None:
        """Keep a state as a version, unless there is one of that name and state."""
        state = pack_text(lesson_state(lesson))
        music = self._scores.keep(session, lesson.piece)
        same = select(VersionRecord.id).where(
            VersionRecord.lesson == record.number, VersionRecord.name == clean(as_kept(name)),
            VersionRecord.state == state, VersionRecord.music == music,
        )  # fmt: skip
        if session.scalar(same) is None:
            session.add(
                VersionRecord(
                    lesson=record.number, name=clean(as_kept(name)),
                    made=made or self._store.time(), state=state, music=music,
                )
            )  # fmt: skip

    def keep_state(self, lesson: Lesson, name: str) -> None:
        """Keep a state of a lesson that is on the shelf as a version; its present state and
        its history stay as they are."""
        with self._store.writing() as session:
            self.name_state(session, self._states.record(session, lesson.id), lesson, name)
