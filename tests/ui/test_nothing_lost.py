"""What is typed is kept, whatever the store says; what another window wrote is, too."""

from __future__ import annotations

import json
import os
import stat
from dataclasses import replace

import pytest
from PySide6.QtCore import QAbstractListModel, QModelIndex, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractItemView, QLabel, QWidget

from tests.ui.conftest import WAIT
from tests.ui.helpers import click_bar, nameless
from workbench.store.conflict import StoreRefused
from workbench.store.shelf import Shelf
from workbench.teaching.lessons import edits
from workbench.ui.keeping.left_dialog import LeftDialog
from workbench.ui.keeping.meeting_dialog import MeetingDialog
from workbench.ui.notes import words as note_words

FULL = "The lesson store cannot grow, for the disk is full, and nothing was changed."


def texts(shelf, lesson):
    return [note.text for note in shelf.load(lesson.id).notes]


@pytest.fixture
def full():
    """A store that takes nothing, until it is mended."""

    class Full:
        def break_down(self, shelf):
            def refuse(*_given, **_named):
                raise StoreRefused(FULL)

            self.shelf, self.save = shelf, shelf.save
            shelf.save = refuse

        def mend(self):
            self.shelf.save = self.save

    return Full()


def begin_note(window, words, bar=1):
    click_bar(window, bar)
    window.notes.add_button.click()
    QTest.keyClicks(window.notes.words, words)


def test_words_are_saved_while_they_are_typed(qtbot, lesson_window):
    assert note_words.PAUSE <= 2000  # at the latest 2 s after the last key
    window = lesson_window
    begin_note(window, "Slow here")
    with Shelf() as other:
        lesson = window.session.lesson
        qtbot.waitUntil(lambda: texts(other, lesson) == ["Slow here"], timeout=WAIT)
        steps = len(other.history(lesson.id).steps)
        QTest.keyClicks(window.notes.words, " and gently")
        qtbot.waitUntil(lambda: texts(other, lesson) == ["Slow here and gently"], timeout=WAIT)
        assert len(other.history(lesson.id).steps) == steps, "one note is one step"
    assert window.notes.words.toPlainText() == "Slow here and gently"


def test_a_note_that_the_store_refuses_is_kept_and_saved_as_soon_as_it_can_be(
    qtbot, lesson_window, full
):
    window = lesson_window
    keeper = window.session.keeper
    begin_note(window, "Listen to the bass")
    full.break_down(window.session.shelf)
    click_bar(window, 3)
    assert FULL in window.notice.words.text()
    kept = keeper.left() or keeper.recovery.found()
    assert [note.text for note in kept[0].lesson.notes] == ["Listen to the bass"]
    assert str(kept[0].path) in window.notice.words.text()
    if os.name == "posix":
        assert stat.S_IMODE(kept[0].path.stat().st_mode) == 0o600
    assert json.loads(kept[0].path.read_text())["lesson"]["notes"]
    assert str(kept[0].label) == "Write a remark"
    click_bar(window, 1)
    assert window.notes.words.toPlainText() == "Listen to the bass"
    full.mend()
    assert keeper.try_again()
    assert texts(window.session.shelf, window.session.lesson) == ["Listen to the bass"]
    assert keeper.recovery.found() == ()


def test_where_nothing_can_be_written_the_words_stay_in_the_field(
    qtbot, lesson_window, full, monkeypatch
):
    window = lesson_window
    begin_note(window, "Listen")
    full.break_down(window.session.shelf)
    monkeypatch.setattr(window.session.keeper.recovery, "keep", lambda *_: None)
    click_bar(window, 3)
    assert window.notes.words.toPlainText() == "Listen"
    assert not window.close()
    assert "kept nowhere" in window.notice.words.text()


def test_what_was_left_is_offered_at_the_next_start(
    qtbot, lesson_window, open_window, settled, full
):
    window = lesson_window
    lesson = window.session.lesson
    begin_note(window, "Breathe")
    full.break_down(window.session.shelf)
    assert not window.close(), "closing does not go on over it at once"
    assert "not saved" in window.notice.words.text()
    assert window.close()
    full.mend()
    again = open_window(wait=False)
    qtbot.waitUntil(lambda: isinstance(again.dialog, LeftDialog), timeout=WAIT)
    assert nameless(again.dialog) == []
    assert "Write a remark" in again.dialog.list.item(0).text()
    again.dialog.back_button.click()
    settled(again)
    assert texts(again.session.shelf, lesson) == ["Breathe"]
    assert again.dialog is None
    assert again.session.keeper.recovery.found() == ()
    again.session.undo()
    assert texts(again.session.shelf, lesson) == []


def test_two_windows_on_one_lesson_keep_each_others_notes(lesson_window, open_window, settled):
    one = lesson_window
    two = open_window()
    settled(two)
    lesson = one.session.lesson
    for number in range(20):
        one.session.edit("Note", note_of(f"one {number}", 0))
        two.session.edit("Note", note_of(f"two {number}", 1))
    found = texts(one.session.shelf, lesson)
    assert sorted(found) == sorted(f"{who} {n}" for who in ("one", "two") for n in range(20))


def note_of(words, bar):
    from workbench.teaching.lessons.lesson import NOTE_KINDS, BarNote

    note = BarNote(edits.fresh_id("note"), NOTE_KINDS[0], words, bar, bar)
    return lambda lesson: edits.put_note(lesson, note)


@pytest.mark.parametrize(
    ("choice", "title", "others"),
    [("mine", "Mine", 0), ("theirs", "Theirs", 0), ("both", "Theirs", 1)],
)
def test_two_titles_are_shown_and_one_is_chosen(qtbot, lesson_window, choice, title, others):
    window = lesson_window
    session, lesson = window.session, window.session.lesson
    with Shelf() as other:
        other.save(replace(other.load(lesson.id), title="Theirs"), "Title")
        assert not session.edit("Title", lambda old: replace(old, title="Mine"))
        qtbot.waitUntil(lambda: isinstance(window.dialog, MeetingDialog), timeout=WAIT)
        assert nameless(window.dialog) == []
        assert "Theirs" in window.dialog.list.item(0).text()
        assert other.load(lesson.id).title == "Theirs", "nothing is overwritten meanwhile"
        window.dialog._choose(choice)
        assert session.lesson.title == title == other.load(lesson.id).title
        rows = [row.title for row in other.lessons()]
        assert len(rows) == 1 + others and (not others or "Mine (my changes)" in rows)
        if choice == "mine":
            assert other.undo(lesson.id).title == "Theirs"
        if choice == "theirs":
            kept = other.versions(lesson.id)[-1]
            assert other.load_version(kept.id).title == "Mine", "what gave way is a version"
        assert session.keeper.recovery.found() == ()


def test_undo_does_not_take_back_what_another_window_did(lesson_window):
    session, lesson = lesson_window.session, lesson_window.session.lesson
    session.edit("Grade", lambda old: replace(old, grade=3))
    with Shelf() as other:
        other.save(replace(other.load(lesson.id), capo=2), "Capo")
        session.undo()
        assert other.load(lesson.id).capo == 2
        assert "changed in another window" in lesson_window.notice.words.text()
        assert session.lesson.capo == 2, "the newest state is shown"


HOSTILE = '<img src="/etc/hostname"><b>Bold</b>'


def tips_of(model):
    """The tooltips of all cells at the top of a model."""
    top = QModelIndex()
    for row in range(model.rowCount(top)):
        for column in range(1 if isinstance(model, QAbstractListModel) else model.columnCount(top)):
            yield str(model.index(row, column).data(Qt.ItemDataRole.ToolTipRole) or "")


def test_no_title_is_taken_for_a_document(qtbot, lesson_window, settled):
    """Every widget that shows the teacher's words shows them as they stand."""
    window = lesson_window
    session = window.session
    session.edit("T", lambda old: replace(old, title=HOSTILE, student=HOSTILE))
    session.edit("N", note_of(HOSTILE, 0))
    settled(window)
    click_bar(window, 0)
    session.shelf.keep_version(session.lesson.id, HOSTILE)
    for opens in (
        None, "open_shelf", "show_cautions", "handout", "show_keys", "show_history",
        "compare_versions", "groups", "change_music", "learn_scores",
    ):  # fmt: skip
        if opens:
            getattr(window.openers, opens)()
            settled(window)
        shown = 0
        for top in (window, window.dialog or window):
            for widget in [top, *top.findChildren(QWidget)]:
                assert "<img" not in widget.toolTip().replace("&lt;", ""), widget
                if isinstance(widget, QLabel) and "<" in widget.text():
                    assert widget.textFormat().name == "PlainText", widget.text()
                    shown += "<img" in widget.text()
                if isinstance(widget, QAbstractItemView) and widget.model():
                    assert not any("<img" in tip for tip in tips_of(widget.model())), widget
        assert shown, opens
    window.openers.open_shelf()
    item = window.notes.list.item(0)
    assert "<img" not in item.toolTip() and "<img" not in item.data(note_words.RICH)


def test_a_very_long_title_widens_nothing(lesson_window, settled):
    """Ten thousand signs in a title and a name, as a pasted document brings them."""
    window = lesson_window
    before = window.minimumSizeHint().width()
    long = "T" * 10_000
    window.session.edit("T", lambda old: replace(old, title=long, student=long))
    settled(window)
    assert window.minimumSizeHint().width() <= before * 1.2
    window.openers.open_shelf()
    settled(window)
    assert window.dialog.sizeHint().width() < 3 * before
