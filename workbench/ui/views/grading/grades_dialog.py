"""Learn from the teacher's grades: every lesson with their word beside the estimate, what
a fit makes of them, and the fit put in force or taken back."""

from __future__ import annotations

from dataclasses import dataclass, replace

from PySide6.QtCore import QAbstractItemModel, QModelIndex, QPersistentModelIndex, QSize, Qt, Signal
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QHeaderView,
    QLineEdit,
    QScrollArea,
    QSplitter,
    QStyleOptionViewItem,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from workbench.engraving.charts.kit import Chart
from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.store.grading import (
    NAME,
    GradedLesson,
    apply_fit,
    can_undo,
    graded_lessons,
    studio_model,
    undo_grade_fit,
)
from workbench.store.rows import LessonRow
from workbench.teaching.grading.calibrate import GradedPiece, Refit, fit_in_words, refit
from workbench.teaching.grading.grade import THIRDS, Grade, grade_features, place_of
from workbench.teaching.lessons.lesson import GradeThird, NoThird
from workbench.ui.bench.findings import LANE
from workbench.ui.bench.jobs import Progress
from workbench.ui.bench.session import Session
from workbench.ui.kit.chart import ChartView, form_of
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Faint, Heading, Wrapped
from workbench.ui.views.grading.fit_buttons import FitButtons
from workbench.ui.views.page import QuietTable, RowDelegate, cell

OWN = 1  # the column of the teacher's word
ID = Qt.ItemDataRole.UserRole
SHOWN = 30  # pieces in the chart at most


@dataclass(frozen=True)
class Learnt:
    """The graded lessons, their estimates now, the fit where there is one or why there is
    none, and its chart."""

    graded: tuple[GradedLesson, ...]
    now: tuple[Grade, ...]
    found: Refit | None
    words: str
    chart: Chart | None


def word_of(grade: int | None, level: GradeThird | NoThird) -> str:
    """The teacher's grade in words."""
    return say("not given") if grade is None else str(GradedPiece("", (), grade, level).words)


NONE: NoThird = ""
CHOICES: tuple[tuple[int | None, GradeThird | NoThird], ...] = (
    (None, NONE),
    *((grade, level) for grade in range(9) for level in (NONE, *THIRDS)),
)


def _choice(grade: int | None, level: str) -> int:
    """The place of a grade in CHOICES."""
    wanted = (grade, level if grade is not None and level in THIRDS else "")
    return CHOICES.index(wanted) if wanted in CHOICES else 0


class GradesDialog(QDialog):
    """Works on the whole shelf; a grade given here is a step of that lesson's history."""

    changed = Signal()  # another model is in force, or a lesson has another grade

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.session = session
        self.learnt: Learnt | None = None
        self._filling = False
        self.setWindowTitle(say("Learn from my grades"))
        self.setAccessibleName(self.windowTitle())
        self.search = QLineEdit()
        self.search.setPlaceholderText(say("Search the shelf"))
        self.search.setAccessibleName(say("Search the shelf"))
        self.search.setClearButtonEnabled(True)
        columns = (
            say("Lesson"), say("Your grade"), say("Estimate"), say("After the fit"),
            say("Fit without it"),
        )  # fmt: skip
        self.table = QuietTable(columns, say("Lessons and their grades"), {})
        self.table.setItemDelegateForColumn(OWN, _GradeWords(self.table))
        self.table.setEditTriggers(QuietTable.EditTrigger.AllEditTriggers)
        self.told = Wrapped()
        self.chart = ChartView()
        self._lay_out()
        self.search.textChanged.connect(self.fill)
        self.table.itemChanged.connect(self._given)
        self.fill()
        self.learn()

    def _lay_out(self) -> None:
        header = self.table.horizontalHeader()
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        area = QScrollArea()
        area.setWidget(self.chart)
        area.setWidgetResizable(True)
        area.setAccessibleName(say("Chart of the graded lessons"))
        split = QSplitter(Qt.Orientation.Vertical)
        split.addWidget(self.table)
        split.addWidget(area)
        split.setChildrenCollapsible(False)
        split.setSizes([em(self, 16), em(self, 16)])
        buttons = FitButtons(say("&Apply the fit"), self._apply, self._undo, self.reject)
        self.apply_button, self.undo_button = buttons.apply, buttons.undo
        layout = QVBoxLayout(self)
        layout.addWidget(Heading(say("Your grades, and what the estimate makes of them")))
        layout.addWidget(
            Faint(
                say(
                    "Choose your grade in the second column. From five lessons on, the estimate "
                    "can learn from them. Grades that are printed stay as they are."
                )
            )
        )
        layout.addWidget(self.search)
        layout.addWidget(split, 1)
        layout.addWidget(self.told)
        layout.addWidget(buttons)
        self.apply_button.setEnabled(False)
        self.undo_button.setEnabled(can_undo(self.session.shelf))

    def sizeHint(self) -> QSize:
        return QSize(em(self, 46), em(self, 42))

    # Lessons.

    def fill(self) -> None:
        """List the lessons that the search finds, the graded ones first."""
        rows: tuple[LessonRow, ...] = ()
        try:
            rows = tuple(self.session.shelf.lessons(self.search.text(), archived=None))
        except BadInput as wrong:
            self.told.setText(str(wrong))
        ranked = sorted(rows, key=lambda r: (r.grade is None, r.grade or 0, r.title))
        self._filling = True
        self.table.setRowCount(len(ranked))
        for at, row in enumerate(ranked):
            title = f"{row.title}, {row.student}" if row.student else row.title
            first = cell(title)
            first.setData(ID, row.id)
            self.table.setItem(at, 0, first)
            own = cell(word_of(row.grade, row.grade_level))
            own.setFlags(own.flags() | Qt.ItemFlag.ItemIsEditable)
            own.setData(
                ID, CHOICES.index((row.grade, row.grade_level if row.grade is not None else ""))
            )
            self.table.setItem(at, OWN, own)
            for column in range(OWN + 1, self.table.columnCount()):
                self.table.setItem(at, column, cell(""))
        self._filling = False
        self._show_estimates()
        self.table.fit_soon()

    def row_of(self, lesson_id: str) -> int:
        """The row of a lesson; -1 where it is not listed."""
        for row in range(self.table.rowCount()):
            item = self.table.item(row, 0)
            if item is not None and item.data(ID) == lesson_id:
                return row
        return -1

    def _given(self, item: QTableWidgetItem) -> None:
        if self._filling or item.column() != OWN:
            return
        first = self.table.item(item.row(), 0)
        number, level = CHOICES[int(item.data(ID))]
        if first is not None:
            self.give(str(first.data(ID)), number, level)

    def give(self, lesson_id: str, number: int | None, level: GradeThird | NoThird) -> None:
        """Give a lesson of the shelf a grade, or take it away (None)."""
        label = say("Change the grade")
        here = self.session.lesson
        if here is not None and here.id == lesson_id:
            self.session.edit(label, lambda old: replace(old, grade=number, grade_level=level))
        else:
            shelf = self.session.shelf

            def save() -> None:
                lesson = replace(shelf.load(lesson_id), grade=number, grade_level=level)
                shelf.save(lesson, label)

            self.session.guard(save)
        self.changed.emit()
        self.learn()

    # The fit.

    def learn(self) -> None:
        """Fit to the grades as they stand, in the background; nothing is put in force."""
        self.apply_button.setEnabled(False)
        shelf, form = self.session.shelf, form_of(self, 0.95)

        def work(progress: Progress) -> Learnt:
            from workbench.engraving.charts.grades import Moved, grades_chart

            graded = graded_lessons(shelf, lambda done, of: progress(done / max(1, of)))
            force = studio_model(shelf)
            now = tuple(grade_features(g.piece.features, force) for g in graded)
            try:
                found = refit([g.piece for g in graded], NAME, force=force)
            except BadInput as few:
                return Learnt(graded, now, None, str(few), None)
            rows = [
                Moved(g.piece.title, _place(b), _place(a), place_of(g.piece.grade, g.piece.level))
                for g, b, a in zip(graded, found.before, found.after, strict=True)
            ]
            chart = grades_chart(rows[:SHOWN], form)
            return Learnt(graded, now, found, str(fit_in_words(found.model)), chart)

        self.session.jobs.start(
            "grades", say("Learning from your grades"), work, self._show, lane=LANE
        )

    def _show(self, learnt: Learnt) -> None:
        self.learnt = learnt
        self.told.setText(learnt.words)
        self.chart.setVisible(learnt.chart is not None)
        if learnt.chart is not None:
            self.chart.show_chart(learnt.chart)
        self.apply_button.setEnabled(learnt.found is not None)
        self.undo_button.setEnabled(can_undo(self.session.shelf))
        self._show_estimates()

    def _show_estimates(self) -> None:
        learnt = self.learnt
        if learnt is None:
            return
        self._filling = True
        for at, graded in enumerate(learnt.graded):
            row = self.row_of(graded.id)
            if row < 0:
                continue
            words = [learnt.now[at].words]
            if learnt.found is not None:
                words += [learnt.found.after[at].words, learnt.found.unseen[at].words]
            for column, text in enumerate(words, OWN + 1):
                item = self.table.item(row, column)
                if item is not None:
                    item.setText(str(text))
        self._filling = False
        self.table.fit_soon()

    def _apply(self) -> None:
        learnt = self.learnt
        if learnt is None or learnt.found is None:
            return
        model = learnt.found.model
        if self.session.guard(lambda: apply_fit(self.session.shelf, model)):
            self._in_force(say("Grades are estimated by your own from now on."))

    def _undo(self) -> None:
        if self.session.guard(lambda: undo_grade_fit(self.session.shelf)):
            self._in_force(say("Grades are estimated again as before the last fit."))

    def _in_force(self, words: str) -> None:
        self.session.told.emit(words)
        self.changed.emit()
        self.learn()


def _place(grade: Grade) -> float:
    return place_of(grade.number, grade.level)


class _GradeWords(RowDelegate):
    """The teacher's grade is chosen from a list."""

    def createEditor(
        self,
        parent: QWidget,
        _option: QStyleOptionViewItem,
        _index: QModelIndex | QPersistentModelIndex,
    ) -> QWidget:
        box = QComboBox(parent)
        box.setAccessibleName(say("Your grade"))
        for grade, level in CHOICES:
            box.addItem(word_of(grade, level))
        box.activated.connect(lambda _at: self._done(box))
        return box

    def _done(self, box: QComboBox) -> None:
        self.commitData.emit(box)
        self.closeEditor.emit(box)

    def setEditorData(self, editor: QWidget, index: QModelIndex | QPersistentModelIndex) -> None:
        assert isinstance(editor, QComboBox)
        editor.setCurrentIndex(int(index.data(ID) or 0))

    def setModelData(
        self,
        editor: QWidget,
        model: QAbstractItemModel,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        assert isinstance(editor, QComboBox)
        at = editor.currentIndex()
        if at == int(index.data(ID) or 0):
            return
        view = self.parent()
        assert isinstance(view, QuietTable)
        item = view.item(index.row(), index.column())
        if item is None:
            return
        view.blockSignals(True)
        item.setText(word_of(*CHOICES[at]))
        view.blockSignals(False)
        item.setData(ID, at)  # and tells that the grade is given
