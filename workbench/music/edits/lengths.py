"""Written lengths, and notes made longer, shorter, tied and untied."""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction

from workbench.language.message import Message, PitchName, mark, message
from workbench.music.bar_names import the_bar
from workbench.music.edits.line import (
    beginning,
    chord_of,
    cleared,
    end_of,
    find,
    finished,
    fresh_ids,
    lasting,
    place_of,
    rows_of,
)
from workbench.music.errors import BadInput
from workbench.music.model import Note, Piece

#: Note values from the longest: quarter length, name.
VALUES: tuple[tuple[Fraction, str], ...] = (
    (Fraction(4), mark("whole note")),
    (Fraction(2), mark("half note")),
    (Fraction(1), mark("quarter note")),
    (Fraction(1, 2), mark("eighth note")),
    (Fraction(1, 4), mark("16th note")),
    (Fraction(1, 8), mark("32nd note")),
)
MOST_DOTS = 2


@dataclass(frozen=True)
class Length:
    """A note value as one writes it: ``base`` one of ``VALUES``, dots, in a triplet or not."""

    base: Fraction = Fraction(1)
    dots: int = 0
    triplet: bool = False

    @property
    def quarters(self) -> Fraction:
        """What it lasts, in quarter lengths."""
        plain = self.base * (2 - Fraction(1, 2**self.dots))
        return plain * Fraction(2, 3) if self.triplet else plain

    @property
    def tuplet(self) -> tuple[int, int] | None:
        """As notes carry it."""
        return (3, 2) if self.triplet else None

    @property
    def words(self) -> Message:
        """For example ``dotted eighth note`` or ``quarter note, triplet``."""
        name = message(dict(VALUES)[self.base])
        if self.dots == 1:
            name = message("dotted {value}", value=name)
        elif self.dots == 2:
            name = message("double dotted {value}", value=name)
        return message("{value}, triplet", value=name) if self.triplet else name

    def stepped(self, by: int) -> Length:
        """The next longer (by -1) or shorter (+1) value; itself at either end."""
        at = [base for base, _ in VALUES].index(self.base) + by
        return replace(self, base=VALUES[at][0]) if 0 <= at < len(VALUES) else self


def length_of(note: Note) -> Length | None:
    """The single value that shows a note; None where it takes several or none."""
    triplets = (True, False) if note.tuplet == (3, 2) else (False, True)
    for triplet in triplets:
        for base, _ in VALUES:
            for dots in range(MOST_DOTS + 1):
                found = Length(base, dots, triplet)
                if found.quarters == note.duration:
                    return found
    return None


def set_length(piece: Piece, note_id: str, length: Length) -> Piece:
    """Give a note, and the chord it is struck in, another length.

    A longer one takes over the rests and notes that follow in its voice; of a note
    that it covers in part the rest is struck later. A shorter one leaves a rest.
    Raises BadInput for a grace note, or a length past the end of the piece.
    """
    at, note = find(piece, note_id)
    if note.grace:
        raise BadInput("A grace note has no length of its own; choose the note that it leads to.")
    end = at + length.quarters
    if end > end_of(piece):
        raise BadInput(
            "The length chosen ({value}) would run past the last bar; add a bar first.",
            value=length.words,
        )
    rows = rows_of(piece)
    chord = {n.id for n in chord_of(rows, at, note)}
    spare = chord | {n.id for start, n in rows if n.voice == note.voice and start <= at}
    rows = [
        (start, replace(n, duration=length.quarters, tuplet=length.tuplet) if n.id in chord else n)
        for start, n in cleared(rows, note.voice, at, end, spare)
    ]
    return finished(piece, rows)


def tie(piece: Piece, note_id: str) -> Piece:
    """Hold a note, and the chord it is struck in, through the next one of the same pitch.

    The two become one note that lasts as long as both. Raises BadInput where the
    voice does not go on with the very same pitches.
    """
    at, note = find(piece, note_id)
    rows = rows_of(piece)
    chord = chord_of(rows, at, note)
    follow = beginning(rows, note.voice, at + note.duration)
    if note.grace or not follow or note.midi not in {n.midi for n in follow}:
        raise BadInput(
            "No {pitch} follows at once in voice {voice}; write it first, then tie to it.",
            pitch=PitchName(note.pitch.name),
            voice=note.voice,
        )
    if {n.midi for n in chord} != {n.midi for n in follow} or len({n.duration for n in follow}) > 1:
        raise BadInput(
            "Only part of the chord goes on; move the held note to another voice, then tie it."
        )
    gone = {n.id for n in follow}
    held = {n.id for n in chord}
    kept = [
        (start, lasting(n, n.duration + follow[0].duration) if n.id in held else n)
        for start, n in rows
        if n.id not in gone and not (n.grace and n.voice == note.voice and start == at + n.duration)
    ]
    return finished(piece, kept)


def untie(piece: Piece, note_id: str, moment: Fraction | None = None) -> Piece:
    """Strike a held note, and its chord, anew: at ``moment`` (quarter lengths from the
    beginning of the piece), or at the bar line it is tied over.

    Raises BadInput where nothing is held there.
    """
    at, note = find(piece, note_id)
    end = at + note.duration
    if moment is None:
        index, onset = place_of(piece, at)
        moment = at - onset + piece.bars[index].length
        if moment >= end:
            raise BadInput(
                "{pitch} in {bar} is not tied over the bar line; there is nothing to untie.",
                pitch=PitchName(note.pitch.name),
                bar=the_bar(piece.bars[index].number),
            )
    if not at < moment < end:
        raise BadInput("The note does not sound there; choose a moment while it is held.")
    rows = rows_of(piece)
    return finished(piece, struck_anew(piece, rows, chord_of(rows, at, note), moment))


def struck_anew(
    piece: Piece, rows: list[tuple[Fraction, Note]], held: list[Note], moment: Fraction
) -> list[tuple[Fraction, Note]]:
    """Notes that sound through ``moment`` cut in two there; the second part has a new id."""
    ids = dict(zip([n.id for n in held], fresh_ids(piece, len(held)), strict=True))
    out: list[tuple[Fraction, Note]] = []
    for start, note in rows:
        if note.id not in ids:
            out.append((start, note))
            continue
        rest = lasting(note, start + note.duration - moment)
        out.append((start, replace(lasting(note, moment - start), slur_stop=note.slur_stop)))
        out.append(
            (moment, replace(rest, id=ids[note.id], slur_stop=False, slur_start=False,
                             articulations=()))
        )  # fmt: skip
    return out
