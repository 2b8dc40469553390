"""Bars in which the engine's fingers are not those that an edition prints."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from workbench.fingering.learning.fitting import best_way
from workbench.fingering.learning.observed import Chain


@dataclass(frozen=True)
class BarMet:
    """A bar of one of several pieces (``piece`` and ``bar`` count from 0): how many of its
    ``printed`` fretted fingers the weights in force meet, and how many each school meets,
    best first."""

    piece: int
    bar: int
    printed: int
    met: int
    schools: tuple[tuple[str, int], ...]

    @property
    def missed(self) -> int:
        return self.printed - self.met


def met_by_bar(chain: Chain, weights: Mapping[str, int]) -> dict[int, tuple[int, int]]:
    """By written bar, (fretted fingers met, fretted fingers printed) of the least-cost way."""
    out: dict[int, tuple[int, int]] = {}
    for link, state in zip(chain.links, best_way(chain, weights), strict=True):
        for mark in link.marks:
            if mark.left:
                met, printed = out.get(mark.bar, (0, 0))
                same = link.places[state][mark.slot][2] == mark.left
                out[mark.bar] = (met + same, printed + 1)
    return out


def worst_bars(
    chains: Sequence[Chain],
    weights: Mapping[str, int],
    schools: Mapping[str, Mapping[str, int]],
    count: int,
) -> tuple[BarMet, ...]:
    """The ``count`` bars with the most fingers missed, with what each school makes of them.
    Bars of one piece with the same figures of missed fingers come in written order."""
    rows: list[BarMet] = []
    for piece, chain in enumerate(chains):
        other = {name: met_by_bar(chain, w) for name, w in schools.items()}
        for bar, (met, printed) in met_by_bar(chain, weights).items():
            if met < printed:
                by_school = ((name, found[bar][0]) for name, found in other.items())
                ranked = tuple(sorted(by_school, key=lambda x: (-x[1], x[0])))
                rows.append(BarMet(piece, bar, printed, met, ranked))
    rows.sort(key=lambda r: (-r.missed, r.met, r.piece, r.bar))
    return tuple(rows[:count])
