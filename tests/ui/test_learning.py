"""Fit to the teacher's choices from the window, kept or taken back."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtWidgets import QDialog

from workbench.fingering.types import Pin
from workbench.ui.views.grading import learning


@pytest.mark.parametrize("keep", [True, False])
def test_learn_from_choices(qtbot, lesson_window, settled, monkeypatch, keep):
    window = lesson_window
    session = window.session
    hands = {n.id: n for bar in session.fingers.fingering.bars for n in bar.notes}
    stopped = [n for n in hands.values() if n.left][:6]
    pins = tuple(Pin(n.id, string=n.string, fret=n.fret, left=n.left % 4 + 1) for n in stopped)
    session.edit("Pin", lambda lesson: replace(lesson, pins=pins[:1]))
    settled(window)
    seen = []

    def answer(dialog):
        seen.append(dialog.table.rowCount())
        return QDialog.DialogCode.Accepted if keep else QDialog.DialogCode.Rejected

    monkeypatch.setattr(learning.FitDialog, "exec", answer)
    learning.learn(session, window)
    qtbot.waitUntil(lambda: bool(seen), timeout=30_000)
    settled(window)
    assert bool(session.lesson.settings.weights) == (keep and seen[0] > 0)
    if keep and seen[0]:
        learning.forget(session)
        assert session.lesson.settings.weights == ()


def test_without_choices_one_sentence_says_what_to_do(qtbot, lesson_window, settled):
    session = lesson_window.session
    with qtbot.waitSignal(session.jobs.failed, timeout=20_000) as told:
        learning.learn(session, lesson_window)
    assert "pin some fingers" in told.args[0]
