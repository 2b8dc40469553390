"""A fingering typed by hand, and what it would bring: its cost, its cut notes, or why no
hand can hold it."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QSize, QTimer
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from workbench.fingering.pins.typed import in_order, read_figures, write_figures
from workbench.fingering.telling.comparing import compare
from workbench.fingering.telling.words import words as told
from workbench.fingering.types import Alternative, FingeredBar, Pin
from workbench.language.speech import count, say
from workbench.music.bar_names import the_bar
from workbench.music.beats import counted_beat
from workbench.music.errors import BadInput
from workbench.teaching.lessons import edits
from workbench.teaching.lessons.lesson import NOTE_KINDS, BarNote, RejectedNote
from workbench.ui.bench.session import Session
from workbench.ui.choices.why_table import EntryTable
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Caution, Faint, Heading, Words, Wrapped, plain_tip
from workbench.ui.kit.rows_table import RowsTable

SOON = 200  # milliseconds after the last figure


def cuts_in_words(now: FingeredBar, other: FingeredBar, beats: dict[str, str]) -> tuple[str, ...]:
    """The notes that the other fingering cuts, those first that are held now."""
    held = {n.id for n in now.notes if n.cut_reason is None}
    cut = [n for n in other.notes if n.cut_reason is not None]
    cut.sort(key=lambda n: n.id not in held)
    return tuple(
        say("New: beat {beat}: {reason}", beat=beats[n.id], reason=told(n.cut_reason))
        if n.id in held
        else say("As now: beat {beat}: {reason}", beat=beats[n.id], reason=told(n.cut_reason))
        for n in cut
    )


class WhyNotDialog(QDialog):
    """Asks for a fingering of the selected bar and tells at once what it would bring."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        bar, lesson = session.selection.bar, session.lesson
        assert bar is not None and lesson is not None
        self._session, self._lesson, self._bar = session, lesson, bar
        self._notes = in_order(bar)
        self._beats = {n.id: str(counted_beat(bar, n.onset)) for n in bar.notes}
        self.found: Alternative | None = None
        self.wrong = ""
        name = the_bar(bar.number)
        self.setWindowTitle(say("Why not another fingering of {bar}?", bar=name))
        self.setAccessibleName(self.windowTitle())
        hands = (
            {n.id: n for n in session.fingers.bar_hands.notes} if session.fingers.bar_hands else {}
        )
        rows = [(note, self._beats[note.id], hands.get(note.id)) for note in self._notes]
        self.figures = QLineEdit()
        self.figures.setAccessibleName(say("Figures, one for each note"))
        self.figures.setPlaceholderText(say("for example: 3 2/5 0 2.2m -"))
        self.figures.setToolTip(
            say("One figure a note: fret 3; string and fret 2/3; a left finger after a dot "
                "2/3.1; a right finger at the end 3i; - for any")
        )  # fmt: skip
        self.table = EntryTable(rows, session.instrument)
        self.caution = Caution()
        self.status = Faint()
        self.reason = Wrapped()
        self.cuts = Wrapped()
        self.holder = QVBoxLayout()
        self.comparison: RowsTable | None = None
        self.pin_button = QPushButton(say("Take it as &pins"))
        self.pin_button.setToolTip(say("Hold the bar to what is typed; undo takes it back"))
        self.note_box = QComboBox()
        self.note_box.setAccessibleName(say("Remark that it is attached to"))
        self.note_box.setToolTip(plain_tip(self.note_box.accessibleName()))
        self.reject_button = QPushButton(say("Write down why &not"))
        self.reject_button.setToolTip(
            say("Attach it to a remark as the fingering not taken, with the reason")
        )
        self.close_button = QPushButton(say("&Close"))
        self._lay_out()
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(SOON)
        self._soon.timeout.connect(self.ask)
        self.figures.textEdited.connect(self._figures_typed)
        self.table.asked_changed.connect(self._table_typed)
        self.pin_button.clicked.connect(self.take)
        self.reject_button.clicked.connect(self.write_down)
        self.close_button.clicked.connect(self.reject)
        self.finished.connect(lambda _: session.jobs.cancel("why"))
        here = {n.id for n in bar.notes}
        self.table.ask([pin for pin in lesson.pins if pin.note in here])
        self.figures.setText(write_figures(self.table.asked, self._notes))
        self._show()

    def _lay_out(self) -> None:
        label = Words(say("&Figures"))
        label.setBuddy(self.figures)
        line = QHBoxLayout()
        line.addWidget(label)
        line.addWidget(self.figures, 1)
        told = QWidget()
        inner = QVBoxLayout(told)
        inner.setContentsMargins(0, 0, 0, 0)
        for part in (self.caution, self.status, self.reason, self.cuts):
            inner.addWidget(part)
        inner.addLayout(self.holder)
        inner.addStretch(1)
        area = QScrollArea()
        area.setWidgetResizable(True)
        area.setWidget(told)
        area.setAccessibleName(say("What it would bring"))
        area.setFrameShape(QScrollArea.Shape.NoFrame)
        buttons = QHBoxLayout()
        buttons.addWidget(self.pin_button)
        buttons.addWidget(self.reject_button)
        buttons.addWidget(self.note_box, 1)
        buttons.addWidget(self.close_button)
        for button in (self.pin_button, self.reject_button, self.close_button):
            button.setAutoDefault(False)
        layout = QVBoxLayout(self)
        layout.addWidget(Heading(say("Type the fingering you have in mind")))
        layout.addWidget(
            Faint(say("Type into the table, or as figures; what stays empty is chosen for you."))
        )
        layout.addLayout(line)
        layout.addWidget(self.table, 2)
        layout.addWidget(Heading(say("What it would bring")))
        layout.addWidget(area, 3)
        layout.addLayout(buttons)

    def sizeHint(self) -> QSize:
        return QSize(em(self, 44), em(self, 40))

    # Typing.

    def _figures_typed(self, text: str) -> None:
        try:
            pins = read_figures(text, self._notes, self._session.instrument)
        except BadInput as wrong:
            self._soon.stop()
            self._session.jobs.cancel("why")
            self._tell(None, str(wrong))
            return
        self.table.ask(pins)
        self._wait()

    def _table_typed(self) -> None:
        self.figures.setText(write_figures(self.table.asked, self._notes))
        self._wait()

    def _wait(self) -> None:
        self._tell(None, "")
        self._soon.start()

    def ask(self) -> None:
        """Ask the engine what the typed fingering would bring."""
        pins = self.table.asked
        if not pins:
            self._tell(None, "")
            return

        def told(answer: Alternative | BadInput) -> None:
            if self.table.asked != pins:
                return  # typed on meanwhile
            if isinstance(answer, BadInput):
                self._tell(None, str(answer))
            else:
                self._tell(answer, "")

        self._session.fingers.try_fingering(self._bar.index, pins, told)

    # Telling.

    def _tell(self, found: Alternative | None, wrong: str) -> None:
        self.found, self.wrong = found, wrong
        self._show()

    def _show(self) -> None:
        found, now = self.found, self._session.fingers.bar_hands
        self.caution.say(say("Not possible. {why}", why=self.wrong) if self.wrong else "")
        waiting = bool(self.table.asked) and found is None and not self.wrong
        self.status.setText(
            say("Being worked out …")
            if waiting
            else ""
            if self.table.asked or self.wrong
            else say("Nothing is typed yet.")
        )
        self.status.setVisible(bool(self.status.text()))
        if self.comparison is not None:
            self.holder.removeWidget(self.comparison)
            self.comparison.deleteLater()
            self.comparison = None
        self.reason.setText(told(found.reason) if found else "")
        cuts: tuple[str, ...] = ()
        if found is not None and found.bar is not None and now is not None:
            cuts = cuts_in_words(now, found.bar, self._beats)
            rows = compare(now, found.bar)
            self.comparison = RowsTable(
                say("Comparison of two fingerings"),
                (say("In this bar"), say("As it is"), say("As typed")),
                [(row.what, row.first, row.second) for row in rows],
                strong=frozenset(i for i, row in enumerate(rows) if row.first != row.second),
            )
            self.comparison.setMinimumHeight(em(self, 12))
            self.holder.addWidget(self.comparison)
        head = count(len(cuts), "It cuts {n} note:", "It cuts {n} notes:")
        if found and not cuts:
            head = say("It cuts no note.")
        self.cuts.setText("\n".join([head, *cuts]) if found else "")
        self._fill_notes()
        self.pin_button.setEnabled(found is not None)
        rejected = bool(self._rejected())
        for part in (self.reject_button, self.note_box):
            part.setEnabled(rejected and bool(found or self.wrong))

    def _fill_notes(self) -> None:
        """The bar's teaching notes that it can be attached to, and a new one."""
        at = self.note_box.currentData()
        self.note_box.clear()
        self.note_box.addItem(say("in a new remark"), None)
        for note in self._session.bar_notes:
            short = " ".join(note.text.replace("*", "").split())
            words = short if len(short) <= 40 else short[:39] + "…"
            self.note_box.addItem(say("in the remark: {words}", words=words), note.id)
        self.note_box.setCurrentIndex(max(0, self.note_box.findData(at)))

    # Doing.

    def take(self) -> None:
        """Pin the bar as it is typed; notes left free lose the pin they had."""
        asked, here = self.table.asked, {n.id for n in self._bar.notes}

        if self._session.edit(
            say("Pin a typed fingering"), lambda lesson: edits.pin_as_typed(lesson, here, asked)
        ):
            self.accept()

    def _rejected(self) -> tuple[RejectedNote, ...]:
        """The typed notes as a rejected fingering: (note, string, fret, finger) rows."""
        asked: dict[str, Pin] = {pin.note: pin for pin in self.table.asked}
        if self.found is not None:
            return tuple(
                (n.id, n.string, n.fret, n.left or 0)
                for n in self.found.notes
                if n.id in asked and n.string is not None and n.fret is not None
            )
        return tuple(
            (pin.note, pin.string, pin.fret, pin.left or 0)
            for pin in asked.values()
            if pin.string is not None and pin.fret is not None
        )

    def write_down(self) -> None:
        """Attach the typed fingering, and why it is not taken, to a teaching note."""
        index, rows = self._bar.index, self._rejected()
        why = self.wrong or (told(self.found.reason) if self.found else "")
        chosen = self.note_box.currentData()
        note = next((n for n in self._session.bar_notes if n.id == chosen), None)
        if note is None:
            note = BarNote(edits.fresh_id("note"), NOTE_KINDS[0], why, index, index)
        written = replace(note, rejected=rows, why=why)
        if self._session.edit(
            say("Write down why not"), lambda lesson: edits.put_note(lesson, written)
        ):
            self.accept()
