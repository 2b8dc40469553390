"""The pieces of the shelf, as they were imported: lessons are made of them."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QTimer, Signal
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QPushButton, QVBoxLayout, QWidget

from workbench.language.speech import count, say
from workbench.store.rows import PieceRow
from workbench.ui.bench.session import Session
from workbench.ui.kit.parts import Faint, Words
from workbench.ui.shelf.filters import AFTER
from workbench.ui.shelf.lessons import LANE
from workbench.ui.shelf.model import PIECES, RowsModel, RowsView

WIDTHS = (9, 6, 4, 4.5, 11, 8.5)


class ShelfPieces(QWidget):
    """Tells ``make`` when a lesson is wanted of a piece (its id and title)."""

    make = Signal(str, str)

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._undo: Callable[[], None] | None = None
        self.search = QLineEdit()
        self.search.setPlaceholderText(say("Words in title, composer, file name"))
        self.search.setAccessibleName(say("Search the pieces"))
        self.model = RowsModel(PIECES)
        self.table = RowsView(say("Pieces"), self.model, WIDTHS)
        self.status = Faint()
        self.undo_button = QPushButton(say("&Undo"))
        self.undo_button.hide()
        self.make_button = QPushButton(say("&Make a lesson of it …"))
        self.delete_button = QPushButton(say("&Delete"))
        self.delete_button.setToolTip(say("Lessons made of the piece keep their music"))
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(AFTER)
        self._soon.timeout.connect(self.refresh)
        self._lay_out()
        self.search.textChanged.connect(lambda _: self._soon.start())
        self.table.selectionModel().selectionChanged.connect(lambda *_: self._enable())
        self.table.activated.connect(lambda _: self._make())
        self.make_button.clicked.connect(self._make)
        self.delete_button.clicked.connect(self.delete)
        self.undo_button.clicked.connect(self.undo)
        self._enable()

    def _lay_out(self) -> None:
        top, said, bottom = QHBoxLayout(), QHBoxLayout(), QHBoxLayout()
        find = Words(say("&Find"))
        find.setBuddy(self.search)
        top.addWidget(find)
        top.addWidget(self.search, 1)
        said.addWidget(self.status, 1)
        said.addWidget(self.undo_button)
        bottom.addWidget(self.make_button)
        bottom.addWidget(self.delete_button)
        bottom.addStretch(1)
        layout = QVBoxLayout(self)
        layout.addLayout(top)
        layout.addWidget(self.table, 1)
        layout.addLayout(said)
        layout.addLayout(bottom)

    @property
    def rows(self) -> tuple[PieceRow, ...]:
        """The pieces that are listed."""
        return self.model.rows

    @property
    def picked(self) -> tuple[PieceRow, ...]:
        """The pieces that are selected."""
        return tuple(self.rows[at] for at in self.table.picked)

    def refresh(self) -> None:
        """List the pieces that have the words, in the background."""
        shelf, search = self._session.shelf, self.search.text()
        self._session.jobs.start(
            "shelf pieces", say("Looking through the shelf"), lambda _: shelf.pieces(search),
            self._show, lane=LANE, wrong=self.status.setText,
        )  # fmt: skip

    def _show(self, rows: tuple[PieceRow, ...]) -> None:
        self.model.set_rows(rows)
        if rows:
            self.table.pick(0)
        if not self.undo_button.isVisible():
            self.status.setText(count(len(rows), "{n} piece", "{n} pieces"))
        self._enable()

    def _enable(self) -> None:
        picked = len(self.picked)
        self.make_button.setEnabled(picked == 1)
        self.delete_button.setEnabled(picked > 0)

    def _make(self) -> None:
        if self.make_button.isEnabled():
            row = self.picked[0]
            self.make.emit(row.id, row.title)

    def delete(self) -> None:
        """Take the selected pieces off the shelf."""
        shelf, rows = self._session.shelf, self.picked

        def each(does: Callable[[str], None]) -> None:
            for row in rows:
                does(row.id)

        if self._session.guard(lambda: each(shelf.delete_piece)):
            self._undo = lambda: each(shelf.restore_piece)
            self.status.setText(
                count(len(rows), "{n} piece is off the shelf; its lessons stay.",
                      "{n} pieces are off the shelf; their lessons stay.")
            )  # fmt: skip
            self.undo_button.show()
        self.refresh()

    def undo(self) -> None:
        """Put what was deleted last back."""
        undo, self._undo = self._undo, None
        self.undo_button.hide()
        if undo is not None:
            self._session.guard(undo)
        self.refresh()
