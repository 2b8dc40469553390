"""The engine held to brute force: every sequence of grips, every choice of what stays down."""

from __future__ import annotations

import random
from fractions import Fraction

from hypothesis import assume, given, settings
from hypothesis import strategies as st

from tests.fingering.build import piece as piece_of
from tests.fingering.reference import UP, Left, Player, brute_force, jump_terms, nowhere, size
from tests.fingering.reference_score import Score
from tests.fingering.small_music import (
    LOW_G,
    MOST_SEQUENCES,
    SMALL,
    THREE,
    UKULELE,
    music,
    spelled,
)
from workbench.fingering.both import GAIN, MOST
from workbench.fingering.engine import Solver
from workbench.fingering.lattice.growth import Lattice
from workbench.fingering.lattice.terms import LEFT_TERMS
from workbench.fingering.types import Pin, Settings
from workbench.fingering.weights import weights_for
from workbench.instrument.model import Instrument
from workbench.instrument.table import HANDS, instrument
from workbench.music.model import Note, Piece

HABITS = st.sampled_from(
    [f"habit {f} fret {r}" for f in range(1, 5) for r in range(1, 5)]
    + [f"habit {f} string {s}" for f in range(1, 5) for s in range(1, 5)]
    + [
        f"habit {a}-{b} frets {r} strings {s}"
        for a in range(1, 5)
        for b in range(a + 1, 5)
        for r in range(4)
        for s in (-2, -1, 1, 2)
    ]
)
OWN = st.lists(
    st.tuples(HABITS, st.integers(0, 3000)), max_size=12, unique_by=lambda row: row[0]
).map(tuple)
WEIGHTS = st.one_of(
    st.just(()),
    OWN,
    st.tuples(*(st.tuples(st.just(t), st.integers(0, 3000)) for t in LEFT_TERMS)),
)


def prepared(
    case: tuple[Piece, Instrument, tuple[Pin, ...]], weights: tuple[tuple[str, int], ...], hand: str
) -> tuple[Solver, Score, Player, dict[str, Pin]]:
    piece, on, pins = case
    wished = Settings(weights=weights)
    score = Score(piece, on.tuning)
    player = Player(on, HANDS[hand], weights_for(wished, on.scale_mm).left)
    asked = {p.note: p for p in pins}
    assume(2 <= len(score.moments) <= 5)
    assume(1 <= size(score, player, asked) <= MOST_SEQUENCES)
    return Solver(piece, on, HANDS[hand], settings=wished, pins=pins), score, player, asked


@SMALL
@given(case=music(), weights=WEIGHTS, hand=st.sampled_from(sorted(HANDS)))
def test_the_engine_finds_the_least_cost_of_all_sequences(
    case: tuple[Piece, Instrument, tuple[Pin, ...]], weights: tuple[tuple[str, int], ...], hand: str
) -> None:
    solver, score, player, asked = prepared(case, weights, hand)
    least = brute_force(score, player, asked)
    masks = solver.masks(asked)
    assert masks is not None, "the lattice has every grip that the reference has"
    path = solver.sweeper.solve(masks)
    assert (path.cost, path.bound, path.optimal) == (least, least, True)
    told = solver.solution()
    music_of_bars = [
        [(n.onset, n.duration, n.midi, n.voice) for n in bar.notes] for bar in case[0].bars
    ]
    assert told.bound == least <= told.cost
    if all(a != b for i, a in enumerate(music_of_bars) for b in music_of_bars[:i]):
        # equal bars may be made alike for a stated margin, and some be given up for the right hand
        alone = solver.describe(path).terms["right"]
        assert told.optimal and told.cost - least <= MOST * len(case[0].bars)
        assert told.cost == least or told.cost + told.terms["right"] + GAIN <= least + alone
    for pin in case[2]:
        n = told.note(pin.note)
        assert pin.string in (None, n.string) and pin.left in (None, n.left)


def read_hand(lattice: Lattice, t: int, state: int) -> Left:
    """A state of the lattice as the reference words it."""
    s, slots = lattice.states[t], lattice.frame.layers[t].slots
    laid = [(int(s.fret[state, i]), int(s.lo[state, i]), int(s.hi[state, i])) for i in range(4)]
    f = [x if x[0] else UP for x in laid]
    ring = tuple(slots[k - 1].id if k else None for k in (int(x) for x in s.ring[state]))
    return Left((f[0], f[1], f[2], f[3]), ring, int(s.pos[state]))


@SMALL
@given(case=music(long=True), weights=WEIGHTS, seed=st.integers(0, 2**16))
def test_every_step_of_a_path_has_the_terms_of_the_reference(
    case: tuple[Piece, Instrument, tuple[Pin, ...]], weights: tuple[tuple[str, int], ...], seed: int
) -> None:
    piece, on, _ = case
    score = Score(piece, on.tuning)
    player = Player(on, HANDS["medium"], weights_for(Settings(weights=weights), on.scale_mm).left)
    assume(all(player.grips(m.notes, {}) for m in score.moments))
    solver = Solver(piece, on, HANDS["medium"], settings=Settings(weights=weights))
    lattice, layers = solver.lattice, solver.lattice.frame.layers
    chance = random.Random(seed)
    walks: list[tuple[int, ...]] = [solver.sweeper.solve().states]
    for _ in range(6):
        walk: list[int] = []
        for t, layer in enumerate(layers):
            edges = lattice.edges[t]
            part = edges.of(walk[layer.parent] if layer.parent >= 0 else 0)
            walk.append(int(edges.into[chance.randrange(part.start, part.stop)]))
        walks.append(tuple(walk))
    for walk in walks:
        found = lattice.path_terms(walk)
        for t, layer in enumerate(layers):
            up = layer.parent
            old = read_hand(lattice, up, walk[up]) if up >= 0 else nowhere(on)
            places = lattice.grips[t][int(lattice.states[t].grip[walk[t]])].places
            after = read_hand(lattice, t, walk[t])
            ways = [x for h, x in player.steps(old, places, score, t) if h == after]
            assert ways, "the reference knows this step"
            least = min(player.price(x) for x in ways)
            assert player.price(found[t]) == least
            assert found[t] in [x for x in ways if player.price(x) == least]
            edges = lattice.edges[t]
            part = edges.of(walk[up] if up >= 0 else 0)
            assert int(edges.cost[part][edges.into[part] == walk[t]].min()) == least
        for number, j in enumerate(lattice.frame.joins):
            jump = score.jumps[number]
            assert (jump.source, jump.target) == (j.from_layer, j.to_layer)
            g = int(lattice.states[j.to_layer].grip[walk[j.to_layer]])
            hand = read_hand(lattice, j.from_layer, walk[j.from_layer])
            terms = jump_terms(player, score, jump, hand, lattice.grips[j.to_layer][g].places)
            price = solver.sweeper.join_costs[number][walk[j.from_layer], g]
            assert int(price) == player.price(terms)


@settings(SMALL, max_examples=60)
@given(
    midis=st.lists(st.integers(55, 75), min_size=1, max_size=4, unique=True),
    on=st.sampled_from((UKULELE, LOW_G, THREE, instrument("guitar"))),
    hand=st.sampled_from(sorted(HANDS)),
)
def test_the_grips_are_all_the_grips(midis: list[int], on: Instrument, hand: str) -> None:
    from workbench.fingering.hand.grips import grips, neck

    notes = tuple(
        Note(f"n{i}", Fraction(0), Fraction(1), spelled(m))
        for i, m in enumerate(sorted(midis, reverse=True))
    )
    player = Player(on, HANDS[hand], {})
    table = neck(on, HANDS[hand])
    assert {g.places for g in grips(notes, on, table, {})} == set(player.grips(notes, {}))


def test_a_finger_waits_four_beginnings_for_its_note_and_no_longer() -> None:
    open_notes = "G4:1/2 A4:1/2 G4:1/2 A4:1/2"  # by step: no broken chord
    four = Solver(piece_of(f"F4:1/2 {open_notes} F4:1/2"), UKULELE, HANDS["medium"]).solution()
    five = Solver(piece_of(f"F4:1/2 {open_notes} G4:1/2 F4:1/2"), UKULELE, HANDS["medium"])
    assert four.note("b0v1n5a").move == "planted"
    assert five.solution().note("b0v1n6a").move == "place"
