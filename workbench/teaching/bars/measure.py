"""What can be counted in one bar: the raw measures every judgement rests on."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from itertools import combinations

from workbench.fingering.hand.reach import pair_limits, span_mm
from workbench.fingering.telling.heard import heard
from workbench.fingering.types import Fingering
from workbench.instrument.model import Hand, Instrument
from workbench.music.beats import beat_length, compound, metric_onset
from workbench.music.model import Bar, Key, Note, Piece
from workbench.music.remembered import remembered
from workbench.teaching.bars.strokes import (
    Place,
    Played,
    Stroke,
    by_bar,
    fingered_bars,
    strokes,
    tempos,
)

# How much each kind of rhythm asks; sums over the kinds present. Common practice, no source.
RHYTHM_POINTS = {
    "quavers": 1.0,
    "semiquavers": 2.0,
    "demisemiquavers": 2.0,
    "dotted rhythm": 1.0,
    "triplets": 1.5,
    "other tuplets": 2.0,
    "syncopation": 2.0,
    "tie over the bar": 1.0,
    "compound time": 1.0,
    "uneven time": 2.5,
    "change of time": 1.0,
    "grace notes": 1.0,
    "two against three": 2.0,
}

WIDE = 0.5  # strain from which a stretch is named: halfway to the greatest span


@dataclass(frozen=True)
class WidestPair:
    """The widest pair of fingers at a moment: ``mm`` between their tips, ``share`` of the
    greatest span of those fingers, ``strain`` 0 where they are still comfortable and 1
    at the greatest span."""

    mm: float = 0.0
    share: float = 0.0
    strain: float = 0.0


@dataclass(frozen=True)
class BarMeasure:
    """Counts of one written bar. Frets from the nut or capo, ``seconds`` at the written tempo."""

    index: int
    seconds: float
    lowest: int | None
    highest: int | None
    highest_fret: int
    positions: frozenset[int]
    places: frozenset[Place]
    changes: int  # strokes for which a left finger is put down anew
    shifts: int
    reach: WidestPair
    barre: float  # 1 for each partial barre, 2 for each full one
    cuts: int
    patterns: frozenset[tuple[int, tuple[tuple[Fraction, int], ...]]]  # strings in time, by voice
    together: int  # strings plucked with another, beyond one a stroke
    fingers: frozenset[str]
    rhythm: frozenset[str]
    onsets: int
    sounding: float  # mean number of notes that should sound
    accidentals: int  # size of the key signature
    chromatic: int  # notes outside the key
    unplayable: int


def in_key(note: Note, key: Key) -> bool:
    """True where the note belongs to the key; in minor the raised sixth and seventh do."""
    tonic_major = (key.fifths * 7) % 12
    degree = (note.midi - tonic_major) % 12
    allowed = {0, 2, 4, 5, 7, 9, 11}
    if key.mode == "minor":
        allowed |= {6, 8}  # raised sixth and seventh of the relative minor
    return degree in allowed


def is_dotted(bar: Bar, note: Note) -> bool:
    """A dotted note shorter than a minim that does not fill a beat of compound time."""
    if note.tuplet or note.grace or note.duration.numerator != 3:
        return False
    return note.duration < 2 and not (
        compound(bar.time_signature) and note.duration == beat_length(bar.time_signature)
    )


def is_syncopated(bar: Bar, note: Note) -> bool:
    """Starts off the beat and sounds across the next one, for at least half a beat more."""
    if note.grace or note.tuplet:
        return False
    beat = beat_length(bar.time_signature)
    where = metric_onset(bar, note.onset) % beat
    return where != 0 and note.duration > beat - where and note.duration >= beat / 2


def rhythm_kinds(bar: Bar, before: Bar | None = None) -> frozenset[str]:
    """The kinds of rhythm present in a bar; keys of RHYTHM_POINTS."""
    kinds: set[str] = set()
    duple: set[int] = set()
    triple: set[int] = set()
    beat = beat_length(bar.time_signature)
    for note in bar.notes:
        if note.grace:
            kinds.add("grace notes")
            continue
        if note.tuplet:
            kinds.add("triplets" if note.tuplet == (3, 2) else "other tuplets")
            triple.add(metric_onset(bar, note.onset) // beat)
        elif note.duration.denominator <= 16:
            if note.duration < Fraction(1, 4):
                kinds.add("demisemiquavers")
            if note.duration <= Fraction(1, 4):
                kinds.add("semiquavers")
            if note.duration <= Fraction(1, 2):
                kinds.add("quavers")
                duple.add(metric_onset(bar, note.onset) // beat)
        if is_dotted(bar, note):
            kinds.add("dotted rhythm")
        if is_syncopated(bar, note):
            kinds.add("syncopation")
        if note.onset + note.duration > bar.length:
            kinds.add("tie over the bar")
    if duple & triple:
        kinds.add("two against three")
    if bar.notes:
        if compound(bar.time_signature):
            kinds.add("compound time")
        elif bar.time_signature[0] in (5, 7, 11, 13):
            kinds.add("uneven time")
        if before is not None and before.time_signature != bar.time_signature:
            kinds.add("change of time")
    return frozenset(kinds)


def placed_anew(played: Played, grip: frozenset[Place], before: dict[int, Place]) -> bool:
    """True where the left finger has to be put down for this note.

    The fingering's own ``move`` decides; where it says nothing, a finger still
    on the same string and fret since it was last used is not put down anew.
    """
    place = played.place
    if place is None:
        return False
    if played.hands.move:
        return played.hands.move != "planted"
    return place not in grip and before.get(place[0]) != place


def _held_places(stroke: Stroke) -> frozenset[Place]:
    return frozenset(p.place for p in stroke.ringing if p.place is not None)


def reach_of(stroke: Stroke, instrument: Instrument, hand: Hand) -> WidestPair:
    """How far the hand opens for a stroke, for the pair that is hardest pressed."""
    worst = WidestPair()
    for (f, s1, r1), (g, s2, r2) in combinations(sorted(stroke.grip), 2):
        if f == g:
            continue  # one finger laid over two strings
        mm = span_mm(instrument, (s1, r1), (s2, r2))
        comfort, greatest = pair_limits(hand)[(f, g)]
        strain = max(0.0, (mm - comfort) / (greatest - comfort))
        if mm / greatest > worst.share:
            worst = WidestPair(mm, mm / greatest, strain)
    return worst


def reach_of_bar(mm: float, hand: Hand) -> WidestPair:
    """A reach known in millimetres only, taken as that of fingers 1 and 4."""
    over = (mm - hand.comfort_14) / (hand.max_14 - hand.comfort_14)
    return WidestPair(mm, mm / hand.max_14, max(0.0, over))


@remembered
def measure_bars(
    piece: Piece, fingering: Fingering, instrument: Instrument, hand: Hand
) -> tuple[BarMeasure, ...]:
    """Measures of every written bar. Raises BadInput where the fingering is another piece's."""
    grouped = by_bar(strokes(piece, fingering))
    fingered = fingered_bars(fingering)
    sounds = {bar.index: bar.notes for bar in heard(piece, fingering)[0].bars}
    last: dict[int, Place] = {}
    out: list[BarMeasure] = []
    before: Bar | None = None
    for bar, tempo in zip(piece.bars, tempos(piece), strict=True):
        rows = grouped.get(bar.index, ())
        changes = shifts = 0
        for stroke in rows:
            held = _held_places(stroke)
            changes += any(placed_anew(p, held, last) for p in stroke.notes)
            shifts += any(p.hands.move == "shift" for p in stroke.notes)
            for place in stroke.places:
                last[place[0]] = place
        played = [p for stroke in rows for p in stroke.notes]
        voices: dict[int, list[tuple[Fraction, int]]] = {}
        for p in played:  # whichever fingers take it: they depend on the tempo
            voices.setdefault(p.note.voice, []).append((p.note.onset, p.hands.string or 0))
        laid = fingered.get(bar.index)
        sounding = sum(
            min(float(p.note.duration), float(bar.length - p.note.onset)) for p in played
        )
        midis = [n.midi for n in bar.notes]
        out.append(
            BarMeasure(
                index=bar.index,
                seconds=float(bar.length) * 60.0 / tempo,
                lowest=min(midis) if midis else None,
                highest=max(midis) if midis else None,
                highest_fret=max((p.hands.fret or 0 for p in played), default=0),
                positions=frozenset(p.position for p in played if p.position is not None),
                places=frozenset(p.place for p in played if p.place is not None),
                changes=changes,
                shifts=shifts,
                reach=max(
                    [reach_of_bar(laid.reach_mm if laid else 0.0, hand)]
                    + [reach_of(s, instrument, hand) for s in rows],
                    key=lambda r: r.share,
                ),
                barre=float(
                    sum(2 if len(b.strings) >= instrument.strings else 1 for b in laid.barres)
                    if laid
                    else 0
                ),
                cuts=sum(1 for p in played if p.hands.cut_reason or p.hands.cut_kind),
                patterns=frozenset((v, tuple(sorted(seq))) for v, seq in voices.items()),
                together=sum(len(s.notes) - 1 for s in rows),
                fingers=frozenset(f for s in rows for f in s.right),
                rhythm=rhythm_kinds(bar, before),
                onsets=len(rows),
                sounding=sounding / float(bar.length) if bar.length > 0 else 0.0,
                accidentals=abs(bar.key.fifths),
                chromatic=sum(1 for n in sounds[bar.index] if not in_key(n, bar.key)),
                unplayable=sum(1 for p in played if p.hands.string is None),
            )
        )
        before = bar
    return tuple(out)
