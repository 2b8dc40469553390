"""What one hand can stop, told in two ways that have to agree."""

from __future__ import annotations

import random

import pytest

from workbench.fingering.hand.grips import PAIRS, neck, possible
from workbench.instrument.table import hand, instrument


@pytest.mark.parametrize("name", ["guitar", "ukulele"])
def test_one_hand_is_judged_as_the_table_judges_all(name) -> None:
    player = instrument(name)
    table = neck(player, hand("medium"))
    laid, across = table.holding.laid, table.holding.across
    chance = random.Random(1)
    told = set()
    for _ in range(2000):
        fingers = []
        for _finger in range(4):
            lo, hi = chance.choice(laid)
            fret = chance.choice((0, 1, 2, 3, 4, 5, 7))
            fingers.append((fret, lo, hi) if fret else (0, 0, 0))
        at = [r * len(laid) + across[lo << 4 | hi] if r else 0 for r, lo, hi in fingers]
        by_table = all(table.verdicts[i, at[f], at[g]] < 2 for i, (f, g) in enumerate(PAIRS))
        assert possible(fingers, table) == by_table, fingers
        told.add(by_table)
    assert told == {True, False}
