"""Every dialog of the window, found by itself: names, keys, labels and a page of the help."""

from __future__ import annotations

import importlib
import inspect
import pkgutil
import re
from dataclasses import replace
from types import SimpleNamespace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QAbstractSlider,
    QAbstractSpinBox,
    QApplication,
    QComboBox,
    QDialog,
    QFormLayout,
    QGroupBox,
    QHeaderView,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
    QRadioButton,
    QScrollArea,
    QScrollBar,
    QTabBar,
    QTabWidget,
    QTextEdit,
    QWidget,
)

import workbench.ui
from tests.ui.conftest import WAIT, settle
from workbench.fingering.learning.preferences import Fit
from workbench.handout.options import HandoutOptions
from workbench.teaching.lessons.demo import demo_folder, demo_lesson
from workbench.ui.bench.keeper import Meeting
from workbench.ui.bench.services import Services
from workbench.ui.choices.compare_dialog import Compared
from workbench.ui.help.topics import FOLDER, START, TOPICS, topic_of, topic_of_class
from workbench.ui.paper.export_dialog import Form
from workbench.ui.paper.printing import compose
from workbench.ui.views.script.reading_keys import PedalKeys

INTERACTIVE = (
    QAbstractButton, QLineEdit, QComboBox, QAbstractSpinBox, QAbstractItemView, QAbstractSlider,
    QPlainTextEdit, QTextEdit, QTabBar,
)  # fmt: skip
INNER = (QComboBox, QAbstractSpinBox, QAbstractItemView, QLineEdit, QTabBar)


def dialogs_of_the_window():
    """Every class of a dialog in the modules of the window, by its name."""
    found = {}
    for module in pkgutil.walk_packages(workbench.ui.__path__, "workbench.ui."):
        for name, kind in vars(importlib.import_module(module.name)).items():
            ours = getattr(kind, "__module__", "").startswith("workbench.ui")
            if ours and inspect.isclass(kind) and issubclass(kind, QDialog):
                found[name] = kind
    return found


DIALOGS = dialogs_of_the_window()
BASES = {base for kind in DIALOGS.values() for base in kind.__mro__[1:]}
CONCRETE = sorted(name for name, kind in DIALOGS.items() if kind not in BASES)


@pytest.fixture
def demo_window(qtbot, open_window):
    """A window with a lesson of the demo shelf."""
    lesson = demo_lesson(demo_folder(), "pebble-path")
    window = open_window(Services(demo=lambda: (lesson,)))
    settle(qtbot, window)
    window.session.selection.select(2)
    settle(qtbot, window)
    return window


def met(session):
    """The keeper of a lesson that another window has changed in the same place."""
    mine = session.lesson
    meeting = Meeting(replace(mine, title="Mine"), "Title", replace(mine, title="Theirs"), 1)
    return SimpleNamespace(meeting=meeting, settle=lambda choice: None)


def made(kind, window):
    """A dialog of that class: what it needs is told by the names of its parameters."""
    session = window.session
    hands, lesson, fingering = session.fingers.bar_hands, session.lesson, session.fingers.fingering
    given = {
        "session": lambda: session,
        "parent": lambda: window,
        "window": lambda: window,
        "host": lambda: window,
        "menus": window.menuBar,
        "conductor": lambda: window.conductor,
        "piece": lambda: lesson.piece,
        "source": lambda: lesson.piece,
        "lesson": lambda: lesson,
        "fingering": lambda: fingering,
        "path": lambda: "",
        "left": lambda: (),
        "keeper": lambda: met(session),
        "sentence": lambda: "The store cannot be opened.",
        "place": lambda: session.shelf.place,
        "now": lambda: session.hand,
        "grip": lambda: None,
        "hands": lambda: hands,
        "rejected": lambda: (),
        "why": lambda: "",
        "keys": lambda: PedalKeys(None),
        "what": lambda: "script",
        "forms": lambda: (Form(".md", "Markdown", str),),
        "found": lambda: Fit((), (), 3, 1, 2, 1, ()),
        "sides": lambda: (Compared(hands, "One"), Compared(hands, "Two", "why", "&Take it")),
        "handout": lambda: compose(lesson, fingering, HandoutOptions(), session.shelf),
    }
    needed = [
        name for name, one in inspect.signature(kind).parameters.items()
        if one.default is inspect.Parameter.empty or name == "parent"
    ]  # fmt: skip
    unknown = [name for name in needed if name not in given]
    assert not unknown, f"{kind.__name__} needs {unknown}: tell how to make it"
    return kind(**{name: given[name]() for name in needed})


def controls(top):
    """What one can act upon, inner parts of a control left out."""
    for widget in top.findChildren(QWidget):
        own = widget.focusPolicy() & Qt.FocusPolicy.TabFocus and not widget.focusProxy()
        if not (isinstance(widget, INTERACTIVE) or own):
            continue
        if isinstance(widget, QScrollBar | QHeaderView) or _is_inner(widget, top):
            continue
        if widget.window() is not top:
            continue
        yield widget


def _is_inner(widget, top):
    if widget.objectName().startswith("qt_"):
        return True
    around = widget.parentWidget()
    while around is not None and around is not top:
        if isinstance(around, INNER):
            return True
        around = around.parentWidget()
    return False


def called(widget):
    named = f"{type(widget).__name__} '{widget.accessibleName() or getattr(widget, 'text', str)()}'"
    return f"{named} in {type(widget.parentWidget()).__name__}"


def has_name(widget):
    face = QAccessible.queryAccessibleInterface(widget)
    return face is not None and face.text(QAccessible.Text.Name).strip()


def has_words(widget, top):
    """Words that can be seen: on it, beside it, above it or in its tooltip."""
    if widget.toolTip() or getattr(widget, "placeholderText", str)():
        return True
    if isinstance(widget, QAbstractButton) and widget.text():
        return True
    if isinstance(widget, QTabBar):
        return all(widget.tabText(at) for at in range(widget.count()))
    if any(label.buddy() is widget for label in top.findChildren(QLabel)):
        return True
    around = widget
    while around is not None and around is not top:
        holder = around.parentWidget()
        layouts = [holder.layout(), *holder.findChildren(QFormLayout)] if holder else []
        for layout in layouts:
            if isinstance(layout, QFormLayout) and layout.labelForField(around):
                return True
        if isinstance(around, QGroupBox) and around.title():
            return True
        around = holder
    return _name_in_sight(widget, top)


def _name_in_sight(widget, top):
    """What labels it in sight is part of its name (W3C, Web Content Accessibility
    Guidelines 2.1, 2.5.3): the title of the dialog, of the tab or of the part around."""
    name, titles, around = _words(widget.accessibleName()), [top.windowTitle()], widget
    for _ in range(4):
        holder = around.parentWidget()
        if isinstance(holder, QWidget) and isinstance(holder.parentWidget(), QScrollArea):
            around = holder.parentWidget()  # scrolling is not seen as a part of its own
            holder = around.parentWidget()
        if holder is None:
            break
        if isinstance(holder.parentWidget(), QTabWidget):
            tabs = holder.parentWidget()
            titles.append(tabs.tabText(tabs.indexOf(around)))
        direct = Qt.FindChildOption.FindDirectChildrenOnly
        labels = holder.findChildren(QLabel, options=direct)
        titles += [label.text() for label in labels if not label.isHidden()]
        around = holder
    return any(name & _words(title) for title in titles)


def _words(text):
    return {word for word in re.findall(r"\w+", text.replace("&", "").lower()) if len(word) > 3}


def tab_round(qtbot, top):
    """The controls that the Tab key reaches, and those that keep it to themselves."""
    with qtbot.waitActive(top):
        top.activateWindow()
    reached, traps = [], []
    parts = [part for part in controls(top) if part.isVisible() and part.isEnabled()]
    qtbot.waitUntil(lambda: QApplication.activeWindow() is top, timeout=WAIT)
    (top.focusWidget() or parts[0]).setFocus()
    qtbot.waitUntil(lambda: top.isAncestorOf(QApplication.focusWidget() or top), timeout=WAIT)
    assert QApplication.focusWidget(), top
    here = QApplication.focusWidget()
    while here is not None and here not in reached:
        reached.append(here)
        QTest.keyClick(here, Qt.Key.Key_Tab)
        after = QApplication.focusWidget()
        if after is here and len(parts) > 1:
            traps.append(called(here))
            top.focusNextPrevChild(True)
            after = QApplication.focusWidget()
        here = after
    return reached, traps


def faults(qtbot, top):
    """What is wrong with the controls of a window or dialog, a sentence each."""
    found = []
    parts = list(controls(top))
    assert parts
    for widget in parts:
        if not has_name(widget):
            found.append(f"no name: {called(widget)}")
        if not widget.focusPolicy() & Qt.FocusPolicy.TabFocus and not widget.focusProxy():
            found.append(f"no Tab: {called(widget)}")
        if isinstance(widget, INTERACTIVE) and not has_words(widget, top):
            found.append(f"no words: {called(widget)}")
    reached, traps = tab_round(qtbot, top)
    found += [f"keeps Tab: {trap}" for trap in traps]
    for widget in parts:
        proxy = widget.focusProxy() or widget
        plain = not isinstance(widget, QRadioButton)  # of a group the ticked one; arrows go on
        if widget.isVisible() and widget.isEnabled() and plain and proxy not in reached:
            found.append(f"not reached: {called(widget)}")
    return found


def test_every_control_of_the_window_can_be_used_by_everybody(qtbot, demo_window):
    window = demo_window
    found = []
    for side in range(window.side.count()):
        window.side.setCurrentIndex(side)
        for view in range(window.teaching.count()):
            window.teaching.setCurrentIndex(view)
            settle(qtbot, window)
            found += faults(qtbot, window)
    assert not found, "\n".join(sorted(set(found)))


def test_every_control_of_every_dialog_can_be_used_by_everybody(qtbot, demo_window):
    window, found = demo_window, []
    for name in CONCRETE:
        dialog = made(DIALOGS[name], window)
        dialog.show()
        qtbot.waitUntil(lambda: window.session.jobs.idle, timeout=WAIT)
        if not dialog.accessibleName() or not dialog.windowTitle():
            found.append(f"{name}: no title")
        found += [f"{name}: {fault}" for fault in faults(qtbot, dialog)]
        dialog.close()
        qtbot.waitUntil(lambda: window.session.jobs.idle, timeout=WAIT)
    assert not found, "\n".join(found)


@pytest.mark.parametrize("name", CONCRETE)
def test_every_dialog_has_a_page_of_the_help(name):
    topics = [topic_of_class(base.__name__) for base in DIALOGS[name].__mro__]
    topic = next((one for one in topics if one), None)
    assert topic is not None
    for code in ("en", "de"):
        assert (FOLDER / code / f"{topic}.md").is_file()


def test_every_panel_of_the_window_has_a_page_of_the_help(demo_window):
    window = demo_window
    panels = [
        window.bars, window.score, window.neck, window.panels.legend, window.notes, window.choices,
        window.lesson_panel, *(window.teaching.widget(at) for at in range(1, 5)),
    ]  # fmt: skip
    for panel in panels:
        assert topic_of(panel) != START, type(panel).__name__


def test_no_topic_names_a_class_that_is_not_there():
    there = set()
    for module in pkgutil.walk_packages(workbench.ui.__path__, "workbench.ui."):
        there |= set(vars(importlib.import_module(module.name)))
    assert {name for names in TOPICS.values() for name in names} - there == set()
