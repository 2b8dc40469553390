"""Learning an edition's, or a teacher's, way of fingering from scores that print it."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace

from workbench.fingering.habits import habits_of, is_habit
from workbench.fingering.lattice.terms import LEFT_TERMS
from workbench.fingering.learning.field import Field
from workbench.fingering.learning.fitting import Agreement, agreement, fit
from workbench.fingering.learning.observed import Chain, Link
from workbench.fingering.learning.preferences import WeightChange

FOLDS = 5
#: How strongly the old weights hold (a few pages turn them, they do not make them), and whether
#: habits are learned. The way is taken that foretells pages it has not seen best; where none
#: does better than the old weights, these stay.
WAYS = ((1.0, False), (6.0, False), (30.0, False), (30.0, True))
FEWEST = 10  # printed fingers from which anything can be learned
FAINT = 30  # thousandths below which a habit is none


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
    met = dict.fromkeys(WAYS, 0)
    for at in groups:
        if progress:
            progress(at, every)
        seen = [_marked(c, i, len(chains), at, False) for i, c in enumerate(chains)]
        kept = [_marked(c, i, len(chains), at, True) for i, c in enumerate(chains)]
        if not any(agreement(c, start)[1] for c in kept):
            continue
        for way, found in zip(WAYS, fitted(seen, start), strict=True):
            met[way] += _sum(kept, found)[0]
    if progress:
        progress(len(groups), every)
    old = _sum(chains, start)
    best = max(WAYS, key=lambda way: (met[way], way[0], not way[1]))
    unseen = met[best]
    after = dict(start)
    if unseen > old[0]:
        (after,) = fitted(chains, start, (best,))
    else:
        unseen = old[0]
    moved = [t for t in after if after[t] != start.get(t, 0)]
    return PrintFit(
        tuple((t, after[t]) for t in moved),
        tuple(WeightChange(t, start.get(t, 0), after[t]) for t in moved),
        old[1],
        old[0],
        _sum(chains, after)[0],
        unseen,
        sum(c.left_out for c in chains),
    )


def fitted(
    chains: Sequence[Chain],
    start: Mapping[str, int],
    ways: Sequence[tuple[float, bool]] = WAYS,
) -> list[dict[str, int]]:
    """The weights that each of ``ways`` makes of some pieces, those ``start`` being the old."""
    had = sorted(habits_of(start))
    plain = Field(chains, had) if any(not habits for _, habits in ways) else None
    every = sorted(set(had).union(*(c.habits() for c in chains)))
    whole = Field(chains, every) if any(habits for _, habits in ways) else None
    out = []
    for ridge, learns in ways:
        if learns and whole:
            found = fit([whole], start, ridge=ridge, habits=every)
            out.append(
                {t: w for t, w in found.items() if not is_habit(t) or w >= FAINT or t in had}
            )
        elif plain:
            out.append(fit([plain], start, ridge=ridge, habits=had, only=LEFT_TERMS))
    return out


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
