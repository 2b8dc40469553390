"""The fretboard below the score: the fingers of the selected bar, to be moved by hand."""

from __future__ import annotations

from collections.abc import Callable

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

from workbench.language.speech import say
from workbench.ui import note_keys
from workbench.ui.grips import Moment, moment_of, moments, spoken, ways
from workbench.ui.look import colours, em
from workbench.ui.neck_layout import NeckLayout
from workbench.ui.neck_paint import Marker, Picture, draw
from workbench.ui.session import Session

NEAR = 0.55  # of the gap between strings: how near a click must be to a finger
FIRST_FRETS = 12  # fit into the view at zoom 1
ZOOMS = (0.6, 3.0)


class Neck(QWidget):
    """The drawn neck itself; ``NeckView`` scrolls it."""

    def __init__(self, session: Session, view_width: Callable[[], int]) -> None:
        super().__init__()
        self._session = session
        self._view_width = view_width
        self.mirrored = False
        self.zoom = 1.0
        self._drag: str | None = None
        self._dragged_to: tuple[int, int] | None = None
        self._cursor: QPointF | None = None
        self._pressed_at = QPointF()
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(say("Fretboard"))
        self.setMouseTracking(True)

    # What is drawn.

    @property
    def neck(self) -> NeckLayout | None:
        """The layout now; None while no lesson is open."""
        if self._session.lesson is None:
            return None
        instrument = self._session.instrument
        gap, head = em(self, 1.75), em(self, 5.2)
        room = max(em(self, 30), self._view_width() - head - gap)
        frets = min(FIRST_FRETS, instrument.playable_frets)
        scale = self.zoom * room / instrument.fret_mm(frets)
        return NeckLayout(instrument, scale, gap, head, gap * 0.75, gap * 1.5, self.mirrored)

    @property
    def picture(self) -> Picture:
        """What is on the neck now."""
        session = self._session
        hands = session.bar_hands
        if hands is None or session.lesson is None:
            return Picture()
        now = moment_of(hands, session.note_id)
        found = list(moments(hands))
        at = found.index(now) if now else 0
        before = found[at - 1] if at else self._neighbour(-1)
        after = found[at + 1] if at + 1 < len(found) else self._neighbour(1)
        sounding = {n.id for n in now.notes} if now else set()
        begins = {n.id for n in now.begins} if now else set()
        comes = ways(before, now)
        moved = {way.finger for way in comes}
        was = {n.left for n in before.notes} if before else set()
        markers = tuple(
            Marker(
                note,
                now=note.id in sounding,
                begins=note.id in begins,
                chosen=note.id == session.note_id,
                stays=note.id in sounding
                and bool(note.left)
                and ((note.left in was and note.left not in moved) or note.id not in begins),
            )
            for note in hands.notes
        )
        barres = tuple(
            b for b in hands.barres
            if now and any(
                n.fret == b.fret and n.string in b.strings and n.left == b.finger
                for n in now.notes
            )
        )  # fmt: skip
        chosen = session.note_hands
        offers: tuple[tuple[int, int], ...] = ()
        if chosen is not None:
            here = (chosen.string, chosen.fret)
            offers = tuple(p for p in session.instrument.places(chosen.midi) if p != here)
        return Picture(
            markers, barres, offers, comes, ways(now, after), self._dragged_to, self._cursor
        )

    def _neighbour(self, by: int) -> Moment | None:
        """The last moment of the bar before, or the first of the bar after."""
        session = self._session
        position = session.position + by
        if not 0 <= position < len(session.order):
            return None
        hands = session.hands_of(session.order[position])
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
        draw(painter, neck, self.picture, colours(self), self.font())
        if self.hasFocus():
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(colours(self).accent)
            painter.drawRect(self.rect().adjusted(1, 1, -2, -2))
        painter.end()

    def refresh(self) -> None:
        """Follow the session."""
        self.setFixedSize(self.sizeHint())
        hands = self._session.bar_hands
        notes = "; ".join(spoken(note) for note in hands.notes) if hands else ""
        chosen = self._session.note_hands
        said = say("Selected: {note}.", note=spoken(chosen)) + " " if chosen else ""
        self.setAccessibleDescription(said + notes)
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
        if note is not None:
            self._session.select(self._session.position, note)
            self._drag, self._pressed_at = note, point
        elif place and self._session.note_id:
            self._session.move_note(self._session.note_id, *place)

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
            self._session.move_note(note, *place)
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
            hands = self._session.bar_hands
            found = next((n for n in hands.notes if n.id == note), None) if hands else None
            QToolTip.showText(
                event.globalPos(),
                f"{spoken(found)}\n{found.cut_reason or ''}".strip() if found else "", self,
            )  # fmt: skip
            return True
        return super().event(event)


class NeckView(QScrollArea):
    """Scrolls and zooms along the neck; Ctrl and the wheel zoom."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self.neck = Neck(session, lambda: self.viewport().width())
        self.setWidget(self.neck)
        self.setFocusProxy(self.neck)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAsNeeded)
        self.setAccessibleName(say("Fretboard view"))
        self._tall = 0
        for signal in (session.opened, session.changed, session.fingered, session.selected):
            signal.connect(self.refresh)
        self.refresh()

    def sizeHint(self) -> QSize:
        return QSize(em(self, 40), self._tall)

    def set_mirrored(self, mirrored: bool) -> None:
        """Draw the neck as a left-handed player sees it."""
        self.neck.mirrored = mirrored
        self.refresh()

    def set_zoom(self, zoom: float) -> None:
        self.neck.zoom = max(ZOOMS[0], min(ZOOMS[1], zoom))
        self.refresh()

    def refresh(self) -> None:
        self.neck.refresh()
        tall = self.neck.height() + self.horizontalScrollBar().sizeHint().height() + 4
        self.setMinimumHeight(min(tall, max(em(self, 9), round(self.window().height() * 0.38))))
        self.setMaximumHeight(tall)
        self._tall = tall
        self.updateGeometry()
        neck, hands = self.neck.neck, self._session.bar_hands
        if neck is None or hands is None:
            return
        frets = [n.fret for n in hands.notes if n.fret is not None]
        if not frets:
            return
        chosen = self._session.note_hands
        if chosen is not None and chosen.fret is not None:
            frets = [chosen.fret]
        x = neck.finger_x(max(frets))
        self.ensureVisible(round(neck.finger_x(min(frets))), 0, round(neck.gap * 2), 0)
        self.ensureVisible(round(x), 0, round(neck.gap * 2), 0)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.refresh()

    def wheelEvent(self, event: QWheelEvent) -> None:
        if event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self.set_zoom(self.neck.zoom * (1.15 if event.angleDelta().y() > 0 else 1 / 1.15))
        else:
            super().wheelEvent(event)
