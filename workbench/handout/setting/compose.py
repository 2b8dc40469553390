"""Blocks onto pages. First the music, page by page as ``layout`` broke it; then
whatever follows, with the lines for own notes in the room that is left."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from workbench.handout.options import Sheet
from workbench.handout.setting.blocks import Block, SystemBlock
from workbench.handout.setting.remarks import ColumnsBlock, NoteBlock, OwnNotesBlock, continued
from workbench.handout.setting.typeset import HEADING

SYSTEM_GAP = 8.0
_MOST_GAP = 30.0
_MOST_LINES = 32
_COLUMN_GAP = 14.0


@dataclass
class Page:
    """Blocks with their distance from the top margin."""

    placed: list[tuple[Block, float]] = field(default_factory=list)

    @property
    def bottom(self) -> float:
        return max((y + b.height for b, y in self.placed), default=0.0)


@dataclass(frozen=True)
class Table:
    """Rows under a title; the heading row comes again on every page."""

    title: Block
    head: Block | None
    rows: Sequence[Block]


@dataclass(frozen=True)
class Loose:
    """A block that may go ahead of others to fill a page."""

    block: Block


@dataclass(frozen=True)
class Together:
    """Blocks that belong on one page, where one page can hold them."""

    blocks: Sequence[Block]

    @property
    def height(self) -> float:
        return sum(b.height for b in self.blocks)


Part = Block | Table | Loose | Together


def column_step(width: float, scale: float) -> float:
    """From the left edge of one of two columns to that of the other."""
    return (width + _COLUMN_GAP * scale) / 2


def column_width(width: float, scale: float) -> float:
    """Width of one of two columns."""
    return column_step(width, scale) - _COLUMN_GAP * scale


def balanced(notes: Sequence[NoteBlock]) -> tuple[list[NoteBlock], list[NoteBlock]]:
    """Notes in two columns, read down the left one first, as low as can be."""
    heights = [n.height for n in notes]

    def tallest(k: int) -> tuple[float, int]:
        return max(sum(heights[:k]), sum(heights[k:])), -k

    cut = min(range(len(notes) + 1), key=tallest)
    return list(notes[:cut]), list(notes[cut:])


def _filled(notes: Sequence[NoteBlock], room: float) -> tuple[list[NoteBlock], list[NoteBlock]]:
    """Notes for a column of height ``room``, the last one, where it is long, perhaps in
    part; and the rest."""
    taken: list[NoteBlock] = []
    rest = list(notes)
    while rest and rest[0].height <= room:
        room -= rest[0].height
        taken.append(rest.pop(0))
    parts = rest[0].split(room) if rest else None
    if parts is not None:
        return [*taken, parts[0]], [parts[1], *rest[1:]]
    return taken, rest


def two_columns(
    notes: Sequence[NoteBlock], room: float
) -> tuple[list[NoteBlock], list[NoteBlock], list[NoteBlock]]:
    """Left, right, rest. As low as can be where all fit into ``room``."""
    left, right = balanced(notes)
    if max(sum(n.height for n in left), sum(n.height for n in right)) <= room:
        return left, right, []
    left, rest = _filled(notes, room)
    right, rest = _filled(rest, room)
    return left, right, rest


class Flow:
    """Fills pages from the top, in order. Heights in points."""

    def __init__(self, sheet: Sheet, pages: Sequence[Page] = ()) -> None:
        self._sheet = sheet
        self.pages = list(pages)
        self._at = self.pages[-1].bottom if self.pages else 0.0

    @property
    def free(self) -> float:
        """Height left on the last page."""
        return self._sheet.room - self._at if self.pages else 0.0

    def new_page(self) -> None:
        self.pages.append(Page())
        self._at = 0.0

    def put(self, block: Block) -> None:
        """A block on the last page, or a new one where it does not fit."""
        if not self.pages or (block.height > self.free and self.pages[-1].placed):
            self.new_page()
        self.pages[-1].placed.append((block, self._at))
        self._at += block.height

    def notes(self, notes: Sequence[NoteBlock], heading: str) -> None:
        """Notes in two columns, over as many pages as they need."""
        scale = self._sheet.scale
        step = column_step(self._sheet.line, scale)
        rest = list(notes)
        if self.free < 90 * scale:
            self.new_page()
        while rest:
            room = self.free - HEADING.size * 1.8 * scale - 6 * scale
            left, right, rest = two_columns(rest, room)
            if left or right:
                self.put(ColumnsBlock((left, right), step, heading, scale))
                heading = continued(heading)
            if rest:
                self.new_page()

    def parts(self, parts: Sequence[Part]) -> None:
        """Parts in order; where one asks for a new page, loose ones behind it that
        still fit come first."""
        rest = list(parts)
        while rest:
            part = rest.pop(0)
            if isinstance(part, Table):
                self._table(part)
                continue
            block = part.block if isinstance(part, Loose) else part
            if block.height > self.free:
                for other in [p for p in rest if isinstance(p, Loose)]:
                    if other.block.height <= self.free:
                        self.put(other.block)
                        rest.remove(other)
            if isinstance(block, Together):
                if self.free < block.height <= self._sheet.room:
                    self.new_page()
                for one in block.blocks:
                    self.put(one)
            else:
                self.put(block)

    def _table(self, table: Table) -> None:
        head = table.head.height if table.head else 0.0
        first = table.rows[0].height if table.rows else 0.0
        if table.title.height + head + first > self.free:
            self.new_page()
        self.put(table.title)
        if table.head:
            self.put(table.head)
        for row in table.rows:
            if row.height > self.free:
                self.new_page()
                if table.head:
                    self.put(table.head)
            self.put(row)

    def own_notes(self, own: OwnNotesBlock, first: int = 0) -> None:
        """The lines for own notes, down to the foot of the emptiest page from the ``first``
        on, that with the end of the music; none where no page has room for two, for a page of
        lines alone is next to empty."""
        if not self.pages:
            return
        roomiest = min(reversed(self.pages[max(0, first) :]), key=lambda p: p.bottom)
        if own.with_lines(2).height > self._sheet.room - roomiest.bottom:
            return
        top = roomiest.bottom
        block = own.with_lines(self._lines(own, top))
        roomiest.placed.append((block, top))
        if roomiest is self.pages[-1]:
            self._at = top + block.height

    def _lines(self, own: OwnNotesBlock, top: float) -> int:
        room = self._sheet.room - top - own.with_lines(0).height
        return max(2, min(_MOST_LINES, int(room // own.step)))


def music_page(
    sheet: Sheet,
    head: Sequence[Block],
    systems: Sequence[SystemBlock],
    foot: Block | None,
    legend: Block | None,
) -> Page:
    """One page of music: its systems share the height that is left, notes stand at the
    foot. The last page has the ``legend`` under its systems; there all closes up, for
    more is to follow."""
    page = Page()
    gap = SYSTEM_GAP * sheet.scale
    used = sum(b.height for b in head) + sum(b.height + gap for b in systems)
    free = sheet.room - used - (foot.height if foot else 0.0)
    extra = 0.0
    if len(systems) > 1 and legend is None:
        extra = max(0.0, min(_MOST_GAP * sheet.scale, free / (len(systems) - 1)))
    at = 0.0
    for block in head:
        page.placed.append((block, at))
        at += block.height
    for system in systems:
        page.placed.append((system, at))
        at += system.height + gap + extra
    at -= extra if systems else 0.0
    if legend is not None:
        page.placed.append((legend, at))
        at += legend.height
    if foot is not None:
        page.placed.append((foot, at if legend else max(at, sheet.room - foot.height)))
    return page
