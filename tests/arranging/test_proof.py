"""What arranging promises, on the music as it comes out: a few studies always, all of them
and a hundred corpus pieces with the slow tests."""

from __future__ import annotations

import pytest

from tests.arranging import proof
from tests.whole import WHOLE, so_many
from workbench.arranging.arrange import arrange
from workbench.instrument.table import instrument
from workbench.music.reading.score import read_score

FEW = ("carcassi-op60-17", "sor-op35-no16", "sor-op60-08")


@pytest.mark.parametrize("name", ["ukulele-low-g", "ukulele", "guitar"])
def test_the_tune_is_kept_on_top_and_the_bass_below(name):
    found = proof.Figures()
    for study in FEW:
        source = proof.shortened(read_score(proof.STUDIES / f"{study}.mxl"), 12)
        placed = arrange(source, instrument(name))
        if name == "guitar":
            assert placed.transposition == 0, "a guitar study lies well on the guitar"
        proof._tune(found, study, source, placed)
        proof._bass(found, source, placed.piece)
    assert found.tune_kept >= 0.98 * found.tune and not found.unsaid
    assert found.on_top >= 0.92 * found.tune_kept
    assert found.bass and not found.bass_over


@pytest.mark.slow
def test_the_whole_of_it():
    found = proof.gather(so_many(43, 12), so_many(100, 15), so_many(16, 8), ranked=False)
    # of a share a single movement is a third
    least, most_wide = (0.98, 0.015) if WHOLE else (0.96, 0.03)
    for (kind, wood), f in found.items():
        assert f.tune_kept >= least * f.tune and not f.unsaid, (kind, wood)
        assert f.on_top >= 0.97 * f.tune_kept and f.wide <= most_wide * f.grips, (kind, wood)
        assert not f.above and not f.faults, (kind, wood, f.faults[:3])
        assert f.bass_over <= max(1, 0.01 * f.bass), (kind, wood)
