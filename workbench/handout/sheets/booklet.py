"""Booklet order: two pages on each side of a sheet laid crosswise, to fold in the middle."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter, QPen

from workbench.handout.files.pdf import Bookmark
from workbench.handout.files.tags import ARTIFACT, begin
from workbench.handout.options import Sheet
from workbench.handout.setting.paged import Printed
from workbench.handout.setting.typeset import GREY
from workbench.language.speech import say


def booklet_order(count: int) -> tuple[tuple[int | None, int | None], ...]:
    """The (left, right) page of each side, front and back of every sheet in turn; pages
    from 0, None where the paper stays blank.

    Laid on one another, folded in the middle and read from the front, the pages follow
    in order. A booklet has a multiple of four pages.
    """
    whole = count + -count % 4

    def page(number: int) -> int | None:
        return number if number < count else None

    sides: list[tuple[int | None, int | None]] = []
    for sheet in range(whole // 4):
        sides.append((page(whole - 1 - 2 * sheet), page(2 * sheet)))
        sides.append((page(2 * sheet + 1), page(whole - 2 - 2 * sheet)))
    return tuple(sides)


def flip_words(count: int) -> str:
    """How a booklet of so many pages is printed and folded."""
    sheets = (count + -count % 4) // 4
    blank = -count % 4
    said = say("Print on both sides, flipped on the short edge; fold in the middle.")
    if sheets > 1:
        said += " " + say("{n} sheets, laid in one another.", n=sheets)
    if blank == 1:
        said += " " + say("One page stays blank.")
    elif blank:
        said += " " + say("{n} pages stay blank.", n=blank)
    return said


class Booklet:
    """A document in booklet order. Its pages are the sides of the sheets, of the same
    paper as the document's, laid crosswise; each holds two pages, made smaller."""

    def __init__(self, inner: Printed) -> None:
        self.inner, self.options = inner, inner.options
        paper = inner.sheet
        self.sheet: Sheet = replace(paper, width=paper.height, height=paper.width)
        self.sides = booklet_order(inner.count)

    @property
    def title(self) -> str:
        return self.inner.title

    @property
    def author(self) -> str:
        return self.inner.author

    @property
    def count(self) -> int:
        return len(self.sides)

    @property
    def scale(self) -> float:
        """How much smaller the pages are: 0.71 for A4."""
        paper = self.inner.sheet
        return min(self.sheet.width / 2 / paper.width, self.sheet.height / paper.height)

    def paint_page(self, painter: QPainter, number: int, label: str = "") -> None:
        paper, scale = self.inner.sheet, self.scale
        half = self.sheet.width / 2
        for place, page in enumerate(self.sides[number]):
            if page is None:
                continue
            left = place * half + (half - paper.width * scale) / 2
            top = (self.sheet.height - paper.height * scale) / 2
            painter.save()
            painter.translate(left, top)
            painter.scale(scale, scale)
            painter.setClipRect(QRectF(0, 0, paper.width, paper.height))
            self.inner.paint_page(painter, page)
            painter.restore()
        begin(painter, ARTIFACT)
        painter.setPen(QPen(GREY, 0.4))
        for y in (0.0, self.sheet.height - 8):  # where to fold
            painter.drawLine(QPointF(half, y), QPointF(half, y + 8))

    def bookmarks(self) -> list[Bookmark]:
        """The document's, at the sides that hold their pages."""
        side_of = {page: number for number, side in enumerate(self.sides) for page in side}
        return [replace(mark, page=side_of[mark.page]) for mark in self.inner.bookmarks()]
