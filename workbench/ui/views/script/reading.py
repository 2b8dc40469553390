"""The script in large type over the whole screen, to be read while playing.

Any pedal that sends Page Down and Page Up, the space bar or the arrows turns it; what
other keys a pedal sends can be learnt.
"""

from __future__ import annotations

import math

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QFont, QKeyEvent, QPalette, QResizeEvent, QTextDocument
from PySide6.QtWidgets import (
    QBoxLayout,
    QFrame,
    QHBoxLayout,
    QPushButton,
    QScrollArea,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from workbench.instrument.model import Instrument
from workbench.language.names import as_first_word
from workbench.language.speech import say
from workbench.music.bar_names import bar_name
from workbench.store.setting_names import READING_KEYS, READING_LOOK
from workbench.teaching.lessons.formatting import as_html
from workbench.teaching.scripts.files import clock
from workbench.teaching.scripts.script import Cue, Script
from workbench.teaching.techniques.exercises import alone
from workbench.ui.bench.session import Session
from workbench.ui.kit.look import DARK, LIGHT, Colours, colours, em, palette
from workbench.ui.kit.parts import Words, Wrapped
from workbench.ui.neck.grip_neck import GripNeck, frets_for
from workbench.ui.score.strip import MusicStrip
from workbench.ui.views.script.reading_keys import PedalDialog, PedalKeys

SIZES = (150, 180, 220, 270, 330, 400)  # per cent of the window's text


class ReadingView(QWidget):
    """One bar of the script after the other, its grip and the next one beside it."""

    def __init__(
        self,
        session: Session,
        script: Script,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent, Qt.WindowType.Window)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(say("{title}: script", title=script.title))
        self.setAccessibleName(say("Reading view of the script"))
        self._session, self.script = session, script
        self._lesson = session.lesson.id if session.lesson else ""
        session.opened.connect(self.close)  # the words are another lesson's now
        kept = session.shelf.setting(READING_LOOK, {})
        size = kept.get("size")
        self.size_at = SIZES.index(size) if size in SIZES else 2
        self.dark = bool(kept.get("dark", colours() is DARK))
        self._within = 0  # pixels scrolled down within the present bar
        self.place = max(0, min(session.selection.position, len(script.cues) - 1))
        instrument: Instrument = session.instrument
        self.keys = PedalKeys(session.shelf.setting(READING_KEYS, {}))
        self.dialog: PedalDialog | None = None
        self.music = MusicStrip(session, "reading bar")
        self.bar = Words()
        self.when = Words()
        self.here = GripNeck(instrument, session.left_handed)
        self.coming = Words()
        self.there = GripNeck(instrument, session.left_handed)
        self.words = [_Words(cue, self) for cue in script.cues]
        self.area = QScrollArea()
        self._buttons = QHBoxLayout()
        for words, tip, does in (
            (say("&Smaller"), say("Smaller text (-)"), lambda: self.resize_text(-1)),
            (say("&Larger"), say("Larger text (+)"), lambda: self.resize_text(1)),
            (say("&Dark or light"), say("Change between dark and light (D)"), self.swap_colours),
            (say("&Pedal …"), say("Learn the keys of a pedal"), self.learn_pedal),
            (say("&Close"), say("Back to the lesson (Esc)"), self.close),
        ):
            button = QPushButton(words)
            button.setToolTip(tip)
            button.setFocusPolicy(Qt.FocusPolicy.TabFocus)
            button.clicked.connect(does)
            self._buttons.addWidget(button)
        self._lay_out()
        self._dress()
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setFocus()

    def _lay_out(self) -> None:
        inner = QWidget()
        self.column = QVBoxLayout(inner)
        self.opening, self.closing = (
            _Rich(as_html(str(text))) for text in (self.script.opening, self.script.closing)
        )
        for ends in (self.opening, self.closing):
            ends.setTextFormat(Qt.TextFormat.RichText)
        self.column.addWidget(self.opening)
        for words in self.words:
            self.column.addWidget(words)
        self.column.addWidget(self.closing)
        self.foot = QWidget()  # lets the last bar, too, come to the top
        self.foot.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Expanding)
        self.column.addWidget(self.foot)
        self.area.setWidget(inner)
        self.area.setWidgetResizable(True)
        self.area.setFrameShape(QFrame.Shape.NoFrame)
        self.area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.area.setAccessibleName(say("What is said"))
        beside = QWidget()
        side = QVBoxLayout(beside)
        side.setContentsMargins(0, 0, 0, 0)
        for part, share in (
            (self.bar, 0), (self.when, 0), (self.music, 0), (self.here, 3), (self.coming, 0),
            (self.there, 2),
        ):  # fmt: skip
            side.addWidget(part, share)
        side.addLayout(self._buttons)
        self.area.verticalScrollBar().rangeChanged.connect(self._hold)
        self.whole = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        self.whole.addWidget(self.area, 3)
        self.whole.addWidget(beside, 2)

    # Where it is.

    @property
    def cue(self) -> Cue | None:
        """The bar that is read."""
        return self.script.cues[self.place] if self.script.cues else None

    def go(self, place: int) -> None:
        """Read another bar, by its place in playing order."""
        self.place = max(0, min(place, len(self.script.cues) - 1))
        self._show()

    def onward(self) -> None:
        """The rest of a long text first, then the next bar."""
        if not self._turn(1):
            self.go(self.place + 1)

    def back(self) -> None:
        """The way ``onward`` came."""
        if not self._turn(-1):
            self.go(self.place - 1)

    def _turn(self, by: int) -> bool:
        """Scroll within a bar whose words do not fit on the screen."""
        if not self.words:
            return False
        now, page = self.words[self.script.speaker(self.place)], self.area.viewport().height()
        scroll = self.area.verticalScrollBar()
        top, end = self._top(now), now.geometry().bottom()
        step = max(1, round(page * 0.8))
        if by > 0 and end > scroll.value() + page and now.height() > page * 0.9:
            scroll.setValue(min(scroll.value() + step, max(top, end - page + em(self, 2))))
            self._within = scroll.value() - top
            return True
        if by < 0 and scroll.value() > top:
            scroll.setValue(max(top, scroll.value() - step))
            self._within = scroll.value() - top
            return True
        return False

    def _hold(self) -> None:
        """Keep the present bar where it is while the page around it finds its heights."""
        if self.words:
            top = self._top(self.words[self.script.speaker(self.place)])
            self.area.verticalScrollBar().setValue(top + self._within)

    def _top(self, words: QWidget) -> int:
        """Where the scroll bar stands when some words are at the top of the page."""
        first = self.words[0] if self.words else None
        if words is first:
            return 0
        return max(0, words.geometry().top() - em(self, 1))

    def _show(self) -> None:
        cue = self.cue
        if cue is None:
            return
        c = self._colours
        for at, words in enumerate(self.words):
            words.mark(at == self.script.speaker(self.place), c)
        self.column.activate()
        self._within = 0
        self._hold()
        self.bar.setText(as_first_word(bar_name(cue.number)))
        entered = [c.chapter for c in self.script.cues[: self.place + 1] if c.chapter]
        chapter = f"{entered[-1]}, " if entered else ""
        now = say("{time} of {whole}", time=clock(cue.start), whole=clock(self.script.seconds))
        self.when.setText(chapter + now)
        self._engrave(cue)
        following = self.script.cues[self.place + 1 :][:1]
        hands = [self._session.fingers.hands_of(c.bar) for c in (cue, *following)]
        frets = frets_for(*hands)  # the same for both, so that the eye need not measure anew
        self.here.show_bar(hands[0], str(bar_name(cue.number)), frets)
        self.there.setVisible(bool(following))
        self.coming.setText(
            say("Next: {bar}", bar=bar_name(following[0].number)) if following else say("The end")
        )
        for after in following:
            self.there.show_bar(hands[1], str(bar_name(after.number)), frets)

    def _engrave(self, cue: Cue) -> None:
        lesson, fingering = self._session.lesson, self._session.fingers.fingering
        if lesson is None or fingering is None or self._session.fingers.hands_of(cue.bar) is None:
            self.music.show_music(None, None)
            return
        self.music.show_music(*alone(lesson.piece, fingering, cue.bar))

    def learn_pedal(self) -> None:
        """Ask which keys a pedal sends; remembered."""
        dialog = self.dialog = PedalDialog(self._session, self.keys, self)
        dialog.setPalette(self.palette())

        def kept() -> None:
            self.keys = dialog.chosen
            keys = self.keys.as_kept()
            self._session.guard(lambda: self._session.shelf.set_setting(READING_KEYS, keys))

        dialog.accepted.connect(kept)
        dialog.open()
        dialog.resize(dialog.sizeHint().boundedTo(self.size()))

    # Look.

    @property
    def _colours(self) -> Colours:
        return DARK if self.dark else LIGHT

    def _dress(self) -> None:
        c = self._colours
        self.setPalette(palette(c))
        self.setAutoFillBackground(True)
        base = QFont(self.font())
        points = base.pointSizeF() * SIZES[self.size_at] / 100
        for label, share in (
            (self.opening, 0.7), (self.closing, 0.7), (self.bar, 1.3), (self.when, 0.55),
            (self.coming, 0.8), (self.music, 0.62),
        ):  # fmt: skip
            font = QFont(base)
            font.setPointSizeF(max(base.pointSizeF(), points * share))
            font.setBold(label is self.bar)
            label.setFont(font)
        _ink(self.opening, c.faint)
        _ink(self.closing, c.faint)
        _ink(self.when, c.faint)
        _ink(self.bar, c.accent)
        font = QFont(base)
        font.setPointSizeF(points)
        for words in self.words:
            words.text.setFont(font)
            words.text.setText(words.said)  # it claims its height anew
        self.column.setSpacing(round(points * 0.9))
        gap = em(self, 1.2)
        self.whole.setContentsMargins(gap, gap, gap, gap)
        self.whole.setSpacing(gap)
        self._show()

    def resize_text(self, by: int) -> None:
        """Larger (+1) or smaller (-1) text; remembered."""
        self.size_at = max(0, min(len(SIZES) - 1, self.size_at + by))
        self._remember()

    def swap_colours(self) -> None:
        """From dark to light or back; remembered."""
        self.dark = not self.dark
        self._remember()

    def _remember(self) -> None:
        self._dress()
        kept = {"size": SIZES[self.size_at], "dark": self.dark}
        self._session.guard(lambda: self._session.shelf.set_setting(READING_LOOK, kept))

    # Events.

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = event.key()
        turns = self.keys.turns(key)
        if turns:
            self.onward() if turns > 0 else self.back()
        elif key == Qt.Key.Key_Home:
            self.go(0)
        elif key == Qt.Key.Key_End:
            self.go(len(self.script.cues) - 1)
        elif key in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
            self.resize_text(1)
        elif key == Qt.Key.Key_Minus:
            self.resize_text(-1)
        elif key == Qt.Key.Key_D:
            self.swap_colours()
        elif key == Qt.Key.Key_Escape:
            self.close()
        else:
            super().keyPressEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        upright = self.height() > self.width()
        self.whole.setDirection(
            QBoxLayout.Direction.TopToBottom if upright else QBoxLayout.Direction.LeftToRight
        )
        self.whole.setStretch(0, 1 if upright else 3)
        self.whole.setStretch(1, 1 if upright else 2)
        tall = min(self.height(), self.screen().availableGeometry().height())
        self.music.fit(0.3 * tall)
        self.foot.setMinimumHeight(self.area.viewport().height())
        self._show()

    def closeEvent(self, event: object) -> None:
        """Leave the lesson at the bar that was read last."""
        lesson = self._session.lesson
        if self.cue is not None and lesson is not None and lesson.id == self._lesson:
            self._session.selection.select(self.cue.position)
        self.music.stop()
        super().closeEvent(event)  # type: ignore[arg-type]


class _Rich(Wrapped):
    """Wrapped words with emphasis in them, measured as they are drawn."""

    def _claim(self) -> None:
        page = QTextDocument()
        page.setDocumentMargin(0)
        page.setDefaultFont(self.font())
        page.setHtml(self.text())
        page.setTextWidth(max(1, self.width()))
        needed = math.ceil(page.size().height()) + 2 if self.text() else 0
        if needed != self.minimumHeight():
            self.setMinimumHeight(needed)
            self.updateGeometry()


class _Words(QWidget):
    """What is said at one bar, with a line at its side while it is the present one."""

    def __init__(self, cue: Cue, parent: QWidget) -> None:
        super().__init__(parent)
        self.said = as_html(str(cue.say))
        self.setVisible(not cue.covered)
        self.text = _Rich()
        self.text.setTextFormat(Qt.TextFormat.RichText)
        self.side = QFrame()
        self.side.setFixedWidth(em(self, 0.35))
        self.side.setAutoFillBackground(True)
        # What the page has to spare goes to its foot, never between the bars.
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(em(self, 0.8))
        row.addWidget(self.side)
        row.addWidget(self.text, 1)

    def mark(self, present: bool, c: Colours) -> None:
        """Show whether this is the bar that is read."""
        _ink(self.text, c.ink if present else c.faint)
        side = self.side.palette()
        side.setColor(QPalette.ColorRole.Window, QColor(c.accent if present else c.ground))
        self.side.setPalette(side)


def _ink(label: QWidget, colour: str) -> None:
    dressed = label.palette()
    dressed.setColor(QPalette.ColorRole.WindowText, QColor(colour))
    label.setPalette(dressed)
