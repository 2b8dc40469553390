"""What narrows the list of lessons: words, and one choice for each property."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import TypedDict

from PySide6.QtCore import QTimer, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QGridLayout,
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from workbench.language.names import key_words
from workbench.language.speech import mark, say
from workbench.store.shelf import Shelf
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Words
from workbench.ui.shelf.model import instrument_name, named, technique_name

PLACES = (mark("On the shelf"), mark("In the archive"), mark("In the bin"))
#: Words, and the days before today between which a lesson was last used (None: no bound).
WHEN: tuple[tuple[str, int | None, int | None], ...] = (
    (mark("Whenever used"), None, None),
    (mark("Used within a week"), 7, None),
    (mark("Used within a month"), 30, None),
    (mark("Used within three months"), 91, None),
    (mark("Not for a month"), None, 30),
    (mark("Not for three months"), None, 91),
    (mark("Not for a year"), None, 365),
)
GRADES = range(0, 9)
AFTER = 120  # milliseconds: words are looked for when the typing pauses


class Wanted(TypedDict):
    """The filters as the shelf takes them, but for the piece."""

    search: str
    archived: bool | None
    deleted: bool
    student: str | None
    group: str | None
    instrument: str | None
    key: str | None
    technique: str | None
    grades: tuple[int, int] | None
    used_since: datetime | None
    used_before: datetime | None


@dataclass(frozen=True)
class OnShelf:
    """What is on the shelf to choose by, each in its order."""

    groups: tuple[str, ...] = ()
    students: tuple[str, ...] = ()
    instruments: tuple[str, ...] = ()
    keys: tuple[str, ...] = ()
    techniques: tuple[str, ...] = ()


def on_shelf(shelf: Shelf) -> OnShelf:
    """What is on the shelf now. For a job: a shelf may lie far away."""
    return OnShelf(
        tuple(group.name for group in shelf.groups()),
        tuple(shelf.students()),
        tuple(shelf.instruments()),
        tuple(shelf.key_names()),
        tuple(shelf.techniques()),
    )


class ShelfFilters(QWidget):
    """Tells ``changed`` when the list is to be made anew."""

    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.search = QLineEdit()
        self.search.setPlaceholderText(say("Words in title, student, techniques, remarks"))
        self.search.setAccessibleName(say("Search the shelf"))
        self.search.setClearButtonEnabled(True)
        for clear in self.search.findChildren(QToolButton):
            clear.setAccessibleName(say("Clear the search"))
        self.place = self._box(say("Which lessons"))
        self.instrument = self._box(say("Instrument"))
        self.key = self._box(say("Key"))
        self.grade = self._box(say("Grade"))
        self.technique = self._box(say("Technique"))
        self.who = self._box(say("Student or group"))
        self.used = self._box(say("Last used"))
        self.same_piece = QCheckBox(say("Only this &piece"))
        self.same_piece.setToolTip(say("Only lessons on the same piece as the open one"))
        self.clear_button = QPushButton(say("Clear all &filters"))
        self._lay_out()
        self.offer(OnShelf())
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(AFTER)
        self._soon.timeout.connect(self.changed)
        self.search.textChanged.connect(lambda _: self._soon.start())
        for box in self.boxes:
            box.currentIndexChanged.connect(self._now)
        self.same_piece.toggled.connect(self._now)
        self.clear_button.clicked.connect(self.clear)

    def _box(self, name: str) -> QComboBox:
        box = QComboBox()
        named(box, name)
        box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        box.setMinimumContentsLength(12)
        return box

    def _lay_out(self) -> None:
        top = QHBoxLayout()
        find = Words(say("&Find"))
        find.setBuddy(self.search)
        top.addWidget(find)
        top.addWidget(self.search, 1)
        grid = QGridLayout()
        for at, part in enumerate((*self.boxes, self.same_piece)):
            grid.addWidget(part, at // 4, at % 4)
        for column in range(4):
            grid.setColumnStretch(column, 1)
        top.addWidget(self.clear_button)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(em(self, 0.35))
        layout.addLayout(top)
        layout.addLayout(grid)

    @property
    def boxes(self) -> tuple[QComboBox, ...]:
        """The choices, in the order in which they are shown."""
        return (
            self.place, self.who, self.instrument, self.key, self.grade, self.technique,
            self.used,
        )  # fmt: skip

    def offer(self, there: OnShelf) -> None:
        """Offer what is there; what was chosen stays where it is still there."""
        rows: tuple[tuple[QComboBox, list[tuple[str, object]]], ...] = (
            (self.place, [(say(words), at) for at, words in enumerate(PLACES)]),
            (self.who, [
                (say("Any student or group"), None),
                *((say("Group {name}", name=name), ("group", name)) for name in there.groups),
                *((name, ("student", name)) for name in there.students),
            ]),
            (self.instrument, [
                (say("Any instrument"), None),
                *((instrument_name(name), name) for name in there.instruments),
            ]),
            (self.key, [
                (say("Any key"), None),
                *((key_words(key), key) for key in there.keys),
            ]),
            (self.grade, [
                (say("Any grade"), None),
                *((say("Grade {grade}", grade=grade), grade) for grade in GRADES),
            ]),
            (self.technique, [
                (say("Any technique"), None),
                *sorted((technique_name(name), name) for name in there.techniques),
            ]),
            (self.used, [(say(words), at) for at, (words, _, _) in enumerate(WHEN)]),
        )  # fmt: skip
        for box, choices in rows:
            before = box.currentData()
            box.blockSignals(True)
            box.clear()
            for words, value in choices:
                box.addItem(words, value)
            values = [value for _, value in choices]
            box.setCurrentIndex(values.index(before) if before in values else 0)
            box.blockSignals(False)

    def _now(self, *_: object) -> None:
        self._soon.stop()
        self.changed.emit()

    def clear(self) -> None:
        """All lessons on the shelf again."""
        for part in (*self.boxes, self.search, self.same_piece):
            part.blockSignals(True)
        self.search.clear()
        for box in self.boxes:
            box.setCurrentIndex(0)
        self.same_piece.setChecked(False)
        for part in (*self.boxes, self.search, self.same_piece):
            part.blockSignals(False)
        self._now()
        self.search.setFocus()

    @property
    def bin(self) -> bool:
        """Whether the bin is looked into."""
        return bool(self.place.currentData() == 2)

    @property
    def wanted(self) -> Wanted:
        """The filters as the shelf takes them, but for the piece."""
        place, who = self.place.currentData(), self.who.currentData()
        grade = self.grade.currentData()
        _, within, longer = WHEN[self.used.currentData() or 0]
        now = datetime.now(UTC)
        return {
            "search": self.search.text(),
            "archived": None if place == 2 else place == 1,
            "deleted": place == 2,
            "student": who[1] if who and who[0] == "student" else None,
            "group": who[1] if who and who[0] == "group" else None,
            "instrument": self.instrument.currentData(),
            "key": self.key.currentData(),
            "technique": self.technique.currentData(),
            "grades": None if grade is None else (grade, grade),
            "used_since": None if within is None else now - timedelta(days=within),
            "used_before": None if longer is None else now - timedelta(days=longer),
        }
