"""The shelf: lessons, pieces, and what to teach next."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QPushButton,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from workbench.language.speech import say
from workbench.music.model import Piece
from workbench.ui.bench.findings import Findings
from workbench.ui.bench.session import Session
from workbench.ui.kit.look import em
from workbench.ui.shelf.lessons import LANE, ShelfLessons
from workbench.ui.shelf.next import ShelfNext
from workbench.ui.shelf.pieces import ShelfPieces


class ShelfDialog(QDialog):
    """Three pages; each is filled when it is first turned to. ``made_of`` holds the piece
    and its title where a new lesson was asked for: it is what the window does next."""

    def __init__(
        self, session: Session, findings: Findings | None = None, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._session = session
        self.made_of: tuple[Piece, str] | None = None
        self.setWindowTitle(say("Shelf"))
        self.setAccessibleName(say("Shelf"))
        self.lessons = ShelfLessons(session)
        self.pieces = ShelfPieces(session)
        self.onward = ShelfNext(session, findings or Findings(session.shelf, session.services))
        self.pages = QTabWidget()
        self.pages.setAccessibleName(say("Lessons, pieces, or what to teach next"))
        self.pages.addTab(self.lessons, say("Lessons"))
        self.pages.addTab(self.pieces, say("Pieces"))
        self.pages.addTab(self.onward, say("Teach next"))
        self.close_button = QPushButton(say("C&lose"))
        bottom = QHBoxLayout()
        bottom.addStretch(1)
        bottom.addWidget(self.close_button)
        layout = QVBoxLayout(self)
        layout.addWidget(self.pages, 1)
        layout.addLayout(bottom)
        self.pages.currentChanged.connect(self._turned)
        self.lessons.opened.connect(self.accept)
        self.onward.opened.connect(self.accept)
        self.pieces.make.connect(self._make)
        self.close_button.clicked.connect(self.reject)
        for button in self.findChildren(QPushButton):
            button.setAutoDefault(False)
        self._default()
        self.lessons.refresh(offer=True)
        self.lessons.filters.search.setFocus()

    def sizeHint(self) -> QSize:
        return QSize(em(self, 64), em(self, 38))

    def _default(self) -> None:
        """Enter does what the page is for."""
        mains = (self.lessons.open_button, self.pieces.make_button, self.onward.open_button)
        for at, button in enumerate(mains):
            button.setDefault(at == self.pages.currentIndex())

    def _turned(self, _page: int) -> None:
        self._default()
        page = self.pages.currentWidget()
        if page is self.pieces and not self.pieces.rows:
            self.pieces.refresh()
        elif page is self.onward and self.onward.found is None:
            self.onward.look()

    def _make(self, piece_id: str, title: str) -> None:
        """Load a piece in the background, then leave it to be made a lesson of."""
        shelf, session = self._session.shelf, self._session

        def arrived(piece: Piece) -> None:
            self.made_of = (piece, title)
            self.accept()

        session.jobs.start(
            "shelf piece", say("Reading the score"), lambda _: shelf.load_piece(piece_id),
            arrived, lane=LANE,
        )  # fmt: skip
