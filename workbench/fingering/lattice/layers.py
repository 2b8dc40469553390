"""The frame the lattice is built on: one layer for every moment at which notes begin.

Bars hang in a tree: a bar's parent is the bar played before it the first time
it is played. Every other step of the playing order (a repeat back to its
start, a D.C.) is a *join*, whose cost counts though it is no branch.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from fractions import Fraction

from workbench.music.model import Note, Piece
from workbench.music.order.form import playing_order

NEAR = 4  # semitones: a melody moving no further belongs on neighbouring strings
HELD = Fraction(1, 2)  # quarter lengths from which a note is held rather than passed through
LOOKAHEAD = 4  # layers over which a silent finger stays down for a note that returns


@dataclass(frozen=True)
class LatticeLayer:
    """A moment at which notes begin.

    ``slots`` lists the notes that may sound here: those that begin first,
    then those still written as sounding. ``carry`` maps a parent slot (from 1)
    to the slot here, 0 where the note has ended. ``upto`` tells of the
    parent's slots which are written to sound right up to this moment.
    ``left_over`` is what of each parent slot remains from here, in quarter lengths.
    ``soon`` are the MIDI numbers that begin within the next few layers.
    ``melody``, ``tune``: where the melody is and whence it comes. ``slurs`` lists (slot here,
    parent slot) of notes slurred to from one before. ``wished`` tells of the parent's slots
    which go on here only because they ring in a broken chord, beyond what is written.
    ``broken``: the piece is one of broken chords; ``held_on``: no note that begins is
    shorter than ``HELD``.
    """

    index: int
    parent: int
    bar: int
    onset: Fraction
    time: Fraction
    notes: tuple[Note, ...]
    slots: tuple[Note, ...]
    carry: tuple[int, ...]
    upto: tuple[bool, ...]
    left_over: tuple[Fraction, ...]
    soon: frozenset[int]
    melody: int = 0  # slot of the first voice's note that begins here, 0 = none
    tune: int = 0  # parent slot of the melody note just before, 0 = none or a leap in pitch
    slurs: tuple[tuple[int, int], ...] = ()
    wished: tuple[bool, ...] = ()
    broken: bool = False

    @property
    def held_on(self) -> bool:
        return min(n.duration for n in self.notes) >= HELD


@dataclass(frozen=True)
class Join:
    """A step of the playing order from the last layer of one bar to the first of another."""

    from_layer: int
    to_layer: int
    from_bar: int
    to_bar: int
    upto: tuple[bool, ...]  # slots of from_layer that sound up to the join


@dataclass(frozen=True)
class Frame:
    """``bells``: quarter lengths that notes of a scale ring in all, by id (campanella)."""

    layers: tuple[LatticeLayer, ...]
    joins: tuple[Join, ...]
    children: tuple[tuple[int, ...], ...]
    of_bar: tuple[tuple[int, ...], ...]  # layer indices by written bar
    bells: Mapping[str, Fraction] = field(default_factory=dict)


def moments_of(notes: tuple[Note, ...]) -> list[tuple[Fraction, tuple[Note, ...]]]:
    """Notes of one bar grouped by beginning; each grace note is a moment of its own."""
    out: list[tuple[Fraction, tuple[Note, ...]]] = []
    for onset in sorted({n.onset for n in notes}):
        here = [n for n in notes if n.onset == onset]
        for n in here:
            if n.grace or n.duration == 0:
                out.append((onset, (n,)))
        full = tuple(
            sorted(
                (n for n in here if not n.grace and n.duration > 0),
                key=lambda n: (-n.midi, n.voice, n.id),
            )
        )
        if full:
            out.append((onset, full))
    return out


def _bar_parents(
    piece: Piece, order: tuple[int, ...]
) -> tuple[dict[int, int], list[tuple[int, int]]]:
    parents: dict[int, int] = {}
    joins: list[tuple[int, int]] = []
    before = -1
    for bar in order:
        if bar not in parents:
            parents[bar] = before
        elif before >= 0 and parents[bar] != before and (before, bar) not in joins:
            joins.append((before, bar))
        before = bar
    for bar in range(len(piece.bars)):  # never played: hang it where it is written
        if bar not in parents:
            parents[bar] = bar - 1
    return parents, joins


def build_frame(
    piece: Piece,
    playable: frozenset[str] | None = None,
    slurred: Mapping[str, str] | None = None,
    ringing: Mapping[str, Fraction] | None = None,
    broken: bool = False,
) -> Frame:
    """Lay out the layers and joins of a piece. ``playable`` restricts to those note ids;
    ``slurred`` names for notes sounded by the left hand the note they are slurred from;
    ``broken``: the piece is one of broken chords."""
    slurs = slurred or {}
    rings = ringing or {}
    order = playing_order(piece)
    parents, bar_joins = _bar_parents(piece, order)
    sequence: list[int] = []
    seen: set[int] = set()
    for bar in (*order, *range(len(piece.bars))):
        if bar not in seen:
            seen.add(bar)
            sequence.append(bar)
    layers: list[LatticeLayer] = []
    last_layer: dict[int, int] = {}  # bar -> its last layer, or that of the bar before
    bar_time: dict[int, Fraction] = {}
    of_bar: dict[int, list[int]] = {b: [] for b in range(len(piece.bars))}
    starts: dict[str, Fraction] = {}  # note id -> time along its branch
    for bar in sequence:
        up = parents[bar]
        if up >= 0 and up not in bar_time:  # written before it is ever played
            up = -1
        parent = last_layer.get(up, -1)
        bar_time[bar] = bar_time[up] + piece.bars[up].length if up >= 0 else Fraction(0)
        notes = tuple(n for n in piece.bars[bar].notes if playable is None or n.id in playable)
        for onset, starting in moments_of(notes):
            time = bar_time[bar] + onset
            starts.update((n.id, time) for n in starting)
            layer = _layer(
                len(layers), parent, bar, onset, time, starting, layers, starts, slurs, rings,
                broken,
            )  # fmt: skip
            layers.append(layer)
            of_bar[bar].append(layer.index)
            parent = layer.index
        last_layer[bar] = parent
    children: list[list[int]] = [[] for _ in layers]
    for layer in layers:
        if layer.parent >= 0:
            children[layer.parent].append(layer.index)
    layers = _with_soon(layers, children)
    joins: list[Join] = []
    for a, b in bar_joins:
        source = last_layer.get(a, -1)
        if source < 0 or not of_bar[b]:
            continue
        end = bar_time[a] + piece.bars[a].length
        upto = tuple(starts[n.id] + n.duration >= end for n in layers[source].slots)
        if layers[of_bar[b][0]].onset > 0:  # a rest comes first: time to move
            upto = tuple(False for _ in upto)
        joins.append(Join(source, of_bar[b][0], a, b, upto))
    return Frame(
        tuple(layers),
        tuple(joins),
        tuple(tuple(c) for c in children),
        tuple(tuple(of_bar[b]) for b in range(len(piece.bars))),
    )


def melody_slot(notes: tuple[Note, ...]) -> int:
    """Slot (from 1) of the first voice's top note, 0 where that voice is silent."""
    return next((i for i, n in enumerate(notes, 1) if n.voice == 1), 0)


def tune_slot(before: tuple[Note, ...], notes: tuple[Note, ...]) -> int:
    """Slot of the melody note before, where the melody moves on from it by step or small leap."""
    a, b = melody_slot(before), melody_slot(notes)
    near = a and b and abs(before[a - 1].midi - notes[b - 1].midi) <= NEAR
    return a if near else 0


def _layer(
    index: int,
    parent: int,
    bar: int,
    onset: Fraction,
    time: Fraction,
    starting: tuple[Note, ...],
    layers: list[LatticeLayer],
    starts: dict[str, Fraction],
    slurred: Mapping[str, str],
    ringing: Mapping[str, Fraction],
    broken: bool,
) -> LatticeLayer:
    slots = list(starting)
    carry: list[int] = []
    upto: list[bool] = []
    left_over: list[Fraction] = []
    slurs: list[tuple[int, int]] = []
    wished: list[bool] = []
    if parent >= 0:
        above = layers[parent]
        for n in above.slots:
            end = starts[n.id] + n.duration
            upto.append(end >= time and not n.grace)
            rings_to = starts[n.id] + max(n.duration, ringing.get(n.id, n.duration))
            if rings_to > time and n.duration > 0:
                slots.append(n)
                carry.append(len(slots))
            else:
                carry.append(0)
            left_over.append(max(end - time, Fraction(0)) if n.duration > 0 else Fraction(0))
            wished.append(bool(carry[-1]) and end <= time)
        there = {n.id: i for i, n in enumerate(above.slots, 1)}
        slurs = [
            (i, there[slurred[n.id]])
            for i, n in enumerate(starting, 1)
            if slurred.get(n.id) in there
        ]
    return LatticeLayer(
        index,
        parent,
        bar,
        onset,
        time,
        starting,
        tuple(slots),
        tuple(carry),
        tuple(upto),
        tuple(left_over),
        frozenset(),
        melody_slot(starting),
        tune_slot(layers[parent].notes, starting) if parent >= 0 else 0,
        tuple(slurs),
        tuple(wished),
        broken,
    )


def _with_soon(layers: list[LatticeLayer], children: list[list[int]]) -> list[LatticeLayer]:
    out: list[LatticeLayer] = []
    for layer in layers:
        soon: set[int] = set()
        level = list(children[layer.index])
        for _ in range(LOOKAHEAD):
            deeper: list[int] = []
            for child in level:
                soon.update(n.midi for n in layers[child].notes)
                deeper.extend(children[child])
            level = deeper
        out.append(replace(layer, soon=frozenset(soon)))
    return out
