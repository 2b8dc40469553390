"""When everything happens: bars and notes of the playing order in seconds."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from workbench.fingering.telling.heard import heard
from workbench.fingering.types import FingeredNote, Fingering
from workbench.instrument.model import Instrument
from workbench.music.errors import BadInput
from workbench.music.model import Bar, Note, Piece
from workbench.music.order.form import playing_order
from workbench.music.ringing.slurs import slurred
from workbench.music.ringing.sounds import sounds
from workbench.sound.loudness import Loudness, gain_of
from workbench.sound.manner import as_played
from workbench.sound.sounding import GRACE_SECONDS, Sounding

SLOWEST, FASTEST = 10, 400  # percent of the written tempo
STACCATO = Fraction(1, 2)  # share of its length that a staccato note sounds

#: Loudness: the top voice leads, the first beat carries (by ear, no source).
VOICE_GAIN, LOWER_GAIN, OFFBEAT_GAIN, REST_STROKE_GAIN = 1.0, 0.78, 0.88, 1.15


@dataclass(frozen=True)
class BarTime:
    """A bar as it is played: ``position`` in the order given, ``index`` of the
    written bar, ``start`` and ``seconds`` in seconds."""

    position: int
    index: int
    start: float
    seconds: float


def order_of(
    piece: Piece,
    bars: tuple[int, int] | None = None,
    order: Sequence[int] | None = None,
) -> tuple[int, ...]:
    """The written bars to play, by index.

    By default the playing order, repeats and all. ``bars`` (first and last
    index) alone plays that passage once as written; with ``order`` it keeps
    what of the order lies inside. Raises BadInput where nothing is left.
    """
    count = len(piece.bars)
    if bars is not None:
        first, last = bars
        if not 0 <= first <= last < count:
            raise BadInput(
                "Bars {first} to {last}: '{piece}' has {count} bars; name a first and a last "
                "bar of it.",
                first=first + 1,
                last=last + 1,
                piece=piece.title,
                count=count,
            )
        if order is None:
            return tuple(range(first, last + 1))
        order = [index for index in order if first <= index <= last]
    chosen = tuple(playing_order(piece) if order is None else order)
    if not chosen or not all(0 <= index < count for index in chosen):
        raise BadInput(
            "'{piece}' has no bars to play there; choose bars of the piece.", piece=piece.title
        )
    return chosen


def bar_times(
    piece: Piece, order: Sequence[int], tempo_percent: float = 100
) -> tuple[BarTime, ...]:
    """When each bar of an order begins and how long it lasts.

    Raises BadInput for a tempo outside 10 to 400 percent.
    """
    if not SLOWEST <= tempo_percent <= FASTEST:
        raise BadInput(
            "Tempo {percent:g} %: choose {slowest} to {fastest} percent of the written one.",
            percent=tempo_percent,
            slowest=SLOWEST,
            fastest=FASTEST,
        )
    quarter = [60.0 / tempo * 100 / tempo_percent for tempo in _tempi(piece)]
    times, at = [], 0.0
    for position, index in enumerate(order):
        seconds = float(piece.bars[index].length) * quarter[index]
        times.append(BarTime(position, index, at, seconds))
        at += seconds
    return tuple(times)


def _tempi(piece: Piece) -> list[float]:
    """Quarter notes a minute in every written bar."""
    tempi, tempo = [], piece.tempo
    for bar in piece.bars:
        tempo = bar.tempo or tempo
        if not tempo > 0:
            raise BadInput(
                "Bar {bar} has tempo {tempo:g}; give a tempo above 0.",
                bar=bar.number,
                tempo=tempo,
            )
        tempi.append(tempo)
    return tempi


def soundings(
    piece: Piece,
    times: Sequence[BarTime],
    fingering: Fingering | None = None,
    instrument: Instrument | None = None,
) -> tuple[Sounding, ...]:
    """All notes of the bars as they sound, by their start.

    With a fingering, notes sound as long as they are really held, at the
    pitch of their string and fret; what cannot be played is left out, as it
    would be on the instrument. A string sounds one note at a time, and two
    voices that meet on one pitch are one sound.
    """
    written, also = piece, dict[str, list[str]]()
    if fingering is None:
        shared = sounds(piece)
        lead, piece = shared.of, shared.piece
    else:
        shares = {n.id: n.shares or n.id for bar in fingering.bars for n in bar.notes}

        def lead(note: str) -> str:
            return shares.get(note, note)

        piece, fingering = heard(piece, fingering)
    for one in written.notes:
        if lead(one.id) != one.id:
            also.setdefault(lead(one.id), []).append(one.id)
    slurs = {lead(after): lead(before) for after, before in slurred(written).items()}
    fingered, level = _by_id(fingering), Loudness(piece)
    found = []
    for time in times:
        bar = piece.bars[time.index]
        quarter = time.seconds / float(bar.length) if bar.length else 0.0
        for note in bar.notes:
            hand = fingered.get(note.id)
            if hand is not None and (hand.string is None or hand.fret is None):
                continue
            loud = level.at(bar.index, note)
            made = _sounding(note, bar, time.start, quarter, hand, instrument, loud)
            found.append(replace(made, also=tuple(also.get(note.id, ()))))
    found.sort(key=lambda s: (s.start, s.midi))
    return as_played(found, piece, slurs)


def _by_id(fingering: Fingering | None) -> dict[str, FingeredNote]:
    return {n.id: n for bar in fingering.bars for n in bar.notes} if fingering else {}


def _sounding(
    note: Note,
    bar: Bar,
    start: float,
    quarter: float,
    hand: FingeredNote | None,
    instrument: Instrument | None,
    loud: float,
) -> Sounding:
    midi, string, length, node = note.midi, None, note.duration, 1
    gain = VOICE_GAIN if note.voice == 1 else LOWER_GAIN
    if note.onset != 0 or bar.pickup:
        gain *= OFFBEAT_GAIN
    rest_stroke, finger = False, "i"
    if hand is not None and hand.string is not None and hand.fret is not None:
        string, length = hand.string, hand.rings or min(hand.held, note.duration)
        finger = hand.right or "i"
        if instrument is not None:
            midi = instrument.open_midi[string - 1] + hand.fret
            if "harmonic" in note.articulations:
                midi, node = natural_harmonic(instrument.open_midi[string - 1], hand.fret, note)
        if hand.stroke == "rest":
            gain, rest_stroke = gain * REST_STROKE_GAIN, True
    if "staccato" in note.articulations or "staccatissimo" in note.articulations:
        length *= STACCATO
    return Sounding(
        start=start + float(note.onset) * quarter,
        seconds=GRACE_SECONDS if note.grace else float(length) * quarter,
        midi=midi,
        gain=gain * gain_of(loud),
        string=string,
        note=note.id,
        voice=note.voice,
        bar=bar.index,
        finger=finger,
        loud=loud,
        rest_stroke=rest_stroke,
        node=node,
    )


#: Fret to touch, and the partial that sounds there: the nodes of an ideal string.
NODES = {12: 2, 7: 3, 19: 3, 5: 4, 24: 4, 9: 5, 4: 5, 16: 5}
_PARTIAL_SEMITONES = {2: 12, 3: 19, 4: 24, 5: 28}


def natural_harmonic(open_midi: int, fret: int, note: Note) -> tuple[int, int]:
    """(MIDI number, partial) of a note marked as a harmonic on a string.

    Scores write either where the finger touches or what sounds: the first where
    the fret is a node, the second where the note lies on a partial of the open string.
    Elsewhere the note sounds as fretted.
    """
    for partial, above in _PARTIAL_SEMITONES.items():
        if note.midi == open_midi + above and fret not in NODES:
            return note.midi, partial
    partial = NODES.get(fret, 1)
    return (open_midi + _PARTIAL_SEMITONES[partial], partial) if partial > 1 else (note.midi, 1)
