"""A table of a bar's notes into which a fingering is typed."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, Qt, Signal
from PySide6.QtGui import QFont
from PySide6.QtWidgets import (
    QAbstractItemView,
    QCompleter,
    QHeaderView,
    QLineEdit,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)

from workbench.fingering.pins.typed import complete
from workbench.fingering.types import FingeredNote, Pin
from workbench.instrument.model import Instrument
from workbench.language.names import pitch_words
from workbench.language.speech import say
from workbench.music.model import Note
from workbench.ui.kit.parts import plain_tip

STRING, FRET, LEFT, RIGHT = 3, 4, 5, 6  # the columns that are typed into
FIELDS = {STRING: "string", FRET: "fret", LEFT: "left", RIGHT: "right"}
Index = QModelIndex | QPersistentModelIndex


class EntryTable(QTableWidget):
    """One row a note; ``asked`` has what is typed, completed as far as it follows."""

    asked_changed = Signal()

    def __init__(
        self,
        notes: Sequence[tuple[Note, str, FingeredNote | None]],
        instrument: Instrument,
        parent: QWidget | None = None,
    ) -> None:
        """``notes``: each with its beat in words, and its fingering now."""
        super().__init__(len(notes), 7, parent)
        self._instrument = instrument
        self._notes = [note for note, _, _ in notes]
        self._pins = [Pin(note.id) for note in self._notes]
        self._filling = False
        self.setAccessibleName(say("Fingering to try"))
        self.setHorizontalHeaderLabels(
            [say("Beat"), say("Note"), say("Now"), say("String"), say("Fret"), say("Left"),
             say("Right")]
        )  # fmt: skip
        self.verticalHeader().hide()
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setTabKeyNavigation(False)
        triggers = QAbstractItemView.EditTrigger
        self.setEditTriggers(
            triggers.AnyKeyPressed | triggers.DoubleClicked | triggers.EditKeyPressed
            | triggers.SelectedClicked
        )  # fmt: skip
        header = self.horizontalHeader()
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(2, QHeaderView.ResizeMode.Stretch)
        for column in range(STRING):
            if (head := self.horizontalHeaderItem(column)) is not None:
                head.setTextAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.setItemDelegate(_Entry(self))
        for row, (note, beat, hands) in enumerate(notes):
            for column, text in enumerate(
                (beat, pitch_words(note.pitch.name), now_in_words(hands))
            ):
                item = QTableWidgetItem(text)
                item.setFlags(Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable)
                self.setItem(row, column, item)
            for column in FIELDS:
                item = QTableWidgetItem("")
                item.setTextAlignment(Qt.AlignmentFlag.AlignCenter)
                item.setToolTip(plain_tip(self._tip(note, column)))
                self.setItem(row, column, item)
        self.itemChanged.connect(self._typed)
        if notes:
            self.setCurrentCell(0, STRING)

    def _tip(self, note: Note, column: int) -> str:
        if column in (STRING, FRET):
            places = "; ".join(
                say("string {string}, fret {fret}", string=s, fret=r)
                for s, r in self._instrument.places(note.midi)
            )
            return say(
                "{pitch} sounds on {places}",
                pitch=pitch_words(note.pitch.name),
                places=places or "–",
            )
        if column == LEFT:
            return say("0 for the open string, 1 to 4 from index to little finger")
        return say("p thumb, i index, m middle, a ring")

    def options(self, row: int, column: int) -> list[str]:
        """What may be typed into a cell."""
        pin, places = self._pins[row], self._instrument.places(self._notes[row].midi)
        if column == STRING:
            return [str(s) for s, _ in places]
        if column == FRET:
            return [str(r) for s, r in places if pin.string in (None, s)] or [
                str(r) for _, r in places
            ]
        if column == LEFT:
            return ["0"] if pin.fret == 0 else ["1", "2", "3", "4"]
        return ["p", "i", "m", "a"]

    @property
    def asked(self) -> tuple[Pin, ...]:
        """What is typed, note by note; notes left free have none."""
        return tuple(pin for pin in self._pins if pin != Pin(pin.note))

    def ask(self, pins: Sequence[Pin]) -> None:
        """Show another fingering; notes without a pin become free."""
        by_note = {pin.note: pin for pin in pins}
        self._pins = [by_note.get(note.id, Pin(note.id)) for note in self._notes]
        self._show()

    def _show(self) -> None:
        self._filling = True
        for row, pin in enumerate(self._pins):
            for column, field in FIELDS.items():
                value = getattr(pin, field)
                item = self.item(row, column)
                assert item is not None
                item.setText("" if value is None else str(value))
                font = QFont(self.font())
                font.setBold(value is not None)
                item.setFont(font)
        self._filling = False

    def _typed(self, item: QTableWidgetItem) -> None:
        if self._filling or item.column() not in FIELDS:
            return
        row, text = item.row(), item.text().strip().lower()
        self._pins[row] = self._with(row, item.column(), text)
        self._show()
        self.asked_changed.emit()

    def _with(self, row: int, column: int, text: str) -> Pin:
        """The row's pin after something was typed: what was typed last stands, and what
        does not go with it is let go."""
        pin, note = self._pins[row], self._notes[row]
        if column == RIGHT:
            return replace(pin, right=text[:1] if text[:1] in ("p", "i", "m", "a") else None)
        number = int(text) if text.isdecimal() else None
        if column == LEFT:
            return replace(pin, left=number if number is not None and number <= 4 else None)
        left = pin.left
        if column == STRING:
            pin = Pin(pin.note, string=number, fret=None, left=None, right=pin.right)
        else:
            places = self._instrument.places(note.midi)
            string = pin.string if (pin.string, number) in places else None
            pin = Pin(pin.note, string=string, fret=number, left=None, right=pin.right)
        pin = complete(pin, note, self._instrument)
        stays = left and pin.fret != 0
        return replace(pin, left=left) if stays else pin


class _Entry(QStyledItemDelegate):
    """Offers what may be typed into a cell."""

    def __init__(self, table: EntryTable) -> None:
        super().__init__(table)
        self._table = table

    def createEditor(self, parent: QWidget, _option: QStyleOptionViewItem, index: Index) -> QWidget:
        field = QLineEdit(parent)
        options = self._table.options(index.row(), index.column())
        completer = QCompleter(options, field)
        completer.setCompletionMode(QCompleter.CompletionMode.InlineCompletion)
        field.setCompleter(completer)
        field.setPlaceholderText(" ".join(options))
        head = self._table.horizontalHeaderItem(index.column())
        field.setAccessibleName(head.text() if head else "")
        return field


def now_in_words(hands: FingeredNote | None) -> str:
    """How a note is fingered now, short."""
    if hands is None or hands.string is None:
        return "–"
    words = say("string {string}, fret {fret}", string=hands.string, fret=hands.fret)
    fingers = " ".join(str(f) for f in (hands.left, hands.right) if f is not None)
    return f"{words}  ({fingers})" if fingers else words
