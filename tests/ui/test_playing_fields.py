"""Instrument and key in the dialogs: the ranking grows, semitones are free, settings stay."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt

from tests.arranging.make import THREE_LINES
from tests.ui.conftest import WAIT, write_score


def opened(qtbot, window, path):
    window.import_score(str(path))
    qtbot.waitUntil(lambda: window.dialog is not None, timeout=WAIT)
    return window.dialog


def test_a_downward_move_and_the_ceiling_stay_with_the_lesson(
    qtbot, open_window, settled, tmp_path
):
    window = open_window()
    high = ("E5 G5 A5 G5", "C5 E5 G5 E5", "D5 F5 E5 C5", "E5 D5 C5 C5")
    dialog = opened(qtbot, window, write_score(tmp_path / "high.musicxml", high))
    fields, session = dialog.fields, window.session
    qtbot.waitUntil(lambda: session.jobs.idle, timeout=WAIT)
    moves = [fields.key.itemData(i) for i in range(fields.key.count())]
    assert moves[:2] == [None, 0] and len({m % 12 for m in moves if m is not None}) == 12
    assert any(m is not None and m < 0 for m in moves)
    fields.steps.setValue(-12)
    assert fields.key.currentData() == -12
    fields.top_fret.setValue(5)
    fields.strict.setCurrentIndex(2)
    qtbot.waitUntil(lambda: session.jobs.idle, timeout=WAIT)
    assert fields.key.currentData() == -12, "a choice outlives the ranking"
    dialog.make_button.click()
    qtbot.waitUntil(lambda: window.dialog is None, timeout=WAIT)
    settled(window)
    lesson = session.lesson
    assert (lesson.transposition, lesson.top_fret, lesson.strict) == (-12, 5, "easy")
    assert max(n.fret for bar in session.fingers.fingering.bars for n in bar.notes) <= 5

    window.openers.change_music()
    again = window.dialog.fields
    qtbot.waitUntil(lambda: session.jobs.idle, timeout=WAIT)
    assert again.key.currentData() == again.steps.value() == -12
    assert (again.top_fret.value(), again.strict.currentData()) == (5, "easy")


def test_a_piece_that_does_not_lie_as_written_is_moved_and_counted(
    qtbot, open_window, settled, tmp_path
):
    window = open_window()
    told = []
    window.session.told.connect(told.append)
    low = ("C3 E3 G3 A3", "A3 G3 F3 E3", "D3 F3 E3 C3", "E3 D3 C3 C3")
    dialog = opened(qtbot, window, write_score(tmp_path / "low.musicxml", low))
    qtbot.waitUntil(lambda: window.session.jobs.idle, timeout=WAIT)
    assert dialog.fields.key.currentData() is None
    dialog.make_button.click()
    qtbot.waitUntil(lambda: window.dialog is None, timeout=WAIT)
    settled(window)
    lesson = window.session.lesson
    assert lesson.transposition > 0
    assert [c.kind for c in lesson.arranged] == ["best key"]


def test_the_ranking_is_shown_while_it_grows(qtbot, open_window, settled, tmp_path):
    window = open_window()
    fields = opened(qtbot, window, write_score(tmp_path / "ferry.musicxml")).fields
    qtbot.waitUntil(lambda: window.session.jobs.idle, timeout=WAIT)
    lengths = []
    fields.key.model().rowsInserted.connect(lambda *_: lengths.append(fields.key.count()))
    fields.capo.setValue(1)
    qtbot.waitUntil(lambda: window.session.jobs.idle, timeout=WAIT)
    # the two ways to stay as written, then the keys; the list is filled anew for each found
    shown = [n for n, after in zip(lengths, [*lengths[1:], 0], strict=True) if after <= n]
    assert shown[:3] == sorted(shown[:3]) and len(set(shown)) > 3
    assert shown[-1] == max(shown)


def test_the_parts_of_tune_and_bass_are_chosen_and_stay(qtbot, open_window, settled, tmp_path):
    window = open_window()
    path = tmp_path / "three.abc"
    path.write_text(THREE_LINES)
    dialog = opened(qtbot, window, path)
    fields, session = dialog.fields, window.session
    assert not fields._form.isRowVisible(fields.tune_part), "one part is taken as yet"
    for at in range(3):
        dialog.parts.item(at).setCheckState(Qt.CheckState.Checked)
    qtbot.waitUntil(lambda: fields._form.isRowVisible(fields.tune_part), timeout=WAIT)
    fields.tune_part.setCurrentIndex(fields.tune_part.findData(2))
    fields.bass_part.setCurrentIndex(fields.bass_part.findData(2))
    dialog.make_button.click()
    assert "at once" in dialog.problem.words.text()
    fields.bass_part.setCurrentIndex(fields.bass_part.findData(3))
    qtbot.waitUntil(lambda: session.jobs.idle, timeout=WAIT)
    dialog.make_button.click()
    qtbot.waitUntil(lambda: window.dialog is None, timeout=WAIT)
    settled(window)
    lesson = session.lesson
    assert (lesson.tune_part, lesson.bass_part) == (2, 3)
    assert {n.part for n in lesson.piece.notes if n.voice == 1} == {2}
    window.openers.change_music()
    again = window.dialog.fields
    assert (again.tune_part.currentData(), again.bass_part.currentData()) == (2, 3)
    qtbot.waitUntil(lambda: session.jobs.idle, timeout=WAIT)


@pytest.mark.parametrize(
    ("semitones", "words"),
    [(1, "1 semitone higher"), (-1, "1 semitone lower"), (3, "3 semitones higher"),
     (0, "as written")],
)  # fmt: skip
def test_how_far_a_piece_is_moved_is_said_in_words(semitones, words):
    from workbench.ui.lesson.playing_fields import moved_words

    assert moved_words(semitones) == words
