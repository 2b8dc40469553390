"""Where the script is written: a page of text beside the music, one bar after the other."""

from __future__ import annotations

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import (
    QHBoxLayout,
    QPlainTextEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from workbench.language.names import as_first_word
from workbench.language.speech import say
from workbench.teaching.lessons.lesson import CLOSING, OPENING
from workbench.teaching.scripts.files import clock, place_words, shown
from workbench.teaching.scripts.script import Script, with_edit
from workbench.teaching.techniques.exercises import excerpt
from workbench.ui.bench.session import Session
from workbench.ui.kit.look import em
from workbench.ui.kit.mark_ink import MarkInk
from workbench.ui.kit.panes import Panes
from workbench.ui.kit.parts import Faint, Heading, Scrolled
from workbench.ui.notes.words import PAUSE
from workbench.ui.score.strip import MusicStrip

BESIDE = 46  # em from which music and page stand side by side
BARS = 2  # shown: the present one and what comes


class ScriptPage(QWidget):
    """One place of the script at a time: ``moved`` tells that another was turned to, ``left``
    that the writer wants all bars again. What is written is kept at every turn."""

    moved = Signal()
    left = Signal()

    def __init__(self, session: Session) -> None:
        super().__init__()
        self._session = session
        self.script: Script | None = None
        self.place = CLOSING - 1  # in playing order, or OPENING, CLOSING; none yet
        self.heading, self.whose, self.about = Heading(""), Faint(), Faint()
        self.music = MusicStrip(session, "script page")
        self.words = _Writing(self)
        self.words.setAccessibleName(say("Your words for this bar"))
        self.words.setToolTip(self.words.accessibleName())
        self.back_button = QPushButton(say("&Bar before"))
        self.back_button.setToolTip(say("Keep the words and go back (Ctrl+Shift+Return)"))
        self.on_button = QPushButton(say("&Next bar"))
        self.on_button.setToolTip(say("Keep the words and go on (Ctrl+Return)"))
        self.take_button = QPushButton(say("&Take back"))
        self.take_button.setToolTip(say("Take your words back: the bar says again what it said"))
        self.all_button = QPushButton(say("&All bars"))
        self.all_button.setToolTip(say("Keep the words and show all bars (Esc)"))
        self._lay_out()
        self.back_button.clicked.connect(lambda: self.turn(-1))
        self.on_button.clicked.connect(lambda: self.turn(1))
        self.take_button.clicked.connect(self.take_back)
        self.all_button.clicked.connect(self.leave)

    def _lay_out(self) -> None:
        seen = QWidget()
        column = QVBoxLayout(seen)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.music)
        column.addWidget(self.about)
        column.addStretch(1)
        page = QWidget()
        text = QVBoxLayout(page)
        text.setContentsMargins(0, 0, 0, 0)
        text.addWidget(self.whose)
        text.addWidget(self.words, 1)
        self.parts = Panes(Qt.Orientation.Horizontal)
        self.parts.setObjectName("script_page")
        self.parts.addWidget(Scrolled(seen, say("The music in notes and tablature")))
        self.parts.addWidget(page)
        self.parts.setChildrenCollapsible(False)
        buttons = QHBoxLayout()
        for button in (self.back_button, self.on_button, self.take_button):
            buttons.addWidget(button)
        buttons.addStretch(1)
        buttons.addWidget(self.all_button)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.heading)
        layout.addWidget(self.parts, 1)
        layout.addLayout(buttons)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        wide = self.width() >= em(self, BESIDE)
        way = Qt.Orientation.Horizontal if wide else Qt.Orientation.Vertical
        if self.parts.orientation() != way or event.oldSize().width() <= 0:
            self.parts.setOrientation(way)
            whole = self.width() if wide else self.height()
            self.parts.setSizes([whole * 45 // 100, whole * 55 // 100])

    # What is shown.

    @property
    def places(self) -> list[int]:
        """All places in the order in which they are said."""
        return [OPENING, *range(len(self.script.cues)), CLOSING] if self.script else []

    @property
    def changed(self) -> bool:
        """Whether words are written that are not kept yet."""
        script = self.script
        return script is not None and self.written != script.words_at(self.place)

    @property
    def written(self) -> str:
        """The words as they would be kept."""
        lines = (" ".join(line.split()) for line in self.words.toPlainText().splitlines())
        return "\n".join(lines).strip()

    def show_place(self, script: Script, place: int) -> None:
        """Show a place of a script; words under way at the same place stay."""
        stays = place == self.place and self.changed
        turned = place != self.place
        another = turned or script is not self.script
        self.script, self.place = script, place
        own = script.is_edited(place)
        heading = place_name(script, place)
        if place >= 0:
            last, start = script.cues[-1].number, clock(script.cues[place].start)
            heading = say("{bar} of {last}, at {time}", bar=heading, last=last, time=start)
        self.heading.setText(as_first_word(heading))
        self.whose.setText(
            say("Your words.") if own else say("What the program says; write over it.")
        )
        self.words.setAccessibleName(say("Words for {place}", place=place_name(script, place)))
        self.words.setPlaceholderText(self._silence(place))
        if turned or not (stays or self.written == script.words_at(place)):
            self.words.setPlainText(script.words_at(place))
            if turned and not own:  # to be written over at once
                self.words.selectAll()
        self.take_button.setEnabled(own)
        at = self.places.index(place)
        self.back_button.setEnabled(at > 0)
        self.on_button.setEnabled(at < len(self.places) - 1)
        if another:
            self._show_music()

    def _silence(self, place: int) -> str:
        script = self.script
        if script is None or place < 0 or not script.cues[place].covered:
            return say("Write what you say here.")
        speaker = script.cues[script.speaker(place)]
        return say(
            "Nothing is said here: the words before speak for {bars}. Write what you say here.",
            bars=place_words(script, speaker),
        )

    def _show_music(self) -> None:
        script, session = self.script, self._session
        lesson, fingering = session.lesson, session.fingers.fingering
        if script is None or lesson is None or fingering is None:
            return
        at = 0 if self.place == OPENING else len(script.cues) - 1
        cue = script.cues[self.place if self.place >= 0 else at]
        self.about.setText("\n".join(shown(cue)) if self.place >= 0 else "")
        last = min(cue.bar + BARS, len(lesson.piece.bars)) - 1
        bars = range(cue.bar, last + 1)
        if all(session.fingers.hands_of(bar) is not None for bar in bars):
            self.music.show_music(*excerpt(lesson.piece, fingering, cue.bar, last))

    # Hands on it.

    def turn(self, by: int) -> None:
        """Keep what is written, then go to the place before or after."""
        places = self.places
        if self.script is None or self.place not in places:
            return
        at = places.index(self.place) + by
        self.keep()
        if 0 <= at < len(places):
            self.show_place(self.script, places[at])
            self.moved.emit()
        self.words.setFocus()

    def keep(self, *, merge: bool = False) -> None:
        """Keep what is written at this place; with ``merge`` as one step with what was kept
        a moment ago."""
        place, words, script = self.place, self.written, self.script
        if script is not None and self.changed:
            self._session.edit(
                say("Write the words for {place}", place=place_name(script, place)),
                lambda lesson: with_edit(lesson, place, words), merge=merge,
            )  # fmt: skip

    def take_back(self) -> None:
        """Give the words of this place back to the program."""
        script, place = self.script, self.place
        if script is not None and script.is_edited(place):
            self.words.setPlainText(script.words_at(place))
            self._session.edit(
                say("Take back the words for {place}", place=place_name(script, place)),
                lambda lesson: with_edit(lesson, place, None),
            )

    def leave(self) -> None:
        """Keep what is written, then show all bars."""
        self.keep()
        self.left.emit()


class _Writing(QPlainTextEdit):
    """A page of text with the keys to go on."""

    def __init__(self, page: ScriptPage) -> None:
        super().__init__()
        self._page = page
        self.setTabChangesFocus(True)
        self.setMinimumHeight(self.fontMetrics().lineSpacing() * 3)
        self.ink = MarkInk(self.document())
        self._pause = QTimer(self)  # a long page is not lost with the power
        self._pause.setSingleShot(True)
        self._pause.setInterval(PAUSE)
        self._pause.timeout.connect(lambda: page.keep(merge=True))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        held, key = event.modifiers(), event.key()
        control = Qt.KeyboardModifier.ControlModifier
        back = held & Qt.KeyboardModifier.ShiftModifier
        if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and held & control:
            self._page.turn(-1 if back else 1)
        elif key in (Qt.Key.Key_PageUp, Qt.Key.Key_PageDown) and held & control:
            self._page.turn(1 if key == Qt.Key.Key_PageDown else -1)
        elif key == Qt.Key.Key_Escape:
            self._page.leave()
        else:
            super().keyPressEvent(event)
            self._pause.start()


def place_name(script: Script, place: int) -> str:
    """What a place is called, as in the undo history: "bar 3", "the opening"."""
    if place < 0:
        return say("the opening") if place == OPENING else say("the closing")
    number = script.cues[place].number
    return say("the pickup") if number == "0" else say("bar {number}", number=number)
