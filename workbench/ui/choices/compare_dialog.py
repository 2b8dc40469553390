"""Two fingerings of one bar side by side: what either costs."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QImage, QPixmap
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QHBoxLayout,
    QVBoxLayout,
    QWidget,
)

from workbench.fingering.telling.comparing import compare
from workbench.fingering.types import FingeredBar
from workbench.language.speech import say
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Heading, Words, Wrapped
from workbench.ui.kit.rows_table import RowsTable


@dataclass(frozen=True)
class Compared:
    """One side of a comparison: the bar under it, its ``head`` and ``reason`` in words, and
    the words of the button that takes it ("" where it is the present one)."""

    bar: FingeredBar
    head: str
    reason: str = ""
    take: str = ""


class CompareDialog(QDialog):
    """The comparison table of two fingerings; ``taken`` tells which is to be kept, 0 or 1."""

    taken = Signal(int)

    def __init__(self, sides: Sequence[Compared], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        first, second = sides
        self.setWindowTitle(say("Bar {bar}: two fingerings compared", bar=first.bar.number))
        self.setAccessibleName(say("Two fingerings compared"))
        rows = compare(first.bar, second.bar)
        self.table = RowsTable(
            say("Comparison of two fingerings"),
            (say("In this bar"), first.head, second.head),
            [(row.what, row.first, row.second) for row in rows],
            # Bold where they differ: no colour needed.
            strong=frozenset(i for i, row in enumerate(rows) if row.first != row.second),
        )
        buttons = QDialogButtonBox()
        layout = QVBoxLayout(self)
        layout.addWidget(Heading(say("What would the other choice cost?")))
        beside = QHBoxLayout()
        self.pictures = []
        for it in sides:
            words, picture = Words(it.head), Words()
            picture.setAccessibleName(say("{head}, as music", head=it.head))
            column = QVBoxLayout()
            for part in (words, picture):
                part.setAlignment(Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop)
                column.addWidget(part)
            beside.addLayout(column, 1)
            self.pictures.append(picture)
        layout.addLayout(beside)
        self.take_buttons = []
        for side, it in enumerate(sides):
            if it.reason:
                layout.addWidget(Wrapped(f"{it.head}: {it.reason}"))
            if it.take:
                button = buttons.addButton(it.take, QDialogButtonBox.ButtonRole.ActionRole)
                button.clicked.connect(lambda _on=False, side=side: self._take(side))
                self.take_buttons.append(button)
        buttons.addButton(say("&Leave as it is"), QDialogButtonBox.ButtonRole.RejectRole)
        buttons.rejected.connect(self.reject)
        layout.addWidget(self.table, 1)
        layout.addWidget(buttons)

    def show_pictures(self, images: Sequence[QImage]) -> None:
        """The two fingerings as small tablatures side by side."""
        for label, image in zip(self.pictures, images, strict=True):
            label.setPixmap(QPixmap.fromImage(image))

    def _take(self, side: int) -> None:
        self.taken.emit(side)
        self.accept()

    def sizeHint(self) -> QSize:
        return QSize(em(self, 52), em(self, 40))
