"""What an earlier session could not save, offered at the next start."""

from __future__ import annotations

from PySide6.QtCore import QDateTime, QLocale, QSize
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QListWidget, QVBoxLayout, QWidget

from workbench.language.speech import chosen, say
from workbench.store.recovery import Unsaved
from workbench.ui.bench.session import Session
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Caution, Heading, Words, Wrapped


class LeftDialog(QDialog):
    """The lessons with changes that were written aside."""

    def __init__(self, session: Session, left: tuple[Unsaved, ...], parent: QWidget | None) -> None:
        super().__init__(parent)
        self._session, self.left = session, list(left)
        name = say("Changes that were not saved")
        self.setWindowTitle(name)
        self.setAccessibleName(name)
        self.list = QListWidget()
        self.list.setAccessibleName(say("Lessons with changes"))
        label = Words(say("&Lessons with changes"))
        label.setBuddy(self.list)
        self.problem = Caution()
        self.buttons = QDialogButtonBox()
        self.back_button = self.buttons.addButton(
            say("&Put back"), QDialogButtonBox.ButtonRole.ActionRole
        )
        self.back_button.setToolTip(say("Open the lesson with the changes; undo takes them back"))
        self.back_button.setDefault(True)
        self.drop_button = self.buttons.addButton(
            say("&Throw away"), QDialogButtonBox.ButtonRole.ActionRole
        )
        later = self.buttons.addButton(say("&Later"), QDialogButtonBox.ButtonRole.RejectRole)
        later.setToolTip(say("They are offered again at the next start"))
        layout = QVBoxLayout(self)
        layout.addWidget(Heading(name))
        layout.addWidget(
            Wrapped(
                say(
                    "The store could not take these changes when they were made; they were "
                    "written aside. Put them back into their lessons, or throw them away."
                )
            )
        )
        layout.addWidget(label)
        layout.addWidget(self.list, 1)
        layout.addWidget(self.problem)
        layout.addWidget(self.buttons)
        self.buttons.rejected.connect(self.reject)
        self.back_button.clicked.connect(self.put_back)
        self.drop_button.clicked.connect(self.throw_away)
        self._fill()

    def sizeHint(self) -> QSize:
        return QSize(em(self, 34), em(self, 20))

    def _fill(self) -> None:
        self.list.clear()
        locale = QLocale(chosen())
        for kept in self.left:
            made = QDateTime.fromSecsSinceEpoch(int(kept.made.timestamp()))
            when = locale.toString(made, QLocale.FormatType.ShortFormat)
            self.list.addItem(
                say("{title}: {label} ({when})", title=kept.lesson.title, label=kept.label,
                    when=when)
            )  # fmt: skip
        self.list.setCurrentRow(0)
        if not self.left:
            self.accept()

    def put_back(self) -> None:
        """The selected changes become a step of their lesson, which is opened."""
        kept = self.left[self.list.currentRow()]
        if self._session.keeper.put_back(kept):
            self.left.remove(kept)
            self._fill()
        else:
            self.problem.say(say("The store does not take them yet; they stay where they are."))

    def throw_away(self) -> None:
        """Forget the selected changes for good."""
        kept = self.left.pop(self.list.currentRow())
        self._session.keeper.recovery.drop(kept.lesson.id)
        self._fill()
