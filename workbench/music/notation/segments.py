"""A piece laid out for writing: ties split again over bar lines, voices in layers.

Bars are counted by their place in the piece.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction

from workbench.music.model import Note, Piece
from workbench.music.notation.values import Value, exactly, written


@dataclass(frozen=True)
class Segment:
    """The part of a note inside one bar. ``tied_in`` and ``tied_out`` tell
    whether it goes on from the bar before and into the next."""

    note: Note
    onset: Fraction
    duration: Fraction
    tied_in: bool = False
    tied_out: bool = False

    def within(self, length: Fraction) -> Segment:
        """The segment cut at the end of a bar of this length, where it runs past the piece."""
        return replace(self, duration=min(self.duration, length - self.onset))


@dataclass(frozen=True)
class Chord:
    """Segments struck (or going on) together with one length; graces stand alone. ``values``:
    the note values that it is written with, tied."""

    onset: Fraction
    duration: Fraction
    members: tuple[Segment, ...]
    grace: bool = False
    values: tuple[Value, ...] = ()


def split_at_bars(piece: Piece) -> list[list[Segment]]:
    """The segments of every bar. What runs past the last bar stays in it."""
    out: list[list[Segment]] = [[] for _ in piece.bars]
    for bar in piece.bars:
        for note in bar.notes:
            index, onset, left, tied = bar.index, note.onset, note.duration, False
            while index + 1 < len(piece.bars) and onset >= piece.bars[index].length and left:
                onset -= piece.bars[index].length
                index += 1
            if note.grace or not left:
                out[index].append(Segment(note, onset, Fraction(0)))
                continue
            while left:
                room = piece.bars[index].length - onset
                last = left <= room or index + 1 == len(piece.bars)
                here = left if last else room
                out[index].append(Segment(note, onset, here, tied, not last))
                left, onset, tied, index = left - here, Fraction(0), True, index + 1
    return out


def layers(
    segments: list[Segment], spare: int, beats: tuple[Fraction, ...] = ()
) -> dict[int, list[Chord]]:
    """Voice number to its chords in order, none overlapping another.

    Notes of a voice that overlap go into further voices from ``spare`` up. ``beats`` of the
    bar are where a length is cut that one sign cannot show.
    """
    out: dict[int, list[Chord]] = {}
    for voice in sorted({s.note.voice for s in segments}):
        rows: list[list[Chord]] = [[]]
        for chord in _chords([s for s in segments if s.note.voice == voice], beats):
            place = next((r for r in rows if _fits(r, chord)), None)
            if place is None:
                place = []
                rows.append(place)
            place.append(chord)
        out[voice] = rows[0]
        for row in rows[1:]:
            out[spare] = row
            spare += 1
    return out


def _fits(row: list[Chord], chord: Chord) -> bool:
    return not row or row[-1].onset + row[-1].duration <= chord.onset


def _chords(segments: list[Segment], beats: tuple[Fraction, ...]) -> list[Chord]:
    out = [Chord(s.onset, Fraction(0), (s,), grace=True) for s in segments if s.note.grace]
    groups: dict[tuple[Fraction, Fraction], list[Segment]] = {}
    for s in segments:
        if not s.note.grace and s.duration:
            groups.setdefault((s.onset, s.duration), []).append(s)
    for (onset, duration), members in groups.items():
        wish = members[0].note.tuplet
        values = exactly(written(onset, duration, beats, wish), duration)
        out.append(Chord(onset, duration, tuple(members), values=values))
    return sorted(out, key=lambda c: (c.onset, not c.grace))
