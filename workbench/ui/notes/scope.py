"""What a note is about: its kind, and a note, a bar, several bars or a section."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QBoxLayout,
    QComboBox,
    QHBoxLayout,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from workbench.language.names import as_first_word, pitch_words
from workbench.language.speech import say
from workbench.music.bar_names import bar_name
from workbench.music.beats import counted_beat
from workbench.music.model import Bar, Note, Piece
from workbench.teaching.lessons.bar_rows import section_letters
from workbench.teaching.lessons.lesson import NOTE_KINDS, SCOPES, BarNote
from workbench.ui.bench.session import Session
from workbench.ui.kit.parts import Words, plain_tip

NOTE, BAR, BARS, SECTION = range(4)


def pitch_name(note: Note) -> str:
    """For example C♯4."""
    return pitch_words(note.pitch.name)


def note_name(note: Note, bar: Bar) -> str:
    """A note of a bar, such as "C♯4, beat 2"."""
    return say("{pitch}, beat {beat}", pitch=pitch_name(note), beat=counted_beat(bar, note.onset))


def about(note: BarNote, piece: Piece) -> str:
    """What a note is about, in a few words."""
    bars = {bar.index: bar for bar in piece.bars}
    if note.note is not None and note.note in piece.bar_of:
        bar = bars[piece.bar_of[note.note]]
        return note_name(next(n for n in bar.notes if n.id == note.note), bar)
    if note.section is not None:
        return say("section {letter}", letter=note.section)
    if note.first_bar == note.last_bar:
        return str(bar_name(bars[note.first_bar].number))
    first, last = bars[note.first_bar].number, bars[note.last_bar].number
    return say("bars {first}–{last}", first=first, last=last)


class NoteScope(QWidget):
    """Two boxes for kind and reach, and below them what the reach asks for."""

    changed = Signal()

    def __init__(self, session: Session) -> None:
        super().__init__()
        self._session = session
        self._named: object = None  # the lesson whose bars and sections the boxes list
        self.kind = _box(say("Kind of remark"))
        self.kind.addItems([as_first_word(say(kind)) for kind in NOTE_KINDS])
        self.reach = _box(say("What the remark is about"))
        self.reach.addItems([as_first_word(say(scope)) for scope in SCOPES])
        self.note = _box(say("Note that is meant"))
        self.section = _box(say("Section that is meant"))
        self.first = _box(say("First bar of the remark"))
        self.last = _box(say("Last bar of the remark"))
        self.bar = _box(say("Bar of the remark"))
        self.top = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self.top.addWidget(self.kind, 1)
        self.top.addWidget(self.reach, 1)
        self.pages = QStackedWidget()
        for parts in (
            ((say("N&ote"), self.note),),
            ((say("&Bar"), self.bar),),
            ((say("&From"), self.first), (say("&to"), self.last)),
            ((say("&Section"), self.section),),
        ):
            self.pages.addWidget(_row(parts))
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addLayout(self.top)
        layout.addWidget(self.pages)
        for box in (self.kind, self.note, self.section, self.first, self.last, self.bar):
            box.activated.connect(self._chosen)
        self.reach.activated.connect(self._reached)

    def set_narrow(self, narrow: bool) -> None:
        """The two boxes one below the other where there is little room."""
        self.top.setDirection(
            QBoxLayout.Direction.TopToBottom if narrow else QBoxLayout.Direction.LeftToRight
        )

    # Filling.

    def fill(self, note: BarNote) -> None:
        """Show what a note is about."""
        self._name_all(note)
        self.kind.setCurrentIndex(NOTE_KINDS.index(note.kind))
        scope = SCOPES.index(note.scope)
        if scope == SECTION and self.section.findData(note.section) < 0:
            scope = BARS  # a section that is no more: its bars are
        self.reach.setCurrentIndex(scope)
        self.pages.setCurrentIndex(scope)
        for box, bar in ((self.first, note.first_bar), (self.last, note.last_bar),
                         (self.bar, note.first_bar)):  # fmt: skip
            box.setCurrentIndex(bar)
        self.note.setCurrentIndex(max(0, self.note.findData(note.note)))
        self.section.setCurrentIndex(max(0, self.section.findData(note.section)))

    def _name_all(self, note: BarNote) -> None:
        lesson = self._session.lesson
        assert lesson
        piece = lesson.piece
        named = (id(piece), lesson.sections)
        if named != self._named:
            self._named = named
            for box in (self.first, self.last, self.bar):
                box.clear()
                box.addItems([str(bar_name(bar.number)) for bar in piece.bars])
            self.section.clear()
            for letter in dict.fromkeys(section_letters(lesson)):
                if letter:
                    self.section.addItem(say("section {letter}", letter=letter), letter)
        here = self._session.selection.bar_index
        near = here if note.first_bar <= here <= note.last_bar else note.first_bar
        bar = piece.bars[piece.bar_of.get(note.note or "", near)]
        self.note.clear()
        for one in sorted(bar.notes, key=lambda n: (n.onset, not n.grace, -n.midi)):
            self.note.addItem(note_name(one, bar), one.id)

    # Reading.

    def written(self, note: BarNote) -> BarNote:
        """The note with the kind and reach that are chosen here."""
        lesson = self._session.lesson
        assert lesson
        kept = replace(note, kind=NOTE_KINDS[self.kind.currentIndex()], note=None, section=None)
        scope = self.reach.currentIndex()
        if scope == NOTE and self.note.currentData():
            meant = self.note.currentData()
            bar = lesson.piece.bar_of[meant]
            return replace(kept, note=meant, first_bar=bar, last_bar=bar)
        if scope == BARS:
            first = self.first.currentIndex()
            return replace(kept, first_bar=first, last_bar=max(first, self.last.currentIndex()))
        if scope == SECTION and self.section.currentData():
            letter = self.section.currentData()
            first, last = self._stretch(letter, note.first_bar)
            return replace(kept, section=letter, first_bar=first, last_bar=last)
        bar = self.bar.currentIndex()
        return replace(kept, first_bar=bar, last_bar=bar)

    def _stretch(self, letter: str, near: int) -> tuple[int, int]:
        """The bars of a section: where it stands around a bar, else where it first comes."""
        lesson = self._session.lesson
        assert lesson
        letters = section_letters(lesson)
        at = near if letters[near] == letter else letters.index(letter)
        first = last = at
        while first and letters[first - 1] == letter:
            first -= 1
        while last + 1 < len(letters) and letters[last + 1] == letter:
            last += 1
        return first, last

    # Hands on it.

    def _reached(self, scope: int) -> None:
        """Another reach: propose what is selected now."""
        here = self._session.selection.bar_index
        if scope == SECTION and not self.section.count():
            scope = BARS
            self.reach.setCurrentIndex(scope)
        if scope == NOTE:
            at = self.note.findData(self._session.selection.note_id)
            self.note.setCurrentIndex(max(0, at))
        elif scope == SECTION:
            lesson = self._session.lesson
            assert lesson
            at = self.section.findData(section_letters(lesson)[here])
            self.section.setCurrentIndex(max(0, at))
        elif scope == BAR:
            self.bar.setCurrentIndex(here)
        self.pages.setCurrentIndex(scope)
        self.changed.emit()

    def _chosen(self, _index: int) -> None:
        if self.last.currentIndex() < self.first.currentIndex():
            self.last.setCurrentIndex(self.first.currentIndex())
        self.changed.emit()


def _box(name: str) -> QComboBox:
    box = QComboBox()
    box.setAccessibleName(name)
    box.setToolTip(plain_tip(name))
    box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
    box.setMinimumContentsLength(3)
    return box


def _row(parts: Iterable[tuple[str, QComboBox]]) -> QWidget:
    row = QWidget()
    layout = QHBoxLayout(row)
    layout.setContentsMargins(0, 0, 0, 0)
    for words, box in parts:
        label = Words(words)
        label.setBuddy(box)
        layout.addWidget(label)
        layout.addWidget(box, 1)
    return row
