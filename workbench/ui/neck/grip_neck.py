"""The first frets of the neck with one bar's grip, as large as its place allows."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QFont, QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from workbench.fingering.telling.moments import moments
from workbench.fingering.telling.words import spoken
from workbench.fingering.types import FingeredBar
from workbench.instrument.model import Instrument
from workbench.language.speech import say
from workbench.ui.kit.look import colours
from workbench.ui.neck.layout import NeckLayout
from workbench.ui.neck.paint import Marker, Picture, draw

LEAST_FRETS = 5


def frets_for(*bars: FingeredBar | None) -> int:
    """How many frets show all fingers of some bars."""
    used = [n.fret + 1 for bar in bars if bar for n in bar.notes if n.fret is not None]
    return max([LEAST_FRETS, *used])


class GripNeck(QWidget):
    """The fingers that begin a bar, and fainter those that come later in it."""

    def __init__(self, instrument: Instrument, mirrored: bool = False) -> None:
        super().__init__()
        self._instrument, self._mirrored = instrument, mirrored
        self._hands: FingeredBar | None = None
        self._frets = LEAST_FRETS
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumSize(QSize(120, 70))

    def show_bar(self, hands: FingeredBar | None, name: str, frets: int = LEAST_FRETS) -> None:
        """Show another bar; ``name`` is what it is called, ``frets`` how many are drawn."""
        self._hands, self._frets = hands, frets
        self.setAccessibleName(say("Grip of {name}", name=name))
        begins = moments(hands)[:1] if hands and hands.notes else ()
        self.setAccessibleDescription("; ".join(spoken(n) for m in begins for n in m.notes))
        self.update()

    @property
    def picture(self) -> Picture:
        """What is on the neck now."""
        hands = self._hands
        found = moments(hands) if hands else ()
        if hands is None or not found:
            return Picture()
        now = found[0]
        sounding = {n.id for n in now.notes}
        begins = {n.id for n in now.begins}
        markers = tuple(Marker(n, now=n.id in sounding, begins=n.id in begins) for n in hands.notes)
        return Picture(markers, tuple(b for b in hands.barres if b.onset <= now.onset))

    @property
    def neck(self) -> NeckLayout:
        """The layout at the present size."""
        instrument = self._instrument
        frets = min(instrument.playable_frets, self._frets)
        short = replace(instrument, frets=frets + instrument.capo)
        tall = self.height() / (short.strings - 1 + 2.25)
        gap = max(8.0, min(tall, self.width() / 11))
        head = gap * 3.0
        room = max(gap, self.width() - head - gap * 0.5)
        scale = min(room, gap * 2.6 * frets) / short.fret_mm(frets)
        return NeckLayout(short, scale, gap, head, gap * 0.75, gap * 1.5, self._mirrored)

    def paintEvent(self, _event: QPaintEvent) -> None:
        neck = self.neck
        painter = QPainter(self)
        painter.translate((self.width() - neck.width) / 2, (self.height() - neck.height) / 2)
        font = QFont(self.font())
        font.setPointSizeF(max(5.0, neck.gap * 0.42 * 72 / self.logicalDpiY()))
        painter.setPen(Qt.PenStyle.NoPen)
        draw(painter, neck, self.picture, colours(self), font)
        painter.end()
