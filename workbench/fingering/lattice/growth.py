"""The lattice: all hand states layer by layer, all steps between them, priced."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from fractions import Fraction
from hashlib import blake2b

import numpy as np

from workbench.fingering.habits import habits_of, prices, shown
from workbench.fingering.hand.grips import Grip, Neck, grips
from workbench.fingering.hand.holding import IntArray
from workbench.fingering.lattice.expand import Edges, choose, expand, steps_of
from workbench.fingering.lattice.layers import Frame, Join, LatticeLayer, melody_slot, tune_slot
from workbench.fingering.lattice.states import States, need, start_state
from workbench.fingering.lattice.terms import Steps, cost, features, join_steps
from workbench.fingering.types import Pin
from workbench.fingering.weights import Weights
from workbench.instrument.model import Instrument

MOST_STATES = 4_000  # of one layer; beyond that the dearest are left out and a bound is kept
CLOSED = 2**30  # cost of a step into a state that was left out


@dataclass
class Lattice:
    """``states[t]``, ``edges[t]`` (from the parent's states into layer t) and
    ``grips[t]`` for every layer; ``pruned_from`` is the least cost of a state
    that was left out for size, None where nothing was."""

    frame: Frame
    instrument: Instrument
    neck: Neck
    weights: Weights
    states: list[States] = field(default_factory=list)
    edges: list[Edges] = field(default_factory=list)
    grips: list[list[Grip]] = field(default_factory=list)
    pruned_from: int | None = None
    shared: int = 0  # layers whose steps were taken over from equal music
    _terms: dict[tuple[int, int, int], dict[str, int]] = field(default_factory=dict)

    def path_terms(self, path: Sequence[int]) -> list[dict[str, int]]:
        """Terms (in their units, those that are not nothing) of every step of a path."""
        keys = [
            (t, path[x.parent] if x.parent >= 0 else 0, path[t])
            for t, x in enumerate(self.frame.layers)
        ]
        todo = [k for k in keys if k not in self._terms]
        parts = [self._step(*k) for k in todo]
        if parts:
            together = join_steps(parts)
            found = features(together, self.neck)
            price = cost(together, self.neck, self.weights.left)
            at = 0
            for key, part in zip(todo, parts, strict=True):
                size = len(part.pos)
                best = at + int(np.argmin(price[at : at + size]))
                terms = {k: int(v[best]) for k, v in found.items() if int(v[best])}
                self._terms[key] = {**terms, **self._habits(key[0], key[2])}
                at += size
        return [self._terms[k] for k in keys]

    def _habits(self, t: int, into: int) -> dict[str, int]:
        """The habits that count, and how often the grip of a state shows each."""
        known = habits_of(self.weights.left)
        if not known:
            return {}
        places = self.grips[t][int(self.states[t].grip[into])].places
        return {h: many for h, many in shown(places).items() if h in known}

    def _step(self, t: int, a: int, into: int) -> Steps:
        """The steps (mostly one) from state ``a`` of the parent to state ``into`` of layer t."""
        layer = self.frame.layers[t]
        old = self._old(layer).take(a)
        n = need([self.grips[t][int(self.states[t].grip[into])]], layer, self.instrument)
        batch, b = choose(old, layer, n, self.neck, self.instrument)
        steps, after = steps_of(old, layer, batch, b, n, self.instrument)
        wish = self.states[t].take(into).rows()[:, :-1]
        return steps.take((after.rows()[:, :-1] == wish).all(axis=1))

    def _old(self, layer: LatticeLayer) -> States:
        if layer.parent < 0:
            return start_state(self.instrument.strings)
        return self.states[layer.parent]

    def join_costs(self, join: Join) -> IntArray:
        """(states of the join's source, grips of its target): declared cost of the step."""
        old = self.states[join.from_layer]
        layer = join_layer(self.frame, join)
        found = self.grips[join.to_layer]
        n = need(found, layer, self.instrument)
        batch, b = choose(old, layer, n, self.neck, self.instrument, keep_nothing=True)
        steps, _ = steps_of(old, layer, batch, b, n, self.instrument)
        price = cost(steps, self.neck, self.weights.left).reshape(len(old), len(found))
        return price + prices([g.places for g in found], self.weights.left)


def join_layer(frame: Frame, join: Join) -> LatticeLayer:
    """The layer a join leads to, as seen from where it comes from: nothing goes on."""
    target, source = frame.layers[join.to_layer], frame.layers[join.from_layer]
    k = len(source.slots)
    return LatticeLayer(
        target.index,
        join.from_layer,
        target.bar,
        target.onset,
        target.time,
        target.notes,
        target.notes,
        (0,) * k,
        join.upto,
        (Fraction(0),) * k,
        frozenset(),
        melody_slot(target.notes),
        tune_slot(source.notes, target.notes),
        broken=target.broken,
    )


def _signature(layer: LatticeLayer) -> tuple[object, ...]:
    """Equal for layers into which equal states take equal steps."""
    return (
        tuple(n.midi for n in layer.notes),
        layer.carry,
        layer.upto,
        layer.left_over,
        layer.soon,
        layer.melody,
        layer.tune,
        layer.slurs,
        layer.wished,
        layer.held_on,
    )


def build_lattice(
    frame: Frame,
    instrument: Instrument,
    neck: Neck,
    weights: Weights,
    pins: Mapping[str, Pin],
    progress: Callable[[int, int], None] | None = None,
) -> Lattice:
    """Grow the lattice from the first layer on. ``progress(done, all)`` is called
    now and then; what it raises stops the work."""
    out = Lattice(frame, instrument, neck, weights)
    shared: dict[object, tuple[States, Edges]] = {}
    found_grips: dict[tuple[int, ...], list[Grip]] = {}
    known: dict[bytes, States] = {}  # equal states are one object, so what follows is shared
    ids: dict[int, int] = {}  # id of a states object -> number, for the sharing key
    reach: list[IntArray] = []
    habits = habits_of(weights.left)
    for layer in frame.layers:
        if progress and layer.index % 16 == 0:
            progress(layer.index, len(frame.layers))
        here = {n.id: pins[n.id] for n in layer.notes if n.id in pins}
        midis = tuple(n.midi for n in layer.notes)
        if here or midis not in found_grips:
            g = grips(layer.notes, instrument, neck, here)
            if not here:
                found_grips[midis] = g
        else:
            g = found_grips[midis]
        old = out._old(layer)
        key = (
            ids.setdefault(id(old), len(ids)) if layer.parent >= 0 else -1,
            _signature(layer),
            id(g),
        )
        if key in shared:
            states, edges = shared[key]
            out.shared += 1
        else:
            n = need(g, layer, instrument)
            states, edges = expand(old, layer, n, neck, instrument, weights.left)
            if habits:
                own = prices([x.places for x in g], habits)[states.grip]
                edges = replace(edges, cost=(edges.cost + own[edges.into]).astype(np.int32))
            states = known.setdefault(blake2b(states.rows().tobytes()).digest(), states)
            shared[key] = (states, edges)
        above = reach[layer.parent] if layer.parent >= 0 else np.zeros(1, np.int64)
        here_cost = np.full(len(states), 2**60, np.int64)
        np.minimum.at(here_cost, edges.into, above[edges.before()] + edges.cost)
        if len(states) > MOST_STATES:
            states, edges, here_cost, least = _thin(states, edges, here_cost)
            pruned = out.pruned_from
            out.pruned_from = least if pruned is None else min(pruned, least)
        out.states.append(states)
        out.edges.append(edges)
        out.grips.append(g)
        reach.append(here_cost)
    if progress:
        progress(len(frame.layers), len(frame.layers))
    return out


def _thin(states: States, edges: Edges, reach: IntArray) -> tuple[States, Edges, IntArray, int]:
    """The MOST_STATES cheapest states to reach, and the least cost of those left out."""
    order = np.argsort(reach, kind="stable")
    kept = np.sort(order[:MOST_STATES])
    least = int(reach[order[MOST_STATES]])
    place = np.full(len(states), -1, np.int64)
    place[kept] = np.arange(len(kept))
    into = place[edges.into]
    price = np.where(into < 0, CLOSED, edges.cost).astype(np.int32)
    closed = Edges(edges.first, np.maximum(into, 0).astype(np.int32), price)
    some = States(
        states.fret[kept], states.lo[kept], states.hi[kept],
        states.ring[kept], states.pos[kept], states.grip[kept],
    )  # fmt: skip
    return some, closed, reach[kept], least
