"""Difficulty and likeness of the bars, worked out behind the interface."""

from __future__ import annotations

from PySide6.QtCore import QObject, Signal

from workbench.fingering.types import Fingering
from workbench.language.speech import say
from workbench.teaching.bars.likeness import likenesses
from workbench.teaching.bars.measure import measure_bars
from workbench.teaching.grading.grade import bar_scores
from workbench.teaching.lessons.bar_rows import BarFacts
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.lessons.playing import playing_of
from workbench.ui.bench.jobs import Progress
from workbench.ui.bench.session import Session

KIND = "bar facts"


def facts_of(lesson: Lesson, fingering: Fingering | None) -> dict[int, BarFacts]:
    """The facts of every written bar; without a fingering only what its music is like."""
    piece = lesson.piece
    scores: dict[int, float] = {}
    if fingering is not None:
        measures = measure_bars(piece, fingering, *playing_of(lesson))
        scores = {i: s for i, s in bar_scores(measures).items() if piece.bars[i].notes}
    most = max(scores.values(), default=0.0) or 1.0
    return {
        bar.index: BarFacts(
            scores.get(bar.index),
            scores.get(bar.index, 0.0) / most,
            like,
            piece.bars[like.bar].number if like else "",
        )
        for bar, like in zip(piece.bars, likenesses(piece, fingering), strict=True)
    }


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
