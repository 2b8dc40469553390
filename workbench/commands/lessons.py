"""``lessons``: what the store holds."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING, Any

from workbench.commands.output import Result, table
from workbench.instrument.table import INSTRUMENTS
from workbench.language.names import key_words
from workbench.language.speech import count, say
from workbench.teaching.grading.grade import THIRD_WORDS

if TYPE_CHECKING:
    from workbench.store.rows import LessonRow


def options(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "--search", default="", metavar="WORDS", help="in titles, notes, techniques, students"
    )
    parser.add_argument("--student", metavar="NAME", help="only this student's or group's")
    parser.add_argument("--instrument", metavar="I", help="only on this instrument")
    parser.add_argument("--archived", action="store_true", help="archived lessons as well")
    gone = parser.add_mutually_exclusive_group()
    gone.add_argument("--bin", action="store_true", help="the lessons in the bin instead")
    gone.add_argument(
        "--empty-bin", action="store_true", help="forget for good what lies in the bin"
    )
    gone.add_argument(
        "--erase-student", metavar="NAME",
        help="forget a student and the student's lessons for good, in the backups as well",
    )  # fmt: skip


def run(options: argparse.Namespace) -> Result:
    from workbench.store.shelf import Shelf

    with Shelf() as shelf:
        if options.empty_bin:
            gone = shelf.empty_bin(older_than_days=-1)
            shelf.clear_room()
            return _emptied(gone)
        if options.erase_student:
            from workbench.store.erasing import erase

            return _emptied(erase(shelf, options.erase_student))
        rows = shelf.lessons(
            options.search,
            student=options.student,
            instrument=options.instrument,
            archived=None if options.archived or options.bin else False,
            deleted=options.bin,
        )
        place = shelf.place
    if not rows:
        found = (
            say("No lesson fits.") if options.search or options.student else say("No lessons yet.")
        )
        return Result([], [say("{found} The store is {place}.", found=found, place=place)])
    heads = [
        say("id", sense="head"),
        say("title", sense="head"),
        say("student", sense="head"),
        say("instrument", sense="head"),
        say("key", sense="head"),
        say("grade", sense="head"),
        say("updated", sense="head"),
    ]
    lines = [
        (
            row.id,
            row.title,
            row.student,
            say(INSTRUMENTS[row.instrument].name)
            if row.instrument in INSTRUMENTS
            else row.instrument,
            key_words(row.key),
            _grade(row),
            f"{row.updated.astimezone():%Y-%m-%d %H:%M}",
        )
        for row in rows
    ]
    return Result([_document(row) for row in rows], table(heads, lines))


def _grade(row: LessonRow) -> str:
    if row.grade is None:
        return ""
    level = say(THIRD_WORDS[row.grade_level]) if row.grade_level in THIRD_WORDS else ""
    return f"{row.grade} {level}".strip()


def _emptied(lessons: int) -> Result:
    words = count(lessons, "{n} lesson is gone for good.", "{n} lessons are gone for good.")
    return Result({"erased": lessons}, [words])


def _document(row: LessonRow) -> dict[str, Any]:
    return {
        "id": row.id,
        "title": row.title,
        "composer": row.composer,
        "student": row.student,
        "instrument": row.instrument,
        "key": row.key,
        "grade": row.grade,
        "level": row.grade_level or None,
        "techniques": list(row.techniques),
        "piece": row.piece_id,
        "created": row.created.isoformat(),
        "updated": row.updated.isoformat(),
        "archived": row.archived,
    }
