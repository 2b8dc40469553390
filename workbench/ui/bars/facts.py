"""Difficulty and likeness of the bars, worked out behind the interface."""

from __future__ import annotations

from PySide6.QtCore import QObject, Signal

from workbench.language.speech import say
from workbench.teaching.grading.bar_facts import facts_of
from workbench.teaching.lessons.bar_rows import BarFacts
from workbench.ui.bench.jobs import Progress
from workbench.ui.bench.session import Session

KIND = "bar facts"


class BarFinder(QObject):
    """Keeps the facts of the open lesson's bars; ``found`` tells when there are new ones."""

    found = Signal()

    def __init__(self, session: Session, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._piece: object = None
        self.facts: dict[int, BarFacts] = {}
        session.opened.connect(self.ask)
        session.fingers.fingered.connect(self.ask)

    def ask(self) -> None:
        """Measure the bars anew, in the background."""
        lesson, fingering = self._session.lesson, self._session.fingers.fingering
        if lesson is None or lesson.piece is not self._piece:
            self.facts = {}
            self._piece = lesson.piece if lesson else None
        if lesson is None:
            return

        def work(_progress: Progress) -> dict[int, BarFacts]:
            return facts_of(lesson, fingering)

        def done(facts: dict[int, BarFacts]) -> None:
            here = self._session.lesson
            if here is not None and here.piece is lesson.piece:
                self.facts = facts
                self.found.emit()

        self._session.jobs.start(KIND, say("Measuring the bars"), work, done, lane="bars")
