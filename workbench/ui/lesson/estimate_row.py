"""The program's estimate of the grade beside the teacher's own, in the lesson's fields."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QWidget

from workbench.language.speech import say
from workbench.store.grading import printed_grade
from workbench.teaching.grading.grade import Grade, shown_grade, unchanged_in_print
from workbench.teaching.lessons.lesson import Lesson
from workbench.ui.bench.findings import LANE, Findings
from workbench.ui.bench.session import Session
from workbench.ui.kit.parts import Faint


def with_grade(lesson: Lesson, grade: Grade) -> Lesson:
    """The lesson with that grade as the teacher's word."""
    return replace(lesson, grade=grade.number, grade_level=grade.level)


class EstimateRow(QWidget):
    """Says what the estimate is, and takes it as the teacher's word. Works only while it
    is seen, behind the interface; ``watch`` gives it where to ask."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._findings: Findings | None = None
        self.estimate: Grade | None = None
        self.words = Faint()
        self.take_button = QPushButton(say("Take it"))
        self.take_button.setAccessibleName(say("Take the estimate as my word"))
        self.take_button.setToolTip(say("Take the estimate as your own grade of this lesson"))
        self.take_button.clicked.connect(self._take)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.words, 1)
        layout.addWidget(self.take_button)
        self._show()
        for signal in (session.opened, session.changed, session.fingers.fingered):
            signal.connect(self.ask)

    def watch(self, findings: Findings) -> None:
        """Ask there for the estimate from now on."""
        self._findings = findings
        self.ask()

    def ask(self) -> None:
        """Look anew, now or when it is seen next."""
        self.estimate = None
        lesson, fingering, findings = (
            self._session.lesson, self._session.fingers.fingering, self._findings,
        )  # fmt: skip
        if lesson is None or fingering is None or findings is None or not self.isVisible():
            self._show()
            return

        shelf = self._session.shelf

        def work(_: object) -> tuple[Grade, Grade | None]:
            estimate = findings.analysis(lesson, fingering).estimate
            return estimate, printed_grade(shelf, lesson.id)

        def done(found: tuple[Grade, Grade | None]) -> None:
            if self._session.lesson is lesson:
                self.estimate = found[0]
                self._show(found[1])

        self._session.jobs.start(
            "estimate", say("Judging the grade"), work, done, lane=LANE, wrong=self.words.setText
        )

    def _show(self, printed: Grade | None = None) -> None:
        lesson, estimate = self._session.lesson, self.estimate
        if lesson is None or estimate is None:
            self.words.setText(say("Estimate: …"))
            self.take_button.setEnabled(False)
            return
        said = say("Estimate: {grade}.", grade=estimate.words)
        now = shown_grade(lesson, estimate)
        if printed is not None and unchanged_in_print(printed, now) is not None:
            said = f"{said} {say('The handout says {grade}.', grade=printed.words)}"
        self.words.setText(said)
        same = (lesson.grade, lesson.grade_level) == (estimate.number, estimate.level)
        self.take_button.setEnabled(not same)

    def _take(self) -> None:
        estimate = self.estimate
        if estimate is not None:
            label = say("Take the estimate as my word")
            self._session.edit(label, lambda lesson: with_grade(lesson, estimate))

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self.estimate is None:
            self.ask()
