"""Piece and fingering laid side by side: what both hands do, moment by moment."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from workbench.fingering.telling.heard import heard
from workbench.fingering.types import FingeredBar, FingeredNote, Fingering
from workbench.language.message import PitchName
from workbench.music.errors import BadInput
from workbench.music.model import Bar, Note, Piece
from workbench.music.remembered import remembered

Place = tuple[int, int, int]  # finger, string, fret


@dataclass(frozen=True)
class Played:
    """A written note together with the fingers that play it."""

    note: Note
    hands: FingeredNote

    @property
    def stopped(self) -> bool:
        """True where a left finger is on a fret."""
        return bool(self.hands.left) and bool(self.hands.fret)

    @property
    def place(self) -> Place | None:
        """(finger, string, fret) of a stopped note, None for an open or unplayable one."""
        h = self.hands
        if not h.left or not h.fret or h.string is None:
            return None
        return (h.left, h.string, h.fret)

    @property
    def position(self) -> int | None:
        """Fret under the first finger while this note is stopped, at least 1."""
        place = self.place
        return None if place is None else max(1, place[2] - place[0] + 1)


@dataclass(frozen=True)
class Stroke:
    """Everything that starts at one moment.

    ``notes`` are struck now, highest pitch first; ``ringing`` are held from
    before. ``at`` counts quarter lengths from the start of the written piece.
    """

    bar: int
    onset: Fraction
    at: Fraction
    notes: tuple[Played, ...]
    ringing: tuple[Played, ...] = ()

    @property
    def ids(self) -> tuple[str, ...]:
        return tuple(p.note.id for p in self.notes)

    @property
    def places(self) -> frozenset[Place]:
        """Fingers put on a fret for the notes struck now."""
        return frozenset(p.place for p in self.notes if p.place is not None)

    @property
    def grip(self) -> frozenset[Place]:
        """All fingers on frets at this moment, for new and held notes."""
        return frozenset(p.place for p in self.notes + self.ringing if p.place is not None)

    @property
    def right(self) -> tuple[str, ...]:
        """Right fingers that pluck now, in the order p i m a."""
        found = {p.hands.right for p in self.notes if p.hands.right}
        return tuple(f for f in "pima" if f in found)

    @property
    def position(self) -> int | None:
        """Fret under the first finger, None where nothing is stopped."""
        found = [p.position for p in self.notes + self.ringing if p.position is not None]
        return min(found) if found else None


def fingered_notes(fingering: Fingering) -> dict[str, FingeredNote]:
    """All fingered notes by note id."""
    return {n.id: n for bar in fingering.bars for n in bar.notes}


def fingered_bars(fingering: Fingering) -> dict[int, FingeredBar]:
    """Fingered bars by the index of the written bar."""
    return {bar.index: bar for bar in fingering.bars}


@remembered
def strokes(piece: Piece, fingering: Fingering) -> tuple[Stroke, ...]:
    """The piece's strokes in written order, one note a sound; grace notes are left out.

    Raises BadInput where a note of the piece has no row in the fingering.
    """
    piece, fingering = heard(piece, fingering)
    hands = fingered_notes(fingering)
    out: list[Stroke] = []
    held: list[tuple[Fraction, Played]] = []
    for bar, start in zip(piece.bars, piece.starts, strict=True):
        moments: dict[Fraction, list[Played]] = {}
        for note in bar.notes:
            if note.grace:
                continue
            if note.id not in hands:
                raise BadInput(
                    "Bar {bar}: the fingering does not belong to this piece "
                    "(note {note} is not in it); finger the piece again.",
                    bar=bar.number,
                    note=PitchName(note.pitch.name),
                )
            moments.setdefault(note.onset, []).append(Played(note, hands[note.id]))
        for onset in sorted(moments):
            at = start + onset
            struck = tuple(sorted(moments[onset], key=lambda p: (-p.note.midi, p.note.id)))
            held = [(end, p) for end, p in held if end > at]
            out.append(Stroke(bar.index, onset, at, struck, tuple(p for _, p in held)))
            held += [(at + p.hands.held, p) for p in struck]
    return tuple(out)


def by_bar(found: tuple[Stroke, ...]) -> dict[int, tuple[Stroke, ...]]:
    """Strokes grouped by written bar."""
    out: dict[int, list[Stroke]] = {}
    for stroke in found:
        out.setdefault(stroke.bar, []).append(stroke)
    return {bar: tuple(rows) for bar, rows in out.items()}


def tempos(piece: Piece) -> tuple[float, ...]:
    """Tempo of every written bar in quarter notes a minute."""
    out: list[float] = []
    now = piece.tempo
    for bar in piece.bars:
        now = bar.tempo if bar.tempo else now
        out.append(now if now > 0 else 90.0)
    return tuple(out)


def bar_seconds(piece: Piece) -> tuple[float, ...]:
    """Length of every written bar in seconds at its tempo."""
    return tuple(
        float(bar.length) * 60.0 / tempo
        for bar, tempo in zip(piece.bars, tempos(piece), strict=True)
    )


def bar_content(bar: Bar) -> tuple[tuple[Fraction, Fraction, int, int, bool], ...]:
    """What is written in a bar, for telling whether two bars are the same."""
    return tuple(sorted((n.onset, n.duration, n.midi, n.voice, n.grace) for n in bar.notes))


@remembered
def written_as(piece: Piece) -> tuple[int, ...]:
    """For every written bar, the index of the first bar in which the same is written."""
    first: dict[object, int] = {}
    return tuple(first.setdefault((bar.length, bar_content(bar)), bar.index) for bar in piece.bars)


def bar_play(
    bar: Bar, hands: dict[str, FingeredNote]
) -> tuple[tuple[Fraction, Fraction, int, int | None, int | None, int | None, str | None], ...]:
    """What is written in a bar and how it is played, sorted; equal for bars learned once."""
    rows = []
    for n in bar.notes:
        h = hands.get(n.id)
        rows.append(
            (
                n.onset,
                n.duration,
                n.midi,
                h.string if h else None,
                h.fret if h else None,
                h.left if h else None,
                h.right if h else None,
            )
        )
    return tuple(sorted(rows, key=lambda r: tuple((x is None, x or 0) for x in r[:6])))


@remembered
def same_as(piece: Piece, fingering: Fingering) -> tuple[int, ...]:
    """For every written bar, the index of the first bar played the very same way."""
    hands = fingered_notes(fingering)
    first: dict[object, int] = {}
    return tuple(
        first.setdefault((bar.length, bar_play(bar, hands)), bar.index) for bar in piece.bars
    )
