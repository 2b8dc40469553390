"""The engine held to OR-Tools CP-SAT on bars of real scores (music21's corpus)."""

from __future__ import annotations

from collections.abc import Iterable

import pytest

from tests.fingering.cp_model import cp_sat
from tests.fingering.excerpts import taken
from workbench.fingering.engine import Solver
from workbench.instrument.table import hand, instrument
from workbench.music.model import Piece

UKULELE = instrument("ukulele")


def check(pieces: Iterable[tuple[str, Piece]], wanted: int, most_steps: int) -> int:
    """Hold ``wanted`` pieces to CP-SAT (those of more steps are passed over), and count
    those with joins."""
    held = joined = 0
    for name, piece in pieces:
        sweeper = Solver(piece, UKULELE, hand("medium")).sweeper
        if sum(len(e.cost) for e in sweeper.lattice.edges) > most_steps or sweeper.n < 2:
            continue
        path = sweeper.solve()
        answer = cp_sat(sweeper)
        if answer.status != "optimal":  # out of time: no proof, but nothing may contradict it
            assert answer.bound <= path.cost, name
            assert answer.status == "unknown" or path.cost <= answer.cost, name
            continue
        assert (path.cost, path.bound) == (answer.cost, answer.bound), name
        assert path.optimal, name
        held += 1
        joined += bool(sweeper.joins)
        if held == wanted:
            return joined
    raise AssertionError(f"only {held} pieces of at most {most_steps} steps")


def test_bars_of_the_corpus_cost_what_cp_sat_says() -> None:
    assert check(taken("ryansMammoth", UKULELE, 200, 1, step=5, repeated=True), 4, 1500) == 4
    check(taken("ryansMammoth", UKULELE, 200, 1, step=5), 12, 2000)
    check(taken("essenFolksong", UKULELE, 31, 1, step=1), 6, 2000)
    check(taken("bach", UKULELE, 20, 1, step=37), 2, 3000)


@pytest.mark.slow
def test_many_bars_of_the_corpus_cost_what_cp_sat_says() -> None:
    assert check(taken("ryansMammoth", UKULELE, 200, 1, step=5, repeated=True), 12, 1500) == 12
    check(taken("ryansMammoth", UKULELE, 200, 1, step=5), 36, 2000)
    check(taken("essenFolksong", UKULELE, 31, 1, step=1), 12, 2000)
    check(taken("bach", UKULELE, 20, 1, step=37), 4, 3000)


@pytest.mark.slow
def test_longer_excerpts_of_the_corpus_cost_what_cp_sat_says() -> None:
    assert check(taken("ryansMammoth", UKULELE, 99, 2, step=9, repeated=True), 8, 5_000) == 8
    check(taken("ryansMammoth", UKULELE, 99, 4, step=11), 6, 12_000)
    check(taken("bach", UKULELE, 40, 2, step=17, parts="all"), 4, 6_000)
