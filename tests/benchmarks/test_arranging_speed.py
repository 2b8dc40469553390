"""Ranking all keys of a study against fingering it, in one run of the processor's clock."""

from __future__ import annotations

import time

import pytest

from tests.arranging.proof import MEDIUM, STUDIES, shortened
from workbench.arranging.arrange import arrange
from workbench.arranging.keys import candidate_keys
from workbench.fingering.engine import solve
from workbench.instrument.table import instrument
from workbench.music.reading.score import read_score


@pytest.mark.slow
def test_ranking_all_keys_takes_no_longer_than_six_full_solves():
    wood = instrument("ukulele-low-g")
    study = shortened(read_score(STUDIES / "carcassi-op26-06.mxl"), 64)
    firsts: list[float] = []
    begun = time.process_time()
    candidate_keys(
        study, wood, MEDIUM, growing=lambda found: firsts.append(time.process_time() - begun)
    )
    ranking = time.process_time() - begun
    placed = arrange(study, wood, hand=MEDIUM)
    begun = time.process_time()
    solve(placed.piece, wood, MEDIUM)
    once = time.process_time() - begun
    print(f"\nranking: {ranking / once:.1f} solves, the first key after {firsts[0] / once:.2f}")
    assert ranking / once < 6 and firsts[0] < ranking / 4
