"""The teaching notes of the selected bar: read, write, change, delete."""

from __future__ import annotations

from dataclasses import replace
from functools import partial

from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QDialog,
    QHBoxLayout,
    QListWidgetItem,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from workbench.language.speech import say
from workbench.music.bar_names import bar_name
from workbench.teaching.bars.grip_words import grip_text
from workbench.teaching.lessons import edits
from workbench.teaching.lessons.bar_rows import note_numbers
from workbench.teaching.lessons.lesson import NOTE_KINDS, BarNote
from workbench.ui.bench.session import Session
from workbench.ui.kit.look import em
from workbench.ui.kit.panes import Panes
from workbench.ui.kit.parts import Heading, Scrolled
from workbench.ui.notes.attach import Attachments
from workbench.ui.notes.dialogs import GripDialog, LinkDialog
from workbench.ui.notes.scope import NoteScope, about
from workbench.ui.notes.words import EMPHASIS, ID, STRONG, NoteList, NoteWords


class NotePanel(QWidget):
    """A list of the bar's notes, and the words of the one that is selected."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._shown: BarNote | None = None  # as the editor was filled
        self._filling = False
        self._typing: tuple[str, str] = ("", "")  # note id and step that further keys belong to
        self.bars: tuple[int, ...] = ()  # rows selected in the bar list, for a new note
        self.dialog: QDialog | None = None  # the one that is open
        self.heading = Heading(say("Remarks"))
        self.list = NoteList()
        self.list.setAccessibleName(say("Remarks on this bar"))
        self.add_button = QPushButton(say("&New remark"))
        self.add_button.setToolTip(
            say("Write a remark on this bar, or on all bars selected on the left")
        )
        self.delete_button = QPushButton(say("&Delete"))
        self.delete_button.setAccessibleName(say("Delete this remark"))
        self.scope = NoteScope(session)
        self.kind, self.first, self.last = self.scope.kind, self.scope.first, self.scope.last
        self.words = NoteWords()
        self.strong = _mark_button(say("&Strong"), say("Strong words (Ctrl+B)"))
        self.emphasis = _mark_button(say("E&mphasis"), say("Words with emphasis (Ctrl+I)"))
        self.attached = Attachments(session)
        self._lay_out()
        self.add_button.clicked.connect(self.new_note)
        self.delete_button.clicked.connect(self.delete)
        self.list.currentItemChanged.connect(self._chosen)
        self.words.left.connect(self._turned_away)
        self.words.paused.connect(self.commit)
        self.strong.clicked.connect(lambda: self._mark(STRONG))
        self.emphasis.clicked.connect(lambda: self._mark(EMPHASIS))
        self.scope.changed.connect(self.commit)
        self.attached.wants.connect(self.attach)
        self.attached.removed.connect(self.take_off)
        session.opened.connect(self._opened)
        session.changed.connect(self.refresh)
        session.fingers.fingered.connect(self.refresh)
        session.selection.selected.connect(self._moved)
        self._fill(None)
        self.refresh()

    def _lay_out(self) -> None:
        buttons = QHBoxLayout()
        buttons.addWidget(self.add_button)
        buttons.addWidget(self.delete_button)
        buttons.addStretch(1)
        above = QWidget()
        column = QVBoxLayout(above)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.list, 1)
        column.addLayout(buttons)
        tools = self.tools = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        for button in (self.strong, self.emphasis, self.attached.button):
            tools.addWidget(button)
        tools.addStretch(1)
        inner = QWidget()
        form = QVBoxLayout(inner)
        form.setContentsMargins(0, 0, em(self, 0.2), 0)
        form.addWidget(self.scope)
        form.addWidget(self.words, 1)
        form.addLayout(tools)
        form.addWidget(self.attached)
        self.area = Scrolled(inner, say("The remark in full"))
        parts = Panes(Qt.Orientation.Vertical)
        parts.addWidget(above)
        parts.addWidget(self.area)
        parts.setChildrenCollapsible(False)
        parts.setSizes([em(self, 9), em(self, 13)])
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.heading)
        layout.addWidget(parts, 1)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        narrow = self.width() < em(self, 14)
        self.scope.set_narrow(narrow)
        self.tools.setDirection(
            QBoxLayout.Direction.TopToBottom if narrow else QBoxLayout.Direction.LeftToRight
        )

    # Following the session.

    def _opened(self) -> None:
        if self.dialog is not None:
            self.dialog.reject()
        self._shown = None
        self.refresh()

    def _moved(self) -> None:
        if self._turned_away():  # else what could not be kept stays where it was typed
            self.refresh()

    def _turned_away(self) -> bool:
        """Keep what is written; what is typed after this is a step of its own."""
        kept = self.commit()
        self._typing = ("", "")
        return kept

    def refresh(self) -> None:
        """Show the notes of the selected bar; the one being written stays selected."""
        bar, lesson = self._session.selection.bar, self._session.lesson
        heading = say("Remarks")
        if bar is not None:
            heading = say("Remarks, {bar}", bar=bar_name(bar.number))
        self.heading.setText(heading)
        notes = self._session.bar_notes
        wanted = self._shown.id if self._shown else None
        self._filling = True
        numbers = note_numbers(lesson.notes) if lesson else {}
        self.list.fill(
            (numbers[note.id], note, about(note, lesson.piece)) for note in notes if lesson
        )
        ids = [note.id for note in notes]
        if wanted in ids:
            self.list.setCurrentRow(ids.index(wanted))
        self._filling = False
        if wanted in ids:
            kept = notes[ids.index(wanted)]
            if kept != self._shown:
                self._fill(kept)
            else:
                self.attached.fill(kept)
        elif self._shown is not None and self._is_new and self._covers_bar:
            pass  # being written, not on the shelf yet
        elif notes:
            self.list.setCurrentRow(0)
        else:
            self._fill(None)
        for part in (self.add_button, self.list):
            part.setEnabled(self._session.selection.bar is not None)

    @property
    def _is_new(self) -> bool:
        lesson = self._session.lesson
        return bool(
            self._shown and lesson and all(note.id != self._shown.id for note in lesson.notes)
        )

    @property
    def _covers_bar(self) -> bool:
        index = self._session.selection.bar_index
        return bool(self._shown and self._shown.first_bar <= index <= self._shown.last_bar)

    def _chosen(self, item: QListWidgetItem | None, _before: object) -> None:
        if self._filling or item is None:
            return
        if not self._turned_away():
            return
        note = next((n for n in self._session.bar_notes if n.id == item.data(ID)), None)
        self._fill(note)

    def _fill(self, note: BarNote | None) -> None:
        self._shown = note
        if note is None or note.text != self.words.toPlainText().strip():
            self.words.setPlainText(note.text if note else "")
        if note is not None:
            self.scope.fill(note)
        self.attached.fill(note)
        for part in (self.scope, self.words, self.strong, self.emphasis, self.delete_button):
            part.setEnabled(note is not None)

    # Writing.

    def new_note(self) -> None:
        """Begin a note on the selected bars (the selected note, if there is one)."""
        index = self._session.selection.bar_index
        if index < 0:
            return
        if not self._turned_away():
            return
        bars = self._session.selection.note_bars  # notes in several bars mean all of these
        if len(bars) < 2:
            bars = self.bars if index in self.bars else (index,)
        meant = self._session.selection.note_id if len(bars) == 1 else None
        self._filling = True
        self.list.setCurrentRow(-1)
        self._filling = False
        kind = self._shown.kind if self._shown else NOTE_KINDS[0]
        self._fill(BarNote(edits.fresh_id("note"), kind, "", bars[0], bars[-1], note=meant))
        self.words.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def written(self) -> BarNote | None:
        """The note as it stands in the editor; None where there is none."""
        if self._shown is None or self._session.lesson is None:
            return None
        text = self.words.toPlainText().strip()
        return replace(self.scope.written(self._shown), text=text)

    def commit(self) -> bool:
        """Keep what is written; nothing is lost by turning away. False if it was refused."""
        written = None if self._filling else self.written()
        if written is None or not written.text or written == self._shown:
            return True  # an empty new note is no note; an emptied one stays until deleted
        label = say("Write a remark") if self._is_new else say("Change a remark")
        goes_on = self._typing[0] == written.id
        label = self._typing[1] if goes_on else label
        if self._keep(written, label, merge=goes_on):
            self._typing = (written.id, label)
            return True
        return False

    def _keep(self, written: BarNote, label: str, *, merge: bool = False) -> bool:
        before = self._shown
        self._shown = written
        change = partial(edits.put_note, note=written)
        if self._session.edit(label, change, merge=merge):
            return True
        self._shown = before
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
                say("Delete a remark"), lambda lesson: edits.delete_note(lesson, gone)
            )

    def _mark(self, sign: str) -> None:
        self.words.setFocus(Qt.FocusReason.OtherFocusReason)
        self.words.mark(sign)

    # What hangs on it.

    def attach(self, kind: str) -> None:
        """Ask for a grip, a rejected fingering or another lesson."""
        note = self.written()
        if note is None:
            return
        dialog: QDialog
        if kind == "grip":
            asked = dialog = GripDialog(self._session, note.grip, self.window())
            dialog.accepted.connect(lambda: self._hang(grip=asked.grip))
        elif kind == "link":
            chosen = dialog = LinkDialog(self._session, self.window())
            dialog.accepted.connect(lambda: self._hang(link=chosen.chosen))
        else:
            found = self._ask_rejected(note)
            if found is None:
                return
            dialog = found
        self.dialog = dialog
        dialog.finished.connect(self._answered)
        dialog.open()
        dialog.resize(dialog.sizeHint().boundedTo(self.window().size()))

    def _ask_rejected(self, note: BarNote) -> QDialog | None:
        from workbench.ui.notes.rejected import RejectedDialog

        session = self._session
        home = session.selection.bar_index
        if note.rejected and session.lesson is not None:
            home = session.lesson.piece.bar_of.get(note.rejected[0][0], home)
        hands = session.fingers.hands_of(home)
        if hands is None or not hands.notes:
            session.failed.emit(
                say("This bar has no fingering to compare with yet; try again in a moment.")
            )
            return None
        dialog = RejectedDialog(session, hands, note.rejected, note.why, self.window())
        dialog.accepted.connect(
            lambda: self._hang(rejected=dialog.other_rows, why=dialog.why.text().strip())
        )
        return dialog

    def _answered(self) -> None:
        self.dialog = None

    def _hang(self, **what: object) -> None:
        """Put something on the note; a note without words yet gets the plainest ones."""
        note = self.written()
        if note is None:
            return
        changed = replace(note, **what)  # type: ignore[arg-type]
        if not changed.text:
            changed = replace(changed, text=self._plain_words(changed))
        self._keep(changed, say("Attach to a remark"))

    def _plain_words(self, note: BarNote) -> str:
        if note.rejected:
            return note.why or say("Not the other fingering.")
        if note.grip is not None:
            return say("The grip {grip}.", grip=grip_text(note.grip))
        return say("As in the other lesson.")

    def take_off(self, kind: str) -> None:
        """Take a grip, a rejected fingering or a link off the note."""
        note = self.written()
        if note is None:
            return
        empty: dict[str, dict[str, object]] = {
            "grip": {"grip": None},
            "link": {"link": None},
            "rejected": {"rejected": (), "why": ""},
        }
        self._keep(replace(note, **empty[kind]), say("Take off a remark"))  # type: ignore[arg-type]


def _mark_button(words: str, tip: str) -> QPushButton:
    button = QPushButton(words)
    button.setToolTip(tip)
    button.setFocusPolicy(Qt.FocusPolicy.TabFocus)
    return button
