"""Dialogs that are closed while work of theirs runs: nothing is told to what is gone."""

from __future__ import annotations

import sys
import threading

import pytest
from PySide6.QtCore import QCoreApplication, QEvent
from PySide6.QtWidgets import QDialog

from tests.ui.conftest import WAIT
from workbench.music.reading.apart import read_apart
from workbench.ui.lesson.import_dialog import ImportDialog
from workbench.ui.paper.export_dialog import ExportDialog, Form
from workbench.ui.paper.handout_dialog import HandoutDialog
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


def closed_at_once(dialog):
    dialog.close()
    dialog.deleteLater()
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def test_what_a_closed_dialog_wrote_is_told_all_the_same(qtbot, lesson_window, tmp_path):
    session, told = lesson_window.session, []
    session.told.connect(told.append)
    began, go_on = threading.Event(), threading.Event()

    def slowly():
        began.set()
        assert go_on.wait(WAIT / 1000)
        return "the words"

    dialog = ExportDialog(session, "script", (Form(".txt", "Text", slowly),), lesson_window)
    dialog.path.setText(str(tmp_path / "script.txt"))
    dialog.write()
    assert began.wait(WAIT / 1000)
    closed_at_once(dialog)
    go_on.set()
    handout = HandoutDialog(session, parent=lesson_window)
    handout.path.setText(str(tmp_path / "page.pdf"))
    handout.make()
    closed_at_once(handout)
    qtbot.waitUntil(lambda: session.jobs.idle, timeout=WAIT)
    assert [words.split(": ")[0] for words in told] == ["The script is written",
                                                        "The handout is made"]  # fmt: skip
    assert (tmp_path / "script.txt").read_text(encoding="utf-8") == "the words"
    assert (tmp_path / "page.pdf").read_bytes().startswith(b"%PDF")
