"""Fields for what a piece is played on and in which key: for a new lesson or a changed one."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, TypedDict

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QFormLayout, QLineEdit, QSpinBox, QWidget

from workbench.arranging.parts import with_notes
from workbench.arranging.transpose import enharmonic, shift_by
from workbench.arranging.weights import STRICT, TOP_FRET, Wishes
from workbench.arranging.words import key_reason
from workbench.fingering.pins.printed import prints_for
from workbench.instrument.model import Hand, Instrument
from workbench.instrument.table import HANDS, INSTRUMENTS
from workbench.instrument.table import hand as find_hand
from workbench.instrument.table import instrument as find_instrument
from workbench.language.names import key_words
from workbench.language.speech import count, say
from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.ui.bench.jobs import Teller
from workbench.ui.bench.session import Session
from workbench.ui.kit.parts import Faint, Words

if TYPE_CHECKING:
    from workbench.arranging.keys import Candidate
    from workbench.arranging.leadsheet import Pattern


OWN = "custom"
MOST_STEPS = 24  # semitones: two octaves either way
TUNING_HINT = "G4,C4,E4,A4@345"


Candidates = tuple["Candidate", ...]


class KeyChoice(TypedDict):
    """Where a piece is to go, as ``arrange`` takes it."""

    key: str | None
    transpose: int | None
    hand: Hand
    wishes: Wishes


class PlayingFields(QWidget):
    """Instrument, capo, hand and key. The keys that lie well are sought in the background."""

    changed = Signal()

    def __init__(
        self, session: Session, parent: QWidget | None = None, *, new: bool = False
    ) -> None:
        """``new``: for a new lesson, whose piece goes where it lies best unless told otherwise."""
        super().__init__(parent)
        self._session, self._new = session, new
        self._piece: Piece | None = None
        self._sheet: tuple[Piece, Pattern] | None = None
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
        self.capo.setSpecialValueText(say("none", sense="capo"))
        self.hand = QComboBox()
        self.hand.addItems(list(HANDS))
        self.hand.setCurrentText("medium")
        self.key = QComboBox()
        self.key.setEditable(True)
        self.key.setInsertPolicy(QComboBox.InsertPolicy.NoInsert)
        self.key.setToolTip(say("Choose a key, or write one such as F, Bb, D minor"))
        self.steps = QSpinBox()
        self.steps.setRange(-MOST_STEPS, MOST_STEPS)
        self.steps.setToolTip(say("Semitones up, or down where below 0; 0 is as written"))
        self.top_fret = QSpinBox()
        self.top_fret.setRange(1, 24)
        self.top_fret.setValue(TOP_FRET)
        self.top_fret.setToolTip(say("No note lies above this fret"))
        self.strict = QComboBox()
        for word in STRICT:
            self.strict.addItem(say(word), word)
        self.strict.setCurrentIndex(STRICT.index("playable"))
        self.strict.setToolTip(
            say("Faithful keeps what can be kept; easy leaves out what makes it hard")
        )
        self.tune_part, self.bass_part = QComboBox(), QComboBox()
        self.tune_part.setToolTip(say("The part that is the tune; all else lies below it"))
        self.bass_part.setToolTip(say("The part that is the bass; what is neither is inner"))
        self.hint = Faint()
        form = QFormLayout(self)
        form.setContentsMargins(0, 0, 0, 0)
        form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        for label, field in (
            (say("&Instrument"), self.instrument), (say("Own &tuning"), self.tuning),
            (say("C&apo at fret"), self.capo),
            (say("&Hand"), self.hand), (say("Highest &fret"), self.top_fret),
            (say("A&rrangement"), self.strict), (say("Part with the tu&ne"), self.tune_part),
            (say("Part with the &bass"), self.bass_part), (say("&Key"), self.key),
            (say("&Semitones"), self.steps),
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
        self.top_fret.valueChanged.connect(self._ask_keys)
        for box in (self.strict, self.tune_part, self.bass_part):
            box.currentIndexChanged.connect(self._ask_keys)
        self.key.currentIndexChanged.connect(self._key_chosen)
        self.steps.valueChanged.connect(self._steps_chosen)
        form.setRowVisible(self.tuning, False)

    def fill(
        self, piece: Piece, instrument: str, capo: int, hand: str, wishes: Wishes | None = None,
        *, sheet: tuple[Piece, Pattern] | None = None,
    ) -> None:  # fmt: skip
        """Show a piece's choices. ``sheet``: the lead sheet and the pattern it is a solo of,
        which is made for each instrument and key anew."""
        self._piece, self._sheet = piece, sheet
        blockers = (self.instrument, self.capo, self.hand, self.top_fret, self.strict,
                    self.tune_part, self.bass_part)  # fmt: skip
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
        if wishes is not None:
            self.top_fret.setValue(wishes.top_fret)
            self.strict.setCurrentIndex(STRICT.index(wishes.strict))
        self._fill_parts(piece, wishes)
        for part in blockers:
            part.blockSignals(False)
        self._show_keys(())
        self._ask_keys()

    def _fill_parts(self, piece: Piece, wishes: Wishes | None) -> None:
        """Offer the parts of the piece as tune and bass, as chosen before where they stay."""
        names, there = {p.number: p.name for p in piece.parts}, with_notes(piece)
        was = wishes or Wishes()
        chosen = (
            (was.tune_part, was.bass_part)
            if wishes is not None
            else (self.tune_part.currentData() or 0, self.bass_part.currentData() or 0)
        )
        for box, part in zip((self.tune_part, self.bass_part), chosen, strict=True):
            box.clear()
            box.addItem(say("heard from the notes"), 0)
            for number in there:
                name = names.get(number) or say("Part {number}", number=number)
                box.addItem(f"{number}  {name}", number)
            box.setCurrentIndex(max(0, box.findData(part)))
            self._form.setRowVisible(box, len(there) > 1)

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

    def wishes(self) -> Wishes:
        """Highest fret, strictness, and the parts of tune and bass as chosen; BadInput where
        one part is both."""
        return Wishes(
            self.top_fret.value(), self.strict.currentData(),
            int(self.tune_part.currentData() or 0), int(self.bass_part.currentData() or 0),
        )  # fmt: skip

    def key_choice(self) -> KeyChoice:
        """Key, hand and wishes as chosen: semitones of a listed key, or a key by name, or
        neither where the piece may go where it lies best."""
        text = self.key.currentText().strip()
        at = self.key.findText(text)
        named = at < 0 and bool(text)
        return {
            "key": text if named else None,
            "transpose": None if named else self.key.itemData(at) if at >= 0 else 0,
            "hand": find_hand(self.hand.currentText()),
            "wishes": self.wishes(),
        }

    def _ask_keys(self) -> None:
        self.changed.emit()
        piece = self._piece
        if piece is None or not piece.notes:  # to nothing every key suits
            return
        try:
            instrument, hand = self.playing(), find_hand(self.hand.currentText())
            wishes = self.wishes()
        except BadInput as wrong:
            self.hint.setText(str(wrong))
            return
        self.hint.setText(say("Looking for keys that lie well …"))
        sheet = self._sheet

        def work(teller: Teller) -> Candidates:
            from workbench.arranging.keys import by_key, candidate_keys
            from workbench.arranging.leadsheet import solos

            def growing(found: Candidates) -> None:
                teller.so_far((piece, instrument, wishes, by_key(found)))

            def told(done: int, of: int) -> None:
                teller(done / max(1, of))

            return by_key(
                candidate_keys(
                    piece,
                    instrument,
                    hand,
                    wishes=wishes,
                    growing=growing,
                    progress=told,
                    made=solos(*sheet, instrument, hand, wishes) if sheet else None,
                )
            )

        self._session.jobs.start(
            "keys", say("Looking for keys that lie well"), work, self._show_keys, lane="keys",
            growing=self._show_growing,
        )  # fmt: skip

    def _show_growing(self, so_far: tuple[Piece, Instrument, Wishes, Candidates]) -> None:
        """The ranking as far as it goes, where it still is the one asked for and the list is
        not just open under the teacher's pointer."""
        piece, instrument, wishes, found = so_far
        try:
            same = instrument == self.playing() and wishes == self.wishes()
        except BadInput:
            return
        if same and piece is self._piece and not self.key.view().isVisible():
            self._show_keys(found, done=False)

    def _show_keys(self, found: Candidates, *, done: bool = True) -> None:
        at = self.key.currentIndex()
        written = self.key.currentText() if self.key.findText(self.key.currentText()) < 0 else ""
        kept = self.key.itemData(at) if at >= 0 else (None if self._new else 0)
        self.key.blockSignals(True)
        self.key.clear()
        name = key_words(self._piece.key.name) if self._piece else ""
        if self._new:
            self.key.addItem(say("as written if it lies well, else its best key"), None)
        self.key.addItem(say("as written ({key})", key=name), 0)
        for one in found:
            if one.transposition:
                self.key.addItem(candidate_words(one), one.transposition)
                self.key.setItemData(
                    self.key.count() - 1, key_reason(one), Qt.ItemDataRole.ToolTipRole
                )
        self._select(kept)
        if written:
            self.key.setEditText(written)
        self.key.blockSignals(False)
        best = next(iter(found), None)
        if best is not None:
            words = say("Lies best in {key}.", key=key_words(best.key))
            if not done:
                words = say("So far best in {key}; the search goes on.", key=key_words(best.key))
            said = (self._staying(), words, key_reason(best))
            self.hint.setText(" ".join(words for words in said if words))
        elif self._piece is not None:
            self.hint.setText("")

    def _staying(self) -> str:
        """Where the piece stays for the fingering that it prints, as ``arrange`` has it."""
        piece = self._piece
        if not self._new or piece is None or self.key.currentData() is not None:
            return ""
        if self.wishes() != Wishes() or not prints_for(piece, self.playing()):
            return ""
        return say(
            "It stays in {key}, for the fingering that the score prints.",
            key=key_words(piece.key.name),
        )

    def choose_move(self, semitones: int) -> None:
        """Choose to move the piece by so many semitones."""
        self._select(semitones)

    def _select(self, semitones: int | None) -> None:
        at = next((i for i in range(self.key.count()) if self.key.itemData(i) == semitones), -1)
        if at < 0 and semitones is not None:
            key = _key_after(self._piece, semitones)
            words = f"{key} ({moved_words(semitones)})"
            self.key.addItem(words, semitones)
            at = self.key.count() - 1
        self.key.setCurrentIndex(max(0, at))
        self._key_chosen()

    def _key_chosen(self) -> None:
        """The semitones follow the key."""
        moved = self.key.currentData()
        self.steps.blockSignals(True)
        self.steps.setValue(moved if isinstance(moved, int) else 0)
        self.steps.blockSignals(False)

    def _steps_chosen(self, semitones: int) -> None:
        """The key follows the semitones."""
        self._select(semitones)


def _key_after(piece: Piece | None, semitones: int) -> str:
    if piece is None:
        return ""
    shift = shift_by(piece.key, semitones)
    return key_words(enharmonic(replace(piece.key, fifths=piece.key.fifths + shift.fifths)).name)


def moved_words(semitones: int) -> str:
    """How far a piece is moved: "as written", "1 semitone higher", "3 semitones lower"."""
    if semitones == 0:
        return say("as written")
    if semitones > 0:
        return count(semitones, "{n} semitone higher", "{n} semitones higher")
    return count(-semitones, "{n} semitone lower", "{n} semitones lower")


def candidate_words(one: Candidate) -> str:
    """A key in the list: its name, how far it moves the piece, what it costs."""
    words = f"{key_words(one.key)} ({moved_words(one.transposition)})"
    if one.unplayable:
        return f"{words}, " + say("{n} left out", n=one.unplayable)
    return f"{words}, " + say("{n} changed", n=one.changed) if one.changed else words
