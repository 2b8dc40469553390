"""What can be printed of lessons, by name: the page, the grips, the plan, a book."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from pathlib import Path

from workbench.fingering.types import Fingering
from workbench.handout.offered import PAGED
from workbench.handout.options import HandoutOptions
from workbench.handout.setting.paged import Printed, pdf_of
from workbench.handout.sheets.book import Book, BookLesson, BookTitle
from workbench.handout.sheets.booklet import Booklet
from workbench.handout.sheets.grip_sheet import Order, grip_sheet
from workbench.handout.sheets.page import Extras, Handout
from workbench.handout.sheets.plan_sheet import plan_sheet
from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.music.files import write_whole
from workbench.teaching.lessons.lesson import Lesson


@dataclass(frozen=True)
class Request:
    """``what`` is a name of ``PAGED``; ``order`` that of the grips; ``title`` and
    ``subtitle`` those of a book; ``booklet`` sets two pages on a side, in order to fold."""

    what: str = "page"
    options: HandoutOptions = field(default_factory=HandoutOptions)
    booklet: bool = False
    order: Order = "appearance"
    title: str = ""
    subtitle: str = ""

    def __post_init__(self) -> None:
        if self.what not in PAGED:
            raise BadInput(
                "'{what}' cannot be printed; choose one of {known}.",
                what=self.what,
                known=", ".join(PAGED),
            )


@dataclass(frozen=True)
class Prepared:
    """A lesson with its fingering, and what else is known of it."""

    lesson: Lesson
    fingering: Fingering
    extras: Extras = field(default_factory=Extras)


def laid_out(
    request: Request,
    lessons: Sequence[Prepared],
    progress: Callable[[int, int], None] | None = None,
) -> Printed:
    """The document, ready to be seen or printed; of several lessons only a book takes
    more than the first. ``progress`` is told how many lessons of all are laid out.

    Raises BadInput where there is nothing to print.
    """
    document = _document(request, lessons, progress or (lambda done, of: None))
    return Booklet(document) if request.booklet else document


def _document(
    request: Request, lessons: Sequence[Prepared], progress: Callable[[int, int], None]
) -> Printed:
    options = request.options
    if not lessons:
        raise BadInput("A book needs a lesson at least; choose some.")
    first = lessons[0]
    if request.what == "grips":
        return grip_sheet(first.lesson, first.fingering, options, request.order)
    if request.what == "plan":
        return plan_sheet(first.lesson, first.fingering, options, first.extras.model)
    if request.what == "page":
        return Handout(first.lesson, first.fingering, options, first.extras)
    chapters = []
    for done, one in enumerate(lessons):
        progress(done, len(lessons))
        pages = Handout(one.lesson, one.fingering, options, one.extras)
        chapters.append(BookLesson(one.lesson, pages))
    title = request.title.strip() or say("Lessons")
    return Book(BookTitle(title, request.subtitle.strip()), chapters, options)


def make_product(
    request: Request,
    lessons: Sequence[Prepared],
    path: str | Path,
    progress: Callable[[int, int], None] | None = None,
) -> int:
    """Write the document as PDF, whole or not at all; the number of its pages, of a
    booklet the sides of its sheets."""
    document = laid_out(request, lessons, progress)
    write_whole(Path(path), pdf_of(document))
    return document.count
