"""Two fingerings of one bar side by side: what the other choice costs."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QLabel, QVBoxLayout, QWidget

from workbench.fingering.reasons import compare
from workbench.fingering.types import FingeredBar
from workbench.ui.look import em
from workbench.ui.parts import Heading
from workbench.ui.rows_table import RowsTable


class CompareDialog(QDialog):
    """The comparison table of a bar as it is and otherwise; ``taken`` after "Take the other"."""

    def __init__(
        self, now: FingeredBar, other: FingeredBar, reason: str, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(f"Bar {now.number}: two fingerings compared")
        self.setAccessibleName("Two fingerings compared")
        words = QLabel(reason)
        words.setWordWrap(True)
        rows = compare(now, other)
        self.table = RowsTable(
            "Comparison of two fingerings",
            ("In this bar", "As it is", "Otherwise"),
            [(row.what, row.first, row.second) for row in rows],
            # Bold where they differ: no colour needed.
            strong=frozenset(i for i, row in enumerate(rows) if row.first != row.second),
        )
        buttons = QDialogButtonBox()
        self.take_button = buttons.addButton(
            "&Take the other", QDialogButtonBox.ButtonRole.AcceptRole
        )
        buttons.addButton("&Leave as it is", QDialogButtonBox.ButtonRole.RejectRole)
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        layout = QVBoxLayout(self)
        layout.addWidget(Heading("What would the other choice cost?"))
        layout.addWidget(words)
        layout.addWidget(self.table, 1)
        layout.addWidget(buttons)

    def sizeHint(self) -> QSize:
        return QSize(em(self, 46), em(self, 28))
