"""The teaching notes of the selected bar: read, write, change, delete."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent
from PySide6.QtWidgets import (
    QComboBox,
    QHBoxLayout,
    QLabel,
    QListWidgetItem,
    QPlainTextEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from workbench.teaching.lesson import NOTE_KINDS, BarNote
from workbench.ui import edits
from workbench.ui.look import em
from workbench.ui.parts import Faint, Heading
from workbench.ui.session import Session
from workbench.ui.word_list import WordList

ID = Qt.ItemDataRole.UserRole


def bar_name(number: str) -> str:
    """How a bar is called: its printed number."""
    return "pickup" if number == "0" else f"bar {number}"


def plain(text: str) -> str:
    """The words without the signs of emphasis."""
    return text.replace("*", "")


def note_numbers(notes: Iterable[BarNote]) -> dict[str, int]:
    """Note id to its number in the score: in the order of the bars."""
    ordered = sorted(notes, key=lambda note: (note.first_bar, note.last_bar))
    return {note.id: at for at, note in enumerate(ordered, 1)}


class _Words(QPlainTextEdit):
    """Writing that is kept when the writer turns away."""

    left = Signal()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        if event.reason() != Qt.FocusReason.PopupFocusReason:
            self.left.emit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        enter = event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
        if enter and event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self.left.emit()
        else:
            super().keyPressEvent(event)

    def sizeHint(self) -> QSize:
        return QSize(em(self, 12), em(self, 5))


class NotePanel(QWidget):
    """A list of the bar's notes, and the words of the one that is selected."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._shown: BarNote | None = None  # as the editor was filled
        self._filling = False
        self._named: object = None  # the piece whose bars the boxes list
        self.bars: tuple[int, ...] = ()  # rows selected in the bar list, for a new note
        self.heading = Heading("Teaching notes")
        self.list = WordList()
        self.list.setAccessibleName("Teaching notes of this bar")
        self.add_button = QPushButton("&New note")
        self.add_button.setToolTip("Write a note on this bar, or on all bars selected on the left")
        self.delete_button = QPushButton("&Delete")
        self.delete_button.setAccessibleName("Delete this teaching note")
        self.kind = QComboBox()
        self.kind.addItems([kind[0].upper() + kind[1:] for kind in NOTE_KINDS])
        self.kind.setAccessibleName("Kind of note")
        self.first, self.last = QComboBox(), QComboBox()
        self.first.setAccessibleName("First bar of the note")
        self.last.setAccessibleName("Last bar of the note")
        self.words = _Words()
        self.words.setAccessibleName("Words of the note")
        self.words.setTabChangesFocus(True)
        self.words.setMinimumHeight(em(self, 3))
        self.words.setPlaceholderText("What should the student know, feel or listen for here?")
        self.about = Faint()

        buttons = QHBoxLayout()
        buttons.addWidget(self.add_button)
        buttons.addWidget(self.delete_button)
        buttons.addStretch(1)
        range_row = QHBoxLayout()
        for label, box in (("&From", self.first), ("&to", self.last)):
            box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
            box.setMinimumContentsLength(6)
            words = QLabel(label)
            words.setBuddy(box)
            range_row.addWidget(words)
            range_row.addWidget(box, 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.heading)
        layout.addWidget(self.list, 3)
        layout.addLayout(buttons)
        layout.addWidget(self.kind)
        layout.addLayout(range_row)
        layout.addWidget(self.words, 2)
        layout.addWidget(self.about)

        self.add_button.clicked.connect(self.new_note)
        self.delete_button.clicked.connect(self.delete)
        self.list.currentItemChanged.connect(self._chosen)
        self.words.left.connect(self.commit)
        self.kind.activated.connect(lambda _: self.commit())
        self.first.activated.connect(lambda _: self.commit())
        self.last.activated.connect(lambda _: self.commit())
        session.opened.connect(self.refresh)
        session.changed.connect(self.refresh)
        session.selected.connect(self._moved)
        self._fill(None)

    def _moved(self) -> None:
        self.commit()
        self.refresh()

    def refresh(self) -> None:
        """Show the notes of the selected bar; the one being written stays selected."""
        bar = self._session.bar
        name = bar_name(bar.number) if bar else ""
        self.heading.setText(f"Teaching notes, {name}" if name else "Teaching notes")
        self._name_bars()
        notes = self._session.bar_notes
        wanted = self._shown.id if self._shown else None
        self._filling = True
        self.list.clear()
        numbers = note_numbers(self._session.lesson.notes) if self._session.lesson else {}
        for note in notes:
            item = QListWidgetItem(f"{numbers[note.id]}  {note.kind.upper()}\n{plain(note.text)}")
            item.setData(ID, note.id)
            item.setToolTip(note.text)
            self.list.addItem(item)
        self._filling = False
        ids = [note.id for note in notes]
        if wanted in ids:
            self._filling = True
            self.list.setCurrentRow(ids.index(wanted))
            self._filling = False
            kept = notes[ids.index(wanted)]
            if kept != self._shown:
                self._fill(kept)
        elif self._shown is not None and self._is_new and self._covers_bar:
            pass  # being written, not on the shelf yet
        elif notes:
            self.list.setCurrentRow(0)
        else:
            self._fill(None)
        for part in (self.add_button, self.list):
            part.setEnabled(self._session.bar is not None)

    def _name_bars(self) -> None:
        """The bars by their printed numbers, in both boxes."""
        piece = self._session.lesson.piece if self._session.lesson else None
        if piece is self._named:
            return
        self._named = piece
        names = [bar_name(bar.number) for bar in piece.bars] if piece else []
        for box in (self.first, self.last):
            box.clear()
            box.addItems(names)

    @property
    def _is_new(self) -> bool:
        lesson = self._session.lesson
        return bool(
            self._shown and lesson and all(note.id != self._shown.id for note in lesson.notes)
        )

    @property
    def _covers_bar(self) -> bool:
        index = self._session.bar_index
        return bool(self._shown and self._shown.first_bar <= index <= self._shown.last_bar)

    def _chosen(self, item: QListWidgetItem | None, _before: object) -> None:
        if self._filling or item is None:
            return
        self.commit()
        note = next((n for n in self._session.bar_notes if n.id == item.data(ID)), None)
        self._fill(note)

    def _fill(self, note: BarNote | None) -> None:
        self._shown = note
        self.words.setPlainText(note.text if note else "")
        if note:
            self.kind.setCurrentIndex(NOTE_KINDS.index(note.kind))
            self.first.setCurrentIndex(note.first_bar)
            self.last.setCurrentIndex(note.last_bar)
        about = []
        if note and note.note:
            about.append("About one note of the bar.")
        if note and note.section:
            about.append(f"For the whole of section {note.section}.")
        if note and note.rejected:
            about.append("Tells why another fingering was not taken.")
        self.about.setText(" ".join(about))
        self.about.setVisible(bool(about))
        for part in (self.kind, self.first, self.last, self.words, self.delete_button):
            part.setEnabled(note is not None)

    def new_note(self) -> None:
        """Begin a note on the selected bars (the selected note, if there is one)."""
        index = self._session.bar_index
        if index < 0:
            return
        self.commit()
        bars = self.bars if index in self.bars else (index,)
        about = self._session.note_id if len(bars) == 1 else None
        self._filling = True
        self.list.setCurrentRow(-1)
        self._filling = False
        kind = self._shown.kind if self._shown else NOTE_KINDS[0]
        self._fill(BarNote(edits.fresh_id("note"), kind, "", bars[0], bars[-1], note=about))
        self.words.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def commit(self) -> bool:
        """Keep what is written; nothing is lost by turning away. False if it was refused."""
        shown = self._shown
        if shown is None or self._session.lesson is None or self._filling:
            return True
        text = self.words.toPlainText().strip()
        if not text:
            return True  # an empty new note is no note; an emptied one stays until deleted
        written = replace(
            shown,
            kind=NOTE_KINDS[self.kind.currentIndex()],
            text=text,
            first_bar=self.first.currentIndex(),
            last_bar=max(self.first.currentIndex(), self.last.currentIndex()),
        )
        if written == shown:
            return True
        label = "Write a note" if self._is_new else "Change a note"
        self._shown = written
        if self._session.edit(label, lambda lesson: edits.put_note(lesson, written)):
            return True
        self._shown = shown
        return False

    def delete(self) -> None:
        """Delete the note that is shown; undo brings it back."""
        if self._shown is None:
            return
        gone, new = self._shown.id, self._is_new
        self._fill(None)
        if new:
            self.refresh()
        else:
            self._session.edit(
                "Delete a note", lambda lesson: edits.delete_note(lesson, gone)
            )
