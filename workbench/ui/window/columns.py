"""How the parts of the window stand: in three columns, or one at a time where text is large
and the window small."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QByteArray, Qt
from PySide6.QtWidgets import QTabWidget, QWidget

from workbench.language.speech import say
from workbench.ui.kit.look import em

if TYPE_CHECKING:
    from workbench.ui.window.panels import Panels

FRAME = 4  # pixels around a tab
THREE = 52  # em of width that three columns need with nothing cut


class Columns:
    """Puts bars, fretboard and the right side among the tabs of the middle while the window
    is narrow, and back where they were when it is wide again.

    ``states`` and ``side`` are the splitters' sizes and the right side's tab in three columns,
    kept while there is one.
    """

    def __init__(self, panels: Panels) -> None:
        self._panels = panels
        self.narrow = False
        self.states: dict[str, QByteArray] = {}
        self.side = 0

    def fit(self, width: int) -> None:
        """Choose by the window's width in pixels, measured in the text's height."""
        panels = self._panels
        narrow = width < em(panels, THREE)
        if narrow != self.narrow:
            self._turn(narrow)
        self._space_tabs(width)

    def _turn(self, narrow: bool) -> None:
        panels = self._panels
        shown = panels.teaching.currentWidget()
        if narrow:
            self._one_at_a_time()
        else:
            self._side_by_side()
        if panels.teaching.indexOf(shown) >= 0:
            panels.teaching.setCurrentWidget(shown)
        bar, plan = panels.teaching.tabBar(), panels.teaching.plan
        panels.teaching.setTabText(
            panels.teaching.indexOf(plan), say("Plan") if narrow else say("Practice plan")
        )
        bar.setUsesScrollButtons(not narrow)
        bar.setElideMode(Qt.TextElideMode.ElideRight if narrow else Qt.TextElideMode.ElideNone)
        for at in range(bar.count()):
            bar.setTabToolTip(at, bar.tabText(at) if narrow else "")

    def _space_tabs(self, width: int) -> None:
        """Many tabs share what the words leave of the width."""
        bar, style = self._panels.teaching.tabBar(), ""
        if self.narrow:
            words = sum(bar.fontMetrics().horizontalAdvance(bar.tabText(at)) + FRAME
                        for at in range(bar.count()))  # fmt: skip
            free = (width - em(self._panels) - words) // (2 * bar.count())
            style = f"QTabBar::tab {{ padding: 4px {max(1, min(em(self._panels, 0.6), free))}px; }}"
        if bar.styleSheet() != style:
            bar.setStyleSheet(style)

    def _one_at_a_time(self) -> None:
        panels, tabs = self._panels, self._panels.teaching
        self.states = {name: s.saveState() for name, s in panels.columned.items()}
        self.side = panels.side.currentIndex()
        self.narrow = True
        panels.title.hide()
        panels.side.hide()
        panels.bar_side.setOrientation(Qt.Orientation.Horizontal)
        parts = (
            (panels.bars, say("Bars")),
            (panels.below, say("Fretboard")),
            (panels.bar_side, say("This bar")),
            (panels.lesson_panel, say("Lesson")),
        )
        for at, (part, name) in enumerate(parts, 1):
            tabs.insertTab(at, part, name)
        panels.bar_side.setSizes([1000, 1000])

    def _side_by_side(self) -> None:
        panels, tabs = self._panels, self._panels.teaching
        for part in (panels.bars, panels.below, panels.bar_side, panels.lesson_panel):
            tabs.removeTab(tabs.indexOf(part))
        panels.bar_side.setOrientation(Qt.Orientation.Vertical)
        panels.across.insertWidget(0, panels.bars)
        panels.middle.addWidget(panels.below)
        panels.side.addTab(panels.bar_side, say("This bar"))
        panels.side.addTab(panels.lesson_panel, say("Whole lesson"))
        panels.side.setCurrentIndex(self.side)
        for shown in (panels.title, panels.bars, panels.below, panels.side):
            shown.show()
        self.narrow = False
        for name, splitter in panels.columned.items():
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
