"""What arranging works on: notes with their time from the beginning, and changes."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from fractions import Fraction

from workbench.arranging.transpose import move_octaves
from workbench.instrument.model import Instrument
from workbench.language.speech import say
from workbench.music.model import Bar, Note, Piece, Pitch

KINDS = ("key", "whole piece", "voice", "phrase", "octave", "shortened", "dropped")
PITCH_KINDS = ("voice", "phrase", "octave")


@dataclass(frozen=True)
class Change:
    """One thing arranging altered, besides the transposition of everything.

    ``note`` is the note's id, "" where the whole piece is meant; ``beat``
    counts from 1 in the beats of the time signature; ``kind`` is one of
    ``KINDS``; ``reason`` is a sentence for the teacher.
    """

    note: str
    bar_number: str
    beat: Fraction
    kind: str
    reason: str


def beat_of(bar: Bar, onset: Fraction) -> Fraction:
    """The beat, from 1, of an onset in quarter lengths; a pickup bar counts from its end."""
    unit = Fraction(4, bar.time_signature[1])
    full = bar.time_signature[0] * unit
    late = max(full - bar.length, Fraction(0)) if bar.pickup else Fraction(0)
    return (onset + late) / unit + 1


@dataclass
class Spot:
    """A note on its way: ``start`` in quarter lengths from the beginning."""

    note: Note
    bar: Bar
    start: Fraction
    kept: bool = True
    before: Note = field(init=False)

    def __post_init__(self) -> None:
        self.before = self.note

    @property
    def voice(self) -> tuple[int, int]:
        return self.note.part, self.note.voice

    @property
    def midi(self) -> int:
        return self.note.midi

    @property
    def end(self) -> Fraction:
        return self.start + self.note.duration

    @property
    def where(self) -> str:
        """For example ``Bar 3, beat 2 1/2``."""
        beat = beat_of(self.bar, self.note.onset)
        whole, part = divmod(beat, 1)
        return say(
            "Bar {bar}, beat {beat}",
            bar=self.bar.number,
            beat=f"{whole} {part}" if part else whole,
        )

    def raise_by(self, octaves: int) -> None:
        self.note = replace(self.note, pitch=move_octaves(self.note.pitch, octaves))


class Ledger:
    """The changes made so far; at the end one list that tells what really differs."""

    def __init__(self) -> None:
        self._rows: list[tuple[Spot | None, Change]] = []

    def add(self, spot: Spot, kind: str, sentence: str) -> None:
        """Note a change of one note; its place is put before the sentence."""
        self._rows.append(
            (
                spot,
                Change(
                    spot.note.id,
                    spot.bar.number,
                    beat_of(spot.bar, spot.note.onset),
                    kind,
                    f"{spot.where}: {sentence}",
                ),
            )
        )

    def add_whole(self, piece: Piece, kind: str, sentence: str) -> None:
        """Note something that concerns the whole piece."""
        number = piece.bars[0].number if piece.bars else "1"
        self._rows.append((None, Change("", number, Fraction(1), kind, sentence)))

    def changes(self) -> tuple[Change, ...]:
        """What differs in the end, in the order of the music: a dropped note
        counts once, a note that came back to its pitch not at all."""
        last: dict[tuple[str, str], int] = {}
        for i, (_, change) in enumerate(self._rows):
            last[change.note, _group(change.kind)] = i
        kept: list[tuple[tuple[int, Fraction], Change]] = []
        for i, (spot, change) in enumerate(self._rows):
            if spot is None:
                kept.append(((-1, Fraction(0)), change))
            elif last[change.note, _group(change.kind)] == i and _stands(spot, change.kind):
                kept.append(((spot.bar.index, spot.note.onset), change))
        return tuple(change for _, change in sorted(kept, key=lambda row: row[0]))


def _group(kind: str) -> str:
    return "pitch" if kind in PITCH_KINDS else kind


def _stands(spot: Spot, kind: str) -> bool:
    if not spot.kept:
        return kind == "dropped"
    if kind in PITCH_KINDS:
        return spot.note.pitch != spot.before.pitch
    return spot.note.duration != spot.before.duration


def spots_of(piece: Piece) -> list[Spot]:
    """The notes of a piece in order of time, as they stand in their bars."""
    return [
        Spot(note, bar, piece.starts[bar.index] + note.onset)
        for bar in piece.bars
        for note in bar.notes
    ]


def rebuilt(piece: Piece, spots: Iterable[Spot]) -> Piece:
    """The piece with its notes as the spots have them, dropped ones left out."""
    now = {spot.note.id: spot.note for spot in spots if spot.kept}
    return replace(
        piece,
        bars=tuple(
            replace(bar, notes=tuple(now[n.id] for n in bar.notes if n.id in now))
            for bar in piece.bars
        ),
    )


_FLATS = (
    ("C", 0), ("D", -1), ("D", 0), ("E", -1), ("E", 0), ("F", 0),
    ("G", -1), ("G", 0), ("A", -1), ("A", 0), ("B", -1), ("B", 0),
)  # fmt: skip


def midi_name(midi: int) -> str:
    """A MIDI number as a pitch name, black keys as flats: 58 is ``Bb3``."""
    octave, rest = divmod(midi, 12)
    step, alter = _FLATS[rest]
    return Pitch(step, alter, octave - 1).name


def voice_name(voice: tuple[int, int], spots: Iterable[Spot]) -> str:
    """A voice as one says it: by its number, with the part where there are several."""
    several = len({spot.note.part for spot in spots}) > 1
    return (
        say("voice {voice} of part {part}", voice=voice[1], part=voice[0])
        if several
        else say("voice {voice}", voice=voice[1])
    )


def compass(instrument: Instrument) -> frozenset[int]:
    """All MIDI numbers the instrument can sound."""
    return frozenset(
        open_string + fret
        for open_string in instrument.open_midi
        for fret in range(instrument.playable_frets + 1)
    )
