"""Finding lessons: by filters, and by the words in them."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import fields
from datetime import datetime
from typing import Any

from sqlalchemy import Float, Integer, and_, case, column, func, or_, select, text
from sqlalchemy.orm import Session

from workbench.music.errors import BadInput
from workbench.store.base import Store, aware, kept_time
from workbench.store.documents import fold, words
from workbench.store.rows import LessonRow
from workbench.store.schema import GroupMember, LessonRecord, LessonTechnique, LessonText
from workbench.store.states import LessonStates

#: Orders in which lessons are listed.
ORDERS = {
    "used": (LessonRecord.used.desc(), LessonRecord.number.desc()),
    "updated": (LessonRecord.updated.desc(), LessonRecord.number.desc()),
    "title": (func.lower(LessonRecord.title), LessonRecord.number),
    "student": (func.lower(LessonRecord.student), func.lower(LessonRecord.title)),
    "grade": (
        case((LessonRecord.grade.is_(None), 1), else_=0),
        LessonRecord.grade,
        func.lower(LessonRecord.title),
    ),
}

MOST_WORDS = 16

#: What of a row stands in the table of lessons under the same name.
_KEPT = tuple(field.name for field in fields(LessonRow) if field.name != "techniques")
_LISTED = (LessonRecord.number, *(getattr(LessonRecord, name) for name in _KEPT))

# A word in the title weighs most, one in the notes least (title, composer,
# student, techniques, notes).
_FULL_TEXT = text(
    "SELECT rowid AS number, bm25(lesson_search, 10.0, 5.0, 5.0, 3.0, 1.0) AS badness "
    "FROM lesson_search WHERE lesson_search MATCH :words"
)


class Finding:
    """Lists of lessons."""

    def __init__(self, store: Store, states: LessonStates) -> None:
        self._store = store
        self._states = states

    def lessons(
        self,
        search: str = "",
        *,
        student: str | None = None,
        group: str | None = None,
        instrument: str | None = None,
        key: str | None = None,
        technique: str | None = None,
        grades: tuple[int, int] | None = None,
        piece_id: str | None = None,
        used_since: datetime | None = None,
        used_before: datetime | None = None,
        archived: bool | None = False,
        deleted: bool = False,
        order: str | None = None,
        limit: int | None = None,
    ) -> tuple[LessonRow, ...]:
        """The lessons that pass every filter given.

        ``search`` takes the beginnings of words and wants all of them, in the
        title, composer, student, techniques or notes; without it, or in an
        ``order`` of ORDERS, the lesson last used comes first, else the best
        match. ``group`` takes lessons for the group or any student in it,
        ``grades`` the lowest and highest; ``used_since`` and ``used_before``
        bound when the lesson was last used. ``archived`` None takes both;
        ``deleted`` True lists the bin.
        """
        query: Any = select(*_LISTED)
        same = {
            LessonRecord.student: student,
            LessonRecord.instrument: instrument,
            LessonRecord.key: key,
            LessonRecord.piece_id: piece_id,
            LessonRecord.archived: archived,
        }
        query = query.where(*(c == value for c, value in same.items() if value is not None))
        here = LessonRecord.deleted.is_(None)
        query = query.where(~here if deleted else here)
        if group is not None:
            members = select(GroupMember.student).where(
                GroupMember.group == group, GroupMember.student != ""
            )
            query = query.where(
                or_(LessonRecord.student == group, LessonRecord.student.in_(members))
            )
        if technique is not None:
            teaching = select(LessonTechnique.lesson).where(LessonTechnique.technique == technique)
            query = query.where(LessonRecord.number.in_(teaching))
        if grades is not None:
            query = query.where(LessonRecord.grade.between(*grades))
        if used_since is not None:
            query = query.where(LessonRecord.used >= kept_time(used_since))
        if used_before is not None:
            query = query.where(LessonRecord.used < kept_time(used_before))
        if order is not None and order not in ORDERS:
            raise BadInput(
                "Order '{order}' is not known; choose one of {orders}.",
                order=order,
                orders=", ".join(ORDERS),
            )
        query, best = self._matching(query, _sought(search))
        if order is None and best is not None:
            query = query.order_by(best, *ORDERS["used"])
        else:
            query = query.order_by(*ORDERS[order or "used"])
        with self._store.reading() as session:
            return _lesson_rows(session, query.limit(limit) if limit is not None else query)

    def _matching(self, query: Any, wanted: list[str]) -> tuple[Any, Any]:
        """Narrow a query to lessons with the words; what orders it by how well they fit."""
        if not wanted:
            return query, None
        if self._store.full_text:
            found = (
                _FULL_TEXT.bindparams(words=" ".join(f'"{word}"*' for word in wanted))
                .columns(column("number", Integer), column("badness", Float))
                .subquery("found")
            )
            return query.join(found, found.c.number == LessonRecord.number), found.c.badness
        return _like(query, wanted)

    def lesson_row(self, lesson_id: str) -> LessonRow:
        """The entry of one lesson; BadInput where there is none."""
        with self._store.reading() as session:
            record = self._states.record(session, lesson_id)
            query = select(*_LISTED).where(LessonRecord.number == record.number)
            return _lesson_rows(session, query)[0]

    def techniques(self) -> tuple[str, ...]:
        """The techniques that lessons on the shelf teach, by name."""
        query = (
            select(LessonTechnique.technique)
            .join(LessonRecord, LessonRecord.number == LessonTechnique.lesson)
            .where(LessonRecord.deleted.is_(None))
        )
        return self._names(query)

    def key_names(self) -> tuple[str, ...]:
        """The keys of lessons on the shelf, by name."""
        return self._names(select(LessonRecord.key).where(LessonRecord.deleted.is_(None)))

    def instruments(self) -> tuple[str, ...]:
        """The ids of instruments that lessons on the shelf are for."""
        return self._names(select(LessonRecord.instrument).where(LessonRecord.deleted.is_(None)))

    def _names(self, query: Any) -> tuple[str, ...]:
        with self._store.reading() as session:
            found = set(session.scalars(query.distinct()))
        return tuple(sorted(found - {""}))

    def excerpt(self, lesson_id: str, search: str) -> tuple[str, str] | None:
        """Where a lesson has the words looked for: "title", "composer", "student",
        "techniques" or "notes", and the line there that has most of them; None where
        nothing is looked for, or the lesson does not have it."""
        wanted = [fold(word) for word in words(search)]
        if not wanted:
            return None
        with self._store.reading() as session:
            record = self._states.record(session, lesson_id)
            kept = session.get(LessonText, record.number)
            if kept is None:
                return None
            best: tuple[int, str, str] | None = None
            for part in ("title", "composer", "student", "techniques", "notes"):
                for line in str(getattr(kept, part)).splitlines():
                    plain = fold(line)
                    hits = sum(word in plain for word in wanted)
                    if hits and (best is None or hits > best[0]):
                        best = (hits, part, line)
        return best[1:] if best else None

    def students(self) -> tuple[str, ...]:
        """Everybody a lesson is for, and everybody in a group, by name."""
        with self._store.reading() as session:
            names = set(
                session.scalars(
                    select(LessonRecord.student).where(LessonRecord.deleted.is_(None)).distinct()
                )
            )
            names |= set(session.scalars(select(GroupMember.student).distinct()))
        return tuple(sorted(names - {""}, key=fold))


def _sought(search: str) -> list[str]:
    """The words to look for. Nobody reads what more than MOST_WORDS would find, and each
    one costs its time."""
    return list(dict.fromkeys(words(search)))[:MOST_WORDS]


def _like(query: Any, wanted: list[str]) -> tuple[Any, Any]:
    """Words anywhere in the text, for databases without our full text index."""
    query = query.join(LessonText, LessonText.number == LessonRecord.number)
    folded = [fold(word) for word in wanted]
    query = query.where(
        and_(*(LessonText.folded.contains(word, autoescape=True) for word in folded))
    )
    in_title = and_(*(func.lower(LessonText.title).contains(w, autoescape=True) for w in folded))
    return query, case((in_title, 0), else_=1)


def _values(row: Any) -> dict[str, Any]:
    found = zip(_KEPT, row[1:], strict=True)
    return {name: aware(v) if isinstance(v, datetime) else v for name, v in found}


def _lesson_rows(session: Session, query: Any) -> tuple[LessonRow, ...]:
    rows = session.execute(query).all()
    taught: dict[int, list[str]] = defaultdict(list)
    technique = select(LessonTechnique.lesson, LessonTechnique.technique).order_by(
        LessonTechnique.lesson, LessonTechnique.place
    )
    if len(rows) <= 500:  # else one pass over all is quicker than a list of numbers
        technique = technique.where(LessonTechnique.lesson.in_([row.number for row in rows]))
    for number, name in session.execute(technique):
        taught[number].append(name)
    return tuple(
        LessonRow(techniques=tuple(taught.get(row.number, ())), **_values(row)) for row in rows
    )
