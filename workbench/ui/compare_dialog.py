"""Two fingerings of one bar side by side: what the other choice costs."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import (
    QAbstractItemView,
    QDialog,
    QDialogButtonBox,
    QHeaderView,
    QLabel,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from workbench.fingering.reasons import compare
from workbench.fingering.types import FingeredBar
from workbench.ui.look import em
from workbench.ui.parts import Heading


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
        self.table = QTableWidget(len(rows), 3)
        self.table.setAccessibleName("Comparison of two fingerings")
        self.table.setHorizontalHeaderLabels(["In this bar", "As it is", "Otherwise"])
        self.table.verticalHeader().hide()
        self.table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.table.setTabKeyNavigation(False)
        for r, row in enumerate(rows):
            for c, text in enumerate((row.what, row.first, row.second)):
                item = QTableWidgetItem(text)
                if row.first != row.second:  # bold as well as different: no colour needed
                    font = item.font()
                    font.setBold(True)
                    item.setFont(font)
                self.table.setItem(r, c, item)
        header = self.table.horizontalHeader()
        header.setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.table.setWordWrap(True)
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

    def showEvent(self, event: object) -> None:
        super().showEvent(event)  # type: ignore[arg-type]
        self.table.resizeRowsToContents()

    def sizeHint(self) -> QSize:
        return QSize(em(self, 46), em(self, 28))
