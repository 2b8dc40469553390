"""The buttons under what was learned: put it in force, take the last fit back, close."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QDialogButtonBox

from workbench.language.speech import say


class FitButtons(QDialogButtonBox):
    """``apply`` is the button under ``words`` that puts the fit in force, ``undo`` the one that
    takes the last one back."""

    def __init__(
        self,
        words: str,
        apply: Callable[[], None],
        undo: Callable[[], None],
        close: Callable[[], None],
    ) -> None:
        super().__init__()
        self.apply = self.addButton(words, QDialogButtonBox.ButtonRole.ApplyRole)
        self.undo = self.addButton(
            say("Take the last fit &back"), QDialogButtonBox.ButtonRole.ResetRole
        )
        self.addButton(say("Close"), QDialogButtonBox.ButtonRole.RejectRole)
        self.apply.clicked.connect(apply)
        self.undo.clicked.connect(undo)
        self.rejected.connect(close)
