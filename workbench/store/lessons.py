"""Lessons: saved by themselves, with an undo history that outlives the program."""

from __future__ import annotations

import uuid
from collections.abc import Iterable
from dataclasses import replace

from sqlalchemy import delete, func, select
from sqlalchemy.orm import Session

from workbench.language.kept import kept, shown
from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.store.base import aware, read_view, view_text
from workbench.store.conflict import Conflict
from workbench.store.documents import clean, fold, lesson_state, pack_text
from workbench.store.pieces import PieceShelf
from workbench.store.rows import History, Step, View
from workbench.store.schema import (
    NAME,
    LessonRecord,
    LessonTechnique,
    LessonText,
    PieceRecord,
    StepRecord,
)
from workbench.teaching.lessons.lesson import Lesson

#: How many states of a lesson are kept; the oldest are let go.
LONGEST_HISTORY = 1000


class LessonShelf(PieceShelf):
    """Loading, saving, undo and redo."""

    longest_history = LONGEST_HISTORY

    def add(self, lesson: Lesson, piece_id: str | None = None, label: str = "") -> Lesson:
        """Put a new lesson on the shelf, made of the piece ``piece_id``; without
        one, of the piece with the same music, which is added where it is new.

        Raises BadInput where a lesson of that id is there already.
        """
        with self._writing() as session:
            if session.scalar(select(LessonRecord.id).where(LessonRecord.id == lesson.id)):
                raise BadInput(
                    "Lesson {id} is on the shelf already; duplicate it instead.",
                    id=lesson.id,
                )
            self._add(session, lesson, piece_id, label or say("New lesson"))
        return lesson

    def _add(self, session: Session, lesson: Lesson, piece_id: str | None, label: str) -> None:
        if not lesson.id or len(lesson.id) > NAME or clean(lesson.id) != lesson.id:
            raise BadInput("A lesson's id has 1 to {n} characters of plain text.", n=NAME)
        if piece_id is None:
            same = self._same(session, lesson.piece)
            piece_id = (same or self._add_piece(session, lesson.piece)).id
        elif session.get(PieceRecord, piece_id) is None:
            raise BadInput("Piece {id} is not on the shelf.", id=piece_id)
        now = self._time()
        record = LessonRecord(
            id=lesson.id, piece_id=piece_id, place=0, created=now, used=now, archived=False,
            view=view_text(View(selected_bar=lesson.selected_bar)),
        )  # fmt: skip
        music = self._keep_music(session, lesson.piece)
        self._show(record, lesson)
        session.add(record)
        session.flush()
        self._index(session, record, lesson)
        session.add(self._new_step(record, lesson, music, pack_text(lesson_state(lesson)), label))

    def _new_step(
        self, record: LessonRecord, lesson: Lesson, music: str, state: str, label: str
    ) -> StepRecord:
        return StepRecord(
            lesson=record.number, place=record.place, label=clean(kept(label)), made=self._time(),
            bar=lesson.selected_bar, state=state, music=music,
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
        record.updated = self._time()

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
        """The lesson as it was last, selected bar included; BadInput where there is none."""
        with self._reading() as session:
            record = self._record(session, lesson_id)
            return self._lesson(session, record, self._present(session, record))

    def open(self, lesson_id: str) -> tuple[Lesson, View, int]:
        """A lesson as ``load`` gives it, where the teacher left off, and its revision: what
        ``save`` takes as ``base``."""
        with self._reading() as session:
            record = self._record(session, lesson_id)
            lesson = self._lesson(session, record, self._present(session, record))
            return lesson, read_view(record.view), record.revision

    def revision(self, lesson_id: str) -> int:
        """The number that rises with every change of a lesson's content."""
        with self._reading() as session:
            return self._record(session, lesson_id).revision

    def save(
        self, lesson: Lesson, label: str = "", *, merge: bool = False, base: int | None = None
    ) -> bool:
        """Keep a lesson and push the change onto its undo history; True if there
        was a change (a selected bar alone is kept, but is none).

        States that were undone are dropped. With ``merge`` a change of the
        same label as the last one becomes part of it, as typing one word does.
        A lesson that is not on the shelf yet is added. With ``base``, the
        revision that the change was made on, it raises Conflict where the
        lesson was changed since by somebody else.
        """
        with self._writing() as session:
            return self._save(session, lesson, label or say("Edit"), merge, base)

    def save_all(self, lessons: Iterable[Lesson], label: str = "") -> int:
        """Save several lessons in one transaction; how many were new or changed."""
        with self._writing() as session:
            return sum(
                self._save(session, lesson, label or say("Import"), False) for lesson in lessons
            )

    def _save(
        self, session: Session, lesson: Lesson, label: str, merge: bool, base: int | None = None
    ) -> bool:
        record = session.scalar(
            select(LessonRecord).where(LessonRecord.id == lesson.id).with_for_update()
        )
        if record is None:
            self._add(session, lesson, None, label)
            return True
        expect(record, base)
        record.view = view_text(replace(read_view(record.view), selected_bar=lesson.selected_bar))
        record.used = self._time()
        return self._push(session, record, lesson, label, merge)

    def _push(
        self, session: Session, record: LessonRecord, lesson: Lesson, label: str, merge: bool
    ) -> bool:
        step = self._present(session, record)
        plain, music = lesson_state(lesson), self._keep_music(session, lesson.piece)
        state = pack_text(plain)
        if step.state in (state, plain) and step.music == music:
            return False
        record.revision += 1
        first, last = self._ends(session, record)
        dropped = self._drop(session, record, StepRecord.place > record.place)
        if merge and step.label == clean(kept(label)) and first < record.place == last:
            dropped.append(step.music)
            step.state, step.music, step.made = state, music, self._time()
            step.bar = lesson.selected_bar
        else:
            record.place += 1
            session.add(self._new_step(record, lesson, music, state, label))
            dropped += self._drop(
                session, record, StepRecord.place <= record.place - self.longest_history
            )
        self._show(record, lesson)
        self._index(session, record, lesson)
        if unused := [name for name in dropped if name != music]:
            self._drop_unused_music(session, *unused)
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
        with self._reading() as session:
            record = self._record(session, lesson_id)
            step = self._step(session, record, place)
            return self._lesson(session, record, step) if step else None

    def _go(
        self, lesson_id: str, by: int, base: int | None, *, absolute: bool = False
    ) -> Lesson | None:
        with self._writing() as session:
            record = self._record(session, lesson_id)
            expect(record, base)
            place = by if absolute else record.place + by
            step = self._step(session, record, place)
            if step is None:
                return None
            record.place = place
            record.revision += 1
            lesson = self._lesson(session, record, step)
            self._show(record, lesson)
            self._index(session, record, lesson)
            return lesson

    def history(self, lesson_id: str) -> History:
        """The states that undo and redo reach, with what was done and when."""
        with self._reading() as session:
            record = self._record(session, lesson_id)
            self._present(session, record)
            columns = (StepRecord.place, StepRecord.label, StepRecord.made, StepRecord.bar)
            query = select(*columns).where(StepRecord.lesson == record.number)
            rows = session.execute(query.order_by(StepRecord.place)).all()
            steps = tuple(Step(r.place, shown(r.label), aware(r.made), r.bar) for r in rows)
            at = next(i for i, step in enumerate(steps) if step.place == record.place)
            return History(steps, at)

    def view(self, lesson_id: str) -> View:
        """Where the teacher left off in a lesson."""
        with self._reading() as session:
            return read_view(self._record(session, lesson_id).view)

    def save_view(self, lesson_id: str, view: View) -> None:
        """Keep where the teacher is in a lesson; no step of its history. A store that may
        only be read keeps nothing of it."""
        if self.read_only:
            return
        with self._writing() as session:
            record = self._record(session, lesson_id)
            record.view = view_text(view)
            record.used = self._time()

    def duplicate(self, lesson_id: str, *, student: str = "", title: str | None = None) -> Lesson:
        """A copy of a lesson for another student, with a history of its own."""
        with self._writing() as session:
            record = self._record(session, lesson_id)
            lesson = self._lesson(session, record, self._present(session, record))
            copy = replace(
                lesson,
                id=uuid.uuid4().hex,
                student=student,
                title=lesson.title if title is None else title,
                plan_done=(),
            )
            self._add(session, copy, record.piece_id, say("Copy of '{title}'", title=lesson.title))
            return copy


def expect(record: LessonRecord, base: int | None) -> None:
    """Raise Conflict where a lesson is no longer what a change was made on."""
    if base is not None and record.revision != base:
        raise Conflict(record.title)
