"""Habits of one teacher's left hand: which finger, fret and string, which two fingers together,
are seldom in the scores that it was learned from.

No term of the cost knows them: they are a hand's own, and have a weight only where something was
learned (``learning/printfit.py``). A habit only ever makes a grip dearer. Its name says what
it sees: ``habit 3 fret 2``, ``habit 3 string 5``, ``habit 1-3 frets 2 strings -1``.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from itertools import combinations
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    import numpy as np
    import numpy.typing as npt

HABIT = "habit"
Place = tuple[int, int, int]  # string, fret, finger
BANDS = (10, 7)  # lowest frets of what counts as one place high on the neck
MOST_FRETS, MOST_STRINGS = 3, 2  # further apart counts as this far


def is_habit(term: str) -> bool:
    """Whether a weight is that of a habit."""
    return term.startswith(HABIT + " ")


def habits_of(weights: Mapping[str, int]) -> dict[str, int]:
    """The habits among weights, those that count something."""
    return {t: w for t, w in weights.items() if w and is_habit(t)}


def shown(places: Sequence[Place]) -> Counter[str]:
    """The habits that the notes which begin together show, and how often each."""
    out: Counter[str] = Counter()
    stopped = [p for p in places if p[1]]
    for string, fret, finger in stopped:
        band = next((low for low in BANDS if fret >= low), fret)
        out[f"{HABIT} {finger} fret {band}"] += 1
        out[f"{HABIT} {finger} string {string}"] += 1
    for one, two in combinations(stopped, 2):
        (s, f, a), (t, g, b) = sorted((one, two), key=lambda p: p[2])
        if a != b:
            frets = min(g - f, MOST_FRETS)
            strings = max(-MOST_STRINGS, min(t - s, MOST_STRINGS))
            out[f"{HABIT} {a}-{b} frets {frets} strings {strings}"] += 1
    return out


def prices(grips: Sequence[Sequence[Place]], weights: Mapping[str, int]) -> npt.NDArray[np.int64]:
    """What the habits of ``weights`` add to each grip, in thousandths."""
    import numpy as np  # the weights' names are asked for where nothing is computed

    known = habits_of(weights)
    if not known:
        return np.zeros(len(grips), np.int64)
    return np.array(
        [sum(known.get(h, 0) * n for h, n in shown(places).items()) for places in grips], np.int64
    )
