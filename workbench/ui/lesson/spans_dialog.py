"""Three measured spans of a student's left hand."""

from __future__ import annotations

from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QDoubleSpinBox,
    QFormLayout,
    QVBoxLayout,
    QWidget,
)

from workbench.instrument.model import Hand
from workbench.instrument.table import hand as find_hand
from workbench.language.speech import mark, say
from workbench.music.errors import BadInput
from workbench.ui.kit.parts import Caution, Words

SAFETY = mark(
    "Figures about hands are guidance, not medical advice. Warm up, rest between tries, stop "
    "at pain, and ask a teacher or a health professional where it stays."
)
SPANS = (
    (mark("Fingers 1 and 2"), 15, 120),
    (mark("Fingers 1 and 4"), 40, 220),
    (mark("Fingers 2 and 4"), 20, 180),
)


class SpansDialog(QDialog):
    """Asks for the comfortable spans 1-2, 1-4 and 2-4 in millimetres."""

    def __init__(self, now: Hand, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(say("Measured hand"))
        self.setAccessibleName(say("Measured hand"))
        words = Words(
            say(
                "Lay the left hand on a ruler as on the fretboard, spread in comfort, and measure "
                "from finger tip to finger tip."
            )
        )
        words.setWordWrap(True)
        form = QFormLayout()
        self.boxes: list[QDoubleSpinBox] = []
        given = (now.comfort_12, now.comfort_14, now.comfort_24)
        for (label, low, high), value in zip(SPANS, given, strict=True):
            box = QDoubleSpinBox()
            box.setRange(low, high)
            box.setDecimals(0)
            box.setSuffix(" mm")
            box.setValue(value)
            box.setAccessibleName(say(label))
            box.valueChanged.connect(self._check)
            form.addRow(say(label), box)
            self.boxes.append(box)
        self.wrong = Caution()
        caution = Caution()
        caution.say(say(SAFETY))
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel
        )
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)
        layout = QVBoxLayout(self)
        layout.addWidget(words)
        layout.addLayout(form)
        layout.addWidget(self.wrong)
        layout.addWidget(caution)
        layout.addWidget(self.buttons)
        self._check()

    def hand(self) -> str:
        """The hand as a lesson names it."""
        return "own:" + ",".join(f"{box.value():g}" for box in self.boxes)

    def _check(self) -> None:
        try:
            find_hand(self.hand())
            wrong = ""
        except BadInput:
            wrong = say("The span of 1 and 4 must be the widest of the three.")
        self.wrong.say(wrong)
        self.buttons.button(QDialogButtonBox.StandardButton.Ok).setEnabled(not wrong)
