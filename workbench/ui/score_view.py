"""The score strip in the middle: engraved staff and tablature, to be clicked on."""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Callable
from fractions import Fraction
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QEvent, QPointF, QRectF, Qt, QTimer
from PySide6.QtGui import (
    QColor,
    QHelpEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QPixmap,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QAbstractScrollArea, QToolTip, QWidget

from workbench.teaching.lesson import BarNote
from workbench.ui import note_keys
from workbench.ui.grips import spoken
from workbench.ui.jobs import Progress
from workbench.ui.look import BASE_POINTS, colours
from workbench.ui.note_panel import note_numbers
from workbench.ui.services import engraving_in_this_thread
from workbench.ui.session import Session

if TYPE_CHECKING:
    from workbench.engraving.places import Place

KEPT = 24  # painted systems kept as pictures
ZOOMS = (0.5, 3.0)
MARGIN = 12.0


def _strip(width: float, ink: str, shows: dict[str, bool]) -> Any:
    from workbench.engraving.options import MeiOptions
    from workbench.engraving.strip import Strip

    engraving_in_this_thread()
    options = MeiOptions(tab=shows["tab"], left=shows["left"], right=shows["right"])
    return Strip(width, ink=ink, options=options)


class ScoreView(QAbstractScrollArea):
    """Paints a ScoreImage; the selected bar is boxed, the selected note ringed."""

    def __init__(
        self,
        session: Session,
        parent: QWidget | None = None,
        strip: Callable[[float, str, dict[str, bool]], Any] = _strip,
    ) -> None:
        super().__init__(parent)
        self._session = session
        self._make_strip = strip
        self._strip: Any = None
        self._strip_for: tuple[Any, ...] = ()
        self.image: Any = None
        self.zoom = 1.0
        #: Painted after the music, one after the other; coordinates of the viewport.
        self.overlays: list[Callable[[QPainter, ScoreView], None]] = []
        #: Asked before the strip's own keys and clicks; True: it is done. A click comes with
        #: the place in the music under it.
        self.key_hooks: list[Callable[[QKeyEvent], bool]] = []
        self.press_hooks: list[Callable[[QMouseEvent, Place | None], bool]] = []
        self.shows = {"tab": True, "left": True, "right": True}
        self.writer: Any = None  # while music is written: takes keys and clicks, paints its caret
        self._pictures: OrderedDict[tuple[int, float], tuple[QPixmap, Any]] = OrderedDict()
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName("Score")
        self.viewport().setMouseTracking(True)
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(120)
        self._soon.timeout.connect(self.engrave)
        session.opened.connect(self._opened)
        session.changed.connect(self.engrave)
        session.fingered.connect(self.engrave)
        session.selected.connect(self.follow)

    @property
    def scale(self) -> float:
        """Pixels to an image unit: the zoom, and the text size the teacher chose."""
        return self.zoom * self.font().pointSizeF() / BASE_POINTS

    # Engraving.

    def _opened(self) -> None:
        self.image = None
        self._pictures.clear()
        self.verticalScrollBar().setValue(0)
        self.engrave()

    def engrave(self) -> None:
        """Draw the lesson anew in the background; only changed systems cost anything."""
        self._soon.stop()
        lesson = self._session.lesson
        if lesson is None or not self._session.order:
            self.image = None
            self._measure()
            return
        instrument, fingering = self._session.instrument, self._session.fingering
        if fingering is None and self.writer is not None:
            fingering = self.writer.stand_in()
        width = round((self.viewport().width() - 2 * MARGIN) / self.scale)
        ink = colours(self).ink
        wanted = (width, ink, *self.shows.items())
        marks = note_marks(lesson.notes)

        def work(_progress: Progress) -> Any:
            if wanted != self._strip_for:
                self._strip = self._make_strip(float(max(300, width)), ink, dict(self.shows))
                self._strip_for = wanted
            return self._strip.image(lesson.piece, fingering, instrument, marks)

        self._session.jobs.start("engrave", "Engraving", work, self._arrived, lane="engrave")

    def _arrived(self, image: Any) -> None:
        laid_out_anew = self.image is None or self.image.size != image.size
        self.image = image
        self._measure()
        if laid_out_anew:
            self.follow()
        self.viewport().update()

    def set_zoom(self, zoom: float) -> None:
        self.zoom = max(ZOOMS[0], min(ZOOMS[1], zoom))
        self._measure()
        self._soon.start()

    def show_parts(self, **which: bool) -> None:
        """Show or leave out tablature, left and right fingers."""
        self.shows = {**self.shows, **which}
        self.engrave()

    def _measure(self) -> None:
        size = self.image.size if self.image else None
        tall = size.height() * self.scale + 2 * MARGIN if size else 0
        wide = size.width() * self.scale + 2 * MARGIN if size else 0
        view = self.viewport().size()
        self.verticalScrollBar().setRange(0, max(0, round(tall - view.height())))
        self.verticalScrollBar().setPageStep(view.height())
        self.verticalScrollBar().setSingleStep(round(24 * self.scale))
        self.horizontalScrollBar().setRange(0, max(0, round(wide - view.width())))
        self.horizontalScrollBar().setPageStep(view.width())
        self.viewport().update()

    # Places.

    def _origin(self) -> QPointF:
        return QPointF(
            MARGIN - self.horizontalScrollBar().value(),
            MARGIN - self.verticalScrollBar().value(),
        )

    def to_image(self, point: QPointF) -> QPointF:
        """A point of the viewport in image units."""
        return (point - self._origin()) / self.scale

    def from_image(self, rect: QRectF) -> QRectF:
        """A rectangle of the image in the viewport."""
        return QRectF(rect.topLeft() * self.scale + self._origin(), rect.size() * self.scale)

    def place_at(self, point: QPointF, grid: Fraction = Fraction(1, 2)) -> Place | None:
        """The place in the music under a point of the viewport: bar, moment (one at which
        something stands, or a multiple of ``grid`` quarters), and staff step or string."""
        return self.image.place_at(self.to_image(point), grid) if self.image else None

    def point_of(self, place: Place) -> QPointF | None:
        """Where a place in the music lies in the viewport."""
        found = self.image.point_of(place) if self.image else None
        return None if found is None else found * self.scale + self._origin()

    def column_of(self, place: Place) -> QRectF | None:
        """The upright strip of the viewport, through all staves, at a place's moment."""
        found = self.image.column_of(place) if self.image else None
        return None if found is None else self.from_image(found)

    def follow(self) -> None:
        """Bring the selected bar into view and mark it."""
        bar = self._session.bar
        self.setAccessibleDescription(
            f"Bar {bar.number} selected" if bar else "No bar selected"
        )
        if self.image is not None and bar is not None:
            rect = self.image.system_rect(bar.index)
            if rect is not None:
                shown = self.from_image(rect)
                scroll, view = self.verticalScrollBar(), self.viewport().height()
                if shown.top() < 0 or shown.height() > view:
                    scroll.setValue(scroll.value() + round(shown.top() - MARGIN))
                elif shown.bottom() > view:
                    scroll.setValue(scroll.value() + round(shown.bottom() - view + MARGIN))
        self.viewport().update()

    # Events.

    def paintEvent(self, event: QPaintEvent) -> None:
        c = colours(self)
        painter = QPainter(self.viewport())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(event.rect(), QColor(c.panel))
        if self.image is None:
            painter.setPen(QColor(c.faint))
            words = "Engraving …" if self._session.lesson else (
                "Drop a score here, or choose Import from the Lesson menu."
            )
            painter.drawText(self.viewport().rect(), Qt.AlignmentFlag.AlignCenter, words)
            painter.end()
            return
        bar = self._session.bar
        if bar is not None:
            rect = self.image.bar_rect(bar.index)
            if rect is not None:
                shown = self.from_image(rect).adjusted(1, 1, -1, -1)
                wash = QColor(c.accent)
                wash.setAlphaF(0.10)
                painter.fillRect(shown, wash)
                painter.setPen(QPen(QColor(c.accent), 1.6))
                painter.drawRoundedRect(shown, 4, 4)
        for item in self.image.placed:
            shown = self.from_image(item.rect)
            if shown.intersects(QRectF(event.rect())):
                painter.drawPixmap(shown.topLeft(), self._picture(item))
        if self._session.note_id:
            pen = QPen(QColor(c.accent), 2.0)
            painter.setPen(pen)
            for rect in self.image.rects_of_note(self._session.note_id):
                painter.drawRoundedRect(self.from_image(rect).adjusted(-3, -3, 3, 3), 5, 5)
        for overlay in self.overlays:
            painter.save()
            overlay(painter, self)
            painter.restore()
        if self.writer is not None:
            self.writer.paint(painter)
        if self.hasFocus():
            painter.setPen(QPen(QColor(c.accent), 1.0))
            painter.drawRect(self.viewport().rect().adjusted(1, 1, -2, -2))
        painter.end()

    def _picture(self, item: Any) -> QPixmap:
        """A system as pixels, painted once for each state and size."""
        ratio = self.devicePixelRatioF()
        key = (id(item.system), self.scale * ratio)
        if key in self._pictures:
            self._pictures.move_to_end(key)
            return self._pictures[key][0]
        size = item.rect.size() * self.scale * ratio
        made = QPixmap(max(1, round(size.width())), max(1, round(size.height())))
        made.fill(Qt.GlobalColor.transparent)
        painter = QPainter(made)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        item.system.paint(painter, QPointF(0, 0), item.scale * self.scale * ratio)
        painter.end()
        made.setDevicePixelRatio(ratio)
        self._pictures[key] = (made, item.system)  # held, so that its id stays its own
        while len(self._pictures) > KEPT:
            self._pictures.popitem(last=False)
        return made

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._measure()
        if event.oldSize().width() != event.size().width():
            self._soon.start()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if self.image is None or event.button() != Qt.MouseButton.LeftButton:
            return
        where = self.place_at(event.position())
        if any(hook(event, where) for hook in self.press_hooks):
            return
        point = self.to_image(event.position())
        if self.writer is not None and self.writer.press(point):
            return
        note = self.image.note_at(point)
        if note is not None:
            self._session.select_note(note)
            return
        bar = self.image.bar_at(point)
        if bar is not None:
            self._session.select(self._session.position_of(bar), None)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if any(hook(event) for hook in self.key_hooks):
            event.accept()
        elif not note_keys.handle(self._session, event):
            super().keyPressEvent(event)

    def wheelEvent(self, event: QWheelEvent) -> None:
        if event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self.set_zoom(self.zoom * (1.1 if event.angleDelta().y() > 0 else 1 / 1.1))
            event.accept()
        else:
            super().wheelEvent(event)

    def viewportEvent(self, event: QEvent) -> bool:
        if isinstance(event, QHelpEvent):
            self._tell_note(event)
            return True
        return super().viewportEvent(event)

    def _tell_note(self, event: QHelpEvent) -> None:
        note = self.image.note_at(self.to_image(QPointF(event.pos()))) if self.image else None
        words = ""
        if note and self._session.fingering:
            try:
                hands = self._session.fingering.note(note)
                words = f"{spoken(hands)}\n{hands.cut_reason or ''}".strip()
            except KeyError:
                words = ""
        QToolTip.showText(event.globalPos(), words, self)


def note_marks(notes: tuple[BarNote, ...]) -> tuple[tuple[int, int], ...]:
    """(bar index, number) of the teaching notes for the score."""
    numbers = note_numbers(notes)
    return tuple(sorted((note.first_bar, numbers[note.id]) for note in notes))
