"""A tone for every string, to tune by, and the pitch of A4."""

from __future__ import annotations

from fractions import Fraction

from PySide6.QtWidgets import (
    QDialogButtonBox,
    QDoubleSpinBox,
    QGridLayout,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from workbench.fingering.types import Audit, FingeredBar, FingeredNote, Fingering
from workbench.instrument.model import A4_HIGHEST, A4_LOWEST, Instrument
from workbench.language.speech import say
from workbench.music.model import Bar, Note, Piece, Pitch
from workbench.sound.hearing import Manner
from workbench.sound.programme import Programme
from workbench.ui.kit.asking import Asking
from workbench.ui.kit.file_rows import form_layout
from workbench.ui.kit.parts import Faint
from workbench.ui.neck.paint import STEPS
from workbench.ui.player.conductor import Conductor

NAMES = (("C", 0), ("C", 1), ("D", 0), ("E", -1), ("E", 0), ("F", 0), ("F", 1), ("G", 0),
         ("A", -1), ("A", 0), ("B", -1), ("B", 0))  # fmt: skip
BEATS = Fraction(4)


def string_tones(instrument: Instrument, strings: tuple[int, ...]) -> tuple[Piece, Fingering]:
    """The open strings one after the other, four seconds each, and how they are played."""
    bars, hands = [], []
    for index, string in enumerate(strings):
        midi = instrument.open_midi[string - 1]
        step, alter = NAMES[midi % 12]
        note = Note(f"s{string}", Fraction(0), BEATS, Pitch(step, alter, midi // 12 - 1))
        bars.append(
            Bar(index=index, number=str(string), time_signature=(4, 4), length=BEATS, notes=(note,))
        )
        hand = FingeredNote(note.id, index, note.onset, BEATS, midi,
                            string=string, fret=0, left=0, right="p", held=BEATS)  # fmt: skip
        hands.append(FingeredBar(index, str(string), (hand,)))
    piece = Piece(say("Tuner tones"), tuple(bars), tempo=60.0)
    return piece, Fingering(0, True, tuple(hands), Audit(len(bars), 0, 1.0))


class TunerDialog(Asking):
    """Plays the open strings as they should sound."""

    def __init__(self, conductor: Conductor, parent: QWidget | None = None) -> None:
        super().__init__(say("Tuner tones"), say("&Done"), parent)
        self._conductor = conductor
        self.a4 = QDoubleSpinBox()
        self.a4.setRange(A4_LOWEST, A4_HIGHEST)
        self.a4.setDecimals(1)
        self.a4.setSuffix(" Hz")
        self.a4.setValue(conductor.a4)
        self.a4.setKeyboardTracking(False)
        self.a4.valueChanged.connect(self._tune)
        instrument = conductor.session.instrument
        grid = QGridLayout()
        self.tones: list[QPushButton] = []
        for place, string in enumerate(range(instrument.strings, 0, -1)):
            midi = instrument.open_midi[string - 1]
            words = say("String {string}: {note}", string=string,
                        note=f"{STEPS[midi % 12]}{midi // 12 - 1}")  # fmt: skip
            button = QPushButton(words)
            button.clicked.connect(lambda _=False, string=string: self.play((string,)))
            grid.addWidget(button, place // 2, place % 2)
            self.tones.append(button)
        self.every = QPushButton(say("&All strings in turn"))
        self.every.clicked.connect(lambda: self.play(tuple(range(instrument.strings, 0, -1))))
        self.silence = QPushButton(say("&Silence"))
        self.silence.clicked.connect(conductor.stop)
        about = Faint()
        about.setText(
            say("{name}; the tone is repeated until another or Silence. The usual A4 is 440 Hz.",
                name=instrument.called)
        )  # fmt: skip
        about.setWordWrap(True)
        rows = form_layout()
        rows.addRow(self.field(say("&Pitch of A4"), self.a4), self.a4)
        layout = QVBoxLayout(self)
        layout.addLayout(grid)
        layout.addWidget(self.every)
        layout.addWidget(self.silence)
        layout.addLayout(rows)
        layout.addWidget(about)
        layout.addWidget(self.buttons)
        self.buttons.removeButton(self.buttons.button(QDialogButtonBox.StandardButton.Cancel))
        self.finished.connect(conductor.stop)
        self._strings: tuple[int, ...] = ()

    def play(self, strings: tuple[int, ...]) -> None:
        """Sound these strings in turn, again and again."""
        self._strings = strings
        instrument = self._conductor.session.instrument
        piece, fingering = string_tones(instrument, strings)
        self._conductor.start(
            Programme(piece, fingering, instrument, tuple(range(len(strings))),
                      Manner(loop=True), position=-len(strings), bank=self._conductor.bank())
        )  # fmt: skip

    def _tune(self, hertz: float) -> None:
        playing = self._conductor.playing
        self._conductor.set_a4(hertz)
        if playing and self._strings:
            self.play(self._strings)
