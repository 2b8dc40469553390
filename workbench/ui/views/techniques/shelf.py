"""What is new in the piece against earlier lessons, and what to teach next."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QHBoxLayout,
    QListWidgetItem,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from workbench.language.names import as_first_word
from workbench.language.speech import count, say
from workbench.music.bar_names import the_bar
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.techniques.news import Pair, Profile, Seen, Suggestion, listed, weightiest
from workbench.ui.bench.findings import Company
from workbench.ui.bench.session import Session
from workbench.ui.kit.look import em
from workbench.ui.kit.panes import Panes
from workbench.ui.kit.parts import Faint, Heading
from workbench.ui.kit.word_list import WordList

DATA = Qt.ItemDataRole.UserRole


class NewAndNext(QWidget):
    """Moves that are new or known to the left, lessons that go with this one to the right."""

    def __init__(self, session: Session) -> None:
        super().__init__()
        self._session = session
        self.heading = Heading(say("New in this piece"))
        self.new = WordList()
        self.new.setAccessibleName(say("New in this piece, and what is known"))
        self.next = WordList()
        self.next.setAccessibleName(say("Pieces to teach next, and to work on side by side"))
        self.first_button = QPushButton(say("Open the lesson that &taught it"))
        self.first_button.setToolTip(say("Open the lesson in which the selected move came first"))
        self.finger_button = QPushButton(say("&Finger the others"))
        self.finger_button.setToolTip(
            say("Finger the lessons that never were, to compare with them")
        )
        self.open_button = QPushButton(say("&Open this lesson"))
        self.open_button.setToolTip(say("Open the lesson that is selected in the list above"))
        self.compared = Faint()
        heading = Heading(say("Teach &next, or side by side"))
        heading.setBuddy(self.next)
        parts = Panes(Qt.Orientation.Horizontal)
        parts.setObjectName("new and next")
        parts.addWidget(_column(self.heading, self.new, self.first_button))
        parts.addWidget(_column(heading, self.next, self.open_button, self.finger_button))
        parts.setChildrenCollapsible(False)
        parts.setSizes([em(self, 22), em(self, 22)])
        layout = QVBoxLayout(self)
        layout.addWidget(parts, 1)
        layout.addWidget(self.compared)
        for signal in (self.new.itemClicked, self.new.itemActivated):
            signal.connect(self._go_to)
        self.new.currentItemChanged.connect(lambda item, _: self._offer_first(item))
        self.next.currentRowChanged.connect(lambda row: self.open_button.setEnabled(row >= 0))
        self.next.itemActivated.connect(lambda _: self.open_next())
        self.open_button.clicked.connect(self.open_next)
        self.first_button.clicked.connect(self.open_first)

    def show_found(
        self,
        lesson: Lesson,
        company: Company,
        seen: tuple[Seen, ...],
        suggestions: tuple[Suggestion, ...],
        beside: tuple[Pair, ...],
    ) -> None:
        """Show moves, suggestions and pairs."""
        self._show_new(lesson, seen)
        self.next.clear()
        for suggestion in suggestions:
            self._offer(_suggestion_words(suggestion), suggestion.profile)
        if not suggestions:
            none = QListWidgetItem(
                say(
                    "No fingered lesson for this instrument lies within a grade and takes up "
                    "what is new here."
                )
            )
            none.setFlags(Qt.ItemFlag.NoItemFlags)
            self.next.addItem(none)
        for pair in beside:
            self._offer(_pair_words(pair), pair.second)
        self.next.setCurrentRow(0 if suggestions else 1 if beside else -1)
        self.open_button.setEnabled(bool(suggestions or beside))
        self.finger_button.setVisible(company.missing > 0)
        self.compared.setText(_compared_words(lesson, company))

    def _show_new(self, lesson: Lesson, seen: tuple[Seen, ...]) -> None:
        fresh = [s for s in seen if s.taught_in is None]
        known = [s for s in seen if s.taught_in is not None]
        self.heading.setText(
            say("New in this piece: {new} of {all}", new=len(fresh), all=len(seen))
        )
        self.new.clear()
        by_move = {s.move: s for s in (*fresh, *known)}
        order = [*weightiest(s.move for s in fresh), *weightiest(s.move for s in known)]
        for one in (by_move[move] for move in order):
            item = QListWidgetItem(_seen_words(lesson, one))
            item.setData(DATA, one.bar)
            item.setData(DATA + 1, one.taught_in.id if one.taught_in else None)
            font = item.font()
            font.setBold(one.taught_in is None)
            item.setFont(font)
            self.new.addItem(item)
        self._offer_first(None)

    def _offer(self, words: str, profile: Profile) -> None:
        """A lesson that can be opened from the list."""
        item = QListWidgetItem(words)
        item.setData(DATA, profile.id)
        self.next.addItem(item)

    def _offer_first(self, item: QListWidgetItem | None) -> None:
        self.first_button.setEnabled(item is not None and item.data(DATA + 1) is not None)

    def _go_to(self, item: QListWidgetItem) -> None:
        """Select the bar where a move comes first."""
        self._session.selection.select(self._session.selection.position_of(item.data(DATA)))

    def open_first(self) -> None:
        """Open the lesson that first taught the selected move."""
        item = self.new.currentItem()
        if item is not None and item.data(DATA + 1):
            self._session.open(item.data(DATA + 1))

    def open_next(self) -> None:
        """Open the lesson that is selected under Teach next."""
        item = self.next.currentItem()
        if item is not None and item.data(DATA):
            self._session.open(item.data(DATA))


def _column(*parts: QWidget) -> QWidget:
    """Widgets one below the other, buttons side by side at the foot."""
    column = QWidget()
    layout = QVBoxLayout(column)
    layout.setContentsMargins(0, 0, 0, 0)
    row = QHBoxLayout()
    for part in parts:
        if isinstance(part, QPushButton):
            row.addWidget(part)
        else:
            layout.addWidget(part, 1 if isinstance(part, WordList) else 0)
    row.addStretch(1)
    layout.addLayout(row)
    return column


def _seen_words(lesson: Lesson, seen: Seen) -> str:
    said = say(
        "{move}, from {bar}",
        move=as_first_word(seen.sentence),
        bar=the_bar(lesson.piece.bars[seen.bar].number),
    )
    if seen.taught_in is not None or not seen.on_shelf:
        return said
    more = len(seen.on_shelf) - 1
    if more:
        return count(
            more,
            "{said}; also in '{title}' and {n} more",
            "{said}; also in '{title}' and {n} more",
            said=said,
            title=seen.on_shelf[0],
        )
    return say("{said}; also in '{title}'", said=said, title=seen.on_shelf[0])


def _suggestion_words(suggestion: Suggestion) -> str:
    title = say(
        "{title}, grade {grade}",
        title=suggestion.profile.title,
        grade=int(suggestion.profile.grade),
    )
    return f"{title}\n{suggestion.reason}"


def _pair_words(pair: Pair) -> str:
    title = say("Side by side: {title}", title=pair.second.title)
    alone = ", ".join(str(m.words) for m in weightiest(pair.only_second)[:3]) or say(
        "nothing of its own"
    )
    said = say(
        "Both have {shared}; it has besides {alone}.", shared=listed(pair.shared, ""), alone=alone
    )
    return f"{title}\n{said}"


def _compared_words(lesson: Lesson, company: Company) -> str:
    whose = say("of {student}", student=lesson.student)
    if not lesson.student:
        whose = say("without a student's name")
    found = len(company.earlier)
    earlier = (
        count(found, "{n} earlier lesson {whose}", "{n} earlier lessons {whose}", whose=whose)
        if found
        else say("no earlier lessons {whose}", whose=whose)
    )
    if not found and not company.others:
        words = say("No other fingered lesson is on the shelf to compare with.")
    else:
        words = count(
            len(company.others),
            "Compared with {earlier} and {n} other on the shelf.",
            "Compared with {earlier} and {n} others on the shelf.",
            earlier=earlier,
        )
    if company.missing:
        words += " " + count(
            company.missing,
            "{n} lesson is not fingered yet and not counted.",
            "{n} lessons are not fingered yet and not counted.",
        )
    return words
