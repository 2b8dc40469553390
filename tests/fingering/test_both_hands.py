"""The strings suit both hands: the left gives up a little where the right gains more."""

from __future__ import annotations

import pytest

from tests.fingering.agreement import load
from tests.fingering.build import piece
from workbench.fingering import both
from workbench.fingering.engine import Solver
from workbench.fingering.lattice.consistency import settle
from workbench.fingering.types import Pin
from workbench.instrument.table import hand, instrument

GUITAR, HAND = instrument("guitar"), hand("medium")


def hands(solver: Solver):
    """(left, right) cost of the fingering told, and of the left hand's own optimum."""
    told = solver.solution()
    own, _, _ = settle(solver.sweeper, solver.played, solver.masks(solver.asked(solver.pins)) or {})
    alone = solver.describe(own)
    return (told.cost, told.terms["right"]), (alone.cost, alone.terms["right"])


@pytest.mark.parametrize(
    ("study", "bars"), [("carcassi-op60-05", (2,)), ("sor-op35-no21", (1, 9)), ("sor-op60-08", ())]
)
def test_other_strings_are_taken_where_both_hands_gain(study: str, bars: tuple[int, ...]) -> None:
    """Studies: Mutopia Project, tests/data/guitar-editions."""
    solver = Solver(load(study)[0], GUITAR, HAND)
    now, alone = hands(solver)
    if not bars:
        assert now == alone
        return
    assert now[0] > alone[0] and sum(now) + both.GAIN <= sum(alone)
    assert now[0] - alone[0] <= both.MOST * len(bars)
    assert solver.solution().bound <= alone[0]


def test_a_printed_place_agrees_with_what_both_hands_choose() -> None:
    """Carcassi, op. 60 no. 5, bar 3 (Mutopia Project): the D after a C sharp on string 5 is not
    the open string 4 that the thumb would have to cross to, but string 5 with the fourth finger."""
    music, marks = load("carcassi-op60-05")
    told = Solver(music, GUITAR, HAND).solution()
    bar = {n.id for n in music.bars[2].notes}
    printed = [m for m in marks if m.note in bar and m.left]
    assert printed and all(told.note(m.note).left == m.left for m in printed)


def test_a_pin_stands_whatever_the_right_hand_would_rather() -> None:
    music, _ = load("carcassi-op60-05")
    free = Solver(music, GUITAR, HAND)
    d = next(n.id for n in music.bars[2].notes if free.solution().note(n.id).fret == 5)
    free.with_pins((Pin(d, string=4, fret=0),))
    assert free.solution().note(d).string == 4


def test_bars_of_the_same_music_stay_alike() -> None:
    music, _ = load("sor-op35-no21")
    told = Solver(music, GUITAR, HAND).solution()
    places = [[(n.string, n.fret, n.left) for n in told.bars[b].notes] for b in (1, 9)]
    assert places[0] == places[1]


def test_an_easy_right_hand_leaves_the_left_alone() -> None:
    solver = Solver(piece("C4:1 D4:1 E4:1 F4:1 | G4:1 F4:1 E4:1 D4:1"), GUITAR, HAND)
    now, alone = hands(solver)
    assert now == alone and solver.solution().optimal


def test_what_a_bar_costs_more_is_told_from_its_own_steps() -> None:
    from workbench.fingering.lattice.window import FreeBar

    music, _ = load("sor-op60-08")
    solver = Solver(music, GUITAR, HAND)
    states, sweeper = solver.path().states, solver.sweeper
    tried = 0
    for bar, layers in enumerate(solver.frame.of_bar[:8]):
        window = FreeBar(solver.lattice, states, layers, {}, sweeper)
        now = tuple(int(solver.lattice.states[t].grip[states[t]]) for t in layers)
        for t, grip in window.forks(now)[:4]:
            _, changed = window.best(t, grip)
            other = tuple(changed.get(x, s) for x, s in enumerate(states))
            more = sweeper.value(other) - sweeper.value(states)
            assert sweeper.beside(states, other) == more, bar
            tried += 1
    assert tried > 20


def test_what_is_remembered_is_what_would_be_found_anew() -> None:
    """Pins set and lifted all over a study: each time the fingering of a fresh start."""
    music, _ = load("carcassi-op60-05")
    kept = Solver(music, GUITAR, HAND)
    notes = [n for b in kept.solution().bars for n in b.notes if n.left and not n.shares]
    for n in notes[5::40]:
        pins = (Pin(n.id, left=n.left % 4 + 1), Pin(notes[-1].id, right="p"))
        again = kept.with_pins(pins)
        assert again == Solver(music, GUITAR, HAND, pins=pins).solution()
    assert kept.with_pins(()) == Solver(music, GUITAR, HAND).solution()
