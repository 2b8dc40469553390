"""A dialog that asks something and leaves the window usable meanwhile."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QLabel, QWidget

from workbench.language.speech import say
from workbench.ui.kit.parts import Caution, Words


class Asking(QDialog):
    """A dialog that does not stop the window; ``ok`` takes what was chosen."""

    def __init__(self, title: str, take: str, parent: QWidget | None) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(title)
        self.setAccessibleName(title)
        self.problem = Caution()
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel
        )
        self.ok = self.buttons.button(QDialogButtonBox.StandardButton.Ok)
        self.ok.setText(take)
        self.buttons.button(QDialogButtonBox.StandardButton.Cancel).setText(say("Cancel"))
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)

    def field(self, words: str, part: QWidget) -> QLabel:
        """A label whose key leads to a field."""
        label = Words(words)
        label.setBuddy(part)
        part.setAccessibleName(words.replace("&", ""))
        return label
