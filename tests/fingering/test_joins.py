"""Joins of the playing order, equal bars, pins and impossible bars."""

from __future__ import annotations

import pytest

from tests.fingering.build import piece
from workbench.fingering.engine import Solver, solve
from workbench.fingering.telling.words import words
from workbench.fingering.types import Pin
from workbench.instrument.table import hand, instrument
from workbench.music.errors import BadInput

UKULELE = instrument("ukulele")
HAND = hand("medium")


def test_a_cut_at_the_repeat_join_is_found_and_counted() -> None:
    marks = {0: {"repeat_start": True}, 1: {"repeat_end": True}}
    music = piece("D4:1 F4:1", "E4:1 A4:1", marks=marks)
    pins = [
        Pin("b0v1n0a", string=3, left=2), Pin("b1v1n1a", string=4, left=2),
        Pin("b1v1n0a", string=2), Pin("b0v1n1a", string=2),
    ]  # fmt: skip
    f = solve(music, UKULELE, HAND, pins=pins)
    assert [(j.note, j.from_bar, j.to_bar) for j in f.audit.joins] == [("b1v1n1a", 1, 0)]
    assert "from bar 2 into bar 1" in words(f.audit.joins[0].reason)
    assert f.note("b1v1n1a").held < f.note("b1v1n1a").duration
    without = solve(piece("D4:1 F4:1", "E4:1 A4:1"), UKULELE, HAND, pins=pins)
    assert without.audit.joins == () and f.cost > without.cost


def test_a_free_finger_avoids_the_cut_at_the_join() -> None:
    marks = {0: {"repeat_start": True}, 1: {"repeat_end": True}}
    f = solve(piece("D4:1 F4:1", "E4:1 A4:1", marks=marks), UKULELE, HAND)
    assert f.audit.joins == () and f.optimal


def test_bars_of_the_same_music_get_the_same_fingers() -> None:
    bar = "C5:1 F4+A4:1 D4:1"
    f = solve(piece(bar, "G4:1 E4:1 C4:1", bar, "F4:1 D4:1 A4:1", bar), UKULELE, HAND)
    shapes = [[(n.string, n.fret, n.left, n.right) for n in f.bars[i].notes] for i in (0, 2, 4)]
    assert shapes[0] == shapes[1] == shapes[2]


def test_pins_are_held_and_the_rest_is_solved_around_them() -> None:
    music = piece("C5:1 F4:1 A4:1 D4:1")
    pin = Pin("b0v1n2a", string=4, fret=2, left=4, right="a")
    s = Solver(music, UKULELE, HAND)
    free = s.solution()
    pinned = s.with_pins([pin])
    n = pinned.note("b0v1n2a")
    assert (n.string, n.fret, n.left, n.right, n.pinned) == (4, 2, 4, "a", True)
    assert pinned.cost >= free.cost
    assert s.with_pins([]) == free
    assert solve(music, UKULELE, HAND, pins=[pin]).cost == pinned.cost


def test_an_impossible_bar_is_named_and_the_rest_goes_on() -> None:
    f = solve(piece("C5:1 A4:1", "C2:1 A4:1", "C4+C#4+D4:1 A4:1"), UKULELE, HAND)
    assert f.bars[0].impossible is None
    low = f.note("b1v1n0a")
    assert low.string is None and "C2 lies below the range" in words(low.impossible)
    assert "bar 2, beat 1" in words(f.bars[1].impossible)
    assert "string" in words(f.bars[2].impossible)
    assert all(n.string for n in f.bars[1].notes[1:])
    assert f.audit.cut >= 2


def test_a_pin_that_does_not_sound_the_note_is_named() -> None:
    f = solve(piece("C5:1 A4:1"), UKULELE, HAND, pins=[Pin("b0v1n0a", string=1, fret=4)])
    assert "pin on C5" in words(f.note("b0v1n0a").impossible)
    assert f.note("b0v1n1a").string is not None


def test_why_not_refuses_fingers_no_hand_can_hold() -> None:
    s = Solver(piece("A4+F4:2"), UKULELE, HAND)
    with pytest.raises(BadInput, match="Bar 1"):
        s.why_not(0, [Pin("b0v1n0a", string=4, left=1), Pin("b0v1n1a", left=9),
                      Pin("b0v1n0b", string=2, left=4)])  # fmt: skip


def test_three_truly_different_alternatives_each_with_a_reason() -> None:
    s = Solver(piece("C5:1 F4+A4:1", "E4:1 G4+D4:1", "F4:1 A4:1"), UKULELE, HAND)
    now = [(n.string, n.fret, n.left) for n in s.solution().bars[1].notes]
    found = s.alternatives(1, 3)
    shapes = [tuple((n.string, n.fret, n.left) for n in a.notes) for a in found]
    assert len(set(shapes)) == 3 and tuple(now) not in shapes
    assert all(a.cost >= s.solution().cost - 1 for a in found)
    assert all(": " in words(a.reason) for a in found)


def test_a_rest_gives_the_hand_time_so_nothing_hops() -> None:
    together = solve(
        piece("A4:1 D4:1"), UKULELE, HAND,
        pins=[Pin("b0v1n0a", string=4, left=2), Pin("b0v1n1a", string=3, left=2)],
    )  # fmt: skip
    apart = solve(
        piece("A4:1/2 r:1/2 D4:1"), UKULELE, HAND,
        pins=[Pin("b0v1n0a", string=4, left=2), Pin("b0v1n2a", string=3, left=2)],
    )  # fmt: skip
    assert together.audit.cut == 1 and apart.audit.cut == 0


def test_progress_is_told_and_can_stop_the_work() -> None:
    seen: list[tuple[int, int]] = []
    solve(piece("C5:1 A4:1"), UKULELE, HAND, progress=lambda a, b: seen.append((a, b)))
    assert seen[-1] == (2, 2)

    class Stop(Exception):
        pass

    def stop(done: int, total: int) -> None:
        raise Stop

    with pytest.raises(Stop):
        solve(piece("C5:1 A4:1"), UKULELE, HAND, progress=stop)


def test_finger_one_may_roll_to_a_barre_instead_of_hopping() -> None:
    pins = [Pin("b0v1n0a", string=2, left=1), Pin("b0v1n1a", string=1, left=1)]
    f = solve(piece("F4:1 Bb4:1"), UKULELE, HAND, pins=pins)
    assert f.audit.cut == 0 and f.note("b0v1n1a").move == "planted"
    assert [(b.fret, b.strings) for b in f.bars[0].barres] == [(1, (1, 2))]


def test_other_right_hands_leave_the_left_as_it_is_and_say_why() -> None:
    s = Solver(piece("A4:1/2 C5:1/2 A4:1/2 E4:1/2", "F4:1 A4:1"), UKULELE, HAND)
    now = s.solution().bars[0].notes
    found = s.right_alternatives(0, 3)
    patterns = [tuple(n.right for n in a.notes) for a in found]
    assert len(set(patterns)) == 3 and tuple(n.right for n in now) not in patterns
    for a in found:
        assert [(n.string, n.fret, n.left) for n in a.notes] == [
            (n.string, n.fret, n.left) for n in now
        ]
        assert words(a.reason).startswith("Right hand, ")


def test_other_right_hands_keep_the_pins() -> None:
    pin = Pin("b0v1n1a", right="a")
    s = Solver(piece("A4:1/2 C5:1/2 A4:1/2 E4:1/2"), UKULELE, HAND, pins=[pin])
    assert all(a.notes[1].right == "a" for a in s.right_alternatives(0, 4))
