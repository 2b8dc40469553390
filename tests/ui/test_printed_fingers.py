"""A score with printed fingers comes in: held, or fingered anew, as the teacher says."""

from __future__ import annotations

import pytest

from tests.ui.conftest import WAIT, settle, write_score
from workbench.ui.lesson.import_dialog import ImportDialog


@pytest.fixture
def studied(tmp_path):
    """A tune on an octave clef whose first note bears a 3."""
    path = write_score(tmp_path / "study.musicxml")
    text = path.read_text(encoding="utf-8")
    octave = "<clef-octave-change>-1</clef-octave-change></clef>"
    finger = "<notations><technical><fingering>3</fingering></technical></notations></note>"
    text = text.replace("</clef>", octave).replace("</note>", finger, 1)
    path.write_text(text, encoding="utf-8")
    return path


@pytest.mark.parametrize("held", [True, False])
def test_the_teacher_holds_to_the_print_or_not(qtbot, open_window, studied, held):
    window = open_window()
    window.import_score(str(studied))
    qtbot.waitUntil(lambda: isinstance(window.dialog, ImportDialog), timeout=WAIT)
    dialog = window.dialog
    assert dialog.printed.isVisible() and dialog.printed.isChecked()
    dialog.printed.setChecked(held)
    dialog.fields.instrument.setCurrentIndex(dialog.fields.instrument.findData("guitar"))
    dialog.make_button.click()
    qtbot.waitUntil(lambda: window.session.lesson is not None, timeout=WAIT)
    settle(qtbot, window)
    lesson = window.session.lesson
    assert lesson.instrument == "guitar"
    assert [pin.left for pin in lesson.pins] == ([3] if held else [])


def test_no_such_choice_where_nothing_is_printed(qtbot, open_window, score_file):
    window = open_window()
    window.import_score(str(score_file))
    qtbot.waitUntil(lambda: isinstance(window.dialog, ImportDialog), timeout=WAIT)
    assert not window.dialog.printed.isVisible()


def test_a_guitar_study_is_taken_for_the_guitar_and_stays_in_its_key(qtbot, open_window, studied):
    """The ukulele has not its low notes; nothing names the instrument."""
    window = open_window()
    text = studied.read_text(encoding="utf-8")
    studied.write_text(text.replace("<octave>4</octave>", "<octave>3</octave>"), encoding="utf-8")
    window.import_score(str(studied))
    qtbot.waitUntil(lambda: isinstance(window.dialog, ImportDialog), timeout=WAIT)
    qtbot.waitUntil(lambda: window.session.jobs.idle, timeout=WAIT)
    dialog = window.dialog
    assert dialog.fields.instrument.currentData() == "guitar"
    assert dialog.fields.hint.text().startswith("It stays in C major, for the fingering")
    assert ".;" not in dialog.about.text() and "C major. The score prints" in dialog.about.text()
    dialog.fields.top_fret.setValue(5)
    qtbot.waitUntil(lambda: window.session.jobs.idle, timeout=WAIT)
    assert "It stays" not in dialog.fields.hint.text(), "with other wishes it is laid anew"
