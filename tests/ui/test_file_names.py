"""Where files go: names that tell what they are, and nothing replaced without asking."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from tests.ui.conftest import WAIT
from tests.ui.helpers import answer
from workbench.ui.paper.export_dialog import ExportDialog, Form
from workbench.ui.paper.handout_dialog import HandoutDialog


@pytest.fixture
def dialog(lesson_window, tmp_path):
    session = lesson_window.session
    session.edit("Student", lambda old: replace(old, student="Ada"))
    session.shelf.set_setting("handout.options", {"folder": str(tmp_path)})
    made = HandoutDialog(session, parent=lesson_window)
    made.show()
    yield made
    made.close()


def choose(box, data):
    box.setCurrentIndex(box.findData(data))


def test_student_kind_and_lesson_are_in_the_name(dialog):
    assert Path(dialog.path.text()).name == "Ada - Ferry at dusk - student's page.pdf"
    names = {dialog.path.text()}
    choose(dialog.audience, "teacher")
    assert Path(dialog.path.text()).name == "Ada - Ferry at dusk - teacher's sheet.pdf"
    names.add(dialog.path.text())
    for kind in ("grips", "plan", "book", "picture", "music"):
        choose(dialog.what, kind)
        names.add(dialog.path.text())
    assert len(names) == 7


def test_a_name_of_ones_own_stays(dialog, tmp_path):
    dialog.path.setText(str(tmp_path / "for grandmother.pdf"))
    choose(dialog.audience, "teacher")
    choose(dialog.what, "music")
    assert Path(dialog.path.text()).name == "for grandmother.musicxml"


def test_a_handout_is_replaced_only_after_a_question(qtbot, dialog, tmp_path):
    there = Path(dialog.path.text())
    there.write_text("dear to me", encoding="utf-8")
    dialog.save.click()
    assert there.name in dialog.question.text()
    answer(dialog.question, "Keep it")
    assert dialog.isVisible() and there.read_text(encoding="utf-8") == "dear to me"
    dialog.save.click()
    answer(dialog.question, "Replace")
    qtbot.waitUntil(lambda: not dialog.isVisible(), timeout=WAIT)
    assert there.read_bytes().startswith(b"%PDF")


def test_a_name_without_an_ending_gets_it(qtbot, dialog, tmp_path):
    (tmp_path / "page.pdf").write_text("dear to me", encoding="utf-8")
    dialog.path.setText(str(tmp_path / "page"))
    dialog.save.click()
    assert "page.pdf" in dialog.question.text()
    answer(dialog.question, "Keep it")


def test_texts_are_named_alike(lesson_window):
    lesson_window.session.edit("Student", lambda old: replace(old, student="Ada"))
    forms = (Form(".md", "Markdown", str),)
    dialog = ExportDialog(lesson_window.session, "script", forms, lesson_window)
    assert dialog.target.name == "Ada - Ferry at dusk - script.md"
