"""The handout: a lesson on paper."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from pathlib import Path

from PySide6.QtGui import QPainter

from workbench.engraving.app import SANS, ensure_gui
from workbench.engraving.options import MeiOptions
from workbench.engraving.paint import PaintedSystem
from workbench.engraving.render import STAFF_HEIGHT, Engraver
from workbench.fingering.types import Fingering
from workbench.handout import teacher
from workbench.handout.blocks import (
    Block,
    ColumnsBlock,
    FactsBlock,
    GripsBlock,
    NoteBlock,
    OwnNotesBlock,
    SystemBlock,
    TextBlock,
    TitleBlock,
)
from workbench.handout.compose import Composer, Page, music_pages
from workbench.handout.grips import Grip, grips_of, with_pictures
from workbench.handout.options import (
    COMPACT_MM,
    MM,
    STAFF_MM,
    HandoutOptions,
    Sheet,
    page_size,
    sheet,
)
from workbench.handout.pdf import Bookmark, pdf_bytes, write_whole
from workbench.handout.plan import plan_blocks
from workbench.handout.typeset import BODY, GREY, SMALL, Style, draw
from workbench.handout.words import (
    CAUTION,
    facts,
    form_words,
    legend,
    note_heading,
    pickup_joined,
    technique_names,
)
from workbench.instrument.model import Instrument
from workbench.instrument.table import hand
from workbench.instrument.table import instrument as instrument_of
from workbench.music.errors import BadInput
from workbench.music.form import sections
from workbench.music.model import Piece
from workbench.teaching.cautions import cautions
from workbench.teaching.lesson import BarNote, Lesson

__all__ = ["Handout", "HandoutOptions", "make_handout"]


def make_handout(
    lesson: Lesson,
    fingering: Fingering,
    path: str | Path,
    options: HandoutOptions | None = None,
) -> int:
    """Write the handout as PDF; the number of pages.

    The file appears whole or not at all. Raises BadInput where the lesson has
    no bars, its instrument is not known or the file cannot be written.
    """
    handout = Handout(lesson, fingering, options or HandoutOptions())
    write_whole(Path(path), handout.pdf())
    return handout.count


class Handout:
    """A laid-out handout: ``count`` pages, each painted by ``paint_page`` in
    points, onto the screen as onto paper."""

    def __init__(self, lesson: Lesson, fingering: Fingering, options: HandoutOptions) -> None:
        if not lesson.piece.bars:
            raise BadInput(f"'{lesson.title}' has no bars; there is nothing to print.")
        ensure_gui()
        self.lesson, self.fingering, self.options = lesson, fingering, options
        self.piece = _with_sections(lesson)
        self.instrument: Instrument = instrument_of(lesson.instrument, lesson.capo)
        self.sheet: Sheet = sheet(options)
        self.notes = _ordered(lesson)
        self._pages = self._compose()

    @property
    def count(self) -> int:
        return len(self._pages)

    @property
    def title(self) -> str:
        return self.lesson.title or self.piece.title

    def pdf(self) -> bytes:
        """The whole handout as a PDF document."""

        def painted(number: int) -> Callable[[QPainter], None]:
            return lambda painter: self.paint_page(painter, number)

        return pdf_bytes(
            [painted(k) for k in range(self.count)],
            page_size(self.options),
            title=self.title,
            author=self.options.studio or self.piece.composer,
            bookmarks=self.bookmarks(),
        )

    def bookmarks(self) -> list[Bookmark]:
        """The title, the sections, and what follows the music."""
        out = [Bookmark(self.title, 0)]
        for number, page in enumerate(self._pages):
            for block, _ in page.placed:
                if isinstance(block, SystemBlock):
                    out += [
                        Bookmark(f"Section {s.letter}", number)
                        for s in sections(pickup_joined(self.piece))
                        if block.system.first <= s.first_bar <= block.system.last
                    ]
                elif isinstance(block, TextBlock | GripsBlock | ColumnsBlock) and block.heading:
                    out.append(Bookmark(block.heading, number))
        return out

    def paint_page(self, painter: QPainter, number: int, label: str = "") -> None:
        """Paint page ``number`` (from 0) with the paper's corner at the origin, in points.

        ``label`` stands at the foot in place of the page number, as in a book.
        """
        page = self._pages[number]
        for block, y in page.placed:
            painter.save()
            block.paint(painter, self.sheet.left, self.sheet.top + y)
            painter.restore()
        self._footer(painter, number, label)

    def systems(self) -> list[PaintedSystem]:
        """The engraved systems in order, as they are painted."""
        return [b.system for p in self._pages for b, _ in p.placed if isinstance(b, SystemBlock)]

    def _footer(self, painter: QPainter, number: int, label: str = "") -> None:
        style = Style(7.5 * min(self.sheet.scale, 1.2), SANS)
        y = self.sheet.height - 9.5 * MM
        left = "  ·  ".join(t for t in (self.options.studio, self.options.contact) if t)
        draw(painter, self.sheet.left, y, left, style, GREY)
        right = label or f"Page {number + 1} of {self.count}"
        edge = self.sheet.left + self.sheet.line
        draw(painter, edge - style.width(right), y, right, style, GREY)
        if number:
            middle = self.title if len(self.title) < 60 else self.title[:59] + "…"
            at = self.sheet.left + (self.sheet.line - style.width(middle)) / 2
            if at > self.sheet.left + style.width(left) + 12:
                draw(painter, at, y, middle, style, GREY)

    def _compose(self) -> list[Page]:
        """Notes stand at the foot of their page where that spreads the music over
        no more pages than it needs; else they follow it in two columns. A slightly
        smaller staff is taken where it saves a page."""
        usual = self._arranged(STAFF_MM)
        if len(usual) == 1:
            return usual
        compact = self._arranged(COMPACT_MM)
        return compact if len(compact) < len(usual) else usual

    def _arranged(self, staff_mm: float) -> list[Page]:
        engraved = self._engraved(staff_mm)
        foot = self._composed(engraved, at_foot=True)
        if not self.notes:
            return foot
        after = self._composed(engraved, at_foot=False)
        crowded = music_pages(foot) > music_pages(after)
        return after if crowded or len(after) < len(foot) else foot

    def _composed(
        self, engraved: Sequence[tuple[PaintedSystem, SystemBlock]], at_foot: bool
    ) -> list[Page]:
        scale, line = self.sheet.scale, self.sheet.line
        composer = Composer(self.sheet)
        composer.head(TitleBlock(self.title, self.piece.composer, self.piece.arranger, line, scale))
        composer.head(FactsBlock(facts(self.lesson, self.instrument), line, scale))
        form = form_words(self.piece)
        if form:
            composer.head(TextBlock(f"**Form:** {form}", line, scale, after=8.0))
        for system, block in engraved:
            composer.system(block, self._notes_of(system, line) if at_foot else ())
        if not at_foot:
            step = (line + 14 * scale) / 2
            notes = [n for s, _ in engraved for n in self._notes_of(s, step - 14 * scale, 9.0)]
            composer.columns(notes, step, "Notes")
        composer.tail(self._tail(), OwnNotesBlock(line, scale, 4, self._own_heading()))
        if self.options.plan:
            head, rows = plan_blocks(self.lesson, self.piece, self.fingering, self.instrument,
                                     line, scale)
            composer.pages_of(rows, head, TextBlock("", line, scale, heading="Practice plan"))
        return composer.pages

    def _own_heading(self) -> str:
        return "My notes" if self.options.audience == "student" else "Lesson record"

    def _engraved(self, staff_mm: float) -> list[tuple[PaintedSystem, SystemBlock]]:
        unit = staff_mm * MM * self.sheet.scale / STAFF_HEIGHT
        marks = tuple((n.first_bar, k) for k, n in enumerate(self.notes, 1))
        drawings = Engraver().systems(
            self.piece, self.fingering, self.instrument, MeiOptions(marks=marks),
            self.sheet.line / unit, paper="#ffffff",
        )
        painted = [PaintedSystem(d) for d in drawings]
        return [(p, SystemBlock(p, unit)) for p in painted]

    def _notes_of(
        self, system: PaintedSystem, width: float, size: float = BODY.size
    ) -> list[NoteBlock]:
        out = []
        for number, note in enumerate(self.notes, 1):
            if system.first <= note.first_bar <= system.last:
                text = note.text
                if self.options.audience == "teacher":
                    text += teacher.rejected_words(note, self.piece)
                out.append(
                    NoteBlock.made(number, note_heading(note, self.piece), text,
                                   width, self.sheet.scale, size)
                )
        return out

    def _tail(self) -> list[Block]:
        scale, line = self.sheet.scale, self.sheet.line
        barre = any(b.barres for b in self.fingering.bars)
        notes = [n for b in self.fingering.bars for n in b.notes]
        guide = any(n.move == "guide" for n in notes)
        rest = any(n.stroke == "rest" for n in notes)
        words = legend(self.options, barre, guide, rest)
        blocks: list[Block] = [TextBlock(words, line, scale, style=_LEGEND, after=8.0)]
        grips: tuple[Grip, ...] = grips_of(self.piece, self.fingering, self.instrument)
        grips = with_pictures(grips, self.notes, self.instrument)
        if grips:
            heading = "New grips"
            if self.options.left_handed:
                heading += " (left-handed: string 1 on the left)"
            blocks.append(GripsBlock(grips, line, scale, self.options.left_handed, heading))
        if self.options.audience == "teacher":
            blocks += teacher.audit_blocks(self.piece, self.fingering, line, scale)
        names = technique_names(self.lesson)
        if names:
            blocks.append(TextBlock(f"**Techniques:** {names}.", line, scale, after=8.0))
        extra = cautions(self.piece, self.fingering, self.instrument, hand(self.lesson.hand),
                         minutes_a_day=self.lesson.minutes_a_day)[1:]
        care = " ".join((CAUTION, *extra))
        blocks.append(TextBlock(f"**Take care.** {care}", line, scale, style=SMALL, after=9.0,
                                boxed=True))
        return blocks


_LEGEND = Style(7.6, italic=True)


def _ordered(lesson: Lesson) -> tuple[BarNote, ...]:
    """Notes by bar; a note whose bars are gone from the piece is left out."""
    indices = {b.index for b in lesson.piece.bars}
    kept = [n for n in lesson.notes if n.first_bar in indices and n.text.strip()]
    return tuple(sorted(kept, key=lambda n: (n.first_bar, n.last_bar)))


def _with_sections(lesson: Lesson) -> Piece:
    """The piece with the teacher's section letters."""
    letters = dict(lesson.sections)
    if not letters:
        return lesson.piece
    bars = tuple(replace(b, section=letters.get(b.index, "")) for b in lesson.piece.bars)
    return replace(lesson.piece, bars=bars)
