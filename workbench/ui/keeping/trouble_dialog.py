"""The store cannot be opened: what is wrong, and what can be done about it here."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QPushButton, QVBoxLayout, QWidget

from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.store.backups import begin_anew, restore
from workbench.store.opening import StorePlace
from workbench.store.told import restored_words
from workbench.ui.keeping.backups_dialog import BackupList
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Caution, Heading, Words, Wrapped


class TroubleDialog(QDialog):
    """Accepted where the store is to be opened again. ``said`` tells what was done."""

    def __init__(
        self, sentence: str, place: StorePlace | None, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._place = place
        self.said = ""
        name = say("The lesson store cannot be opened")
        self.setWindowTitle(name)
        self.setAccessibleName(name)
        self.words = Wrapped(sentence)
        self.problem = Caution()
        self.buttons = QDialogButtonBox()
        again = QPushButton(say("&Try again"))
        again.setDefault(True)
        quit_button = QPushButton(say("&Quit"))
        self.buttons.addButton(again, QDialogButtonBox.ButtonRole.AcceptRole)
        self.buttons.addButton(quit_button, QDialogButtonBox.ButtonRole.RejectRole)
        layout = QVBoxLayout(self)
        layout.addWidget(Heading(name))
        layout.addWidget(self.words)
        self.list: BackupList | None = None
        self.restore_button = QPushButton(say("&Restore the backup"))
        self.new_button = QPushButton(say("&Begin a new store"))
        if place is not None and place.file is not None:
            self.list = BackupList(place)
            label = Words(say("B&ackups"))
            label.setBuddy(self.list)
            layout.addWidget(label)
            layout.addWidget(self.list, 1)
            self.restore_button.setEnabled(bool(self.list.found))
            self.new_button.setToolTip(say("The store that is there is moved aside, not deleted"))
            for button in (self.restore_button, self.new_button):
                button.setAutoDefault(False)
                self.buttons.addButton(button, QDialogButtonBox.ButtonRole.ActionRole)
            if not self.list.found:
                layout.addWidget(Wrapped(say("There are no backups of it yet.")))
        layout.addWidget(self.problem)
        layout.addWidget(self.buttons)
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)
        self.restore_button.clicked.connect(self.restore)
        self.new_button.clicked.connect(self.begin_anew)

    def sizeHint(self) -> QSize:
        return QSize(em(self, 38), em(self, 24))

    def restore(self) -> None:
        """Put the selected backup in the store's place."""
        picked = self.list.picked if self.list else None
        if picked is None or self._place is None:
            return
        try:
            self.said = " ".join(restored_words(restore(self._place, picked)))
        except BadInput as wrong:
            self.problem.say(str(wrong))
            return
        self.accept()

    def begin_anew(self) -> None:
        """Move the store aside, so that a new one is made."""
        assert self._place
        try:
            aside = begin_anew(self._place)
        except OSError as fault:
            self.problem.say(
                say("The store cannot be moved aside ({fault}).", fault=fault.strerror or fault)
            )
            return
        if aside:
            self.said = say("What was there lies in {path}.", path=aside)
        self.accept()
