"""Learning an edition's, or a teacher's, way of fingering from scores that print it."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace

from workbench.fingering.lattice.terms import LEFT_TERMS
from workbench.fingering.learning.field import Field
from workbench.fingering.learning.fitting import Agreement, agreement, fit
from workbench.fingering.learning.observed import Chain, Link
from workbench.fingering.learning.preferences import WeightChange

FOLDS = 5
#: How strongly the old weights hold: a few pages turn them, they do not make them. The one is
#: taken that foretells pages it has not seen best; where none does better than the old weights,
#: these stay.
RIDGES = (1.0, 6.0, 30.0)
FEWEST = 10  # printed fingers from which anything can be learned


@dataclass(frozen=True)
class PrintFit:
    """``weights`` by term in thousandths, those that ``changes`` from the old ones; how many of
    ``printed`` fretted fingers the engine meets ``before``, ``after``, and ``unseen``: by
    weights that were fitted without the piece (or, of one piece alone, the bar) in question.
    ``left_out`` counts marks that no hand can hold."""

    weights: tuple[tuple[str, int], ...]
    changes: tuple[WeightChange, ...]
    printed: int
    before: int
    after: int
    unseen: int
    left_out: int


def fit_to_print(
    chains: Sequence[Chain],
    start: Mapping[str, int],
    progress: Callable[[int, int], None] | None = None,
) -> PrintFit:
    """Fit weights to the print of some pieces, near the weights ``start``; these stay where
    nothing is gained on what was left out.

    ``progress(done, all)`` is called between fits; what it raises ends the work.
    """
    groups = range(min(FOLDS, len(chains)) if len(chains) > 1 else FOLDS)
    every = len(groups) + 1
    met = dict.fromkeys(RIDGES, 0)
    for at in groups:
        if progress:
            progress(at, every)
        seen = [_marked(c, i, len(chains), at, False) for i, c in enumerate(chains)]
        kept = [_marked(c, i, len(chains), at, True) for i, c in enumerate(chains)]
        if not any(agreement(c, start)[1] for c in kept):
            continue
        field = Field(seen)
        for ridge in RIDGES:
            met[ridge] += _sum(kept, fit([field], start, ridge=ridge))[0]
    if progress:
        progress(len(groups), every)
    old = _sum(chains, start)
    best = max(RIDGES, key=lambda ridge: (met[ridge], ridge))
    unseen = met[best]
    after = dict(start)
    if unseen > old[0]:
        after = fit([Field(chains)], start, ridge=best)
    else:
        unseen = old[0]
    return PrintFit(
        tuple((t, after[t]) for t in LEFT_TERMS if after[t] != start[t]),
        tuple(WeightChange(t, start[t], after[t]) for t in LEFT_TERMS if after[t] != start[t]),
        old[1],
        old[0],
        _sum(chains, after)[0],
        unseen,
        sum(c.left_out for c in chains),
    )


def _sum(chains: Sequence[Chain], weights: Mapping[str, int]) -> Agreement:
    rows = [agreement(c, weights) for c in chains]
    return Agreement(sum(r[i] for r in rows) for i in range(4))


def _marked(chain: Chain, place: int, many: int, fold: int, kept: bool) -> Chain:
    """The chain with the marks of a fold alone, or without them: folds go by piece where
    there are several, else by bar."""

    def mine(link: Link) -> Link:
        fine = tuple(
            m for m in link.marks if ((place if many > 1 else m.bar) % FOLDS == fold) == kept
        )
        return replace(link, marks=fine)

    return replace(chain, links=tuple(mine(x) for x in chain.links))
