"""Two fingerings of a bar set side by side, and one taken from there."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from tests.ui.conftest import WAIT


@pytest.fixture
def window(qtbot, lesson_window):
    qtbot.waitUntil(lambda: bool(lesson_window.session.fingers.choices), timeout=WAIT)
    return lesson_window


def rows_of(dialog):
    table = dialog.table
    return {
        table.item(r, 0).text(): (table.item(r, 1).text(), table.item(r, 2).text())
        for r in range(table.rowCount())
    }


def lies(session, other):
    hands = {n.id: (n.string, n.fret, n.left) for n in session.fingers.bar_hands.notes}
    return all(hands[n.id] == (n.string, n.fret, n.left) for n in other.notes)


def test_the_selected_fingering_beside_the_present_one(window, settled):
    session = window.session
    other = session.fingers.choices[0]
    window.choices.compare_button.click()
    dialog = window.choices.dialog
    settled(window)
    assert [p.pixmap().isNull() for p in dialog.pictures] == [False, False]
    rows = rows_of(dialog)
    assert {"written length held", "notes cut", "greatest reach", "fingers put down"} <= set(rows)
    assert "effort" not in rows  # what the hand does, not a figure of ours
    assert any(a != b for a, b in rows.values())
    (take,) = dialog.take_buttons
    take.click()
    settled(window)
    assert lies(session, other) and window.choices.dialog is None


def test_two_selected_fingerings_beside_each_other(window, settled):
    session, panel = window.session, window.choices
    assert len(session.fingers.choices) > 1
    first, second = session.fingers.choices[:2]
    panel.list.item(1).setSelected(True)
    assert panel.selected_rows == (0, 1)
    assert not panel.take_button.isEnabled() and panel.compare_button.isEnabled()
    panel.compare_button.click()
    dialog = panel.dialog
    heads = [dialog.table.horizontalHeaderItem(c).text() for c in (1, 2)]
    assert heads == ["Fingering 1", "Fingering 2"]
    reaches = rows_of(dialog)["greatest reach"]
    assert reaches == tuple(f"{c.bar.reach_mm:.0f} mm" for c in (first, second))
    dialog.take_buttons[1].click()
    settled(window)
    assert lies(session, second)


def test_enter_takes_the_selected_one(window, settled):
    session, panel = window.session, window.choices
    other = session.fingers.choices[1]
    panel.list.setFocus()
    panel.list.setCurrentRow(1)
    QTest.keyClick(panel.list, Qt.Key.Key_Return)
    settled(window)
    assert lies(session, other)


def test_leaving_changes_nothing(window):
    lesson = window.session.lesson
    window.choices.compare_button.click()
    window.choices.dialog.reject()
    assert window.session.lesson == lesson and window.choices.dialog is None
