"""A rubber band over the score: whatever notes lie in it are selected."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import QPointF, QRectF, QTimer
from PySide6.QtGui import QColor, QPainter, QPen
from PySide6.QtWidgets import QAbstractScrollArea, QApplication

if TYPE_CHECKING:
    from workbench.engraving.paint import ScoreImage

ROLL_EVERY = 40  # milliseconds, while the pointer is beyond the edge


class BandMusic(Protocol):
    """What the band must know of the music it lies over."""

    @property
    def scale(self) -> float: ...

    @property
    def image(self) -> ScoreImage | None: ...

    def to_image(self, point: QPointF) -> QPointF: ...

    def from_image(self, rect: QRectF) -> QRectF: ...

    def choose(self, notes: Iterable[str]) -> None: ...


class Band:
    """Drawn from where the button went down to where the pointer is, in image units, so
    that it stays with the music while the strip rolls under it."""

    def __init__(self, view: QAbstractScrollArea, music: BandMusic) -> None:
        self._view, self._music = view, music
        self._start: QPointF | None = None
        self._end = QPointF()
        self._pointer = QPointF()
        self._before: tuple[str, ...] = ()
        self.drawn = False
        self._roll = QTimer(view)
        self._roll.setInterval(ROLL_EVERY)
        self._roll.timeout.connect(self._rolled)

    @property
    def area(self) -> QRectF:
        """What it covers, in image units."""
        return QRectF(self._start or self._end, self._end).normalized()

    def begin(self, point: QPointF, before: tuple[str, ...]) -> None:
        """The button went down at ``point`` (image units); ``before`` stays selected."""
        self._start, self._end, self._before = point, point, before
        self.drawn = False

    def move(self, pointer: QPointF) -> None:
        """The pointer is at a point of the viewport, the button down."""
        if self._start is None:
            return
        self._pointer = pointer
        self._end = self._music.to_image(pointer)
        far = (self._end - self._start) * self._music.scale
        if far.manhattanLength() >= QApplication.startDragDistance():
            self.drawn = True
        inside = 0 <= pointer.y() <= self._view.viewport().height()
        if self.drawn and not inside and not self._roll.isActive():
            self._roll.start()
        elif inside:
            self._roll.stop()
        if self.drawn:
            self._view.viewport().update()

    def _rolled(self) -> None:
        scroll = self._view.verticalScrollBar()
        way = -1 if self._pointer.y() < 0 else 1
        scroll.setValue(scroll.value() + way * scroll.singleStep())
        self.move(self._pointer)

    def end(self) -> None:
        """The button is up: select what lies inside."""
        drawn, area = self.drawn, self.area
        self.drop()
        image = self._music.image
        if drawn and image is not None:
            found = image.notes_in(area)
            if found or not self._before:
                self._music.choose((*self._before, *found))
        self._view.viewport().update()

    def drop(self) -> None:
        """Forget the band."""
        self._start, self.drawn = None, False
        self._roll.stop()

    def paint(self, painter: QPainter, accent: QColor) -> None:
        """Draw it over the music."""
        if not self.drawn:
            return
        wash = QColor(accent)
        wash.setAlphaF(0.12)
        shown = self._music.from_image(self.area)
        painter.fillRect(shown, wash)
        painter.setPen(QPen(accent, 1.2))
        painter.drawRect(shown)
