"""What is said of another fingering of a bar tells it from the present one and the others."""

from __future__ import annotations

import pytest

from tests.fingering.agreement import load
from tests.fingering.build import piece
from workbench.fingering.engine import Solver
from workbench.fingering.telling.words import words
from workbench.instrument.table import hand, instrument


@pytest.mark.parametrize("study", ["sor-op60-08", "sor-op60-01"])
def test_no_two_alternatives_of_a_published_bar_read_alike(study: str) -> None:
    """Studies: Mutopia Project, tests/data/guitar-editions."""
    music, _ = load(study)
    solver = Solver(music, instrument("guitar"), hand("medium"))
    told = 0
    for bar in range(0, len(music.bars), 3):
        said = [words(a.reason) for a in solver.alternatives(bar, 4)]
        assert len(set(said)) == len(said)
        assert not any(" 0 " in s or "0.0" in s or "effort" in s for s in said)
        told += len(said)
    assert told


def test_a_note_is_numbered_where_its_namesake_stays() -> None:
    """Two E's of one bar, of which another fingering takes one elsewhere."""
    solver = Solver(piece("E4:1 C4:1 E4:1 G4:1"), instrument("ukulele"), hand("medium"))
    said = " ".join(words(a.reason) for a in solver.alternatives(0, 6))
    assert "the 1st E" in said or "the 2nd E" in said
    assert "the 1st C" not in said
