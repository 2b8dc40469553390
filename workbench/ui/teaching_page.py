"""What the teaching views share: they work only while they are seen, behind the interface."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QLabel,
    QStackedLayout,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)

from workbench.fingering.types import Fingering
from workbench.teaching.lesson import Lesson
from workbench.ui.findings import LANE, Findings
from workbench.ui.jobs import Progress
from workbench.ui.look import em
from workbench.ui.session import Session


class TeachingPage(QWidget):
    """A view that is worked out anew when it is seen and the lesson has changed.

    ``body`` holds the view itself, in front of which one sentence stands while there is
    nothing to show.
    """

    shown = Signal()  # what was asked for last is on the screen

    def __init__(
        self, session: Session, findings: Findings, kind: str, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.session, self.findings = session, findings
        self._kind = kind
        self._stale = True
        self.body = QWidget()
        self.sentence = QLabel()
        self.sentence.setWordWrap(True)
        self.sentence.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.sentence.setMargin(em(self, 1))
        self._stack = QStackedLayout(self)
        self._stack.addWidget(self.sentence)
        self._stack.addWidget(self.body)
        for signal in (session.opened, session.changed, session.fingered):
            signal.connect(self.ask)

    def ask(self) -> None:
        """Work the view out anew, now or when it is seen next."""
        self._stale = True
        if not self.isVisible():
            return
        lesson, fingering = self.session.lesson, self.session.fingering
        self.session.jobs.cancel(self._kind)
        if lesson is None or fingering is None:
            self.say(
                "No lesson is open." if lesson is None else "The fingering is being worked out …"
            )
            return
        self._stale = False

        def done(found: Any) -> None:
            if self.session.lesson is lesson:
                self.show_found(lesson, found)
                self._stack.setCurrentWidget(self.body)
                self.shown.emit()

        self.session.jobs.start(
            self._kind, self.label, self.work(lesson, fingering), done, lane=LANE, wrong=self.say
        )

    @property
    def label(self) -> str:
        """What is being done, for the status line."""
        raise NotImplementedError

    def work(self, lesson: Lesson, fingering: Fingering) -> Callable[[Progress], Any]:
        """What to do behind the interface."""
        raise NotImplementedError

    def show_found(self, lesson: Lesson, found: Any) -> None:
        """Show what was found."""
        raise NotImplementedError

    def say(self, words: str) -> None:
        """Show one sentence instead of the view."""
        self.sentence.setText(words)
        self._stack.setCurrentWidget(self.sentence)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self._stale:
            self.ask()


def quiet_table(columns: tuple[str, ...], name: str) -> QTableWidget:
    """A table to read: whole rows, wrapped words, no grid."""
    table = QTableWidget(0, len(columns))
    table.setAccessibleName(name)
    table.setHorizontalHeaderLabels(list(columns))
    table.horizontalHeader().setDefaultAlignment(Qt.AlignmentFlag.AlignLeft)
    table.horizontalHeader().setHighlightSections(False)
    table.verticalHeader().hide()
    table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
    table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
    table.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
    table.setTabKeyNavigation(False)
    table.setShowGrid(False)
    table.setWordWrap(True)
    return table


def cell(words: str, *, bold: bool = False, right: bool = False) -> QTableWidgetItem:
    """A cell to read, its words at the top."""
    item = QTableWidgetItem(words)
    item.setFlags(Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable)
    side = Qt.AlignmentFlag.AlignRight if right else Qt.AlignmentFlag.AlignLeft
    item.setTextAlignment(side | Qt.AlignmentFlag.AlignTop)
    if bold:
        font = item.font()
        font.setBold(True)
        item.setFont(font)
    return item
