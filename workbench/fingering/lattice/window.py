"""One bar of a solved piece set free while all other bars keep their grips.

What other fingers in the bar leave down may last into the next bars; there the
states are followed until they fall together with the solved ones again.
"""

from __future__ import annotations

from collections.abc import Mapping

import numpy as np

from workbench.fingering.hand.holding import IntArray
from workbench.fingering.lattice.growth import Lattice
from workbench.fingering.lattice.paths import FAR, Sweeper


class FreeBar:
    """``layers``: the bar's; ``path``: the solved states; ``pins``: allowed states by layer."""

    def __init__(
        self,
        lattice: Lattice,
        path: tuple[int, ...],
        layers: tuple[int, ...],
        pins: Mapping[int, IntArray],
        sweeper: Sweeper,
    ) -> None:
        self.lattice, self.path, self.layers, self.pins = lattice, path, layers, pins
        self.joined = sweeper.join_prices(path)
        self._after: dict[tuple[int, int], tuple[int, dict[int, int]]] = {}
        self._tables()

    @property
    def read(self) -> set[int]:
        """Layers whose states of the solved way the answers depend on."""
        children, first = self.lattice.frame.children, self.layers[0]
        parent = self.lattice.frame.layers[first].parent
        reached = {*self.layers, *(t for t, _ in self._after)}
        out = reached.union(*(children[t] for t in reached))
        return out | ({parent} if parent >= 0 else set())

    def _grip(self, t: int) -> int:
        return int(self.lattice.states[t].grip[self.path[t]])

    def _own(self, t: int) -> IntArray:
        """Costs by state of a layer that do not depend on the way there: joins and pins."""
        out = np.zeros(len(self.lattice.states[t]), np.int64)
        if t in self.joined:
            out = out + self.joined[t]
        if t in self.pins:
            out = out + np.where(self.pins[t], 0, FAR)
        return out

    def _tables(self) -> None:
        lattice, first = self.lattice, self.layers[0]
        parent = lattice.frame.layers[first].parent
        entry = self.path[parent] if parent >= 0 else 0
        size = len(lattice.states[parent]) if parent >= 0 else 1
        above = np.full(size, FAR, np.int64)
        above[entry] = 0
        self.down: dict[int, IntArray] = {}
        self.up: dict[int, IntArray] = {}
        for t in self.layers:
            edges = lattice.edges[t]
            here = np.full(len(lattice.states[t]), 4 * FAR, np.int64)
            np.minimum.at(here, edges.into, above[edges.before()] + edges.cost)
            above = np.minimum(here + self._own(t), 4 * FAR)
            self.down[t] = above
        below: IntArray | None = None
        for t in reversed(self.layers):
            if below is None:
                out = np.full(len(lattice.states[t]), 4 * FAR, np.int64)
                for x in np.flatnonzero(self.down[t] < FAR):
                    out[x] = self.after(t, int(x))[0]
            else:
                edges = lattice.edges[t + 1]
                out = np.minimum.reduceat(
                    edges.cost + below[edges.into] + self._own(t + 1)[edges.into],
                    edges.first[:-1],
                )
                for child in lattice.frame.children[t]:
                    if child not in self.layers:
                        out = out + np.array(
                            [self._into(child, int(x))[0] for x in range(len(out))], np.int64
                        )
            self.up[t] = below = out

    def after(self, t: int, x: int) -> tuple[int, dict[int, int]]:
        """From state x of layer t on with the other bars' grips: (cost against the
        solved way, states that differ)."""
        if x == self.path[t]:
            return 0, {}
        key = (t, x)
        if key not in self._after:
            cost, states = 0, {}
            for child in self.lattice.frame.children[t]:
                c, s = self._into(child, x)
                cost += c
                states.update(s)
            self._after[key] = (cost, states)
        return self._after[key]

    def _into(self, child: int, x: int) -> tuple[int, dict[int, int]]:
        edges, states = self.lattice.edges[child], self.lattice.states[child]
        part = edges.of(x)
        into, price = edges.into[part], edges.cost[part]
        fits = states.grip[into] == self._grip(child)
        own = self.joined.get(child)
        best, told = 4 * FAR, {}
        for y, c in zip(into[fits].tolist(), price[fits].tolist(), strict=True):
            extra = int(own[y] - own[self.path[child]]) if own is not None else 0
            later, differ = self.after(child, y)
            if c + extra + later < best:
                best, told = c + extra + later, {child: y, **differ}
        solved = edges.of(self.path[self.lattice.frame.layers[child].parent])
        same = edges.into[solved] == self.path[child]
        return best - int(edges.cost[solved][same].min()), told

    def forks(self, now: tuple[int, ...]) -> list[tuple[int, int]]:
        """(layer, other grip) of the bar, by the least cost of any way that takes it."""
        found: list[tuple[int, int, int]] = []
        for t, here in zip(self.layers, now, strict=True):
            value = self.down[t] + self.up[t]
            grip = self.lattice.states[t].grip
            for g in np.unique(grip):
                best = int(value[grip == g].min())
                if int(g) != here and best < FAR:
                    found.append((best, t, int(g)))
        return [(t, g) for _, t, g in sorted(found)]

    def best(self, t: int, grip: int) -> tuple[int, dict[int, int]]:
        """The least-cost way with ``grip`` at layer t: (cost, states of the bar and
        those after it that differ)."""
        value = np.where(self.lattice.states[t].grip == grip, self.down[t] + self.up[t], 4 * FAR)
        x = int(np.argmin(value))
        states = {t: x}
        at = self.layers.index(t)
        for s in reversed(self.layers[:at]):
            edges = self.lattice.edges[s + 1]
            hit = edges.into == states[s + 1]
            before = edges.before()[hit]
            states[s] = int(before[int(np.argmin(self.down[s][before] + edges.cost[hit]))])
        for s in self.layers[at + 1 :]:
            edges = self.lattice.edges[s]
            part = edges.of(states[s - 1])
            into = edges.into[part]
            price = edges.cost[part] + self._own(s)[into] + self.up[s][into]
            states[s] = int(into[int(np.argmin(price))])
        last = self.layers[-1]
        states.update(self.after(last, states[last])[1])
        return int(value[x]), states
