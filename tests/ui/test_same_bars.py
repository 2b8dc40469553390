"""A choice in one bar is offered, once, for all bars of the same music."""

from __future__ import annotations

import pytest

from tests.ui.conftest import make_lesson, write_score
from workbench.fingering.types import Pin
from workbench.teaching.lessons.same_bars import bars_to_match, match_bars

TUNE = ("C4 E4 G4 A4", "A4 G4 F4 E4", "C4 E4 G4 A4", "D4 F4 B4 C5", "C4 E4 G4 A4")


@pytest.fixture
def window(qtbot, open_window, tmp_path, settled):
    made = open_window()
    make_lesson(qtbot, made, write_score(tmp_path / "again.musicxml", TUNE))
    settled(made)
    return made


def test_the_same_is_offered_once_for_all_bars_alike(window, settled):
    session, choices = window.session, window.choices
    session.selection.select(0)
    settled(window)
    assert not choices.same_button.isVisible()  # nothing is chosen yet
    choices.keep()
    settled(window)
    assert choices.same_button.isVisible()
    assert choices.same_button.text().replace("&", "") == "Same in bars 3, 5"
    choices.same_button.click()
    settled(window)
    assert not choices.same_button.isVisible()
    pinned = {pin.note: pin for pin in session.lesson.pins}
    bars = session.lesson.piece.bars
    for bar in (bars[2], bars[4]):
        for note, of in zip(bar.notes, bars[0].notes, strict=True):
            one, other = pinned[note.id], pinned[of.id]
            assert (one.string, one.fret, one.left) == (other.string, other.fret, other.left)
    assert not any(n.id in pinned for n in (*bars[1].notes, *bars[3].notes))
    session.undo()  # all of them in one step
    assert len(session.lesson.pins) == len(bars[0].notes)


def test_bars_that_are_held_alike_are_not_offered_again(window):
    lesson = window.session.lesson
    first = lesson.piece.bars[0].notes[1]
    from dataclasses import replace

    chosen = replace(lesson, pins=(Pin(first.id, left=2),))
    assert bars_to_match(chosen, 0) == (2, 4)
    assert bars_to_match(chosen, 1) == ()  # nothing is held there
    matched = match_bars(chosen, 0, (2, 4))
    assert bars_to_match(matched, 0) == ()
    assert {pin.left for pin in matched.pins} == {2} and len(matched.pins) == 3
