"""The practice plan by days, to be ticked, with charts of it and of how a bar is learned."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QComboBox,
    QGridLayout,
    QHBoxLayout,
    QPushButton,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from workbench.engraving.charts.kit import Chart
from workbench.fingering.types import Fingering
from workbench.language.names import as_first_word
from workbench.language.speech import say
from workbench.store.setting_names import PLANNED_WITH
from workbench.teaching.lessons import edits
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.lessons.playing import playing_of
from workbench.teaching.planning.files import markdown
from workbench.teaching.planning.plan import Plan, make_plan
from workbench.ui.bench.findings import Findings
from workbench.ui.bench.jobs import Progress
from workbench.ui.bench.session import Session
from workbench.ui.kit.chart import ChartBox, form_of
from workbench.ui.kit.flow import FlowLayout
from workbench.ui.kit.look import em
from workbench.ui.kit.panes import Panes
from workbench.ui.kit.parts import Caution, Faint, Heading, Scrolled, Words
from workbench.ui.views.page import ChartPage, Filling
from workbench.ui.views.plan.table import PlanTable

if TYPE_CHECKING:
    from workbench.ui.paper.export_dialog import ExportDialog

WIDE = 44  # lines of text: from that width on the charts stand side by side


@dataclass(frozen=True)
class Planned:
    """A plan and its charts."""

    plan: Plan
    days: Chart
    curve: Chart


def with_tick(lesson: Lesson, item: str, done: bool) -> Lesson:
    """The lesson with a plan item ticked, or its tick taken away."""
    kept = [name for name in lesson.plan_done if name != item]
    return replace(lesson, plan_done=(*kept, item) if done else tuple(kept))


class PlanView(ChartPage):
    """Ticks are steps of the lesson's history; the plan flows again at each."""

    practise = Signal(object)  # a PlanItem to be played

    def __init__(self, session: Session, findings: Findings, parent: QWidget | None = None) -> None:
        filling = Filling("plan", say("Planning the practice"), self.work, self.show_found)
        super().__init__(session, findings, filling, parent)
        self.plan: Plan | None = None
        self._filling = False
        self.total = Heading("")
        self.left = Faint()
        self.daily = self._spin(say("Minutes a day"), 5, 240, say(" min"))
        self.week = self._spin(say("Days a week"), 1, 7, "")
        self.first = self._spin(say("From day"), 1, 999, "")
        self.student = QComboBox()
        self.student.setAccessibleName(say("Student's grade"))
        self.student.addItem(say("as the piece"), None)
        for grade in range(9):
            self.student.addItem(say("grade {number}", number=grade), grade)
        self.export_button = QPushButton(say("E&xport …"))
        self.export_button.setAccessibleName(say("Export the plan"))
        self.play_button = QPushButton(say("▶ &Practise"))
        self.play_button.setAccessibleName(say("Play the plan's item in a loop"))
        self.play_button.setToolTip(
            say("Play the selected item, or the first of today, at its tempo in a loop")
        )
        self.days = ChartBox()
        self.curve = ChartBox()
        self.table = PlanTable()
        self.caution = Caution()
        self._lay_out()
        self.daily.valueChanged.connect(self._daily_changed)
        for box in (self.week, self.first):
            box.valueChanged.connect(self._keep_choice)
        self.student.activated.connect(self._keep_choice)
        self.table.ticked.connect(self._ticked)
        self.play_button.clicked.connect(self._practise)
        self.table.bar_chosen.connect(
            lambda bar: session.selection.select(session.selection.position_of(bar))
        )
        self.days.view.chosen.connect(self._go_to_day)
        session.opened.connect(self._recall)
        self._recall()

    def _spin(self, name: str, low: int, high: int, unit: str) -> QSpinBox:
        box = QSpinBox()
        box.setRange(low, high)
        box.setSuffix(unit)
        box.setKeyboardTracking(False)
        box.setAccessibleName(name)
        return box

    def _lay_out(self) -> None:
        given = QWidget()
        fields = QGridLayout(given)
        fields.setContentsMargins(0, 0, 0, 0)
        named = (
            (say("Minutes a &day"), self.daily), (say("Days a &week"), self.week),
            (say("&From day"), self.first), (say("&Student's grade"), self.student),
        )  # fmt: skip
        for at, (label, field) in enumerate(named):
            words = Words(label)
            words.setBuddy(field)
            row, column = divmod(at, 2)
            fields.addWidget(words, row, 2 * column)
            fields.addWidget(field, row, 2 * column + 1)
        fields.setHorizontalSpacing(em(self, 0.6))
        sums = QVBoxLayout()
        sums.addWidget(self.total)
        sums.addWidget(self.left)
        sums.addStretch(1)
        beside = QWidget()
        buttons = QHBoxLayout(beside)
        buttons.setContentsMargins(0, 0, 0, 0)
        buttons.addWidget(self.play_button)
        buttons.addWidget(self.export_button)
        asked = FlowLayout(gap=em(self, 0.6))
        asked.addWidget(given)
        asked.addWidget(beside)
        self.top = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self.top.addLayout(sums, 1)
        self.top.addLayout(asked)
        drawn = QWidget()
        self.charts = QBoxLayout(QBoxLayout.Direction.LeftToRight, drawn)
        self.charts.setContentsMargins(0, 0, em(self, 0.3), 0)
        for box, share in ((self.days, 3), (self.curve, 2)):
            self.charts.addWidget(box, share, Qt.AlignmentFlag.AlignTop)
        area = Scrolled(drawn, say("Charts of the plan"), across=True)
        self.split = Panes(Qt.Orientation.Vertical)
        self.split.addWidget(self.table)
        self.split.addWidget(area)
        self.split.setChildrenCollapsible(False)
        self.split.setSizes([em(self, 21), em(self, 16)])
        layout = QVBoxLayout(self.body)
        layout.addLayout(self.top)
        layout.addWidget(self.split, 1)
        layout.addWidget(self.caution)

    # What is planned with.

    def _recall(self) -> None:
        lesson = self.session.lesson
        if lesson is None:
            return
        kept = self.session.shelf.setting(PLANNED_WITH.format(lesson.id), {})
        self._filling = True
        self.week.setValue(int(kept.get("week", 6)))
        self.first.setValue(int(kept.get("first", 1)))
        self.student.setCurrentIndex(max(0, self.student.findData(kept.get("student"))))
        self._filling = False

    def _keep_choice(self) -> None:
        lesson = self.session.lesson
        if self._filling or lesson is None:
            return
        kept = {
            "week": self.week.value(),
            "first": self.first.value(),
            "student": self.student.currentData(),
        }
        name = PLANNED_WITH.format(lesson.id)
        self.session.guard(lambda: self.session.shelf.set_setting(name, kept))
        self.ask()

    def _daily_changed(self, minutes: int) -> None:
        if not self._filling:
            self.session.edit(
                say("Change the minutes a day"),
                lambda lesson: edits.set_field(lesson, "minutes_a_day", minutes),
                merge=True,
            )

    # Working it out.

    def planning(self, lesson: Lesson, fingering: Fingering) -> Callable[[], Plan]:
        """What makes the plan, with the fields as they stand now."""
        instrument, hand = playing_of(lesson)
        week, first, student = self.week.value(), self.first.value(), self.student.currentData()
        findings = self.findings

        def make() -> Plan:
            analysis = findings.analysis(lesson, fingering)
            return make_plan(
                lesson.piece,
                fingering,
                instrument,
                hand,
                minutes_a_day=max(5, min(240, lesson.minutes_a_day)),
                days_a_week=week,
                student=student,
                tempo_percent=max(20, min(200, lesson.tempo_percent)),
                done=lesson.plan_done,
                first_day=first,
                model=analysis.model,
                measures=analysis.measures,
            )

        return make

    def work(self, lesson: Lesson, fingering: Fingering) -> Callable[[Progress], Planned]:
        """What to do behind the interface."""
        make = self.planning(lesson, fingering)
        wide = self._is_wide()
        days, curve = form_of(self, 0.57 if wide else 0.94), form_of(self, 0.38 if wide else 0.94)

        def work(_: Progress) -> Planned:
            from workbench.engraving.charts.lesson import curve_chart, plan_chart

            plan = make()
            return Planned(
                plan, plan_chart(plan, days), curve_chart(lesson.piece, plan.time, curve)
            )

        self.drawn_width = self.width()
        return work

    def show_found(self, lesson: Lesson, found: Planned) -> None:
        """Show plan, charts and cautions."""
        plan, time = found.plan, found.plan.time
        self.plan = plan
        self._filling = True
        self.daily.setValue(plan.minutes_a_day)
        self._filling = False
        self.table.show_plan(plan)
        words = say("{time} in all", time=time.words)
        self.total.setText(as_first_word(words))
        self.total.setAccessibleName(self.total.text())
        left = say("Everything is done.")
        if plan.days:
            left = say(
                "Likely {minutes} minutes, between {low} and {high}. "
                "{left} minutes are left with the warm-ups, to day {last}.",
                minutes=round(time.minutes),
                low=round(time.low),
                high=round(time.high),
                left=round(plan.minutes),
                last=plan.last_day,
            )
        if plan.minutes_a_day != lesson.minutes_a_day:
            odd = say(
                "A plan takes 5 to 240 minutes a day, not {minutes}.", minutes=lesson.minutes_a_day
            )
            left = f"{left} {odd}"
        self.left.setText(left)
        self.days.show_chart(found.days)
        self.curve.show_chart(found.curve)
        self.caution.say(" ".join(map(str, plan.cautions)))

    def _is_wide(self) -> bool:
        return self.width() > em(self, WIDE)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        way = (
            QBoxLayout.Direction.LeftToRight
            if self._is_wide()
            else QBoxLayout.Direction.TopToBottom
        )
        self.top.setDirection(way)
        self.charts.setDirection(way)

    # Hands on it.

    def _ticked(self, name: str, on: bool, words: str) -> None:
        label = say("Tick '{item}'", item=words) if on else say("Take back '{item}'", item=words)
        self.session.edit(label, lambda lesson: with_tick(lesson, name, on))

    def _go_to_day(self, day: int) -> None:
        self.days.view.select(day)
        self.table.go_to_day(day)

    def _practise(self) -> None:
        """Hand the selected item, or the first that is still to do, to the player."""
        items = [i for i in (self.plan.items if self.plan else ()) if i.bars and i.tempo_to]
        chosen = self.table.chosen_item()
        item = next((i for i in items if i.id == chosen), items[0] if items else None)
        if item is None:
            self.session.told.emit(say("Nothing of the plan is left to be played."))
            return
        self.practise.emit(item)

    def row_of(self, item: str) -> int:
        """The row of a plan item; -1 where it has none."""
        return self.table.row_of(item)

    def dialog(self) -> ExportDialog | None:
        """The dialog that exports the plan; None while there is none."""
        from workbench.ui.paper.export_dialog import ExportDialog, Form

        lesson, fingering = self.session.lesson, self.session.fingers.fingering
        if lesson is None or fingering is None:
            return None
        # Made anew where it is written: the view may never have been looked at.
        make, title = self.planning(lesson, fingering), lesson.title
        form = Form(".md", "Markdown", lambda: markdown(make(), title))
        return ExportDialog(self.session, say("practice plan"), (form,), self.window())
