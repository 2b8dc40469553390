"""Learning from the teacher's grades in the window: given, fitted, put in force, taken back."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QComboBox

from tests.fingering.build import piece
from workbench.store.grading import studio_model
from workbench.teaching.lessons.lesson import Lesson
from workbench.ui.views.grading.grades_dialog import CHOICES, OWN, GradesDialog

TUNES = ("C4:4 E4:4", "C4:2 E4:2 G4:2 A4:2", "G4:1 A4:1 C5:1 B4:1", "Bb4:1 F4:1 D4:1 C5:1",
         "C4:.5 E4:.5 G4:.5 A4:.5 B4:.5 C5:.5 D5:.5 E5:.5",
         "F#4:.5 G#4:.5 C#5:.5 D#5:.5")  # fmt: skip
WORDS = ((1, "early"), (1, "late"), (2, ""), (3, "middle"), (3, "late"))
LAST = "tune5"


@pytest.fixture
def dialog(qtbot, open_window, settled):
    """The dialog on a shelf of six tunes, none of them graded."""
    window = open_window()
    for k, tune in enumerate(TUNES):
        window.session.shelf.add(Lesson(f"tune{k}", f"Tune {k}", piece(tune), "ukulele"))
    made = GradesDialog(window.session, window)
    qtbot.addWidget(made)
    made.show()
    settled(window)
    return made


def choose(dialog, lesson, grade, level):
    """Choose a grade from the list in the lesson's row, as the mouse does."""
    at = dialog.table.model().index(dialog.row_of(lesson), OWN)
    dialog.table.setCurrentIndex(at)
    dialog.table.edit(at)
    box = dialog.table.viewport().findChildren(QComboBox)[-1]
    box.setCurrentIndex(CHOICES.index((grade, level)))
    box.activated.emit(box.currentIndex())


def words(dialog, lesson, column):
    return dialog.table.item(dialog.row_of(lesson), column).text()


def grade_all(qtbot, dialog, words=WORDS):
    for k, (grade, level) in enumerate(words):
        choose(dialog, f"tune{k}", grade, level)
    qtbot.waitUntil(
        lambda: (
            dialog.session.jobs.idle
            and dialog.learnt is not None
            and len(dialog.learnt.graded) == len(words)
        ),
        timeout=60_000,
    )


def test_a_grade_chosen_in_the_list_is_kept_on_the_shelf(qtbot, dialog):
    grade_all(qtbot, dialog, WORDS[:2])
    shelf = dialog.session.shelf
    assert (shelf.load("tune0").grade, shelf.load("tune0").grade_level) == (1, "early")
    assert words(dialog, "tune0", OWN) == "grade 1, early"
    assert words(dialog, "tune0", OWN + 1).startswith("grade ")  # the estimate beside it
    assert words(dialog, LAST, OWN) == "not given"
    assert "too few to learn from" in dialog.told.text()
    assert not dialog.apply_button.isEnabled() and not dialog.undo_button.isEnabled()


def test_a_fit_is_shown_then_put_in_force_and_taken_back(qtbot, dialog):
    session = dialog.session
    grade_all(qtbot, dialog)
    found = dialog.learnt.found
    for at, graded in enumerate(dialog.learnt.graded):
        assert words(dialog, graded.id, OWN + 1) == str(dialog.learnt.now[at].words)
        assert words(dialog, graded.id, OWN + 2) == str(found.after[at].words)
        assert words(dialog, graded.id, OWN + 3) == str(found.unseen[at].words)
    assert f"{found.model.error:.2f}" in dialog.told.text() and dialog.chart.isVisible()
    assert studio_model(session.shelf) is None  # nothing is in force unasked
    with qtbot.waitSignal(dialog.changed):
        dialog.apply_button.click()
    assert studio_model(session.shelf) == found.model
    qtbot.waitUntil(lambda: session.jobs.idle and dialog.undo_button.isEnabled(), timeout=60_000)
    assert words(dialog, "tune4", OWN + 1) == str(found.after[-1].words)
    with qtbot.waitSignal(dialog.changed):
        dialog.undo_button.click()
    assert studio_model(session.shelf) is None
    qtbot.waitUntil(
        lambda: session.jobs.idle and not dialog.undo_button.isEnabled(), timeout=60_000
    )


def test_a_search_narrows_the_list_and_keeps_the_estimates(qtbot, dialog):
    grade_all(qtbot, dialog, WORDS[:1])
    dialog.search.setText("Tune 0")
    assert dialog.table.rowCount() == 1
    assert words(dialog, "tune0", OWN + 1).startswith("grade ")
    dialog.search.clear()
    assert dialog.table.rowCount() == len(TUNES)
