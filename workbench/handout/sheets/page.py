"""The handout: a lesson on paper."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from workbench.engraving.app import ensure_gui
from workbench.engraving.drawing.render import STAFF_HEIGHT
from workbench.engraving.options import EVERY, PRINTED
from workbench.engraving.paint import PaintedSystem
from workbench.fingering.types import Fingering
from workbench.handout.files.pdf import Bookmark
from workbench.handout.options import (
    COMPACT_MM,
    MM,
    STAFF_MM,
    HandoutOptions,
    sheet,
)
from workbench.handout.parts.material import Extras, Material, marks_of
from workbench.handout.parts.words import pickup_joined
from workbench.handout.setting.blocks import Block, SystemBlock
from workbench.handout.setting.compose import (
    SYSTEM_GAP,
    Flow,
    Page,
    balanced,
    column_step,
    music_page,
)
from workbench.handout.setting.engraved import engraved
from workbench.handout.setting.layout import Broken, break_pages, joints, repeat_spans, turns_back
from workbench.handout.setting.paged import Leaves, pdf_of
from workbench.handout.setting.remarks import ColumnsBlock
from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.music.files import write_whole
from workbench.music.order.form import sections
from workbench.teaching.lessons.lesson import Lesson

__all__ = ["Extras", "Handout", "HandoutOptions", "make_handout"]

#: What an arrangement costs besides its pages, in pages.
COMPACT = 0.25
APART = 0.3  # notes behind the music, not at its foot
FAR_APART = 0.35  # for every further page of music then
MUSIC_PAGE = 0.25


def make_handout(
    lesson: Lesson,
    fingering: Fingering,
    path: str | Path,
    options: HandoutOptions | None = None,
    extras: Extras | None = None,
) -> int:
    """Write the handout as PDF; the number of pages.

    The file appears whole or not at all. Raises BadInput where the lesson has
    no bars, its instrument is not known or the file cannot be written.
    """
    handout = Handout(lesson, fingering, options or HandoutOptions(), extras)
    write_whole(Path(path), handout.pdf())
    return handout.count


class Handout:
    """A laid-out handout: ``count`` pages, each painted by ``paint_page`` in
    points, onto the screen as onto paper."""

    def __init__(
        self,
        lesson: Lesson,
        fingering: Fingering,
        options: HandoutOptions,
        extras: Extras | None = None,
    ) -> None:
        self.extras = extras or Extras()
        if not lesson.piece.bars:
            raise BadInput("'{title}' has no bars; there is nothing to print.", title=lesson.title)
        ensure_gui()
        self.sheet = sheet(options)
        self._material = Material(lesson, fingering, options, self.sheet, self.extras)
        self.piece, self.lesson = self._material.piece, lesson
        self.options, self.title = options, self._material.title
        self._pages = self._composed()
        leaves = Leaves(self.title, self.piece.composer, options, self.sheet, self._pages)
        self.author, self.count = leaves.author, leaves.count
        self.paint_page = leaves.paint_page

    def pdf(self) -> bytes:
        """The whole handout as a PDF document."""
        return pdf_of(self)

    def bookmarks(self) -> list[Bookmark]:
        """The title, the sections, and what follows the music."""
        out = [Bookmark(self.title, 0)]
        for number, page in enumerate(self._pages):
            for block, _ in page.placed:
                if isinstance(block, SystemBlock):
                    out += [
                        Bookmark(say("Section {letter}", letter=s.letter), number)
                        for s in sections(pickup_joined(self.piece))
                        if block.system.first <= s.first_bar <= block.system.last
                    ]
                elif heading := getattr(block, "heading", ""):
                    out.append(Bookmark(heading, number))
        return out

    def systems(self) -> list[PaintedSystem]:
        """The engraved systems in order, as they are painted."""
        return [b.system for p in self._pages for b, _ in p.placed if isinstance(b, SystemBlock)]

    def last_bars(self) -> list[int]:
        """The last bar (index) of every page with music, in order."""
        out = []
        for page in self._pages:
            bars = [b.system.last for b, _ in page.placed if isinstance(b, SystemBlock)]
            out += bars[-1:]
        return out

    def _composed(self) -> list[Page]:
        """The cheapest arrangement: pages, turns inside repeats, notes far from their
        bars and a smaller staff weighed against one another."""
        spans = repeat_spans(self.piece)
        best: tuple[float, list[Page]] | None = None
        edges = joints(self.piece, spans)
        for staff_mm in (STAFF_MM, COMPACT_MM):
            turned = False
            for joined in (False, True):
                if joined and not (turned and edges):
                    continue
                systems = self._engraved(staff_mm, edges if joined else ())
                for at_foot in (True, False) if self._material.notes else (True,):
                    found = self._arranged(systems, spans, at_foot)
                    if found is None:
                        continue
                    cost, pages, turns = found
                    turned = turned or turns > 0
                    cost += COMPACT if staff_mm != STAFF_MM else 0.0
                    if best is None or cost < best[0] - 1e-6:
                        best = cost, pages
            if best is not None and len(best[1]) == 1:
                break
        assert best is not None
        return best[1]

    def _arranged(
        self, systems: Sequence[SystemBlock], spans: Sequence[tuple[int, int]], at_foot: bool
    ) -> tuple[float, list[Page], int] | None:
        """(cost, pages, turns inside repeats); None where notes fit under no system."""
        material, scale = self._material, self.sheet.scale
        room = self.sheet.room
        head, legend = material.head(), material.legend()
        gap = SYSTEM_GAP * scale
        over = sum(b.height for b in head)
        pages: list[Page] = []
        if over + systems[0].height + gap > room:
            flow = Flow(self.sheet)
            for block in head:
                flow.put(block)
            pages, head, over = flow.pages, [], 0.0
        feet: dict[tuple[int, int], Block | None] = {}

        def foot(start: int, end: int) -> Block | None:
            if (start, end) not in feet:
                feet[start, end] = self._foot(systems[start:end]) if at_foot else None
            return feet[start, end]

        def high(start: int, end: int) -> float:
            block = foot(start, end)
            return block.height if block else 0.0

        broken: Broken | None = break_pages(
            [s.height + gap for s in systems],
            room,
            over,
            high,
            legend.height,
            [turns_back(spans, s.system.last) for s in systems],
            last=not material.parts,
        )
        if broken is None:
            return None
        ends = (*broken.starts[1:], len(systems))
        for start, end in zip(broken.starts, ends, strict=True):
            pages.append(
                music_page(
                    self.sheet,
                    head if start == 0 else (),
                    systems[start:end],
                    foot(start, end),
                    legend if end == len(systems) else None,
                )
            )
        music = len(pages)
        flow = Flow(self.sheet, pages)
        if material.notes and not at_foot:
            flow.notes(material.narrow_notes, say("Remarks"))
        flow.parts(material.parts)
        if material.options.lines:
            flow.own_notes(material.own_notes(), music - 1)
        cost = broken.cost - broken.pages + len(flow.pages) + MUSIC_PAGE * (broken.pages - 1)
        if material.notes and not at_foot:
            cost += APART + FAR_APART * (broken.pages - 1)
        return cost, flow.pages, broken.turns

    def _foot(self, systems: Sequence[SystemBlock]) -> Block | None:
        """The notes of these systems, over the whole width or in columns, whichever is lower."""
        material, scale = self._material, self.sheet.scale
        first, last = material.note_span(systems[0])[0], material.note_span(systems[-1])[1]
        if first == last:
            return None
        one = ColumnsBlock((material.wide_notes[first:last],), self.sheet.line, "", scale)
        two = ColumnsBlock(
            balanced(material.narrow_notes[first:last]),
            column_step(self.sheet.line, scale),
            "",
            scale,
        )
        return min((one, two), key=lambda b: b.height)

    def _engraved(self, staff_mm: float, joints: tuple[int, ...]) -> list[SystemBlock]:
        unit = staff_mm * MM * self.sheet.scale / STAFF_HEIGHT
        material = self._material
        drawings = engraved(
            material.piece,
            material.fingering,
            material.instrument,
            marks_of(material.notes),
            self.sheet.line / unit,
            joints,
            of=self.lesson,
            strings=EVERY if material.options.strings else PRINTED,
        )
        return [
            SystemBlock(PaintedSystem(d), unit, material.system_words(d.first, d.last))
            for d in drawings
        ]
