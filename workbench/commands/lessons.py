"""``lessons``: what the store holds."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING, Any

from workbench.commands.output import Result, table
from workbench.language.names import key_words
from workbench.language.speech import say

if TYPE_CHECKING:
    from workbench.store.rows import LessonRow


def options(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "--search", default="", metavar="WORDS", help="in titles, notes, techniques, students"
    )
    parser.add_argument("--student", metavar="NAME", help="only this student's or group's")
    parser.add_argument("--instrument", metavar="I", help="only on this instrument")
    parser.add_argument("--archived", action="store_true", help="archived lessons as well")


def run(options: argparse.Namespace) -> Result:
    from workbench.store.shelf import Shelf

    with Shelf() as shelf:
        rows = shelf.lessons(
            options.search,
            student=options.student,
            instrument=options.instrument,
            archived=None if options.archived else False,
        )
        place = shelf.place
    if not rows:
        found = (
            say("No lesson fits.") if options.search or options.student else say("No lessons yet.")
        )
        return Result([], [say("{found} The store is {place}.", found=found, place=place)])
    heads = ["id", "title", "student", "instrument", "key", "grade", "updated"]
    lines = [
        (
            row.id,
            row.title,
            row.student,
            row.instrument,
            key_words(row.key),
            "" if row.grade is None else f"{row.grade} {row.grade_level}".strip(),
            f"{row.updated.astimezone():%Y-%m-%d %H:%M}",
        )
        for row in rows
    ]
    return Result([_document(row) for row in rows], table(heads, lines))


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
