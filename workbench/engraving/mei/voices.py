"""From the notes of a bar to layers of events that fill it.

Ties are merged in the piece; here a note is cut at bar lines and into
engravable values, chords are gathered, and gaps become rests.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from itertools import pairwise

from workbench.engraving import ids
from workbench.music.model import Note
from workbench.music.notation.segments import Segment
from workbench.music.notation.values import (
    PLAIN,
    Ratio,
    Value,
    is_binary,
    ratio_for,
    split,
    written,
)


@dataclass(frozen=True)
class Head:
    """One note head: its xml:id and whether a tie leads to it or away from it."""

    id: str
    note: Note
    tie_in: bool = False
    tie_out: bool = False


@dataclass
class Event:
    """A chord, note or rest (no heads) at ``onset`` in the bar.

    ``group`` numbers the tuplet it belongs to, 0 for none. ``hidden`` rests
    only keep the place.
    """

    onset: Fraction
    value: Value
    heads: tuple[Head, ...] = ()
    graces: tuple[Note, ...] = ()
    group: int = 0
    hidden: bool = False


@dataclass
class Layer:
    """``stems`` is "up", "down" or "" (by position); ``voice`` the part and the voice."""

    number: int
    events: list[Event] = field(default_factory=list)
    stems: str = ""
    trailing: tuple[Note, ...] = ()  # grace notes after the last event
    voice: tuple[int, int] = (0, 1)


def _lanes(parts: Sequence[Segment]) -> list[list[Segment]]:
    """Spread one voice's parts over lanes in which nothing overlaps but chords."""
    lanes: list[list[Segment]] = []
    order = sorted(parts, key=lambda s: (s.onset, -s.duration, -s.note.midi, s.note.id))
    for part in order:
        for lane in lanes:
            back = lane[-1]
            if back.onset + back.duration <= part.onset or (
                back.onset == part.onset and back.duration == part.duration
            ):
                lane.append(part)
                break
        else:
            lanes.append([part])
    return lanes


def _height(lane: Sequence[Segment]) -> float:
    return sum(s.note.midi for s in lane) / len(lane) if lane else 0.0


def bar_layers(
    parts: Sequence[Segment],
    graces: Iterable[Note],
    length: Fraction,
    beats: tuple[Fraction, ...],
    heads_used: dict[str, int],
) -> list[Layer]:
    """The layers of a bar, upper voice first. ``heads_used`` counts the heads
    already written of each note, so that ids of later parts get a suffix."""
    by_voice: dict[tuple[int, int], list[Segment]] = defaultdict(list)
    for part in parts:
        by_voice[(part.note.part, part.note.voice)].append(part)
    for note in graces:
        by_voice.setdefault((note.part, note.voice), [])
    lanes: list[tuple[tuple[int, int], bool, list[Segment]]] = []
    for voice in sorted(by_voice):
        spread = [
            (voice, place > 0, lane) for place, lane in enumerate(_lanes(by_voice[voice]) or [[]])
        ]
        lanes += sorted(spread, key=lambda row: -_height(row[2]))
    by_grace: dict[tuple[int, int], list[Note]] = defaultdict(list)
    for note in graces:
        by_grace[(note.part, note.voice)].append(note)
    voices = sorted(by_voice)
    out: list[Layer] = []
    for number, (voice, extra, lane) in enumerate(lanes, 1):
        stems = ""
        if len(lanes) > 1:
            top = voice == voices[0] and (len(voices) > 1 or number == 1)
            stems = "up" if top else "down"
        events = _fill(lane, length, beats, heads_used, extra)
        left_over = () if extra else _hang_graces(events, by_grace.get(voice, []))
        out.append(Layer(number, events, stems, left_over, voice))
    _share_rests(out)
    return out or [Layer(1, [], "")]


def _share_rests(layers: Sequence[Layer]) -> None:
    """Where three voices or more meet, a rest that another voice has at the same moment is
    not written again, nor one of a middle voice while another voice sounds (common practice,
    no source)."""
    seen: set[tuple[Fraction, Value]] = set()
    for place, layer in enumerate(layers):
        rests = [e for e in layer.events if not e.heads and not e.hidden and not e.group]
        if place and len(layers) > 2:
            others = [x for x in layers if x is not layer] if place + 1 < len(layers) else []
            for event in rests:
                middle = any(_sounds(other, event.onset) for other in others)
                event.hidden = middle or (event.onset, event.value) in seen
        seen.update((e.onset, e.value) for e in rests if not e.hidden)


def _sounds(layer: Layer, at: Fraction) -> bool:
    return any(e.heads and e.onset <= at < e.onset + e.value.sounding for e in layer.events)


def _fill(
    lane: Sequence[Segment],
    length: Fraction,
    beats: tuple[Fraction, ...],
    heads_used: dict[str, int],
    hidden: bool,
) -> list[Event]:
    events: list[Event] = []
    groups = _Groups()
    at = Fraction(0)
    chords: dict[tuple[Fraction, Fraction], list[Segment]] = defaultdict(list)
    for part in lane:
        chords[(part.onset, part.duration)].append(part)
    for (onset, duration), members in sorted(chords.items()):
        if onset > at:
            _rests(events, groups, at, onset - at, beats, hidden)
        wish = members[0].note.tuplet if not (members[0].tied_in or members[0].tied_out) else None
        values = _values(groups, onset, duration, beats, wish)
        here = onset
        for k, value in enumerate(values):
            heads = []
            for part in sorted(members, key=lambda s: (s.note.midi, s.note.id)):
                count = heads_used.get(part.note.id, 0) + 1
                heads_used[part.note.id] = count
                head_id = ids.part(part.note.id, count)
                tie_in = k > 0 or part.tied_in
                tie_out = k + 1 < len(values) or part.tied_out
                heads.append(Head(head_id, part.note, tie_in, tie_out))
            events.append(Event(here, value, tuple(heads), group=groups.take(value)))
            here += value.sounding
        at = onset + duration
    if at < length:
        _rests(events, groups, at, length - at, beats, hidden)
    return events


def _values(
    groups: _Groups,
    onset: Fraction,
    duration: Fraction,
    beats: tuple[Fraction, ...],
    wish: Ratio | None,
) -> tuple[Value, ...]:
    """Values of one duration; a tuplet already begun goes on until it is full."""
    if groups.ratio != PLAIN:
        need = groups.missing()
        if duration > need:
            return split(onset, need, (), groups.ratio) + _values(
                _Groups(), onset + need, duration - need, beats, None
            )
        return split(onset, duration, (), groups.ratio)
    return written(onset, duration, beats, wish)


def _rests(
    events: list[Event],
    groups: _Groups,
    onset: Fraction,
    duration: Fraction,
    beats: tuple[Fraction, ...],
    hidden: bool,
) -> None:
    end = onset + duration
    while onset < end:
        stop = end
        if groups.ratio != PLAIN:
            stop = min(end, onset + groups.missing())
            values = split(onset, stop - onset, (), groups.ratio)
        else:
            # a rest shows the beat: fill up to it before going on
            if onset not in (0, *beats):
                stop = min([b for b in beats if b > onset] + [end])
            elif end not in beats:
                stop = max([b for b in beats if onset < b < end], default=end)
            piece = stop - onset
            if not is_binary(piece):
                inner = ratio_for(piece)
                values = split(onset, piece, (), inner)
            else:
                values = split(onset, piece, beats)
        if not values:
            return
        for value in values:
            events.append(Event(onset, value, group=groups.take(value), hidden=hidden))
            onset += value.sounding
        if stop > onset and stop - onset < Fraction(1, 64):
            onset = stop


class _Groups:
    """Gathers values into tuplets: one is full when it holds its number of units,
    the unit being the shortest sign in it so far."""

    def __init__(self) -> None:
        self.count = 0
        self.ratio: Ratio = PLAIN
        self.sum = Fraction(0)
        self.unit = Fraction(8)

    def take(self, value: Value) -> int:
        """The number of the tuplet ``value`` belongs to, 0 for none."""
        if value.ratio == PLAIN:
            self.ratio = PLAIN
            return 0
        if self.ratio != value.ratio:
            self.count, self.ratio = self.count + 1, value.ratio
            self.sum, self.unit = Fraction(0), Fraction(8)
        self.sum += value.sounding
        self.unit = min(self.unit, value.unit)
        if self.missing() == 0:
            self.ratio = PLAIN
        return self.count

    def missing(self) -> Fraction:
        """Length still needed to fill the tuplet."""
        return -self.sum % (self.unit * self.ratio[1])


def _hang_graces(events: list[Event], graces: Sequence[Note]) -> tuple[Note, ...]:
    """Hang grace notes on the event they lead to; returns those after the last."""
    waiting = list(graces)
    for event in events:
        if event.heads:
            event.graces = tuple(g for g in waiting if g.onset <= event.onset)
            waiting = [g for g in waiting if g.onset > event.onset]
    return tuple(waiting)


def attack_events(
    attacks: Mapping[Fraction, Sequence[Note]], length: Fraction, beats: tuple[Fraction, ...]
) -> list[Event]:
    """Events of the tablature: one for every moment at which something is plucked."""
    moments = sorted(attacks)
    if not moments:
        return []
    events: list[Event] = []
    groups = _Groups()
    if moments and moments[0] > 0:
        _rests(events, groups, Fraction(0), moments[0], beats, True)
    for onset, end in zip(moments, [*moments[1:], length], strict=True):
        here = onset
        first = True
        for value in _values(groups, onset, end - onset, beats, None):
            heads = tuple(Head(n.id, n) for n in attacks[onset]) if first else ()
            events.append(Event(here, value, heads, group=groups.take(value), hidden=True))
            here += value.sounding
            first = False
    return events


def tie_targets(bars: Iterable[list[Layer]]) -> dict[str, str]:
    """By the id of each part of a note that is written as several, the id of the next part."""
    rows: dict[str, list[str]] = defaultdict(list)
    for layers in bars:
        for layer in layers:
            for event in layer.events:
                for head in event.heads:
                    rows[head.note.id].append(head.id)
    return {a: b for row in rows.values() for a, b in pairwise(row)}
