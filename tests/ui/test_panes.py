"""Panes lay out anew when a pane needs other room, and only then."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtWidgets import QApplication, QLabel, QTabWidget, QVBoxLayout, QWidget

from workbench.ui.kit.panes import Panes


class _Asked(QObject):
    """Counts how often a widget is asked to lay itself out."""

    def __init__(self, widget: QWidget) -> None:
        super().__init__()
        self.widget, self.times = widget, 0
        widget.installEventFilter(self)

    def eventFilter(self, _watched: QObject, event: QEvent) -> bool:
        self.times += event.type() == QEvent.Type.LayoutRequest
        return False


def _settle() -> None:
    for _ in range(5):  # a layout asks for the next one out of its own event
        QApplication.processEvents()


def _panes(qtbot) -> tuple[Panes, QLabel, QWidget, _Asked]:
    """Panes in a tab, the upper with a word in it; and what the tab is asked."""
    tabs, panes, upper, lower = QTabWidget(), Panes(Qt.Orientation.Vertical), QWidget(), QWidget()
    word = QLabel("before")
    lower.setMinimumWidth(200)
    QVBoxLayout(upper).addWidget(word)
    panes.addWidget(upper)
    panes.addWidget(lower)
    panes.setChildrenCollapsible(False)
    tabs.addTab(panes, "Tab")
    qtbot.addWidget(tabs)
    tabs.resize(400, 300)
    tabs.show()
    qtbot.waitExposed(tabs)
    word.setText("first")  # from here on it is known what the panes need
    _settle()
    return panes, word, upper, _Asked(tabs)


def test_another_word_in_a_pane_is_no_matter_of_what_is_around(qtbot) -> None:
    panes, word, _, asked = _panes(qtbot)
    word.setMinimumWidth(100)
    _settle()
    asked.times = 0
    word.setText("after")
    _settle()
    assert asked.times == 0
    assert word.text() == "after" and panes.widget(0).height() > 0


def test_a_pane_that_needs_more_room_gets_it(qtbot) -> None:
    panes, _, upper, asked = _panes(qtbot)
    panes.setSizes([60, 240])
    _settle()
    before, asked.times = upper.height(), 0
    upper.setMinimumHeight(before + 50)
    _settle()
    assert upper.height() == before + 50
    assert asked.times > 0


def test_a_hidden_pane_leaves_its_room_to_the_other(qtbot) -> None:
    panes, _, upper, _ = _panes(qtbot)
    upper.hide()
    _settle()
    assert panes.widget(1).height() == panes.height()
    upper.show()
    _settle()
    assert 0 < upper.height() < panes.height()
