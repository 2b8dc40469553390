"""Measured hands, the relaxed hand and rest strokes, set in the lesson panel."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtWidgets import QDialog, QDialogButtonBox

from workbench.ui.lesson import spans_dialog


def test_a_measured_hand_is_kept_and_undone(lesson_window, settled, monkeypatch):
    window = lesson_window

    def accept(dialog):
        for box, value in zip(dialog.boxes, (31, 70, 50), strict=True):
            box.setValue(value)
        return QDialog.DialogCode.Accepted

    monkeypatch.setattr(spans_dialog.SpansDialog, "exec", accept)
    window.lesson_panel.spans.click()
    settled(window)
    assert window.session.lesson.hand == "own:31,70,50"
    assert window.session.hand.comfort_14 == 70
    window.session.undo()
    assert window.session.lesson.hand == "medium"


def test_spans_that_are_no_hand_cannot_be_taken(qtbot, lesson_window):
    dialog = spans_dialog.SpansDialog(lesson_window.session.hand)
    qtbot.addWidget(dialog)
    dialog.boxes[0].setValue(120)
    assert not dialog.buttons.button(QDialogButtonBox.StandardButton.Ok).isEnabled()
    assert "widest" in dialog.wrong.words.text()


def test_rest_strokes_and_relaxed_hand_reach_the_engine(lesson_window, settled):
    window = lesson_window
    window.lesson_panel.rest_strokes.click()
    window.lesson_panel.relaxed.click()
    settled(window)
    session = window.session
    assert session.lesson.settings.rest_strokes and session.lesson.settings.relaxed_hand
    strokes = {n.stroke for bar in session.fingers.fingering.bars for n in bar.notes}
    assert "rest" in strokes


def test_campanella_is_offered_on_reentrant_tunings_and_reaches_the_engine(lesson_window, settled):
    window = lesson_window
    panel, session = window.lesson_panel, window.session
    assert session.instrument.reentrant and panel.form.isRowVisible(panel.campanella)
    panel.campanella.click()
    settled(window)
    assert session.lesson.settings.campanella
    rings = [n for bar in session.fingers.fingering.bars for n in bar.notes if n.rings]
    assert rings and all(n.rings > n.duration for n in rings)
    session.edit("low", lambda lesson: replace(lesson, instrument="ukulele-low-g"))
    settled(window)
    assert not panel.form.isRowVisible(panel.campanella)
    assert not any(n.rings for bar in session.fingers.fingering.bars for n in bar.notes)
