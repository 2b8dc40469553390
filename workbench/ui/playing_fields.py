"""Fields for what a piece is played on and in which key: for a new lesson or a changed one."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QFormLayout, QLineEdit, QSpinBox, QWidget

from workbench.instrument.model import Instrument
from workbench.instrument.table import HANDS, INSTRUMENTS
from workbench.instrument.table import hand as find_hand
from workbench.instrument.table import instrument as find_instrument
from workbench.language.names import key_words
from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.ui.parts import Faint, Words
from workbench.ui.session import Session

OWN = "custom"
TUNING_HINT = "G4,C4,E4,A4@345"


class PlayingFields(QWidget):
    """Instrument, capo, hand and key. The keys that lie well are sought in the background."""

    changed = Signal()

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._piece: Piece | None = None
        self.instrument = QComboBox()
        for found in INSTRUMENTS.values():
            self.instrument.addItem(say(found.name), found.id)
        self.instrument.addItem(say("Own tuning …"), OWN)
        self.tuning = QLineEdit()
        self.tuning.setPlaceholderText(TUNING_HINT)
        self.tuning.setToolTip(
            say("Highest-numbered string to string 1, then @ and the scale length in millimetres")
        )
        self.capo = QSpinBox()
        self.capo.setRange(0, 12)
        self.capo.setSpecialValueText(say("none"))
        self.hand = QComboBox()
        self.hand.addItems(list(HANDS))
        self.hand.setCurrentText("medium")
        self.key = QComboBox()
        self.key.setEditable(True)
        self.key.setInsertPolicy(QComboBox.InsertPolicy.NoInsert)
        self.key.setToolTip(say("Choose a key, or write one such as F, Bb, D minor"))
        self.hint = Faint()
        form = QFormLayout(self)
        form.setContentsMargins(0, 0, 0, 0)
        form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        for label, field in (
            (say("&Instrument"), self.instrument), (say("Own &tuning"), self.tuning),
            (say("C&apo at fret"), self.capo),
            (say("&Hand"), self.hand), (say("&Key"), self.key),
        ):  # fmt: skip
            words = Words(label)
            words.setBuddy(field)
            field.setAccessibleName(label.replace("&", ""))
            form.addRow(words, field)
        form.addRow(self.hint)
        self._form = form
        self.instrument.currentIndexChanged.connect(self._instrument_changed)
        self.tuning.editingFinished.connect(self._ask_keys)
        self.capo.valueChanged.connect(self._ask_keys)
        self.hand.currentIndexChanged.connect(self._ask_keys)
        form.setRowVisible(self.tuning, False)

    def fill(self, piece: Piece, instrument: str, capo: int, hand: str) -> None:
        """Show a piece's choices."""
        self._piece = piece
        blockers = (self.instrument, self.capo, self.hand)
        for part in blockers:
            part.blockSignals(True)
        own = instrument.startswith("custom:")
        self.instrument.setCurrentIndex(
            max(0, self.instrument.findData(OWN if own else instrument))
        )
        self.tuning.setText(instrument.removeprefix("custom:") if own else "")
        self._form.setRowVisible(self.tuning, own)
        self.capo.setValue(capo)
        if self.hand.findText(hand) < 0:
            self.hand.addItem(hand)
        self.hand.setCurrentText(hand)
        for part in blockers:
            part.blockSignals(False)
        self._show_keys(())
        self._ask_keys()

    def _instrument_changed(self) -> None:
        self._form.setRowVisible(self.tuning, self.instrument.currentData() == OWN)
        self._ask_keys()

    @property
    def instrument_id(self) -> str:
        if self.instrument.currentData() == OWN:
            return f"custom:{self.tuning.text().strip() or TUNING_HINT}"
        return str(self.instrument.currentData())

    def playing(self) -> Instrument:
        """The instrument chosen; BadInput where its tuning or capo makes none."""
        return find_instrument(self.instrument_id, self.capo.value())

    def key_choice(self) -> dict[str, Any]:
        """The key as ``arrange`` takes it: semitones of a listed key, or a key by name."""
        text = self.key.currentText().strip()
        at = self.key.findText(text)
        if at >= 0:
            return {"transpose": self.key.itemData(at)}
        return {"key": text} if text else {"transpose": 0}

    def _ask_keys(self) -> None:
        self.changed.emit()
        piece = self._piece
        if piece is None or not piece.notes:  # to nothing every key suits
            return
        try:
            instrument, hand = self.playing(), find_hand(self.hand.currentText())
        except BadInput as wrong:
            self.hint.setText(str(wrong))
            return
        self.hint.setText(say("Looking for keys that lie well …"))
        candidates = self._session.services.candidates
        self._session.jobs.start(
            "keys", say("Looking for keys that lie well"),
            lambda _: candidates(piece, instrument, hand), self._show_keys, lane="keys",
        )  # fmt: skip

    def _show_keys(self, found: Any) -> None:
        chosen = self.key.currentIndex()
        kept = self.key.itemData(chosen) if chosen > 0 else None
        self.key.clear()
        name = key_words(self._piece.key.name) if self._piece else ""
        self.key.addItem(say("as written ({key})", key=name), 0)
        for one in found:
            if one.transposition:
                self.key.addItem(candidate_words(one), one.transposition)
        at = self.key.findData(kept) if kept is not None else 0
        self.key.setCurrentIndex(max(0, at))
        best = next(iter(found), None)
        if best is not None:
            reason = " ".join(str(r) for r in best.reasons[:2])
            self.hint.setText(
                f"{say('Lies best in {key}.', key=key_words(best.key))} {reason}".strip()
            )
        elif self._piece is not None:
            self.hint.setText("")
        for at in range(self.key.count()):
            self.key.setItemData(at, self.key.itemText(at), Qt.ItemDataRole.ToolTipRole)


def candidate_words(one: Any) -> str:
    """A key in the list: its name, how far it moves the piece, what it costs."""
    words = say(
        "{key} ({steps} semitones)", key=key_words(one.key), steps=f"{one.transposition:+d}"
    )
    if one.unplayable:
        return f"{words}, " + say("{n} unplayable", n=one.unplayable)
    return f"{words}, " + say("{n} changed", n=one.changed) if one.changed else words
