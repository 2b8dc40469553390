"""Backups, archives, the bin and forgetting, from the window; and a store that will not open."""

from __future__ import annotations

import os
from dataclasses import replace

import pytest
from PySide6.QtWidgets import QDialog

from tests.ui.conftest import WAIT
from tests.ui.helpers import nameless
from workbench.store.backups import back_up, backups
from workbench.store.opening import StorePlace
from workbench.store.shelf import Shelf
from workbench.ui.keeping.backups_dialog import BackupsDialog
from workbench.ui.keeping.trouble_dialog import TroubleDialog
from workbench.ui.window import app as ui_app


def test_a_backup_is_made_and_restored_from_the_window(qtbot, lesson_window, settled, monkeypatch):
    window = lesson_window
    monkeypatch.setattr(window, "deleteLater", lambda: None)  # the test's own to delete
    session = window.session
    window.safe.backups()
    dialog = window.dialog
    assert isinstance(dialog, BackupsDialog) and nameless(dialog) == []
    assert not dialog.restore_button.isEnabled()
    dialog.now_button.click()
    assert dialog.list.count() == 1 and "1 lesson" in dialog.list.item(0).text()
    session.edit("Title", lambda old: replace(old, title="Written since"))
    dialog.restore_button.click()
    new = ui_app._open[-1]
    assert new is not window
    qtbot.addWidget(new)
    settled(new)
    assert new.session.lesson.title == "Ferry at dusk"
    assert "Written since" in new.notice.words.text(), "what is lost is named"
    new.session.edit("Title", lambda old: replace(old, title="Goes on"))
    with Shelf() as shelf:
        assert [row.title for row in shelf.lessons()] == ["Goes on"]
    new.close()
    new.session.shelf.close()


def test_the_daily_backup_is_quiet_where_all_is_well(qtbot, lesson_window):
    window = lesson_window
    window.safe.look_after()
    qtbot.waitUntil(lambda: window.session.jobs.idle, timeout=WAIT)
    assert len(backups(window.session.shelf.place)) == 1
    assert not window.notice.isVisible()


def test_an_archive_goes_out_and_comes_in(qtbot, lesson_window, settled, tmp_path):
    window, session = lesson_window, lesson_window.session
    path = tmp_path / "all.pluckwright"
    window.safe.write_archive(str(path))
    qtbot.waitUntil(lambda: path.exists() and session.jobs.idle, timeout=WAIT)
    assert "names" in window.statusBar().currentMessage()
    lesson = session.lesson
    session.put_away()
    session.shelf.delete(lesson.id)
    session.shelf.empty_bin(-1)
    ui_app.open_file(window, str(path))  # as the desktop hands it over
    qtbot.waitUntil(lambda: session.jobs.idle, timeout=WAIT)
    assert session.shelf.load(lesson.id) == lesson
    assert "1 lesson is new" in window.statusBar().currentMessage()


def test_the_bin_is_emptied_and_a_student_forgotten(qtbot, lesson_window, monkeypatch):
    window, session = lesson_window, lesson_window.session
    safe = window.safe
    session.edit("Student", lambda old: replace(old, student="Xanthippe Quill"))
    session.shelf.duplicate(session.lesson.id)
    gone = session.shelf.duplicate(session.lesson.id)
    session.shelf.delete(gone.id)
    asked = []
    monkeypatch.setattr(safe, "sure", lambda title, words: asked.append(words) or False)
    safe.empty_bin()
    assert session.shelf.lessons(archived=None, deleted=True), "only where it is meant"
    monkeypatch.setattr(safe, "sure", lambda title, words: asked.append(words) or True)
    safe.empty_bin()
    assert session.shelf.lessons(archived=None, deleted=True) == ()
    assert "cannot be undone" in asked[-1]
    safe.forget("Xanthippe Quill")
    assert session.lesson is None
    assert [row.student for row in session.shelf.lessons(archived=None)] == [""]


@pytest.fixture
def broken(lesson_window):
    """The file of a store that cannot be opened, with one backup."""
    back_up(lesson_window.session.shelf.place)
    lesson_window.close()
    lesson_window.session.shelf.close()
    file = StorePlace().file
    file.write_bytes(b"")
    os.utime(file, (1e9, 1e9))
    return file


def test_a_store_that_cannot_be_opened_shows_what_can_be_done(broken, monkeypatch, capsys):
    seen = []

    def answer(dialog):
        seen.append(dialog)
        assert nameless(dialog) == []
        assert "is empty" in dialog.words.text()
        assert dialog.list.count() == 1
        dialog.restore_button.click()
        return dialog.result()

    monkeypatch.setattr(TroubleDialog, "exec", answer)
    shelf, said = ui_app.open_shelf()
    with shelf:
        assert [row.title for row in shelf.lessons()] == ["Ferry at dusk"]
    assert "backup is in place" in said and len(seen) == 1


def test_a_new_store_may_be_begun_and_the_old_one_is_kept(broken, monkeypatch):
    broken.write_bytes(b"no store at all" * 100)

    def answer(dialog):
        dialog.new_button.click()
        return dialog.result()

    monkeypatch.setattr(TroubleDialog, "exec", answer)
    shelf, said = ui_app.open_shelf()
    with shelf:
        assert shelf.lessons() == ()
    aside = next(broken.parent.glob("store.db.aside-*"))
    assert aside.read_bytes().startswith(b"no store") and str(aside) in said


def test_giving_up_leaves_everything(broken, monkeypatch):
    monkeypatch.setattr(TroubleDialog, "exec", lambda _dialog: QDialog.DialogCode.Rejected)
    shelf, _ = ui_app.open_shelf()
    assert shelf is None and broken.read_bytes() == b""


def test_an_address_that_is_none_has_no_backups_to_offer(monkeypatch):
    monkeypatch.setenv("PLUCKWRIGHT_DB", "://")
    seen = []

    def answer(dialog):
        seen.append((dialog.words.text(), dialog.list))
        return 0

    monkeypatch.setattr(TroubleDialog, "exec", answer)
    assert ui_app.open_shelf()[0] is None
    assert "no database URL" in seen[0][0] and seen[0][1] is None
