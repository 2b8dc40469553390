"""No finger above the highest fret wished for, save where the music or a pin asks it."""

from __future__ import annotations

from tests.arranging.make import piece
from workbench.arranging.ceiling import cut_off
from workbench.fingering.engine import solve
from workbench.fingering.types import Pin
from workbench.instrument.table import hand, instrument
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.lessons.playing import fingered_on, playing_of

GUITAR, MEDIUM = instrument("guitar"), hand("medium")


def frets(made, neck):
    return [n.fret for bar in solve(made, neck, MEDIUM).bars for n in bar.notes]


def test_the_fingering_stays_below_the_highest_fret():
    made = piece("C5+F4:2 F5+C5:2")
    assert max(f or 0 for f in frets(made, GUITAR)) > 5
    low = cut_off(GUITAR, piece("C4+F4:2 G4+C4:2"), 5)
    assert low.playable_frets == 5
    assert all(f is not None and f <= 5 for f in frets(piece("C4+F4:2 G4+C4:2"), low))


def test_what_the_notes_need_is_left():
    alone = piece("E5:4")  # string 1, fret 12
    assert cut_off(GUITAR, alone, 5).playable_frets == 12
    both = piece("E5+D5:4")  # one of the two has to go to string 2
    assert cut_off(GUITAR, both, 5).playable_frets == 15
    assert all(f is not None for f in frets(alone, cut_off(GUITAR, alone, 5)))


def test_a_pin_above_it_holds_and_a_capo_counts():
    made = piece("E4:4")
    assert cut_off(GUITAR, made, 5, [("n0", 3)]).playable_frets == 9
    assert cut_off(instrument("guitar", 2), made, 5).playable_frets == 5
    assert cut_off(GUITAR, made, 40) == GUITAR


def test_a_lesson_is_fingered_up_to_its_highest_fret():
    made = piece("E4:4")
    lesson = Lesson("x", "Made", made, "guitar", top_fret=7)
    assert fingered_on(lesson)[0].playable_frets == 7
    assert playing_of(lesson)[0] == GUITAR
    pinned = Lesson("x", "Made", made, "guitar", top_fret=7, pins=(Pin("n0", string=3),))
    assert fingered_on(pinned)[0].playable_frets == 9
