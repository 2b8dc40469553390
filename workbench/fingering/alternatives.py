"""Other fingerings of one bar, each the best of its kind inside its surroundings."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from workbench.fingering.grips import IntArray
from workbench.fingering.paths import FAR, Path
from workbench.fingering.reasons import difference
from workbench.fingering.types import Alternative, FingeredBar, Pin
from workbench.music.errors import BadInput

if TYPE_CHECKING:
    from workbench.fingering.engine import Solver

TRIES = 12  # sweeps spent on one bar


def _mask(solver: Solver, t: int, grip: int) -> IntArray:
    return np.asarray(solver.lattice.states[t].grip == grip)


def _around(solver: Solver, path: Path, layers: set[int]) -> dict[int, IntArray]:
    """Every other bar keeps its grips; what stays down between them may change."""
    return {
        t: _mask(solver, t, int(solver.lattice.states[t].grip[path.states[t]]))
        for t in range(len(path.states))
        if t not in layers
    }


def find_alternatives(
    solver: Solver, path: Path, pins: dict[int, IntArray], bar: int, count: int
) -> tuple[Alternative, ...]:
    """Up to ``count`` fingerings of ``bar`` that differ from the present one and
    from each other in a string, fret or finger; cheapest first."""
    layers = solver.frame.of_bar[bar]
    if not layers or count < 1:
        return ()
    base = _around(solver, path, set(layers))
    for t in layers:
        if t in pins:
            base[t] = pins[t]
    lattice = solver.lattice
    now = tuple(int(lattice.states[t].grip[path.states[t]]) for t in layers)
    found: dict[tuple[int, ...], Path] = {}
    for t, grip in _forks(solver, base, layers, now)[: TRIES + 2 * count]:
        masks = dict(base)
        forced = _mask(solver, t, grip)
        masks[t] = forced & masks[t] if t in masks else forced
        other = solver.sweeper.solve(masks)
        if other.cost >= FAR:
            continue
        grips = tuple(int(lattice.states[x].grip[other.states[x]]) for x in layers)
        if grips != now and (grips not in found or other.cost < found[grips].cost):
            found[grips] = other
    ranked = sorted(found.items(), key=lambda item: (item[1].cost, item[0]))
    chosen = _varied(solver, ranked, layers, now, count)
    present = solver.solution()
    before = present.bars[bar]
    out = []
    for other in chosen:
        told = solver.describe(other)
        out.append(
            Alternative(
                told.cost,
                difference(before, told.bars[bar], present, told, solver.hand),
                told.bars[bar].notes,
            )
        )
    return tuple(out)


def _forks(
    solver: Solver, base: dict[int, IntArray], layers: tuple[int, ...], now: tuple[int, ...]
) -> list[tuple[int, int]]:
    """(layer, other grip) of the bar, by the least cost of any path that takes it."""
    value = solver.sweeper.through(base, layers)
    forks: list[tuple[int, int, int]] = []
    for t, here in zip(layers, now, strict=True):
        grip = solver.lattice.states[t].grip
        for g in np.unique(grip):
            if int(g) != here:
                best = int(value[t][grip == g].min())
                if best < FAR:
                    forks.append((best, t, int(g)))
    forks.sort()
    return [(t, g) for _, t, g in forks]


def _varied(
    solver: Solver,
    ranked: list[tuple[tuple[int, ...], Path]],
    layers: tuple[int, ...],
    now: tuple[int, ...],
    count: int,
) -> list[Path]:
    """The cheapest, then the cheapest with other strings, then what is left in order."""

    def places(grips: tuple[int, ...]) -> tuple[object, ...]:
        return tuple(
            tuple(p[:2] for p in solver.lattice.grips[t][g].places)
            for t, g in zip(layers, grips, strict=True)
        )

    picked: list[tuple[tuple[int, ...], Path]] = ranked[:1]
    elsewhere = [r for r in ranked[1:] if places(r[0]) != places(now)]
    if elsewhere and len(picked) < count:
        picked.append(elsewhere[0])
    for r in ranked[1:]:
        if len(picked) >= count:
            break
        if r not in picked:
            picked.append(r)
    picked.sort(key=lambda item: (item[1].cost, item[0]))
    return [p for _, p in picked[:count]]


def judge(solver: Solver, path: Path, bar: int, pins: tuple[Pin, ...]) -> Alternative:
    """A bar under the teacher's pins, told against the present fingering."""
    asked = solver.masks({p.note: p for p in pins})
    masks = _around(solver, path, set(solver.frame.of_bar[bar]))
    number = solver.piece.bars[bar].number
    if asked is not None:
        masks.update({t: m & masks[t] if t in masks else m for t, m in asked.items()})
        found = solver.sweeper.solve(masks)
    if asked is None or found.cost >= FAR:
        raise BadInput(
            f"Bar {number}: no hand can hold these fingers together; free one of the notes."
        )
    present = solver.solution()
    told = solver.describe(found)
    reason = difference(present.bars[bar], told.bars[bar], present, told, solver.hand)
    return Alternative(told.cost, reason, told.bars[bar].notes)


def same_fingers(a: FingeredBar, b: FingeredBar) -> bool:
    """Whether two fingerings of a bar put the same fingers on the same places."""
    return [(n.string, n.fret, n.left) for n in a.notes] == [
        (n.string, n.fret, n.left) for n in b.notes
    ]
