"""Writing music in the score strip: takes its keys and clicks, and paints the caret."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QEvent, QObject, QPoint, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QLineEdit, QWidget

from workbench.fingering.types import Fingering
from workbench.language.names import pitch_words
from workbench.language.speech import say
from workbench.music.edits.line import find
from workbench.ui.bench.session import Session
from workbench.ui.kit.look import colours, em
from workbench.ui.score.view import ScoreView
from workbench.ui.writing.caret import Caret
from workbench.ui.writing.commands import MusicHand
from workbench.ui.writing.keys import Command, Keyboard


class MusicWriter(QObject):
    """The score strip's writer while music is written."""

    def __init__(
        self, session: Session, hand: MusicHand, score: ScoreView, bar_marks: Command
    ) -> None:
        super().__init__(score)
        self._session, self._hand, self._score = session, hand, score
        self._keyboard = Keyboard(hand, self.ask_chord, bar_marks)
        self.chord: QLineEdit | None = None
        hand.pen.started.connect(self._started)
        hand.pen.moved.connect(self._moved)
        session.opened.connect(self._close_chord)

    def _started(self, on: bool) -> None:
        self._score.writer = self if on else None
        if on:
            self._score.installEventFilter(self)
        else:
            self._score.removeEventFilter(self)
        self._close_chord()
        if on:
            self._score.setFocus()
        self._score.viewport().update()
        if not on:
            self._score.follow()

    def _moved(self) -> None:
        if self._hand.pen.caret.tablature and not self._score.shows["tab"]:
            self._score.show_parts(tab=True)
        self._score.setAccessibleDescription(self.spoken)
        self._score.viewport().update()

    @property
    def spoken(self) -> str:
        """Where the caret stands, for those who hear the window."""
        lesson = self._session.lesson
        if lesson is None:
            return ""
        caret = self._hand.pen.caret
        place = f"{caret.where_words(lesson.piece)}, {caret.place_words(lesson.piece)}"
        note = self._hand.pen.note
        if note is None:
            return place
        return say("{place}; note at hand {pitch}", place=place, pitch=pitch_words(note.pitch.name))

    # What the strip asks.

    def stand_in(self) -> Fingering | None:
        """Places to show while the corrected music is being fingered."""
        return self._hand.pen.stand_in()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Take the strip's keys before it, and before any shortcut, does."""
        if isinstance(event, QKeyEvent):
            if event.type() == QEvent.Type.ShortcutOverride and self._wants(event):
                event.accept()
                return True
            if event.type() == QEvent.Type.KeyPress and self._key(event):
                return True
        return super().eventFilter(watched, event)

    def _wants(self, event: QKeyEvent) -> bool:
        """Whether a key means something here, before any shortcut."""
        return self._session.lesson is not None and self._keyboard.command(event) is not None

    def _key(self, event: QKeyEvent) -> bool:
        """Do what a key says; False where it says nothing."""
        if self._session.lesson is None:
            return False
        command = self._keyboard.command(event)
        if command is None:
            # no letter reaches the keys of fingering from here
            return bool(event.text().strip()) and not event.modifiers() & (
                Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.MetaModifier
            )
        command()
        return True

    def press(self, point: QPointF) -> bool:
        """Put the caret where the mouse was pressed, a point of the image."""
        lesson, image, hand = self._session.lesson, self._score.image, self._hand
        if lesson is None or image is None:
            return False
        self._close_chord()
        piece = lesson.piece
        place = image.place_at(point, hand.pen.caret.length.quarters)
        found = image.note_at(point)
        if found is not None and found in piece.bar_of:
            _, note = find(piece, found)
            caret = hand.pen.caret.on(piece, note, hand.pen.string_of(found))
            low = place is not None and place.string is not None
            hand.pen.move(replace(caret, tablature=low), found)
        elif place is not None and place.bar < len(piece.bars):
            caret = replace(hand.pen.caret, bar=place.bar, onset=place.onset)
            if place.string is not None:
                hand.pen.move(replace(caret, string=place.string, tablature=True))
            elif place.step is not None:
                hand.pen.move(replace(caret, step=place.step, tablature=False))
        return True

    # The caret.

    def _spot(self) -> tuple[QPointF, QRectF] | None:
        """The caret's own line at its moment, and the column it stands in, in the viewport."""
        from workbench.engraving.pointing import Place

        caret, score = self._hand.pen.caret, self._score
        here = Place(caret.bar, caret.onset)
        line = replace(here, string=caret.string) if caret.tablature else replace(
            here, step=caret.step
        )  # fmt: skip
        at, column = score.point_of(line) or score.point_of(here), score.column_of(here)
        return None if at is None or column is None else (at, column)

    def foot(self) -> QPoint:
        """Below the caret, in the viewport: where a menu about it opens."""
        spot = self._spot()
        return spot[1].bottomLeft().toPoint() if spot is not None else QPoint(0, 0)

    def paint(self, painter: QPainter) -> None:
        """The caret over the strip: a post with a foot, a sign on its line, and its name."""
        spot = self._spot()
        if spot is None or self._session.lesson is None:
            return
        c, caret, score = colours(self._score), self._hand.pen.caret, self._score
        here, post = spot
        post.setTop(min(post.top(), here.y()))
        size = max(3.0, 4.0 * score.scale)
        painter.save()
        accent = QColor(c.warm)
        wash = QColor(accent)
        wash.setAlphaF(0.16)
        painter.fillRect(post, wash)
        painter.setPen(QPen(accent, 1.4))
        foot = QPointF(here.x(), post.bottom())
        painter.drawLine(QPointF(here.x(), post.top()), foot)
        painter.setBrush(accent)
        painter.drawPolygon(
            QPolygonF([foot, foot + QPointF(-size, size), foot + QPointF(size, size)])
        )
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(accent, 1.8))
        if caret.tablature:
            half = 1.6 * size
            painter.drawRect(QRectF(here.x() - half, here.y() - half, 2 * half, 2 * half))
        else:
            painter.drawPolygon(
                QPolygonF([here + QPointF(-1.7 * size, 0), here + QPointF(0, -1.2 * size),
                           here + QPointF(1.7 * size, 0), here + QPointF(0, 1.2 * size)])
            )  # fmt: skip
        self._name(painter, post, caret)
        painter.restore()

    def _name(self, painter: QPainter, post: QRectF, caret: Caret) -> None:
        """Voice and line, in words above the post."""
        assert self._session.lesson
        c = colours(self._score)
        words = say(
            "voice {voice} · {place}",
            voice=caret.voice, place=caret.place_words(self._session.lesson.piece),
        )  # fmt: skip
        font = painter.font()
        font.setPointSizeF(font.pointSizeF() * 0.85)
        painter.setFont(font)
        metrics = painter.fontMetrics()
        wide, tall = metrics.horizontalAdvance(words) + 10, metrics.height() + 2
        left = min(
            max(2.0, post.center().x() - wide / 2), self._score.viewport().width() - wide - 2
        )
        box = QRectF(left, max(2.0, post.top() - tall), wide, tall)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(c.warm))
        painter.drawRoundedRect(box, 3, 3)
        painter.setPen(QColor(c.panel))
        painter.drawText(box, Qt.AlignmentFlag.AlignCenter, words)

    # The chord name.

    def ask_chord(self) -> None:
        """A field over the caret in which to write a chord name; Return keeps it."""
        spot = self._spot()
        if spot is None:
            return
        self._close_chord()
        corner = spot[1].topLeft()
        field = _ChordField(self._score.viewport(), self._keep_chord, self._close_chord)
        field.setText(self._hand.chord_here)
        wide, tall = em(field, 6), field.sizeHint().height()
        port = self._score.viewport().rect()
        field.setGeometry(
            max(2, min(round(corner.x()) - wide // 3, port.width() - wide - 2)),
            max(2, min(round(corner.y()) - tall, port.height() - tall - 2)),
            wide, tall,
        )  # fmt: skip
        self.chord = field
        field.show()
        field.setFocus()
        field.selectAll()

    def _keep_chord(self) -> None:
        if self.chord is not None and self._hand.set_chord(self.chord.text()):
            self._close_chord()

    def _close_chord(self) -> None:
        field, self.chord = self.chord, None
        if field is not None:
            field.hide()
            field.deleteLater()
            self._score.setFocus()


class _ChordField(QLineEdit):
    """Return keeps what is written, Esc leaves it."""

    def __init__(self, parent: QWidget, keep: Command, leave: Command) -> None:
        super().__init__(parent)
        self._leave = leave
        self.setAccessibleName(say("Chord name"))
        self.setPlaceholderText(say("F7, Am/C …"))
        self.setToolTip(say("Chord name over the caret; empty takes it away. Return keeps it."))
        self.returnPressed.connect(keep)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self._leave()
            return
        super().keyPressEvent(event)
