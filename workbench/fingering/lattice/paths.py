"""The least-cost path through the lattice, with the joins of the playing order counted.

Without joins the bars hang in a tree and one sweep from the ends to the
beginning is exact. A join ties the grip at its target to the state at its
source; it is solved by branch and bound over target grips, each node one
sweep. Every bound is a proved lower bound: a free join counts its least cost.
"""

from __future__ import annotations

import heapq
from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np

from workbench.fingering.hand.holding import IntArray
from workbench.fingering.lattice.growth import Lattice

FAR = 2**40
MOST_NODES = 400  # sweeps spent on joins before a bound is reported instead

Masks = Mapping[int, IntArray]  # layer -> allowed states


@dataclass(frozen=True)
class Path:
    """``states[t]`` of every layer, the cost with joins, and a proved lower bound."""

    states: tuple[int, ...]
    cost: int
    bound: int

    @property
    def optimal(self) -> bool:
        return self.cost == self.bound


class Sweeper:
    """Solves a lattice under masks (allowed states by layer), keeping its last tables.

    After a change of masks only the layers between the changed ones and the
    beginning are swept again.
    """

    def __init__(self, lattice: Lattice) -> None:
        self.lattice = lattice
        self.n = len(lattice.frame.layers)
        self.joins = lattice.frame.joins
        self.join_costs = [lattice.join_costs(j) for j in self.joins]
        self._up: list[IntArray | None] = [None] * self.n  # by parent state
        self._own: list[IntArray | None] = [None] * self.n  # by own state: all below
        self._keys: list[object] = [None] * self.n

    # -- sweeps ----------------------------------------------------------------

    def _tables(self, extra: dict[int, tuple[object, IntArray]]) -> None:
        """Bring the tables up to date; ``extra`` adds (key, cost per state) at layers."""
        stale = [False] * self.n
        layers = self.lattice.frame.layers
        children = self.lattice.frame.children
        for t in range(self.n - 1, -1, -1):
            key = extra[t][0] if t in extra else None
            if not stale[t] and self._own[t] is not None and self._keys[t] == key:
                continue
            own = np.zeros(len(self.lattice.states[t]), np.int64)
            for c in children[t]:
                up = self._up[c]
                assert up is not None
                own += up
            if t in extra:
                own = own + extra[t][1]
            edges = self.lattice.edges[t]
            up = np.minimum.reduceat(edges.cost + own[edges.into], edges.first[:-1])
            before = self._up[t]
            self._own[t], self._keys[t] = own, key
            self._up[t] = up
            parent = layers[t].parent
            if parent >= 0 and (before is None or not np.array_equal(before, up)):
                stale[parent] = True

    def _walk(self) -> tuple[int, tuple[int, ...]]:
        """(cost, states) of the best path by the tables."""
        chosen = [0] * self.n
        value = 0
        for t in range(self.n):
            parent = self.lattice.frame.layers[t].parent
            a = chosen[parent] if parent >= 0 else 0
            if parent < 0:
                up = self._up[t]
                assert up is not None
                value += int(up[0])
            edges = self.lattice.edges[t]
            own = self._own[t]
            assert own is not None
            part = edges.of(a)
            into = edges.into[part]
            chosen[t] = int(into[int(np.argmin(edges.cost[part] + own[into]))])
        return value, tuple(chosen)

    # -- joins -----------------------------------------------------------------

    def _join_price(self, states: tuple[int, ...]) -> int:
        total = 0
        for j, table in zip(self.joins, self.join_costs, strict=True):
            g = int(self.lattice.states[j.to_layer].grip[states[j.to_layer]])
            total += int(table[states[j.from_layer], g])
        return total

    def _extra(self, masks: Masks, fixed: Mapping[int, int]) -> dict[int, tuple[object, IntArray]]:
        """Costs to add by layer: closed states, and joins with target grips fixed or free."""
        keys: dict[int, list[object]] = {}
        sums: dict[int, IntArray] = {}

        def add(t: int, key: object, cost: IntArray) -> None:
            keys.setdefault(t, []).append(key)
            sums[t] = sums[t] + cost if t in sums else cost

        for t, allowed in masks.items():
            add(t, allowed.tobytes(), np.where(allowed, 0, FAR).astype(np.int64))
        for target, g in fixed.items():
            grip = self.lattice.states[target].grip
            add(target, ("is", g), np.where(grip == g, 0, FAR).astype(np.int64))
        for number, (j, table) in enumerate(zip(self.joins, self.join_costs, strict=True)):
            found = fixed.get(j.to_layer)
            if found is None:
                open_grips = np.unique(self.lattice.states[j.to_layer].grip)
                if j.to_layer in masks:
                    allowed = self.lattice.states[j.to_layer].grip[masks[j.to_layer]]
                    open_grips = np.unique(allowed) if len(allowed) else open_grips
                cost = table[:, open_grips].min(axis=1)
                key: object = ("join", number, open_grips.tobytes())
            else:
                cost, key = table[:, found], ("join", number, found)
            add(j.from_layer, key, cost.astype(np.int64))
        return {t: (tuple(keys[t]), sums[t]) for t in sums}

    def _bounded(self, masks: Masks, fixed: Mapping[int, int]) -> tuple[int, int, tuple[int, ...]]:
        """(lower bound, true cost of the path found, its states) at a node."""
        extra = self._extra(masks, fixed)
        self._tables(extra)
        bound, states = self._walk()
        if not self.joins:
            return bound, bound, states
        true = self._tree_cost(states, masks) + self._join_price(states)
        return bound, true, states

    def _tree_cost(self, states: tuple[int, ...], masks: Masks) -> int:
        total = 0
        for t in range(self.n):
            total += self._step(states, t)
            if t in masks and not masks[t][states[t]]:
                total += FAR
        return total

    def solve(self, masks: Masks | None = None) -> Path:
        """The best path whose states are allowed. Cost FAR or more: there is none."""
        masks = masks or {}
        bound, true, states = self._bounded(masks, {})
        best = (true, states)
        if true == bound or not self.joins:
            return Path(states, true, self._proved(bound))
        queue: list[tuple[int, int, dict[int, int]]] = [(bound, 0, {})]
        targets = sorted({j.to_layer for j in self.joins})
        nodes, tick = 0, 0
        while queue and queue[0][0] < best[0] and nodes < MOST_NODES:
            _, _, fixed = heapq.heappop(queue)
            free = [t for t in targets if t not in fixed]
            if not free:
                continue
            target = free[0]
            for g in np.unique(self.lattice.states[target].grip):
                child = {**fixed, target: int(g)}
                bound, true, states = self._bounded(masks, child)
                nodes += 1
                if true < best[0]:
                    best = (true, states)
                if bound < best[0]:
                    tick += 1
                    heapq.heappush(queue, (bound, tick, child))
        proved = min([best[0], *(b for b, _, _ in queue)])
        return Path(best[1], best[0], self._proved(proved))

    def _proved(self, bound: int) -> int:
        """A lower bound that also holds for paths through states left out for size."""
        least = self.lattice.pruned_from
        return bound if least is None else min(bound, least)

    def join_prices(self, states: tuple[int, ...]) -> dict[int, IntArray]:
        """Cost by state of the layers at either end of a join, the other end as in ``states``."""
        out: dict[int, IntArray] = {}
        for j, table in zip(self.joins, self.join_costs, strict=True):
            target = self.lattice.states[j.to_layer].grip
            leave = table[:, int(target[states[j.to_layer]])]
            arrive = table[states[j.from_layer]][target]
            for t, price in ((j.from_layer, leave), (j.to_layer, arrive)):
                out[t] = out[t] + price if t in out else price.astype(np.int64)
        return out

    def beside(self, states: tuple[int, ...], others: tuple[int, ...]) -> int:
        """What a path costs more than one from which it differs in a few states."""
        unlike = {t for t, (a, b) in enumerate(zip(states, others, strict=True)) if a != b}
        steps = unlike.union(*(self.lattice.frame.children[t] for t in unlike))
        more = sum(self._step(others, t) - self._step(states, t) for t in steps)
        if any(j.from_layer in unlike or j.to_layer in unlike for j in self.joins):
            more += self._join_price(others) - self._join_price(states)
        return more

    def _step(self, states: tuple[int, ...], t: int) -> int:
        """Cost of a path's step into a layer."""
        parent = self.lattice.frame.layers[t].parent
        edges = self.lattice.edges[t]
        part = edges.of(states[parent] if parent >= 0 else 0)
        return int(edges.cost[part][edges.into[part] == states[t]].min())

    def value(self, states: tuple[int, ...]) -> int:
        """Declared cost of a path, joins included."""
        return self._tree_cost(states, {}) + self._join_price(states)
