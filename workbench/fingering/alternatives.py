"""Other fingerings of one bar, each the best of its kind inside its surroundings."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Protocol

import numpy as np

from workbench.fingering.hand.grips import Neck
from workbench.fingering.hand.holding import IntArray
from workbench.fingering.lattice.growth import Lattice
from workbench.fingering.lattice.layers import Frame
from workbench.fingering.lattice.paths import FAR, Path, Sweeper
from workbench.fingering.lattice.window import FreeBar
from workbench.fingering.pins.conflicts import conflict
from workbench.fingering.telling.reasons import difference
from workbench.fingering.telling.refused import Refused
from workbench.fingering.types import Alternative, Fingering, Pin
from workbench.fingering.weights import RIGHT_TERMS
from workbench.instrument.model import Hand, Instrument
from workbench.language.fact import fact
from workbench.music.model import Piece

TRIES = 12  # sweeps spent on one bar
SPARE = 2  # more than asked for, since some may prove to differ in nothing that can be said


class SolvedLattice(Protocol):
    """A piece's lattice with the ways to ask it and to tell what it answers."""

    piece: Piece
    instrument: Instrument
    hand: Hand
    frame: Frame
    lattice: Lattice
    sweeper: Sweeper
    neck: Neck

    def solution(self) -> Fingering: ...

    def described(self, bar: int) -> Fingering: ...

    def asked(self, pins: Iterable[Pin]) -> dict[str, Pin]: ...

    def masks(self, pins: dict[str, Pin]) -> dict[int, IntArray] | None: ...

    def describe_bar(self, path: Path, bar: int) -> Fingering: ...

    def with_rights(self, told: Alternative, bar: int, asked: dict[str, str]) -> Alternative: ...


def _mask(solver: SolvedLattice, t: int, grip: int) -> IntArray:
    return np.asarray(solver.lattice.states[t].grip == grip)


def _around(solver: SolvedLattice, path: Path, layers: set[int]) -> dict[int, IntArray]:
    """Every other bar keeps its grips; what stays down between them may change."""
    return {
        t: _mask(solver, t, int(solver.lattice.states[t].grip[path.states[t]]))
        for t in range(len(path.states))
        if t not in layers
    }


def find_alternatives(
    solver: SolvedLattice, path: Path, pins: dict[int, IntArray], bar: int, count: int
) -> tuple[Alternative, ...]:
    """Up to ``count`` fingerings of ``bar`` that differ from the present one and
    from each other in a string, fret or finger; the easiest for both hands together
    first. The other bars keep their fingers."""
    ways = other_ways(solver, path, pins, bar, count + SPARE if count else 0)
    present = solver.described(bar)
    out = [_told(solver, path, bar, states, present) for states in ways]
    told: dict[object, Alternative] = {}  # by what can be said: the cheapest of those alike
    for a in sorted(filter(_differs, out), key=lambda a: a.cost + a.right):
        told.setdefault(tuple(f for f in a.reason.fields if f[0] != "effort"), a)
    return tuple(told.values())[:count]


def _differs(other: Alternative) -> bool:
    """Whether there is anything to say of it: what it gains or what it costs."""
    fields = dict(other.reason.fields)
    return bool(fields.get("good") or fields.get("bad"))


def other_ways(
    solver: SolvedLattice, path: Path, pins: dict[int, IntArray], bar: int, count: int
) -> list[dict[int, int]]:
    """States by layer of up to ``count`` other fingerings of a bar, where they differ from
    the path's or lie in the bar."""
    layers = solver.frame.of_bar[bar]
    if not layers or count < 1:
        return []
    lattice = solver.lattice
    window = FreeBar(lattice, path.states, layers, pins, solver.sweeper)
    now = tuple(int(lattice.states[t].grip[path.states[t]]) for t in layers)
    found: dict[tuple[int, ...], tuple[int, dict[int, int]]] = {}
    for t, grip in window.forks(now)[: TRIES + 4 * count]:
        worth, states = window.best(t, grip)
        grips = tuple(int(lattice.states[x].grip[states[x]]) for x in layers)
        if grips not in found or worth < found[grips][0]:
            found[grips] = (worth, states)
    ranked = sorted(found.items(), key=lambda item: (item[1][0], item[0]))
    return _varied(solver, [(g, s) for g, (_, s) in ranked], layers, now, count)


def _told(
    solver: SolvedLattice, path: Path, bar: int, states: dict[int, int], present: Fingering
) -> Alternative:
    """A bar with other states, told against the present fingering as ``described``."""
    other = tuple(states.get(t, s) for t, s in enumerate(path.states))
    value = solver.sweeper.value(other)
    told = solver.describe_bar(Path(other, value, value), bar)
    reason = difference(present.bars[bar], told.bars[0], present, told, solver.hand)
    right = sum(told.terms.get(t, 0) - present.terms.get(t, 0) for t in RIGHT_TERMS)
    return Alternative(value, reason, told.bars[0].notes, told.bars[0], right)


def _varied(
    solver: SolvedLattice,
    ranked: list[tuple[tuple[int, ...], dict[int, int]]],
    layers: tuple[int, ...],
    now: tuple[int, ...],
    count: int,
) -> list[dict[int, int]]:
    """The cheapest, then the cheapest with other strings, then what is left in order."""

    def places(grips: tuple[int, ...]) -> tuple[object, ...]:
        return tuple(
            tuple(p[:2] for p in solver.lattice.grips[t][g].places)
            for t, g in zip(layers, grips, strict=True)
        )

    picked = ranked[:1]
    elsewhere = [r for r in ranked[1:] if places(r[0]) != places(now)]
    if elsewhere and len(picked) < count:
        picked.append(elsewhere[0])
    for r in ranked[1:]:
        if len(picked) >= count:
            break
        if r not in picked:
            picked.append(r)
    return [states for _, states in picked[:count]]


def judge(solver: SolvedLattice, path: Path, bar: int, pins: tuple[Pin, ...]) -> Alternative:
    """A bar under the teacher's pins, told against the present fingering.

    Right fingers asked for are held as well, and told for themselves.
    """
    found = pinned_way(solver, path, bar, pins)
    changed = {t: x for t, x in enumerate(found.states) if x != path.states[t]}
    told = _told(solver, path, bar, changed, solver.described(bar))
    asked = {p.note: p.right for p in pins if p.right}
    return solver.with_rights(told, bar, asked) if asked else told


def pinned_way(solver: SolvedLattice, path: Path, bar: int, pins: tuple[Pin, ...]) -> Path:
    """The best path with a bar under these pins, the other bars as they are.

    Raises BadInput where no hand can hold the pins, with the reason.
    """
    by_note = solver.asked(pins)
    asked = solver.masks(by_note)
    masks = _around(solver, path, set(solver.frame.of_bar[bar]))
    found: Path | None = None
    if asked is not None:
        masks.update({t: m & masks[t] if t in masks else m for t, m in asked.items()})
        found = solver.sweeper.solve(masks)
    if found is None or found.cost >= FAR:
        written = solver.piece.bars[bar]
        why = conflict(written, by_note, solver.instrument, solver.hand, solver.neck)
        raise Refused(
            fact("refused", bar=written.number, why=(why,))
            if why
            else fact("cannot be held", bar=written.number)
        )
    return found
