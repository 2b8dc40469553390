"""The tutorial's script in playing order, edited in place."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import (
    QLocale,
    Qt,
)
from PySide6.QtGui import QBrush, QColor, QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QAbstractItemView,
    QCheckBox,
    QHBoxLayout,
    QHeaderView,
    QPushButton,
    QStackedLayout,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from workbench.fingering.types import Fingering
from workbench.language.names import as_first_word
from workbench.language.speech import count, mark, say
from workbench.store.setting_names import LEAVES_OUT_KNOWN
from workbench.teaching.lessons.formatting import plain
from workbench.teaching.lessons.lesson import CLOSING, OPENING, Lesson
from workbench.teaching.lessons.playing import playing_of
from workbench.teaching.scripts.files import bar_words, clock, shown
from workbench.teaching.scripts.script import Cue, Script, make_script, with_edit
from workbench.teaching.techniques.news import Move
from workbench.ui.bench.findings import Findings
from workbench.ui.bench.jobs import Progress
from workbench.ui.bench.session import Session
from workbench.ui.kit.look import colours
from workbench.ui.kit.parts import Faint, Heading
from workbench.ui.views.page import Filling, QuietTable, RowDelegate, TeachingPage, cell
from workbench.ui.views.script.page import ScriptPage, place_name

if TYPE_CHECKING:
    from workbench.ui.paper.export_dialog import ExportDialog

COLUMNS = (mark("Time"), mark("Bar"), mark("What is said"), mark("What is shown"))
SAID = 2
PLACE = Qt.ItemDataRole.UserRole  # place in playing order, OPENING, CLOSING or HEADING
HEADING = -9


class ScriptView(TeachingPage):
    """One row for every bar as played; the teacher's words stand until they are taken back."""

    def __init__(self, session: Session, findings: Findings, parent: QWidget | None = None) -> None:
        filling = Filling("script", say("Writing the script"), self.work, self.show_found)
        super().__init__(session, findings, filling, parent)
        self.script: Script | None = None
        self._filling = False
        self.length = Heading("")
        self.hint = Faint(
            say("F2 or a double click opens the page for a bar; Ctrl+Return there goes on.")
        )
        self.known = QCheckBox(say("Pass over what earlier lessons &taught"))
        self.known.setChecked(bool(session.shelf.setting(LEAVES_OUT_KNOWN, False)))
        self.write_button = QPushButton(say("&Write"))
        self.write_button.setToolTip(say("Write your own words for the selected row"))
        self.back_button = QPushButton(say("Take &back"))
        self.back_button.setToolTip(say("Take your words back: the bar says again what it said"))
        self.read_button = QPushButton(say("&Reading view"))
        self.export_button = QPushButton(say("E&xport …"))
        self.export_button.setAccessibleName(say("Export the script"))
        self.table = QuietTable(
            tuple(say(name) for name in COLUMNS), say("Script in playing order"), {3: 25}
        )
        self.table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.table.setItemDelegateForColumn(SAID, _SaidRows(self.table))
        self.page = ScriptPage(session)
        header = self.table.horizontalHeader()
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(SAID, QHeaderView.ResizeMode.Stretch)
        header.setSectionResizeMode(3, QHeaderView.ResizeMode.Interactive)
        top = QHBoxLayout()
        words = QVBoxLayout()
        words.addWidget(self.length)
        words.addWidget(self.hint)
        top.addLayout(words, 1)
        for part in (self.read_button, self.export_button):
            top.addWidget(part, 0, Qt.AlignmentFlag.AlignTop)
        below = QHBoxLayout()
        below.addWidget(self.write_button)
        below.addWidget(self.back_button)
        below.addStretch(1)
        below.addWidget(self.known)
        whole = QWidget()
        layout = QVBoxLayout(whole)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addLayout(top)
        layout.addWidget(self.table, 1)
        layout.addLayout(below)
        self.leaves = QStackedLayout(self.body)
        self.leaves.addWidget(whole)
        self.leaves.addWidget(self.page)
        self.table.itemActivated.connect(lambda _: self.write())
        QShortcut(QKeySequence(Qt.Key.Key_F2), self.table, self.write,
                  context=Qt.ShortcutContext.WidgetShortcut)  # fmt: skip
        self.page.moved.connect(self._page_moved)
        self.page.left.connect(self.show_all)
        self.table.currentCellChanged.connect(self._row_chosen)
        self.write_button.clicked.connect(self.write)
        self.back_button.clicked.connect(self.take_back)
        self.known.toggled.connect(self._known_toggled)
        session.selection.selected.connect(self._follow)

    # Working it out.

    def work(self, lesson: Lesson, fingering: Fingering) -> Callable[[Progress], Script]:
        """What to do behind the interface."""
        instrument, hand = playing_of(lesson)
        leaves_out, findings = self.known.isChecked(), self.findings

        def work(progress: Progress) -> Script:
            known: tuple[Move, ...] = ()
            if leaves_out:
                company = findings.company(lesson, fingering, progress)
                known = tuple(move for earlier in company.earlier for move in earlier.moves)
            return make_script(lesson, fingering, instrument, hand, known=known)

        return work

    def show_found(self, lesson: Lesson, script: Script) -> None:
        """Show the script; a cell that is being written in stays as it is."""
        places = [OPENING]
        rows = [self._row(0.0, say("Opening"), script, OPENING, "")]
        headings = set()
        lengths = {chapter.position: chapter.seconds for chapter in script.chapters}
        for cue in script.cues:
            if cue.covered:
                continue
            if cue.chapter:
                headings.add(len(rows))
                title = say(
                    "{section}, {time}", section=cue.chapter, time=clock(lengths[cue.position])
                )
                rows.append((cell(title, bold=True),))
                places.append(HEADING)
            number = as_first_word(bar_words(script, cue))
            told = "\n".join(as_first_word(line) for line in shown(cue))
            rows.append(self._row(cue.start, number, script, cue.position, told))
            places.append(cue.position)
        headings.add(len(rows))
        rows.append((cell(say("The end"), bold=True),))
        places.append(HEADING)
        rows.append(self._row(script.closing_start, say("Closing"), script, CLOSING, ""))
        places.append(CLOSING)
        self.script = script
        self._filling = True
        table = self.table
        if self._places() != places:
            table.clearSpans()
            table.setRowCount(len(rows))
        for at, cells in enumerate(rows):
            for column, part in enumerate(cells):
                part.setData(PLACE, places[at])
                table.setItem(at, column, part)
            if at in headings and table.columnSpan(at, 0) == 1:
                table.setSpan(at, 0, 1, len(COLUMNS))
            if at in headings:
                cells[0].setFlags(Qt.ItemFlag.ItemIsEnabled)
                cells[0].setBackground(self.palette().alternateBase())
        self._filling = False
        self.length.setText(
            count(
                len(script.cues),
                "{n} bar, about {time}",
                "{n} bars, about {time}",
                time=clock(script.seconds),
            )
        )
        self.length.setAccessibleName(self.length.text())
        if self.place in (OPENING, CLOSING):
            self._offer()
        else:
            self._follow()
        table.fit_soon()
        if self.writing:
            last = len(script.cues) - 1
            self.page.show_place(script, min(self.page.place, last))

    def _row(
        self, start: float, name: str, script: Script, place: int, told: str
    ) -> tuple[QTableWidgetItem, ...]:
        """The cells of one row; the teacher's own words are marked as such."""
        own = script.is_edited(place)
        bar = cell(say("{bar}\nyour words", bar=name) if own else name)
        if own:
            bar.setForeground(_brush(colours(self).warm))
        return (cell(clock(start)), bar, cell(script.words_at(place)), cell(told))

    def _places(self) -> list[int]:
        out = []
        for row in range(self.table.rowCount()):
            first = self.table.item(row, 0)
            out.append(first.data(PLACE) if first is not None else -2)
        return out

    # Hands on it.

    def row_of(self, position: int) -> int:
        """The row of a place in playing order (or OPENING, CLOSING), of bars that are taken
        together theirs; -1 where there is none."""
        places = self._places()
        if self.script is not None and 0 <= position < len(self.script.cues):
            position = self.script.speaker(position)
        return places.index(position) if position in places else -1

    @property
    def place(self) -> int:
        """The selected place in playing order, or OPENING, CLOSING; HEADING for none."""
        first = self.table.item(self.table.currentRow(), 0)
        place = first.data(PLACE) if first is not None else None
        return HEADING if place is None else int(place)

    @property
    def cue(self) -> Cue | None:
        """The selected bar of the script."""
        found = self.script.cues if self.script else ()
        return found[self.place] if 0 <= self.place < len(found) else None

    @property
    def writing(self) -> bool:
        """Whether the page is open."""
        return self.leaves.currentWidget() is self.page

    def write(self) -> None:
        """Open the page at the selected bar; at the row, where it stands for several bars
        and another of them is selected."""
        script, place = self.script, self.place
        if script is None or place == HEADING:
            return
        here = self.session.selection.position
        if place >= 0 and 0 <= here < len(script.cues) and script.speaker(here) == place:
            place = here
        self.leaves.setCurrentWidget(self.page)
        self.page.show_place(script, place)
        self.page.words.setFocus()

    def show_all(self) -> None:
        """Back from the page to all bars."""
        self.leaves.setCurrentIndex(0)
        row = self.row_of(self.page.place)
        if row >= 0:
            self._filling = True
            self.table.setCurrentCell(row, SAID)
            self._filling = False
        self._offer()
        self.table.setFocus()

    def _page_moved(self) -> None:
        if self.page.place >= 0:
            self.session.selection.select(self.page.place, None)

    def take_back(self) -> None:
        """Give the selected row's words back to the program."""
        place = self.place
        if self.script is not None and place != HEADING and self.script.is_edited(place):
            self.session.edit(
                say("Take back the words for {place}", place=place_name(self.script, place)),
                lambda lesson: with_edit(lesson, place, None),
            )

    def commit(self) -> None:
        """Keep what is half written."""
        if self.writing:
            self.page.keep()

    def _row_chosen(self, *_cells: int) -> None:
        """A row was chosen here: its bar is selected everywhere, unless it is already, for that
        would take the note's selection away."""
        self._offer()
        cue, script = self.cue, self.script
        if cue is None or script is None or self._filling:
            return
        if (
            script.speaker(min(self.session.selection.position, len(script.cues) - 1))
            != cue.position
        ):
            self.session.selection.select(cue.position, None)

    def _offer(self) -> None:
        """Offer what can be done with the row."""
        script = self.script if self.place != HEADING else None
        self.write_button.setEnabled(script is not None)
        self.back_button.setEnabled(script is not None and script.is_edited(self.place))

    def _follow(self) -> None:
        """Select the row of the bar that is selected elsewhere, and turn the page to it."""
        script, position = self.script, self.session.selection.position
        row = self.row_of(position)
        inside = script is not None and 0 <= position < len(script.cues)
        if self.writing and script is not None and inside and 0 <= self.page.place != position:
            self.page.keep()
            self.page.show_place(script, position)
        if row >= 0 and self.table.currentRow() != row:
            self._filling = True
            self.table.setCurrentCell(row, SAID)
            self._filling = False
        self._offer()

    def _known_toggled(self, on: bool) -> None:
        self.session.guard(lambda: self.session.shelf.set_setting(LEAVES_OUT_KNOWN, on))
        self.ask()

    def dialog(self) -> ExportDialog | None:
        """The dialog that exports the script; None while there is none."""
        from workbench.handout.files.text_file import SCRIPT_FORMATS
        from workbench.ui.paper.export_dialog import ExportDialog, Form

        self.commit()
        lesson, fingering = self.session.lesson, self.session.fingers.fingering
        if lesson is None or fingering is None:
            return None
        # Made anew where it is written, so that what was typed last is in it.
        make = self.work(lesson, fingering)

        def form(suffix: str, words: str, text: Callable[[Script], str]) -> Form:
            return Form(suffix, words, lambda: text(make(lambda _: None)))

        forms = tuple(form(s, say(words), text) for s, (words, text) in SCRIPT_FORMATS.items())
        return ExportDialog(self.session, say("script"), forms, self.window())


def _brush(colour: str) -> QBrush:
    return QBrush(QColor(colour))


class _SaidRows(RowDelegate):
    """Shows words without the signs of their emphasis."""

    def displayText(self, value: object, _locale: QLocale | QLocale.Language) -> str:
        return plain(str(value))
