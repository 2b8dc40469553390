"""The tutorial's script in playing order, edited in place."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import (
    QAbstractItemModel,
    QEvent,
    QLocale,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    Qt,
)
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemDelegate,
    QAbstractItemView,
    QCheckBox,
    QHBoxLayout,
    QHeaderView,
    QPlainTextEdit,
    QPushButton,
    QStyleOptionViewItem,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from workbench.fingering.types import Fingering
from workbench.language.speech import count, mark, say
from workbench.teaching.formatting import plain
from workbench.teaching.lesson import CLOSING, OPENING, Lesson
from workbench.teaching.script import Cue, Script, make_script, with_edit
from workbench.teaching.script_files import clock, shown
from workbench.teaching.seen import Move
from workbench.teaching.strokes import as_first_word
from workbench.ui.findings import Findings
from workbench.ui.jobs import Progress
from workbench.ui.look import colours, em
from workbench.ui.parts import Faint, Heading
from workbench.ui.services import playing_of
from workbench.ui.session import Session
from workbench.ui.teaching_page import QuietTable, RowDelegate, TeachingPage, cell

COLUMNS = (mark("Time"), mark("Bar"), mark("What is said"), mark("What is shown"))
SAID = 2
PLACE = Qt.ItemDataRole.UserRole  # place in playing order, OPENING, CLOSING or HEADING
HEADING = -9
LEAVES_OUT = "script.leaves_out"


class ScriptView(TeachingPage):
    """One row for every bar as played; the teacher's words stand until they are taken back."""

    def __init__(self, session: Session, findings: Findings, parent: QWidget | None = None) -> None:
        super().__init__(session, findings, "script", parent)
        self.script: Script | None = None
        self._filling = False
        self.length = Heading("")
        self.hint = Faint(say("F2 or a double click writes; Ctrl+Return keeps it, Esc leaves it."))
        self.known = QCheckBox(say("Pass over what earlier lessons &taught"))
        self.known.setChecked(bool(session.shelf.setting(LEAVES_OUT, False)))
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
        self.table.setEditTriggers(
            QAbstractItemView.EditTrigger.DoubleClicked
            | QAbstractItemView.EditTrigger.EditKeyPressed
        )
        self.writing = _Writing(self)
        self.table.setItemDelegateForColumn(SAID, self.writing)
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
        layout = QVBoxLayout(self.body)
        layout.addLayout(top)
        layout.addWidget(self.table, 1)
        layout.addLayout(below)
        self.table.itemChanged.connect(self._written)
        self.table.currentCellChanged.connect(self._row_chosen)
        self.write_button.clicked.connect(self.write)
        self.back_button.clicked.connect(self.take_back)
        self.known.toggled.connect(self._known_toggled)
        session.selected.connect(self._follow)

    # Working it out.

    @property
    def label(self) -> str:
        return say("Writing the script")

    def work(self, lesson: Lesson, fingering: Fingering) -> Callable[[Progress], Any]:
        instrument, hand = playing_of(lesson)
        leaves_out = self.known.isChecked()

        def work(progress: Progress) -> Script:
            known: tuple[Move, ...] = ()
            if leaves_out:
                company = self.findings.company(lesson, fingering, progress)
                known = tuple(move for earlier in company.earlier for move in earlier.moves)
            return make_script(lesson, fingering, instrument, hand, known=known)

        return work

    def show_found(self, lesson: Lesson, found: Any) -> None:
        """Show the script; a cell that is being written in stays as it is."""
        script: Script = found
        places = [OPENING]
        rows = [self._row(0.0, say("Opening"), script, OPENING, "")]
        headings = set()
        lengths = {chapter.position: chapter.seconds for chapter in script.chapters}
        for cue in script.cues:
            if cue.chapter:
                headings.add(len(rows))
                title = say(
                    "{section}, {time}", section=cue.chapter, time=clock(lengths[cue.position])
                )
                rows.append((cell(title, bold=True),))
                places.append(HEADING)
            number = say("Pickup") if cue.number == "0" else cue.number
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
        writing = self.writing.place
        if self._places() != places:
            self.writing.leave()
            table.clearSpans()
            table.setRowCount(len(rows))
            writing = None
        for at, cells in enumerate(rows):
            for column, part in enumerate(cells):
                if column == SAID and places[at] != HEADING:
                    if places[at] == writing:
                        continue
                    part.setFlags(part.flags() | Qt.ItemFlag.ItemIsEditable)
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
        """The row of a place in playing order (or OPENING, CLOSING); -1 where there is none."""
        places = self._places()
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

    def name_of(self, place: int) -> str:
        """What a place is called in the undo history."""
        if place < 0 or self.script is None:
            return say("the opening") if place == OPENING else say("the closing")
        return say("bar {number}", number=self.script.cues[place].number)

    def write(self) -> None:
        """Write in the selected row's words."""
        item = self.table.item(self.table.currentRow(), SAID)
        if self.place != HEADING and item is not None:
            self.table.setCurrentItem(item)
            self.table.editItem(item)

    def take_back(self) -> None:
        """Give the selected row's words back to the program."""
        place = self.place
        if self.script is not None and place != HEADING and self.script.is_edited(place):
            self.session.edit(
                say("Take back the words for {place}", place=self.name_of(place)),
                lambda lesson: with_edit(lesson, place, None),
            )

    def commit(self) -> None:
        """Keep what is half written."""
        self.writing.keep()

    def _written(self, item: QTableWidgetItem) -> None:
        place, script = item.data(PLACE), self.script
        if self._filling or script is None or item.column() != SAID or place is None:
            return
        if item.text().strip() != script.words_at(place):
            self.session.edit(
                say("Write the words for {place}", place=self.name_of(place)),
                lambda lesson: with_edit(lesson, place, item.text()),
            )

    def _row_chosen(self, *_cells: int) -> None:
        """A row was chosen here: its bar is selected everywhere, unless it is already, for that
        would take the note's selection away."""
        self._offer()
        cue = self.cue
        if cue is not None and not self._filling and cue.position != self.session.position:
            self.session.select(cue.position, None)

    def _offer(self) -> None:
        """Offer what can be done with the row."""
        script = self.script if self.place != HEADING else None
        self.write_button.setEnabled(script is not None)
        self.back_button.setEnabled(script is not None and script.is_edited(self.place))

    def _follow(self) -> None:
        """Select the row of the bar that is selected elsewhere."""
        row = self.row_of(self.session.position)
        if row >= 0 and self.table.currentRow() != row and self.writing.place is None:
            self._filling = True
            self.table.setCurrentCell(row, SAID)
            self._filling = False
        self._offer()

    def _known_toggled(self, on: bool) -> None:
        self.session.guard(lambda: self.session.shelf.set_setting(LEAVES_OUT, on))
        self.ask()

    def dialog(self) -> Any:
        """The dialog that exports the script; None while there is none."""
        from workbench.handout.text_file import SCRIPT_FORMATS
        from workbench.ui.export_dialog import ExportDialog, Form

        self.commit()
        lesson, fingering = self.session.lesson, self.session.fingering
        if lesson is None or fingering is None:
            return None
        # Made anew where it is written, so that what was typed last is in it.
        make = self.work(lesson, fingering)

        def form(suffix: str, words: str, text: Callable[[Script], str]) -> Form:
            return Form(suffix, words, lambda: text(make(lambda _: None)))

        forms = tuple(form(s, say(words), text) for s, (words, text) in SCRIPT_FORMATS.items())
        return ExportDialog(self.session, say("script"), forms, self.window())


class _Writing(RowDelegate):
    """Writes in a cell, in as many lines as the words need."""

    def __init__(self, view: ScriptView) -> None:
        super().__init__(view)
        self._view = view
        self._editor: QPlainTextEdit | None = None
        self.place: int | None = None  # in playing order, while it is written in

    def displayText(self, value: Any, _locale: QLocale | QLocale.Language) -> str:
        return plain(str(value))

    def createEditor(
        self,
        parent: QWidget,
        _option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> QWidget:
        editor = QPlainTextEdit(parent)
        self._editor, self.place = editor, index.data(PLACE)
        name = self._view.name_of(index.data(PLACE))
        editor.setAccessibleName(say("Words for {place}", place=name))
        editor.setTabChangesFocus(True)
        table = self._view.table
        table.setRowHeight(index.row(), max(table.rowHeight(index.row()), em(table, 5)))
        return editor

    def destroyEditor(self, editor: QWidget, index: QModelIndex | QPersistentModelIndex) -> None:
        self._editor = self.place = None
        super().destroyEditor(editor, index)
        self._view.table.fit_row(index.row())

    def setEditorData(self, editor: QWidget, index: QModelIndex | QPersistentModelIndex) -> None:
        assert isinstance(editor, QPlainTextEdit)
        if not editor.document().isModified():
            editor.setPlainText(str(index.data()))
            editor.selectAll()

    def setModelData(
        self,
        editor: QWidget,
        model: QAbstractItemModel,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        assert isinstance(editor, QPlainTextEdit)
        model.setData(index, " ".join(editor.toPlainText().split()))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress:
            enter = event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
            if enter and event.modifiers() & Qt.KeyboardModifier.ControlModifier:
                self.keep()
                return True
            if enter:
                return False
        return super().eventFilter(watched, event)

    def keep(self) -> None:
        """Keep what is written and close the editor."""
        if self._editor is not None:
            editor = self._editor
            self.commitData.emit(editor)
            self.closeEditor.emit(editor, QAbstractItemDelegate.EndEditHint.NoHint)

    def leave(self) -> None:
        """Close the editor without keeping."""
        if self._editor is not None:
            self.closeEditor.emit(self._editor, QAbstractItemDelegate.EndEditHint.RevertModelCache)


def _brush(colour: str) -> Any:
    from PySide6.QtGui import QBrush, QColor

    return QBrush(QColor(colour))
