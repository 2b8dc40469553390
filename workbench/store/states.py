"""The rows of a lesson and the states in its history."""

from __future__ import annotations

from sqlalchemy import select
from sqlalchemy.orm import Session

from workbench.language.speech import say
from workbench.music.codec import from_dict, to_dict
from workbench.music.errors import BadInput
from workbench.store.documents import as_text, lesson_from, read_text
from workbench.store.rows import View
from workbench.store.schema import LessonRecord, StepRecord, VersionRecord
from workbench.store.scores import Scores
from workbench.teaching.lessons.lesson import Lesson


class LessonStates:
    """Lessons as they were after each step, and as they are."""

    def __init__(self, scores: Scores) -> None:
        self._scores = scores

    def record(self, session: Session, lesson_id: str) -> LessonRecord:
        """The row of a lesson, locked against other writers where that matters."""
        query = select(LessonRecord).where(LessonRecord.id == lesson_id)
        if session.get_bind().get_execution_options().get("writes"):
            query = query.with_for_update()
        found = session.scalar(query)
        if found is None:
            raise BadInput(
                "Lesson {id} is not on the shelf; list them with 'lessons'.", id=lesson_id
            )
        return found

    def step(self, session: Session, record: LessonRecord, place: int) -> StepRecord | None:
        return session.scalar(
            select(StepRecord).where(StepRecord.lesson == record.number, StepRecord.place == place)
        )

    def present(self, session: Session, record: LessonRecord) -> StepRecord:
        step = self.step(session, record, record.place)
        if step is None:
            raise BadInput(
                "Lesson '{title}' is damaged in the lesson store: its present state is "
                "missing; go back to a version of it or restore the store from a copy.",
                title=record.title,
            )
        return step

    def lesson(
        self, session: Session, record: LessonRecord, step: StepRecord | VersionRecord
    ) -> Lesson:
        what = say("Lesson '{title}'", title=record.title)
        piece = self._scores.read(session, step.music, what)
        return lesson_from(step.state, piece, record.id, what)


def read_view(text: str) -> View:
    """A view as it was kept."""
    return from_dict(View, read_text(text, say("What was last looked at")))


def view_text(view: View) -> str:
    """A view as it is kept."""
    return as_text(to_dict(view))
