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
RIDGE = 6.0  # a few pages turn the weights, they do not make them
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
    """Fit weights to the print of some pieces, near the weights ``start``.

    ``progress(done, all)`` is called between fits; what it raises ends the work.
    """
    groups = range(min(FOLDS, len(chains)) if len(chains) > 1 else FOLDS)
    unseen = 0
    for at in groups:
        if progress:
            progress(at, len(groups) + 1)
        seen = [_marked(c, i, len(chains), at, False) for i, c in enumerate(chains)]
        kept = [_marked(c, i, len(chains), at, True) for i, c in enumerate(chains)]
        if not any(agreement(c, start)[1] for c in kept):
            continue
        weights = fit([Field(seen)], start, ridge=RIDGE)
        unseen += sum(agreement(c, weights)[0] for c in kept)
    if progress:
        progress(len(groups), len(groups) + 1)
    after = fit([Field(chains)], start, ridge=RIDGE)
    old = _sum(chains, start)
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
