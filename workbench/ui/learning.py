"""Learning from the choices made, in the window: run it, show what changed, take it back."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QLabel, QVBoxLayout, QWidget

from workbench.ui.look import em
from workbench.ui.parts import Heading
from workbench.ui.rows_table import RowsTable

if TYPE_CHECKING:
    from workbench.fingering.preferences import Fit
    from workbench.ui.jobs import Progress
    from workbench.ui.session import Session


def summary(found: Fit) -> str:
    """How many choices the engine now makes as the teacher did."""
    return (
        f"Of your {found.total} choices the engine would have made {found.reproduced_before} "
        f"before and makes {found.reproduced_after} now. Left out of the fit one at a time, "
        f"{found.leave_one_out} are still met."
    )


class FitDialog(QDialog):
    """What the fit changed. Accepted: keep it; rejected: take it back."""

    def __init__(self, found: Fit, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle("Learnt from your choices")
        self.setAccessibleName("Learnt from your choices")
        words = QLabel(summary(found))
        words.setWordWrap(True)
        self.table = RowsTable(
            "Weights that changed",
            ("What it weighs", "Before", "Now"),
            [
                (c.sentence, f"{c.before / 1000:.2f}", f"{c.after / 1000:.2f}")
                for c in found.changes
            ],
            lead=True,
        )
        buttons = QDialogButtonBox()
        self.keep_button = buttons.addButton("&Keep it", QDialogButtonBox.ButtonRole.AcceptRole)
        self.back_button = buttons.addButton(
            "Take it &back", QDialogButtonBox.ButtonRole.RejectRole
        )
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        layout = QVBoxLayout(self)
        layout.addWidget(Heading("How fingerings are weighed from now on"))
        layout.addWidget(words)
        layout.addWidget(self.table, 1)
        layout.addWidget(buttons)

    def sizeHint(self) -> QSize:
        return QSize(em(self, 40), em(self, 30))


def learn(session: Session, parent: QWidget) -> None:
    """Fit the weights to all choices on the shelf in the background, then show them."""
    from workbench.store.learning import fit_to_choices

    def work(progress: Progress) -> Fit:
        return fit_to_choices(session.shelf, lambda done, all_: progress(done / max(1, all_)))

    def arrived(found: Fit) -> None:
        _reopen(session)
        if not FitDialog(found, parent).exec():
            forget(session)

    session.jobs.start("learn", "Learning from your choices", work, arrived)


def forget(session: Session) -> None:
    """Take the last fit back."""
    from workbench.store.learning import undo_fit

    if session.guard(lambda: undo_fit(session.shelf)):
        _reopen(session)


def _reopen(session: Session) -> None:
    if session.lesson is not None:
        session.open(session.lesson.id)
