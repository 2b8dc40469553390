"""The fretboard below the score: the fingers of the selected bar, to be moved by hand."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from PySide6.QtCore import QEvent, QPoint, QPointF, QSize, Qt
from PySide6.QtGui import (
    QFocusEvent,
    QHelpEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QScrollArea, QSizePolicy, QToolTip, QWidget

from workbench.fingering.telling.moments import Moment, moments
from workbench.fingering.telling.words import spoken
from workbench.fingering.telling.words import words as told
from workbench.fingering.types import Fingering
from workbench.language.speech import say
from workbench.ui.bench import finger_keys as note_keys
from workbench.ui.bench.session import Session
from workbench.ui.kit.look import colours, em
from workbench.ui.neck.layout import NeckLayout
from workbench.ui.neck.paint import Picture, draw
from workbench.ui.neck.picture import heard_picture, picture_of

NEAR = 0.55  # of the gap between strings: how near a click must be to a finger
FEWEST_FRETS = 5  # fit into the view at zoom 1 in any piece
FRETS_KEY = Qt.Key.Key_F  # all frets, or those that are in use
ZOOMS = (0.6, 3.0)
ZOOM_STEP = 1.15
PLAIN = (
    Qt.KeyboardModifier.NoModifier,
    Qt.KeyboardModifier.ShiftModifier,  # a plus sign needs it on many keyboards
    Qt.KeyboardModifier.KeypadModifier,
)
ALONG = {  # keys to pages along the neck, from the nut on
    Qt.Key.Key_PageDown: 1, Qt.Key.Key_PageUp: -1, Qt.Key.Key_End: 99, Qt.Key.Key_Home: -99,
}  # fmt: skip


class DrawnNeck(QWidget):
    """The drawn neck itself; ``NeckView`` scrolls it."""

    def __init__(self, session: Session, view_width: Callable[[], int]) -> None:
        super().__init__()
        self._session = session
        self._view_width = view_width
        self.zoom = 1.0
        self.all_frets = False  # fit into the view, not only those that the piece uses
        self._measured: Fingering | None = None
        self._used = 7  # the highest fret in use, once it is known
        self._drag: str | None = None
        self._dragged_to: tuple[int, int] | None = None
        self._cursor: QPointF | None = None
        self._pressed_at = QPointF()
        self._moved: str | None = None  # by the first of two clicks
        self.heard: tuple[int, frozenset[str]] = (-1, frozenset())  # written bar, note ids
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(say("Fretboard"))
        self.setMouseTracking(True)

    # What is drawn.

    @property
    def mirrored(self) -> bool:
        """Whether the nut is at the right, for a left-handed player."""
        return self._session.left_handed

    @property
    def neck(self) -> NeckLayout | None:
        """The layout now; None while no lesson is open."""
        if self._session.lesson is None:
            return None
        instrument = self._session.instrument
        gap, head = em(self, 1.75), em(self, 5.2)
        room = max(em(self, 8), self._view_width() - head - gap * 0.5 - 1)
        frets = instrument.playable_frets
        if not self.all_frets:
            frets = min(frets, max(FEWEST_FRETS, self._highest() + 1))
        scale = self.zoom * room / instrument.fret_mm(frets)
        return NeckLayout(instrument, scale, gap, head, gap * 1.25, gap * 1.5, self.mirrored)

    def _highest(self) -> int:
        """The highest fret that the piece uses as it is fingered."""
        fingering = self._session.fingers.fingering
        if fingering is not None and fingering is not self._measured:
            frets = (n.fret or 0 for bar in fingering.bars for n in bar.notes)
            self._measured, self._used = fingering, max(frets, default=0)
        return self._used

    @property
    def picture(self) -> Picture:
        """What is on the neck now."""
        session = self._session
        if self.heard[0] >= 0 and session.lesson is not None:
            return heard_picture(session.fingers.hands_of(self.heard[0]), self.heard[1])
        hands = session.fingers.bar_hands
        if hands is None or session.lesson is None:
            return Picture()
        chosen = session.fingers.note_hands
        shown = picture_of(
            hands, chosen.id if chosen else session.selection.note_id, session.instrument,
            session.hand, self._neighbour,
        )  # fmt: skip
        return replace(shown, dragged=self._dragged_to, cursor=self._cursor)

    def _neighbour(self, by: int) -> Moment | None:
        """The last moment of the bar before, or the first of the bar after."""
        session = self._session
        position = session.selection.position + by
        if not 0 <= position < len(session.selection.order):
            return None
        hands = session.fingers.hands_of(session.selection.order[position])
        found = moments(hands) if hands else ()
        return found[-1 if by < 0 else 0] if found else None

    def sizeHint(self) -> QSize:
        neck = self.neck
        return QSize(round(neck.width), round(neck.height)) if neck else QSize(10, em(self, 8))

    def paintEvent(self, _event: QPaintEvent) -> None:
        neck = self.neck
        if neck is None:
            return
        painter = QPainter(self)
        room = self.visibleRegion().boundingRect()
        seen = float(room.left()), float(room.right())
        draw(painter, neck, self.picture, colours(self), self.font(), seen)
        if self.hasFocus():
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(colours(self).accent)
            painter.drawRect(self.rect().adjusted(1, 1, -2, -2))
        painter.end()

    def refresh(self) -> None:
        """Follow the session."""
        self.setFixedSize(self.sizeHint())
        hands = self._session.fingers.bar_hands
        notes = "; ".join(spoken(note) for note in hands.notes) if hands else ""
        chosen = self._session.fingers.note_hands
        said = say("Selected: {note}.", note=spoken(chosen)) + " " if chosen else ""
        reach = self.picture.reach
        measured = f"{reach.words} " if reach else ""
        self.setAccessibleDescription(said + measured + notes)
        self.update()

    # Hands on it.

    def note_at(self, point: QPointF) -> str | None:
        """The drawn finger under a point: of several the one that sounds now, else the first."""
        neck = self.neck
        if neck is None:
            return None
        best: tuple[tuple[bool, bool, float], str] | None = None
        for marker in self.picture.markers:
            note = marker.note
            if note.string is None or note.fret is None:
                continue
            dx = point.x() - neck.finger_x(note.fret)
            dy = point.y() - neck.string_y(note.string)
            far = (dx * dx + dy * dy) ** 0.5
            rank = (not marker.chosen, not marker.now, round(far))
            if far <= neck.gap * NEAR and (best is None or rank < best[0]):
                best = (rank, note.id)
        return best[1] if best else None

    def centre_of(self, string: int, fret: int) -> QPoint:
        """Where a place is drawn."""
        neck = self.neck
        assert neck
        return QPointF(neck.finger_x(fret), neck.string_y(string)).toPoint()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() != Qt.MouseButton.LeftButton:
            return
        self.setFocus(Qt.FocusReason.MouseFocusReason)
        point = event.position()
        place = self._offer_at(point)
        note = self.note_at(point)
        self._moved = None
        if note is not None:
            self._session.selection.select(self._session.selection.position, note)
            self._drag, self._pressed_at = note, point
        elif place and self._session.selection.note_id:
            self._moved = self._session.selection.note_id
            self._session.hand_edits.move_note(self._session.selection.note_id, *place)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """Pin the finger under the pointer as it is, save one that the first click moved."""
        note = self.note_at(event.position())
        if event.button() != Qt.MouseButton.LeftButton or note is None or note == self._moved:
            return
        self._session.selection.select(self._session.selection.position, note)
        self._session.hand_edits.pin_notes()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if not self._drag:
            over = self.note_at(event.position()) or self._offer_at(event.position())
            shape = Qt.CursorShape.PointingHandCursor if over else Qt.CursorShape.ArrowCursor
            self.setCursor(shape)
            return
        if (event.position() - self._pressed_at).manhattanLength() > 4:
            self._cursor = event.position()
            self._dragged_to = self._offer_at(event.position())
            self.update()

    def mouseReleaseEvent(self, _event: QMouseEvent) -> None:
        note, place, dragged = self._drag, self._dragged_to, self._cursor is not None
        self._drag = self._dragged_to = self._cursor = None
        if note and place:
            self._session.hand_edits.move_note(note, *place)
        elif dragged:
            self._session.told.emit(say("That place does not sound this note; use a dashed ring."))
        self.update()

    def _offer_at(self, point: QPointF) -> tuple[int, int] | None:
        neck = self.neck
        place = neck.place_at(point.x(), point.y()) if neck else None
        return place if place in self.picture.offers else None

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if not note_keys.handle(self._session, event, strings=True):
            super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self.update()

    def event(self, event: QEvent) -> bool:
        if isinstance(event, QHelpEvent):
            note = self.note_at(QPointF(event.pos()))
            hands = self._session.fingers.bar_hands
            found = next((n for n in hands.notes if n.id == note), None) if hands else None
            QToolTip.showText(
                event.globalPos(),
                f"{spoken(found)}\n{told(found.cut_reason)}".strip() if found else "", self,
            )  # fmt: skip
            return True
        return super().event(event)


class NeckView(QScrollArea):
    """Scrolls and zooms along the neck, by wheel and by keys."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self.neck = DrawnNeck(session, lambda: self.viewport().width())
        self.setWidget(self.neck)
        self.setFocusProxy(self.neck)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAsNeeded)
        self.setAccessibleName(say("Fretboard view"))
        self._tall = 0
        for signal in (
            session.opened,
            session.changed,
            session.fingers.fingered,
            session.selection.selected,
        ):
            signal.connect(self.refresh)
        session.handed.connect(self._mirror)
        # what is scrolled is not painted anew, but words of it keep in sight
        self.horizontalScrollBar().valueChanged.connect(lambda _: self.neck.update())
        self.refresh()

    def sizeHint(self) -> QSize:
        return QSize(em(self, 40), self._tall)

    def _mirror(self) -> None:
        """Draw the neck as the player sees it now."""
        self._shape()
        self._along(-self.neck.width())  # to the nut, from where the hand is looked for
        self.refresh()

    def show_heard(self, bar: int, notes: frozenset[str]) -> None:
        """Let the fingers of the notes that are heard light up; the selection where none are."""
        if bar < 0 and self.neck.heard[0] >= 0:
            self.neck.heard = (bar, notes)
            self.refresh()
            return
        moved = bar != self.neck.heard[0]
        self.neck.heard = (bar, notes)
        self.neck.update()
        hands = self._session.fingers.hands_of(bar) if moved and bar >= 0 else None
        if hands is not None:
            for note in sorted(hands.notes, key=lambda n: -(n.fret or 0)):
                if note.string and note.fret is not None:
                    self._show_place((note.string, note.fret))

    def set_zoom(self, zoom: float, at: float | None = None) -> None:
        """Zoom along the neck; what lies under ``at`` (pixels of the view) stays there: where
        none is given, the selected finger, or the middle."""
        neck, bar = self.neck.neck, self.horizontalScrollBar()
        x = self._middle() if at is None else at
        along = neck.along(bar.value() + x) if neck else 0.0
        self.neck.zoom = max(ZOOMS[0], min(ZOOMS[1], zoom))
        self._shape()
        if (neck := self.neck.neck) is not None:
            bar.setValue(round(neck.x_of(along) - x))

    def _middle(self) -> float:
        """Where the eye rests, in pixels of the view: the selected finger if it is in sight."""
        chosen, wide = self._session.fingers.note_hands, self.viewport().width()
        if chosen is not None and chosen.string and chosen.fret is not None:
            x = self.neck.centre_of(chosen.string, chosen.fret).x()
            if 0 <= x - self.horizontalScrollBar().value() <= wide:
                return x - self.horizontalScrollBar().value()
        return wide / 2

    def _shape(self) -> None:
        """Make room for the neck as large as it is now."""
        self.neck.refresh()
        tall = self.neck.height() + self.horizontalScrollBar().sizeHint().height() + 4
        self.setMinimumHeight(min(tall, max(em(self, 9), round(self.window().height() * 0.38))))
        self.setMaximumHeight(tall)
        if tall != self._tall:
            self._tall = tall
            self.updateGeometry()

    def refresh(self) -> None:
        """Follow the session, and keep its fingers in sight."""
        self._shape()
        neck, hands = self.neck.neck, self._session.fingers.bar_hands
        if neck is None or hands is None:
            return
        places = {(n.string, n.fret) for n in hands.notes if n.string and n.fret is not None}
        places |= {(ghost.string, ghost.fret) for ghost in self.neck.picture.ghosts}
        chosen = self._session.fingers.note_hands
        # Farthest up the neck first: what does not fit any more goes there.
        for place in sorted(places, key=lambda p: -p[1]):
            self._show_place(place)
        if chosen is not None and chosen.string and chosen.fret is not None:
            self._show_place((chosen.string, chosen.fret))

    def _show_place(self, place: tuple[int, int]) -> None:
        at, room = self.neck.centre_of(*place), em(self, 2)
        self.ensureVisible(at.x(), at.y(), 2 * room, room)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.refresh()

    def wheelEvent(self, event: QWheelEvent) -> None:
        turn = event.angleDelta().y()
        if turn and event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self.set_zoom(self.neck.zoom * ZOOM_STEP ** (turn / 120), event.position().x())
        elif turn and not self.verticalScrollBar().maximum():
            self._along(-turn)
        else:
            super().wheelEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """What the neck itself has no use for: zoom, and move along the neck."""
        key, page = event.key(), round(self.viewport().width() * 0.8)
        if event.modifiers() not in PLAIN:
            super().keyPressEvent(event)
        elif key in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
            self.set_zoom(self.neck.zoom * ZOOM_STEP)
        elif key == FRETS_KEY:
            self.neck.all_frets = not self.neck.all_frets
            self.set_zoom(1.0)
            self.refresh()
        elif key == Qt.Key.Key_Minus:
            self.set_zoom(self.neck.zoom / ZOOM_STEP)
        elif key in ALONG:
            self._along(ALONG[Qt.Key(key)] * page)
        else:
            super().keyPressEvent(event)

    def _along(self, pixels: int) -> None:
        """Scroll towards the bridge, or (below zero) towards the nut."""
        bar = self.horizontalScrollBar()
        bar.setValue(bar.value() + (-pixels if self.neck.mirrored else pixels))
