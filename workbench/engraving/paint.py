"""Painting engraved music and finding its notes: the same for screen, picture and PDF."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property

from PySide6.QtCore import QPointF, QRectF, QSizeF
from PySide6.QtGui import QPainter
from PySide6.QtSvg import QSvgRenderer

from workbench.engraving import ids
from workbench.engraving.drawing.render import SystemDrawing
from workbench.engraving.pointing import Geometry, Place
from workbench.music.model import Piece


class PaintedSystem:
    """A system ready to paint. All rectangles in engraving units from its corner."""

    def __init__(self, drawing: SystemDrawing) -> None:
        self.first, self.last = drawing.first, drawing.last
        self.flat = drawing.flat
        self.renderer = QSvgRenderer(drawing.flat.svg)
        self._rects: dict[str, QRectF] = {}
        self._by_note: dict[str, list[str]] | None = None

    @property
    def size(self) -> QSizeF:
        return QSizeF(self.flat.width, self.flat.height)

    def paint(self, painter: QPainter, corner: QPointF, scale: float) -> None:
        """Paint with the corner at ``corner``; ``scale`` painter units an engraving unit."""
        target = QRectF(corner, self.size * scale)
        self.renderer.render(painter, target)

    def rect(self, element_id: str) -> QRectF | None:
        """The rectangle of an element, None where it is not in this system."""
        if element_id not in self._rects:
            if element_id not in self._ids:
                return None
            bounds = self.renderer.boundsOnElement(element_id)
            if bounds.isEmpty():
                return None
            where = self.renderer.transformForElement(element_id).mapRect(bounds)
            self._rects[element_id] = where
        return self._rects[element_id]

    def of_note(self, note_id: str, notes: Mapping[str, int]) -> list[str]:
        """Ids of the elements of a note: heads, figure, finger marks. ``notes`` holds
        every note's id."""
        if self._by_note is None:
            found: dict[str, list[str]] = {}
            for element_id in self.flat.ids:
                note = ids.note_of(element_id, notes)
                if note is not None:
                    found.setdefault(note, []).append(element_id)
            self._by_note = found
        return self._by_note.get(note_id, [])

    def prepare(self, notes: Mapping[str, int]) -> None:
        """Find out now what would be asked for when somebody waits."""
        self.rects()
        self.of_note("", notes)

    def rects(self) -> dict[str, QRectF]:
        """The rectangles of all that has an id and is drawn."""
        return {name: rect for name in self.flat.ids if (rect := self.rect(name)) is not None}

    @cached_property
    def _ids(self) -> frozenset[str]:
        return frozenset(self.flat.ids)


@dataclass(frozen=True)
class Placed:
    """A system at its place in the image."""

    system: PaintedSystem
    corner: QPointF
    scale: float

    @property
    def rect(self) -> QRectF:
        return QRectF(self.corner, self.system.size * self.scale)

    def mapped(self, inner: QRectF) -> QRectF:
        """A rectangle of the system in image units."""
        return QRectF(self.corner + inner.topLeft() * self.scale, inner.size() * self.scale)


class ScoreImage:
    """Engraved systems laid out on one surface. Coordinates: image units, pixels
    at 100 %. Immutable; a ``Strip`` makes the next one after an edit."""

    def __init__(self, placed: Sequence[Placed], piece: Piece, octave_below: bool = False) -> None:
        self.placed = tuple(placed)
        self._piece = piece
        self._notes = piece.bar_of
        self._octave_below = octave_below
        self._geometries: dict[int, Geometry] = {}
        right = max((p.rect.right() for p in self.placed), default=0.0)
        bottom = max((p.rect.bottom() for p in self.placed), default=0.0)
        self.size = QSizeF(right, bottom)

    def paint(self, painter: QPainter, rect: QRectF | None = None) -> None:
        """Paint the systems that touch ``rect`` (all without it)."""
        for item in self.placed:
            if rect is None or item.rect.intersects(rect):
                item.system.paint(painter, item.corner, item.scale)

    def _of_bar(self, bar_index: int) -> Placed | None:
        for item in self.placed:
            if item.system.first <= bar_index <= item.system.last:
                return item
        return None

    def system_rect(self, bar_index: int) -> QRectF | None:
        """The rectangle of the system that holds a written bar."""
        item = self._of_bar(bar_index)
        return item.rect if item else None

    def bar_rect(self, bar_index: int) -> QRectF | None:
        """The rectangle of a written bar: its edges, the system's height."""
        item = self._of_bar(bar_index)
        if item is None:
            return None
        edges = item.system.flat.bars.get(bar_index)
        if edges is None:
            return None
        inner = QRectF(edges[0], 0.0, edges[1] - edges[0], item.system.flat.height)
        return item.mapped(inner)

    def rect_of(self, element_id: str) -> QRectF | None:
        """The rectangle of a note's head and stem, or of any element (see ``ids``)."""
        for item in self.placed:
            inner = item.system.rect(element_id)
            if inner is not None:
                return item.mapped(inner)
        return None

    def rects_of_note(self, note_id: str) -> tuple[QRectF, ...]:
        """Every rectangle of a note: heads (tied parts too), figure, finger marks."""
        if note_id not in self._notes:
            return ()
        out = []
        first = self._notes[note_id]
        for item in self.placed:
            if item.system.last < first:
                continue
            elements = item.system.of_note(note_id, self._notes)
            found = [item.system.rect(element_id) for element_id in elements]
            out += [item.mapped(rect) for rect in found if rect is not None]
            if not elements and item.system.first > first:
                break  # a tied note goes on without a gap
        return tuple(out)

    def note_at(self, point: QPointF, reach: float = 6.0) -> str | None:
        """The note whose head, figure or finger mark lies nearest to ``point``,
        at most ``reach`` image units away; None where there is none."""
        best: tuple[float, str] | None = None
        for item in self.placed:
            if not item.rect.adjusted(-reach, -reach, reach, reach).contains(point):
                continue
            inside = (point - item.corner) / item.scale
            for element_id in item.system.flat.ids:
                note = ids.note_of(element_id, self._notes)
                if note is None:
                    continue
                rect = item.system.rect(element_id)
                if rect is None:
                    continue
                gap = _distance(rect, inside) * item.scale
                middle = rect.center() - inside
                far = gap * 1000 + (middle.x() ** 2 + middle.y() ** 2) ** 0.5 * item.scale
                if gap <= reach and (best is None or far < best[0]):
                    best = (far, note)
        return best[1] if best else None

    def bar_at(self, point: QPointF) -> int | None:
        """The written bar under ``point``."""
        for item in self.placed:
            if not item.rect.contains(point):
                continue
            x = (point.x() - item.corner.x()) / item.scale
            for index, (left, right) in item.system.flat.bars.items():
                if left <= x <= right:
                    return index
        return None

    # Places in the music.

    def _geometry(self, number: int) -> Geometry:
        if number not in self._geometries:
            system = self.placed[number].system
            bars = [b for b in self._piece.bars if system.first <= b.index <= system.last]
            self._geometries[number] = Geometry(
                system.flat, bars, system.rects(), self._octave_below
            )
        return self._geometries[number]

    def _where(self, bar_index: int) -> tuple[Placed, Geometry] | None:
        for number, item in enumerate(self.placed):
            if item.system.first <= bar_index <= item.system.last:
                return item, self._geometry(number)
        return None

    def place_at(self, point: QPointF, grid: Fraction = Fraction(1, 2)) -> Place | None:
        """The place in the music under ``point``: its moment is one at which something
        stands, or a multiple of ``grid`` quarter notes. None outside the bars."""
        for number, item in enumerate(self.placed):
            if item.rect.contains(point):
                inside = (point - item.corner) / item.scale
                return self._geometry(number).place_at(inside, grid)
        return None

    def point_of(self, place: Place) -> QPointF | None:
        """Where a place of the music is drawn; None where it is not. A place with
        neither step nor string lies on the staff's middle line."""
        found = self._where(place.bar)
        if found is None:
            return None
        item, geometry = found
        x = geometry.x_of(place.bar, place.onset)
        y = geometry.y_of(place)
        if y is None and place.step is None and place.string is None and geometry.staff:
            y = geometry.staff[len(geometry.staff) // 2]
        if x is None or y is None:
            return None
        return item.corner + QPointF(x, y) * item.scale

    def column_of(self, place: Place) -> QRectF | None:
        """A narrow upright rectangle through all staves at a moment: where a caret stands."""
        found = self._where(place.bar)
        if found is None:
            return None
        item, geometry = found
        x = geometry.x_of(place.bar, place.onset)
        if x is None:
            return None
        flat = item.system.flat
        top, bottom = flat.staff_top - 360.0, flat.staff_bottom + 360.0
        return item.mapped(QRectF(x - 90.0, max(0.0, top), 180.0, bottom - max(0.0, top)))

    def notes_in(self, area: QRectF) -> tuple[str, ...]:
        """Ids of the notes whose first head, or figure, has its middle in ``area``, in
        time, the highest of a chord first."""
        found: set[str] = set()
        for item in self.placed:
            if not item.rect.intersects(area):
                continue
            for element_id, rect in item.system.rects().items():
                note = ids.first_head_or_figure(element_id)
                if note in self._notes and area.contains(item.mapped(rect).center()):
                    found.add(note)
        notes = [note for note in self._piece.notes if note.id in found]
        return tuple(
            n.id for n in sorted(notes, key=lambda n: (self._notes[n.id], n.onset, -n.midi))
        )


def _distance(rect: QRectF, point: QPointF) -> float:
    dx = max(rect.left() - point.x(), 0.0, point.x() - rect.right())
    dy = max(rect.top() - point.y(), 0.0, point.y() - rect.bottom())
    return math.hypot(dx, dy)
