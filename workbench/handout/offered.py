"""What can be made of a lesson on paper, as picture and as file, by name: window, command
line and the pages themselves take it from here. Imports nothing heavy."""

from __future__ import annotations

from dataclasses import dataclass

from workbench.language.speech import mark, say
from workbench.music import suffixes


@dataclass(frozen=True)
class Product:
    """``words`` say what it is in a list, ``title`` in the name of its file. ``suffixes``
    are the endings of its file, the usual one first; ``paged`` has pages to print; ``alone``
    is made of one lesson; ``grade`` says the grade; ``audience`` is made for the student or
    the teacher."""

    words: str
    title: str
    suffixes: tuple[str, ...] = (suffixes.PDF,)
    paged: bool = True
    alone: bool = True
    grade: bool = False
    audience: bool = False


#: In the order in which they are offered.
OFFERED = {
    "page": Product(mark("the handout"), mark("handout"), grade=True, audience=True),
    "grips": Product(mark("all grips on one page"), mark("grips")),
    "plan": Product(mark("the practice plan alone"), mark("practice plan")),
    "book": Product(
        mark("a book for a class"), mark("book"), alone=False, grade=True, audience=True
    ),
    "picture": Product(
        mark("some bars as a picture"), mark("picture"), suffixes.PICTURES, paged=False
    ),
    "music": Product(
        mark("the music for other programs"), mark("music"), suffixes.EXPORTS, paged=False
    ),
}
#: Those that are printed on pages.
PAGED = tuple(name for name, product in OFFERED.items() if product.paged)
#: For whom a handout is made, and what the file of it is called.
AUDIENCES = {
    "student": (mark("for the student"), mark("student's page")),
    "teacher": (mark("for the teacher"), mark("teacher's sheet")),
}
PAPERS = {"a4": "A4", "letter": "Letter"}
ORDERS = {"appearance": mark("as they appear"), "difficulty": mark("easy ones first")}
#: What a handout may leave out, by the name of its option in ``HandoutOptions``.
PARTS = {
    "plan": mark("&Practice plan"),
    "grips": mark("&Grips"),
    "care": mark("Hea&lth cautions"),
    "lines": mark("Lines for own &words"),
}


def title_of(what: str, audience: str = "") -> str:
    """What the file of a product is called: the handout by whom it is for."""
    if what == "page" and audience in AUDIENCES:
        return say(AUDIENCES[audience][1])
    return say(OFFERED[what].title)
