"""Dialogs that are closed while work of theirs runs: nothing is told to what is gone."""

from __future__ import annotations

import sys

import pytest
from PySide6.QtCore import QCoreApplication, QEvent
from PySide6.QtWidgets import QDialog

from tests.ui.conftest import WAIT
from workbench.music.reading.apart import read_apart
from workbench.ui.lesson.import_dialog import ImportDialog
from workbench.ui.views.grading.grades_dialog import GradesDialog

TIMES = 6
DIALOGS = (
    "import",
    "change_music",
    "arrange",
    "handout",
    "open_shelf",
    "why not",
    "grades",
    "print",
)


def opened_by(qtbot, window, which, score_file):
    """Opens a dialog in the way that is named, and starts what it does in the background."""
    openers = window.openers
    if which == "import":
        piece = read_apart(score_file)
        window.show_dialog(ImportDialog(window.session, str(score_file), piece, window))
    elif which == "arrange":
        openers.change_music()
        window.dialog.place()
    elif which == "why not":
        window.choices.why_button.click()
        window.choices.dialog.figures.setText("3")
        return window.choices.dialog
    elif which == "grades":
        dialog = GradesDialog(window.session, window)
        window.show_dialog(dialog)
        dialog.learn()
    elif which == "print":
        openers.print_handout("student")
        qtbot.waitUntil(lambda: window.dialog is not None, timeout=WAIT)
        window.dialog.large.click()
    else:
        getattr(openers, which)()
    return window.dialog


@pytest.fixture
def quick_turns():
    """Threads take turns as often as can be, so that they meet at any place."""
    before = sys.getswitchinterval()
    sys.setswitchinterval(1e-6)
    yield
    sys.setswitchinterval(before)


def test_dialogs_may_close_while_they_work(qtbot, lesson_window, score_file, quick_turns, tidied):
    window, faults, failed = lesson_window, [], []
    window.session.jobs.fault.connect(faults.append)
    window.session.failed.connect(failed.append)
    before = window.session.lesson
    for turn in range(TIMES):
        for which in DIALOGS:
            dialog = opened_by(qtbot, window, which, score_file)
            assert isinstance(dialog, QDialog)
            if which != "arrange":  # which closes itself when it is done
                qtbot.wait(5 * turn)  # closed now sooner, now later in its work
            dialog.close()
            QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
            del dialog
            tidied.tidy()
    qtbot.waitUntil(lambda: window.session.jobs.idle, timeout=WAIT)
    qtbot.wait(20)
    assert (faults, failed) == ([], [])
    assert window.session.lesson is before
