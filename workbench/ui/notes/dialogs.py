"""What hangs on a note is chosen here: a grip, a rejected fingering, another lesson."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import (
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.teaching.bars.grip_words import Frets, grip_at, grip_from_text, grip_text
from workbench.ui.bench.session import Session
from workbench.ui.kit.asking import Asking
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Faint
from workbench.ui.notes.figures import GripBox

ID = Qt.ItemDataRole.UserRole


class GripDialog(Asking):
    """A grip, typed as frets or taken from the fretboard."""

    def __init__(self, session: Session, grip: Frets | None, parent: QWidget | None = None) -> None:
        super().__init__(say("Grip picture"), say("&Show this grip"), parent)
        self._session = session
        self.grip: Frets | None = None
        self.frets = QLineEdit()
        strings = session.instrument.strings
        hint = Faint(
            say(
                "From string {strings} to string 1: 0 is open, x is not played.",
                strings=strings,
            )
        )
        self.take_button = QPushButton(say("Take the &present grip"))
        self.take_button.setToolTip(say("The grip of the selected note or bar on the fretboard"))
        self.picture = GripBox(session.left_handed)
        layout = QVBoxLayout(self)
        layout.addWidget(self.field(say("&Frets"), self.frets))
        layout.addWidget(self.frets)
        layout.addWidget(hint)
        layout.addWidget(self.take_button)
        layout.addWidget(self.picture, 1, Qt.AlignmentFlag.AlignCenter)
        layout.addWidget(self.problem)
        layout.addWidget(self.buttons)
        self.frets.textChanged.connect(self._typed)
        self.take_button.clicked.connect(self.take_present)
        self.take_button.setEnabled(session.fingers.bar_hands is not None)
        self.picture.show_grip((None,) * strings)
        if grip is not None:
            self.frets.setText(grip_text(grip))
        else:
            self.take_present()
        self._typed()

    def sizeHint(self) -> QSize:
        return QSize(em(self, 22), em(self, 17))

    def take_present(self) -> None:
        """Write down the grip that is on the fretboard now."""
        hands = self._session.fingers.bar_hands
        if hands is not None:
            grip = grip_at(hands, self._session.selection.note_id, self._session.instrument)
            self.frets.setText(grip_text(grip))

    def _typed(self) -> None:
        self.grip, wrong = None, ""
        text = self.frets.text().strip()
        if text:
            try:
                self.grip = grip_from_text(text, self._session.instrument)
            except BadInput as error:
                wrong = str(error)
        self.problem.say(wrong)
        self.ok.setEnabled(self.grip is not None)
        if self.grip is not None:
            self.picture.show_grip(self.grip)


class LinkDialog(Asking):
    """Another lesson of the shelf."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(say("Lesson that teaches the move"), say("&Point to it"), parent)
        self._session = session
        self.search = QLineEdit()
        self.search.setClearButtonEnabled(True)
        for clear in self.search.findChildren(QToolButton):
            clear.setAccessibleName(say("Clear the search"))
        self.list = QListWidget()
        layout = QVBoxLayout(self)
        layout.addWidget(self.field(say("&Words in title, remarks or techniques"), self.search))
        layout.addWidget(self.search)
        layout.addWidget(self.field(say("&Lessons"), self.list))
        layout.addWidget(self.list, 1)
        layout.addWidget(self.problem)
        layout.addWidget(self.buttons)
        self.search.textChanged.connect(self._fill)
        self.list.currentRowChanged.connect(lambda row: self.ok.setEnabled(row >= 0))
        self.list.itemDoubleClicked.connect(lambda _: self.accept())
        self._fill()

    def sizeHint(self) -> QSize:
        return QSize(em(self, 28), em(self, 22))

    @property
    def chosen(self) -> str | None:
        """The id of the lesson that is selected."""
        item = self.list.currentItem()
        return str(item.data(ID)) if item is not None else None

    def _fill(self) -> None:
        session = self._session
        here = session.lesson.id if session.lesson else ""
        self.list.clear()
        try:
            rows = session.shelf.lessons(self.search.text(), archived=None, limit=500)
        except BadInput as wrong:
            self.problem.say(str(wrong))
            return
        for row in rows:
            if row.id == here:
                continue
            item = QListWidgetItem(
                say("{title}, for {student}", title=row.title, student=row.student)
                if row.student
                else row.title
            )
            item.setData(ID, row.id)
            self.list.addItem(item)
        self.list.setCurrentRow(0 if self.list.count() else -1)
        self.ok.setEnabled(self.list.count() > 0)
        nothing = say("There is no other lesson with these words.")
        self.problem.say("" if self.list.count() else nothing)
