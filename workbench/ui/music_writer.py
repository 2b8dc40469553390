"""Writing music in the score strip: takes its keys and clicks, and paints the caret."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from typing import Any

from PySide6.QtCore import QEvent, QObject, QPoint, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QLineEdit

from workbench.fingering.types import Fingering
from workbench.language.speech import say
from workbench.music.edits.line import find
from workbench.music.edits.notes import moments
from workbench.ui.look import colours, em
from workbench.ui.music_caret import Caret
from workbench.ui.music_commands import MusicHand
from workbench.ui.music_keys import Command, Keyboard
from workbench.ui.music_places import Places
from workbench.ui.score_view import ScoreView
from workbench.ui.session import Session


class MusicWriter(QObject):
    """The score strip's writer while music is written."""

    def __init__(
        self, session: Session, hand: MusicHand, score: ScoreView, bar_marks: Command
    ) -> None:
        super().__init__(score)
        self._session, self._hand, self._score = session, hand, score
        self._keyboard = Keyboard(hand, self.ask_chord, bar_marks)
        self.chord: QLineEdit | None = None
        hand.started.connect(self._started)
        hand.moved.connect(self._moved)
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
        if self._hand.caret.tablature and not self._score.shows["tab"]:
            self._score.show_parts(tab=True)
        self._score.setAccessibleDescription(self.spoken)
        self._score.viewport().update()

    @property
    def spoken(self) -> str:
        """Where the caret stands, for those who hear the window."""
        lesson = self._session.lesson
        if lesson is None:
            return ""
        caret = self._hand.caret
        place = f"{caret.where_words(lesson.piece)}, {caret.place_words(lesson.piece)}"
        note = self._hand.note
        if note is None:
            return place
        return say("{place}; note at hand {pitch}", place=place, pitch=note.pitch.name)

    # What the strip asks.

    def stand_in(self) -> Fingering | None:
        """Places to show while the corrected music is being fingered."""
        return self._hand.stand_in()

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
        """Put the caret where the mouse was pressed."""
        lesson, places = self._session.lesson, self._places()
        if lesson is None or places is None:
            return False
        self._close_chord()
        hand, piece = self._hand, lesson.piece
        found = self._score.image.note_at(point)
        if found is not None and found in piece.bar_of:
            _, note = find(piece, found)
            staff, tab = places.lines(piece.bar_of[found])
            low = bool(tab) and point.y() > (staff[4] + tab[0]) / 2
            caret = hand.caret.on(piece, note, hand.string_of(found))
            hand.move(_on_staff(caret, low), found)
            return True

        def of_bar(bar: int) -> list[Fraction]:
            return moments(piece, bar, hand.caret.voice, hand.caret.length.quarters)

        where = places.at(point, of_bar)
        if where is None:
            return True
        bar, onset, step, string = where
        hand.move(_placed(hand.caret, bar, onset, step, string))
        return True

    # The caret.

    def _places(self) -> Places | None:
        lesson, image = self._session.lesson, self._score.image
        if lesson is None or image is None:
            return None
        return Places(image, lesson.piece, self._session.instrument)

    def _spot(self, places: Places) -> tuple[float, float, float, float] | None:
        """x, top, bottom and the height of the caret's own line, in the image."""
        caret = self._hand.caret
        staff, tab = places.lines(caret.bar)
        x = places.x(caret.bar, caret.onset)
        if x is None or len(staff) < 5:
            return None
        y: float | None
        if caret.tablature and tab:
            y = places.y_of_string(caret.bar, caret.string)
        else:
            y = places.y_of_step(caret.bar, caret.step)
        y = staff[2] if y is None else y
        gap = (staff[4] - staff[0]) / 4
        ends = [staff[0], y] if not caret.tablature else [tab[0] if tab else staff[0]]
        foot = [staff[4], y] if not caret.tablature else [tab[-1] if tab else staff[4]]
        return x, min(ends) - 1.6 * gap, max(foot) + 1.2 * gap, y

    def foot(self) -> QPoint:
        """Below the caret, in the viewport: where a menu about it opens."""
        places = self._places()
        spot = self._spot(places) if places is not None else None
        if spot is None:
            return QPoint(0, 0)
        return self._score.from_image(QRectF(spot[0], spot[2], 0, 0)).topLeft().toPoint()

    def paint(self, painter: QPainter) -> None:
        """The caret over the strip: a post with a foot, a sign on its line, and its name."""
        places = self._places()
        spot = self._spot(places) if places is not None else None
        if places is None or spot is None or self._session.lesson is None:
            return
        c, caret, score = colours(self._score), self._hand.caret, self._score
        x, top, bottom, y = spot
        post = score.from_image(QRectF(QPointF(x, top), QPointF(x, bottom)))
        line = score.from_image(QRectF(x, y, 0, 0)).top()
        size = max(3.0, 4.0 * score.scale)
        painter.save()
        accent = QColor(c.warm)
        wash = QColor(accent)
        wash.setAlphaF(0.16)
        painter.fillRect(post.adjusted(-2 * size, 0, 2 * size, 0), wash)
        painter.setPen(QPen(accent, 1.4))
        painter.drawLine(post.topLeft(), post.bottomLeft())
        painter.setBrush(accent)
        foot = post.bottomLeft()
        painter.drawPolygon(
            QPolygonF([foot, foot + QPointF(-size, size), foot + QPointF(size, size)])
        )
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(accent, 1.8))
        here = QPointF(post.left(), line)
        if caret.tablature:
            half = 1.6 * size
            painter.drawRect(QRectF(here.x() - half, line - half, 2 * half, 2 * half))
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
        left = min(max(2.0, post.left() - wide / 2), self._score.viewport().width() - wide - 2)
        box = QRectF(left, max(2.0, post.top() - tall), wide, tall)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(c.warm))
        painter.drawRoundedRect(box, 3, 3)
        painter.setPen(QColor(c.panel))
        painter.drawText(box, Qt.AlignmentFlag.AlignCenter, words)

    # The chord name.

    def ask_chord(self) -> None:
        """A field over the caret in which to write a chord name; Return keeps it."""
        places = self._places()
        spot = self._spot(places) if places is not None else None
        if places is None or spot is None:
            return
        self._close_chord()
        staff, _ = places.lines(self._hand.caret.bar)
        corner = self._score.from_image(QRectF(spot[0], staff[0], 0, 0)).topLeft()
        field = _ChordField(self._score.viewport(), self._keep_chord, self._close_chord)
        field.setText(self._hand.chord_here)
        wide, tall = em(field, 6), field.sizeHint().height()
        port = self._score.viewport().rect()
        field.setGeometry(
            max(2, min(round(corner.x()) - wide // 3, port.width() - wide - 2)),
            max(2, min(round(corner.y()) - 2 * tall, port.height() - tall - 2)),
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

    def __init__(self, parent: Any, keep: Command, leave: Command) -> None:
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


def _on_staff(caret: Caret, tablature: bool) -> Caret:
    return replace(caret, tablature=tablature)


def _placed(caret: Caret, bar: int, onset: Fraction, step: int | None, string: int | None) -> Caret:
    if string is not None:
        return replace(caret, bar=bar, onset=onset, string=string, tablature=True)
    return replace(
        caret, bar=bar, onset=onset, step=caret.step if step is None else step, tablature=False
    )
