"""``handout SCORE``: the page for the student's music stand, or the teacher's sheet."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TYPE_CHECKING

from workbench.commands.output import Result
from workbench.commands.prepare import fingering_of, lesson_of
from workbench.commands.source import load, player, playing_options, score_options
from workbench.music.errors import BadInput

if TYPE_CHECKING:
    from workbench.handout.page import Extras
    from workbench.teaching.lesson import Lesson


def options(parser: argparse.ArgumentParser) -> None:
    score_options(parser, lessons=True)
    parser.add_argument("-o", "--output", required=True, metavar="OUT.pdf", help="the page")
    playing_options(parser)
    page_options(parser)


def page_options(parser: argparse.ArgumentParser) -> None:
    """For whom, paper, size and which hand."""
    parser.add_argument(
        "--for",
        dest="audience",
        choices=("student", "teacher"),
        default="student",
        help="the student's page (default) or the teacher's sheet",
    )
    parser.add_argument("--paper", choices=("a4", "letter"), default="a4", help="default a4")
    parser.add_argument("--large", action="store_true", help="large print")
    parser.add_argument("--left-handed", action="store_true", help="mirrored diagrams")


def check_playing(options: argparse.Namespace) -> None:
    """Raises BadInput where the options name no instrument or hand, before any work."""
    player(options, None)


def run(options: argparse.Namespace) -> Result:
    page = Path(options.output)
    if page.is_dir():
        raise BadInput(f"{page} is a folder; name the file to write, such as {page / 'page.pdf'}.")
    count = make(options, page)
    pages = "1 page" if count == 1 else f"{count} pages"
    return Result({"pages": count, "path": str(page)}, [f"{page}: {pages}."])


def make(options: argparse.Namespace, page: Path) -> int:
    """Write the page of the score that the options name; the number of pages."""
    from workbench.handout.page import HandoutOptions, make_handout

    source = load(options, lessons=True)
    lesson = lesson_of(options, source)
    return make_handout(
        lesson,
        fingering_of(lesson),
        page,
        HandoutOptions(
            audience=options.audience,
            paper=options.paper,
            large=options.large,
            left_handed=options.left_handed,
        ),
        _extras(lesson) if lesson is source.lesson and lesson.id == options.score else None,
    )


def _extras(lesson: Lesson) -> Extras:
    """What the store knows of a kept lesson."""
    from workbench.handout.page import Extras
    from workbench.store.sheet_facts import known_grips, lesson_history
    from workbench.store.shelf import Shelf

    with Shelf() as shelf:
        return Extras(lesson_history(shelf, lesson.id), known_grips(shelf, lesson))
