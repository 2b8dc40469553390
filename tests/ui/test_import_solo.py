"""A lead sheet comes in as a solo."""

from __future__ import annotations

from tests.ui.conftest import WAIT, settle
from workbench.ui.lesson.import_dialog import ImportDialog

SHEET = """X:1
T:Gate and Stile
M:4/4
L:1/4
K:C
"C" e g e c | "F" f2 a2 | "G7" g f d B | "C" c4 |]
"""


def test_a_lead_sheet_becomes_a_solo_that_lies_on_the_instrument(qtbot, open_window, tmp_path):
    path = tmp_path / "gate.abc"
    path.write_text(SHEET, encoding="utf-8")
    window = open_window()
    window.import_score(str(path))
    qtbot.waitUntil(lambda: isinstance(window.dialog, ImportDialog), timeout=WAIT)
    dialog = window.dialog
    dialog.solo.setCurrentIndex(dialog.solo.findText("p i m i"))
    dialog.solo.activated.emit(dialog.solo.currentIndex())
    qtbot.waitUntil(lambda: window.session.jobs.idle, timeout=WAIT)
    dialog.make_button.click()
    qtbot.waitUntil(lambda: window.session.lesson is not None, timeout=WAIT)
    settle(qtbot, window)
    lesson = window.session.lesson
    tune = [n for n in lesson.piece.notes if n.voice == 1]
    below = [n for n in lesson.piece.notes if n.voice == 2]
    assert len(tune) == 11 and len(below) > 11
    row = next(row for row in window.session.shelf.pieces() if row.title == "Gate and Stile")
    kept = window.session.shelf.load_piece(row.id)
    assert {n.id for n in kept.notes} == {n.id for n in lesson.piece.notes}, "nothing was left out"
