"""Learning from the choices and the grades the teacher made, in the window: run it, show
what changed, take it back."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from workbench.fingering.telling.words import sentence
from workbench.language.names import decimal
from workbench.language.speech import say
from workbench.ui.kit.chart import ChartView, form_of
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Heading, Words, plain_tip
from workbench.ui.kit.rows_table import RowsTable

if TYPE_CHECKING:
    from workbench.engraving.charts.kit import Chart, Format
    from workbench.fingering.learning.preferences import Fit
    from workbench.ui.bench.jobs import Progress
    from workbench.ui.bench.session import Session


def summary(found: Fit) -> str:
    """How many choices the engine now makes as the teacher did."""
    return say(
        "Of your {total} choices the engine would have made {before} before and makes {after} "
        "now. Left out of the fit one at a time, {unseen} are still met.",
        total=found.total,
        before=found.reproduced_before,
        after=found.reproduced_after,
        unseen=found.leave_one_out,
    )


def chart_of(found: Fit, form: Format) -> Chart | None:
    """The weights that a fit moved; None where it moved none."""
    from workbench.engraving.charts.grades import Moved, weights_chart

    rows = [Moved(sentence(c.term), c.before / 1000, c.after / 1000) for c in found.changes]
    return weights_chart(rows, form) if rows else None


class FitDialog(QDialog):
    """What the fit changed. Accepted: keep it; rejected: take it back."""

    def __init__(
        self, found: Fit, chart: Chart | None = None, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(say("Learnt from your choices"))
        self.setAccessibleName(say("Learnt from your choices"))
        words = Words(summary(found))
        words.setWordWrap(True)
        self.table = RowsTable(
            say("Weights that changed"),
            (say("What it weighs"), say("Before"), say("Now")),
            [
                (sentence(c.term), decimal(c.before / 1000, 2), decimal(c.after / 1000, 2))
                for c in found.changes
            ],
            lead=True,
        )
        self.table.setToolTip(plain_tip(self.table.accessibleName()))
        self.chart = ChartView()
        buttons = QDialogButtonBox()
        self.keep_button = buttons.addButton(
            say("&Keep it"), QDialogButtonBox.ButtonRole.AcceptRole
        )
        self.back_button = buttons.addButton(
            say("Take it &back"), QDialogButtonBox.ButtonRole.RejectRole
        )
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        layout = QVBoxLayout(self)
        layout.addWidget(Heading(say("How fingerings are weighed from now on")))
        layout.addWidget(words)
        if chart is not None:
            area = QScrollArea()
            area.setWidget(self.chart)
            area.setWidgetResizable(True)
            area.setAccessibleName(chart.title)
            self.chart.show_chart(chart)
            layout.addWidget(area, 1)
        layout.addWidget(self.table, 1)
        layout.addWidget(buttons)

    def sizeHint(self) -> QSize:
        return QSize(em(self, 44), em(self, 40))


def learn(session: Session, parent: QWidget) -> None:
    """Fit the weights to all choices on the shelf in the background, then show them."""
    from workbench.store.learning import fit_to_choices

    form, shelf = form_of(parent, 0.45), session.shelf

    def work(progress: Progress) -> tuple[Fit, Chart | None]:
        found = fit_to_choices(shelf, lambda done, all_: progress(done / max(1, all_)))
        return found, chart_of(found, form)

    def arrived(found: tuple[Fit, Chart | None]) -> None:
        reopen(session)
        if not FitDialog(*found, parent).exec():
            forget(session)

    session.jobs.start("learn", say("Learning from your choices"), work, arrived)


def forget(session: Session) -> None:
    """Take the last fit back."""
    from workbench.store.learning import undo_fit

    if session.guard(lambda: undo_fit(session.shelf)):
        reopen(session)


def reopen(session: Session) -> None:
    """Show the open lesson as it now stands on the shelf."""
    if session.lesson is not None:
        session.open(session.lesson.id)
