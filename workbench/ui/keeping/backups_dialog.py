"""The backups of the store: made, and restored."""

from __future__ import annotations

from PySide6.QtCore import QDate, QLocale, QSize, Signal
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QListWidget,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from workbench.language.speech import chosen, count, say
from workbench.music.errors import BadInput
from workbench.store.backups import Backup, back_up, backups, contents
from workbench.store.opening import StorePlace
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Caution, Faint, Heading, Words, Wrapped


class BackupList(QListWidget):
    """The backups of a store, the newest first."""

    def __init__(self, place: StorePlace) -> None:
        super().__init__()
        self._place = place
        self.found: tuple[Backup, ...] = ()
        self.setAccessibleName(say("Backups"))
        self.fill()

    def fill(self) -> None:
        """List what there is now."""
        self.found = backups(self._place)
        self.clear()
        locale = QLocale(chosen())
        for backup in self.found:
            lessons = contents(backup.path)
            day = locale.toString(
                QDate(backup.day.year, backup.day.month, backup.day.day),
                QLocale.FormatType.LongFormat,
            )
            holds = (
                say("cannot be read")
                if lessons is None
                else count(len(lessons), "{n} lesson", "{n} lessons")
            )
            more = f" ({backup.number + 1})" if backup.number else ""
            self.addItem(f"{day}{more}: {holds}")
        if self.found:
            self.setCurrentRow(0)

    @property
    def picked(self) -> Backup | None:
        """The one that is selected."""
        row = self.currentRow()
        return self.found[row] if 0 <= row < len(self.found) else None


class BackupsDialog(QDialog):
    """``wanted`` tells which backup is to take the store's place."""

    wanted = Signal(object)

    def __init__(self, place: StorePlace, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._place = place
        self.setWindowTitle(say("Backups"))
        self.setAccessibleName(say("Backups"))
        self.list = BackupList(place)
        label = Words(say("&Backups"))
        label.setBuddy(self.list)
        self.now_button = QPushButton(say("Back up &now"))
        self.restore_button = QPushButton(say("&Restore"))
        self.restore_button.setToolTip(
            say("Put the selected backup in the store's place; what is there is moved aside")
        )
        self.problem = Caution()
        self.status = Faint()
        self.buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        for button in (self.now_button, self.restore_button):
            self.buttons.addButton(button, QDialogButtonBox.ButtonRole.ActionRole)
            button.setAutoDefault(False)
        layout = QVBoxLayout(self)
        layout.addWidget(Heading(say("Backups of the lesson store")))
        layout.addWidget(
            Wrapped(
                say(
                    "One is made every day and kept for a week, then one a week and one a "
                    "month. They lie beside the store: copy them to another disk now and then."
                )
            )
        )
        for part in (label, self.list, self.problem, self.status, self.buttons):
            layout.addWidget(part)
        self.buttons.rejected.connect(self.reject)
        self.now_button.clicked.connect(self.make)
        self.restore_button.clicked.connect(self.restore)
        self.list.currentRowChanged.connect(lambda _: self._enable())
        self._enable()
        if place.file is None:
            self.now_button.setEnabled(False)
            self.problem.say(
                say("The store {place} lies on a server; its backups are made there.", place=place)
            )

    def sizeHint(self) -> QSize:
        return QSize(em(self, 34), em(self, 26))

    def _enable(self) -> None:
        self.restore_button.setEnabled(self.list.picked is not None)

    def make(self) -> None:
        """Make one now."""
        try:
            made = back_up(self._place)
        except BadInput as wrong:
            self.problem.say(str(wrong))
            return
        self.problem.say("")
        self.list.fill()
        self.status.setText(say("The backup is {path}.", path=made.path))

    def restore(self) -> None:
        """Ask the program to put the selected one in place."""
        picked = self.list.picked
        if picked is not None:
            self.accept()
            self.wanted.emit(picked)
