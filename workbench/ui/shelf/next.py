"""What to teach next, for each student or group: lessons of the shelf, with the reasons."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QComboBox,
    QHBoxLayout,
    QListWidgetItem,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from workbench.language.speech import count, say
from workbench.store.shelf import Shelf
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.lessons.playing import fingered_on
from workbench.teaching.techniques.news import Move, Pair, Suggestion, pairs, teach_next
from workbench.ui.bench.findings import LANE, Findings
from workbench.ui.bench.jobs import Progress
from workbench.ui.bench.services import Services
from workbench.ui.bench.session import Session
from workbench.ui.kit.parts import Faint, Words
from workbench.ui.kit.word_list import WordList

PARTNERS = 3
ANY_GRADE = 9.0
NAMED = 3  # moves named in a sentence; the rest is counted
ID = Qt.ItemDataRole.UserRole


@dataclass(frozen=True)
class Onward:
    """What was found for somebody: the lesson taught last, what follows it, what goes
    beside it, and how many lessons of the shelf could not be compared. Where nothing lies
    near enough the suggestions are ``further`` off than they should be."""

    last: Lesson
    suggestions: tuple[Suggestion, ...]
    beside: tuple[Pair, ...]
    missing: int
    further: bool


class ShelfNext(QWidget):
    """Tells ``opened`` when a suggested lesson was put on the bench."""

    opened = Signal()

    def __init__(self, session: Session, findings: Findings, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session, self._findings = session, findings
        self.found: Onward | None = None
        self.who = QComboBox()
        self.who.setAccessibleName(say("For whom"))
        self.last = Faint()
        self.list = WordList()
        self.list.setAccessibleName(say("What to teach next"))
        self.open_button = QPushButton(say("&Open"))
        self.finger_button = QPushButton(say("Finger those &missing"))
        self.finger_button.setToolTip(
            say("Work out the fingering of every lesson that has none yet, then compare again")
        )
        label = Words(say("&For whom"))
        label.setBuddy(self.who)
        top, bottom = QHBoxLayout(), QHBoxLayout()
        top.addWidget(label)
        top.addWidget(self.who, 1)
        bottom.addWidget(self.open_button)
        bottom.addWidget(self.finger_button)
        bottom.addStretch(1)
        layout = QVBoxLayout(self)
        layout.addLayout(top)
        layout.addWidget(self.last)
        layout.addWidget(self.list, 1)
        layout.addLayout(bottom)
        self.finger_button.hide()
        self.who.currentIndexChanged.connect(lambda _: self.refresh())
        self.list.currentRowChanged.connect(lambda _: self._enable())
        self.list.itemActivated.connect(lambda _: self.open_lesson())
        self.open_button.clicked.connect(self.open_lesson)
        self.finger_button.clicked.connect(lambda: self.refresh(finger_all=True))

    def look(self) -> None:
        """See for whom there are lessons, then what follows for the student of the open one."""
        shelf = self._session.shelf
        self.last.setText(say("Comparing the lessons …"))
        self._session.jobs.start(
            "shelf students", say("Looking through the shelf"),
            lambda _: (*(group.name for group in shelf.groups()), *shelf.students()),
            self._fill, lane=LANE, wrong=self.last.setText,
        )  # fmt: skip

    def _fill(self, found: tuple[str, ...]) -> None:
        lesson, names = self._session.lesson, tuple(dict.fromkeys(found))
        self.who.blockSignals(True)
        self.who.clear()
        for name in names:
            self.who.addItem(name, name)
        self.who.addItem(say("lessons for nobody by name"), "")
        here = lesson.student if lesson else ""
        self.who.setCurrentIndex(max(0, self.who.findData(here)))
        self.who.blockSignals(False)
        self.refresh()

    def refresh(self, *, finger_all: bool = False) -> None:
        """Look for what follows the last lesson of the one chosen, in the background."""
        name = self.who.currentData()
        self.list.clear()
        self.finger_button.hide()
        self._enable()
        self.last.setText(say("Comparing the lessons …"))
        shelf, services, findings = self._session.shelf, self._session.services, self._findings
        self._session.jobs.start(
            "shelf next", say("Comparing the lessons"),
            lambda progress: _onward(name, shelf, services, findings, progress, finger_all),
            self._show, lane=LANE, wrong=self.last.setText,
        )  # fmt: skip

    def _show(self, found: Onward | None) -> None:
        self.found = found
        self.list.clear()
        if found is None:
            self.last.setText(say("No lesson on the shelf is for them yet."))
            self._enable()
            return
        words = say("Taught last: '{title}'.", title=found.last.title)
        if found.missing:
            words += " " + count(
                found.missing,
                "{n} lesson is not fingered yet and not compared.",
                "{n} lessons are not fingered yet and not compared.",
            )
        self.last.setText(words)
        self.finger_button.setVisible(found.missing > 0)
        if found.further and found.suggestions:
            self._only_say(say("Nothing that fits lies within a grade. Further off:"))
        for suggestion in found.suggestions:
            self._offer(_next_words(suggestion), suggestion.profile.id)
        for pair in found.beside:
            self._offer(_beside_words(pair), pair.second.id)
        if not self.list.count():
            self._only_say(
                say(
                    "No fingered lesson for this instrument takes up what is new here. Import "
                    "another score, or finger the lessons that have no fingering yet."
                )
            )
        else:
            self.list.setCurrentRow(1 if found.further and found.suggestions else 0)
        self._enable()

    def _only_say(self, words: str) -> None:
        item = QListWidgetItem(words)
        item.setFlags(Qt.ItemFlag.NoItemFlags)
        self.list.addItem(item)

    def _offer(self, words: str, lesson_id: str) -> None:
        item = QListWidgetItem(words)
        item.setData(ID, lesson_id)
        self.list.addItem(item)

    @property
    def _picked(self) -> str | None:
        item = self.list.currentItem()
        return str(item.data(ID)) if item and item.data(ID) else None

    def _enable(self) -> None:
        self.open_button.setEnabled(self._picked is not None)

    def open_lesson(self) -> None:
        """Open the selected lesson."""
        picked = self._picked
        if picked is not None and self._session.open(picked):
            self.opened.emit()


def _onward(
    name: str, shelf: Shelf, services: Services, findings: Findings, progress: Progress,
    finger_all: bool,
) -> Onward | None:  # fmt: skip
    """What follows the last lesson of a student or group; None where they have none."""
    rows = [row for row in shelf.lessons(archived=None) if row.student == name]
    if not rows:
        return None
    lesson = shelf.load(max(rows, key=lambda row: (row.created, row.id)).id)
    fingering = shelf.cached_fingering(lesson)
    if fingering is None:
        fingering = services.solver(lesson, *fingered_on(lesson), None).solution()
        shelf.put_fingering(lesson, fingering)
    if finger_all:
        findings.look_again()
    company = findings.company(lesson, fingering, progress, finger_all=finger_all)
    every, taught = (*company.earlier, *company.others), (*company.earlier, company.here)
    near = teach_next(every, taught, has=company.has)
    return Onward(
        lesson,
        near or teach_next(every, taught, within=ANY_GRADE, has=company.has),
        pairs(every, company.here, PARTNERS),
        company.missing,
        further=not near,
    )


def _next_words(suggestion: Suggestion) -> str:
    title, grade = suggestion.profile.title, int(suggestion.profile.grade)
    head = say("Next: {title}, grade {grade}", title=title, grade=grade)
    return f"{head}\n{suggestion.reason}"


def _beside_words(pair: Pair) -> str:
    head = say("Side by side: {title}", title=pair.second.title)
    told = say(
        "Both have {shared}; it has besides {alone}.",
        shared=_moves(pair.shared), alone=_moves(pair.only_second) or say("nothing of its own"),
    )  # fmt: skip
    return f"{head}\n{told}"


def _moves(moves: tuple[Move, ...]) -> str:
    words = ", ".join(str(move.words) for move in moves[:NAMED])
    more = len(moves) - NAMED
    return say("{moves} and {n} more", moves=words, n=more) if more > 0 else words
