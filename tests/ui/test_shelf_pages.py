"""The shelf's filters, several lessons at once, pieces, groups, and what to teach next."""

from __future__ import annotations

import threading
from dataclasses import replace

import pytest
from PySide6.QtCore import QItemSelectionModel, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QInputDialog

from tests.ui.conftest import WAIT
from tests.ui.helpers import listed, on_shelf, pick
from workbench.teaching.lessons.lesson import BarNote


@pytest.fixture
def five(lesson_window):
    """A shelf of five lessons that differ in everything one may look for."""
    window = lesson_window
    shelf, lesson = window.session.shelf, window.session.lesson
    note = BarNote("n1", "left hand", "Let the *pinky* hover over the third string.", 1, 1)
    shelf.save_all(
        [
            replace(lesson, id="a", title="Anchor song", student="Ada", grade=2, notes=(note,),
                    techniques=("arpeggio",)),
            replace(lesson, id="b", title="Bell song", student="Ben", grade=3, key="D major"),
            replace(lesson, id="c", title="Coral song", student="Cem", instrument="guitar"),
            replace(lesson, id="d", title="Dune song", student="Ada", grade=3,
                    piece=replace(lesson.piece, bars=lesson.piece.bars[:3])),
        ]
    )  # fmt: skip
    shelf.set_group("Monday", ["Ada", "Cem"])
    return window


def choose(box, value):
    values = [box.itemData(at) for at in range(box.count())]
    box.setCurrentIndex(values.index(value))


@pytest.mark.parametrize(
    ("box", "value", "titles"),
    [
        ("who", ("student", "Ada"), {"Anchor song", "Dune song"}),
        ("who", ("group", "Monday"), {"Anchor song", "Coral song", "Dune song"}),
        ("instrument", "guitar", {"Coral song"}),
        ("key", "D major", {"Bell song"}),
        ("grade", 3, {"Bell song", "Dune song"}),
        ("technique", "arpeggio", {"Anchor song"}),
        ("used", 6, set()),
    ],
)
def test_each_filter_narrows_the_list_and_is_cleared(qtbot, five, box, value, titles):
    page = on_shelf(qtbot, five)
    listed(qtbot, page, 5)
    choose(getattr(page.filters, box), value)
    qtbot.waitUntil(lambda: {row.title for row in page.rows} == titles, timeout=WAIT)
    page.filters.clear_button.click()
    listed(qtbot, page, 5)


def test_words_of_a_note_are_found_and_the_place_is_told(qtbot, five):
    page = on_shelf(qtbot, five)
    QTest.keyClicks(page.filters.search, "pinky hov")
    listed(qtbot, page, ["Anchor song"])
    assert page.found.text() == ("In a remark: “Let the pinky hover over the third string.”")


def test_several_lessons_are_archived_at_once_and_undo_brings_them_back(qtbot, five):
    page = on_shelf(qtbot, five)
    listed(qtbot, page, 5)
    page.table.sortByColumn(0, Qt.SortOrder.AscendingOrder)
    assert [row.title[0] for row in page.rows] == ["A", "B", "C", "D", "F"]
    rows = QItemSelectionModel.SelectionFlag.Select | QItemSelectionModel.SelectionFlag.Rows
    page.table.pick(0)
    page.table.selectionModel().select(page.model.index(1, 0), rows)
    assert page.status.text() == "5 lessons, 2 selected"
    assert not page.open_button.isEnabled() and page.delete_button.isEnabled()
    page.archive_button.click()
    listed(qtbot, page, ["Coral song", "Dune song", "Ferry at dusk"])
    assert page.status.text() == "2 lessons are in the archive."
    page.undo_button.click()
    listed(qtbot, page, 5)


def test_a_copy_is_taken_back(qtbot, five, monkeypatch):
    monkeypatch.setattr(QInputDialog, "getText", lambda *_given, **_named: ("Dora", True))
    page = on_shelf(qtbot, five)
    listed(qtbot, page, 5)
    pick(page, title="Bell song")
    page.copy_button.click()
    listed(qtbot, page, 6)
    assert page.picked[0].student == "Dora"
    assert "copied for Dora" in page.status.text()
    page.undo_button.click()
    listed(qtbot, page, 5)
    assert "Dora" not in {row.student for row in page.rows}


def test_enter_opens_and_delete_deletes(qtbot, five, settled):
    page = on_shelf(qtbot, five)
    listed(qtbot, page, 5)
    pick(page, title="Dune song")
    page.table.setFocus()
    QTest.keyClick(page.table, Qt.Key.Key_Delete)
    listed(qtbot, page, 4)
    QTest.keyClicks(page.filters.search, "bell")
    listed(qtbot, page, 1)
    QTest.keyClick(page.filters.search, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: five.dialog is None, timeout=WAIT)
    settled(five)
    assert five.session.lesson.title == "Bell song"


def test_a_lesson_is_made_of_a_piece_of_the_shelf(qtbot, five, settled):
    window, shelf = five, five.session.shelf
    on_shelf(qtbot, window)
    dialog = window.dialog
    dialog.pages.setCurrentWidget(dialog.pieces)
    pieces = dialog.pieces
    qtbot.waitUntil(lambda: len(pieces.rows) == 2, timeout=WAIT)
    assert sorted(row.lessons for row in pieces.rows) == [1, 4]
    pieces.make_button.click()
    qtbot.waitUntil(lambda: window.dialog not in (None, dialog), timeout=WAIT)
    made = window.dialog
    assert made.heading.text() == "Ferry at dusk"
    qtbot.waitUntil(lambda: window.session.jobs.idle, timeout=WAIT)
    made.make_button.click()
    qtbot.waitUntil(lambda: window.dialog is None, timeout=WAIT)
    settled(window)
    assert len(shelf.lessons()) == 6
    assert len(shelf.pieces()) == 2


def test_a_piece_is_deleted_and_brought_back_its_lessons_stay(qtbot, five):
    window, shelf = five, five.session.shelf
    on_shelf(qtbot, window)
    dialog = window.dialog
    dialog.pages.setCurrentWidget(dialog.pieces)
    pieces = dialog.pieces
    qtbot.waitUntil(lambda: len(pieces.rows) == 2, timeout=WAIT)
    pieces.delete_button.click()
    qtbot.waitUntil(lambda: len(pieces.rows) == 1, timeout=WAIT)
    assert len(shelf.lessons()) == 5
    pieces.undo_button.click()
    qtbot.waitUntil(lambda: len(pieces.rows) == 2, timeout=WAIT)


def test_the_shelf_is_read_beside_the_window(qtbot, five, monkeypatch):
    """A shelf may lie on a server: nothing that opens or turns its pages waits for it."""
    read = []

    def watched(name):
        real = getattr(five.session.shelf, name)

        def call(*given, **named):
            read.append((name, threading.current_thread() is threading.main_thread()))
            return real(*given, **named)

        return call

    names = ("lessons", "groups", "students", "instruments", "key_names", "techniques", "pieces")
    for name in names:
        monkeypatch.setattr(five.session.shelf, name, watched(name))
    on_shelf(qtbot, five)
    pages = five.dialog
    assert pages.lessons.filters.who.findText("Group Monday") > 0
    for page in (pages.pieces, pages.onward):
        pages.pages.setCurrentWidget(page)
    qtbot.waitUntil(lambda: pages.onward.found is not None, timeout=WAIT)
    assert {name for name, _ in read} == set(names)
    assert not [name for name, waits in read if waits]


def test_what_to_teach_next_is_told_with_its_reason_and_opened(qtbot, five, settled):
    window = five
    on_shelf(qtbot, window)
    dialog = window.dialog
    dialog.pages.setCurrentWidget(dialog.onward)
    page = dialog.onward
    qtbot.waitUntil(lambda: page.found is not None, timeout=WAIT)
    choose(page.who, "Ben")
    qtbot.waitUntil(lambda: page.found is not None and page.found.last.title == "Bell song",
                    timeout=WAIT)  # fmt: skip
    page.refresh(finger_all=True)
    qtbot.waitUntil(lambda: page.found.missing == 0 and page.list.count() > 0, timeout=WAIT)
    assert page.last.text() == "Taught last: 'Bell song'."
    words = [page.list.item(row).text() for row in range(page.list.count())]
    assert any("Takes up again" in text for text in words), words
    assert not any("Coral song" in text for text in words)  # another instrument
    picked = page.list.currentItem().text()
    page.open_button.click()
    qtbot.waitUntil(lambda: window.dialog is None, timeout=WAIT)
    settled(window)
    assert window.session.lesson.title in picked


def test_groups_are_written_and_kept(qtbot, five, monkeypatch):
    window, shelf = five, five.session.shelf
    window.openers.groups()
    dialog = window.dialog
    assert dialog.students.toPlainText() == "Ada\nCem"
    dialog.students.setPlainText("Ada\nCem\n\nBen")
    monkeypatch.setattr(QInputDialog, "getText", lambda *_given, **_named: ("Friday", True))
    dialog.new_button.click()
    dialog.students.setPlainText("Dora")
    dialog.close_button.click()
    assert {g.name: g.students for g in shelf.groups()} == {
        "Monday": ("Ada", "Ben", "Cem"),
        "Friday": ("Dora",),
    }
    window.openers.groups()
    window.dialog.list.setCurrentRow(0)
    window.dialog.delete_button.click()
    assert [g.name for g in shelf.groups()] == ["Monday"]
