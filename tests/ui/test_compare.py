"""Two fingerings of a bar set side by side, and one taken from there."""

from __future__ import annotations

from PySide6.QtWidgets import QDialog

from workbench.ui import compare_dialog


def test_compare_shows_both_fingerings_and_takes_the_other(
    qtbot, lesson_window, settled, monkeypatch
):
    window = lesson_window
    session = window.session
    qtbot.waitUntil(lambda: bool(session.choices), timeout=20_000)
    other = session.choices[0]
    seen = {}

    def accept(dialog):
        seen["rows"] = {
            dialog.table.item(r, 0).text(): (
                dialog.table.item(r, 1).text(),
                dialog.table.item(r, 2).text(),
            )
            for r in range(dialog.table.rowCount())
        }
        return QDialog.DialogCode.Accepted

    monkeypatch.setattr(compare_dialog.CompareDialog, "exec", accept)
    window.choices.compare_button.click()
    assert {"written length held", "notes cut", "greatest reach", "effort"} <= set(seen["rows"])
    assert any(a != b for a, b in seen["rows"].values())
    settled(window)
    hands = {n.id: (n.string, n.fret, n.left) for n in session.bar_hands.notes}
    assert all(hands[n.id] == (n.string, n.fret, n.left) for n in other.notes)
