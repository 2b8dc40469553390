"""A sound written with two stems is deleted, moved and played as one."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from workbench.fingering.types import Pin
from workbench.ui.score.menu import note_menu


@pytest.fixture
def shared_window(lesson_window, settled):
    """A lesson whose first note is written by two voices."""
    session = lesson_window.session

    def second_stem(lesson):
        bar = lesson.piece.bars[0]
        low = replace(bar.notes[0], id="low", voice=2, duration=Fraction(4))
        bar = replace(bar, notes=(bar.notes[0], low, *bar.notes[1:]))
        return replace(lesson, piece=replace(lesson.piece, bars=(bar, *lesson.piece.bars[1:])))

    session.edit("A second stem", second_stem)
    settled(lesson_window)
    return lesson_window


def pitches(session):
    return [(n.pitch.name, n.voice) for n in session.lesson.piece.bars[0].notes[:3]]


def at_hand(window, voice):
    """Select the first note of a voice, as a click on its head does."""
    session = window.session
    note = next(n for n in session.lesson.piece.bars[0].notes if n.voice == voice)
    session.selection.select_note(note.id)
    window.music.hand.pen.begin()
    return note


@pytest.mark.parametrize("voice", [1, 2])
def test_what_is_heard_is_changed_at_both_stems(shared_window, settled, voice):
    window, session = shared_window, shared_window.session
    assert pitches(session) == [("C4", 1), ("C4", 2), ("E4", 1)]
    at_hand(window, voice)
    hand = window.music.hand
    assert hand.raise_steps(1)
    assert pitches(session) == [("D4", 1), ("D4", 2), ("E4", 1)]
    assert hand.delete()
    assert [name for name, _ in pitches(session)] == ["E4", "G4", "A4"]
    settled(window)
    session.undo()
    assert pitches(session)[:2] == [("D4", 1), ("D4", 2)]
    settled(window)


def test_the_teacher_asks_for_two_strings_and_takes_it_back(shared_window, settled):
    window, session = shared_window, shared_window.session
    low = next(n for n in session.lesson.piece.bars[0].notes if n.voice == 2)
    session.selection.select_note(low.id)

    def trigger(words):
        menu = note_menu(session, window, lambda: None)
        names = {a.text().replace("&", ""): a for a in menu.actions()}
        names[words].trigger()
        settled(window)

    trigger("Each stem on a string of its own")
    assert session.lesson.pins == (Pin(low.id, apart=True),)
    trigger("Both stems on one string")
    assert session.lesson.pins == ()
