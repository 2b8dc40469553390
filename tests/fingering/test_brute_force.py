"""The engine held to brute force: every sequence of grips, every choice of what stays down."""

from __future__ import annotations

import random
from dataclasses import replace
from fractions import Fraction

from hypothesis import HealthCheck, Phase, assume, given, settings
from hypothesis import strategies as st

from tests.fingering.build import piece as piece_of
from tests.fingering.reference import UP, Left, Player, brute_force, jump_terms, nowhere, size
from tests.fingering.reference_score import Score
from workbench.fingering.engine import Solver
from workbench.fingering.lattice import Lattice
from workbench.fingering.terms import LEFT_TERMS
from workbench.fingering.types import Pin, Settings
from workbench.fingering.weights import weights_for
from workbench.instrument.model import Instrument
from workbench.instrument.table import HANDS, instrument
from workbench.music.model import Bar, Note, Piece, Pitch

MOST_SEQUENCES = 4000
UKULELE = replace(instrument("ukulele"), frets=6)
LOW_G = replace(instrument("ukulele-low-g"), frets=5)
THREE = Instrument("three", "Own three strings", (67, 62, 55), 420.0, 6, 10.0)
SPELLED = ("C0", "C1", "D0", "E-1", "E0", "F0", "F1", "G0", "A-1", "A0", "B-1", "B0")
LENGTHS = (Fraction(1, 2), Fraction(1), Fraction(3, 2), Fraction(2))


def spelled(midi: int) -> Pitch:
    name = SPELLED[midi % 12]
    return Pitch(name[0], int(name[1:]), midi // 12 - 1)


@st.composite
def music(draw: st.DrawFn, long: bool = False) -> tuple[Piece, Instrument, tuple[Pin, ...]]:
    """1 to 3 bars on a beat of a quarter or an eighth: a line, sometimes with a
    longer second voice, chords, a grace note, repeats and endings, random pins.
    ``long``: lines of eight beats, where a finger may wait for a note far off."""
    on = draw(st.sampled_from((UKULELE, UKULELE, LOW_G, THREE)))
    top = max(on.open_midi)
    pitches = st.integers(min(on.open_midi), top + 4)
    shape = draw(st.sampled_from(("line", "line", "repeat", "endings", "back")))
    beats = {"line": draw(st.sampled_from(((4,), (2, 3), (5,), (1, 2, 1)))),
             "repeat": draw(st.sampled_from(((3,), (2, 2), (4,)))),
             "endings": (2, 1, 1), "back": (2, 2)}[shape]  # fmt: skip
    if long:
        beats = draw(st.sampled_from(((8,), (4, 4)))) if shape == "line" else beats
    step = draw(st.sampled_from((Fraction(1, 2), Fraction(1))))
    bars = []
    for index, count in enumerate(beats):
        notes: list[Note] = []
        for k in range(count):
            at = k * step
            kind = draw(st.sampled_from(("note", "note", "chord", "rest", "low", "grace")))
            length = draw(st.sampled_from((step, step, *LENGTHS)))
            if kind != "rest" or not notes:
                notes.append(Note(f"b{index}k{k}a", at, length, spelled(draw(pitches))))
            if kind in ("chord", "low"):
                voice, long = (2, Fraction(2)) if kind == "low" else (1, length)
                other = draw(pitches)
                if other != notes[-1].midi:
                    notes.append(Note(f"b{index}k{k}b", at, long, spelled(other), voice))
            if kind == "grace":
                early = Note(f"b{index}k{k}g", at, Fraction(0), spelled(draw(pitches)), grace=True)
                notes.append(early)
        bars.append(Bar(index, str(index + 1), (count, 4), count * step, tuple(notes)))
    if shape == "repeat":
        bars[0] = replace(bars[0], repeat_start=True)
        bars[-1] = replace(bars[-1], repeat_end=True)
    if shape == "endings":
        bars[0] = replace(bars[0], repeat_start=True)
        bars[1] = replace(bars[1], endings=(1,), repeat_end=True)
        bars[2] = replace(bars[2], endings=(2,))
    if shape == "back":
        bars[0] = replace(bars[0], fine=True)
        bars[1] = replace(bars[1], jump="D.C. al Fine")
    piece = Piece("Trial", tuple(bars))
    pins = []
    for n in piece.notes:
        if draw(st.integers(0, 5)) == 0:
            places = on.places(n.midi)
            if places:
                string, fret = draw(st.sampled_from(places))
                left = 0 if fret == 0 else draw(st.sampled_from((1, 2, 3, 4)))
                what = draw(st.sampled_from(("string", "all", "left")))
                pins.append({
                    "string": Pin(n.id, string=string), "left": Pin(n.id, left=left),
                    "all": Pin(n.id, string=string, fret=fret, left=left),
                }[what])  # fmt: skip
    return piece, on, tuple(pins)


WEIGHTS = st.one_of(
    st.just(()),
    st.tuples(*(st.tuples(st.just(t), st.integers(0, 3000)) for t in LEFT_TERMS)),
)
SMALL = settings(
    max_examples=60, deadline=None, derandomize=True, database=None, phases=[Phase.generate],
    suppress_health_check=[HealthCheck.filter_too_much, HealthCheck.too_slow],
)  # fmt: skip


def prepared(
    case: tuple[Piece, Instrument, tuple[Pin, ...]], weights: tuple[tuple[str, int], ...], hand: str
) -> tuple[Solver, Score, Player, dict[str, Pin]]:
    piece, on, pins = case
    wished = Settings(weights=weights)
    score = Score(piece)
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
    if all(a != b for i, a in enumerate(music_of_bars) for b in music_of_bars[:i]):
        assert told.cost == least and told.optimal
    else:  # equal bars may be made alike for a stated margin
        assert told.cost >= least
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
    score = Score(piece)
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
    from workbench.fingering.grips import grips, neck

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
