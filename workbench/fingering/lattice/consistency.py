"""Equal bars, equal fingers: the same music is fingered the same unless that costs too much."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

import numpy as np

from workbench.fingering.hand.holding import IntArray
from workbench.fingering.lattice.paths import Path, Sweeper
from workbench.language.fact import Fact, fact
from workbench.music.model import Bar, Piece

MARGIN = 1500  # thousandths: about one hop for each bar that is made alike


def _music(bar: Bar) -> tuple[object, ...]:
    return tuple((n.onset, n.duration, n.midi, n.voice, n.grace) for n in bar.notes)


def alike(piece: Piece, of_bar: Sequence[Sequence[int]]) -> list[list[int]]:
    """Bars in which something is played, those of the same music together."""
    groups: dict[tuple[object, ...], list[int]] = {}
    for bar in piece.bars:
        if of_bar[bar.index]:
            groups.setdefault(_music(bar), []).append(bar.index)
    return list(groups.values())


def grips_of(sweeper: Sweeper, path: Path, bar: int) -> tuple[int, ...]:
    """The grips of a bar's moments on a path, by their numbers."""
    lattice = sweeper.lattice
    return tuple(int(lattice.states[t].grip[path.states[t]]) for t in lattice.frame.of_bar[bar])


def settle(
    sweeper: Sweeper, piece: Piece, masks: dict[int, IntArray]
) -> tuple[Path, dict[int, list[Fact]], int]:
    """The best path, then bars of the same music made alike where it costs no more
    than MARGIN each. Returns the path, remarks by bar where they stay different, and a
    lower bound for any path whether alike or not."""
    path = sweeper.solve(masks)
    free = path.bound
    remarks: dict[int, list[Fact]] = {}
    kept = dict(masks)
    for bars in alike(piece, sweeper.lattice.frame.of_bar):
        if len(bars) < 2:
            continue
        seen = {b: grips_of(sweeper, path, b) for b in bars}
        if len(set(seen.values())) == 1:
            continue
        best: tuple[Path, dict[int, IntArray]] | None = None
        for model, _ in Counter(seen.values()).most_common(3):
            trial = _like(sweeper, kept, bars, model)
            if trial is None:
                continue
            found = sweeper.solve(trial)
            if best is None or found.cost < best[0].cost:
                best = (found, trial)
        if best and best[0].cost - path.cost <= MARGIN * (len(bars) - 1):
            path, kept = best
        else:
            worse = _worse(sweeper, path, best[0]) if best else None
            _remark(piece, bars, seen, remarks, worse)
    return path, remarks, free


def _like(
    sweeper: Sweeper, masks: dict[int, IntArray], bars: list[int], model: tuple[int, ...]
) -> dict[int, IntArray] | None:
    """Masks that give all ``bars`` the grips of ``model``; None where one cannot."""
    lattice = sweeper.lattice
    out = dict(masks)
    for b in bars:
        layers = lattice.frame.of_bar[b]
        if len(layers) != len(model):
            return None
        for t, g in zip(layers, model, strict=True):
            allowed = lattice.states[t].grip == g
            if t in masks:
                allowed = allowed & masks[t]
            if not allowed.any():
                return None
            out[t] = np.asarray(allowed)
    return out


def _worse(sweeper: Sweeper, path: Path, alike: Path) -> str:
    """The term by which a way is most the dearer of two."""
    lattice = sweeper.lattice
    more: Counter[str] = Counter()
    for way, sign in ((alike, 1), (path, -1)):
        for terms in lattice.path_terms(way.states):
            for term, amount in terms.items():
                more[term] += sign * amount * lattice.weights.left[term]
    return more.most_common(1)[0][0]


def _remark(
    piece: Piece,
    bars: list[int],
    seen: dict[int, tuple[int, ...]],
    remarks: dict[int, list[Fact]],
    worse: str | None,
) -> None:
    first = bars[0]
    for b in bars[1:]:
        if seen[b] != seen[first]:
            remarks.setdefault(b, []).append(
                fact("unlike", bar=piece.bars[first].number)
                if worse is None
                else fact("unlike", bar=piece.bars[first].number, worse=worse)
            )
