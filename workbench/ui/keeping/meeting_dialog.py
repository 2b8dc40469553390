"""Two states of one lesson: one changed here, one in another window. The teacher chooses."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QListWidget,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from workbench.language.speech import say
from workbench.teaching.lessons.differences import differences
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Heading, Words, Wrapped

if TYPE_CHECKING:
    from workbench.ui.bench.keeper import Keeper


class MeetingDialog(QDialog):
    """What the other window changed against what stands here, and what to do."""

    def __init__(self, keeper: Keeper, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        assert keeper.meeting
        self._keeper = keeper
        found = keeper.meeting
        name = say("Changed in two windows")
        self.setWindowTitle(name)
        self.setAccessibleName(name)
        self.list = QListWidget()
        self.list.setWordWrap(True)
        self.list.setAccessibleName(say("What differs"))
        said = differences(found.theirs, found.mine)
        self.list.addItems(said or (say("Nothing that can be seen."),))
        label = Words(say("&From the other window's state to mine"))
        label.setBuddy(self.list)
        self.buttons = QDialogButtonBox()
        layout = QVBoxLayout(self)
        layout.addWidget(Heading(found.mine.title))
        layout.addWidget(
            Wrapped(
                say(
                    "This lesson was changed here and in another window, in the same place. "
                    "Nothing is lost: what gives way stays in the history, as a version or as a "
                    "lesson of its own."
                )
            )
        )
        layout.addWidget(label)
        layout.addWidget(self.list, 1)
        layout.addWidget(self.buttons)
        for choice, words, tip in (
            ("both", say("&Keep both"), say("Mine becomes a lesson of its own; theirs is shown")),
            ("mine", say("&Mine stands"), say("Undo brings theirs back")),
            ("theirs", say("&Theirs stands"), say("My state stays as a version")),
        ):
            button = QPushButton(words)
            self.buttons.addButton(button, QDialogButtonBox.ButtonRole.ActionRole)
            button.setToolTip(tip)
            button.setDefault(choice == "both")
            button.clicked.connect(lambda _on=False, choice=choice: self._choose(choice))

    def sizeHint(self) -> QSize:
        return QSize(em(self, 36), em(self, 22))

    def _choose(self, choice: str) -> None:
        self._keeper.settle(choice)
        self.accept()
