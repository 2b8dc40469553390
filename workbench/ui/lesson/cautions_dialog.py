"""What to take care of in the open lesson. Guidance, not medical advice."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QVBoxLayout, QWidget

from workbench.language.message import Message, message
from workbench.language.speech import say
from workbench.teaching.planning.cautions import ALWAYS, GUIDANCE, cautions
from workbench.ui.bench.session import Session
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Heading, Words


class CautionsDialog(QDialog):
    """The cautions of this piece, and those that always hold."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(say("Health cautions"))
        self.setAccessibleName(say("Health cautions"))
        lesson, fingering = session.lesson, session.fingers.fingering
        said: tuple[Message, ...] = (message(ALWAYS),)
        if lesson and fingering:
            said = cautions(
                lesson.piece, fingering, session.instrument, session.hand,
                minutes_a_day=lesson.minutes_a_day,
            )  # fmt: skip
        layout = QVBoxLayout(self)
        layout.addWidget(Heading(lesson.title if lesson else say("For every lesson")))
        for words in (*said, message(GUIDANCE)):
            label = Words(str(words))
            label.setWordWrap(True)
            layout.addWidget(label)
        layout.addStretch(1)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        buttons.rejected.connect(self.reject)
        layout.addWidget(buttons)

    def sizeHint(self) -> QSize:
        return QSize(em(self, 30), max(em(self, 14), super().sizeHint().height()))
