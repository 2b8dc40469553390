"""The open lesson on another instrument or in another key."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QVBoxLayout, QWidget

from workbench.arranging.arrange import arrange
from workbench.arranging.decisions import decisions
from workbench.arranging.words import counted
from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.store.learning import as_learnt
from workbench.teaching.lessons import edits
from workbench.ui.bench.session import Session
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Caution, Faint
from workbench.ui.lesson.playing_fields import PlayingFields

if TYPE_CHECKING:
    from workbench.arranging.arrange import Arranged


class MusicDialog(QDialog):
    """Places the piece anew: ``piece`` is the score as it was imported, or the lesson's own
    music where that was corrected; transpositions then add up."""

    def __init__(self, session: Session, piece: Piece, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        lesson = session.lesson
        assert lesson
        self._session, self._piece = session, piece
        self.setWindowTitle(say("Instrument and key"))
        self.setAccessibleName(say("Instrument and key"))
        self.fields = PlayingFields(session)
        self.fields.fill(piece, lesson.instrument, lesson.capo, lesson.hand, lesson.wishes)
        if lesson.transposition and not lesson.corrected:
            self.fields.choose_move(lesson.transposition)
        self.problem = Caution()
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel
        )
        self.ok = self.buttons.button(QDialogButtonBox.StandardButton.Ok)
        self.ok.setText(say("&Lay it out anew"))
        layout = QVBoxLayout(self)
        layout.addWidget(self.fields)
        layout.addWidget(
            Faint(
                say(
                    "Remarks stay with their bars. Pins stay where the instrument and the "
                    "note stay the same. Undo brings all of it back."
                )
            )
        )
        layout.addWidget(self.problem)
        layout.addStretch(1)
        layout.addWidget(self.buttons)
        self.buttons.accepted.connect(self.place)
        self.buttons.rejected.connect(self.reject)

    def sizeHint(self) -> QSize:
        return QSize(em(self, 30), max(em(self, 18), super().sizeHint().height()))

    def place(self) -> None:
        """Arrange in the background, then change the lesson."""
        session, piece = self._session, self._piece
        hand = self.fields.hand.currentText()
        try:
            instrument, choice = self.fields.playing(), self.fields.key_choice()
        except BadInput as wrong:
            self.problem.say(str(wrong))
            return
        lesson = session.lesson
        assert lesson
        wanted = {} if lesson.corrected else decisions(lesson.wanted)

        def arrived(placed: Arranged) -> None:
            done = session.edit(
                say("Change instrument or key"),
                lambda lesson: edits.set_field(
                    as_learnt(
                        session.shelf,
                        edits.rearranged(lesson, placed, instrument, again=lesson.corrected),
                        was=lesson.instrument,
                    ),
                    "hand",
                    hand,
                ),
            )
            if done:
                if counted(placed.changes):
                    session.laid.emit()
                self.accept()
            else:
                self.ok.setEnabled(True)

        self.ok.setEnabled(False)
        session.jobs.start(
            "arrange", say("Laying the piece on the instrument"),
            lambda _: arrange(piece, instrument, wanted=wanted, **choice), arrived,
            wrong=self._refused,
        )  # fmt: skip

    def _refused(self, sentence: str) -> None:
        self.problem.say(sentence)
        self.ok.setEnabled(True)
