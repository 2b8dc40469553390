"""Piece and fingering laid side by side: what both hands do, moment by moment."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from workbench.fingering.telling.heard import heard
from workbench.fingering.types import FingeredBar, FingeredNote, Fingering
from workbench.language.names import pitch_words
from workbench.language.speech import count, say
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
                    note=pitch_words(note.pitch.name),
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


def compound(bar: Bar) -> bool:
    """True for 6/8, 9/8, 12/8 and their like, where three go to a beat."""
    beats, unit = bar.time_signature
    return unit >= 8 and beats > 3 and beats % 3 == 0


def beat_length(bar: Bar) -> Fraction:
    """Length of one beat in quarter lengths; a dotted beat in compound time."""
    unit = Fraction(4, bar.time_signature[1])
    return unit * 3 if compound(bar) else unit


def metric_onset(bar: Bar, onset: Fraction) -> Fraction:
    """Where an onset lies in the metre: in a pickup the bar is counted from its end."""
    if not bar.pickup:
        return onset
    full = Fraction(4 * bar.time_signature[0], bar.time_signature[1])
    return onset + max(full - bar.length, Fraction(0))


def beat_number(bar: Bar, onset: Fraction) -> str:
    """The beat as a player counts it: "1", "2 and", "3 and a bit"."""
    where = metric_onset(bar, onset) / beat_length(bar)
    whole = where.numerator // where.denominator
    rest = where - whole
    if rest == 0:
        return str(whole + 1)
    if rest == Fraction(1, 2):
        return say("{beat} and", beat=whole + 1)
    return say("{beat} and a bit", beat=whole + 1)


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


def as_first_word(words: str) -> str:
    """The words with a capital, as they begin a sentence."""
    return words[:1].upper() + words[1:]


def bars_in_words(piece: Piece, indices: tuple[int, ...]) -> str:
    """ "bar 3", "bars 1–4", "pickup, bars 2, 5–6": printed numbers of written bars."""
    if not indices:
        return say("no bar")
    wanted = sorted(set(indices))
    if wanted[0] < len(piece.bars) and piece.bars[wanted[0]].number == "0":
        after = bars_in_words(piece, tuple(wanted[1:])) if wanted[1:] else ""
        return say("pickup, {bars}", bars=after) if after else say("pickup")
    runs: list[list[int]] = [[wanted[0], wanted[0]]]
    for index in wanted[1:]:
        if index == runs[-1][1] + 1:
            runs[-1][1] = index
        else:
            runs.append([index, index])
    number = {bar.index: bar.number for bar in piece.bars}
    parts = [number[a] if a == b else f"{number[a]}–{number[b]}" for a, b in runs]
    listed = ", ".join(parts)
    return count(len(wanted), "bar {bars}", "bars {bars}", bars=listed)
