"""When everything happens: bars and notes of the playing order in seconds."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from workbench.fingering.heard import heard
from workbench.fingering.types import FingeredNote, Fingering
from workbench.instrument.model import Instrument
from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.music.form import playing_order
from workbench.music.model import Bar, Note, Piece
from workbench.music.slurs import slurred
from workbench.music.sounds import sounds

SLOWEST, FASTEST = 10, 400  # percent of the written tempo
GRACE_SECONDS = 0.09  # a grace note's length, taken from before its main note
STACCATO = Fraction(1, 2)  # share of its length that a staccato note sounds

#: Loudness: the top voice leads, the first beat carries (by ear, no source).
VOICE_GAIN, LOWER_GAIN, OFFBEAT_GAIN, REST_STROKE_GAIN, SLURRED_GAIN = 1.0, 0.78, 0.88, 1.15, 0.6


@dataclass(frozen=True)
class BarTime:
    """A bar as it is played: ``position`` in the order given, ``index`` of the
    written bar, ``start`` and ``seconds`` in seconds."""

    position: int
    index: int
    start: float
    seconds: float


@dataclass(frozen=True)
class Sounding:
    """A note as it sounds: from ``start`` for ``seconds``, at ``gain`` (1 = full).

    ``string`` is None where there is no fingering; ``soft`` where the note is
    not struck by the right hand (the notes after the first of a slur).
    """

    start: float
    seconds: float
    midi: int
    gain: float
    string: int | None = None
    soft: bool = False
    note: str = ""


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
                say(
                    "Bars {first} to {last}: '{piece}' has {count} bars; name a first and a last "
                    "bar of it.",
                    first=first + 1,
                    last=last + 1,
                    piece=piece.title,
                    count=count,
                )
            )
        if order is None:
            return tuple(range(first, last + 1))
        order = [index for index in order if first <= index <= last]
    chosen = tuple(playing_order(piece) if order is None else order)
    if not chosen or not all(0 <= index < count for index in chosen):
        raise BadInput(
            say("'{piece}' has no bars to play there; choose bars of the piece.", piece=piece.title)
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
            say(
                "Tempo {percent:g} %: choose {slowest} to {fastest} percent of the written one.",
                percent=tempo_percent,
                slowest=SLOWEST,
                fastest=FASTEST,
            )
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
                say(
                    "Bar {bar} has tempo {tempo:g}; give a tempo above 0.",
                    bar=bar.number,
                    tempo=tempo,
                )
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
    would be on the instrument. A string sounds one note at a time.
    """
    slurs = slurred(piece)
    if fingering is None:
        shared = sounds(piece)
        lead, piece = shared.of, shared.piece
    else:
        shares = {n.id: n.shares or n.id for bar in fingering.bars for n in bar.notes}
        lead = lambda note: shares.get(note, note)  # noqa: E731
        piece, fingering = heard(piece, fingering)
    fingered = _by_id(fingering)
    soft = _soft({lead(b): lead(a) for b, a in slurs.items()}, fingered)
    found = []
    for time in times:
        bar = piece.bars[time.index]
        quarter = time.seconds / float(bar.length) if bar.length else 0.0
        for note in bar.notes:
            hand = fingered.get(note.id)
            if hand is not None and (hand.string is None or hand.fret is None):
                continue
            found.append(
                _sounding(note, bar, time.start, quarter, hand, instrument, note.id in soft)
            )
    found.sort(key=lambda s: (s.start, s.midi))
    return _one_at_a_time(_leading_graces(found, piece))


def _by_id(fingering: Fingering | None) -> dict[str, FingeredNote]:
    return {n.id: n for bar in fingering.bars for n in bar.notes} if fingering else {}


def _soft(slurs: Mapping[str, str], fingered: Mapping[str, FingeredNote]) -> frozenset[str]:
    """Notes that the left hand sounds: those slurred from a note on their own string."""
    return frozenset(
        after
        for after, before in slurs.items()
        if not fingered
        or (after in fingered and before in fingered
            and fingered[after].string == fingered[before].string)
    )  # fmt: skip


def _sounding(
    note: Note,
    bar: Bar,
    start: float,
    quarter: float,
    hand: FingeredNote | None,
    instrument: Instrument | None,
    soft: bool,  # sounded by the left hand
) -> Sounding:
    midi, string, length = note.midi, None, note.duration
    gain = VOICE_GAIN if note.voice == 1 else LOWER_GAIN
    if note.onset != 0 or bar.pickup:
        gain *= OFFBEAT_GAIN
    if hand is not None and hand.string is not None and hand.fret is not None:
        string, length = hand.string, min(hand.held, note.duration)
        if instrument is not None:
            midi = instrument.open_midi[string - 1] + hand.fret
        if hand.stroke == "rest":
            gain *= REST_STROKE_GAIN
    if "staccato" in note.articulations:
        length *= STACCATO
    return Sounding(
        start=start + float(note.onset) * quarter,
        seconds=GRACE_SECONDS if note.grace else float(length) * quarter,
        midi=midi,
        gain=gain * (SLURRED_GAIN if soft else 1.0),
        string=string,
        soft=soft,
        note=note.id,
    )


def _leading_graces(found: list[Sounding], piece: Piece) -> list[Sounding]:
    """Move grace notes before the note they lead to, in their written order."""
    rank = {n.id: i for bar in piece.bars for i, n in enumerate(bar.notes) if n.grace}
    by_start: dict[float, list[Sounding]] = {}
    for sounding in found:
        if sounding.note in rank:
            by_start.setdefault(sounding.start, []).append(sounding)
    if not by_start:
        return found
    moved = [s for s in found if s.note not in rank]
    for start, graces in by_start.items():
        graces.sort(key=lambda s: rank[s.note])
        lead = GRACE_SECONDS * len(graces)
        late = min(lead, start)
        if late < lead:  # nothing comes before the beginning: the main notes wait
            moved = [
                replace(s, start=start - late + lead, seconds=s.seconds - lead + late)
                if s.start == start
                else s
                for s in moved
            ]
        for place, grace in enumerate(graces):
            at = start - late + GRACE_SECONDS * place
            moved.append(replace(grace, start=at))
    return sorted(moved, key=lambda s: (s.start, s.midi))


def _one_at_a_time(found: list[Sounding]) -> tuple[Sounding, ...]:
    """End a note where its string is struck again."""
    next_start: dict[object, float] = {}
    out = []
    for s in reversed(found):
        string: object = s.string if s.string is not None else ("pitch", s.midi)
        seconds = min(s.seconds, next_start.get(string, float("inf")) - s.start)
        next_start[string] = s.start
        if seconds > 0:
            out.append(replace(s, seconds=seconds))
    return tuple(reversed(out))
