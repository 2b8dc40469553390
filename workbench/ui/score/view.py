"""The score strip in the middle: engraved staff and tablature, to be clicked on."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from fractions import Fraction
from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import QEvent, QPointF, QRectF, Qt, QTimer, Signal
from PySide6.QtGui import (
    QColor,
    QContextMenuEvent,
    QHelpEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QAbstractScrollArea, QToolTip, QWidget

from workbench.fingering.types import Fingering
from workbench.language.speech import count, say
from workbench.ui.bench import finger_keys as note_keys
from workbench.ui.bench.jobs import Teller
from workbench.ui.bench.session import Session
from workbench.ui.kit.look import BASE_POINTS, colours
from workbench.ui.score.band import Band
from workbench.ui.score.bar import ScoreBar, voice_inks
from workbench.ui.score.chosen_paint import paint_bar, paint_notes
from workbench.ui.score.heard_paint import NOTHING_HEARD, paint_heard
from workbench.ui.score.menu import note_menu
from workbench.ui.score.old_images import OldImages
from workbench.ui.score.pictures import Pictures, make_strip, note_marks
from workbench.ui.score.tips import tip_of
from workbench.ui.score.whole import Whole

if TYPE_CHECKING:
    from workbench.engraving.paint import ScoreImage
    from workbench.engraving.pointing import Place
    from workbench.engraving.strip import Strip

ZOOMS = (0.5, 3.0)
FIT = (0.5, 1.5)  # least and greatest zoom that fitting chooses
MARGIN = 12.0


#: What engraves for a width in image units, an ink, the parts to be shown and the voices' inks.
StripMaker = Callable[[float, str, dict[str, bool], tuple[str, ...]], "Strip"]


class _LastStrip:
    """The strip that was engraved last, for the lane's thread alone."""

    def __init__(self, make: StripMaker) -> None:
        self._make = make
        self._strip: Strip | None = None
        self._wanted: object = None

    def made(self, wanted: object, width: float, ink: str, shows: dict[str, bool],
             voices: tuple[str, ...]) -> Strip:  # fmt: skip
        """The last one where the same is ``wanted``, else a new one."""
        if self._strip is None or wanted != self._wanted:
            self._strip = self._make(width, ink, shows, voices)
            self._wanted = wanted
        return self._strip


class Writing(Protocol):
    """What takes the strip over while music is written."""

    def stand_in(self) -> Fingering | None: ...

    def paint(self, painter: QPainter) -> None: ...

    def press(self, point: QPointF) -> bool: ...


class ScoreView(QAbstractScrollArea):
    """Paints a ScoreImage; the selected bar is boxed, selected notes are ringed."""

    job = "engrave"  # what its work is called among the jobs
    extra: tuple[object, ...] = ()  # what else a strip is made for
    wants_note = Signal()  # a teaching note about what is selected

    def __init__(
        self,
        session: Session,
        parent: QWidget | None = None,
        strip: StripMaker = make_strip,
    ) -> None:
        super().__init__(parent)
        self._session = session
        self._last = _LastStrip(strip)
        self._fits = 0  # times that fitting may still try
        self.image: ScoreImage | None = None
        self.zoom = 1.0
        self._whole = Whole()
        self.shows = {"tab": True, "left": True, "right": True, "strings": False, "voices": True}
        self.writer: Writing | None = None  # while music is written
        self.heard = NOTHING_HEARD
        self._pictures = Pictures()
        self._old = OldImages(self)
        self._band = Band(self, self)
        self.bar = ScoreBar(self, self._zoom_by, self.fit, self.show_parts)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(say("Score"))
        self.viewport().setMouseTracking(True)
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(120)
        self._soon.timeout.connect(self.engrave)
        session.opened.connect(self._opened)
        session.changed.connect(self.engrave)
        session.fingers.fingered.connect(self.engrave)
        session.selection.selected.connect(self.follow)
        self._place_bar()

    @property
    def scale(self) -> float:
        """Pixels to an image unit: the zoom, and the text size as far as there is room."""
        return self.zoom * min(self.font().pointSizeF() / BASE_POINTS, self._whole.scale)

    def _opened(self) -> None:
        self._old.take(self.image)
        self.image = None
        self._whole.forget()
        self._pictures.clear()
        self._band.drop()
        self.verticalScrollBar().setValue(0)
        self.engrave()

    def engrave(self) -> None:
        """Draw the lesson anew in the background; only changed systems cost anything."""
        self._soon.stop()
        lesson = self._session.lesson
        if lesson is None or not self._session.selection.order:
            self.image = None
            self.bar.tell_voices(0, False)
            self._measure()
            return
        instrument, fingering = self._session.instrument, self._session.fingers.fingering
        if fingering is None and self.writer is not None:
            fingering = self.writer.stand_in()
        width = round((self.viewport().width() - 2 * MARGIN) / self.scale)
        c = colours(self)
        dark = QColor(c.panel).lightnessF() < 0.5
        voices = voice_inks(dark) if self.shows["voices"] else ()
        wanted = (width, c.ink, voices, *self.shows.items(), *self.extra)
        marks = note_marks(lesson.notes)
        near = self._session.selection.bar_index
        last, shows = self._last, dict(self.shows)

        def work(teller: Teller) -> tuple[ScoreImage, int]:
            from workbench.engraving.strip import voices_of

            strip = last.made(wanted, float(max(300, width)), c.ink, shows, voices)
            image = strip.image(
                lesson.piece, fingering, instrument, marks, near=near, progress=teller,
                shown=teller.so_far,
            )  # fmt: skip
            return image, len(voices_of(lesson.piece))

        self._session.jobs.start(
            self.job, say("Engraving"), work, self._arrived, lane="engrave", growing=self._show
        )

    def _arrived(self, made: tuple[ScoreImage, int]) -> None:
        image, voices = made
        self.bar.tell_voices(voices, self.shows["voices"])
        self._show(image)
        if self._fits:
            self._fits -= 1
            over = image.size.height() * self.scale / max(1, self.viewport().height() - 2 * MARGIN)
            if over > 1 and self.zoom > FIT[0]:
                self.set_zoom(max(FIT[0], self.zoom * max(0.8, over**-0.5)))

    def _show(self, image: ScoreImage) -> None:
        laid_out_anew = self.image is None or self.image.size != image.size
        self._old.take(self.image)
        self.image = image
        self._see_whole()
        self._measure()
        if laid_out_anew:
            self.follow()
        self.viewport().update()

    def _see_whole(self) -> None:
        before, around = self.scale, self.bar.height() + 2 * self.frameWidth() + 2 * MARGIN
        self._whole.fit(self.image, self.height() - around)
        if abs(self.scale / before - 1) > 0.01:
            self._soon.start()

    def set_zoom(self, zoom: float) -> None:
        """Paint larger or smaller at once; the systems are laid out anew a little later."""
        self.zoom = max(ZOOMS[0], min(ZOOMS[1], zoom))
        self.bar.show_zoom(self.zoom)
        self._measure()
        self._soon.start()

    def _zoom_by(self, factor: float) -> None:
        """Larger or smaller by a factor; 0 means the plain size."""
        self._fits = 0
        self.set_zoom(self.zoom * factor if factor else 1.0)

    def fit(self) -> None:
        """Show as much of the piece at once as can be read."""
        if self.image is None:
            return
        room = max(1.0, self.viewport().height() - 2 * MARGIN)
        share = room / max(1.0, self.image.size.height() * self.scale)
        self._fits = 4
        self.set_zoom(max(FIT[0], min(FIT[1], self.zoom * share**0.5)))

    def show_parts(self, **which: bool) -> None:
        """Show or leave out ``tab``, ``left`` and ``right`` fingers, the inks of ``voices``."""
        if {**self.shows, **which} == self.shows:
            return
        self.shows = {**self.shows, **which}
        self.bar.show_parts(self.shows)
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
        bar, notes = self._session.selection.bar, len(self._session.selection.note_ids)
        words = say("Bar {bar} selected", bar=bar.number) if bar else say("No bar selected")
        if notes:
            words += ", " + count(notes, "{n} note", "{n} notes", sense="music")
        self.setAccessibleDescription(words)
        if bar is not None and not self._band.drawn:
            self.bring(bar.index)
        self.viewport().update()

    def bring(self, bar: int) -> None:
        """Scroll a written bar into view."""
        rect = self.image.system_rect(bar) if self.image is not None else None
        if rect is not None:
            shown = self.from_image(rect)
            scroll, view = self.verticalScrollBar(), self.viewport().height()
            if shown.top() < 0 or shown.height() > view:
                scroll.setValue(scroll.value() + round(shown.top() - MARGIN))
            elif shown.bottom() > view:
                scroll.setValue(scroll.value() + round(shown.bottom() - view + MARGIN))

    # Painting.

    def paintEvent(self, event: QPaintEvent) -> None:
        c = colours(self)
        painter = QPainter(self.viewport())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(event.rect(), QColor(c.panel))
        if self.image is None:
            painter.setPen(QColor(c.faint))
            words = say("Drop a score here, or choose Import from the Lesson menu.")
            if self._session.lesson:
                words = say("Engraving …")
            painter.drawText(self.viewport().rect(), Qt.AlignmentFlag.AlignCenter, words)
            painter.end()
            return
        accent = QColor(c.accent)
        bar = self._session.selection.bar
        rect = self.image.bar_rect(bar.index) if bar is not None else None
        if rect is not None:
            paint_bar(painter, self.from_image(rect), accent)
        self._paint_systems(painter, QRectF(event.rect()))
        heads = (
            r for note in self._session.selection.note_ids for r in self.image.rects_of_note(note)
        )
        paint_notes(painter, map(self.from_image, heads), accent)
        paint_heard(painter, self, c)
        self._band.paint(painter, accent)
        if self.writer is not None:
            self.writer.paint(painter)
        if self.hasFocus():
            painter.setPen(QPen(accent, 1.0))
            painter.drawRect(self.viewport().rect().adjusted(1, 1, -2, -2))
        painter.end()

    def _paint_systems(self, painter: QPainter, area: QRectF) -> None:
        self._pictures.begin()
        waits = False
        for item in self.image.placed if self.image else ():
            shown = self.from_image(item.rect)
            if shown.intersects(area):
                picture = self._pictures.picture(item, self.scale, self.devicePixelRatioF())
                if picture is None:
                    waits = True
                else:
                    painter.drawPixmap(shown.topLeft(), picture)
        if waits:
            QTimer.singleShot(0, self.viewport().update)

    # Events.

    def _place_bar(self) -> None:
        tall = self.bar.sizeHint().height()
        self.setViewportMargins(0, tall, 0, 0)
        edge = self.frameWidth()
        self.bar.setGeometry(edge, edge, max(0, self.viewport().width()), tall)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._place_bar()
        self._see_whole()
        self._measure()
        if event.oldSize().width() != event.size().width():
            self._soon.start()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._place_bar()
            self._see_whole()
            self._measure()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if self.image is None or event.button() != Qt.MouseButton.LeftButton:
            return
        point = self.to_image(event.position())
        if self.writer is not None and self.writer.press(point):
            return
        note, session = self.image.note_at(point), self._session
        adds = bool(event.modifiers() & Qt.KeyboardModifier.ControlModifier)
        self._band.begin(point, session.selection.note_ids if adds else ())
        if note is not None and adds:
            session.selection.toggle_note(note)
        elif note is not None:
            session.selection.select_note(note)
        elif not adds:
            bar = self.image.bar_at(point)
            if bar is not None:
                session.selection.select(session.selection.position_of(bar), None)

    def choose(self, notes: Iterable[str]) -> None:
        """Select these notes; of none at all the bar stays selected."""
        self._session.selection.select_notes(notes)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if event.buttons() & Qt.MouseButton.LeftButton:
            self._band.move(event.position())

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton:
            self._band.end()

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        if self.image is None or self._session.lesson is None:
            return
        note = self.image.note_at(self.to_image(QPointF(event.pos())))
        if note is not None and note not in self._session.selection.note_ids:
            self._session.selection.select_note(note)
        menu = note_menu(self._session, self, self.wants_note.emit)
        menu.popup(event.globalPos())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if self._reaches(event):
            event.accept()
        elif not note_keys.handle(self._session, event):
            super().keyPressEvent(event)

    def _reaches(self, event: QKeyEvent) -> bool:
        """Shift and an arrow reach one note further; Ctrl+A takes all of the bar."""
        session, key, modifiers = self._session, event.key(), event.modifiers()
        arrows = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}
        if key in arrows and modifiers == Qt.KeyboardModifier.ShiftModifier:
            session.selection.reach_note(arrows[Qt.Key(key)])
            return True
        whole = key == Qt.Key.Key_A and modifiers == Qt.KeyboardModifier.ControlModifier
        if whole and session.selection.bar is not None:
            session.selection.select_notes(note.id for note in session.selection.bar.notes)
        return whole

    def wheelEvent(self, event: QWheelEvent) -> None:
        if event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self._zoom_by(1.1 if event.angleDelta().y() > 0 else 1 / 1.1)
            event.accept()
        else:
            super().wheelEvent(event)

    def viewportEvent(self, event: QEvent) -> bool:
        if isinstance(event, QHelpEvent):
            QToolTip.showText(event.globalPos(), self.tip_at(QPointF(event.pos())), self)
            return True
        return super().viewportEvent(event)

    def tip_at(self, point: QPointF) -> str:
        """What is told of the note under a point of the viewport; empty without one."""
        name = self.image.note_at(self.to_image(point)) if self.image else None
        return tip_of(self._session, name) if name is not None else ""
