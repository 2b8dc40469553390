"""The pen that writes music: its caret, and the note at hand, the session's selected one."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from PySide6.QtCore import QObject, Signal

from workbench.fingering.types import Audit, FingeredBar, FingeredNote, Fingering
from workbench.music.edits import notes
from workbench.music.edits.lengths import Length
from workbench.music.edits.line import MOST_VOICES, find
from workbench.music.model import Note, Piece
from workbench.ui.bench.session import Session
from workbench.ui.writing.caret import Caret


class Pen(QObject):
    """Where a teacher who writes music stands in the open lesson."""

    moved = Signal()  # the caret, or what the next key writes
    started = Signal(bool)  # writing begins (True) or ends

    def __init__(self, session: Session, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self.caret = Caret()
        self.writing = False
        self._led = False  # the caret moves, and the selection only follows it
        self._known: dict[str, FingeredNote] = {}
        self.figure: tuple[Caret, str, int] | None = None  # the fret just typed
        session.selection.selected.connect(self._follow)
        session.changed.connect(self._settle)
        session.opened.connect(self._opened)
        session.fingers.fingered.connect(self._learn)

    # Beginning and ending.

    def begin(self) -> None:
        """Write from the selected note or bar on."""
        lesson = self._session.lesson
        if lesson is None or self.writing:
            return
        self._learn()
        self.writing = True
        self.figure = None
        self.caret = replace(self.caret, alter=None)
        self._to_selection(lesson.piece, anew=True)
        self.started.emit(True)
        self.moved.emit()

    def end(self) -> None:
        """Back to fingering."""
        if self.writing:
            self.writing = False
            self.started.emit(False)

    def _opened(self) -> None:
        self._known = {}
        self.caret = Caret(length=self.caret.length)
        if self._session.lesson is None:
            self.end()
        elif self.writing:
            self._to_selection(self._session.lesson.piece, anew=True)
            self.moved.emit()

    # Following the session.

    @property
    def piece(self) -> Piece:
        lesson = self._session.lesson
        assert lesson
        return lesson.piece

    @property
    def note(self) -> Note | None:
        """The note at hand."""
        wanted, lesson = self._session.selection.note_id, self._session.lesson
        if wanted is None or lesson is None or wanted not in lesson.piece.bar_of:
            return None
        return find(lesson.piece, wanted)[1]

    def _learn(self) -> None:
        """Remember where notes are played, for the strip to show until they are fingered."""
        fingering = self._session.fingers.fingering
        if fingering is not None:
            self._known = {n.id: n for bar in fingering.bars for n in bar.notes}

    def _follow(self) -> None:
        if self.writing and not self._led and self._session.lesson is not None:
            self._to_selection(self.piece)
            self.moved.emit()

    def _to_selection(self, piece: Piece, *, anew: bool = False) -> None:
        note, bar = self.note, self._session.selection.bar
        if note is not None:
            self.caret = self.caret.on(piece, note, self.string_of(note.id))
        elif bar is not None and (anew or bar.index != self.caret.bar):
            self.caret = replace(self.caret, bar=bar.index, onset=Fraction(0))
        self.caret = self.caret.within(piece, self._session.instrument)

    def _settle(self) -> None:
        if self.writing and self._session.lesson is not None:
            self.caret = self.caret.within(self.piece, self._session.instrument)
            self.moved.emit()

    def string_of(self, note_id: str) -> int | None:
        lesson = self._session.lesson
        pin = next((p for p in lesson.pins if p.note == note_id), None) if lesson else None
        if pin is not None and pin.string is not None:
            return pin.string
        known = self._known.get(note_id)
        return known.string if known else None

    def stand_in(self) -> Fingering | None:
        """The places of notes known so far, while the corrected music is being fingered."""
        lesson = self._session.lesson
        if lesson is None:
            return None
        pins = {p.note: p for p in lesson.pins}
        out = []
        for bar in lesson.piece.bars:
            row = []
            for note in bar.notes:
                pin, known = pins.get(note.id), self._known.get(note.id)
                if known is not None and known.midi != note.midi:
                    known = None
                if pin is not None and pin.string is not None and pin.fret is not None:
                    same = known and (known.string, known.fret) == (pin.string, pin.fret)
                    known = known if same else FingeredNote(
                        note.id, bar.index, note.onset, note.duration, note.midi,
                        string=pin.string, fret=pin.fret, left=pin.left, right=pin.right,
                        held=note.duration, pinned=True,
                    )  # fmt: skip
                if known is not None:
                    row.append(replace(known, bar=bar.index, onset=note.onset))
            out.append(FingeredBar(bar.index, bar.number, tuple(row)))
        return Fingering(0, False, tuple(out), Audit(0, 0, 1.0))

    # Moving the caret.

    def move(self, caret: Caret, note: str | None = None) -> None:
        """Put the caret, and take the note there in hand: ``note``, or the nearest struck."""
        self.figure = None
        self.caret = caret
        if note is None:
            struck = caret.struck(self.piece)
            if struck:
                note = min(struck, key=self._distance).id
        self.select(note)
        self.moved.emit()

    def _distance(self, note: Note) -> int:
        if self.caret.tablature:
            string = self.string_of(note.id)
            return abs((string or 99) - self.caret.string)
        return abs(notes.step_number(note.pitch) - self.caret.step)

    def select(self, note: str | None) -> None:
        """Take a note of the caret's bar in hand, or none."""
        session = self._session
        self._led = True
        try:
            at = session.selection.position
            if session.selection.bar_index != self.caret.bar:
                at = session.selection.position_of(self.caret.bar)
            session.selection.select(at, note)
        finally:
            self._led = False

    def step(self, by: int) -> None:
        """To the next moment, or the one before."""
        self.move(self.caret.stepped(self.piece, by))

    def on(self) -> None:
        """Go on by the chosen length."""
        self.move(self.caret.put(self.piece, self._now() + self.caret.length.quarters))

    def to_bar_end(self, last: bool) -> None:
        """To the first moment of the bar, or to the last."""
        every = notes.moments(
            self.piece, self.caret.bar, self.caret.voice, self.caret.length.quarters
        )
        self.move(replace(self.caret, onset=every[-1 if last else 0]))

    def line(self, by: int) -> None:
        """To the line above (by +1) or below: a step of the staff, or a string."""
        if self.caret.tablature:
            most = self._session.instrument.strings
            string = max(1, min(most, self.caret.string - by))
            self.move(replace(self.caret, string=string))
        else:
            self.move(replace(self.caret, step=max(0, min(69, self.caret.step + by))))

    def choose(self, **what: object) -> None:
        """Change what the next key writes: length, voice, sign, staff or tablature."""
        self.figure = None
        self.caret = replace(self.caret, **what)  # type: ignore[arg-type]
        self.moved.emit()

    def choose_length(self, length: Length) -> None:
        self.choose(length=length)

    def value(self, base: Fraction) -> None:
        """Choose a plain value; in a triplet where the one before was."""
        self.choose_length(Length(base, 0, self.caret.length.triplet))

    def dots(self, number: int) -> None:
        self.choose_length(replace(self.caret.length, dots=number))

    def triplet(self, on: bool) -> None:
        self.choose_length(replace(self.caret.length, triplet=on))

    def change_staff(self) -> None:
        """From the staff to the tablature, or back."""
        self.choose(tablature=not self.caret.tablature)

    def next_voice(self) -> None:
        """Write in the next voice; after the last comes the first."""
        self.choose(voice=self.caret.voice % MOST_VOICES + 1)

    def _now(self) -> Fraction:
        return self.caret.moment(self.piece)
