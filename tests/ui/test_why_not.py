"""A fingering typed by hand: its cost and cut notes in words, then pinned or written down."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLineEdit

from tests.ui.conftest import WAIT, make_lesson, write_score
from workbench.fingering.telling.words import words
from workbench.fingering.types import Pin
from workbench.teaching.lessons import edits
from workbench.teaching.lessons.lesson import BarNote
from workbench.ui.choices.why_table import FRET, LEFT, RIGHT, STRING


@pytest.fixture
def asking(qtbot, lesson_window):
    """The dialog on bar 3: D4 F4 B4 C5."""
    lesson_window.session.selection.select(2)
    lesson_window.choices.why_button.click()
    return lesson_window, lesson_window.choices.dialog


def type_figures(qtbot, dialog, text):
    dialog.figures.setFocus()
    dialog.figures.selectAll()
    QTest.keyClicks(dialog.figures, text)
    qtbot.waitUntil(lambda: bool(dialog.found or dialog.wrong), timeout=WAIT)


def type_cell(qtbot, dialog, row, column, text):
    """Type into a cell as a user does, and leave it with Enter."""
    table = dialog.table
    table.setFocus()
    table.setCurrentCell(row, column)
    QTest.keyClick(table, text[0])
    editor = table.viewport().findChild(QLineEdit)
    editor.setText(text)
    QTest.keyClick(editor, Qt.Key.Key_Return)
    editing = table.State.EditingState
    qtbot.waitUntil(
        lambda: table.state() != editing and table.viewport().findChild(QLineEdit) is None,
        timeout=WAIT,
    )


def cell(dialog, row, column):
    return dialog.table.item(row, column).text()


def test_the_menu_and_its_key_ask_why_not(lesson_window):
    menus = lesson_window.menus
    (action,) = [a for a in menus.actions if a.text() == "Why no&t …"]
    keys = [key for other in menus.actions for key in other.shortcuts()]
    assert [keys.count(key) for key in action.shortcuts()] == [1]
    lesson_window.session.selection.select(2)
    action.trigger()
    assert lesson_window.choices.dialog.windowTitle() == "Why not another fingering of bar 3?"


def test_a_bar_of_rests_has_nothing_to_ask(qtbot, open_window, settled, tmp_path):
    path = write_score(tmp_path / "rests.musicxml", ("C4 E4 G4 A4", ""))
    window = open_window()
    make_lesson(qtbot, window, path)
    settled(window)
    window.session.selection.select(1)
    with qtbot.waitSignal(window.session.told) as told:
        window.choices.why_not()
    assert told.args == ["Select a bar with notes first."]
    assert window.choices.dialog is None


def test_typed_figures_are_judged_in_words(qtbot, asking):
    window, dialog = asking
    assert cell(dialog, 3, 1) == "C5" and "string 1, fret 3" in cell(dialog, 3, 2)
    assert dialog.status.text() == "Nothing is typed yet."
    type_figures(qtbot, dialog, "- - - 2/8.4")
    assert (cell(dialog, 3, STRING), cell(dialog, 3, FRET), cell(dialog, 3, LEFT)) == (
        "2", "8", "4",
    )  # fmt: skip
    assert "C on string 2, fret 8" in dialog.reason.text()
    assert ": " in dialog.reason.text() and "effort" not in dialog.reason.text()
    cut = [n for n in dialog.found.notes if n.cut_reason]
    head = dialog.cuts.text().splitlines()[0]
    plural = "" if len(cut) == 1 else "s"
    assert head == (f"It cuts {len(cut)} note{plural}:" if cut else "It cuts no note.")
    assert dialog.comparison is not None and dialog.comparison.rowCount() > 4
    assert window.session.lesson.pins == ()  # nothing is taken yet


def test_cut_notes_are_told_with_their_reason(qtbot, lesson_window):
    window = lesson_window
    window.session.selection.select(1)  # A4 G4 F4 E4
    window.choices.why_button.click()
    dialog = window.choices.dialog
    type_figures(qtbot, dialog, "2/5.1 3/7.1 - -")
    cut = [n for n in dialog.found.notes if n.cut_reason]
    assert cut and all(words(n.cut_reason) in dialog.cuts.text() for n in cut)
    assert "New: beat 1: " in dialog.cuts.text()


def test_the_table_completes_what_follows(qtbot, asking):
    _, dialog = asking
    type_cell(qtbot, dialog, 3, STRING, "2")
    assert cell(dialog, 3, FRET) == "8" and dialog.figures.text() == "- - - 2/8"
    type_cell(qtbot, dialog, 3, FRET, "3")
    assert cell(dialog, 3, STRING) == "1"
    type_cell(qtbot, dialog, 3, LEFT, "4")
    type_cell(qtbot, dialog, 3, RIGHT, "a")
    assert dialog.figures.text() == "- - - 1/3.4a"
    qtbot.waitUntil(lambda: dialog.found is not None, timeout=WAIT)
    assert dialog.found.notes[3].right == "a" and dialog.found.notes[3].left == 4
    type_cell(qtbot, dialog, 3, FRET, " ")
    assert cell(dialog, 3, STRING) == ""


def test_the_impossible_is_explained(qtbot, asking):
    _, dialog = asking
    type_figures(qtbot, dialog, "- - - 1/4")
    assert dialog.wrong == "Bar 3, beat 4: string 1, fret 4 sounds C♯5, not C5."
    assert dialog.caution.isVisible() and not dialog.pin_button.isEnabled()
    type_figures(qtbot, dialog, "x")
    assert "Figure 1, 'x', cannot be read" in dialog.wrong
    type_figures(qtbot, dialog, "2 1 2 3")
    assert dialog.found is not None and dialog.pin_button.isEnabled()


def test_it_is_taken_as_pins_and_undone(qtbot, asking, settled):
    window, dialog = asking
    type_figures(qtbot, dialog, "- - - 2/8.4a")
    dialog.pin_button.click()
    settled(window)
    session = window.session
    last = session.lesson.piece.bars[2].notes[3].id
    assert session.lesson.pins == (Pin(last, string=2, fret=8, left=4, right="a"),)
    assert window.choices.dialog is None
    hands = session.fingers.bar_hands.notes[3]
    assert (hands.string, hands.fret, hands.left, hands.right) == (2, 8, 4, "a")
    window.choices.why_button.click()  # what is pinned stands in the table; freed, it goes
    again = window.choices.dialog
    assert again.figures.text() == "- - - 2/8.4a"
    type_figures(qtbot, again, "2")
    again.pin_button.click()
    assert [pin.note for pin in session.lesson.pins] == [session.lesson.piece.bars[2].notes[0].id]
    session.undo()
    session.undo()
    assert session.lesson.pins == ()


def test_it_is_written_down_in_a_new_note(qtbot, asking):
    window, dialog = asking
    type_figures(qtbot, dialog, "- - - 2/8.4")
    reason = dialog.reason.text()
    dialog.reject_button.click()
    (note,) = window.session.lesson.notes
    last = window.session.lesson.piece.bars[2].notes[3].id
    assert note.rejected == ((last, 2, 8, 4),)
    assert note.why == note.text == reason
    assert (note.first_bar, note.last_bar) == (2, 2)


def test_even_the_impossible_is_attached_to_a_note_that_is_there(qtbot, lesson_window):
    window = lesson_window
    window.session.selection.select(2)
    note = BarNote("n", "sound", "Listen to the **end**.", 2, 2)
    window.session.edit("note", lambda old: edits.put_note(old, note))
    window.choices.why_button.click()
    dialog = window.choices.dialog
    type_figures(qtbot, dialog, "- - - 1/4.2")
    assert dialog.note_box.itemText(1) == "in the remark: Listen to the end."
    dialog.note_box.setCurrentIndex(1)
    dialog.reject_button.click()
    (kept,) = window.session.lesson.notes
    assert kept.text == note.text and kept.why.startswith("Bar 3, beat 4")
    assert kept.rejected[0][1:] == (1, 4, 2)
