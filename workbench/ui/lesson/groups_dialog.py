"""Student groups: who learns together, so that lessons are found and compared for all of them."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QInputDialog,
    QListWidget,
    QPlainTextEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from workbench.language.speech import say
from workbench.store.rows import Group
from workbench.ui.bench.session import Session
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Faint, Words


class GroupsDialog(QDialog):
    """Groups at the left, the students of the selected one at the right, a name a line."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self.groups: tuple[Group, ...] = ()
        self._shown = ""
        self.setWindowTitle(say("Student groups"))
        self.setAccessibleName(say("Student groups"))
        self.list = QListWidget()
        self.list.setAccessibleName(say("Groups"))
        self.students = QPlainTextEdit()
        self.students.setAccessibleName(say("Students of the group, a name a line"))
        self.students.setPlaceholderText(say("A name a line"))
        self.students.setTabChangesFocus(True)
        self.known = Faint()
        self.new_button = QPushButton(say("&New group …"))
        self.delete_button = QPushButton(say("&Dissolve the group"))
        self.delete_button.setToolTip(say("Its students' lessons stay"))
        self.close_button = QPushButton(say("C&lose"))
        self._lay_out()
        self.list.currentRowChanged.connect(self._turn)
        self.new_button.clicked.connect(self.new)
        self.delete_button.clicked.connect(self.delete)
        self.close_button.clicked.connect(self.reject)
        self._fill()

    def _lay_out(self) -> None:
        columns = QHBoxLayout()
        for words, part, share in (
            (say("&Groups"), self.list, 2),
            (say("&Students"), self.students, 3),
        ):
            column = QVBoxLayout()
            label = Words(words)
            label.setBuddy(part)
            column.addWidget(label)
            column.addWidget(part, 1)
            columns.addLayout(column, share)
        bottom = QHBoxLayout()
        bottom.addWidget(self.new_button)
        bottom.addWidget(self.delete_button)
        bottom.addStretch(1)
        bottom.addWidget(self.close_button)
        layout = QVBoxLayout(self)
        layout.addLayout(columns, 1)
        layout.addWidget(self.known)
        layout.addLayout(bottom)

    def sizeHint(self) -> QSize:
        return QSize(em(self, 34), em(self, 20))

    def _fill(self, name: str = "") -> None:
        """List the groups and select one by name."""
        self.groups = self._session.shelf.groups()
        names = [group.name for group in self.groups]
        self.list.blockSignals(True)
        self.list.clear()
        self.list.addItems(names)
        self.list.blockSignals(False)
        students = self._session.shelf.students()
        self.known.setText(
            say("Students on the shelf: {names}.", names=", ".join(students))
            if students
            else say("No lesson on the shelf names a student yet.")
        )
        self.list.setCurrentRow(names.index(name) if name in names else 0 if names else -1)
        self._show()

    def _turn(self, _row: int) -> None:
        self.keep()
        self._show()

    def _show(self) -> None:
        row = self.list.currentRow()
        group = self.groups[row] if 0 <= row < len(self.groups) else None
        self._shown = group.name if group else ""
        self.students.setPlainText("\n".join(group.students) if group else "")
        self.students.setEnabled(group is not None)
        self.delete_button.setEnabled(group is not None)

    def keep(self) -> None:
        """Keep the names that were written."""
        name = self._shown
        if not name:
            return
        written = tuple(line.strip() for line in self.students.toPlainText().splitlines())
        session = self._session
        session.guard(lambda: session.shelf.set_group(name, written))
        self.groups = session.shelf.groups()

    def new(self) -> None:
        """Make a group under a name."""
        self.keep()
        name, agreed = QInputDialog.getText(
            self, say("New group"), say("What is the group called?")
        )
        name = name.strip()
        if not agreed or not name:
            return
        session = self._session
        if name not in [group.name for group in self.groups]:
            session.guard(lambda: session.shelf.set_group(name))
        self._shown = ""
        self._fill(name)
        self.students.setFocus()

    def delete(self) -> None:
        """Dissolve the selected group."""
        name, self._shown = self._shown, ""
        session = self._session
        session.guard(lambda: session.shelf.delete_group(name))
        self._fill()

    def done(self, result: int) -> None:
        """Whatever way the dialog is closed, what was written is kept."""
        self.keep()
        super().done(result)
