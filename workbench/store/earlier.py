"""Which lessons of the shelf came before one: of the same student, or of a group they
are in."""

from __future__ import annotations

from workbench.store.rows import LessonRow
from workbench.store.shelf import Shelf


def companions(shelf: Shelf, student: str) -> set[str]:
    """The student, and every group the student is in."""
    names = {student}
    if student:
        names |= {group.name for group in shelf.groups() if student in group.students}
    return names


def by_age(shelf: Shelf) -> list[LessonRow]:
    """All lessons but those in the bin, oldest first."""
    return sorted(shelf.lessons(archived=None), key=lambda row: (row.created, row.id))


def earlier_lessons(shelf: Shelf, student: str, before: str | None = None) -> list[LessonRow]:
    """The lessons of a student and of the student's groups, oldest first; only those made
    ``before`` that lesson where it is on the shelf, and never that lesson itself."""
    names = companions(shelf, student)
    rows = by_age(shelf)
    own = next((row for row in rows if row.id == before), None)
    return [
        row
        for row in rows
        if row.student in names
        and row.id != before
        and (own is None or (row.created, row.id) < (own.created, own.id))
    ]
