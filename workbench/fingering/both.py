"""Both hands together, where the strings that the left hand chose ask much of the right.

The left hand's least cost does not know what its strings make the right hand do. Where a bar
costs the right hand much, the left hand's next ways that take other strings are tried, and the
one is taken by which both together have the least to do; bars of the same music stay alike. What
the left hand gives up for it is never more than MOST a bar.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from typing import NamedTuple

from workbench.fingering.hand.holding import IntArray
from workbench.fingering.lattice.consistency import alike
from workbench.fingering.lattice.layers import Frame
from workbench.fingering.lattice.paths import FAR, Path, Sweeper
from workbench.fingering.lattice.window import FreeBar
from workbench.music.model import Piece

FROM = 1500  # thousandths that a bar must cost the right hand before another way is looked for
MOST = 1500  # thousandths that another way may cost the left hand more, for one bar
GAIN = 300  # thousandths that both must gain together
WAYS = 3  # other ways tried for a bar

Masks = Mapping[int, IntArray]
Strings = dict[str, int]
Rights = dict[str, str]


@dataclass(frozen=True)
class Plucked:
    """What the right hand does on the strings of a path: ``picked`` finger by note id."""

    frame: Frame
    strings: Strings
    picked: Rights
    cost: int


class Right(NamedTuple):
    """How to ask the right hand: all of it for a path, or a bar of it on other strings beside
    the present rest."""

    whole: Callable[[Strings], Plucked]
    bar: Callable[[Plucked, Strings, int], int]


class _Way(NamedTuple):
    gain: int
    states: tuple[int, ...]


def together(
    sweeper: Sweeper, piece: Piece, path: Path, masks: Masks, right: Right, slurred: set[int]
) -> tuple[Path, Plucked]:
    """The path, with other ways through bars where both hands gain by them, and its right hand.

    ``masks``: allowed states by layer; ``slurred``: bars with notes that the left hand sounds,
    which stay. The cost of the path told is the left hand's own.
    """
    now = right.whole(strings_of(sweeper, path.states, range(len(path.states))))
    for bars in alike(piece, sweeper.lattice.frame.of_bar):
        if slurred.intersection(bars):
            continue
        same = [b for b in bars if _grips(sweeper, path, b) == _grips(sweeper, path, bars[0])]
        found = _other(sweeper, path, masks, right, now, same[0])
        if found is None:
            continue
        new = _for_all(sweeper, path, masks, same, found)
        after = right.whole(strings_of(sweeper, new.states, range(len(new.states))))
        if new.cost + after.cost + GAIN <= path.cost + now.cost:
            path, now = new, after
    return path, now


def strings_of(sweeper: Sweeper, states: tuple[int, ...], layers: Iterable[int]) -> Strings:
    """The string of every note of some layers by its id."""
    lattice = sweeper.lattice
    out: Strings = {}
    for t in layers:
        grip = lattice.grips[t][int(lattice.states[t].grip[states[t]])]
        notes = lattice.frame.layers[t].notes
        out.update((n.id, p[0]) for n, p in zip(notes, grip.places, strict=True))
    return out


def _grips(sweeper: Sweeper, path: Path, bar: int) -> tuple[int, ...]:
    lattice = sweeper.lattice
    return tuple(int(lattice.states[t].grip[path.states[t]]) for t in lattice.frame.of_bar[bar])


def _other(
    sweeper: Sweeper, path: Path, masks: Masks, right: Right, now: Plucked, bar: int
) -> tuple[int, ...] | None:
    """Another way through a bar by which both hands gain most; None where there is none."""
    present = right.bar(now, now.strings, bar)
    if present < FROM:
        return None
    lattice = sweeper.lattice
    layers = lattice.frame.of_bar[bar]
    window = FreeBar(lattice, path.states, layers, masks, sweeper)
    best: _Way | None = None
    seen = {_strings(now.strings, sweeper, layers)}
    for t, grip in window.forks(_grips(sweeper, path, bar)):
        _, changed = window.best(t, grip)
        states = tuple(changed.get(x, s) for x, s in enumerate(path.states))
        more = sweeper.beside(path.states, states)
        if more > MOST or len(seen) > WAYS:
            break
        strings = now.strings | strings_of(sweeper, states, changed)
        key = _strings(strings, sweeper, layers)
        if key in seen:
            continue
        seen.add(key)
        gain = present - right.bar(now, strings, bar) - more
        if gain >= GAIN and (best is None or gain > best.gain):
            best = _Way(gain, states)
    return best.states if best else None


def _strings(strings: Strings, sweeper: Sweeper, layers: tuple[int, ...]) -> tuple[int, ...]:
    frame = sweeper.lattice.frame
    return tuple(strings[n.id] for t in layers for n in frame.layers[t].notes)


def _for_all(
    sweeper: Sweeper, path: Path, masks: Masks, bars: list[int], states: tuple[int, ...]
) -> Path:
    """The way through the first of the ``bars`` taken in all of them, the rest as it is."""
    lattice = sweeper.lattice
    if len(bars) == 1:
        value = sweeper.value(states)
        return Path(states, value, value if path.optimal else path.bound)
    frame = lattice.frame
    asked = {t: int(lattice.states[t].grip[s]) for t, s in enumerate(path.states)}
    first = frame.of_bar[bars[0]]
    for b in bars:
        for t, model in zip(frame.of_bar[b], first, strict=True):
            asked[t] = int(lattice.states[model].grip[states[model]])
    around = {t: lattice.states[t].grip == g for t, g in asked.items()}
    around |= {t: m & around[t] for t, m in masks.items()}
    found = sweeper.solve(around)
    return found if found.cost < FAR else path
