"""Every way four fingers can take the frets of a chord shape.

Hard rules: each stopped string has one finger; a finger is on one fret; a
lower finger is never on a higher fret; a finger laid over several strings
lies over no open string and no string stopped lower down. Nothing is left
out, so the best of these is the best there is.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import lru_cache
from itertools import combinations, permutations

from workbench.fingering.shape_terms import Frets, Grip, Press, grip

FINGERS = 4
Blocks = tuple[tuple[int, ...], ...]  # strings of one fret, one block a finger


@lru_cache(maxsize=8192)
def grips(frets: Frets) -> tuple[Grip, ...]:
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
) -> Iterator[tuple[Press, ...]]:
    if not order:
        yield ()
        return
    for blocks in splits[0]:
        for chosen in combinations(range(lowest, FINGERS + 1), len(blocks)):
            for rest in _choose(order[1:], splits[1:], chosen[-1] + 1):
                for fingers in permutations(chosen):
                    here = zip(fingers, blocks, strict=True)
                    yield (*(Press(f, order[0], b) for f, b in here), *rest)
