"""A piece with the fingers that an edition prints, as a chain that weights can be learned from.

The chain holds the steps of the piece's lattice, bars in written order, each with the amount
of every term; steps that cost far more than the best are left out. ``good`` marks the states
that agree with the print. A mark that no hand can hold beside the others is left out.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np

from workbench.fingering.habits import prices, shown
from workbench.fingering.hand.grips import Grip, Neck, grips, neck
from workbench.fingering.hand.holding import IntArray
from workbench.fingering.lattice.campanella import ringing_frame
from workbench.fingering.lattice.expand import Batch, choose, merge, steps_of
from workbench.fingering.lattice.layers import Frame, LatticeLayer
from workbench.fingering.lattice.playable import split_playable
from workbench.fingering.lattice.states import BoolArray, Need, States, before, need, start_state
from workbench.fingering.lattice.terms import LEFT_TERMS, cost, features
from workbench.fingering.types import Settings
from workbench.instrument.model import Hand, Instrument
from workbench.music.model import Piece, WrittenFingers
from workbench.music.ringing.slurs import slurred
from workbench.music.ringing.sounds import sounds

FAR = 1e9
MARGIN = 12_000  # thousandths beyond the best way up to which steps are kept
Place = tuple[int, int, int]  # string, fret, finger


@dataclass(frozen=True)
class Mark:
    """What is printed at one note of a step: ``slot`` counts its notes from 0."""

    slot: int
    bar: int
    left: int | None
    string: int | None

    def fits(self, place: Place) -> bool:
        """Whether a place is the printed one."""
        return self.left in (None, place[2]) and self.string in (None, place[0])


@dataclass(frozen=True)
class Link:
    """Steps into one moment. ``before``/``into``: (E,) states, ``before`` in order;
    ``amounts``: (E, terms) in the terms' units; ``good``: (states,) agree with the print;
    ``places``: by state the places of the notes; ``marks``: the print, those left out too."""

    before: IntArray
    into: IntArray
    amounts: IntArray
    good: BoolArray
    places: tuple[tuple[Place, ...], ...]
    marks: tuple[Mark, ...]

    @property
    def states(self) -> int:
        return len(self.good)

    def with_habits(self, habits: Sequence[str]) -> IntArray:
        """``amounts`` and beside them how often the places of each step show each habit."""
        if not habits:
            return self.amounts
        column = {h: i for i, h in enumerate(habits)}
        seen = np.zeros((self.states, len(habits)), np.uint8)
        for state, places in enumerate(self.places):
            for habit, many in shown(places).items():
                if habit in column:
                    seen[state, column[habit]] = many
        return np.concatenate([self.amounts, seen[self.into]], axis=1)


@dataclass(frozen=True)
class Chain:
    """The links of a piece, and how many marks no hand can hold."""

    links: tuple[Link, ...]
    left_out: int

    @property
    def size(self) -> int:
        """Steps in all."""
        return sum(len(x.before) for x in self.links)

    def habits(self) -> set[str]:
        """Every habit that a way through the chain can show."""
        return {h for x in self.links for places in x.places for h in shown(places)}


@dataclass(frozen=True)
class _Grown:
    layer: LatticeLayer
    old: States
    grips: list[Grip]
    need: Need
    states: States
    batch: Batch
    into: IntArray
    price: IntArray


def chain(
    piece: Piece,
    printed: tuple[WrittenFingers, ...],
    instrument: Instrument,
    hand: Hand,
    weights: Mapping[str, int],
    margin: int = MARGIN,
) -> Chain:
    """The chain of a piece under the weights by which far steps are told."""
    flat = replace(piece, bars=tuple(b.without_form() for b in piece.bars))
    heard = sounds(flat)
    table = neck(instrument, hand)
    playable, _ = split_playable(heard.piece, instrument, table, {})
    frame = ringing_frame(heard.piece, playable, slurred(heard.piece), Settings(), instrument)
    grown = _grow(frame, instrument, table, weights)
    asked = {heard.of(w.note): w for w in printed}
    marks = [_marks(g.layer, asked) for g in grown]
    good, left_out = _agreeing(grown, marks)
    free = _within(grown, [np.ones(len(g.states), bool) for g in grown], margin)
    kept = [a | b for a, b in zip(free, _within(grown, good, margin), strict=True)]
    links, place = [], np.zeros(1, np.int64)
    for g, keep, fine, here in zip(grown, kept, good, marks, strict=True):
        link, place = _link(g, keep, fine, here, place, instrument, table)
        links.append(link)
    return Chain(tuple(links), left_out)


def _grow(
    frame: Frame, instrument: Instrument, table: Neck, weights: Mapping[str, int]
) -> list[_Grown]:
    out: list[_Grown] = []
    found: dict[tuple[int, ...], list[Grip]] = {}
    old = start_state(instrument.strings)
    for layer in frame.layers:
        midis = tuple(n.midi for n in layer.notes)
        if midis not in found:
            found[midis] = grips(layer.notes, instrument, table, {})
        n = need(found[midis], layer, instrument)
        batch, b = choose(old, layer, n, table, instrument)
        steps, after = steps_of(old, layer, batch, b, n, instrument)
        states, into = merge(after)
        own = prices([x.places for x in found[midis]], weights)[states.grip]
        price = cost(steps, table, weights) + own[into]
        out.append(_Grown(layer, old, found[midis], n, states, batch, into, price))
        old = states
    return out


def _marks(layer: LatticeLayer, asked: Mapping[str, WrittenFingers]) -> tuple[Mark, ...]:
    out = []
    for slot, n in enumerate(layer.notes):
        w = asked.get(n.id)
        if w and (w.left is not None or w.string is not None) and not n.grace:
            out.append(Mark(slot, layer.bar, w.left, w.string))
    return tuple(out)


def _agreeing(grown: list[_Grown], marks: list[tuple[Mark, ...]]) -> tuple[list[BoolArray], int]:
    """States that agree with the print, and how many marks had to be left out for it."""
    out: list[BoolArray] = []
    left_out = 0
    reach = np.ones(1, bool)
    for g, here in zip(grown, marks, strict=True):
        fits = np.ones(len(g.grips), bool)
        for mark in here:
            one = np.array([mark.fits(x.places[mark.slot]) for x in g.grips])
            if (fits & one).any():
                fits &= one
            else:
                left_out += 1
        good = fits[g.states.grip]
        came = np.zeros(len(g.states), bool)
        came[g.into[reach[g.batch.a]]] = True
        if not (came & good).any():
            left_out += len(here)
            good = np.ones(len(g.states), bool)
        reach = came & good
        out.append(good)
    return out, left_out


def _within(grown: list[_Grown], good: list[BoolArray], margin: int) -> list[BoolArray]:
    """Steps on ways through good states that cost at most ``margin`` more than the best."""
    below: list[IntArray] = []
    own = np.zeros(len(grown[-1].states)) if grown else np.zeros(1)
    for g, fine in zip(reversed(grown), reversed(good), strict=True):
        own = np.where(fine, own, FAR)
        below.append(own)
        up = np.full(len(g.old), FAR)
        np.minimum.at(up, g.batch.a, g.price + own[g.into])
        own = up
    below.reverse()
    best = float(own[0])
    out, down = [], np.zeros(1)
    for g, own, fine in zip(grown, below, good, strict=True):
        out.append(down[g.batch.a] + g.price + own[g.into] <= best + margin)
        here = np.full(len(g.states), FAR)
        np.minimum.at(here, g.into, down[g.batch.a] + g.price)
        down = np.where(fine, here, FAR)
    return out


def _link(
    g: _Grown,
    keep: BoolArray,
    good: BoolArray,
    marks: tuple[Mark, ...],
    place: IntArray,
    instrument: Instrument,
    table: Neck,
) -> tuple[Link, IntArray]:
    """The kept steps, states numbered anew; ``place`` gives the new numbers before."""
    batch = Batch(g.batch.a[keep], g.batch.g[keep], g.batch.keep[keep])
    seen = before(g.old, g.layer, instrument)
    steps, _ = steps_of(g.old, g.layer, batch, seen, g.need, instrument)
    found = features(steps, table)
    amounts = np.stack([np.minimum(found[t], 250) for t in LEFT_TERMS], axis=1).astype(np.uint8)
    states, into = np.unique(g.into[keep], return_inverse=True)
    origin = place[batch.a]
    order = np.argsort(origin, kind="stable")
    new = np.full(len(g.states), -1, np.int64)
    new[states] = np.arange(len(states))
    link = Link(
        origin[order],
        into.reshape(-1)[order],
        amounts[order],
        good[states],
        tuple(g.grips[int(i)].places for i in g.states.grip[states]),
        marks,
    )
    return link, new
