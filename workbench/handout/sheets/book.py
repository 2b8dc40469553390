"""A book for a class: title page, contents, and one lesson after the other."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtGui import QPainter

from workbench.engraving.app import ensure_gui
from workbench.handout.files.pdf import Bookmark
from workbench.handout.files.tags import ARTIFACT, begin
from workbench.handout.options import HandoutOptions, sheet
from workbench.handout.parts.words import CAUTION
from workbench.handout.setting.blocks import TextBlock
from workbench.handout.setting.compose import Flow
from workbench.handout.setting.paged import Leaves, Printed
from workbench.handout.setting.typeset import (
    BODY,
    GREY,
    HEADING,
    SMALL,
    TITLE,
    Line,
    Style,
    draw,
    draw_line,
    line_width,
    wrap,
)
from workbench.instrument.table import instrument as instrument_of
from workbench.language.speech import count, say
from workbench.music.errors import BadInput
from workbench.teaching.lessons.lesson import Lesson


@dataclass(frozen=True)
class BookTitle:
    """What the title page says besides studio and contact."""

    title: str
    subtitle: str = ""


@dataclass(frozen=True)
class BookLesson:
    """A lesson of the book and its laid-out pages."""

    lesson: Lesson
    pages: Printed


class Book:
    """All pages of a book. Page numbers run from the title page, which bears none."""

    def __init__(
        self, title: BookTitle, chapters: Sequence[BookLesson], options: HandoutOptions
    ) -> None:
        if not chapters:
            raise BadInput("A book needs a lesson at least; choose some.")
        ensure_gui()
        self.options, self.sheet = options, sheet(options)
        self._title, self.chapters = title, tuple(chapters)
        contents = len(self._contents([0] * len(chapters)).pages)
        self._starts: list[int] = []
        at = 1 + contents
        for chapter in chapters:
            self._starts.append(at)
            at += chapter.pages.count
        self._count = at
        flow = self._contents(self._starts)
        self._leaves = Leaves(self.title, "", options, self.sheet, flow.pages)

    @property
    def title(self) -> str:
        return self._title.title

    @property
    def author(self) -> str:
        return self.options.studio

    @property
    def count(self) -> int:
        return self._count

    def starts(self) -> tuple[int, ...]:
        """The page (from 0) on which each lesson begins."""
        return tuple(self._starts)

    def paint_page(self, painter: QPainter, number: int, label: str = "") -> None:
        words = label or str(number + 1)
        if number == 0:
            self._cover(painter)
        elif number < self._starts[0]:
            self._leaves.paint_page(painter, number - 1, words)
        else:
            place = max(k for k, start in enumerate(self._starts) if start <= number)
            self.chapters[place].pages.paint_page(painter, number - self._starts[place], words)

    def bookmarks(self) -> list[Bookmark]:
        """Title page, contents and the first page of every lesson."""
        lessons = [
            Bookmark(chapter.lesson.title or chapter.pages.title, start)
            for chapter, start in zip(self.chapters, self._starts, strict=True)
        ]
        return [Bookmark(self.title, 0), Bookmark(say("Contents"), 1), *lessons]

    def _cover(self, painter: QPainter) -> None:
        page, scale = self.sheet, self.sheet.scale
        style = Style(TITLE.size * 1.5 * min(scale, 1.25), bold=True)
        lines = wrap(self.title.replace("*", ""), style, page.line)
        while len(lines) > 3 and style.size > 14:
            style = style.scaled(0.9)
            lines = wrap(self.title.replace("*", ""), style, page.line)
        y = page.top + page.room * 0.3
        begin(painter, "H1")
        for line in lines:
            self._centred(painter, y, line)
            y += style.size * 1.25
        y += 6 * scale
        begin(painter, "P")
        small = Style(13 * scale, italic=True)
        said = [self._title.subtitle, count(len(self.chapters), "{n} lesson", "{n} lessons")]
        for words in filter(None, said):
            for line in wrap(words, small, page.line):
                self._centred(painter, y, line)
                y += small.size * 1.4
        body = BODY.scaled(1.15 * scale)
        y = page.top + page.room * 0.72
        for words in filter(None, (self.options.studio, self.options.contact)):
            for line in wrap(words, body, page.line):
                self._centred(painter, y, line)
                y += body.size * 1.4
        care = TextBlock(f"**{say('Take care.')}** {say(CAUTION)}", page.line, scale, style=SMALL,
                         after=0, boxed=True)  # fmt: skip
        care.paint(painter, page.left, page.top + page.room - care.height)

    def _centred(self, painter: QPainter, y: float, line: Line) -> None:
        draw_line(painter, self.sheet.left + (self.sheet.line - line_width(line)) / 2, y, line)

    def _contents(self, starts: Sequence[int]) -> Flow:
        scale, line = self.sheet.scale, self.sheet.line
        flow = Flow(self.sheet)
        head = Style(HEADING.size * 1.7, HEADING.family, bold=True)
        flow.put(TextBlock(say("Contents"), line, scale, style=head, after=10))
        for chapter, start in zip(self.chapters, starts, strict=True):
            flow.put(ContentsRow(chapter.lesson, start + 1, line, scale))
        return flow


class ContentsRow:
    """A lesson's title, what it is for, dots and the page."""

    def __init__(self, lesson: Lesson, page: int, width: float, scale: float) -> None:
        self._width, self._page = width, str(page)
        self._style, self._small = BODY.scaled(1.2 * scale), SMALL.scaled(scale)
        self._number = self._style.width("0000")
        title = (lesson.title or lesson.piece.title).replace("*", "")
        self._lines = wrap(title, self._style, width - 2 * self._number)
        instrument = instrument_of(lesson.instrument, lesson.capo)
        said = [lesson.piece.composer, str(instrument.called)]
        if lesson.grade is not None:
            said.append(say("grade {grade}", grade=lesson.grade))
        self._about = wrap("  ·  ".join(filter(None, said)), self._small, width - self._number)
        self._gap = 7.0 * scale

    @property
    def height(self) -> float:
        title = len(self._lines) * self._style.size * 1.25
        return title + len(self._about) * self._small.size * 1.35 + self._gap

    def paint(self, painter: QPainter, x: float, y: float) -> None:
        begin(painter, "P")
        for line in self._lines:
            y += self._style.size * 1.25
            draw_line(painter, x, y, line)
        dot = self._style.width(".") * 2
        end = x + self._width - self._style.width(self._page)
        draw(painter, end, y, self._page, self._style)
        begin(painter, ARTIFACT)
        at = end - dot
        first = x + line_width(self._lines[-1]) + dot
        while at > first:
            draw(painter, at, y, ".", self._style, GREY)
            at -= dot
        begin(painter, "P")
        for line in self._about:
            y += self._small.size * 1.35
            draw_line(painter, x, y, line)
