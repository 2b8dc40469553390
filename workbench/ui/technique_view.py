"""The techniques of the piece: where they are, what they ask, what was taught before."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QScrollArea,
    QSplitter,
    QVBoxLayout,
    QWidget,
)

from workbench.fingering.types import Fingering
from workbench.music.model import Piece
from workbench.teaching.exercises import exercises_for
from workbench.teaching.lesson import Lesson
from workbench.teaching.occurrence import Occurrence
from workbench.teaching.seen import Pair, Profile, Seen, Suggestion, pairs, seen_before, teach_next
from workbench.teaching.strokes import bar_name, bars_in_words, beat_number
from workbench.teaching.techniques import Found
from workbench.ui.findings import Analysis, Company, Findings
from workbench.ui.jobs import Progress
from workbench.ui.look import em
from workbench.ui.parts import Faint, Heading, Wrapped
from workbench.ui.session import Session
from workbench.ui.teaching_page import TeachingPage

DATA = Qt.ItemDataRole.UserRole


class TechniqueView(TeachingPage):
    """Techniques to the left, the selected one in full to the right, the shelf below."""

    def __init__(self, session: Session, findings: Findings, parent: QWidget | None = None) -> None:
        super().__init__(session, findings, "techniques", parent)
        self.analysis: Analysis | None = None
        self.company: Company | None = None
        self.seen: tuple[Seen, ...] = ()
        self.suggestions: tuple[Suggestion, ...] = ()
        self.pairs: tuple[Pair, ...] = ()
        self._finger_all = False
        self._filling = False
        self.list = _rows("Techniques in the piece")
        self.name = Heading("")
        self.asks = Wrapped()
        self.watch = Wrapped()
        self.taught = Faint()
        self.places = _rows("Where it occurs")
        self.exercise = Wrapped()
        self.exercise.setAccessibleName("Exercises")
        self.new_heading = Heading("New in this piece")
        self.new = _rows("New in this piece, and what is known")
        self.next = _rows("Pieces to teach next, and to work on side by side")
        self.compared = Faint()
        self.finger_button = QPushButton("&Finger the others")
        self.finger_button.setToolTip("Finger the lessons that never were, to compare with them")
        self.open_button = QPushButton("&Open this lesson")
        self.open_button.setToolTip("Open the lesson that is selected in the list above")
        self._lay_out()
        self.list.currentRowChanged.connect(self._show_technique)
        self.places.itemClicked.connect(self._go_to)
        self.places.itemActivated.connect(self._go_to)
        self.new.itemClicked.connect(self._go_to)
        self.new.itemActivated.connect(self._go_to)
        self.places.currentItemChanged.connect(lambda item, _: self._show_exercise(item))
        self.next.currentRowChanged.connect(lambda row: self.open_button.setEnabled(row >= 0))
        self.next.itemActivated.connect(lambda _: self.open_next())
        self.open_button.clicked.connect(self.open_next)
        self.finger_button.clicked.connect(self.finger_all)
        session.opened.connect(self._forget)

    def _lay_out(self) -> None:
        inner = QWidget()
        told = QVBoxLayout(inner)
        told.setContentsMargins(em(self, 0.4), 0, em(self, 0.3), 0)
        where = _label("W&here it occurs", self.places)
        self.places.setMinimumHeight(em(self, 5))
        for part in (
            self.name, self.asks, self.watch, self.taught, where, self.places,
            Heading("Exercises"), self.exercise,
        ):  # fmt: skip
            told.addWidget(part)
        told.addStretch(1)
        area = QScrollArea()
        area.setWidget(inner)
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.viewport().setAutoFillBackground(False)
        inner.setAutoFillBackground(False)
        area.setAccessibleName("The technique in full")
        above = QSplitter(Qt.Orientation.Horizontal)
        above.addWidget(_column(_label("&Techniques", self.list), self.list))
        above.addWidget(area)
        above.setStretchFactor(0, 2)
        above.setStretchFactor(1, 3)
        above.setSizes([em(self, 16), em(self, 26)])
        buttons = QHBoxLayout()
        buttons.addWidget(self.open_button)
        buttons.addWidget(self.finger_button)
        buttons.addStretch(1)
        onward = _column(_label("Teach &next, or side by side", self.next), self.next)
        layout = onward.layout()
        assert isinstance(layout, QVBoxLayout)
        layout.addLayout(buttons)
        below = QSplitter(Qt.Orientation.Horizontal)
        below.addWidget(_column(self.new_heading, self.new))
        below.addWidget(onward)
        below.setSizes([em(self, 20), em(self, 22)])
        whole = QSplitter(Qt.Orientation.Vertical)
        whole.addWidget(above)
        whole.addWidget(below)
        whole.setSizes([em(self, 22), em(self, 13)])
        for split in (above, below, whole):
            split.setChildrenCollapsible(False)
        page = QVBoxLayout(self.body)
        page.addWidget(whole, 1)
        page.addWidget(self.compared)

    # Working it out.

    @property
    def label(self) -> str:
        return "Looking for techniques"

    def work(self, lesson: Lesson, fingering: Fingering) -> Callable[[Progress], Any]:
        everything = self._finger_all

        def work(progress: Progress) -> tuple[Any, ...]:
            analysis = self.findings.analysis(lesson, fingering)
            company = self.findings.company(lesson, fingering, progress, finger_all=everything)
            seen = seen_before(analysis.moves, company.earlier, company.others)
            shelf = (*company.earlier, *company.others)
            onward = teach_next(shelf, (*company.earlier, company.here))
            beside = pairs(shelf, company.here, 3)
            return analysis, company, seen, onward, beside

        return work

    def _forget(self) -> None:
        self._finger_all = False
        self.findings.look_again()

    def finger_all(self) -> None:
        """Finger the lessons of the shelf that are not, and compare with all of them."""
        self._finger_all = True
        self.ask()

    def show_found(self, lesson: Lesson, found: Any) -> None:
        """Show techniques, what is new, and what to teach next."""
        self.analysis, self.company, self.seen, self.suggestions, self.pairs = found
        piece, company = lesson.piece, self.company
        self._filling = True
        before = self.list.currentItem()
        chosen = before.data(DATA) if before else None
        self.list.clear()
        for found_one in self.analysis.found:
            item = QListWidgetItem(_technique_words(piece, found_one, self.seen))
            item.setData(DATA, found_one.technique.id)
            self.list.addItem(item)
        self._filling = False
        ids = [f.technique.id for f in self.analysis.found]
        self.list.setCurrentRow(ids.index(chosen) if chosen in ids else 0)
        self._show_technique(self.list.currentRow())
        self._show_new(lesson)
        self.next.clear()
        for suggestion in self.suggestions:
            self._offer(_suggestion_words(suggestion), suggestion.profile)
        if not self.suggestions:
            none = QListWidgetItem(
                "No fingered lesson for this instrument lies within a grade and takes up "
                "what is new here."
            )
            none.setFlags(Qt.ItemFlag.NoItemFlags)
            self.next.addItem(none)
        for pair in self.pairs:
            self._offer(_pair_words(pair), pair.second)
        self.next.setCurrentRow(0 if self.suggestions else 1 if self.pairs else -1)
        self.open_button.setEnabled(bool(self.suggestions or self.pairs))
        self.finger_button.setVisible(company.missing > 0)
        self.compared.setText(_compared_words(lesson, company))

    def _offer(self, words: str, profile: Profile) -> None:
        """A lesson that can be opened from the list."""
        item = QListWidgetItem(words)
        item.setData(DATA, profile.id)
        self.next.addItem(item)

    def _show_new(self, lesson: Lesson) -> None:
        fresh = [s for s in self.seen if s.taught_in is None]
        known = [s for s in self.seen if s.taught_in is not None]
        self.new_heading.setText(f"New in this piece: {len(fresh)} of {len(self.seen)}")
        self.new.clear()
        for seen in (*fresh, *known):
            words = f"{_capital(seen.sentence)}, from {bar_name(lesson.piece.bars[seen.bar])}"
            if seen.taught_in is None and seen.on_shelf:
                also = seen.on_shelf[0]
                more = len(seen.on_shelf) - 1
                words += f"; also in '{also}'" + (f" and {more} more" if more else "")
            item = QListWidgetItem(words)
            item.setData(DATA, (seen.bar, None))
            font = item.font()
            font.setBold(seen.taught_in is None)
            item.setFont(font)
            self.new.addItem(item)

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
        self.name.setText(f"{_capital(entry.name)} ({entry.family})")
        self.name.setAccessibleName(self.name.text())
        self.asks.setText(entry.asks)
        self.watch.setText(f"Watch for: {entry.watch}" if entry.watch else "")
        taught = _taught(found, self.seen)
        self.taught.setText(
            f"First taught in '{taught.title}'." if taught else "Not taught in an earlier lesson."
        )
        self.places.clear()
        for place in found.occurrences:
            item = QListWidgetItem(_place_words(lesson.piece, place))
            item.setData(DATA, (place.bar, place.notes[0] if place.notes else None))
            self.places.addItem(item)
        self.places.setCurrentRow(0)

    def _show_exercise(self, item: QListWidgetItem | None) -> None:
        found, lesson, hands = self.current, self.session.lesson, self.session.fingering
        if item is None or found is None or lesson is None or hands is None:
            self.exercise.setText("")
            return
        bar, _ = item.data(DATA)
        made = exercises_for(found.technique, lesson.piece, hands, self.session.instrument, bar)
        self.exercise.setText("\n".join(f"– {e.text}" for e in made))

    def _go_to(self, item: QListWidgetItem) -> None:
        """Select the bar, and the note, that a row speaks of."""
        place = item.data(DATA)
        if place is not None:
            bar, note = place
            self.session.select(self.session.position_of(bar), note)

    def open_next(self) -> None:
        """Open the lesson that is selected under Teach next."""
        item = self.next.currentItem()
        if item is not None and item.data(DATA):
            self.session.open(item.data(DATA))


def _rows(name: str) -> QListWidget:
    rows = QListWidget()
    rows.setAccessibleName(name)
    rows.setWordWrap(True)
    rows.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    rows.setVerticalScrollMode(QListWidget.ScrollMode.ScrollPerPixel)
    rows.setResizeMode(QListWidget.ResizeMode.Adjust)
    rows.setSpacing(1)
    return rows


def _label(words: str, rows: QListWidget) -> QLabel:
    label = Heading(words)
    label.setAccessibleName(words.replace("&", ""))
    label.setBuddy(rows)
    return label


def _column(*parts: QWidget) -> QWidget:
    column = QWidget()
    layout = QVBoxLayout(column)
    layout.setContentsMargins(0, 0, 0, 0)
    for part in parts:
        layout.addWidget(part)
    return column


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]


def _taught(found: Found, seen: tuple[Seen, ...]) -> Profile | None:
    """The lesson that first taught a technique, in any of its kinds."""
    for row in seen:
        name = row.move.name.partition(": ")[0]
        if row.move.kind == "technique" and name == found.technique.id and row.taught_in:
            return row.taught_in
    return None


def _technique_words(piece: Piece, found: Found, seen: tuple[Seen, ...]) -> str:
    new = "" if _taught(found, seen) else ", new"
    return f"{_capital(found.technique.name)}{new}\n{bars_in_words(piece, found.bars)}"


def _place_words(piece: Piece, place: Occurrence) -> str:
    bar = piece.bars[place.bar]
    name = "Pickup" if bar.number == "0" else f"Bar {bar.number}"
    words = f"{name}, beat {beat_number(bar, place.onset)}"
    return f"{words}: {place.detail}" if place.detail else words


def _suggestion_words(suggestion: Suggestion) -> str:
    grade = int(suggestion.profile.grade)
    return f"{suggestion.profile.title}, grade {grade}\n{suggestion.reason}"


def _pair_words(pair: Pair) -> str:
    both = ", ".join(m.words for m in pair.shared[:3])
    more = len(pair.shared) - 3
    both += f" and {more} more" if more > 0 else ""
    alone = ", ".join(m.words for m in pair.only_second[:3]) or "nothing of its own"
    return f"Side by side: {pair.second.title}\nBoth have {both}; it has besides {alone}."


def _compared_words(lesson: Lesson, company: Company) -> str:
    whose = f"of {lesson.student}" if lesson.student else "without a student's name"
    count = len(company.earlier)
    earlier = f"{count or 'no'} earlier lesson{'' if count == 1 else 's'} {whose}"
    others = len(company.others)
    words = f"Compared with {earlier} and {others} other{'' if others == 1 else 's'} on the shelf."
    if company.missing:
        lessons = "lesson is" if company.missing == 1 else "lessons are"
        words += f" {company.missing} {lessons} not fingered yet and not counted."
    return words
