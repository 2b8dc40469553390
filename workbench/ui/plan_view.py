"""The practice plan by days, to be ticked, and the grade with what speaks for it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QPointF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QResizeEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QComboBox,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QPushButton,
    QScrollArea,
    QSpinBox,
    QSplitter,
    QStyle,
    QStyleOptionViewItem,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from workbench.fingering.types import Fingering
from workbench.teaching.lesson import Lesson
from workbench.teaching.plan import Plan, make_plan
from workbench.teaching.plan_files import day_in_words, markdown
from workbench.teaching.plan_items import PlanItem
from workbench.ui import edits
from workbench.ui.findings import Analysis, Findings
from workbench.ui.jobs import Progress
from workbench.ui.look import colours, em
from workbench.ui.parts import Caution, Faint, Heading, Wrapped
from workbench.ui.services import playing_of
from workbench.ui.session import Session
from workbench.ui.teaching_page import QuietTable, RowDelegate, TeachingPage, cell

COLUMNS = ("To do", "Minutes", "Tempo", "How")
KEPT = "plan.{}"  # by lesson: what is planned with, beside the lesson itself
ID = Qt.ItemDataRole.UserRole
AS_THE_PIECE = "as the piece"


def with_tick(lesson: Lesson, item: str, done: bool) -> Lesson:
    """The lesson with a plan item ticked, or its tick taken away."""
    kept = [name for name in lesson.plan_done if name != item]
    return replace(lesson, plan_done=(*kept, item) if done else tuple(kept))


class PlanView(TeachingPage):
    """Ticks are steps of the lesson's history; the plan flows again at each."""

    def __init__(self, session: Session, findings: Findings, parent: QWidget | None = None) -> None:
        super().__init__(session, findings, "plan", parent)
        self.plan: Plan | None = None
        self.analysis: Analysis | None = None
        self._filling = False
        self.total = Heading("")
        self.left = Faint()
        self.daily = self._spin("Minutes a day", 5, 240, " min")
        self.week = self._spin("Days a week", 1, 7, "")
        self.first = self._spin("From day", 1, 999, "")
        self.student = QComboBox()
        self.student.setAccessibleName("Student's grade")
        self.student.addItem(AS_THE_PIECE, None)
        for grade in range(9):
            self.student.addItem(f"grade {grade}", grade)
        self.export_button = QPushButton("E&xport …")
        self.export_button.setAccessibleName("Export the plan")
        self.table = QuietTable(COLUMNS, "Practice plan by days", {0: 26})
        self.table.setItemDelegateForColumn(0, _Ticks(self.table))
        self.caution = Caution()
        self.grade = Wrapped()
        self.evidence = Faint()
        self._lay_out()
        self.daily.valueChanged.connect(self._daily_changed)
        for box in (self.week, self.first):
            box.valueChanged.connect(self._keep_choice)
        self.student.activated.connect(self._keep_choice)
        self.table.itemChanged.connect(self._ticked)
        self.table.currentCellChanged.connect(self._go_to)
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
        fields = QGridLayout()
        named = (
            ("Minutes a &day", self.daily), ("Days a &week", self.week),
            ("&From day", self.first), ("&Student's grade", self.student),
        )  # fmt: skip
        for at, (label, field) in enumerate(named):
            words = QLabel(label)
            words.setBuddy(field)
            row, column = divmod(at, 2)
            fields.addWidget(words, row, 2 * column)
            fields.addWidget(field, row, 2 * column + 1)
        fields.setHorizontalSpacing(em(self, 0.6))
        sums = QVBoxLayout()
        sums.addWidget(self.total)
        sums.addWidget(self.left)
        sums.addStretch(1)
        given = QHBoxLayout()
        given.addLayout(fields)
        given.addStretch(1)
        given.addWidget(self.export_button, 0, Qt.AlignmentFlag.AlignTop)
        self.top = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self.top.addLayout(sums, 1)
        self.top.addLayout(given)
        header = self.table.horizontalHeader()
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.Interactive)
        header.setSectionResizeMode(3, QHeaderView.ResizeMode.Stretch)
        about = QWidget()
        told = QVBoxLayout(about)
        told.setContentsMargins(0, em(self, 0.3), em(self, 0.3), 0)
        for part in (Heading("Grade"), self.grade, self.evidence, self.caution):
            told.addWidget(part)
        told.addStretch(1)
        area = QScrollArea()
        area.setWidget(about)
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.viewport().setAutoFillBackground(False)
        about.setAutoFillBackground(False)
        area.setAccessibleName("Grade and cautions")
        self.split = QSplitter(Qt.Orientation.Vertical)
        self.split.addWidget(self.table)
        self.split.addWidget(area)
        self.split.setChildrenCollapsible(False)
        self.split.setSizes([em(self, 24), em(self, 13)])
        layout = QVBoxLayout(self.body)
        layout.addLayout(self.top)
        layout.addWidget(self.split, 1)

    # What is planned with.

    def _recall(self) -> None:
        lesson = self.session.lesson
        if lesson is None:
            return
        kept = self.session.shelf.setting(KEPT.format(lesson.id), {})
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
        name = KEPT.format(lesson.id)
        self.session.guard(lambda: self.session.shelf.set_setting(name, kept))
        self.ask()

    def _daily_changed(self, minutes: int) -> None:
        if not self._filling:
            self.session.edit(
                "Change the minutes a day",
                lambda lesson: edits.set_field(lesson, "minutes_a_day", minutes),
                merge=True,
            )

    # Working it out.

    @property
    def label(self) -> str:
        return "Planning the practice"

    def work(self, lesson: Lesson, fingering: Fingering) -> Callable[[Progress], Any]:
        instrument, hand = playing_of(lesson)
        week, first, student = self.week.value(), self.first.value(), self.student.currentData()

        def work(_: Progress) -> tuple[Analysis, Plan]:
            analysis = self.findings.analysis(lesson, fingering)
            plan = make_plan(
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
                measures=analysis.measures,
            )
            return analysis, plan

        return work

    def show_found(self, lesson: Lesson, found: Any) -> None:
        """Show plan, grade and cautions."""
        self.analysis, self.plan = found
        plan, time = self.plan, self.plan.time
        self._filling = True
        self.daily.setValue(plan.minutes_a_day)
        self._fill_table(plan)
        self._filling = False
        self.total.setText(f"{time.words[0].upper()}{time.words[1:]} in all")
        self.total.setAccessibleName(self.total.text())
        if plan.days:
            self.left.setText(
                f"Likely {time.minutes:.0f} minutes, between {time.low:.0f} and {time.high:.0f}. "
                f"{plan.minutes:.0f} minutes are left, to day {plan.last_day}."
            )
        else:
            self.left.setText("Everything is done.")
        if plan.minutes_a_day != lesson.minutes_a_day:
            self.left.setText(
                f"{self.left.text()} A plan takes 5 to 240 minutes a day, not "
                f"{lesson.minutes_a_day}."
            )
        self._show_grade(lesson, self.analysis)
        self.caution.say(" ".join(plan.cautions))

    def _show_grade(self, lesson: Lesson, analysis: Analysis) -> None:
        own = "not given yet"
        if lesson.grade is not None:
            own = ", ".join(filter(None, (f"grade {lesson.grade}", lesson.grade_level)))
        self.grade.setText(
            f"Your word: {own}. Estimate: {analysis.estimate.words}. "
            "The estimate stands beside your word and never changes it."
        )
        said = [f"– {words}" for words in (*analysis.evidence[:5], *analysis.hardest)]
        self.evidence.setText("\n".join(said))

    def _fill_table(self, plan: Plan) -> None:
        table = self.table
        here = table.currentItem()
        chosen = here.data(ID) if here else None
        scrolled = table.verticalScrollBar().value()
        table.setUpdatesEnabled(False)
        table.clearSpans()
        table.setRowCount(0)
        for day in plan.days:
            self._heading(day_in_words(day))
            for item in day.items:
                self._row(item)
        if plan.done:
            minutes = sum(item.minutes for item in plan.done)
            self._heading(f"Done, {minutes:.0f} minutes")
            for item in plan.done:
                self._row(item)
        for row in range(table.rowCount()):
            first = table.item(row, 0)
            if chosen is not None and first is not None and first.data(ID) == chosen:
                table.setCurrentCell(row, 0)
                break
        table.fit()
        table.verticalScrollBar().setValue(scrolled)
        table.setUpdatesEnabled(True)

    def _heading(self, words: str) -> None:
        row = self.table.rowCount()
        self.table.insertRow(row)
        item = cell(words, bold=True)
        item.setFlags(Qt.ItemFlag.ItemIsEnabled)
        item.setBackground(self.palette().alternateBase())
        self.table.setItem(row, 0, item)
        self.table.setSpan(row, 0, 1, len(COLUMNS))

    def _row(self, item: PlanItem) -> None:
        row = self.table.rowCount()
        self.table.insertRow(row)
        what = cell(" ".join(w for w in (item.kind.capitalize(), item.where) if w))
        if item.kind != "warm up":  # comes anew every day, so that there is nothing to tick
            what.setFlags(what.flags() | Qt.ItemFlag.ItemIsUserCheckable)
            what.setCheckState(Qt.CheckState.Checked if item.done else Qt.CheckState.Unchecked)
        what.setData(ID, item.id)
        what.setData(ID + 1, item.bars[0] if item.bars else -1)
        tempo = ""
        if item.tempo_to:
            share = f"{item.tempo_from}–{item.tempo_to} %"
            if item.tempo_from == item.tempo_to:
                share = f"{item.tempo_to} %"
            tempo = f"{share}\nto ♩ = {item.beats}"
        cells = (what, cell(f"{max(1, round(item.minutes))}"), cell(tempo))
        for column, part in enumerate((*cells, cell(item.exercise))):
            # in the middle, as the box to tick is
            part.setTextAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
            self.table.setItem(row, column, part)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        wide = self.width() > em(self, 44)
        self.top.setDirection(
            QBoxLayout.Direction.LeftToRight if wide else QBoxLayout.Direction.TopToBottom
        )

    # Hands on it.

    def _ticked(self, item: QTableWidgetItem) -> None:
        name = item.data(ID)
        if self._filling or item.column() != 0 or not name:
            return
        on = item.checkState() == Qt.CheckState.Checked
        label = f"{'Tick' if on else 'Take back'} '{item.text()}'"
        self.session.edit(label, lambda lesson: with_tick(lesson, name, on))

    def _go_to(self, row: int, *_others: int) -> None:
        first = self.table.item(row, 0)
        bar = first.data(ID + 1) if first is not None and not self._filling else None
        if bar is not None and bar >= 0:
            self.session.select(self.session.position_of(bar))

    def row_of(self, item: str) -> int:
        """The row of a plan item; -1 where it has none."""
        for row in range(self.table.rowCount()):
            first = self.table.item(row, 0)
            if first is not None and first.data(ID) == item:
                return row
        return -1

    def dialog(self) -> Any:
        """The dialog that exports the plan; None while there is none."""
        from workbench.ui.export_dialog import ExportDialog, Form

        lesson, fingering = self.session.lesson, self.session.fingering
        if lesson is None or fingering is None:
            return None
        # Made anew where it is written: the view may never have been looked at.
        make, title = self.work(lesson, fingering), lesson.title
        form = Form(".md", "Markdown", lambda: markdown(make(lambda _: None)[1], title))
        return ExportDialog(self.session, "practice plan", (form,), self.window())


class _Ticks(RowDelegate):
    """Draws the box to tick so that it is seen on a dark ground as well."""

    def paint(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        super().paint(painter, option, index)
        state = index.data(Qt.ItemDataRole.CheckStateRole)
        if state is None:
            return
        full = QStyleOptionViewItem(option)
        self.initStyleOption(full, index)
        view = option.widget  # type: ignore[attr-defined]
        where = QStyle.SubElement.SE_ItemViewItemCheckIndicator
        box = view.style().subElementRect(where, full, view).toRectF().adjusted(1, 1, -1, -1)
        c = colours(view)
        done = Qt.CheckState(state) == Qt.CheckState.Checked
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(c.ink), 1.4))
        painter.setBrush(QColor(c.accent if done else c.panel))
        painter.drawRoundedRect(box, 2, 2)
        if done:
            side = box.width()
            painter.setPen(QPen(QColor(c.accent_ink), max(1.8, side * 0.14)))
            corners = ((0.22, 0.52), (0.42, 0.72), (0.8, 0.28))
            painter.drawPolyline(
                [QPointF(box.x() + x * side, box.y() + y * box.height()) for x, y in corners]
            )
        painter.restore()
