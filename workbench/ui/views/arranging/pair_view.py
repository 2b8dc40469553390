"""The original and the arrangement engraved bar under bar, with what was altered marked."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QContextMenuEvent,
    QKeySequence,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QShowEvent,
)
from PySide6.QtWidgets import QWidget

from workbench.engraving import ids
from workbench.language.speech import say
from workbench.music.model import STEPS, Piece
from workbench.teaching.lessons.arrangement import Fate
from workbench.ui.bench.services import engraving_in_this_thread
from workbench.ui.bench.session import Session
from workbench.ui.kit.look import colours
from workbench.ui.score.view import ScoreView

if TYPE_CHECKING:
    from workbench.engraving.pair import PairStrip


OUTSIDE = 4  # steps beyond the staff up to which a note left out is shown there
OTHERS = ("left", "right", "strings", "voices")


class PairView(ScoreView):
    """Paints the pair; a note of either is chosen by its name in the original."""

    job = "engrave pair"
    chosen_note = Signal(str)
    wants_menu = Signal(object)  # the point of the screen

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        self.above: Piece | None = None
        self.fates: dict[str, Fate] = {}
        self.chosen = ""
        self._grand = False
        super().__init__(session, parent, strip=self._make_pair)
        self.shows["voices"] = False
        self.setAccessibleName(say("Original and arrangement"))
        self.bar.setAccessibleName(say("Size and parts of original and arrangement"))
        self.bar.fit.setShortcut(QKeySequence())
        for part in OTHERS:
            self.bar.parts[part].setVisible(False)

    def _make_pair(
        self, width: float, ink: str, shows: dict[str, bool], _voices: tuple[str, ...]
    ) -> PairStrip:
        from workbench.engraving.pair import PairStrip

        assert self.above is not None
        engraving_in_this_thread()
        faint = QColor(colours(self).faint)
        faint.setAlphaF(1.0)
        out = faint.name()

        def mark(note: str) -> str | None:
            fate = self.fates.get(note)
            return out if fate is not None and fate.now is None else None

        return PairStrip(self.above, width, ink=ink, tab=shows["tab"], mark=mark)

    def show_pair(self, above: Piece | None, fates: dict[str, Fate]) -> None:
        """Show the lesson under this original; nothing without one."""
        self.above, self.fates = above, fates
        self.extra = (id(above),)
        if above is not None:
            from workbench.engraving.mei.above import grand

            self._grand = grand(above)
        if self.chosen not in fates:
            self.chosen = ""
        self.engrave()

    def engrave(self) -> None:
        lesson = self._session.lesson
        if self.above is None or lesson is None:
            self.image = None
            self._measure()
        elif self.isVisible() and len(self.above.bars) == len(lesson.piece.bars):
            super().engrave()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.engrave()

    # Choosing.

    def choose_note(self, note: str) -> None:
        """Choose a note by its name in the original; "" chooses none."""
        self.chosen = note
        session, fate = self._session, self.fates.get(note)
        if fate is not None:
            at = session.selection.position_of(fate.bar)
            session.selection.select(at, note if fate.now is not None else None)
        self.viewport().update()
        self.chosen_note.emit(note)

    def note_under(self, point: QPointF) -> str:
        """The note under a point of the viewport, by its name in the original."""
        found = self.image.note_at(self.to_image(point)) if self.image else None
        return ids.under(found or "") or (found or "")

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if self.image is None or event.button() != Qt.MouseButton.LeftButton:
            return
        note = self.note_under(event.position())
        if note:
            self.choose_note(note)
            return
        bar = self.image.bar_at(self.to_image(event.position()))
        if bar is not None:
            self.choose_note("")
            self._session.selection.select(self._session.selection.position_of(bar), None)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        pass  # notes are chosen one by one here

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        pass

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        note = self.note_under(QPointF(event.pos()))
        if note:
            self.choose_note(note)
            self.wants_menu.emit(event.globalPos())

    def tip_at(self, point: QPointF) -> str:
        note = self.note_under(point)
        return fate_words(self.fates[note]) if note in self.fates else ""

    # Painting.

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if self.image is None:
            return
        c = colours(self)
        painter = QPainter(self.viewport())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        for note, fate in self.fates.items():
            if fate.altered or fate.decision.voice is not None:
                seen = fate.decision.accepted
                ink = QColor(c.faint if seen else c.warm if fate.now is not None else c.alarm)
                self._mark(painter, note, fate, ink)
        if self.chosen:
            painter.setPen(QPen(QColor(c.accent), 2.0))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            for rect in self.image.rects_of_note(ids.over(self.chosen)):
                painter.drawRoundedRect(self.from_image(rect).adjusted(-3, -3, 3, 3), 5, 5)
        painter.end()

    def _mark(self, painter: QPainter, note: str, fate: Fate, ink: QColor) -> None:
        """Outline what is left out, an arrow for another octave, a stroke where it ends."""
        painter.setPen(QPen(ink, 1.6))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        if self.image is None:
            return
        if fate.now is None:
            above = ids.over(note)
            head = self.image.rect_of(ids.head(above)) or self.image.rect_of(above)
            if head is None:
                return
            painter.drawEllipse(self.from_image(head).adjusted(-2.5, -2.5, 2.5, 2.5))
            ghost = self._ghost(fate, head)
            if ghost is not None:
                painter.drawEllipse(self.from_image(ghost))
            return
        head = self.image.rect_of(ids.head(note)) or self.image.rect_of(note)
        if head is None:
            return
        shown = self.from_image(head)
        if fate.octaves:
            self._arrow(painter, shown, fate.octaves)
        if fate.short:
            x = shown.right() + 4 * self.scale
            painter.drawLine(QPointF(x, shown.top() - 3), QPointF(x, shown.bottom() + 3))
        if fate.decision.voice is not None:
            painter.drawRect(shown.adjusted(-3, -3, 3, 3))

    def _arrow(self, painter: QPainter, head: QRectF, octaves: int) -> None:
        """An arrow left of the head, two points for two octaves."""
        size = 4.5 * self.scale
        x, up = head.left() - 1.2 * size, octaves > 0
        top, bottom = head.center().y() - 2 * size, head.center().y() + 2 * size
        painter.drawLine(QPointF(x, top), QPointF(x, bottom))
        for at in range(min(3, abs(octaves))):
            tip = top + at * size if up else bottom - at * size
            back = tip + size if up else tip - size
            painter.drawLine(QPointF(x, tip), QPointF(x - size * 0.7, back))
            painter.drawLine(QPointF(x, tip), QPointF(x + size * 0.7, back))

    def _ghost(self, fate: Fate, over: QRectF) -> QRectF | None:
        """Where a note that is left out would stand in the arrangement's staff."""
        session = self._session
        lesson = session.lesson
        placed = self.image.placed if self.image else ()
        item = next((p for p in placed if p.system.first <= fate.bar <= p.system.last), None)
        if item is None or lesson is None or self.above is None:
            return None
        from workbench.arranging.transpose import move_pitch, shift_by
        from workbench.engraving.mei.document import OCTAVE_CLEF_BELOW
        from workbench.engraving.pointing import BOTTOM_LINE

        pitch = move_pitch(fate.source.pitch, shift_by(self.above.key, lesson.transposition))
        first = 10 if self._grand else 5
        lines = item.system.flat.lines[first : first + 5]
        if len(lines) < 5:
            return None
        below = session.instrument.lowest < OCTAVE_CLEF_BELOW
        step = STEPS.index(pitch.step) + 7 * pitch.octave
        at = step - (BOTTOM_LINE - (7 if below else 0))
        if not -OUTSIDE <= at <= 8 + OUTSIDE:
            return None
        y = lines[-1] - at * (lines[-1] - lines[0]) / 8
        middle = QPointF(over.center().x(), item.corner.y() + y * item.scale)
        return QRectF(middle.x() - over.width() / 2, middle.y() - over.height() / 2,
                      over.width(), over.height())  # fmt: skip


def fate_words(fate: Fate) -> str:
    """What became of a note, in a line."""
    from workbench.arranging.words import octaves
    from workbench.language.names import pitch_words

    was = pitch_words(fate.source.pitch.name)
    if fate.now is None:
        return say("{pitch} of the original is left out.", pitch=was)
    now = pitch_words(fate.now.pitch.name)
    if fate.octaves:
        words = say("{pitch} of the original lies {way}: {other}.", pitch=was,
                    way=octaves(fate.octaves), other=now)  # fmt: skip
    else:
        words = say("{pitch} of the original stays: {other}.", pitch=was, other=now)
    if fate.short:
        words += " " + say("It ends early.")
    return words
