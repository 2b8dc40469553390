"""The middle of the window: the score, or one of the teaching views in its place."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QDialog, QTabWidget, QWidget

from workbench.language.speech import say
from workbench.teaching.scripts.script import Script
from workbench.ui.bench.findings import LANE, Findings
from workbench.ui.bench.session import Session
from workbench.ui.views.arranging.view import ArrangingView
from workbench.ui.views.grading.view import GradeView
from workbench.ui.views.plan.view import PlanView
from workbench.ui.views.script.view import ScriptView
from workbench.ui.views.techniques.view import TechniqueView

if TYPE_CHECKING:
    from workbench.ui.views.script.reading import ReadingView


class TeachingTabs(QTabWidget):
    """Score, techniques, plan, script, grade and arrangement. ``show_dialog`` opens a dialog."""

    def __init__(
        self, session: Session, score: QWidget, show_dialog: Callable[[QDialog], None]
    ) -> None:
        super().__init__()
        self._session, self._show_dialog = session, show_dialog
        self.reading: ReadingView | None = None  # the reading view while it is open
        self.setAccessibleName(say("Score, techniques, practice plan or script"))
        findings = Findings(session.shelf, session.services)
        self.findings = findings
        self.score = score
        self.techniques = TechniqueView(session, findings)
        self.plan = PlanView(session, findings)
        self.script = ScriptView(session, findings)
        self.grade = GradeView(session, findings)
        self.addTab(score, say("Score"))
        self.addTab(self.techniques, say("Techniques"))
        self.addTab(self.plan, say("Practice plan"))
        self.addTab(self.script, say("Script"))
        self.addTab(self.grade, say("Grade"))
        self.arranging = ArrangingView(session)
        self.addTab(self.arranging, say("Arrangement"))
        self.views = (
            score, self.techniques, self.plan, self.script, self.grade, self.arranging,
        )  # fmt: skip
        session.laid.connect(lambda: self.setCurrentWidget(self.arranging))
        self.grade.wants_learning.connect(self.learn_grades)
        self.plan.export_button.clicked.connect(self.export_plan)
        self.script.export_button.clicked.connect(self.export_script)
        self.script.read_button.clicked.connect(self.read)

    @property
    def view(self) -> int:
        """Which of ``views`` is seen; that of the score where another part is."""
        shown = self.currentWidget()
        return next((at for at, view in enumerate(self.views) if view is shown), 0)

    def show_view(self, at: int) -> None:
        """Turn to one of ``views``."""
        self.setCurrentWidget(self.views[at])

    def look_again(self) -> None:
        """Another grade model is in force, or another grade given: judge anew."""
        for view in (self.techniques, self.plan, self.grade):
            view.ask()

    def learn_grades(self) -> None:
        """Show the teacher's grades beside the estimates, and what can be learnt from them."""
        from workbench.ui.views.grading.grades_dialog import GradesDialog

        dialog = GradesDialog(self._session, self.window())
        dialog.changed.connect(self.look_again)
        self._show_dialog(dialog)

    def commit(self) -> None:
        """Keep what is half written in the script."""
        self.script.commit()

    def export_plan(self) -> None:
        """Ask where the practice plan goes."""
        self._export(self.plan)

    def export_script(self) -> None:
        """Ask where the script goes, and in which form."""
        self._export(self.script)

    def _export(self, view: PlanView | ScriptView) -> None:
        dialog = view.dialog()
        if dialog is None:
            self.setCurrentWidget(view)  # it says there what is missing yet
        else:
            self._show_dialog(dialog)

    def read(self) -> None:
        """Open the reading view at the selected bar."""
        from workbench.ui.views.script.reading import ReadingView

        self.commit()
        session = self._session
        lesson, fingering = session.lesson, session.fingers.fingering
        if lesson is None or fingering is None:
            session.failed.emit(
                say("The fingering is still being worked out; try again in a moment.")
            )
            return

        def arrived(script: Script) -> None:
            if session.lesson is not lesson:
                return
            if self.reading is not None:
                self.reading.close()
            self.reading = ReadingView(session, script, self)
            self.reading.destroyed.connect(self._read)
            self.reading.showFullScreen()

        session.jobs.start(
            "reading", say("Writing the script"), self.script.work(lesson, fingering), arrived,
            lane=LANE,
        )  # fmt: skip

    def _read(self) -> None:
        self.reading = None
