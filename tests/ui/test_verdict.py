"""What a change of fingering brought, told in one sentence."""

from __future__ import annotations

from dataclasses import replace

import pytest

from workbench.fingering.types import Audit, FingeredBar, Fingering
from workbench.language.fact import fact
from workbench.ui.bench.verdict import verdict

BEFORE = Fingering(1000, True, (FingeredBar(0, "7", ()),), Audit(8, 2, 0.9))


@pytest.mark.parametrize(
    ("cost", "cut", "words"),
    [
        (1000, 2, "Done: as easy as before, nothing cut."),
        (1000, 3, "Done: 1 more cut note."),
        (1250, 2, "Done: 25 % more effort in the whole piece."),
        (900, 0, "Done: 2 fewer cut notes and 10 % less effort in the whole piece."),
    ],
)
def test_cut_notes_and_effort_against_the_fingering_before(cost, cut, words):
    after = replace(BEFORE, cost=cost, audit=replace(BEFORE.audit, cut=cut))
    assert verdict(BEFORE, after) == words


def test_a_bar_that_cannot_be_played_any_more_comes_first():
    stuck = replace(BEFORE.bars[0], impossible=fact("same string", note="C4", other="D4"))
    words = verdict(BEFORE, replace(BEFORE, bars=(stuck,), cost=1))
    assert words.startswith("That cannot be played: bar 7 has no fingering that way")
    # What could not be played before either is not the fault of this change.
    was_stuck = replace(BEFORE, bars=(stuck,))
    assert verdict(was_stuck, was_stuck) == "Done: as easy as before, nothing cut."
