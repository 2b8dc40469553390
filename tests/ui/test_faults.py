"""What goes wrong is said in one sentence, and nothing is lost."""

from __future__ import annotations

import os
import subprocess
import sys

import pytest
from PySide6.QtCore import QMimeData, QPoint, Qt, QUrl
from PySide6.QtGui import QDropEvent

from tests.ui.conftest import WAIT, make_lesson
from workbench.fingering.engine import Solver
from workbench.music.errors import BadInput
from workbench.ui.bench.services import Services


@pytest.mark.parametrize(
    ("name", "content"),
    [
        ("empty.musicxml", b""),
        ("page.xml", b"<!doctype html><html><body>Not music</body></html>"),
        ("cut.mxl", b"PK\x03\x04 and no more"),
        ("zero.mid", b""),
        ("text.abc", b"just words, no tune"),
    ],
)
def test_a_bad_file_is_one_sentence_and_changes_nothing(
    qtbot, lesson_window, tmp_path, name, content
):
    window = lesson_window
    before, rows = window.session.lesson, window.session.shelf.lessons()
    bad = tmp_path / name
    bad.write_bytes(content)
    window.import_score(str(bad))
    qtbot.waitUntil(lambda: window.notice.isVisible(), timeout=WAIT)
    words = window.notice.words.text()
    assert name in words
    assert "\n" not in words and "Traceback" not in words
    assert window.session.last_fault == ""
    assert window.dialog is None
    assert window.session.lesson == before
    assert [r.id for r in window.session.shelf.lessons()] == [r.id for r in rows]
    window.notice.close_button.click()
    assert not window.notice.isVisible()


def drop(window, path):
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(path))])
    window.dropEvent(
        QDropEvent(
            QPoint(5, 5), Qt.DropAction.CopyAction, data, Qt.MouseButton.LeftButton,
            Qt.KeyboardModifier.NoModifier,
        )
    )  # fmt: skip


def test_scores_are_dropped_in_and_other_files_refused(qtbot, open_window, score_file, tmp_path):
    window = open_window()
    picture = tmp_path / "holiday.jpg"
    picture.write_bytes(b"\xff\xd8")
    drop(window, picture)
    assert "no score" in window.notice.words.text()
    drop(window, score_file)
    qtbot.waitUntil(lambda: window.dialog is not None, timeout=WAIT)
    assert window.dialog.heading.text() == "Ferry at dusk"


def test_a_handout_that_cannot_be_written_stays_in_its_dialog(qtbot, lesson_window, tmp_path):
    window = lesson_window
    window.menus["handout"].trigger()
    dialog = window.dialog
    dialog.path.setText(str(tmp_path / "no such folder" / "x.pdf"))
    dialog.save.click()
    qtbot.waitUntil(lambda: bool(dialog.problem.words.text()), timeout=WAIT)
    assert "x.pdf" in dialog.problem.words.text() or "no such folder" in dialog.problem.words.text()
    assert dialog.isVisible() and dialog.save.isEnabled()


def test_an_edit_that_is_refused_for_good_changes_nothing(lesson_window, monkeypatch):
    window = lesson_window
    before = window.session.lesson

    def wrong(*_given, **_named):
        raise BadInput("That cannot be; choose another.")

    monkeypatch.setattr(window.session.shelf, "save", wrong)
    window.lesson_panel.grade.setValue(5)
    assert window.session.lesson == before
    assert "That cannot be" in window.notice.words.text()
    assert window.lesson_panel.grade.value() == -1


def test_a_fault_of_ours_is_reported_and_the_window_lives(qtbot, open_window, score_file):
    def broken(lesson, instrument, hand, progress):
        raise ZeroDivisionError(f"inside {lesson.title}")

    window = open_window(Services(demo=lambda: (), solver=broken))
    make_lesson(qtbot, window, score_file)
    qtbot.waitUntil(lambda: bool(window.session.last_fault), timeout=WAIT)
    assert "ZeroDivisionError" in window.notice.words.text()
    assert "inside" in window.session.last_fault
    window.openers.show_report()
    report = window.dialog.text.toPlainText()
    assert "inside" in report and window.session.lesson.title not in report


def test_a_slow_answer_for_an_older_state_is_dropped(qtbot, open_window, score_file, settled):
    import threading

    gate, held = threading.Event(), threading.Event()

    class Slow:
        """The engine, made to wait once a string is pinned."""

        def __init__(self, lesson, instrument, hand, progress):
            self.inner = Solver(lesson.piece, instrument, hand, pins=lesson.pins)

        def with_pins(self, pins):
            answer = self.inner.with_pins(pins)
            if pins and not gate.is_set():
                held.set()
                gate.wait(10)
            return answer

        def alternatives(self, bar, count):
            return ()

        def right_alternatives(self, bar, count):
            return ()

    window = open_window(Services(demo=lambda: (), solver=Slow))
    make_lesson(qtbot, window, score_file)
    settled(window)
    session = window.session
    note = session.selection.bar.notes[1]  # E4
    session.hand_edits.move_note(note.id, 3, 4)
    assert held.wait(10)
    session.undo()
    seen = []
    session.fingers.fingered.connect(
        lambda: seen.append(session.fingers.fingering.note(note.id).string)
    )
    gate.set()
    settled(window)
    qtbot.waitUntil(lambda: bool(seen), timeout=WAIT)
    assert set(seen) == {2}


def test_no_display_is_one_sentence_that_points_to_the_verbs():
    hidden = ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")
    env = {name: value for name, value in os.environ.items() if name not in hidden}
    code = "import sys; from workbench.ui.window.app import run; sys.exit(run([]))"
    done = subprocess.run([sys.executable, "-c", code], env=env, capture_output=True, text=True)
    if not sys.platform.startswith("linux"):
        pytest.skip("only Linux can be without a display")
    assert done.returncode == 2
    assert done.stderr.count("\n") == 1 and "verb" in done.stderr


def test_heavy_libraries_stay_out_until_the_window_is_shown(tmp_path):
    code = (
        "import sys; from PySide6.QtWidgets import QApplication; app = QApplication([]);"
        "from workbench.store.shelf import Shelf; from workbench.ui.window.app import build;"
        "build(Shelf()).show();"
        "print(*[m for m in ('music21', 'matplotlib', 'scipy', 'verovio') if m in sys.modules])"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True)
    assert done.returncode == 0, done.stderr
    assert done.stdout.strip() == ""


def test_a_notice_moves_nothing_that_is_under_the_mouse(qtbot, lesson_window):
    window = lesson_window
    places = {w: w.mapTo(window, w.rect().topLeft()) for w in (window.title, window.score)}
    window.notice.say("Something went wrong; try it again.")
    qtbot.wait(20)
    assert window.notice.isVisible()
    assert {w: w.mapTo(window, w.rect().topLeft()) for w in places} == places
    around = window.notice.parentWidget()
    assert around.rect().contains(window.notice.geometry())
    assert window.notice.height() >= window.notice.words.heightForWidth(window.notice.words.width())
