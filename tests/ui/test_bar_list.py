"""The bar list as a teacher works with it: orders, pictures, filters, sections by hand."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from tests.ui.conftest import WAIT, make_lesson, write_score
from workbench.teaching.lessons.bar_rows import FILTERS
from workbench.ui.bars.delegate import FACTS
from workbench.ui.kit.look import em

LEFT = Qt.MouseButton.LeftButton
CTRL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier
BARS = ("C4 E4 G4 A4", "A4 G4 F4 E4", "C4 E4 G4 A4", "E4 D4 C4 C4", "F4 E4 D4 C4", "C5 B4 A4 G4")


@pytest.fixture
def window(qtbot, open_window, tmp_path, settled):
    made = open_window()
    make_lesson(qtbot, made, write_score(tmp_path / "six.musicxml", BARS))
    settled(made)
    return made


def letters(window):
    rows = {row.index: row.section for row in window.session.rows}
    return "".join(rows[index] for index in sorted(rows))


def in_band(window, row, share=0.6):
    """A point in the section band beside a row."""
    view = window.bars.view
    rect = view.visualRect(view.model().index(row))
    return QPoint(em(view, 0.5), round(rect.top() + rect.height() * share))


def drag(window, start, end):
    view = window.bars.view.viewport()
    QTest.mousePress(view, LEFT, pos=start)
    QTest.mouseMove(view, (start + end) / 2)
    QTest.mouseMove(view, end)
    QTest.mouseRelease(view, LEFT, pos=end)


def test_rows_have_pictures_difficulty_and_what_they_are_like(qtbot, window):
    bars = window.bars
    qtbot.waitUntil(lambda: bars.thumbs.picture(0) is not None, timeout=WAIT)
    qtbot.waitUntil(lambda: len(bars.finder.facts) == 6, timeout=WAIT)
    picture = bars.thumbs.picture(0)
    assert picture.width() > picture.height() > 10
    assert picture.height() <= bars.view.picture_height() + 1
    facts = bars.model.index(2).data(FACTS)
    assert str(facts.seen) == "same music as bar 1"
    assert facts.difficulty and 0 < facts.share <= 1
    said = bars.model.index(2).data(Qt.ItemDataRole.AccessibleTextRole)
    assert f"difficulty {facts.figure}, same music as bar 1" in said


def test_pictures_follow_the_fingering_and_can_be_the_staff_or_none(qtbot, window, settled):
    bars, session = window.bars, window.session
    qtbot.waitUntil(lambda: bars.thumbs.picture(0) is not None, timeout=WAIT)
    before = bars.thumbs.picture(0).toImage()
    note = session.lesson.piece.bars[0].notes[3].id
    session.hand_edits.move_note(note, 2, 5)
    settled(window)
    qtbot.waitUntil(lambda: bars.thumbs.picture(0).toImage() != before, timeout=WAIT)
    tall = bars.view.visualRect(bars.model.index(0)).height()
    bars.pictures.setCurrentIndex(1)
    qtbot.waitUntil(lambda: bars.view.picture(0).toImage() != before, timeout=WAIT)
    bars.pictures.setCurrentIndex(2)
    qtbot.waitUntil(lambda: bars.view.visualRect(bars.model.index(0)).height() < tall, timeout=WAIT)
    assert bars.view.picture(0) is None


def test_order_at_a_keystroke_is_remembered(qtbot, window, open_window):
    bars = window.bars
    window.activateWindow()
    qtbot.waitUntil(lambda: window.isActiveWindow(), timeout=WAIT)
    QTest.keyClick(window, Qt.Key.Key_R, CTRL)
    assert bars.written.isChecked() and bars.heading.text() == "Bars as written"
    window.close()
    assert open_window().bars.written.isChecked()


def test_filters_list_what_they_say(qtbot, window):
    bars, session = window.bars, window.session
    names = [which for which, _ in FILTERS]
    qtbot.waitUntil(lambda: len(bars.finder.facts) == 6, timeout=WAIT)

    def shown(which):
        bars.filter.setCurrentIndex(names.index(which))
        return [row.index for row in bars.model.rows]

    assert shown("unfinished") == [0, 1, 2, 3, 4, 5]
    session.hand_edits.move_note(session.lesson.piece.bars[0].notes[0].id, 3, 0)
    assert shown("unfinished") == [1, 3, 4, 5]  # bar 3 is the same music as bar 1
    assert shown("pins") == [0]
    hardest = shown("hardest")
    worst = max(f.difficulty for f in bars.finder.facts.values())
    assert hardest and all(bars.finder.facts[i].difficulty == worst for i in hardest)
    assert shown("cuts") == [r.index for r in session.rows if r.cuts]
    if not bars.model.rows:
        assert bars.nothing.isVisible() and bars.nothing.text()


def test_several_rows_take_one_note(window):
    view = window.bars.view
    for row, keys in ((1, Qt.KeyboardModifier.NoModifier), (3, SHIFT)):
        where = view.visualRect(view.model().index(row)).center()
        QTest.mouseClick(view.viewport(), LEFT, keys, where)
    assert window.bars.selected_bars == (1, 2, 3)
    window.notes.add_button.click()
    QTest.keyClicks(window.notes.words, "Keep the wrist low.")
    QTest.keyClick(window.notes.words, Qt.Key.Key_Return, CTRL)
    (note,) = window.session.lesson.notes
    assert (note.first_bar, note.last_bar) == (1, 3)


def test_a_drag_beside_the_rows_makes_a_section_and_its_letter_is_typed(window):
    session, view = window.session, window.bars.view
    assert letters(window) == "AAAAAA"
    drag(window, in_band(window, 1), in_band(window, 3))
    assert letters(window) == "ABBBAA"
    assert view.editor.isVisible() and view.editor.selectedText() == "B"
    QTest.keyClicks(view.editor, "Verse")
    QTest.keyClick(view.editor, Qt.Key.Key_Return)
    assert session.lesson.sections == ((0, "A"), (1, "Verse"), (4, "A"))
    assert not view.editor.isVisible()
    session.undo()
    assert session.lesson.sections == ()


def test_an_edge_is_dragged(window):
    session = window.session
    session.edit("sections", lambda old: replace(old, sections=((0, "A"), (3, "B"))))
    view = window.bars.view
    top = view.visualRect(view.model().index(3)).top()
    start = QPoint(em(view, 0.5), top + 2)
    QTest.mouseMove(view.viewport(), start)
    assert view.viewport().cursor().shape() == Qt.CursorShape.SizeVerCursor
    drag(window, start, in_band(window, 1))
    assert letters(window) == "ABBBBB"
    session.undo()
    assert letters(window) == "AAABBB"


def test_while_it_is_drawn_the_band_shows_what_will_be(window):
    view = window.bars.view
    rows = window.bars.model.rows
    QTest.mousePress(view.viewport(), LEFT, pos=in_band(window, 1))
    QTest.mouseMove(view.viewport(), in_band(window, 2))
    assert [view.band_of(row) for row in rows[:4]] == [
        ("A", True), ("B", True), ("B", False), ("A", True),
    ]  # fmt: skip
    assert [view.dragged(row) for row in rows[:4]] == [False, True, True, False]
    QTest.mouseRelease(view.viewport(), LEFT, pos=in_band(window, 2))
    assert letters(window) == "ABBAAA"


def test_sections_by_keys(window):
    session, bars = window.session, window.bars
    session.selection.select(2)
    bars.make_section()  # from here to the end of the section around it
    assert letters(window) == "AABBBB"
    QTest.keyClick(bars.view.editor, Qt.Key.Key_Escape)
    assert bars.view.hasFocus() or not bars.view.editor.isVisible()
    QTest.keyClick(bars.view, Qt.Key.Key_Down, CTRL | SHIFT)
    QTest.keyClick(bars.view, Qt.Key.Key_Down, CTRL | SHIFT)
    assert letters(window) == "AAAABB"
    session.selection.select(5)
    QTest.keyClick(bars.view, Qt.Key.Key_Up, CTRL | SHIFT)
    assert letters(window) == "AAABBB"
    session.selection.select(3)
    bars.make_section()  # begins here already: its letter is edited
    assert bars.view.editor.isVisible() and letters(window) == "AAABBB"
    bars.view.editor.clear()
    QTest.keyClick(bars.view.editor, Qt.Key.Key_Return)
    assert letters(window) == "AAAAAA"


def test_a_double_click_on_a_letter_edits_it(window):
    view = window.bars.view
    where = in_band(window, 0)
    QTest.mouseClick(view.viewport(), LEFT, pos=where)
    QTest.mouseDClick(view.viewport(), LEFT, pos=where)
    assert view.editor.isVisible() and view.editor.text() == "A"
    QTest.keyClicks(view.editor, "Theme")
    QTest.keyClick(view.editor, Qt.Key.Key_Return)
    assert letters(window) == "Theme" * 6


def test_drawing_is_called_off_and_taken_up_again(qtbot, window):
    bars = window.bars
    qtbot.waitUntil(lambda: bars.thumbs.picture(0) is not None, timeout=WAIT)
    bars.pictures.setCurrentIndex(1)
    bars.view.picture(0)
    window.session.jobs.cancel()
    before = bars.thumbs.picture(0)
    bars.view.viewport().update()

    def new():
        bars.view.picture(0)
        return bars.thumbs.picture(0) is not before

    qtbot.waitUntil(new, timeout=WAIT)
