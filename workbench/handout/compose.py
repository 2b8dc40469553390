"""Blocks onto pages: systems from the top, each page's notes at its foot."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from workbench.handout.blocks import Block, ColumnsBlock, NoteBlock, OwnNotesBlock, SystemBlock
from workbench.handout.options import Sheet
from workbench.handout.typeset import HEADING

SYSTEM_GAP = 8.0
_MOST_GAP = 30.0
_MOST_LINES = 12


@dataclass
class Page:
    """Blocks with their distance from the top margin."""

    placed: list[tuple[Block, float]] = field(default_factory=list)


def music_pages(pages: Sequence[Page]) -> int:
    """How many pages hold music."""
    return sum(any(isinstance(b, SystemBlock) for b, _ in p.placed) for p in pages)


def _fill(notes: Sequence[NoteBlock], room: float) -> tuple[list[NoteBlock], list[NoteBlock]]:
    """Notes for a column of height ``room``, and the rest; one may be split."""
    taken: list[NoteBlock] = []
    rest = list(notes)
    while rest and rest[0].height <= room:
        room -= rest[0].height
        taken.append(rest.pop(0))
    return taken, rest


def _two_columns(
    notes: Sequence[NoteBlock], room: float
) -> tuple[list[NoteBlock], list[NoteBlock], list[NoteBlock]]:
    """Left, right, rest. The lowest height at which all fit, else ``room``."""
    heights = sorted({sum(n.height for n in notes[: k + 1]) for k in range(len(notes))})
    for height in heights:
        if height > room:
            break
        left, rest = _fill(notes, height)
        right, rest = _fill(rest, height)
        if not rest:
            return left, right, rest
    left, rest = _fill(notes, room)
    left, rest = _with_part(left, rest, room)
    right, rest = _fill(rest, room)
    right, rest = _with_part(right, rest, room)
    return left, right, rest


def _with_part(
    column: list[NoteBlock], rest: list[NoteBlock], room: float
) -> tuple[list[NoteBlock], list[NoteBlock]]:
    """Fill what is left of a column with the first lines of the next note."""
    parts = rest[0].split(room - sum(n.height for n in column)) if rest else None
    if parts is None:
        return column, rest
    return [*column, parts[0]], [parts[1], *rest[1:]]


class Composer:
    """Fills pages in order. Heights in points."""

    def __init__(self, sheet: Sheet) -> None:
        self._sheet = sheet
        self._gap = SYSTEM_GAP * sheet.scale
        self.pages: list[Page] = []
        self._head: list[Block] = []
        self._systems: list[Block] = []
        self._foot: list[NoteBlock] = []

    def _used(self) -> float:
        head = sum(b.height for b in self._head)
        systems = sum(b.height + self._gap for b in self._systems)
        return head + systems + sum(b.height for b in self._foot)

    @property
    def _free(self) -> float:
        return self._sheet.room - self._used()

    def head(self, block: Block) -> None:
        """A block over the systems of the current page."""
        if block.height > self._free and (self._head or self._systems):
            self._close(spread=True)
        self._head.append(block)

    def system(self, block: Block, notes: Sequence[NoteBlock]) -> None:
        """A system and the notes that belong to its bars."""
        need = block.height + self._gap + sum(n.height for n in notes)
        if need > self._free and (self._systems or self._foot):
            self._close(spread=True)
        if block.height + self._gap > self._free and self._head:
            self._close(spread=False)
        self._systems.append(block)
        for note in notes:
            self._note(note)

    def _note(self, note: NoteBlock) -> None:
        while note.height > self._free:
            parts = note.split(self._free)
            if parts is not None:
                self._foot.append(parts[0])
                note = parts[1]
            elif not (self._head or self._systems or self._foot):
                break
            self._close(spread=False)
        self._foot.append(note)

    def columns(self, notes: Sequence[NoteBlock], step: float, heading: str) -> None:
        """Notes after the music, in two columns of equal height."""
        scale = self._sheet.scale
        rest = list(notes)
        page = self._close(spread=self._free < 90 * scale)
        at = self._bottom(page) + 4 * scale
        while rest:
            room = self._sheet.room - at - HEADING.size * 1.8 * scale - 6 * scale
            left, right, rest = _two_columns(rest, room)
            if left:
                block = ColumnsBlock((left, right), step, heading, scale)
                page.placed.append((block, at))
            if rest:
                page = self._new_page()
                at, heading = 0.0, f"{heading.removesuffix(' (continued)')} (continued)"

    def tail(self, blocks: Sequence[Block], own: OwnNotesBlock) -> None:
        """What follows the music; the lines for own notes take the room that is left."""
        free = self._free
        stays = 0
        while stays < len(blocks) and blocks[stays].height <= free:
            free -= blocks[stays].height
            stays += 1
        whole = stays == len(blocks) and own.with_lines(2).height <= free
        if self._head or self._systems or self._foot or not self.pages:
            page = self._close(spread=not whole, room=0.0 if whole else free)
        else:
            page = self.pages[-1]
        at = self._bottom(page)
        for block in blocks:
            if at + block.height > self._sheet.room and page.placed:
                page = self._new_page()
                at = 0.0
            page.placed.append((block, at))
            at += block.height
        if at + own.with_lines(2).height > self._sheet.room:
            page = self._new_page()
            at = 0.0
        free = self._sheet.room - at - own.with_lines(0).height
        lines = max(2, min(_MOST_LINES, int(free // own.step)))
        page.placed.append((own.with_lines(lines), at))

    def pages_of(self, blocks: Sequence[Block], head: Block, title: Block) -> None:
        """Blocks on pages of their own, under ``title`` and on each page ``head``."""
        page: Page | None = None
        at = 0.0
        for block in blocks:
            if page is None or at + block.height > self._sheet.room:
                first = page is None
                at = title.height if first else 0.0
                page = self._new_page()
                if first:
                    page.placed.append((title, 0.0))
                page.placed.append((head, at))
                at += head.height
            page.placed.append((block, at))
            at += block.height

    def _new_page(self) -> Page:
        self.pages.append(Page())
        return self.pages[-1]

    def _bottom(self, page: Page) -> float:
        return max((y + b.height for b, y in page.placed), default=0.0)

    def _close(self, spread: bool, room: float | None = None) -> Page:
        """Set the current page; with ``spread`` its systems share the height that is
        left, ``room`` of it where more is to follow on the page."""
        page = self._new_page()
        extra = 0.0
        free = self._free if room is None else room
        if spread and len(self._systems) > 1:
            extra = min(_MOST_GAP * self._sheet.scale, free / (len(self._systems) - 1))
        at = 0.0
        for block in self._head:
            page.placed.append((block, at))
            at += block.height
        for block in self._systems:
            page.placed.append((block, at))
            at += block.height + self._gap + extra
        if self._systems:
            at -= extra
        notes = sum(n.height for n in self._foot)
        if spread and room is None:
            at = max(at, self._sheet.room - notes)
        for note in self._foot:
            page.placed.append((note, at))
            at += note.height
        self._head, self._systems, self._foot = [], [], []
        return page
