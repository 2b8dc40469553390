"""Paints what is heard over the engraved score."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPen
from PySide6.QtWidgets import QWidget

from workbench.ui.kit.look import Colours

if TYPE_CHECKING:
    from workbench.engraving.paint import ScoreImage


#: Written bar, notes that sound, notes that are missed.
Heard = tuple[int, frozenset[str], frozenset[str]]
NOTHING_HEARD: Heard = (-1, frozenset(), frozenset())


class HeardIn(Protocol):
    """A view that shows what is heard."""

    heard: Heard

    @property
    def image(self) -> ScoreImage | None: ...

    def from_image(self, rect: QRectF) -> QRectF: ...

    def bring(self, bar: int) -> None: ...

    def viewport(self) -> QWidget: ...


def paint_heard(painter: QPainter, view: HeardIn, c: Colours) -> None:
    """A warm wash over what sounds, a broken ring around what is cut and missed."""
    wash, (_, notes, missed) = QColor(c.warm), view.heard
    wash.setAlphaF(0.38)
    for names, pen, brush in (
        (notes, QPen(Qt.PenStyle.NoPen), QBrush(wash)),
        (missed, QPen(QColor(c.alarm), 2.0, Qt.PenStyle.DashLine), QBrush()),
    ):
        painter.setPen(pen)
        painter.setBrush(brush)
        for note in names:
            for rect in view.image.rects_of_note(note) if view.image else ():
                painter.drawRoundedRect(view.from_image(rect).adjusted(-4, -4, 4, 4), 6, 6)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(QColor(c.accent), 2.0))


def show_heard(view: HeardIn, bar: int, notes: frozenset[str], missed: frozenset[str]) -> None:
    """Mark the notes that are heard now, and those that are cut and missed; the bar they
    are in is brought into view."""
    moved = bar >= 0 and bar != view.heard[0]
    view.heard = (bar, notes, missed)
    if moved:
        view.bring(bar)
    view.viewport().update()
