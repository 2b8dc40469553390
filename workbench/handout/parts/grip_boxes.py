"""Grip boxes: black for a finger set down, a ring for one that stays. No colour needed."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QPainter, QPen

from workbench.engraving.app import SANS
from workbench.handout.files.tags import begin
from workbench.handout.parts.grips import GripDiagram
from workbench.handout.setting.typeset import (
    HEADING,
    INK,
    PAPER,
    SMALL,
    Line,
    Style,
    draw,
    draw_line,
    fitting,
    wrap,
)
from workbench.language.speech import say

FRETS = 4
_HEAD, _STEP, _FOOT = 24.0, 11.5, 27.0
_RADIUS = 4.3


class GripsBlock:
    """Grip boxes in rows under a heading, and what their signs mean."""

    def __init__(
        self,
        grips: tuple[GripDiagram, ...],
        width: float,
        scale: float,
        mirrored: bool,
        heading: str,
    ) -> None:
        self.grips, self._scale, self._mirrored = grips, scale, mirrored
        self.heading = heading
        self._across = max(1, int(width // (62 * scale)))
        self._cell = width / self._across
        self._style = SMALL.scaled(0.95 * scale)
        words = signs(grips)
        self._key: list[Line] = wrap(words, self._style, width) if words else []

    @property
    def _rows(self) -> list[tuple[GripDiagram, ...]]:
        n = self._across
        return [self.grips[k : k + n] for k in range(0, len(self.grips), n)]

    @property
    def height(self) -> float:
        body = sum(grip_height(row, self._scale) + 6 * self._scale for row in self._rows)
        key = len(self._key) * self._style.size * 1.35
        return HEADING.size * 1.7 * self._scale + body + key + 4 * self._scale

    def paint(self, painter: QPainter, x: float, y: float) -> None:
        begin(painter, "H2")
        draw(painter, x, y + HEADING.size * self._scale, self.heading, HEADING.scaled(self._scale))
        y += HEADING.size * 1.7 * self._scale
        for row in self._rows:
            high = grip_height(row, self._scale)
            for k, grip in enumerate(row):
                area = QRectF(x + k * self._cell, y, self._cell, high)
                begin(painter, "Figure", grip_words(grip))
                draw_grip(painter, grip, area, self._scale, self._mirrored)
            y += high + 6 * self._scale
        if self._key:
            begin(painter, "P")
        for line in self._key:
            draw_line(painter, x, y + self._style.size, line)
            y += self._style.size * 1.35


def signs(grips: tuple[GripDiagram, ...]) -> str:
    """What the signs in these boxes mean; empty where every finger is set down anew."""
    rows = []
    if any(any(g.stays) for g in grips):
        rows.append(say("Black: the finger is set down. Ring: it stays from before."))
    if any(any(g.slides) for g in grips):
        rows.append(say("Dash: guide finger, it slides here."))
    if any(g.planted for g in grips):
        rows.append(say("Dotted ring: it may stay, though nothing sounds there."))
    return " ".join(rows)


def grip_words(grip: GripDiagram) -> str:
    """The box in words, string by string."""
    rows = []
    for string in range(len(grip.frets), 0, -1):
        fret, finger = grip.frets[string - 1], grip.fingers[string - 1]
        if fret is None:
            words = say("not played")
        elif not fret:
            words = say("open", sense="string")
        elif finger:
            words = say("fret {fret}, finger {finger}", fret=fret, finger=finger)
        else:
            words = say("fret {fret}", fret=fret)
        rows.append(say("string {string} {words}", string=string, words=words))
    where = ", ".join(w for w in (grip.title, grip.where, grip.note, grip.hard) if w)
    return f"{where}: {'; '.join(rows)}"


def grip_height(grips: tuple[GripDiagram, ...], scale: float) -> float:
    """Height of one row of these boxes in points."""
    return (_HEAD + _STEP * max((_span(g)[1] for g in grips), default=FRETS) + _FOOT) * scale


def _span(grip: GripDiagram) -> tuple[int, int]:
    """(first fret drawn, how many)."""
    played = [f for f in grip.frets if f] + [fret for _, _, fret in grip.planted]
    high = max(played, default=1)
    base = 1 if high <= FRETS else min(played)
    return base, max(FRETS, high - base + 1)


def draw_grip(
    painter: QPainter, grip: GripDiagram, area: QRectF, scale: float, mirrored: bool
) -> None:
    """A box with upright strings, string 1 on the right (mirrored: left)."""
    strings = len(grip.frets)
    base, rows = _span(grip)
    gap = min(9.5 * scale, (area.width() - 26 * scale) / max(1, strings - 1))
    step = _STEP * scale
    wide = gap * (strings - 1)
    left = area.center().x() - wide / 2
    top = area.top() + _HEAD * scale
    room = area.width() - 4

    def middle(text: str, y: float, style: Style) -> None:
        style = fitting(style, text, room)
        draw(painter, area.center().x() - style.width(text) / 2, y, text, style)

    middle(grip.title, area.top() + 9 * scale, Style(9.0 * scale, SANS, bold=True))

    def x_of(string: int) -> float:
        place = string - 1 if mirrored else strings - string
        return left + place * gap

    thin = QPen(INK, 0.6 * scale)
    painter.setPen(thin)
    for string in range(1, strings + 1):
        painter.drawLine(QPointF(x_of(string), top), QPointF(x_of(string), top + rows * step))
    for row in range(rows + 1):
        painter.setPen(QPen(INK, 2.4 * scale) if row == 0 and base == 1 else thin)
        painter.drawLine(QPointF(left, top + row * step), QPointF(left + wide, top + row * step))
    small = SMALL.scaled(0.9 * scale)
    if base > 1:
        side = left + wide + 7 * scale if mirrored else left - 7 * scale - small.width(str(base))
        draw(painter, side, top + step * 0.72, str(base), small)

    def y_of(fret: int) -> float:
        return top + (fret - base + 0.5) * step

    if grip.barre is not None and grip.barre[0] >= base:
        laid, low, high = grip.barre
        _bar(painter, sorted((x_of(low), x_of(high))), y_of(laid), _RADIUS * scale)
    stays = grip.stays or (False,) * strings
    slides = grip.slides or (False,) * strings
    for string, (fret, finger) in enumerate(zip(grip.frets, grip.fingers, strict=True), 1):
        waiting = any(s == string for _, s, _ in grip.planted)
        if fret:
            at = QPointF(x_of(string), y_of(fret))
            _finger(painter, at, finger, scale, ring=stays[string - 1])
            if slides[string - 1]:
                painter.setPen(QPen(INK, 1.1 * scale))
                painter.drawLine(at + QPointF(-8.2 * scale, 0), at + QPointF(-5.4 * scale, 0))
        elif not waiting:
            _open_mark(painter, QPointF(x_of(string), top - 5.5 * scale), fret is None, scale)
    for finger, string, fret in grip.planted:
        _finger(painter, QPointF(x_of(string), y_of(fret)), finger, scale, ring=True, dotted=True)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    foot = top + rows * step + 10 * scale
    rows_below = [
        w for w in (grip.where, "  ·  ".join(w for w in (grip.note, grip.hard) if w)) if w
    ]
    for words in rows_below:
        middle(words, foot, small)
        foot += 9.5 * scale


def _bar(painter: QPainter, ends: list[float], y: float, radius: float) -> None:
    """A barre as a bar over its strings."""
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QBrush(INK))
    area = QRectF(ends[0] - radius, y - radius, ends[1] - ends[0] + 2 * radius, 2 * radius)
    painter.drawRoundedRect(area, radius, radius)


def _finger(
    painter: QPainter, at: QPointF, finger: int, scale: float, *, ring: bool, dotted: bool = False
) -> None:
    """A finger's spot: black, or a white ring where it stays."""
    radius = _RADIUS * scale
    pen = QPen(INK, 1.0 * scale)
    if dotted:
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        pen.setDashPattern([1.6, 1.8])
    painter.setPen(pen if ring else Qt.PenStyle.NoPen)
    painter.setBrush(QBrush(PAPER if ring else INK))
    painter.drawEllipse(at, radius, radius)
    if finger:
        figure = Style(6.6 * scale, SANS, bold=True)
        draw(
            painter,
            at.x() - figure.width(str(finger)) / 2,
            at.y() + 2.4 * scale,
            str(finger),
            figure,
            INK if ring else PAPER,
        )


def _open_mark(painter: QPainter, middle: QPointF, muted: bool, scale: float) -> None:
    """A ring over an open string, a cross over one that is not played."""
    size = 2.3 * scale
    painter.setPen(QPen(INK, 0.8 * scale))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    if muted:
        for sign in (-1, 1):
            painter.drawLine(
                middle + QPointF(-size, -size * sign), middle + QPointF(size, size * sign)
            )
    else:
        painter.drawEllipse(middle, size, size)
