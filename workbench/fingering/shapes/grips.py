"""Every way four fingers can take the frets of a chord shape.

Hard rules: each stopped string has one finger; a finger is on one fret; a
lower finger is never on a higher fret; a finger laid over several strings
lies over no open string and no string stopped lower down. Nothing is left
out, so the best of these is the best there is.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache
from itertools import combinations, permutations

FINGERS = 4
Frets = tuple[int | None, ...]  # highest-numbered string first; None is not played
Blocks = tuple[tuple[int, ...], ...]  # strings of one fret, one block a finger


@dataclass(frozen=True, slots=True)
class ShapePress:
    """One finger on one fret. ``strings`` as in the shape, highest number first."""

    finger: int
    fret: int
    strings: tuple[int, ...]

    @property
    def laid(self) -> bool:
        """True where the finger stops several strings at once (a barre)."""
        return len(self.strings) > 1

    @property
    def width(self) -> int:
        """How many strings the finger lies over, sounding under it or not."""
        return self.strings[0] - self.strings[-1] + 1

    @property
    def middle(self) -> int:
        """Where the finger stands across the neck, in half strings from string 0."""
        return self.strings[0] + self.strings[-1]


@dataclass(frozen=True, slots=True)
class FingeredShape:
    """A fingered shape: ``presses`` in the order of the fingers used. The rest
    follows from them (see ``grip``) and is kept because every term asks for it:
    laid fingers, all pairs of fingers."""

    frets: Frets
    presses: tuple[ShapePress, ...]
    barres: tuple[ShapePress, ...]
    pairs: tuple[tuple[ShapePress, ShapePress], ...]


def grip(frets: Frets, presses: tuple[ShapePress, ...]) -> FingeredShape:
    """A grip of fingers in any order."""
    ordered = tuple(sorted(presses, key=lambda p: p.finger))
    return FingeredShape(
        frets,
        ordered,
        tuple(p for p in ordered if p.laid),
        tuple(combinations(ordered, 2)),
    )


@lru_cache(maxsize=8192)
def grips(frets: Frets) -> tuple[FingeredShape, ...]:
    """All grips of a shape by the hard rules, reach not yet looked at.

    Fingers come from the frets' order only, so a shape and the same shape
    higher up the neck have the same grips.
    """
    count = len(frets)
    levels: dict[int, list[int]] = {}
    for column, fret in enumerate(frets):
        if fret:
            levels.setdefault(fret, []).append(count - column)
    order = sorted(levels)
    if len(order) > FINGERS:
        return ()
    splits = [tuple(_splits(tuple(levels[fret]), fret, frets)) for fret in order]
    return tuple(grip(frets, found) for found in _choose(order, splits, 1))


def _splits(strings: tuple[int, ...], fret: int, frets: Frets) -> Iterator[Blocks]:
    """Ways to share out the strings of one fret in blocks that one finger can stop.

    A block's strings follow each other among those of this fret: were one of
    them given to another finger, both would press it.
    """
    if not strings:
        yield ()
        return
    count = len(frets)
    for size in range(1, len(strings) + 1):
        block = strings[:size]
        under = frets[count - block[0] : count - block[-1] + 1]
        if any(f is not None and f < fret for f in under):
            return
        for rest in _splits(strings[size:], fret, frets):
            if len(rest) < FINGERS:
                yield (block, *rest)


def _choose(
    order: list[int], splits: list[tuple[Blocks, ...]], lowest: int
) -> Iterator[tuple[ShapePress, ...]]:
    if not order:
        yield ()
        return
    for blocks in splits[0]:
        for chosen in combinations(range(lowest, FINGERS + 1), len(blocks)):
            for rest in _choose(order[1:], splits[1:], chosen[-1] + 1):
                for fingers in permutations(chosen):
                    here = zip(fingers, blocks, strict=True)
                    yield (*(ShapePress(f, order[0], b) for f, b in here), *rest)
