"""Learning from fingered scores in the window: read, learned, put in force, taken back."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.ui.conftest import WAIT, write_score
from workbench.fingering.learning.preferences import worth_telling
from workbench.fingering.types import Settings
from workbench.music.errors import BadInput
from workbench.store.learning import can_undo, put_in_force, studio_weights

FINGERED = (
    "<note><pitch><step>{step}</step><octave>4</octave></pitch><duration>1</duration>"
    "<type>quarter</type><notations><technical><fingering>{finger}</fingering></technical>"
    "</notations></note>"
)
# the C scale played in third position of a ukulele, where the first one would do
THIRD = (("D", 1), ("E", 3), ("F", 4), ("G", 2), ("A", 4), ("G", 2), ("F", 4), ("E", 3))


def fingered_score(path, bars=4):
    """A tune in which every note has its finger printed."""
    write_score(path, ["C4 E4 G4 A4"])
    text = path.read_text(encoding="utf-8")
    head, tail = text.split("<note>", 1)[0], "</part></score-partwise>"
    rows = [THIRD[4 * (n % 2) : 4 * (n % 2) + 4] for n in range(bars)]
    for number, row in enumerate(rows, 1):
        if number > 1:
            head += f'<measure number="{number}">'
        head += "".join(FINGERED.format(step=s, finger=f) for s, f in row) + "</measure>"
    path.write_text(head + tail, encoding="utf-8")
    return path


@pytest.fixture
def dialog(lesson_window):
    lesson_window.openers.learn_scores()
    return lesson_window.dialog


def wait(qtbot, dialog):
    qtbot.waitUntil(lambda: not dialog._busy, timeout=WAIT)


def words(dialog, row):
    return dialog.table.item(row, 1).text()


def test_scores_are_learned_from_and_it_is_taken_back(
    qtbot, tmp_path, lesson_window, dialog, settled
):
    session = lesson_window.session
    dialog.add([fingered_score(tmp_path / "one.musicxml"), fingered_score(tmp_path / "two.xml", 6)])
    wait(qtbot, dialog)
    assert [words(dialog, r).split()[0] for r in (0, 1)] == ["16", "24"]
    dialog.learn()
    wait(qtbot, dialog)
    found = dialog.fitted.found
    assert found.printed == 40 and found.changes and found.after > found.before
    told = dialog.told.text()
    assert "2 scores were read; they print 40" in told and "left out of the fit" in told
    assert f"{found.unseen / 40:.1%}" in told
    assert dialog.weights.rowCount() == len(worth_telling(found.changes)) > 0
    # nothing is in force yet
    assert session.lesson.settings.weights == () and not dialog.undo_button.isEnabled()
    steps = len(session.shelf.history(session.lesson.id).steps)
    dialog.apply_button.click()
    settled(lesson_window)
    assert dict(session.lesson.settings.weights) == dict(found.weights)
    assert len(session.shelf.history(session.lesson.id).steps) == steps + 1
    assert "in force" in dialog.told.text() and not dialog.apply_button.isEnabled()
    dialog.undo_button.click()
    settled(lesson_window)
    assert session.lesson.settings.weights == () and not can_undo(session.shelf)


def test_a_new_lesson_has_what_was_learnt_for_its_instrument_alone(
    qtbot, tmp_path, lesson_window, dialog
):
    shelf = lesson_window.session.shelf
    made = lesson_window.session.lesson
    shelf.add(replace(made, id="other", instrument="guitar", settings=Settings()))
    dialog.add([fingered_score(tmp_path / "one.musicxml")])
    wait(qtbot, dialog)
    dialog.learn()
    wait(qtbot, dialog)
    put_in_force(shelf, dialog.fitted)
    assert studio_weights(shelf, 345) == shelf.load(made.id).settings.weights != ()
    assert studio_weights(shelf, 650) == shelf.load("other").settings.weights == ()


def test_bad_files_are_named_one_by_one_and_nothing_is_in_force(qtbot, tmp_path, dialog):
    (tmp_path / "broken.musicxml").write_text("<score-partwise><part", encoding="utf-8")
    plain = write_score(tmp_path / "plain.musicxml")
    dialog.add([tmp_path / "broken.musicxml", tmp_path / "gone.xml", plain])
    wait(qtbot, dialog)
    assert "broken.musicxml" in words(dialog, 0) and "gone.xml" in words(dialog, 1)
    assert "passed over" in words(dialog, 2)
    assert not dialog.learn_button.isEnabled()
    few = fingered_score(tmp_path / "few.musicxml", 2)
    dialog.add([few])
    wait(qtbot, dialog)
    dialog.learn()
    wait(qtbot, dialog)
    assert "at least 10" in dialog.problem.words.text() and dialog.fitted is None
    assert not dialog.apply_button.isEnabled() and not can_undo(dialog.session.shelf)


def test_fingers_of_another_instrument_are_refused(qtbot, tmp_path, dialog):
    text = fingered_score(tmp_path / "one.musicxml").read_text(encoding="utf-8")
    text = text.replace("<fingering>", "<string>4</string><fingering>")
    (tmp_path / "other.musicxml").write_text(text, encoding="utf-8")
    dialog.add([tmp_path / "other.musicxml"])
    wait(qtbot, dialog)
    dialog.learn()
    wait(qtbot, dialog)
    assert "another instrument" in dialog.problem.words.text()


def test_stopping_leaves_everything_as_it_was(qtbot, tmp_path, lesson_window, dialog):
    dialog.add([fingered_score(tmp_path / "one.musicxml")])
    wait(qtbot, dialog)
    dialog.learn()
    assert dialog.stop_button.isEnabled()
    dialog.stop_button.click()
    qtbot.waitUntil(lambda: lesson_window.session.jobs.idle, timeout=WAIT)
    assert dialog.fitted is None and dialog.told.text() == ""
    assert dialog.learn_button.isEnabled() and not can_undo(dialog.session.shelf)


def test_a_read_that_is_called_off_takes_the_score_off_the_list(
    qtbot, tmp_path, lesson_window, monkeypatch
):
    session = lesson_window.session

    def never(path, tick, **_):
        while True:
            tick()

    monkeypatch.setattr("workbench.ui.views.grading.scores_dialog.read_apart", never)
    lesson_window.openers.learn_scores()
    dialog = lesson_window.dialog
    dialog.add([tmp_path / "endless.xml"])
    assert "being read" in words(dialog, 0)
    dialog.stop_button.click()
    qtbot.waitUntil(lambda: session.jobs.idle, timeout=WAIT)
    assert dialog.table.rowCount() == 0


def test_a_full_store_is_said_in_one_sentence(qtbot, tmp_path, lesson_window, dialog, monkeypatch):
    dialog.add([fingered_score(tmp_path / "one.musicxml")])
    wait(qtbot, dialog)
    dialog.learn()
    wait(qtbot, dialog)

    def full(*_):
        raise BadInput("The disk is full.")

    monkeypatch.setattr(lesson_window.session.shelf, "save_all", full)
    with qtbot.waitSignal(lesson_window.session.failed) as told:
        dialog.apply_button.click()
    assert told.args == ["The disk is full."]
    assert dialog.fitted is not None and not can_undo(dialog.session.shelf)
