"""The grade with what speaks for it: evidence, hardest bars, and charts along the bars."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from workbench.engraving.charts.kit import Chart
from workbench.fingering.types import Fingering
from workbench.language.speech import say
from workbench.store.grading import printed_grade, remember_printed
from workbench.teaching.grading.grade import (
    Grade,
    evidence,
    hard_bar_in_words,
    place_of,
    shipped_model,
    shown_grade,
    unchanged_in_print,
)
from workbench.teaching.lessons.lesson import Lesson
from workbench.ui.bench.findings import Analysis, Findings
from workbench.ui.bench.jobs import Progress
from workbench.ui.bench.session import Session
from workbench.ui.kit.chart import ChartBox, form_of
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Faint, Heading, Scrolled, Wrapped
from workbench.ui.lesson.estimate_row import with_grade
from workbench.ui.views.page import ChartPage, Filling


@dataclass(frozen=True)
class Judged:
    """What the page shows: analysis, what the last handout says, charts."""

    analysis: Analysis
    printed: Grade | None
    effort: Chart
    demands: Chart


def own_word(lesson: Lesson, estimate: Grade) -> str:
    """The teacher's grade in words."""
    if lesson.grade is None:
        return say("not given yet")
    if not lesson.grade_level:
        return say("grade {number}", number=lesson.grade)
    return str(shown_grade(lesson, estimate).words)


class GradeView(ChartPage):
    """Estimate and teacher's word side by side; a click on a bar of the chart selects it."""

    wants_learning = Signal()  # the teacher wants their grades learnt from

    def __init__(self, session: Session, findings: Findings, parent: QWidget | None = None) -> None:
        filling = Filling("grade", say("Judging the grade"), self.work, self.show_found)
        super().__init__(session, findings, filling, parent)
        self.judged: Judged | None = None
        self.grade = Heading("")
        self.model = Faint()
        self.printed = Wrapped()
        self.take_button = QPushButton(say("&Take the estimate as my word"))
        self.learn_button = QPushButton(say("Learn from my &grades …"))
        self.print_button = QPushButton(say("&Print the estimate from now on"))
        self.evidence = Faint()
        self.hardest = Faint()
        self.effort = ChartBox()
        self.demands = ChartBox()
        self._lay_out()
        self.take_button.clicked.connect(self._take)
        self.learn_button.clicked.connect(self.wants_learning)
        self.print_button.clicked.connect(self._print_anew)
        self.effort.view.chosen.connect(
            lambda bar: session.selection.select(session.selection.position_of(bar))
        )
        session.selection.selected.connect(self._follow)

    def _lay_out(self) -> None:
        inner = QWidget()
        column = QVBoxLayout(inner)
        buttons = QHBoxLayout()
        for button in (self.take_button, self.learn_button, self.print_button):
            button.setAccessibleName(button.text().replace("&", ""))
            buttons.addWidget(button)
        buttons.addStretch(1)
        for part in (self.grade, self.model, self.printed):
            column.addWidget(part)
        column.addLayout(buttons)
        column.addWidget(self.effort)
        column.addWidget(Heading(say("Bars that push the grade up")))
        column.addWidget(self.hardest)
        column.addWidget(self.demands)
        column.addWidget(Heading(say("What was measured, the hardest first")))
        column.addWidget(self.evidence)
        column.addStretch(1)
        column.setSpacing(em(self, 0.45))
        self.area = Scrolled(inner, say("Grade, evidence and charts"))
        layout = QVBoxLayout(self.body)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.area)

    def work(self, lesson: Lesson, fingering: Fingering) -> Callable[[Progress], Judged]:
        """What to do behind the interface."""
        form = form_of(self, 0.94)
        shelf, findings = self.session.shelf, self.findings

        def work(_: Progress) -> Judged:
            from workbench.engraving.charts.grades import demands_chart
            from workbench.engraving.charts.lesson import effort_chart

            analysis = findings.analysis(lesson, fingering)
            word = lesson.grade
            wanted = None if word is None else place_of(word, lesson.grade_level)
            return Judged(
                analysis,
                printed_grade(shelf, lesson.id),
                effort_chart(lesson, fingering, form),
                demands_chart(analysis.features, analysis.estimate, form, wanted),
            )

        self.drawn_width = self.width()
        return work

    def show_found(self, lesson: Lesson, found: Judged) -> None:
        """Show the grade, what speaks for it, and the charts."""
        self.judged = found
        analysis, printed = found.analysis, found.printed
        estimate = analysis.estimate
        self.grade.setText(
            say(
                "Your word: {word}. Estimate: {estimate}.",
                word=own_word(lesson, estimate),
                estimate=estimate.words,
            )
        )
        self.grade.setAccessibleName(self.grade.text())
        beside = say("The estimate stands beside your word and never changes it.")
        from workbench.teaching.grading.calibrate import fit_in_words  # takes long to load

        self.model.setText(f"{beside} {fit_in_words(analysis.model or shipped_model())}")
        now = shown_grade(lesson, estimate)
        moved = unchanged_in_print(printed, now) if printed is not None else None
        said = say("The handout says {grade}.", grade=printed.words) if printed else ""
        self.printed.setText(str(moved or said))
        self.printed.setVisible(printed is not None)
        self.print_button.setVisible(moved is not None)
        same = (lesson.grade, lesson.grade_level) == (estimate.number, estimate.level)
        self.take_button.setEnabled(not same)
        self.evidence.setText("\n".join(f"– {words}" for words in evidence(analysis.features)))
        hardest = (hard_bar_in_words(lesson.piece, hard) for hard in analysis.hardest)
        self.hardest.setText("\n".join(f"– {words}" for words in hardest))
        self.effort.show_chart(found.effort)
        self.demands.show_chart(found.demands)
        self._follow()

    def _follow(self) -> None:
        self.effort.view.select(self.session.selection.bar_index)

    def _take(self) -> None:
        if self.judged is not None:
            estimate = self.judged.analysis.estimate
            label = say("Take the estimate as my word")
            self.session.edit(label, lambda lesson: with_grade(lesson, estimate))

    def _print_anew(self) -> None:
        lesson = self.session.lesson
        if lesson is not None:
            self.session.guard(lambda: remember_printed(self.session.shelf, lesson.id, None))
            self.ask()
