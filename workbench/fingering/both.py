"""Both hands together, where the strings that the left hand chose ask much of the right.

The left hand's least cost does not know what its strings make the right hand do. Where a bar
costs the right hand much, the left hand's next ways that take other strings are tried, and the
one is taken by which both together have the least to do; bars of the same music stay alike. What
the left hand gives up for it is never more than MOST a bar.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import NamedTuple

from workbench.fingering.lattice.consistency import alike, grips_of
from workbench.fingering.lattice.layers import Frame
from workbench.fingering.lattice.paths import FAR, Masks, Path, Sweeper
from workbench.fingering.lattice.window import FreeBar
from workbench.fingering.right.hand import Rights, Strings
from workbench.music.model import Piece

FROM = 1500  # thousandths that a bar must cost the right hand before another way is looked for
MOST = 1500  # thousandths that another way may cost the left hand more, for one bar
GAIN = 300  # thousandths that both must gain together
WAYS = 3  # other ways tried for a bar
KEPT = 16  # right hands, and findings for one bar, that are remembered


@dataclass(frozen=True)
class Plucked:
    """What the right hand does on the strings of a path: ``picked`` finger by note id."""

    frame: Frame
    strings: Strings
    picked: Rights
    cost: int


class Right(NamedTuple):
    """How to ask the right hand: all of it for strings by note, or what a bar costs on other
    strings beside the present rest; ``asked``: the right fingers that the teacher has fixed."""

    whole: Callable[[Strings], Plucked]
    bar: Callable[[Plucked, Strings, int], int]
    asked: Rights


class _Known(NamedTuple):
    """What was found for a bar: the states in ``changed`` instead of the path's, or nothing. It
    holds where the path has these ``states`` and the bar the same ``around``."""

    around: object
    states: dict[int, int]
    changed: dict[int, int] | None


class BothHands:
    """Looks for ways that suit both hands in one lattice, and remembers what it found: after a
    pin all that is far from it is as it was."""

    def __init__(self, sweeper: Sweeper, piece: Piece, slurred: Collection[int]) -> None:
        """``slurred``: bars with notes that the left hand sounds; they stay as they are."""
        self.sweeper, self.lattice = sweeper, sweeper.lattice
        groups = alike(piece, self.lattice.frame.of_bar)
        self.groups = [bars for bars in groups if not set(slurred).intersection(bars)]
        self.jumps = {t for j in sweeper.joins for t in (j.from_layer, j.to_layer)}
        self._known: dict[int, list[_Known]] = {}
        self._plucked: dict[object, Plucked] = {}

    def together(self, path: Path, masks: Masks, right: Right) -> tuple[Path, Plucked]:
        """The path, with other ways through bars where both hands gain, and its right hand.

        ``masks``: allowed states by layer. The cost of the path told is the left hand's own.
        """
        now = self._whole(path, right)
        new, changed = path, set[int]()
        for bars in self.groups:
            model = grips_of(self.sweeper, path, bars[0])
            same = [b for b in bars if grips_of(self.sweeper, path, b) == model]
            if any(self._near(b) & changed for b in same):
                continue  # what was found there held for the bar beside it as it was
            found = self._other(path, masks, right, now, bars[0])
            trial = self._for_all(new, masks, same, found) if found else None
            if trial and self._gain(new, trial, right, now, same) >= GAIN:
                changed |= {t for t, x in enumerate(new.states) if x != trial.states[t]}
                new = trial
        if not changed:
            return path, now
        after = self._whole(new, right)
        better = new.cost + after.cost + GAIN <= path.cost + now.cost
        return (new, after) if better else (path, now)

    def _near(self, bar: int) -> set[int]:
        """Layers of a bar, of the one before it and of those after it."""
        frame = self.lattice.frame
        own = frame.of_bar[bar]
        before = frame.layers[own[0]].parent
        beside = {frame.layers[c].bar for t in own for c in frame.children[t]}
        beside |= {frame.layers[before].bar} if before >= 0 else set()
        return {t for b in (bar, *beside) for t in frame.of_bar[b]}

    def _gain(self, path: Path, other: Path, right: Right, now: Plucked, bars: list[int]) -> int:
        """What both hands gain in the bars by another path, all else plucked as now."""
        gain = path.cost - other.cost
        for b in bars:
            own = self._strings(other.states, self.lattice.frame.of_bar[b])
            gain += right.bar(now, now.strings, b) - right.bar(now, now.strings | own, b)
        return gain

    def _whole(self, path: Path, right: Right) -> Plucked:
        strings = self._strings(path.states, range(len(path.states)))
        key = (tuple(strings.values()), tuple(right.asked.items()))
        if key not in self._plucked:
            if len(self._plucked) >= KEPT:
                del self._plucked[next(iter(self._plucked))]
            self._plucked[key] = right.whole(strings)
        return self._plucked[key]

    def _strings(self, states: Sequence[int], layers: Iterable[int]) -> Strings:
        """The string of every note of some layers by its id."""
        lattice = self.lattice
        out: Strings = {}
        for t in layers:
            grip = lattice.grips[t][int(lattice.states[t].grip[states[t]])]
            notes = lattice.frame.layers[t].notes
            out.update((n.id, p[0]) for n, p in zip(notes, grip.places, strict=True))
        return out

    def _other(
        self, path: Path, masks: Masks, right: Right, now: Plucked, bar: int
    ) -> dict[int, int] | None:
        """States of another way through a bar by which both hands gain most."""
        around = self._around(masks, right, now, bar)
        known = self._known.setdefault(bar, [])
        for k in known:
            if k.around == around and all(path.states[t] == x for t, x in k.states.items()):
                return k.changed
        found, read = self._look(path, masks, right, now, bar)
        if not read & self.jumps:
            known.append(_Known(around, {t: path.states[t] for t in read}, found))
            del known[:-KEPT]
        return found

    def _around(self, masks: Masks, right: Right, now: Plucked, bar: int) -> object:
        """All that a bar's other ways depend on beside the states of the path."""
        own = now.frame.of_bar[bar]
        near: list[tuple[str, int, str | None]] = []
        if own:
            parent = now.frame.layers[own[0]].parent
            outside = {c for t in own for c in now.frame.children[t]} - {*own}
            outside |= {parent} if parent >= 0 else set()
            for t in (*own, *sorted(outside)):
                for n in now.frame.layers[t].notes:
                    finger = right.asked.get(n.id) if t in own else now.picked[n.id]
                    near.append((n.id, now.strings[n.id], finger))
        layers = self.lattice.frame.of_bar[bar]
        return tuple(near), tuple(masks[t].tobytes() if t in masks else b"" for t in layers)

    def _look(
        self, path: Path, masks: Masks, right: Right, now: Plucked, bar: int
    ) -> tuple[dict[int, int] | None, set[int]]:
        """(states of the best other way, layers whose states were read for it)."""
        present = right.bar(now, now.strings, bar)
        if present < FROM:
            return None, set()
        layers = self.lattice.frame.of_bar[bar]
        window = FreeBar(self.lattice, path.states, layers, masks, self.sweeper)
        best, most = None, GAIN - 1
        seen = {tuple(self._strings(path.states, layers).values())}
        for t, grip in window.forks(grips_of(self.sweeper, path, bar)):
            _, changed = window.best(t, grip)
            states = tuple(changed.get(x, s) for x, s in enumerate(path.states))
            more = self.sweeper.beside(path.states, states)
            if more > MOST or len(seen) > WAYS:
                break
            own = self._strings(states, layers)
            if tuple(own.values()) in seen:
                continue
            seen.add(tuple(own.values()))
            gain = present - right.bar(now, now.strings | own, bar) - more
            if gain > most:
                best, most = changed, gain
        return best, window.read

    def _for_all(
        self, path: Path, masks: Masks, bars: list[int], changed: Mapping[int, int]
    ) -> Path:
        """The way through the first of the ``bars`` taken in all of them, the rest as it is."""
        lattice, of_bar = self.lattice, self.lattice.frame.of_bar
        states = tuple(changed.get(t, s) for t, s in enumerate(path.states))
        model = [int(lattice.states[t].grip[states[t]]) for t in of_bar[bars[0]]]
        for b in bars[1:]:
            allowed = {
                t: (lattice.states[t].grip == g) & masks.get(t, True)
                for t, g in zip(of_bar[b], model, strict=True)
            }
            window = FreeBar(lattice, states, of_bar[b], allowed, self.sweeper)
            value, other = window.best(of_bar[b][0], model[0])
            if value >= FAR:
                return path
            states = tuple(other.get(t, s) for t, s in enumerate(states))
        value = path.cost + self.sweeper.beside(path.states, states)
        return Path(states, value, value if path.optimal else path.bound)
