"""Other fingerings of the selected bar, with their reasons; Enter takes one."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QHBoxLayout,
    QListWidgetItem,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from workbench.fingering.types import Alternative, FingeredNote
from workbench.ui.parts import Caution, Faint, Heading
from workbench.ui.session import Session
from workbench.ui.word_list import WordList


def compared(other: Alternative, now: tuple[FingeredNote, ...]) -> str:
    """How many notes lie elsewhere, and how many are cut, against the present fingering."""
    here = {note.id: note for note in now}
    moved = sum(
        (n.string, n.fret, n.left) != (here[n.id].string, here[n.id].fret, here[n.id].left)
        for n in other.notes
        if n.id in here
    )
    cut = sum(n.cut_reason is not None for n in other.notes)
    was = sum(n.cut_reason is not None for n in now)
    words = f"{moved} of {len(other.notes)} notes differ"
    return f"{words}; {cut} cut (now {was})" if cut != was else words


class Choices(QWidget):
    """The list of other fingerings, and what the present one asks of the hand."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self.heading = Heading("Other fingerings of this bar")
        self.remarks = Faint()
        self.caution = Caution()
        self.list = _Rows(self)
        self.list.setAccessibleName("Other fingerings of this bar")
        self.status = Faint()
        self.take_button = QPushButton("&Take it")
        self.take_button.setToolTip("Keep the selected fingering (Enter)")
        self.keep_button = QPushButton("&Pin this bar")
        self.keep_button.setToolTip("Keep the bar's present fingering whatever changes around it")
        self.compare_button = QPushButton("&Compare")
        self.compare_button.setToolTip("Set the selected fingering beside the present one")
        buttons = QHBoxLayout()
        buttons.addWidget(self.take_button)
        buttons.addWidget(self.compare_button)
        buttons.addWidget(self.keep_button)
        buttons.addStretch(1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.heading)
        layout.addWidget(self.remarks)
        layout.addWidget(self.caution)
        layout.addWidget(self.list, 1)
        layout.addWidget(self.status)
        layout.addLayout(buttons)
        self.take_button.clicked.connect(self.take)
        self.keep_button.clicked.connect(self.keep)
        self.compare_button.clicked.connect(self.compare)
        self.list.itemDoubleClicked.connect(lambda _: self.take())
        for signal in (
            session.opened, session.fingered, session.selected, session.choices_changed,
        ):  # fmt: skip
            signal.connect(self.refresh)
        self.refresh()

    def refresh(self) -> None:
        """Show what the session has found."""
        session = self._session
        hands = session.bar_hands
        choices = session.choices
        self.list.clear()
        for other in choices or ():
            words = f"{other.reason}\n{compared(other, hands.notes if hands else ())}"
            item = QListWidgetItem(words)
            item.setToolTip(words)
            self.list.addItem(item)
        if choices:
            self.list.setCurrentRow(0)
        if session.lesson is None:
            status = ""
        elif hands is not None and hands.impossible:
            status = hands.impossible
        elif choices is None:
            status = "Looking for other fingerings …"
        elif not choices:
            status = "There is no other fingering worth naming."
        else:
            status = ""
        self.status.setText(status)
        self.status.setVisible(bool(status))
        self.list.setVisible(bool(choices))
        self.take_button.setEnabled(bool(choices))
        self.compare_button.setEnabled(bool(choices) and hands is not None)
        self.keep_button.setEnabled(hands is not None)
        self.remarks.setText("\n".join(hands.remarks) if hands else "")
        self.remarks.setVisible(bool(hands and hands.remarks))
        self.caution.say(stretch_caution(session))

    def take(self) -> None:
        """Take the selected fingering."""
        self._session.take_choice(self.list.currentRow())

    def compare(self) -> None:
        """Show what the selected fingering would cost, in a table; it can be taken there."""
        from workbench.ui.compare_dialog import CompareDialog

        hands, choices, row = self._session.bar_hands, self._session.choices, self.list.currentRow()
        if hands is None or not choices or not 0 <= row < len(choices):
            return
        other = choices[row]
        if other.bar is None:
            return
        if CompareDialog(hands, other.bar, other.reason, self).exec():
            self._session.take_choice(row)

    def keep(self) -> None:
        """Pin the bar as it is."""
        from workbench.ui import edits

        hands = self._session.bar_hands
        if hands is not None:
            self._session.edit(
                "Pin the bar", lambda lesson: edits.pin_all(lesson, hands.notes)
            )


class _Rows(WordList):
    def __init__(self, owner: Choices) -> None:
        super().__init__()
        self._owner = owner

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._owner.take()
        else:
            super().keyPressEvent(event)


def stretch_caution(session: Session) -> str:
    """A caution where the bar asks for more than the hand spans in comfort."""
    hands = session.bar_hands
    if session.lesson is None or hands is None:
        return ""
    hand = session.hand
    if hands.reach_mm <= hand.comfort_14:
        return ""
    name = "this" if hand.name.startswith("own:") else f"a {hand.name}"
    return (
        f"Wide stretch: {hands.reach_mm:.0f} mm; {name} hand spans {hand.comfort_14:.0f} mm "
        "in comfort. Warm up first, rest often, and stop if it hurts."
    )
