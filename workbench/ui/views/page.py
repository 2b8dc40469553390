"""What the teaching views share: they work only while they are seen, behind the interface."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import partial
from typing import Generic, TypeVar

from PySide6.QtCore import QEvent, QModelIndex, QPersistentModelIndex, Qt, QTimer, Signal
from PySide6.QtGui import QHideEvent, QResizeEvent, QShowEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QStackedLayout,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)

from workbench.fingering.types import Fingering
from workbench.language.speech import say
from workbench.teaching.lessons.lesson import Lesson
from workbench.ui.bench.findings import LANE, Findings
from workbench.ui.bench.jobs import Progress
from workbench.ui.bench.session import Session
from workbench.ui.kit.chart import STEP
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Scrolled, Words

Found = TypeVar("Found")
# Put together once: long tables have thousands of cells.
READ_ONLY = Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable
TOP = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop
MIDDLE = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter


@dataclass(frozen=True)
class Filling(Generic[Found]):
    """How a view is filled: its ``kind`` among the jobs, ``label`` for the status line,
    ``work`` readied for a lesson and done behind the interface, and what shows its result."""

    kind: str
    label: str
    work: Callable[[Lesson, Fingering], Callable[[Progress], Found]]
    show: Callable[[Lesson, Found], None]


class TeachingPage(QWidget):
    """A view that is worked out anew, as ``filling`` says, when it is seen and the lesson
    has changed.

    ``body`` holds the view itself, in front of which one sentence stands while there is
    nothing to show.
    """

    shown = Signal()  # what was asked for last is on the screen

    def __init__(
        self,
        session: Session,
        findings: Findings,
        filling: Filling[Found],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.session, self.findings = session, findings
        self._kind, self._label = filling.kind, filling.label
        self._fill = partial(self._start, filling)
        self._stale = True
        self.body = QWidget()
        self.sentence = Words()
        self.sentence.setWordWrap(True)
        self.sentence.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.sentence.setMargin(em(self, 1))
        self._stack = QStackedLayout(self)
        self._stack.addWidget(self.sentence)
        self._area = Scrolled(self.body, say("The whole view"), across=True)
        self._stack.addWidget(self._area)
        for signal in (session.opened, session.changed, session.fingers.fingered):
            signal.connect(self.ask)

    def ask(self) -> None:
        """Work the view out anew, now or when it is seen next."""
        self._stale = True
        if not self.isVisible():
            return
        lesson, fingering = self.session.lesson, self.session.fingers.fingering
        self.session.jobs.cancel(self._kind)
        if lesson is None or fingering is None:
            self.say(
                say("No lesson is open.")
                if lesson is None
                else say("The fingering is being worked out …")
            )
            return
        if self._stack.currentWidget() is not self._area:
            self.say(f"{self._label} …")
        self._fill(lesson, fingering)

    def _start(self, filling: Filling[Found], lesson: Lesson, fingering: Fingering) -> None:
        def done(found: Found) -> None:
            if self.session.lesson is lesson:
                self._stale = False
                filling.show(lesson, found)
                self._stack.setCurrentWidget(self._area)
                self.shown.emit()

        work = filling.work(lesson, fingering)
        self.session.jobs.start(filling.kind, filling.label, work, done, lane=LANE, wrong=self.say)

    def say(self, words: str) -> None:
        """Show one sentence instead of the view."""
        self.sentence.setText(words)
        self._stack.setCurrentWidget(self.sentence)

    def changeEvent(self, event: QEvent) -> None:
        """Other colours or another text size: what was filled in has to follow."""
        super().changeEvent(event)
        if event.type() in (QEvent.Type.PaletteChange, QEvent.Type.FontChange):
            self.ask()

    def hideEvent(self, event: QHideEvent) -> None:
        """What nobody looks at any more does not keep the next view waiting."""
        super().hideEvent(event)
        if self._stale:
            self.session.jobs.cancel(self._kind)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self._stale:
            self.ask()


class ChartPage(TeachingPage):
    """A view with charts, which are drawn anew, a moment later, where its width has changed."""

    def __init__(
        self,
        session: Session,
        findings: Findings,
        filling: Filling[Found],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(session, findings, filling, parent)
        self.drawn_width = 0  # set where the work is made ready
        self._redraw = QTimer(self)
        self._redraw.setSingleShot(True)
        self._redraw.setInterval(250)
        self._redraw.timeout.connect(self.ask)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self.drawn_width and abs(self.width() - self.drawn_width) >= STEP:
            self._stale = True
            self._redraw.start()


class RowDelegate(QStyledItemDelegate):
    """Draws no frame around the one cell with the focus: the whole row is selected, and
    the frame would dim its words."""

    def initStyleOption(
        self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        super().initStyleOption(option, index)
        option.state &= ~QStyle.StateFlag.State_HasFocus


class QuietTable(QTableWidget):
    """A table to read: whole rows, wrapped words, no grid. Its rows are as high as their
    words; a row that spans all columns is a heading. ``shares`` gives columns a part of
    the width, in per cent."""

    def __init__(self, columns: tuple[str, ...], name: str, shares: dict[int, int]) -> None:
        super().__init__(0, len(columns))
        self._shares = shares
        self.setAccessibleName(name)
        self.setHorizontalHeaderLabels(list(columns))
        self.horizontalHeader().setDefaultAlignment(Qt.AlignmentFlag.AlignLeft)
        self.horizontalHeader().setHighlightSections(False)
        self.verticalHeader().hide()
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setTabKeyNavigation(False)
        self.setShowGrid(False)
        self.setWordWrap(True)
        self.setItemDelegate(RowDelegate(self))
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(0)
        self._soon.timeout.connect(self.fit)

    def fit_soon(self) -> None:
        """Fit the rows once the columns have found their widths."""
        self._soon.start()

    def fit(self) -> None:
        """Give every row the height of its words and a little air."""
        self.verticalHeader().setMinimumSectionSize(em(self, 1))
        for column, share in self._shares.items():
            self.setColumnWidth(column, self.viewport().width() * share // 100)
        for row in range(self.rowCount()):
            self.fit_row(row)
        here = self.currentItem()
        if here is not None:
            self.scrollToItem(here)

    def fit_row(self, row: int) -> None:
        """Fit one row."""
        if self.columnSpan(row, 0) > 1:
            self.setRowHeight(row, em(self, 1.7))
            return
        self.resizeRowToContents(row)
        self.setRowHeight(row, self.rowHeight(row) + em(self, 0.35))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.fit_soon()


def cell(words: str, *, bold: bool = False) -> QTableWidgetItem:
    """A cell to read, its words at the top; a heading's in the middle."""
    item = QTableWidgetItem(words)
    item.setFlags(READ_ONLY)
    item.setTextAlignment(MIDDLE if bold else TOP)
    if bold:
        font = item.font()
        font.setBold(True)
        item.setFont(font)
    return item
