"""The row of controls below the music: play and stop, what, how fast, who."""

from __future__ import annotations

from typing import Unpack

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QPushButton,
    QSizePolicy,
    QSpinBox,
    QWidget,
)

from workbench.language.speech import say
from workbench.sound.hearing import FASTEST, SILENCE, SLOWEST, WHO, Heard
from workbench.ui.kit.flow import FlowLayout
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Words
from workbench.ui.player.conductor import Conductor, MannerChange
from workbench.ui.player.spans import SPANS


class PlayerBar(QWidget):
    """Controls of the sound; follows the conductor."""

    def __init__(self, conductor: Conductor) -> None:
        super().__init__()
        self.conductor = conductor
        self.setAccessibleName(say("Player"))
        self.play = QPushButton()
        self.play.setAccessibleName(say("Play or stop"))
        self.play.setToolTip(
            say("Play or stop: Space on score, bars and fretboard, Ctrl+Space anywhere")
        )
        self.what = QComboBox()
        self.what.setAccessibleName(say("What is played"))
        self.what.addItems([say(words) for words in SPANS])
        self.loop = QCheckBox(say("Loop"))
        self.tempo = QSpinBox()
        self.tempo.setRange(round(SLOWEST), round(FASTEST))
        self.tempo.setSingleStep(5)
        self.tempo.setSuffix(" %")
        self.tempo.setKeyboardTracking(False)
        self.tempo.setAccessibleName(say("Tempo, percent of the written one"))
        self.count_in = QCheckBox(say("Count in"))
        self.metronome = QCheckBox(say("Metronome"))
        self.climb = QCheckBox(say("Climb"))
        self.climb.setToolTip(say("Tempo trainer: faster by steps; Sound, Tempo trainer sets them"))
        self.who = QComboBox()
        self.who.setAccessibleName(say("Which notes are brought out"))
        self.who.addItems([say(words) for words in WHO])
        self.how = QComboBox()
        self.how.setAccessibleName(say("Alone, or louder than the others"))
        self.how.addItems([say("alone"), say("louder")])
        for box in (self.what, self.tempo, self.who, self.how):
            box.setToolTip(box.accessibleName())
        self.now = Words()
        self.now.setProperty("role", "faint")
        self.now.setAccessibleName(say("What is heard now"))
        self.now.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        row = FlowLayout(self, em(self, 0.35))
        row.setContentsMargins(0, em(self, 0.15), 0, em(self, 0.15))
        for part in (self.play, self.what, self.tempo, self.loop, self.climb, self.count_in,
                     self.metronome, self.who, self.how):  # fmt: skip
            row.addWidget(part)
        row.addWidget(self.now)
        for box in (self.what, self.who):
            box.setSizeAdjustPolicy(
                QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
            )
            box.setMinimumContentsLength(12)
        self._filling = False
        self.play.clicked.connect(conductor.toggle)
        self.what.activated.connect(lambda at: conductor.set_span(SPANS[at]))
        self.loop.toggled.connect(lambda on: self._set(loop=on))
        self.tempo.valueChanged.connect(lambda value: self._set(tempo=float(value)))
        self.count_in.toggled.connect(lambda on: self._set(count_in=on))
        self.metronome.toggled.connect(lambda on: self._set(metronome=on))
        self.climb.toggled.connect(self._climb)
        self.who.activated.connect(lambda at: self._set(who=WHO[at]))
        self.how.activated.connect(lambda at: self._set(alone=at == 0))
        conductor.changed.connect(self.show_manner)
        conductor.state.connect(self._show_state)
        conductor.heard.connect(self.show_heard)
        conductor.session.opened.connect(lambda: self._show_state(conductor.playing))
        self.show_manner()
        self._show_state(False)

    def _set(self, **which: Unpack[MannerChange]) -> None:
        if not self._filling:
            self.conductor.set_manner(**which)

    def _climb(self, on: bool) -> None:
        if not self._filling:
            self.conductor.set_trainer(self.conductor.trainer, on)

    def show_manner(self) -> None:
        """Show how it is played."""
        manner = self.conductor.manner
        self._filling = True
        self.what.setCurrentIndex(SPANS.index(self.conductor.span))
        self.loop.setChecked(manner.loop)
        self.tempo.setValue(round(manner.tempo))
        self.tempo.setEnabled(manner.trainer is None)
        self.count_in.setChecked(manner.count_in)
        self.metronome.setChecked(manner.metronome)
        self.climb.setChecked(manner.trainer is not None)
        self.who.setCurrentIndex(WHO.index(manner.who))
        self.how.setCurrentIndex(0 if manner.alone else 1)
        self.how.setEnabled(manner.who != WHO[0])
        self._filling = False

    def _show_state(self, playing: bool) -> None:
        self.play.setText(say("■ Stop") if playing else say("▶ Play"))
        self.setEnabled(self.conductor.session.lesson is not None)
        if not playing:
            self.show_heard(SILENCE)

    def show_heard(self, heard: Heard) -> None:
        """Tell the bar, the round and the tempo that are heard."""
        words = ""
        lesson = self.conductor.session.lesson
        if heard.counting:
            words = say("Counting in")
        elif heard.playing and heard.bar >= 0 and lesson is not None:
            number = lesson.piece.bars[heard.bar].number
            words = say(
                "Bar {bar}, round {round}, {tempo} %", bar=number, round=heard.round + 1,
                tempo=round(heard.tempo),
            )  # fmt: skip
            if heard.missed:
                words += "; " + say("a note is missed")
        self.now.setText(words)


def space_plays(widget: QWidget, conductor: Conductor) -> None:
    """Let Space play and stop while a part of the music has the focus."""
    from PySide6.QtGui import QKeySequence, QShortcut

    key = QShortcut(QKeySequence(Qt.Key.Key_Space), widget)
    key.setContext(Qt.ShortcutContext.WidgetShortcut)
    key.activated.connect(conductor.toggle)
