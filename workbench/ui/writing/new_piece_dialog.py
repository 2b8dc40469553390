"""A piece from nothing: what its empty bars are like, and what it is played on."""

from __future__ import annotations

from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QLineEdit,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from workbench.instrument.table import INSTRUMENTS, instrument
from workbench.language.speech import say
from workbench.music.edits.bars import MOST_BARS
from workbench.music.edits.fresh import new_piece
from workbench.music.edits.signs import FASTEST, SLOWEST
from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.store.learning import as_learnt
from workbench.teaching.lessons.edits import new_lesson
from workbench.teaching.lessons.lesson import Lesson
from workbench.ui.bench.session import Session
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Caution, Words
from workbench.ui.writing.marks import METERS, PICKUPS, key_names


class NewPieceDialog(QDialog):
    """Puts a lesson of empty bars on the bench, its piece on the shelf."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self.setWindowTitle(say("New piece"))
        self.setAccessibleName(say("New piece"))
        self.title, self.composer = QLineEdit(), QLineEdit()
        self.instrument = QComboBox()
        for found in INSTRUMENTS.values():
            self.instrument.addItem(say(found.name), found.id)
        if session.lesson is not None:
            at = self.instrument.findData(session.lesson.instrument)
            self.instrument.setCurrentIndex(max(0, at))
        self.key = QComboBox()
        for name, key in key_names().items():
            self.key.addItem(name, key)
        self.meter = QComboBox()
        self.meter.addItems(METERS)
        self.tempo, self.bars = QSpinBox(), QSpinBox()
        self.tempo.setRange(SLOWEST, FASTEST)
        self.tempo.setValue(90)
        self.bars.setRange(1, MOST_BARS)
        self.bars.setValue(16)
        self.pickup = QComboBox()
        for length, words in PICKUPS:
            self.pickup.addItem(say(words), length)
        form = QFormLayout()
        for label, field in (
            (say("&Title"), self.title), (say("&Composer"), self.composer),
            (say("&Instrument"), self.instrument), (say("&Key"), self.key),
            (say("Ti&me"), self.meter), (say("Quarter notes a mi&nute"), self.tempo),
            (say("&Bars"), self.bars), (say("&Pickup"), self.pickup),
        ):  # fmt: skip
            words_of = Words(label)
            words_of.setBuddy(field)
            field.setAccessibleName(label.replace("&", ""))
            form.addRow(words_of, field)
        self.problem = Caution()
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel
        )
        self.buttons.accepted.connect(self.make)
        self.buttons.rejected.connect(self.reject)
        layout = QVBoxLayout(self)
        layout.addLayout(form)
        layout.addWidget(self.problem)
        layout.addStretch(1)
        layout.addWidget(self.buttons)
        self.setMinimumWidth(em(self, 24))
        self.title.setFocus()

    def make(self) -> None:
        """Make the piece, or say what is missing."""
        try:
            beats, unit = (int(part) for part in self.meter.currentText().split("/"))
            piece = new_piece(
                self.title.text(), self.composer.text(), key=self.key.currentData(),
                meter=(beats, unit), tempo=self.tempo.value(), bars=self.bars.value(),
                pickup=self.pickup.currentData(),
            )  # fmt: skip
        except BadInput as wrong:
            self.problem.say(str(wrong))
            return
        made: list[str] = []
        learnt: list[Lesson] = []
        session = self._session

        def keep_piece() -> None:
            learnt.append(as_learnt(session.shelf, self._lesson(piece)))
            made.append(session.shelf.add_piece(piece).id)

        if session.guard(keep_piece) and session.add(learnt[0], made[0]):
            session.told.emit(say("'{title}' is on your shelf.", title=piece.title))
            self.accept()

    def _lesson(self, piece: Piece) -> Lesson:
        from workbench.arranging.arrange import as_written

        return new_lesson(as_written(piece), instrument(str(self.instrument.currentData())))
