"""Pages that can be seen, turned and printed: what all printed things have in common."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Protocol

from PySide6.QtCore import QSize, QSizeF, Qt
from PySide6.QtGui import QImage, QPageSize, QPainter

from workbench.engraving.app import SANS
from workbench.handout.files.pdf import Bookmark, pdf_bytes
from workbench.handout.files.tags import ARTIFACT, begin
from workbench.handout.options import MM, HandoutOptions, Sheet, page_size
from workbench.handout.setting.compose import Page
from workbench.handout.setting.typeset import GREY, Style, draw
from workbench.language.speech import say


class Printed(Protocol):
    """A laid-out document. Pages count from 0; ``sheet`` is its paper in points."""

    options: HandoutOptions
    sheet: Sheet

    @property
    def title(self) -> str: ...

    @property
    def author(self) -> str: ...

    @property
    def count(self) -> int: ...

    def paint_page(self, painter: QPainter, number: int, label: str = "") -> None:
        """Paint a page in points with the paper's corner at the origin. ``label`` stands
        at the foot in place of the page number."""
        ...

    def bookmarks(self) -> list[Bookmark]: ...


def pdf_of(document: Printed) -> bytes:
    """The whole document as PDF."""

    def painted(number: int) -> Callable[[QPainter], None]:
        return lambda painter: document.paint_page(painter, number)

    sheet = document.sheet
    size = page_size(document.options)
    if sheet.width > sheet.height:
        size = QPageSize(QSizeF(sheet.width, sheet.height), QPageSize.Unit.Point)
    return pdf_bytes(
        [painted(k) for k in range(document.count)],
        size,
        title=document.title,
        author=document.author,
        bookmarks=document.bookmarks(),
    )


def page_image(document: Printed, number: int, width: int, ratio: float = 1.0) -> QImage:
    """Page ``number`` as it will be printed, ``width`` pixels of the screen across,
    ``ratio`` device pixels to each."""
    scale = width * ratio / document.sheet.width
    size = QSize(round(width * ratio), round(document.sheet.height * scale))
    image = QImage(size, QImage.Format.Format_RGB32)
    image.fill(Qt.GlobalColor.white)
    painter = QPainter(image)
    painter.setRenderHints(QPainter.RenderHint.Antialiasing | QPainter.RenderHint.TextAntialiasing)
    painter.scale(scale, scale)
    document.paint_page(painter, number)
    painter.end()
    image.setDevicePixelRatio(ratio)
    return image


def foot(
    painter: QPainter, sheet: Sheet, options: HandoutOptions, right: str, middle: str = ""
) -> None:
    """The line at the foot: studio and contact, a title, and the page."""
    begin(painter, ARTIFACT)
    style = Style(7.5 * min(sheet.scale, 1.2), SANS)
    y = sheet.height - 9.5 * MM
    left = "  ·  ".join(t for t in (options.studio, options.contact) if t)
    draw(painter, sheet.left, y, left, style, GREY)
    draw(painter, sheet.left + sheet.line - style.width(right), y, right, style, GREY)
    middle = middle if len(middle) < 60 else middle[:59] + "…"
    at = sheet.left + (sheet.line - style.width(middle)) / 2
    if middle and at > sheet.left + style.width(left) + 12:
        draw(painter, at, y, middle, style, GREY)


class Leaves:
    """Pages of blocks under one title."""

    def __init__(
        self, title: str, author: str, options: HandoutOptions, page: Sheet, pages: Sequence[Page]
    ) -> None:
        self.options, self.sheet = options, page
        self._title, self._author, self._pages = title, author, tuple(pages)

    @property
    def title(self) -> str:
        return self._title

    @property
    def author(self) -> str:
        return self.options.studio or self._author

    @property
    def count(self) -> int:
        return len(self._pages)

    def paint_page(self, painter: QPainter, number: int, label: str = "") -> None:
        for block, y in self._pages[number].placed:
            painter.save()
            block.paint(painter, self.sheet.left, self.sheet.top + y)
            painter.restore()
        right = label or say("Page {page} of {pages}", page=number + 1, pages=self.count)
        foot(painter, self.sheet, self.options, right, self.title if number else "")

    def bookmarks(self) -> list[Bookmark]:
        out = [Bookmark(self.title, 0)]
        for number, page in enumerate(self._pages):
            for block, _ in page.placed:
                if heading := getattr(block, "heading", ""):
                    out.append(Bookmark(heading, number))
        return out
