"""How the tempo climbs while a span is practised."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QCheckBox, QSpinBox, QVBoxLayout, QWidget

from workbench.language.speech import mark, say
from workbench.sound.hearing import FASTEST, SLOWEST, Trainer
from workbench.ui.kit.asking import Asking
from workbench.ui.kit.file_rows import form_layout
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Caution
from workbench.ui.player.conductor import Conductor

LONG_PRACTICE = mark(
    "Long loops tire the hands: warm up first, rest five minutes after every twenty-five, and "
    "stop at once where anything hurts; pain that stays belongs before a teacher and a health "
    "professional."
)


class TrainerDialog(Asking):
    """From which tempo, by what step, after how many rounds, to which tempo."""

    def __init__(self, conductor: Conductor, parent: QWidget | None = None) -> None:
        super().__init__(say("Tempo trainer"), say("&Use it"), parent)
        self._conductor = conductor
        now = conductor.trainer
        self.on = QCheckBox(say("&Climb while a span is looped"))
        self.on.setChecked(True)
        self.start = self._box(round(SLOWEST), round(FASTEST), " %", now.start)
        self.step = self._box(1, 25, " %", now.step)
        self.rounds = self._box(1, 20, "", now.rounds)
        self.top = self._box(round(SLOWEST), round(FASTEST), " %", now.top)
        rows = form_layout()
        for words, part in (
            (say("&From"), self.start), (say("&Step"), self.step),
            (say("&Rounds at each tempo"), self.rounds), (say("&To"), self.top),
        ):  # fmt: skip
            rows.addRow(self.field(words, part), part)
        caution = Caution()
        caution.say(say(LONG_PRACTICE))
        layout = QVBoxLayout(self)
        layout.addWidget(self.on)
        layout.addLayout(rows)
        layout.addWidget(caution)
        layout.addWidget(self.problem)
        layout.addWidget(self.buttons)

    def sizeHint(self) -> QSize:
        return QSize(em(self, 26), super().sizeHint().height())

    def _box(self, low: int, high: int, unit: str, value: float) -> QSpinBox:
        box = QSpinBox()
        box.setRange(low, high)
        box.setSuffix(unit)
        box.setValue(round(value))
        return box

    def accept(self) -> None:
        if self.top.value() < self.start.value():
            self.problem.say(say("The tempo climbs: choose a last tempo not below the first."))
            return
        trainer = Trainer(
            self.start.value(), self.step.value(), self.rounds.value(), self.top.value()
        )
        self._conductor.set_trainer(trainer, self.on.isChecked())
        super().accept()
