"""The caret of the music: where the next note goes and what it will be."""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction

from workbench.instrument.model import Instrument
from workbench.language.names import as_first_word, pitch_words
from workbench.language.speech import mark, say
from workbench.music.bar_names import the_bar
from workbench.music.beats import beat_at, beat_figure
from workbench.music.edits.lengths import Length
from workbench.music.edits.line import end_of, place_of
from workbench.music.edits.notes import moments, pitch_at, step_number
from workbench.music.model import Note, Piece

#: Signs the next note may be given: None leaves it to the key.
SIGNS: tuple[tuple[int | None, str], ...] = (
    (None, mark("as the key has it")),
    (1, mark("sharp")),
    (-1, mark("flat")),
    (0, mark("natural")),
)


@dataclass(frozen=True)
class Caret:
    """``step`` is the place on the staff counted from C0, ``string`` that in the
    tablature; ``tablature`` says in which of them one writes. ``alter`` is the sign of
    the next note, None as the key has it."""

    bar: int = 0
    onset: Fraction = Fraction(0)
    voice: int = 1
    step: int = 32  # G4
    string: int = 1
    length: Length = Length()  # noqa: RUF009  (frozen)
    alter: int | None = None
    tablature: bool = False

    def moment(self, piece: Piece) -> Fraction:
        """The moment from the beginning of the piece."""
        return piece.starts[self.bar] + self.onset

    def within(self, piece: Piece, instrument: Instrument) -> Caret:
        """The caret where it still makes sense, after the piece became another."""
        bar = min(self.bar, len(piece.bars) - 1)
        onset = self.onset if bar == self.bar else Fraction(0)
        if onset >= piece.bars[bar].length and bar + 1 < len(piece.bars):
            bar, onset = bar + 1, Fraction(0)
        onset = min(onset, piece.bars[bar].length)
        return replace(self, bar=bar, onset=onset, string=min(self.string, instrument.strings))

    def put(self, piece: Piece, moment: Fraction) -> Caret:
        """At another moment; the end of the piece is one as well."""
        bar, onset = place_of(piece, max(Fraction(0), min(moment, end_of(piece))))
        return replace(self, bar=bar, onset=onset)

    def on(self, piece: Piece, note: Note, string: int | None = None) -> Caret:
        """On a note, in its voice, at its pitch and its string."""
        return replace(
            self,
            bar=piece.bar_of[note.id],
            onset=note.onset,
            voice=note.voice,
            step=step_number(note.pitch),
            string=string or self.string,
        )

    def stepped(self, piece: Piece, by: int) -> Caret:
        """At the next moment (by +1) or the one before (-1), over the bar line where need be."""
        here = [m for m in moments(piece, self.bar, self.voice, self.length.quarters)]
        if by > 0:
            later = [m for m in here if m > self.onset]
            if later:
                return replace(self, onset=later[0])
            if self.bar + 1 < len(piece.bars):
                return replace(self, bar=self.bar + 1, onset=Fraction(0))
            return replace(self, onset=piece.bars[self.bar].length)
        sooner = [m for m in here if m < self.onset]
        if sooner:
            return replace(self, onset=sooner[-1])
        if self.bar == 0:
            return self
        before = moments(piece, self.bar - 1, self.voice, self.length.quarters)
        return replace(self, bar=self.bar - 1, onset=before[-1])

    def struck(self, piece: Piece) -> list[Note]:
        """The notes of its voice that are struck where it stands, the lowest first."""
        notes = [
            n
            for n in piece.bars[self.bar].notes
            if n.voice == self.voice and n.onset == self.onset and not n.grace
        ]
        return sorted(notes, key=lambda n: n.midi)

    def where_words(self, piece: Piece) -> str:
        """``bar 3, beat 2½, voice 1`` at the beginning of a sentence."""
        bar = piece.bars[self.bar]
        beat = beat_figure(beat_at(bar, self.onset))
        place = say(
            "{bar}, beat {beat}, voice {voice}",
            bar=the_bar(bar.number), beat=beat, voice=self.voice,
        )  # fmt: skip
        return as_first_word(place)

    def place_words(self, piece: Piece) -> str:
        """The line it stands on: ``G4``, or ``string 3``."""
        if self.tablature:
            return say("string {string}", string=self.string)
        return pitch_words(pitch_at(self.step, piece.bars[self.bar].key, self.alter).name)

    def next_words(self) -> str:
        """What the next key would write."""
        words = str(self.length.words)
        sign = dict(SIGNS)[self.alter]
        if self.alter is not None:
            words = say("{length}, {sign}", length=words, sign=say(sign))
        if self.tablature:
            return say(
                "A number writes its fret on string {string}: {length}.",
                string=self.string, length=words,
            )  # fmt: skip
        return say("A letter from A to G writes a note: {length}.", length=words)
