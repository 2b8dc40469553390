"""How much of a long count the slow tests make.

Where one test goes over thousands (the scores of a corpus, kills, spoilt inputs, the seconds of a
clock), ``check.py --full`` takes an even share of them, so that it ends in about an hour on two
cores; ``PLUCKWRIGHT_WHOLE=1`` takes all.
"""

from __future__ import annotations

import os
from collections.abc import Sequence
from typing import TypeVar

WHOLE = os.environ.get("PLUCKWRIGHT_WHOLE", "") == "1"
T = TypeVar("T")


def so_many(every: int, some: int) -> int:
    """So many."""
    return every if WHOLE else some


def share(things: Sequence[T], one_of: int) -> Sequence[T]:
    """All of them, or one of so many, evenly spread."""
    return things if WHOLE else things[::one_of]
