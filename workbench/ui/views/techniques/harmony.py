"""Form and harmony of the piece, named as a teacher would: sentences and a table of chords."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHeaderView, QVBoxLayout, QWidget

from workbench.fingering.types import Fingering
from workbench.instrument.model import Instrument
from workbench.language.names import as_first_word, chord_words
from workbench.language.speech import say
from workbench.music.bar_names import the_bar
from workbench.music.model import Piece
from workbench.teaching.bars.form_words import ChordRow, chord_rows, form_and_harmony
from workbench.teaching.lessons.lesson import Lesson, sectioned
from workbench.ui.bench.session import Session
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Heading, Wrapped
from workbench.ui.views.page import QuietTable, cell

BAR = Qt.ItemDataRole.UserRole
Found = tuple[tuple[str, ...], tuple[ChordRow, ...]]


def look_at(lesson: Lesson, fingering: Fingering, instrument: Instrument) -> Found:
    """Sentences on the form, and the chords."""
    piece = sectioned(lesson)
    return form_and_harmony(piece), chord_rows(piece, fingering, instrument.strings)


class HarmonyView(QWidget):
    """Above what is said of the sections, below the chords bar by bar."""

    def __init__(self, session: Session) -> None:
        super().__init__()
        self._session = session
        self._filling = False
        self.said = Wrapped()
        self.said.setAccessibleName(say("Form and keys"))
        columns = (
            say("Bar"), say("Beat"), say("Printed"), say("Sounding"), say("Inversion"),
            say("Strings used"),
        )  # fmt: skip
        self.table = QuietTable(columns, say("Chords of the piece"), {})
        header = self.table.horizontalHeader()
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(4, QHeaderView.ResizeMode.Stretch)
        self.none = Wrapped(say("No bar has three different notes, so that no chord is named."))
        layout = QVBoxLayout(self)
        layout.addWidget(Heading(say("Form and keys")))
        layout.addWidget(self.said)
        heading = Heading(say("&Chords"))
        heading.setBuddy(self.table)
        layout.addWidget(heading)
        layout.addWidget(self.none)
        layout.addWidget(self.table, 1)
        layout.setSpacing(em(self, 0.4))
        self.table.currentCellChanged.connect(self._go_to)

    def show_found(self, piece: Piece, found: Found) -> None:
        """Show another piece's form and chords."""
        said, rows = found
        self.said.setText("\n".join(said))
        self.none.setVisible(not rows)
        self.table.setVisible(bool(rows))
        self._filling = True
        self.table.setRowCount(len(rows))
        before = -1
        for at, row in enumerate(rows):
            name = as_first_word(the_bar(piece.bars[row.bar].number)) if row.bar != before else ""
            before = row.bar
            first = cell(name)
            first.setData(BAR, row.bar)
            cells = (
                row.beat, chord_words(row.printed), row.name, row.inversion, row.grip,
            )  # fmt: skip
            for column, item in enumerate((first, *(cell(str(words)) for words in cells))):
                self.table.setItem(at, column, item)
        self._filling = False
        self.table.fit_soon()

    def _go_to(self, row: int, *_others: int) -> None:
        first = self.table.item(row, 0)
        if first is not None and not self._filling:
            self._session.selection.select(self._session.selection.position_of(first.data(BAR)))
