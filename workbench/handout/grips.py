"""The grips of a fingering, and their diagrams."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QPainter, QPen

from workbench.engraving.app import SANS
from workbench.engraving.marks import chord_text
from workbench.fingering.chordname import name_chord
from workbench.fingering.types import FingeredBar, Fingering
from workbench.handout.typeset import INK, PAPER, SMALL, Style, draw
from workbench.handout.words import beat_word
from workbench.instrument.model import Instrument
from workbench.music.model import Piece
from workbench.teaching.lesson import BarNote

MOST = 8
_FRETS = 4


@dataclass(frozen=True)
class Grip:
    """``frets`` and ``fingers`` by string, string 1 first; fret None is not played.
    ``barre`` is (fret, lowest string number, highest) or None."""

    title: str
    where: str
    frets: tuple[int | None, ...]
    fingers: tuple[int, ...]
    barre: tuple[int, int, int] | None = None

    @property
    def fretted(self) -> int:
        return sum(1 for f in self.frets if f)

    def within(self, other: Grip) -> bool:
        """True where ``other`` shows every finger of this grip."""
        return all(
            not f or (f == g and a == b)
            for f, g, a, b in zip(self.frets, other.frets, self.fingers, other.fingers,
                                  strict=True)
        )


def grips_of(
    piece: Piece, fingering: Fingering, instrument: Instrument, most: int = MOST
) -> tuple[Grip, ...]:
    """The distinct grips of two or more fretted notes, in order of appearance;
    of many, those with the most fingers."""
    found: list[Grip] = []
    bars = {b.index: b for b in piece.bars}
    for fingered in fingering.bars:
        bar = bars[fingered.index]
        names = {c.onset: c.text for c in bar.chords if c.text}
        for onset in sorted({n.onset for n in fingered.notes}):
            grip = _grip_at(fingered, onset, instrument, names.get(onset, ""), bar.number,
                            bar.time_signature[1])
            if grip is not None and not any(grip.within(g) for g in found):
                found = [g for g in found if not g.within(grip)] + [grip]
    if len(found) > most:
        ranked = sorted(range(len(found)), key=lambda k: (-found[k].fretted, k))[:most]
        found = [found[k] for k in sorted(ranked)]
    return tuple(found)


def _grip_at(fingered: FingeredBar, onset: Fraction, instrument: Instrument, name: str,
             number: str, unit: int) -> Grip | None:
    frets: list[int | None] = [None] * instrument.strings
    fingers = [0] * instrument.strings
    sounding: list[int] = []
    for note in fingered.notes:
        held = note.held if note.held > 0 else note.duration
        if note.string is None or note.fret is None:
            continue
        if note.onset <= onset < note.onset + held:
            frets[note.string - 1] = note.fret
            fingers[note.string - 1] = note.left or 0
            sounding.append(note.midi)
    if sum(1 for f in frets if f) < 2:
        return None
    barre = next(
        ((b.fret, min(b.strings), max(b.strings)) for b in fingered.barres if b.onset == onset),
        None,
    )
    title = chord_text(name or name_chord(sounding).name)
    return Grip(title, f"bar {number}, beat {beat_word(onset, unit)}", tuple(frets),
                tuple(fingers), barre)


def grip_of_note(note: BarNote, number: int, instrument: Instrument) -> Grip | None:
    """The grip picture of a teaching note, None where it has none that fits."""
    if note.grip is None or len(note.grip) != instrument.strings:
        return None
    frets = tuple(reversed(note.grip))
    return Grip(f"Note {number}", "", frets, (0,) * len(frets))


def with_pictures(
    grips: Sequence[Grip], notes: Sequence[BarNote], instrument: Instrument
) -> tuple[Grip, ...]:
    """The grips and the notes' own pictures; a picture of a grip that is there
    already is only named under it."""
    out = list(grips)
    for number, note in enumerate(notes, 1):
        picture = grip_of_note(note, number, instrument)
        if picture is None:
            continue
        same = next((k for k, g in enumerate(out) if g.frets == picture.frets), None)
        if same is None:
            out.append(picture)
        elif out[same].where:
            out[same] = replace(out[same], where=f"{out[same].where} · note {number}")
    return tuple(out)


def draw_grip(
    painter: QPainter, grip: Grip, area: QRectF, scale: float, mirrored: bool
) -> None:
    """A diagram with upright strings, string 1 on the right (mirrored: left)."""
    strings = len(grip.frets)
    played = [f for f in grip.frets if f]
    high = max(played, default=1)
    base = 1 if high <= _FRETS else min(played)
    rows = max(_FRETS, high - base + 1)
    gap = min(9.5 * scale, (area.width() - 26 * scale) / max(1, strings - 1))
    step = 11.5 * scale
    wide = gap * (strings - 1)
    left = area.center().x() - wide / 2
    name = Style(9.0 * scale, SANS, bold=True)
    while name.width(grip.title) > area.width() - 4 and name.size > 5:
        name = name.scaled(0.93)
    small = SMALL.scaled(0.9 * scale)
    where = small
    while where.width(grip.where) > area.width() - 4 and where.size > 4.5:
        where = where.scaled(0.95)
    top = area.top() + 24 * scale
    draw(painter, area.center().x() - name.width(grip.title) / 2, area.top() + 9 * scale,
         grip.title, name)

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
    if base > 1:
        text = str(base)
        side = left + wide + 7 * scale if mirrored else left - 7 * scale - small.width(text)
        draw(painter, side, top + step * 0.72, text, small)
    radius = 4.3 * scale
    if grip.barre is not None and grip.barre[0] >= base:
        fret, low, top_string = grip.barre
        y = top + (fret - base + 0.5) * step
        ends = sorted((x_of(low), x_of(top_string)))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QBrush(INK))
        painter.drawRoundedRect(
            QRectF(ends[0] - radius, y - radius, ends[1] - ends[0] + 2 * radius, 2 * radius),
            radius, radius,
        )
    for string, (stop, finger) in enumerate(zip(grip.frets, grip.fingers, strict=True), 1):
        x = x_of(string)
        if not stop:
            _open_mark(painter, QPointF(x, top - 5.5 * scale), stop is None, scale)
            continue
        y = top + (stop - base + 0.5) * step
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QBrush(INK))
        painter.drawEllipse(QPointF(x, y), radius, radius)
        if finger:
            figure = Style(6.6 * scale, SANS, bold=True)
            text = str(finger)
            draw(painter, x - figure.width(text) / 2, y + 2.4 * scale, text, figure,
                 PAPER)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    draw(painter, area.center().x() - where.width(grip.where) / 2,
         top + rows * step + 10 * scale, grip.where, where)


def _open_mark(painter: QPainter, middle: QPointF, muted: bool, scale: float) -> None:
    """A ring over an open string, a cross over one that is not played."""
    size = 2.3 * scale
    painter.setPen(QPen(INK, 0.8 * scale))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    if muted:
        for sign in (-1, 1):
            painter.drawLine(middle + QPointF(-size, -size * sign),
                             middle + QPointF(size, size * sign))
    else:
        painter.drawEllipse(middle, size, size)


def grip_height(grips: tuple[Grip, ...], scale: float) -> float:
    """Height of one row of these diagrams in points."""
    rows = max(
        (max(_FRETS, max(p) - (1 if max(p) <= _FRETS else min(p)) + 1)
         for g in grips if (p := [f for f in g.frets if f])),
        default=_FRETS,
    )
    return (24 + 11.5 * rows + 15) * scale
