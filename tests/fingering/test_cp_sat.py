"""The engine held to OR-Tools CP-SAT on bars of real scores (music21's corpus)."""

from __future__ import annotations

from itertools import chain

import pytest

from tests.fingering.cp_model import cp_sat
from tests.fingering.excerpts import taken
from workbench.fingering.engine import Solver
from workbench.instrument.table import hand, instrument
from workbench.music.model import Piece

UKULELE = instrument("ukulele")


def check(pieces: list[tuple[str, Piece]], most_steps: int) -> tuple[int, int]:
    """(pieces held to CP-SAT, of these with joins); those of more steps are passed over."""
    held = joined = 0
    for name, piece in pieces:
        sweeper = Solver(piece, UKULELE, hand("medium")).sweeper
        if sum(len(e.cost) for e in sweeper.lattice.edges) > most_steps or sweeper.n < 2:
            continue
        path = sweeper.solve()
        answer = cp_sat(sweeper)
        assert answer.status == "optimal", name
        assert (path.cost, path.bound) == (answer.cost, answer.bound), name
        assert path.optimal, name
        held += 1
        joined += bool(sweeper.joins)
    return held, joined


def test_bars_of_the_corpus_cost_what_cp_sat_says() -> None:
    pieces = chain(
        taken("ryansMammoth", UKULELE, 55, 1, step=19),
        taken("ryansMammoth", UKULELE, 42, 1, step=25, repeated=True),
        taken("essenFolksong", UKULELE, 12, 1, step=2),
        taken("bach", UKULELE, 10, 1, step=37),
    )
    held, joined = check(list(pieces), 2500)
    assert held >= 60 and joined >= 10


@pytest.mark.slow
def test_longer_excerpts_of_the_corpus_cost_what_cp_sat_says() -> None:
    pieces = chain(
        taken("ryansMammoth", UKULELE, 20, 4, step=41),
        taken("ryansMammoth", UKULELE, 20, 2, step=43, repeated=True),
        taken("bach", UKULELE, 20, 2, step=17, parts="all"),
    )
    held, joined = check(list(pieces), 60_000)
    assert held >= 40 and joined >= 12
