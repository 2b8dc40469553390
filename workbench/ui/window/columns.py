"""How the parts of the window stand: in three columns, or one at a time where text is large
and the window small."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QByteArray, Qt
from PySide6.QtWidgets import QSplitter, QTabWidget, QWidget

from workbench.language.speech import say
from workbench.ui.kit.look import em
from workbench.ui.window.teaching_tabs import TeachingTabs

FRAME = 4  # pixels around a tab
THREE = 52  # em of width that three columns need with nothing cut


@dataclass(frozen=True)
class Parts:
    """What is moved: title, bars at the left, the tabs of the middle with the fretboard
    (``below``) in the splitter ``middle``, and at the right ``bar_side`` and the whole lesson as
    tabs of ``side``; the three stand in ``across``."""

    title: QWidget
    bars: QWidget
    below: QWidget
    bar_side: QSplitter
    lesson: QWidget
    teaching: TeachingTabs
    side: QTabWidget
    middle: QSplitter
    across: QSplitter

    @property
    def splitters(self) -> dict[str, QSplitter]:
        """Those that lay out the three columns."""
        return {"across": self.across, "middle": self.middle, "bar_side": self.bar_side}


class Columns:
    """Puts bars, fretboard and the right side among the tabs of the middle while the window
    is narrow, and back where they were when it is wide again.

    ``states`` and ``side`` are the splitters' sizes and the right side's tab in three columns,
    kept while there is one.
    """

    def __init__(self, parts: Parts) -> None:
        self._parts = parts
        self.narrow = False
        self.states: dict[str, QByteArray] = {}
        self.side = 0

    def fit(self, width: int) -> None:
        """Choose by the window's width in pixels, measured in the text's height."""
        parts = self._parts
        narrow = width < em(parts.across, THREE)
        if narrow != self.narrow:
            self._turn(narrow)
        self._space_tabs(width)

    def _turn(self, narrow: bool) -> None:
        parts = self._parts
        shown = parts.teaching.currentWidget()
        if narrow:
            self._one_at_a_time()
        else:
            self._side_by_side()
        if parts.teaching.indexOf(shown) >= 0:
            parts.teaching.setCurrentWidget(shown)
        bar, plan = parts.teaching.tabBar(), parts.teaching.plan
        parts.teaching.setTabText(
            parts.teaching.indexOf(plan), say("Plan") if narrow else say("Practice plan")
        )
        bar.setUsesScrollButtons(not narrow)
        bar.setElideMode(Qt.TextElideMode.ElideRight if narrow else Qt.TextElideMode.ElideNone)
        for at in range(bar.count()):
            bar.setTabToolTip(at, bar.tabText(at) if narrow else "")

    def _space_tabs(self, width: int) -> None:
        """Many tabs share what the words leave of the width."""
        bar, style = self._parts.teaching.tabBar(), ""
        if self.narrow:
            words = sum(bar.fontMetrics().horizontalAdvance(bar.tabText(at)) + FRAME
                        for at in range(bar.count()))  # fmt: skip
            free = (width - em(bar) - words) // (2 * bar.count())
            style = f"QTabBar::tab {{ padding: 4px {max(1, min(em(bar, 0.6), free))}px; }}"
        if bar.styleSheet() != style:
            bar.setStyleSheet(style)

    def _one_at_a_time(self) -> None:
        parts, tabs = self._parts, self._parts.teaching
        self.states = {name: s.saveState() for name, s in parts.splitters.items()}
        self.side = parts.side.currentIndex()
        self.narrow = True
        parts.title.hide()
        parts.side.hide()
        parts.bar_side.setOrientation(Qt.Orientation.Horizontal)
        tabbed = (
            (parts.bars, say("Bars")),
            (parts.below, say("Fretboard")),
            (parts.bar_side, say("This bar")),
            (parts.lesson, say("Lesson")),
        )
        for at, (part, name) in enumerate(tabbed, 1):
            tabs.insertTab(at, part, name)
        parts.bar_side.setSizes([1000, 1000])

    def _side_by_side(self) -> None:
        parts, tabs = self._parts, self._parts.teaching
        for part in (parts.bars, parts.below, parts.bar_side, parts.lesson):
            tabs.removeTab(tabs.indexOf(part))
        parts.bar_side.setOrientation(Qt.Orientation.Vertical)
        parts.across.insertWidget(0, parts.bars)
        parts.middle.addWidget(parts.below)
        parts.side.addTab(parts.bar_side, say("This bar"))
        parts.side.addTab(parts.lesson, say("Whole lesson"))
        parts.side.setCurrentIndex(self.side)
        for shown in (parts.title, parts.bars, parts.below, parts.side):
            shown.show()
        self.narrow = False
        for name, splitter in parts.splitters.items():
            splitter.restoreState(self.states[name])


def reveal(part: QWidget) -> None:
    """Turn every tab in which a part lies to it."""
    chain = [part]
    while (outer := chain[-1].parentWidget()) is not None:
        chain.append(outer)
    for tabs in chain:
        if isinstance(tabs, QTabWidget):
            page = next((inner for inner in chain if tabs.indexOf(inner) >= 0), None)
            if page is not None:
                tabs.setCurrentWidget(page)
