"""The right hand: printed fingers, the thumb's region, alternation, no finger twice in haste."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.fingering.build import piece
from tests.fingering.editions import NAMES, placed, rest_slow
from tests.fingering.right_agreement import editions, summed
from workbench.fingering.engine import Solver, solve
from workbench.fingering.lattice.layers import build_frame
from workbench.fingering.right.figures import QUICK
from workbench.fingering.right.fingers import Plucker, solve_right
from workbench.fingering.right.plucking import together
from workbench.fingering.types import Pin, Settings
from workbench.fingering.weights import weights_for
from workbench.instrument.table import hand, instrument


def test_printed_fingers_are_met_better_than_by_the_plainest_rule():
    """Source: Carcassi, op. 59, ed. Santisteban 1906 (right_printed.py)."""
    told, ours, plain = summed(editions())
    assert told >= 100
    assert ours > plain and ours >= 0.85 * told


def line(strings, count, tempo, value="1/4", pins=None, style="i-m"):
    """Right fingers for single notes on these strings, one after another."""
    music = piece(" ".join(f"C4:{value}" for _ in strings), tempo=tempo)
    ids = [n.id for n in music.notes]
    who = Plucker(count, tempo, weights_for(Settings()).right, style)
    right, _ = solve_right(
        who, build_frame(music), dict(zip(ids, strings, strict=True)), pins or {}
    )
    return [right[i] for i in ids]


@settings(max_examples=60, deadline=None)
@given(
    st.sampled_from((4, 6)).flatmap(
        lambda n: st.tuples(st.just(n), st.lists(st.integers(1, n), min_size=2, max_size=16))
    ),
    st.sampled_from(("i-m", "m-a", "a-m-i", "thumb")),
    st.sampled_from((60, 96, 144)),
)
def test_no_finger_plucks_twice_in_haste(drawn, style, tempo):
    """Common practice, no source: beyond three plucks a second fingers take turns."""
    count, strings = drawn
    assert 60 / tempo / 4 <= QUICK
    for a, b in pairwise(line(strings, count, tempo, style=style)):
        assert a != b or a == "p"


def test_a_slow_line_may_repeat_a_finger_where_the_figure_asks_it():
    """The same passage in haste and at leisure: a pin leaves the one finger no choice."""
    music = [2, 2, 2, 2]
    pins = {"b0v1n1a": Pin("b0v1n1a", right="i"), "b0v1n2a": Pin("b0v1n2a", right="i")}
    assert line(music, 6, 144, pins=pins)[1:3] == ["i", "i"]
    assert line(music, 6, 144, pins=pins)[0] != "i" != line(music, 6, 144, pins=pins)[3]


@pytest.mark.parametrize("name", ["guitar", "ukulele-low-g", "ukulele"])
@pytest.mark.parametrize("tempo", [80, 120])
def test_runs_alternate_i_and_m(name, tempo):
    """Scales on the treble strings (common practice: i and m in turn, without a third)."""
    scale = "E4 F4 G4 A4 B4 C5 D5 C5 B4 A4 G4 F4 E4 F4 G4 A4"
    f = solve(piece(" ".join(f"{n}:1/4" for n in scale.split()), tempo=tempo),
              instrument(name), hand("medium"))  # fmt: skip
    for n in f.bars[0].notes:
        # a high fourth string is the thumb's even in a run: it lies across the neck
        assert n.slurred or n.right in ("p" if n.string == 4 and name == "ukulele" else "im")
    fingers = [n.right for n in f.bars[0].notes if not n.slurred]
    assert all(a != b for a, b in pairwise(fingers))


@pytest.mark.parametrize("string", [4, 3])
def test_the_thumb_has_the_bass_on_string_4_or_3_of_a_re_entrant_ukulele(string):
    bass = {4: "G4", 3: "C4"}[string]
    music = piece(f"E4:1/2 A4:1/2 E4:1/2 A4:1/2 E4:1/2 A4:1/2 | {bass}:1 {bass}:1 {bass}:1",
                  tempo=90)  # fmt: skip
    low = [n.id for n in music.notes if n.voice == 2]
    f = solve(music, instrument("ukulele"), hand("medium"),
              pins=[Pin(i, string=string) for i in low])  # fmt: skip
    assert {f.note(i).right for i in low} == {"p"}
    assert "p" not in {n.right for n in f.bars[0].notes if n.id not in low}


def test_a_figure_on_low_strings_gives_the_thumb_its_region():
    """Strings 5 4 3 2 1 of a guitar up and down: p p i m a m i p (Carcassi, prelude 6)."""
    assert line([5, 4, 3, 2, 1, 2, 3, 4, 5, 4, 3, 2], 6, 72, "1/2") == list(
        "ppimamippp"[:9]
    ) + list("pim")
    assert line([3, 2, 1, 2] * 3, 6, 72, "1/2") == list("imam" * 3)
    assert line([3, 2, 1, 2] * 3, 4, 72, "1/2") == list("pimi" * 3)


def chords(name, text, tempo=90):
    """Right fingers, from string 1, of every moment of a bar, with its kind."""
    f = solve(piece(text, tempo=tempo), instrument(name), hand("medium"))
    by = {}
    for n in f.bars[0].notes:
        by.setdefault(n.onset, []).append(n)
    return [
        ("".join(n.right for n in sorted(m, key=lambda n: n.string)), together(m))
        for m in by.values()
    ]


def test_bars_of_full_chords_are_strummed_and_a_bass_of_its_own_is_pinched():
    """Common practice, no source."""
    c = "G4+C4+E4+C5"
    assert chords("ukulele", f"{c}:1 {c}:1 {c}:1 {c}:1") == [("pppp", "strum")] * 4
    assert chords("ukulele", f"{c}:1/2 {c}:1/2 {c}:1/2", 120) == [("iiii", "strum")] * 3
    assert chords("ukulele", "C5:1 G4+C4+E4+C5:1")[-1] == ("amip", "pinch")
    assert chords("guitar", "E2+B2+E3+G#3+B3+E4:2 E4:1")[0] == ("pppppp", "strum")
    assert chords("guitar", "A2+C4+E4:1 A2+C4+E4:1 A2+C4+E4:1")[0][1] == "pinch"
    assert chords("guitar", "G3+B3+E4:1 G3+B3+E4:1 G3+B3+E4:1")[0] == ("ami", "fingers")
    assert {k for _, k in chords("guitar", "G3+E4:1 G3+E4:1 | C3:1 C3:1")} == {"pinch"}
    assert [k for _, k in chords("guitar", "B3+E4:1 B3:1")] == ["fingers", ""]


def test_a_pin_turns_a_strum_into_a_pinch():
    music = piece("G4+C4+E4+C5:1 G4+C4+E4+C5:1")
    top = max(music.notes[:4], key=lambda n: n.midi).id
    f = solve(music, instrument("ukulele"), hand("medium"), pins=[Pin(top, right="a")])
    assert together(f.bars[0].notes[:4]) == "pinch"
    assert together(f.bars[0].notes[4:]) in ("strum", "pinch")


def test_a_second_voice_above_the_first_is_no_bass():
    """Scores number their voices as they please; the thumb goes by what sounds below."""
    music = piece("G3:1/2 B3:1/2 G3:1/2 B3:1/2 | E4:1/2 E4:1/2 E4:1/2 E4:1/2")
    f = solve(music, instrument("guitar"), hand("medium"))
    assert all(n.right != "p" for n in f.bars[0].notes if n.pitch == "E4")


def test_other_ways_of_a_later_bar_know_its_strum():
    chord = "G4+C4+E4+C5"
    music = piece("C5:1 A4:1", f"{chord}:1 {chord}:1 {chord}:1")
    made = Solver(music, instrument("ukulele"), hand("medium"))
    assert {n.right for n in made.solution().bars[1].notes} == {"p"}
    others = made.right_alternatives(1)
    assert others and all({n.right for n in o.notes} != {"p"} for o in others)
    for other in made.alternatives(1):
        assert {n.right for n in other.notes} == {"p"}


def right_of(name, bars):
    """Right fingers with their strings, moment by moment, of the first bars of a study."""
    f = solve(placed(name), instrument("guitar"), hand("medium"))
    out = []
    for bar in f.bars[:bars]:
        by = {}
        for n in bar.notes:
            if n.right and not n.shares:
                by.setdefault(n.onset, []).append((n.string, n.right))
        out += [sorted(m, reverse=True) for _, m in sorted(by.items())]
    return out


def test_thumb_and_index_take_turns_in_a_quick_accompaniment():
    """Sor, op. 35 no. 13 (tests/data/guitar-editions): a tune over sixteenths that go to and fro
    between string 3 and the strings below (common practice, no source: p i p i, and the tune's
    strings are m's and a's)."""
    met = right_of("sor-op35-no13", 8)
    fingers = {3: "i", 2: "m", 1: "a"}
    assert len(met) > 60
    assert all(f == fingers.get(s, "p") for m in met for s, f in m)


@pytest.mark.parametrize(
    "name", rest_slow(NAMES, ("sor-op35-no15", "sor-op60-13", "carcassi-op60-06"))
)
def test_thumb_and_fingers_keep_their_order_from_moment_to_moment(name):
    """Common practice, no source: the thumb does not pluck nearer the floor than a finger just
    did, nor a finger nearer the ceiling than the thumb; it stays away from strings 1 and 2. A
    chord of four leaves no choice: each finger has the string that is left to it."""
    met = right_of(name, 64)
    thumbs = [min((s for s, f in m if f == "p"), default=9) for m in met]
    others = [max((s for s, f in m if f != "p"), default=0) for m in met]
    full = [len(m) > 3 for m in met]
    steps = pairwise(zip(thumbs, others, full, strict=True))
    crossed = sum(
        (p < last or thumb < f) and not a and not b for (thumb, last, a), (p, f, b) in steps
    )
    assert crossed <= 0.03 * len(met)
    assert sum(p < 3 for p in thumbs) <= 0.1 * len(met)


def test_a_bass_folded_in_leaves_the_thumb_the_string_above_it():
    """A tune's G on string 4 of a high-G ukulele over a bass on strings 3 and 2: p takes
    string 4, i and m a string each, and nothing crosses (common practice, no source)."""
    low = " ".join(f"{name}:1/4 r:1/4" for name in ("C4", "D4", "E4", "F4"))
    music = piece(f"{'r:1/4 G4:1/4 ' * 4}| {low}")
    bars = solve(music, instrument("ukulele"), hand("medium")).bars
    assert {(n.string, n.right) for b in bars for n in b.notes} == {(4, "p"), (3, "i"), (2, "m")}
