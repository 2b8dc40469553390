"""The notes of a piece along one line of time, and how room is made in a voice."""

from __future__ import annotations

import re
from bisect import bisect_right
from collections.abc import Collection, Iterable
from dataclasses import replace
from fractions import Fraction

from workbench.language.message import PitchName
from workbench.music.errors import BadInput
from workbench.music.model import Note, Piece, Pitch

Row = tuple[Fraction, Note]  # moment from the beginning of the piece, note

MOST_VOICES = 4
SHORTEST = Fraction(1, 16)  # what is left of a note shorter than this goes
LOWEST, HIGHEST = 12, 127  # MIDI numbers; below and above nothing is printed
_OWN_ID = re.compile(r"w(\d+)\Z")


def rows_of(piece: Piece) -> list[Row]:
    """Every note with the moment it begins, in quarter lengths from the beginning."""
    return [
        (start + note.onset, note)
        for start, bar in zip(piece.starts, piece.bars, strict=True)
        for note in bar.notes
    ]


def end_of(piece: Piece) -> Fraction:
    """Length of the whole piece as written, in quarter lengths."""
    return piece.starts[-1] + piece.bars[-1].length if piece.bars else Fraction(0)


def place_of(piece: Piece, moment: Fraction) -> tuple[int, Fraction]:
    """Bar index and onset of a moment; the end of the piece lies in its last bar."""
    index = max(0, min(bisect_right(piece.starts, moment) - 1, len(piece.bars) - 1))
    return index, moment - piece.starts[index]


def find(piece: Piece, note_id: str) -> Row:
    """A note and its moment. Raises BadInput where the piece has no such note."""
    index = piece.bar_of.get(note_id)
    if index is None:
        raise BadInput("That note is no longer in the piece; select another one.")
    note = next(n for n in piece.bars[index].notes if n.id == note_id)
    return piece.starts[index] + note.onset, note


def beginning(rows: Iterable[Row], voice: int, moment: Fraction) -> list[Note]:
    """The notes of a voice that are struck at a moment, grace notes left out."""
    return [n for at, n in rows if at == moment and n.voice == voice and not n.grace]


def chord_of(rows: Iterable[Row], moment: Fraction, note: Note) -> list[Note]:
    """The note and those struck with it in its voice for the same length."""
    return [n for n in beginning(rows, note.voice, moment) if n.duration == note.duration]


def fresh_ids(piece: Piece, count: int) -> list[str]:
    """Ids that no note of the piece has."""
    used = [int(found[1]) for n in piece.notes if (found := _OWN_ID.match(n.id))]
    first = max(used, default=0) + 1
    return [f"w{number}" for number in range(first, first + count)]


def checked_pitch(pitch: Pitch) -> Pitch:
    """The pitch itself. Raises BadInput where no instrument and no staff has it."""
    if not (LOWEST <= pitch.midi <= HIGHEST and 0 <= pitch.octave <= 9 and abs(pitch.alter) <= 2):
        raise BadInput(
            "{pitch} lies outside what can be written; choose C0 to G9.",
            pitch=PitchName(pitch.name),
        )
    return pitch


def lasting(note: Note, duration: Fraction) -> Note:
    """The note with another length; it stays in a tuplet only where it has to."""
    odd = duration.denominator
    while odd % 2 == 0:
        odd //= 2
    tuplet = note.tuplet
    if odd == 1:
        keeps = tuplet is not None and duration == note.duration
        tuplet = tuplet if keeps else None
    elif tuplet is None or odd % tuplet[0]:
        tuplet = (odd, 1 << (odd.bit_length() - 1)) if odd <= 15 else None
    return replace(note, duration=duration, tuplet=tuplet)


def cleared(
    rows: Iterable[Row],
    voice: int,
    start: Fraction,
    end: Fraction,
    spare: Collection[str] = (),
) -> list[Row]:
    """Make room in a voice from ``start`` to ``end``.

    A note that sounds before is shortened, one that lies inside goes, one that runs
    on after is struck later; what is left shorter than ``SHORTEST`` goes as well.
    Notes in ``spare`` stay as they are.
    """
    out: list[Row] = []
    gone: set[Fraction] = set()
    later: set[Fraction] = set()
    for at, note in rows:
        stop = at + note.duration
        if note.voice != voice or note.grace or note.id in spare or stop <= start or at >= end:
            out.append((at, note))
        elif at < start:
            if start - at >= SHORTEST:
                out.append((at, lasting(note, start - at)))
        else:
            gone.add(at)
            if stop - end >= SHORTEST:
                out.append((end, lasting(note, stop - end)))
                later.add(at)
    return with_graces(out, voice, gone, later, end)


def with_graces(
    rows: list[Row],
    voice: int,
    gone: Collection[Fraction],
    later: Collection[Fraction] = (),
    end: Fraction = Fraction(0),
) -> list[Row]:
    """Grace notes go with the note they led to: those of ``later`` moments to ``end``,
    those of other moments in ``gone``, where nothing is struck any more, altogether."""
    struck = {at for at, note in rows if note.voice == voice and not note.grace}
    out: list[Row] = []
    for at, note in rows:
        if note.voice != voice or not note.grace or at in struck or at not in gone:
            out.append((at, note))
        elif at in later:
            out.append((end, note))
    return out


def finished(piece: Piece, rows: Iterable[Row]) -> Piece:
    """The piece with these notes in its bars: sorted, slurs in pairs, and what the
    source prints at notes that are gone or have another pitch let go."""
    kept = list(rows)
    before = {n.id: n for n in piece.notes}
    now = {n.id: n for _, n in kept}
    torn = {
        n.voice for n in before.values() if n.id not in now and (n.slur_start or n.slur_stop)
    } | {
        n.voice
        for n in before.values()
        if n.id in now and now[n.id].voice != n.voice and (n.slur_start or n.slur_stop)
    }
    for voice in torn | {now[i].voice for i, n in before.items() if n.voice in torn and i in now}:
        kept = _slurs_in_pairs(kept, voice)
    by_bar: list[list[Row]] = [[] for _ in piece.bars]
    for at, note in kept:
        index, onset = place_of(piece, at)
        by_bar[index].append((at, note if note.onset == onset else replace(note, onset=onset)))
    bars = []
    for bar, found in zip(piece.bars, by_bar, strict=True):
        notes = tuple(n for _, n in sorted(found, key=_order))
        bars.append(bar if notes == bar.notes else replace(bar, notes=notes))
    written = tuple(
        w for w in piece.written if w.note in now and now[w.note].midi == before[w.note].midi
    )
    return replace(piece, bars=tuple(bars), written=written)


def _order(row: Row) -> tuple[Fraction, int, bool, int]:
    at, note = row
    return at, note.voice, not note.grace, 0 if note.grace else -note.midi


def _slurs_in_pairs(rows: list[Row], voice: int) -> list[Row]:
    """Slurs that lost their beginning or end are taken away."""
    line = sorted((r for r in rows if r[1].voice == voice), key=_order)
    open_at: list[str] = []
    starts: set[str] = set()
    stops: set[str] = set()
    for _, note in line:
        if note.slur_stop and open_at:
            starts.add(open_at.pop())
            stops.add(note.id)
        if note.slur_start:
            open_at.append(note.id)

    def paired(note: Note) -> Note:
        start, stop = note.id in starts, note.id in stops
        if (note.slur_start, note.slur_stop) == (start, stop):
            return note
        return replace(note, slur_start=start, slur_stop=stop)

    return [(at, paired(note) if note.voice == voice else note) for at, note in rows]
