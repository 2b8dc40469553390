"""``handout SCORE``: a page for the music stand, a sheet, a book, or some bars as a picture."""

from __future__ import annotations

import argparse
import copy
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from workbench.commands.output import Meter, Result, file_to_write
from workbench.commands.prepare import fingering_of, lesson_of
from workbench.commands.source import load, player, playing_options, score_options
from workbench.handout.offered import AUDIENCES, OFFERED, ORDERS, PAGED, PAPERS, PARTS
from workbench.language.speech import count, say
from workbench.music.errors import BadInput
from workbench.music.suffixes import PICTURES, has_suffix

if TYPE_CHECKING:
    from workbench.handout.options import HandoutOptions
    from workbench.handout.products import Prepared


#: Pages that are made of one lesson.
ALONE = tuple(name for name in PAGED if OFFERED[name].alone)


def options(parser: argparse.ArgumentParser) -> None:
    score_options(parser, lessons=True)
    parser.add_argument(
        "-o", "--output", required=True, metavar="OUT.pdf",
        help="the page; a name in .svg or .png makes a picture of the music",
    )  # fmt: skip
    playing_options(parser)
    page_options(parser, PAGED)
    book = parser.add_argument_group("a book of several lessons (--what book)")
    book.add_argument(
        "--with", dest="others", action="append", default=[], metavar="SCORE",
        help="a further score or lesson of the book; repeatable",
    )  # fmt: skip
    book.add_argument("--title", default="", metavar="WORDS", help="title of the book")
    book.add_argument("--subtitle", default="", metavar="WORDS", help="a line below it")
    picture = parser.add_argument_group("a picture for the web (-o OUT.svg or OUT.png)")
    picture.add_argument("--bars", metavar="A-B", help="only these bars, by printed numbers")
    picture.add_argument(
        "--width", type=float, default=170.0, metavar="MM", help="longest line, default 170"
    )
    picture.add_argument(
        "--resolution", type=int, default=192, metavar="DPI", help="of a PNG, default 192"
    )
    picture.add_argument("--transparent", action="store_true", help="no white ground")


def page_options(parser: argparse.ArgumentParser, products: Sequence[str] = ALONE) -> None:
    """What is printed, for whom, on what paper, how large and for which hand."""
    parser.add_argument(
        "--what", choices=products, default="page",
        help="the handout (default), all grips on one page, the practice plan alone"
        + (", or a book of several lessons" if "book" in products else ""),
    )  # fmt: skip
    parser.add_argument(
        "--for",
        dest="audience",
        choices=tuple(AUDIENCES),
        default="student",
        help="the student's page (default) or the teacher's sheet",
    )
    parser.add_argument("--paper", choices=tuple(PAPERS), default="a4", help="default a4")
    parser.add_argument(
        "--without", action="append", choices=tuple(PARTS), default=[], metavar="PART",
        help=f"leave out of the handout one of {', '.join(PARTS)}; repeatable",
    )  # fmt: skip
    parser.add_argument("--large", action="store_true", help="large print")
    parser.add_argument(
        "--strings", action="store_true",
        help="string numbers in circles also where the score prints none",
    )  # fmt: skip
    parser.add_argument("--left-handed", action="store_true", help="mirrored diagrams")
    parser.add_argument(
        "--booklet", action="store_true",
        help="two pages on a side, ordered to be folded; print on both sides, flipped on the "
        "short edge",
    )  # fmt: skip
    parser.add_argument(
        "--order", choices=tuple(ORDERS), default="appearance",
        help="order of the grips on a grip sheet",
    )  # fmt: skip
    parser.add_argument("--studio", metavar="NAME", help="at the foot (default: as last set)")
    parser.add_argument("--contact", metavar="WORDS", help="beside it (default: as last set)")


def check_playing(options: argparse.Namespace) -> None:
    """Raises BadInput where the options name no instrument or hand, before any work."""
    player(options, None)


def run(options: argparse.Namespace) -> Result:
    page = file_to_write(options.output, "page.pdf")
    settle_studio(options)
    if has_suffix(page, PICTURES):
        return _picture(options, page)
    if options.bars:
        raise BadInput("--bars goes with a picture of the music; name the file .svg or .png.")
    pages = make(options, page)
    words = count(pages, "{page}: {n} page.", "{page}: {n} pages.", page=page)
    if options.booklet:
        words += " " + say("Print on both sides, flipped on the short edge; fold in the middle.")
    return Result({"pages": pages, "path": str(page)}, [words])


def make(options: argparse.Namespace, page: Path) -> int:
    """Write what the options ask for as PDF; the number of pages."""
    from workbench.handout.from_shelf import remember_grades
    from workbench.handout.products import Request, make_product
    from workbench.store.shelf import Shelf

    request = Request(
        options.what,
        _page(options),
        options.booklet,
        options.order,
        getattr(options, "title", ""),
        getattr(options, "subtitle", ""),
    )
    others = getattr(options, "others", [])
    if others and options.what != "book":
        raise BadInput("--with goes with --what book, which takes several lessons.")
    lessons = [_prepared(options, name) for name in (options.score, *others)]
    with Meter(say("Layout")) as meter:
        pages = make_product(request, [one for one, _ in lessons], page, meter)
    kept = [one for one, of_shelf in lessons if of_shelf]
    if kept:
        with Shelf() as shelf:
            remember_grades(shelf, request.what, kept)
    return pages


def _picture(options: argparse.Namespace, path: Path) -> Result:
    from workbench.commands.sound import passage
    from workbench.handout.files.passage import PassageOptions, make_passage

    if options.what != "page" or options.booklet or options.others:
        raise BadInput(
            "A picture shows the music alone; for {what} name a file in .pdf.",
            what=options.what if options.what != "page" else "--booklet",
        )
    lesson = lesson_of(options, load(options, lessons=True))
    last = len(lesson.piece.bars) - 1
    bars = passage(lesson.piece, options.bars) if options.bars else (0, last)
    wanted = PassageOptions(*bars, options.width, options.resolution, options.transparent)
    made = make_passage(lesson, fingering_of(lesson), path, wanted)
    unit = "mm" if path.suffix.lower() == ".svg" else "px"
    document = {"pages": 1, "path": str(path), "width": made.width, "height": made.height,
                "unit": unit}  # fmt: skip
    size = f"{made.width:g} × {made.height:g} {unit}"
    return Result(document, [say("{path}: {size}.", path=path, size=size)])


def _page(options: argparse.Namespace) -> HandoutOptions:
    from workbench.handout.options import HandoutOptions

    return HandoutOptions(
        audience=options.audience,
        paper=options.paper,
        large=options.large,
        strings=options.strings,
        left_handed=options.left_handed,
        studio=options.studio or "",
        contact=options.contact or "",
        plan="plan" not in options.without,
        grips="grips" not in options.without,
        care="care" not in options.without,
        lines="lines" not in options.without,
    )


def _prepared(options: argparse.Namespace, name: str) -> tuple[Prepared, bool]:
    """A score or lesson ready to be laid out, and whether it is a lesson of the shelf."""
    from workbench.handout.from_shelf import extras_of
    from workbench.handout.products import Prepared
    from workbench.handout.sheets.page import Extras
    from workbench.store.grading import model_in_force
    from workbench.store.shelf import Shelf

    chosen = copy.copy(options)
    chosen.score = name
    source = load(chosen, lessons=True)
    lesson = lesson_of(chosen, source)
    kept = lesson is source.lesson and lesson.id == name
    fingering = fingering_of(lesson)
    if not kept:
        return Prepared(lesson, fingering, Extras(model=model_in_force())), False
    with Shelf() as shelf:
        return Prepared(lesson, fingering, extras_of(shelf, lesson, fingering)), True


def settle_studio(options: argparse.Namespace) -> None:
    """Studio and contact as they were set in the window, where none is given and there is
    a store at all."""
    from workbench.store.location import store_place
    from workbench.store.setting_names import HANDOUT_OPTIONS
    from workbench.store.shelf import Shelf

    place = store_place()
    known = {}
    if options.studio is None or options.contact is None:
        if not (isinstance(place, Path) and not place.exists()):
            with Shelf() as shelf:
                known = shelf.setting(HANDOUT_OPTIONS, {})
        options.studio = str(known.get("studio", "")) if options.studio is None else options.studio
        options.contact = (
            str(known.get("contact", "")) if options.contact is None else options.contact
        )
