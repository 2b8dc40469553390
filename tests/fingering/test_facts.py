"""Facts of the trade (common practice, no source), each on small music of our own."""

from __future__ import annotations

import itertools

import pytest

from tests.fingering.build import piece
from workbench.fingering.engine import Solver
from workbench.fingering.telling.words import words
from workbench.fingering.types import Fingering, Pin, Settings
from workbench.instrument.table import hand, instrument
from workbench.music.model import Piece

UKULELE = instrument("ukulele")


def solver(music: Piece, *pins: Pin, **settings: object) -> Solver:
    return Solver(music, UKULELE, hand("medium"), settings=Settings(**settings), pins=pins)


def lefts(f: Fingering) -> list[int | None]:
    return [n.left for bar in f.bars for n in bar.notes]


def test_fret_three_on_top_takes_finger_four_when_lower_notes_follow_beneath() -> None:
    f = solver(piece("C5:2 r:1 | r:1/2 F4:1/2 E4:1/2 D4:1/2 r:1")).solution()
    top = f.note("b0v1n0a")
    assert (top.string, top.fret, top.left) == (1, 3, 4)
    assert top.held == top.duration
    beneath = [n for n in f.bars[0].notes if n.id != top.id]
    assert all(n.left in (0, 1, 2, 3) for n in beneath)


def test_finger_four_that_still_holds_gives_the_next_fret_three_to_finger_three() -> None:
    music = piece("r:1 C5:1 | E4:2")
    holding = Pin("b0v2n0a", string=3, fret=4, left=4)
    f = solver(music, holding, Pin("b0v1n1a", string=1)).solution()
    assert f.note("b0v1n1a").left == 3
    assert f.note("b0v2n0a").held == f.note("b0v2n0a").duration


def test_open_f_grip_alone_is_two_and_one() -> None:
    f = solver(piece("A4+F4:2"), Pin("b0v1n0a", string=4)).solution()
    assert lefts(f) == [2, 1]


F_THEN = ("A4+F4:1 Bb4+D4+F4:1", Pin("b0v1n0a", string=4), Pin("b0v1n1a", string=4))


def test_f_grip_before_the_slide_up_takes_three_and_one() -> None:
    s = solver(piece(F_THEN[0]), *F_THEN[1:])
    f = s.solution()
    assert (f.note("b0v1n0a").left, f.note("b0v1n0b").left) == (3, 1)
    assert f.note("b0v1n1a").left == 3 and f.note("b0v1n1a").move == "guide"
    assert f.note("b0v1n1c").left == 1 and f.note("b0v1n1c").move == "planted"
    assert f.audit.cut == 0


def test_the_reason_against_two_and_one_is_the_hop_that_cuts_a_note() -> None:
    s = solver(piece(F_THEN[0]), *F_THEN[1:])
    s.solution()
    two_one = s.why_not(
        0, [*F_THEN[1:], Pin("b0v1n0a", string=4, left=2), Pin("b0v1n0b", left=1),
            Pin("b0v1n1b", left=2)],
    )  # fmt: skip
    assert two_one.cost > s.solution().cost
    assert "cuts the A" in words(two_one.reason)
    hopped = next(n for n in two_one.notes if n.id == "b0v1n0a")
    assert hopped.cut_kind == "hop" and "hops from string 4 to string 3" in (
        words(hopped.cut_reason)
    )


def test_one_and_two_stay_planted_under_three_and_four() -> None:
    music = piece("F4+D4:1 G4+E4:1 F4+D4:1")
    pins = (Pin("b0v1n1a", string=2), Pin("b0v1n1b", string=3))
    f = solver(music, *pins).solution()
    assert set(lefts(f)[:2]) == {1, 2} and set(lefts(f)[2:4]) == {3, 4}
    assert [n.move for n in f.bars[0].notes[4:]] == ["planted", "planted"]
    assert not any(n.move == "hop" for n in f.bars[0].notes)


@pytest.mark.parametrize(("relaxed", "fingers"), [(False, [1, 2]), (True, [1, 3])])
def test_frets_one_and_two_alone_take_one_and_three_only_when_asked(
    relaxed: bool, fingers: list[int]
) -> None:
    music = piece("Bb4+F#4:2")
    s = solver(music, Pin("b0v1n0a", string=1), relaxed_hand=relaxed)
    f = s.solution()
    assert lefts(f) == fingers
    others = s.alternatives(0, 3)
    wanted = [1, 3] if not relaxed else [1, 2]
    assert wanted in [[n.left for n in a.notes] for a in others]
    assert f.bars[0].reach_mm > 0
    assert all(": " in words(a.reason) and "effort" not in words(a.reason) for a in others)


def test_two_note_d_minor_leaves_finger_two_free_for_a_major() -> None:
    f = solver(piece("D4+F4:1 A4+C#4:1"), Pin("b0v1n1a", string=4)).solution()
    assert 2 not in lefts(f)[:2]
    assert f.note("b0v1n1a").left == 2


def test_melody_with_a_bass_beneath_is_thumb_with_m_and_i_in_turn() -> None:
    f = solver(piece("C5:1 D5:1 C5:1 A4:1 | C4:1 D4:1 C4:1 F4:1")).solution()
    melody = [n.right for n in f.bars[0].notes if "v1" in n.id]
    bass = [n.right for n in f.bars[0].notes if "v2" in n.id]
    assert bass == ["p"] * 4
    assert melody == ["m", "i", "m", "i"]


def test_a_three_note_chord_is_p_i_m_and_four_p_i_m_a() -> None:
    three = solver(piece("C5+E4+C4:2")).solution()
    assert [n.right for n in three.bars[0].notes] == ["m", "i", "p"]
    four = solver(piece("A4+E4+C4+G4:2")).solution()
    assert sorted(n.right or "" for n in four.bars[0].notes) == ["a", "i", "m", "p"]


def test_on_reentrant_tuning_string_order_decides_the_right_hand() -> None:
    f = solver(piece("G4+E4+C4:2"), Pin("b0v1n0a", string=4)).solution()
    by_string = {n.string: n.right for n in f.bars[0].notes}
    assert [by_string[s] for s in sorted(by_string, reverse=True)] == ["p", "i", "m"]


def test_single_line_alternates_and_names_a_pinned_repetition() -> None:
    music = piece("A4:1/2 C5:1/2 A4:1/2 E4:1/2 F4:1/2 A4:1/2")
    free = solver(music).solution()
    rights = [n.right for n in free.bars[0].notes]
    assert all(a != b for a, b in itertools.pairwise(rights))
    forced = solver(music, Pin("b0v1n0a", right="m"), Pin("b0v1n1a", right="m")).solution()
    assert any("plucks twice running" in words(r) for r in forced.bars[0].remarks)


def test_style_a_m_i_admits_the_ring_finger_and_i_m_does_not() -> None:
    music = piece("A4:1/2 C5:1/2 A4:1/2 B4:1/2 C5:1/2 A4:1/2")
    assert "a" not in {n.right for n in solver(music).solution().bars[0].notes}
    other = solver(music, style="m-a").solution()
    assert {n.right for n in other.bars[0].notes} == {"m", "a"}


def test_broken_chord_keeps_a_finger_for_a_string() -> None:
    bar = "C4:1/2 E4:1/2 A4:1/2 E4:1/2 C4:1/2 E4:1/2 A4:1/2 E4:1/2"
    f = solver(piece(bar, bar)).solution()
    assert [n.right for n in f.bars[0].notes] == list("pimipimi")
    assert [n.right for n in f.bars[1].notes] == list("pimipimi")
