"""Which keys, or pedals that send keys, turn the reading view."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QKeyEvent, QKeySequence
from PySide6.QtWidgets import QGridLayout, QLineEdit, QPushButton, QVBoxLayout, QWidget

from workbench.language.speech import say
from workbench.ui.bench.session import Session
from workbench.ui.kit.asking import Asking
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Faint

ONWARD = (Qt.Key.Key_PageDown, Qt.Key.Key_Space, Qt.Key.Key_Down, Qt.Key.Key_Right,
          Qt.Key.Key_Return, Qt.Key.Key_Enter)  # fmt: skip
BACK = (Qt.Key.Key_PageUp, Qt.Key.Key_Backspace, Qt.Key.Key_Up, Qt.Key.Key_Left)
#: Keys that say nothing by themselves, or that get out of the dialog.
NOT_MEANT = (Qt.Key.Key_Shift, Qt.Key.Key_Control, Qt.Key.Key_Alt, Qt.Key.Key_Meta,
             Qt.Key.Key_Tab, Qt.Key.Key_Backtab, Qt.Key.Key_Escape)  # fmt: skip


class PedalKeys:
    """The keys that turn onward and back: the usual ones, and those the teacher chose,
    which come first."""

    def __init__(self, kept: object) -> None:
        found = kept if isinstance(kept, dict) else {}
        self.onward = _numbers(found.get("onward"))
        self.back = _numbers(found.get("back"))

    def turns(self, key: int) -> int:
        """+1 for a key that turns onward, -1 for one that turns back, else 0."""
        for keys, by in ((self.onward, 1), (self.back, -1), (ONWARD, 1), (BACK, -1)):
            if key in {int(k) for k in keys}:
                return by
        return 0

    def as_kept(self) -> dict[str, list[int]]:
        """As the shelf keeps it."""
        return {"onward": list(self.onward), "back": list(self.back)}


class KeyField(QLineEdit):
    """Takes the next key that is pressed."""

    def __init__(self, keys: Iterable[int], name: str) -> None:
        super().__init__()
        self.keys = list(keys)
        self.setReadOnly(True)
        self.setAccessibleName(name)
        self.setPlaceholderText(say("Click here and press the pedal or key"))
        self._tell()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in NOT_MEANT:
            super().keyPressEvent(event)
        elif int(event.key()) not in self.keys:
            self.keys.append(int(event.key()))
            self._tell()

    def forget(self) -> None:
        """Take all keys away."""
        self.keys = []
        self._tell()

    def _tell(self) -> None:
        self.setText(", ".join(QKeySequence(key).toString() or str(key) for key in self.keys))


class PedalDialog(Asking):
    """Learns the keys of a pedal by having it pressed."""

    def __init__(self, session: Session, keys: PedalKeys, parent: QWidget | None = None) -> None:
        super().__init__(say("Pedal keys"), say("&Keep them"), parent)
        self.onward = KeyField(keys.onward, say("Keys that turn onward"))
        self.back = KeyField(keys.back, say("Keys that turn back"))
        rows = QGridLayout()
        for row, (words, field) in enumerate(
            ((say("&Onward"), self.onward), (say("&Back"), self.back))
        ):
            off = QPushButton(say("Clear"))
            off.setAccessibleName(say("Clear: {what}", what=field.accessibleName()))
            off.clicked.connect(field.forget)
            label = self.field(words, field)
            field.setAccessibleName(
                say("Keys that turn onward") if field is self.onward else say("Keys that turn back")
            )
            rows.addWidget(label, row, 0)
            rows.addWidget(field, row, 1)
            rows.addWidget(off, row, 2)
        layout = QVBoxLayout(self)
        layout.addWidget(
            Faint(
                say(
                    "Page Down, space and the arrows always turn the page; a pedal that sends "
                    "other keys is learnt here."
                )
            )
        )
        layout.addLayout(rows)
        layout.addWidget(self.problem)
        layout.addWidget(self.buttons)
        self._session = session

    def sizeHint(self) -> QSize:
        return QSize(em(self, 28), em(self, 11))

    def accept(self) -> None:
        """Keep the keys, unless one is to turn both ways."""
        both = set(self.onward.keys) & set(self.back.keys)
        if both:
            key = QKeySequence(min(both)).toString()
            self.problem.say(say("{key} cannot turn both ways; clear one of them.", key=key))
            return
        super().accept()

    @property
    def chosen(self) -> PedalKeys:
        """The keys as they are now."""
        return PedalKeys({"onward": self.onward.keys, "back": self.back.keys})


def _numbers(kept: object) -> tuple[int, ...]:
    rows = kept if isinstance(kept, list | tuple) else ()
    return tuple(key for key in rows if isinstance(key, int))
