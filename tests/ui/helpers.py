"""What a teacher does in the window, for the tests: clicks, words, answers to questions."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QScrollBar, QStyle, QStyleOptionViewItem, QWidget

from tests.ui.conftest import WAIT
from workbench.teaching.lessons.lesson import NOTE_KINDS

LEFT = Qt.MouseButton.LeftButton
CTRL = Qt.KeyboardModifier.ControlModifier


def show(qtbot, window, name):
    """Open one of the teaching views and wait until it is filled."""
    view = getattr(window.teaching, name)
    window.teaching.setCurrentWidget(view)
    qtbot.waitUntil(lambda: view.isVisible() and not view._stale, timeout=WAIT)
    return settle(qtbot, window, view)


def settle(qtbot, window, view):
    qtbot.waitUntil(
        lambda: window.session.jobs.idle and window.session.fingers.fingering is not None,
        timeout=WAIT,
    )
    return view


def click_bar(window, row):
    view = window.bars.view
    QTest.mouseClick(view.viewport(), LEFT, pos=view.visualRect(view.model().index(row)).center())


def click_row(rows, row):
    rows.scrollToItem(rows.item(row))
    QTest.mouseClick(rows.viewport(), LEFT, pos=rows.visualItemRect(rows.item(row)).center())


def click_tick(plan, name):
    """Click on the box of a plan item."""
    table, row = plan.table, plan.row_of(name)
    table.scrollToItem(table.item(row, 0))
    index = table.model().index(row, 0)
    option = QStyleOptionViewItem()
    table.initViewItemOption(option)
    option.rect = table.visualRect(index)
    table.itemDelegateForColumn(0).initStyleOption(option, index)
    where = QStyle.SubElement.SE_ItemViewItemCheckIndicator
    box = table.style().subElementRect(where, option, table)
    QTest.mouseClick(table.viewport(), LEFT, pos=box.center())


def write_note(window, bar, kind, words):
    click_bar(window, bar)
    panel = window.notes
    panel.add_button.click()
    place = NOTE_KINDS.index(kind)
    panel.kind.setCurrentIndex(place)
    panel.kind.activated.emit(place)
    panel.words.setFocus()
    QTest.keyClicks(panel.words, words)
    QTest.keyClick(panel.words, Qt.Key.Key_Return, CTRL)


def write_words(script, position, words):
    """Choose a bar's row, or the opening's or closing's, and write over its words."""
    if script.writing:
        QTest.keyClick(script.page.words, Qt.Key.Key_Escape)
    if position >= 0:
        script.session.selection.select(position)
    script.table.setCurrentCell(script.row_of(position), 2)
    script.write_button.click()
    assert script.page.place == position
    editor = script.page.words
    QTest.keyClick(editor, Qt.Key.Key_A, CTRL)
    QTest.keyClicks(editor, words)
    return editor


def answer(box, words):
    """Press a button of a question."""
    next(b for b in box.buttons() if b.text().replace("&", "") == words).click()


def nameless(top: QWidget) -> list[str]:
    """Controls that take the focus, or are clicked, but have no name to be read out."""
    found = []
    for widget in [top, *top.findChildren(QWidget)]:
        wanted = widget.focusPolicy() != Qt.FocusPolicy.NoFocus or isinstance(
            widget, QAbstractButton
        )
        inside = isinstance(widget, QScrollBar) or widget.objectName().startswith("qt_")
        if not wanted or inside or widget.focusProxy() is not None:
            continue
        if widget.parent() and widget.parent().metaObject().className() in (
            "QComboBox", "QSpinBox", "QTableWidget", "QComboBoxPrivateContainer",
        ):  # fmt: skip
            continue  # an inner part of a control that has a name itself
        face = QAccessible.queryAccessibleInterface(widget)
        if face is None or not face.text(QAccessible.Text.Name).strip():
            found.append(f"{type(widget).__name__} in {type(widget.parent()).__name__}")
    return found


def choose(box, index):
    """Choose an entry of a box as a click does."""
    box.setCurrentIndex(index)
    box.activated.emit(index)


def write(panel, words):
    panel.add_button.click()
    QTest.keyClicks(panel.words, words)
    QTest.keyClick(panel.words, Qt.Key.Key_Return, CTRL)


def on_shelf(qtbot, window):
    """The lessons page of the shelf, listed."""
    window.openers.open_shelf()
    qtbot.waitUntil(lambda: window.session.jobs.idle, timeout=WAIT)
    return window.dialog.lessons


def listed(qtbot, page, titles_or_count):
    """Wait until the list is so long, or shows these titles."""

    def shown():
        if isinstance(titles_or_count, int):
            return len(page.rows) == titles_or_count
        return [row.title for row in page.rows] == titles_or_count

    qtbot.waitUntil(shown, timeout=WAIT)


def pick(page, **wanted):
    at = next(
        i for i, row in enumerate(page.rows)
        if all(getattr(row, name) == value for name, value in wanted.items())
    )  # fmt: skip
    page.table.pick(at)
