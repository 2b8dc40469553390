"""Draws the neck and the fingers on it."""

from __future__ import annotations

from dataclasses import dataclass, field
from math import atan2, cos, hypot, sin

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QPainter, QPen, QPolygonF

from workbench.fingering.telling.moments import Way
from workbench.fingering.telling.reaches import Reach
from workbench.fingering.types import Barre, FingeredNote
from workbench.language.names import note_words
from workbench.ui.kit.look import Colours
from workbench.ui.kit.marks import draw_mark
from workbench.ui.neck.layout import NeckLayout
from workbench.ui.neck.reach import draw_reach

STEPS = ("C", "C#", "D", "Eb", "E", "F", "F#", "G", "Ab", "A", "Bb", "B")
DOTS = (5, 7, 12)  # frets with a dot, as on ukuleles and guitars alike (common practice)


@dataclass(frozen=True)
class Marker:
    """A finger to draw. ``now``: it sounds at the shown moment, else later or
    earlier in the bar; ``stays``: it was there before and does not move."""

    note: FingeredNote
    now: bool = False
    begins: bool = False
    chosen: bool = False
    stays: bool = False


@dataclass(frozen=True)
class Ghost:
    """A place pressed in the grip before or after (or in both), not in the one shown:
    by which finger it ``was`` and ``will`` be, 0 for none."""

    string: int
    fret: int
    was: int = 0
    will: int = 0

    @property
    def text(self) -> str:
        """The finger, or both of them where another one comes back."""
        return "·".join(dict.fromkeys(str(f) for f in (self.was, self.will) if f))


@dataclass(frozen=True)
class Picture:
    """Everything on the neck at one time."""

    markers: tuple[Marker, ...] = ()
    barres: tuple[Barre, ...] = ()
    offers: tuple[tuple[int, int], ...] = ()
    comes: tuple[Way, ...] = ()
    goes: tuple[Way, ...] = ()
    ghosts: tuple[Ghost, ...] = ()
    silent: tuple[tuple[int, int, int], ...] = ()  # finger, string, fret: down, not sounding
    reach: Reach | None = None
    dragged: tuple[int, int] | None = None
    cursor: QPointF | None = field(default=None, compare=False)


def draw(
    painter: QPainter, layout: NeckLayout, picture: Picture, c: Colours, font: QFont,
    seen: tuple[float, float] | None = None,
) -> None:  # fmt: skip
    """Draw the whole neck; words keep to what is ``seen`` of it, from x to x in pixels."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setFont(font)
    _wood(painter, layout, c)
    for barre in picture.barres:
        _barre(painter, layout, barre, c)
    for way in picture.comes:
        _way(painter, layout, way, c, Qt.PenStyle.SolidLine)
    for way in picture.goes:
        _way(painter, layout, way, c, Qt.PenStyle.DashLine)
    if picture.reach is not None:
        draw_reach(painter, layout, picture.reach, c, seen or (0.0, layout.width))
    for finger, string, fret in picture.silent:
        _silent(painter, layout, (string, fret), str(finger), c)
    for ghost in picture.ghosts:
        _ghost(painter, layout, ghost, c, font)
    for string, fret in picture.offers:
        _offer(painter, layout, string, fret, c, picture.dragged == (string, fret))
    covered = {(g.string, g.fret) for g in picture.ghosts} | {row[1:] for row in picture.silent}
    # Later in the bar first, so that what sounds now lies on top.
    for marker in sorted(picture.markers, key=lambda m: (m.now, m.begins, m.chosen)):
        if marker.now or (marker.note.string, marker.note.fret) not in covered:
            _marker(painter, layout, marker, c, font)
    if picture.cursor is not None:
        painter.setPen(QPen(QColor(c.accent), 2))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawEllipse(picture.cursor, layout.gap * 0.36, layout.gap * 0.36)


def _wood(painter: QPainter, layout: NeckLayout, c: Colours) -> None:
    strings, gap = layout.instrument.strings, layout.gap
    top = layout.string_y(1) - gap * 0.5
    height = (strings - 1) * gap + gap
    nut, end = layout.fret_x(0), layout.fret_x(layout.frets)
    board = QRectF(QPointF(min(nut, end), top), QPointF(max(nut, end), top + height))
    painter.fillRect(board, QColor(c.wood))
    painter.setPen(Qt.PenStyle.NoPen)
    dot = QColor(c.wood_line)
    dot.setAlphaF(0.35)
    painter.setBrush(dot)
    for fret in DOTS:
        if fret <= layout.frets:
            x = (layout.fret_x(fret) + layout.fret_x(fret - 1)) / 2
            middle = top + height / 2
            offsets = (-gap, gap) if fret == 12 else (0.0,)
            for off in offsets:
                painter.drawEllipse(QPointF(x, middle + off), gap * 0.13, gap * 0.13)
    for fret in range(1, layout.frets + 1):
        x = layout.fret_x(fret)
        painter.setPen(QPen(QColor(c.fret), 1.6))
        painter.drawLine(QPointF(x, top), QPointF(x, top + height))
        middle = (layout.fret_x(fret - 1) + x) / 2
        painter.setPen(QColor(c.faint))
        painter.drawText(
            QRectF(middle - gap, top + height + gap * 0.1, 2 * gap, gap * 0.8),
            Qt.AlignmentFlag.AlignCenter, str(fret),
        )  # fmt: skip
    painter.setPen(QPen(QColor(c.ink), gap * 0.14))
    painter.drawLine(QPointF(nut, top), QPointF(nut, top + height))
    label = QRectF(0, 0, layout.head - gap * 1.7, gap)
    for string in range(1, strings + 1):
        y = layout.string_y(string)
        thick = 1.0 + 0.35 * (string - 1) if not layout.instrument.reentrant else 1.4
        painter.setPen(QPen(QColor(c.wood_line), thick))
        painter.drawLine(QPointF(nut, y), QPointF(end, y))
        midi = layout.instrument.open_midi[string - 1]
        left = layout.width - label.width() if layout.mirrored else 0.0
        painter.setPen(QColor(c.faint))
        painter.drawText(
            label.translated(left, y - gap / 2), Qt.AlignmentFlag.AlignCenter,
            f"{string} {note_words(STEPS[midi % 12])}",
        )  # fmt: skip


def _barre(painter: QPainter, layout: NeckLayout, barre: Barre, c: Colours) -> None:
    x, gap = layout.finger_x(barre.fret), layout.gap
    top, bottom = layout.string_y(min(barre.strings)), layout.string_y(max(barre.strings))
    box = QRectF(x - gap * 0.24, top - gap * 0.44, gap * 0.48, bottom - top + gap * 0.88)
    fill = QColor(c.marker)
    fill.setAlphaF(0.45)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(fill)
    painter.drawRoundedRect(box, gap * 0.24, gap * 0.24)


def _way(painter: QPainter, layout: NeckLayout, way: Way, c: Colours, style: Qt.PenStyle) -> None:
    (x0, y0), (x1, y1) = (
        (layout.finger_x(fret), layout.string_y(string)) for string, fret in (way.start, way.end)
    )
    length, radius = hypot(x1 - x0, y1 - y0), layout.gap * 0.4
    if length < radius * 2.2:
        return
    angle = atan2(y1 - y0, x1 - x0)
    start = QPointF(x0 + cos(angle) * radius * 0.5, y0 + sin(angle) * radius * 0.5)
    end = QPointF(x1 - cos(angle) * radius, y1 - sin(angle) * radius)
    pen = QPen(QColor(c.accent), 1.8, style)
    painter.setPen(pen)
    painter.drawLine(start, end)
    tip = radius * 0.55
    wings = [
        QPointF(end.x() - cos(angle + turn) * tip, end.y() - sin(angle + turn) * tip)
        for turn in (-0.5, 0.5)
    ]
    painter.setPen(QPen(QColor(c.accent), 1.4))
    painter.setBrush(QColor(c.accent))
    painter.drawPolygon(QPolygonF([end, *wings]))


def _offer(
    painter: QPainter, layout: NeckLayout, string: int, fret: int, c: Colours, under: bool
) -> None:
    centre = QPointF(layout.finger_x(fret), layout.string_y(string))
    pen = QPen(QColor(c.accent), 2.0, Qt.PenStyle.SolidLine if under else Qt.PenStyle.DashLine)
    painter.setPen(pen)
    fill = QColor(c.accent if under else c.panel)
    fill.setAlphaF(0.6 if under else 0.5)
    painter.setBrush(fill)
    painter.drawEllipse(centre, layout.gap * 0.36, layout.gap * 0.36)


def tag(box: QRectF, before: bool, after: bool) -> QPolygonF:
    """A tag in a box that points back (left) for the grip before and on (right) for the one
    after, as music is read; both ways for a place in both."""
    nose = box.height() * 0.4
    left, right = box.left() + nose * before, box.right() - nose * after
    corners = [QPointF(left, box.top()), QPointF(right, box.top())]
    if after:
        corners.append(QPointF(box.right(), box.center().y()))
    corners += [QPointF(right, box.bottom()), QPointF(left, box.bottom())]
    if before:
        corners.append(QPointF(box.left(), box.center().y()))
    return QPolygonF(corners)


def _ghost(painter: QPainter, layout: NeckLayout, ghost: Ghost, c: Colours, font: QFont) -> None:
    x, y, gap = layout.finger_x(ghost.fret), layout.string_y(ghost.string), layout.gap
    wide = gap * (0.8 if len(ghost.text) == 1 else 1.1)
    box = QRectF(x - wide / 2, y - gap * 0.29, wide, gap * 0.58)
    fill = QColor(c.panel)
    fill.setAlphaF(0.85)
    painter.setPen(QPen(QColor(c.faint), 1.4))
    painter.setBrush(fill)
    before, after = bool(ghost.was), bool(ghost.will)
    painter.drawPolygon(tag(box, before, after))
    small = QFont(font)
    small.setPointSizeF(small.pointSizeF() * 0.8)
    painter.setFont(small)
    lean = gap * 0.1 * (before - after)
    painter.drawText(box.translated(lean, 0), Qt.AlignmentFlag.AlignCenter, ghost.text)


def _silent(
    painter: QPainter, layout: NeckLayout, place: tuple[int, int], text: str, c: Colours
) -> None:
    """A finger that stands without sounding: the square of those that stay, not filled in."""
    x, y, half = layout.finger_x(place[1]), layout.string_y(place[0]), layout.gap * 0.32
    box = QRectF(x - half, y - half, 2 * half, 2 * half)
    painter.setPen(QPen(QColor(c.ink), 1.5))
    painter.setBrush(QColor(c.panel))
    painter.drawRoundedRect(box, half * 0.3, half * 0.3)
    painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)


def _marker(painter: QPainter, layout: NeckLayout, marker: Marker, c: Colours, font: QFont) -> None:
    note, gap = marker.note, layout.gap
    if note.string is None or note.fret is None:
        return
    centre = QPointF(layout.finger_x(note.fret), layout.string_y(note.string))
    radius = gap * (0.4 if marker.now else 0.3)
    fill, words = QColor(c.panel), QColor(c.ink)
    if marker.now and marker.begins:
        fill, words = QColor(c.marker), QColor(c.marker_ink)
    if marker.chosen:
        painter.setPen(QPen(QColor(c.accent), 2.6))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawEllipse(centre, radius + 3.5, radius + 3.5)
    painter.setPen(QPen(QColor(c.ink if marker.now else c.faint), 1.5))
    painter.setBrush(fill)
    box = QRectF(centre.x() - radius, centre.y() - radius, 2 * radius, 2 * radius)
    if marker.stays:  # a square finger stands, a round one has just come
        painter.drawRoundedRect(box, radius * 0.3, radius * 0.3)
    else:
        painter.drawEllipse(box)
    bold = QFont(font)
    bold.setBold(marker.now)
    if not marker.now:
        bold.setPointSizeF(bold.pointSizeF() * 0.8)
    painter.setFont(bold)
    painter.setPen(words if marker.now else QColor(c.faint))
    text = "" if note.left is None else str(note.left)
    painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)
    if not marker.now:
        return
    small = QFont(font)
    small.setItalic(True)
    small.setPointSizeF(small.pointSizeF() * 0.85)
    painter.setFont(small)
    painter.setPen(QColor(c.ink))
    if note.right:
        beside = box.right() + (5 if marker.chosen else 1)
        side = QRectF(beside, centre.y() - gap * 0.02, gap * 0.5, gap * 0.5)
        painter.drawText(side, Qt.AlignmentFlag.AlignLeft, note.right)
    corner = QRectF(box.right() - radius * 0.45, box.top() - radius * 0.75, radius, radius)
    if note.pinned:
        draw_mark(painter, "pin", corner, c.warm)
    if note.cut_reason:
        left = corner.translated(-2 * radius, 0)
        draw_mark(painter, "cut", left, c.alarm)
