"""The techniques of the piece: where they are, what they ask, what was taught before."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QListWidgetItem,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from workbench.fingering.types import Fingering
from workbench.language.names import as_first_word
from workbench.language.speech import say
from workbench.music.bar_names import bar_name, bars_named
from workbench.music.beats import counted_beat
from workbench.music.model import Piece
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.lessons.playing import playing_of
from workbench.teaching.techniques.catalogue import Found
from workbench.teaching.techniques.news import (
    Pair,
    Profile,
    Seen,
    Suggestion,
    kind_words,
    pairs,
    seen_before,
    teach_next,
)
from workbench.teaching.techniques.occurrence import Occurrence
from workbench.ui.bench.findings import Analysis, Company, Findings
from workbench.ui.bench.jobs import Progress
from workbench.ui.bench.session import Session
from workbench.ui.kit.look import em
from workbench.ui.kit.panes import Panes
from workbench.ui.kit.parts import Faint, Heading, Scrolled, Wrapped
from workbench.ui.kit.word_list import WordList
from workbench.ui.views.page import Filling, TeachingPage
from workbench.ui.views.techniques.exercises import ExercisePane
from workbench.ui.views.techniques.harmony import Found as Heard
from workbench.ui.views.techniques.harmony import HarmonyView, look_at
from workbench.ui.views.techniques.shelf import NewAndNext

DATA = Qt.ItemDataRole.UserRole
Known = tuple[
    Analysis,
    Company,
    tuple[Seen, ...],
    tuple[Suggestion, ...],
    tuple[Pair, ...],
    Heard,
]


class TechniqueView(TeachingPage):
    """Three pages: the techniques with their exercises, what is new and next, and form
    and harmony."""

    def __init__(self, session: Session, findings: Findings, parent: QWidget | None = None) -> None:
        filling = Filling("techniques", say("Looking for techniques"), self.work, self.show_found)
        super().__init__(session, findings, filling, parent)
        self.analysis: Analysis | None = None
        self.company: Company | None = None
        self.seen: tuple[Seen, ...] = ()
        self.suggestions: tuple[Suggestion, ...] = ()
        self.pairs: tuple[Pair, ...] = ()
        self._finger_all = False
        self._filling = False
        self.list = _rows(say("Techniques in the piece"))
        self.name = Heading("")
        self.name.setWordWrap(True)
        self.asks = Wrapped()
        self.watch = Wrapped()
        self.taught = Faint()
        self.places = _rows(say("Where it occurs"))
        self.exercise = ExercisePane(session)
        self.shelf = NewAndNext(session)
        self.new, self.next = self.shelf.new, self.shelf.next
        self.compared, self.open_button = self.shelf.compared, self.shelf.open_button
        self.harmony = HarmonyView(session)
        self._lay_out()
        self.list.currentRowChanged.connect(self._show_technique)
        self.places.itemClicked.connect(self._go_to)
        self.places.itemActivated.connect(self._go_to)
        self.places.currentItemChanged.connect(lambda item, _: self._show_exercise(item))
        self.shelf.finger_button.clicked.connect(self.finger_all)
        session.opened.connect(self._forget)

    def _lay_out(self) -> None:
        inner = QWidget()
        told = QVBoxLayout(inner)
        told.setContentsMargins(em(self, 0.4), 0, em(self, 0.3), 0)
        where = _label(say("W&here it occurs"), self.places)
        self.places.setMinimumHeight(em(self, 4))
        self.places.setMaximumHeight(em(self, 7))
        for part in (
            self.name, self.asks, self.watch, self.taught, where, self.places,
            Heading(say("Exercises")), self.exercise,
        ):  # fmt: skip
            told.addWidget(part)
        told.addStretch(1)
        self.area = Scrolled(inner, say("The technique in full"))
        left = QWidget()
        column = QVBoxLayout(left)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(_label(say("&Techniques"), self.list))
        column.addWidget(self.list, 1)
        parts = Panes(Qt.Orientation.Horizontal)
        parts.setObjectName("techniques")
        parts.addWidget(left)
        parts.addWidget(self.area)
        parts.setStretchFactor(0, 2)
        parts.setStretchFactor(1, 3)
        parts.setSizes([em(self, 14), em(self, 28)])
        parts.setChildrenCollapsible(False)
        parts.splitterMoved.connect(self._fit)
        self.pages = QTabWidget()
        self.pages.setDocumentMode(True)
        self.pages.setAccessibleName(say("Techniques, what is new, form and harmony"))
        self.pages.addTab(parts, say("Where and how"))
        self.pages.addTab(self.shelf, say("New and next"))
        self.pages.addTab(self.harmony, say("Form and harmony"))
        page = QVBoxLayout(self.body)
        page.addWidget(self.pages)

    def _fit(self) -> None:
        self.exercise.set_narrow(self.area.width() < em(self, 26))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    # Working it out.

    def work(self, lesson: Lesson, fingering: Fingering) -> Callable[[Progress], Known]:
        """What to do behind the interface."""
        everything, findings = self._finger_all, self.findings
        instrument, _ = playing_of(lesson)

        def work(progress: Progress) -> Known:
            analysis = findings.analysis(lesson, fingering)
            company = findings.company(lesson, fingering, progress, finger_all=everything)
            seen = seen_before(analysis.moves, company.earlier, company.others)
            shelf = (*company.earlier, *company.others)
            onward = teach_next(shelf, (*company.earlier, company.here), has=company.has)
            beside = pairs(shelf, company.here, 3)
            return analysis, company, seen, onward, beside, look_at(lesson, fingering, instrument)

        return work

    def _forget(self) -> None:
        self._finger_all = False
        self.findings.look_again()

    def finger_all(self) -> None:
        """Finger the lessons of the shelf that are not, and compare with all of them."""
        self._finger_all = True
        self.ask()

    def show_found(self, lesson: Lesson, found: Known) -> None:
        """Show techniques, what is new, what to teach next, form and harmony."""
        (self.analysis, self.company, self.seen, self.suggestions, self.pairs, harmony) = found
        self._filling = True
        before = self.list.currentItem()
        chosen = before.data(DATA) if before else None
        self.list.clear()
        for found_one in self.analysis.found:
            item = QListWidgetItem(_technique_words(lesson.piece, found_one, self.seen))
            item.setData(DATA, found_one.technique.id)
            self.list.addItem(item)
        ids = [f.technique.id for f in self.analysis.found]
        self.list.setCurrentRow(ids.index(chosen) if chosen in ids else 0)
        self._filling = False
        self._show_technique(self.list.currentRow())
        self._fit()
        self.shelf.show_found(lesson, self.company, self.seen, self.suggestions, self.pairs)
        self.harmony.show_found(lesson.piece, harmony)

    # The selected technique.

    @property
    def current(self) -> Found | None:
        """The selected technique with its places."""
        row = self.list.currentRow()
        found = self.analysis.found if self.analysis else ()
        return found[row] if 0 <= row < len(found) else None

    def _show_technique(self, _row: int) -> None:
        found, lesson = self.current, self.session.lesson
        if self._filling or found is None or lesson is None:
            return
        entry = found.technique
        self.name.setText(
            say(
                "{technique} ({family})",
                technique=as_first_word(say(entry.name)),
                family=say(entry.family),
            )
        )
        self.name.setAccessibleName(self.name.text())
        self.asks.setText(say(entry.asks))
        self.watch.setText(say("Watch for: {what}", what=say(entry.watch)) if entry.watch else "")
        taught = _taught(found, self.seen)
        self.taught.setText(
            say("First taught in '{title}'.", title=taught.title)
            if taught
            else say("Not taught in an earlier lesson.")
        )
        self.places.clear()
        for place in found.occurrences:
            item = QListWidgetItem(_place_words(lesson.piece, place))
            item.setData(DATA, (place.bar, place.notes[0] if place.notes else None))
            self.places.addItem(item)
        self.places.setCurrentRow(0)
        self.area.verticalScrollBar().setValue(0)

    def _show_exercise(self, item: QListWidgetItem | None) -> None:
        found = self.current
        if item is not None and found is not None:
            self.exercise.show_for(found.technique, item.data(DATA)[0])

    def _go_to(self, item: QListWidgetItem) -> None:
        """Select the bar, and the note, that a row speaks of."""
        place = item.data(DATA)
        if place is not None:
            bar, note = place
            self.session.selection.select(self.session.selection.position_of(bar), note)


def _rows(name: str) -> WordList:
    rows = WordList()
    rows.setAccessibleName(name)
    return rows


def _label(words: str, rows: QWidget) -> Heading:
    label = Heading(words)
    label.setAccessibleName(words.replace("&", ""))
    label.setBuddy(rows)
    return label


def _taught(found: Found, seen: tuple[Seen, ...]) -> Profile | None:
    """The lesson that first taught a technique, in any of its kinds."""
    for row in seen:
        name = row.move.name.partition(": ")[0]
        if row.move.kind == "technique" and name == found.technique.id and row.taught_in:
            return row.taught_in
    return None


def _technique_words(piece: Piece, found: Found, seen: tuple[Seen, ...]) -> str:
    name = as_first_word(say(found.technique.name))
    if _taught(found, seen) is None:
        name = say("{technique}, new", technique=name)
    return f"{name}\n{bars_named(piece, found.bars)}"


def _place_words(piece: Piece, place: Occurrence) -> str:
    bar = piece.bars[place.bar]
    words = say(
        "{bar}, beat {beat}",
        bar=as_first_word(bar_name(bar.number)),
        beat=counted_beat(bar, place.onset),
    )
    return f"{words}: {kind_words(place.detail)}" if place.detail else words
