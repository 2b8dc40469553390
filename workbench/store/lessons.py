"""Lessons: saved by themselves, with an undo history that outlives the program."""

from __future__ import annotations

import uuid
from collections.abc import Iterable
from dataclasses import replace

from sqlalchemy import delete, func, select
from sqlalchemy.orm import Session

from workbench.language.speech import say
from workbench.language.stored import kept, shown
from workbench.music.errors import BadInput
from workbench.store.base import Store, aware
from workbench.store.conflict import Conflict
from workbench.store.documents import clean, fold, lesson_state, pack_text
from workbench.store.pieces import Pieces
from workbench.store.rows import History, Step, View
from workbench.store.schema import (
    NAME,
    LessonRecord,
    LessonTechnique,
    LessonText,
    PieceRecord,
    StepRecord,
)
from workbench.store.scores import Scores
from workbench.store.states import LessonStates, read_view, view_text
from workbench.teaching.lessons.lesson import Lesson


class Lessons:
    """Loading, saving, undo and redo."""

    def __init__(self, store: Store, scores: Scores, states: LessonStates, pieces: Pieces) -> None:
        self._store = store
        self._scores = scores
        self._states = states
        self._pieces = pieces

    def add(self, lesson: Lesson, piece_id: str | None = None, label: str = "") -> Lesson:
        """Put a new lesson on the shelf, made of the piece ``piece_id``; without
        one, of the piece with the same music, which is added where it is new.

        Raises BadInput where a lesson of that id is there already.
        """
        with self._store.writing() as session:
            if session.scalar(select(LessonRecord.id).where(LessonRecord.id == lesson.id)):
                raise BadInput(
                    "Lesson {id} is on the shelf already; duplicate it instead.",
                    id=lesson.id,
                )
            self.take_in(session, lesson, piece_id, label or say("New lesson"))
        return lesson

    def take_in(
        self, session: Session, lesson: Lesson, piece_id: str | None, label: str, bar: int = 0
    ) -> None:
        """Make the rows of a new lesson, in which the bar at place ``bar`` is selected."""
        if not lesson.id or len(lesson.id) > NAME or clean(lesson.id) != lesson.id:
            raise BadInput("A lesson's id has 1 to {n} characters of plain text.", n=NAME)
        if piece_id is None:
            same = self._pieces.same(session, lesson.piece)
            piece_id = (same or self._pieces.take_in(session, lesson.piece)).id
        elif session.get(PieceRecord, piece_id) is None:
            raise BadInput("Piece {id} is not on the shelf.", id=piece_id)
        now = self._store.time()
        record = LessonRecord(
            id=lesson.id, piece_id=piece_id, place=0, created=now, used=now, archived=False,
            view=view_text(View(selected_bar=bar)),
        )  # fmt: skip
        music = self._scores.keep(session, lesson.piece)
        self._show(record, lesson)
        session.add(record)
        session.flush()
        self._index(session, record, lesson)
        session.add(self._new_step(record, music, pack_text(lesson_state(lesson)), label))

    def _new_step(self, record: LessonRecord, music: str, state: str, label: str) -> StepRecord:
        return StepRecord(
            lesson=record.number, place=record.place, label=clean(kept(label)),
            made=self._store.time(), bar=read_view(record.view).selected_bar, state=state,
            music=music,
        )  # fmt: skip

    def _show(self, record: LessonRecord, lesson: Lesson) -> None:
        """Repeat in the lesson's row what lists show and filter by."""
        record.title = clean(lesson.title)
        record.composer = clean(lesson.piece.composer)
        record.student = clean(lesson.student)
        record.instrument = clean(lesson.instrument)
        record.key = clean(lesson.key or lesson.piece.key.name)[:NAME]
        record.grade = lesson.grade
        record.grade_level = clean(lesson.grade_level)[:NAME]
        record.updated = self._store.time()

    def _index(self, session: Session, record: LessonRecord, lesson: Lesson) -> None:
        """Bring what is searched up to date."""
        names = list(dict.fromkeys(clean(name)[:NAME] for name in lesson.techniques))
        parts = {
            "title": record.title,
            "composer": record.composer,
            "student": record.student,
            "techniques": ", ".join(names),
            "notes": clean("\n".join(note.text for note in lesson.notes)),
        }
        text = session.get(LessonText, record.number)
        if text is None:
            folded = fold("\n".join(parts.values()))
            session.add(LessonText(number=record.number, folded=folded, **parts))
        elif any(getattr(text, part) != value for part, value in parts.items()):
            for part, value in parts.items():
                setattr(text, part, value)
            text.folded = fold("\n".join(parts.values()))
        taught = select(LessonTechnique.technique).where(LessonTechnique.lesson == record.number)
        if text is None or list(session.scalars(taught.order_by(LessonTechnique.place))) != names:
            session.execute(delete(LessonTechnique).where(LessonTechnique.lesson == record.number))
            session.add_all(
                LessonTechnique(lesson=record.number, technique=name, place=place)
                for place, name in enumerate(names)
            )

    def load(self, lesson_id: str) -> Lesson:
        """The lesson as it was last; BadInput where there is none."""
        with self._store.reading() as session:
            record = self._states.record(session, lesson_id)
            return self._states.lesson(session, record, self._states.present(session, record))

    def open(self, lesson_id: str) -> tuple[Lesson, View, int]:
        """A lesson as ``load`` gives it, where the teacher left off, and its revision: what
        ``save`` takes as ``base``."""
        with self._store.reading() as session:
            record = self._states.record(session, lesson_id)
            lesson = self._states.lesson(session, record, self._states.present(session, record))
            return lesson, read_view(record.view), record.revision

    def revision(self, lesson_id: str) -> int:
        """The number that rises with every change of a lesson's content."""
        with self._store.reading() as session:
            return self._states.record(session, lesson_id).revision

    def save(
        self,
        lesson: Lesson,
        label: str = "",
        *,
        merge: bool = False,
        base: int | None = None,
        bar: int | None = None,
    ) -> bool:
        """Keep a lesson and push the change onto its undo history; True if there
        was a change. ``bar`` is the place in playing order where the teacher is, None
        where that is not known: it is kept as in ``save_view``, and is no change.

        States that were undone are dropped. With ``merge`` a change of the
        same label as the last one becomes part of it, as typing one word does.
        A lesson that is not on the shelf yet is added. With ``base``, the
        revision that the change was made on, it raises Conflict where the
        lesson was changed since by somebody else.
        """
        with self._store.writing() as session:
            return self._save(session, lesson, label or say("Edit"), merge, base, bar)

    def save_all(self, lessons: Iterable[Lesson], label: str = "") -> int:
        """Save several lessons in one transaction; how many were new or changed."""
        with self._store.writing() as session:
            return sum(
                self._save(session, lesson, label or say("Import"), False) for lesson in lessons
            )

    def _save(
        self,
        session: Session,
        lesson: Lesson,
        label: str,
        merge: bool,
        base: int | None = None,
        bar: int | None = None,
    ) -> bool:
        record = session.scalar(
            select(LessonRecord).where(LessonRecord.id == lesson.id).with_for_update()
        )
        if record is None:
            self.take_in(session, lesson, None, label, bar or 0)
            return True
        expect(record, base)
        if bar is not None:
            record.view = view_text(replace(read_view(record.view), selected_bar=bar))
        record.used = self._store.time()
        return self.push(session, record, lesson, label, merge)

    def push(
        self, session: Session, record: LessonRecord, lesson: Lesson, label: str, merge: bool
    ) -> bool:
        step = self._states.present(session, record)
        plain, music = lesson_state(lesson), self._scores.keep(session, lesson.piece)
        state = pack_text(plain)
        if step.state in (state, plain) and step.music == music:
            return False
        record.revision += 1
        first, last = self._ends(session, record)
        dropped = self._drop(session, record, StepRecord.place > record.place)
        if merge and step.label == clean(kept(label)) and first < record.place == last:
            dropped.append(step.music)
            step.state, step.music, step.made = state, music, self._store.time()
            step.bar = read_view(record.view).selected_bar
        else:
            record.place += 1
            session.add(self._new_step(record, music, state, label))
            dropped += self._drop(
                session, record, StepRecord.place <= record.place - self._store.longest_history
            )
        self._show(record, lesson)
        self._index(session, record, lesson)
        if unused := [name for name in dropped if name != music]:
            self._scores.drop_unused(session, *unused)
        return True

    def _ends(self, session: Session, record: LessonRecord) -> tuple[int, int]:
        ends = select(func.min(StepRecord.place), func.max(StepRecord.place))
        first, last = session.execute(ends.where(StepRecord.lesson == record.number)).one()
        return first, last

    def _drop(self, session: Session, record: LessonRecord, which: object) -> list[str]:
        """Drop steps; the digests of their music."""
        mine = (StepRecord.lesson == record.number, which)
        music = list(session.scalars(select(StepRecord.music).where(*mine).distinct()))  # type: ignore[arg-type]
        if music:
            session.execute(delete(StepRecord).where(*mine))  # type: ignore[arg-type]
        return music

    def undo(self, lesson_id: str, *, base: int | None = None) -> Lesson | None:
        """Go back one step and give the lesson as it then is; None at the beginning.
        ``base``: as for ``save``."""
        return self._go(lesson_id, -1, base)

    def redo(self, lesson_id: str, *, base: int | None = None) -> Lesson | None:
        """Do again what was undone; None where there is nothing."""
        return self._go(lesson_id, +1, base)

    def go_to(self, lesson_id: str, place: int, *, base: int | None = None) -> Lesson | None:
        """Go to a step of the history (see ``Step.place``), back or on, and give the lesson
        as it then is; None where there is no such step. All steps stay."""
        return self._go(lesson_id, place, base, absolute=True)

    def state_at(self, lesson_id: str, place: int) -> Lesson | None:
        """The lesson as it was at a step of its history; the shelf is not changed."""
        with self._store.reading() as session:
            record = self._states.record(session, lesson_id)
            step = self._states.step(session, record, place)
            return self._states.lesson(session, record, step) if step else None

    def _go(
        self, lesson_id: str, by: int, base: int | None, *, absolute: bool = False
    ) -> Lesson | None:
        with self._store.writing() as session:
            record = self._states.record(session, lesson_id)
            expect(record, base)
            place = by if absolute else record.place + by
            step = self._states.step(session, record, place)
            if step is None:
                return None
            record.place = place
            record.revision += 1
            lesson = self._states.lesson(session, record, step)
            self._show(record, lesson)
            self._index(session, record, lesson)
            return lesson

    def history(self, lesson_id: str) -> History:
        """The states that undo and redo reach, with what was done and when."""
        with self._store.reading() as session:
            record = self._states.record(session, lesson_id)
            self._states.present(session, record)
            columns = (StepRecord.place, StepRecord.label, StepRecord.made, StepRecord.bar)
            query = select(*columns).where(StepRecord.lesson == record.number)
            rows = session.execute(query.order_by(StepRecord.place)).all()
            steps = tuple(Step(r.place, shown(r.label), aware(r.made), r.bar) for r in rows)
            at = next(i for i, step in enumerate(steps) if step.place == record.place)
            return History(steps, at)

    def view(self, lesson_id: str) -> View:
        """Where the teacher left off in a lesson."""
        with self._store.reading() as session:
            return read_view(self._states.record(session, lesson_id).view)

    def save_view(self, lesson_id: str, view: View) -> None:
        """Keep where the teacher is in a lesson; no step of its history. A store that may
        only be read keeps nothing of it."""
        if self._store.read_only:
            return
        with self._store.writing() as session:
            record = self._states.record(session, lesson_id)
            record.view = view_text(view)
            record.used = self._store.time()

    def duplicate(self, lesson_id: str, *, student: str = "", title: str | None = None) -> Lesson:
        """A copy of a lesson for another student, with a history of its own."""
        with self._store.writing() as session:
            record = self._states.record(session, lesson_id)
            lesson = self._states.lesson(session, record, self._states.present(session, record))
            copy = replace(
                lesson,
                id=uuid.uuid4().hex,
                student=student,
                title=lesson.title if title is None else title,
                plan_done=(),
            )
            self.take_in(
                session, copy, record.piece_id, say("Copy of '{title}'", title=lesson.title)
            )
            return copy


def expect(record: LessonRecord, base: int | None) -> None:
    """Raise Conflict where a lesson is no longer what a change was made on."""
    if base is not None and record.revision != base:
        raise Conflict(record.title)
