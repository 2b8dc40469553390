"""Habits of one hand: what a teacher's scores seldom print makes a grip dearer for them."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.fingering.build import piece as piece_of
from workbench.fingering.engine import Solver, solve
from workbench.fingering.habits import is_habit, prices, shown
from workbench.fingering.learning.observed import chain
from workbench.fingering.learning.printfit import fit_to_print, fitted
from workbench.fingering.telling.words import gain, sentence
from workbench.fingering.types import Settings
from workbench.fingering.weights import least, weights_for
from workbench.instrument.table import hand, instrument
from workbench.music.model import WrittenFingers

GUITAR, HAND = instrument("guitar"), hand("medium")
#: G4 of string 1, fret 3, after open strings: the lines of which a teacher prints the G.
LINES = ("E4:1/2 G4:1/2 E4:1/2 G4:1/2", "G4:1/2 E4:1/2 B3:1/2 G4:1/2", "B3:1/2 G4:1/2 E4:1 G4:1/2",
         "G4:1 E4:1/2 G4:1/2", "E4:1 G4:1 E4:1/2", "G4:1/2 B3:1/2 G4:1/2 B3:1/2")  # fmt: skip


def printed(line: str, finger: int):
    piece = piece_of(line)
    marks = tuple(
        WrittenFingers(n.id, string=None, fret=None, left=finger)
        for n in piece.notes
        if n.pitch.name == "G4"
    )
    return piece, marks


def test_a_grip_shows_its_fingers_by_fret_by_string_and_by_pair() -> None:
    places = ((1, 0, 0), (2, 3, 4), (5, 3, 3), (4, 8, 1))
    assert shown(places[:3]) == {
        "habit 4 fret 3": 1, "habit 4 string 2": 1, "habit 3 fret 3": 1, "habit 3 string 5": 1,
        "habit 3-4 frets 0 strings -2": 1,
    }  # fmt: skip
    assert "habit 1 fret 7" in shown(places[3:])
    assert "habit 2 fret 10" in shown(((1, 12, 2),))
    found = prices([places[:2], places[2:3], ()], {"habit 3 string 5": 400, "place": 900})
    assert found.tolist() == [0, 400, 0]


def test_what_a_teacher_never_prints_is_learned_and_foretold() -> None:
    start = weights_for(Settings()).left
    lessons = [chain(*printed(line, 4), GUITAR, HAND, start) for line in LINES]
    piece = piece_of("E4:1/2 B3:1/2 G4:1 B3:1/2 G4:1/2")
    ours = {n.left for b in solve(piece, GUITAR, HAND).bars for n in b.notes if n.fret}
    assert ours != {4}
    (found,) = fitted(lessons, start, ((30.0, True),))
    learned = tuple((t, w) for t, w in found.items() if w != start.get(t, 0))
    assert any(is_habit(t) for t, _ in learned)
    assert all(w >= least(t) for t, w in learned)
    told = solve(piece, GUITAR, HAND, settings=Settings(weights=learned))
    assert {n.left for b in told.bars for n in b.notes if n.fret} == {4}
    assert sum(w for t, w in told.terms.items() if is_habit(t)) >= 0
    whole = fit_to_print(lessons, start)
    assert whole.unseen > whole.before


def test_habits_stay_when_learned_from_again_and_can_be_outgrown() -> None:
    start = weights_for(Settings()).left
    old = {**start, "habit 4 fret 3": 1500}
    lessons = [chain(*printed(line, 4), GUITAR, HAND, old) for line in LINES]
    again, grown = fitted(lessons, old, ((30.0, False), (30.0, True)))
    assert again["habit 4 fret 3"] == 1500
    assert grown["habit 4 fret 3"] < 1000


def test_a_habit_moves_a_finger_and_is_said_in_words() -> None:
    piece = piece_of("F4:1/2 G4:1/2 A4:1/2 F4:1/2")
    plain = Solver(piece, GUITAR, HAND)
    first = plain.solution()
    note = next(n for b in first.bars for n in b.notes if n.left)
    habit = f"habit {note.left} string {note.string}"
    own = Settings(weights=((habit, 9000),))
    told = solve(piece, GUITAR, HAND, settings=own)
    assert all(
        habit not in shown(((n.string, n.fret, n.left),)) for b in told.bars for n in b.notes
    )
    assert sentence(habit) == (f"finger {note.left} on string {note.string}, seldom in your scores")
    kept = replace(own, weights=((habit, 1),))
    other = Solver(piece, GUITAR, HAND, settings=kept)
    assert other.solution().cost == first.cost + other.solution().terms[habit]


@pytest.mark.parametrize(
    ("habit", "words"),
    [
        ("habit 2 fret 3", "finger 2 at fret 3"),
        ("habit 2 fret 7", "finger 2 at frets 7 to 9"),
        ("habit 2 fret 10", "finger 2 at fret 10 or above"),
        ("habit 1-3 frets 2 strings -1",
         "fingers 1 and 3 two frets apart, 3 one string towards string 1"),
        ("habit 2-4 frets 0 strings 2",
         "fingers 2 and 4 on one fret, 4 two strings or more away from string 1"),
    ],
)  # fmt: skip
def test_every_kind_of_habit_has_its_words(habit: str, words: str) -> None:
    assert sentence(habit) == f"{words}, seldom in your scores"
    assert gain(habit) == f"without {words}, seldom in your scores"
