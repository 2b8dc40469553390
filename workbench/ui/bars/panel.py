"""The bars down the left side, in playing or written order, with their marks."""

from __future__ import annotations

from PySide6.QtCore import QAbstractListModel, QItemSelectionModel, QModelIndex, Qt
from PySide6.QtWidgets import QCheckBox, QComboBox, QHBoxLayout, QVBoxLayout, QWidget

from workbench.fingering.telling.words import words as told
from workbench.language.speech import say
from workbench.store.setting_names import BARS_VIEW
from workbench.teaching.lessons.bar_rows import FILTERS, NO_FACTS, BarRow, kept
from workbench.ui.bars.delegate import FACTS, ROW, Index
from workbench.ui.bars.facts import BarFinder
from workbench.ui.bars.thumbs import SHOWN, BarThumbs
from workbench.ui.bars.view import BarView
from workbench.ui.bench.session import Session
from workbench.ui.kit.flow import FlowLayout
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Faint, Heading, Words, plain_tip

ORDER_KEY = "Ctrl+R"  # in the View menu


class BarModel(QAbstractListModel):
    """The rows that are shown."""

    def __init__(self, finder: BarFinder) -> None:
        super().__init__()
        self.rows: list[BarRow] = []
        self._finder = finder

    def show_rows(self, rows: list[BarRow]) -> None:
        if [row.position for row in rows] == [row.position for row in self.rows]:
            changed = [at for at, row in enumerate(rows) if row != self.rows[at]]
            self.rows = rows
            if changed:
                self.dataChanged.emit(self.index(changed[0]), self.index(changed[-1]))
            return
        self.beginResetModel()
        self.rows = rows
        self.endResetModel()

    def rowCount(self, parent: Index | None = None) -> int:
        return 0 if parent is not None and parent.isValid() else len(self.rows)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        if not 0 <= index.row() < len(self.rows):
            return None
        row = self.rows[index.row()]
        if role == ROW:
            return row
        facts = self._finder.facts.get(row.index, NO_FACTS)
        if role == FACTS:
            return facts
        if role == Qt.ItemDataRole.DisplayRole:
            return str(row.title)
        if role in (Qt.ItemDataRole.ToolTipRole, Qt.ItemDataRole.AccessibleTextRole):
            words = ", ".join(str(part) for part in (row.spoken, facts.spoken) if part)
            words = f"{words}\n{told(row.impossible)}" if row.impossible else words
            return plain_tip(words) if role == Qt.ItemDataRole.ToolTipRole else words
        return None


class BarList(QWidget):
    """The list with its filter. Several rows may be selected, for one note on all of them."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._follows = False
        self.finder = BarFinder(session, self)
        self.thumbs = BarThumbs(session, self)
        self.filter = QComboBox()
        self.filter.setAccessibleName(say("Which bars are listed"))
        self.filter.addItems([say(words) for _, words in FILTERS])
        self.written = QCheckBox(say("As &written"))
        self.written.setToolTip(
            say("Every bar once, as written, instead of as played ({key})", key=ORDER_KEY)
        )
        self.pictures = QComboBox()
        self.pictures.setAccessibleName(say("Picture of each bar"))
        self.pictures.setToolTip(say("What the small picture of each bar shows"))
        self.pictures.addItems([say(words) for _, words in SHOWN])
        self.model = BarModel(self.finder)
        self.view = BarView(session, self.thumbs)
        self.view.setAccessibleName(say("Bars"))
        self.view.setModel(self.model)
        self.heading = Heading(say("Bars as played"))
        self.count = Words()
        self.count.setProperty("role", "faint")
        self.nothing = Faint()
        self._lay_out()
        self._restore()

        self.filter.currentIndexChanged.connect(self.refresh)
        self.written.toggled.connect(self._order_changed)
        self.pictures.currentIndexChanged.connect(self._pictures_changed)
        self.view.selectionModel().currentChanged.connect(self._chosen)
        self.view.rename.connect(self.rename)
        self.finder.found.connect(self._measured)
        self.thumbs.drawn.connect(lambda _: self.view.viewport().update())
        for signal in (session.opened, session.changed, session.fingers.fingered):
            signal.connect(self.refresh)
        session.opened.connect(self.view.scheduleDelayedItemsLayout)  # other strings, other height
        session.selection.selected.connect(self.follow)
        self._order_changed(self.written.isChecked())

    def _lay_out(self) -> None:
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        head = QHBoxLayout()
        head.addWidget(self.heading, 1)
        head.addWidget(self.count)
        choice = FlowLayout(gap=em(self, 0.35))
        choice.addWidget(self.written)
        choice.addWidget(self.pictures)
        layout.addLayout(head)
        layout.addWidget(self.filter)
        layout.addLayout(choice)
        layout.addWidget(self.nothing)
        layout.addWidget(self.view, 1)

    # What is remembered.

    def _restore(self) -> None:
        found: dict[str, object] = {}

        def read() -> None:
            found.update(self._session.shelf.setting(BARS_VIEW, {}))

        self._session.guard(read)
        names = [name for name, _ in SHOWN]
        pictures = str(found.get("pictures"))
        if pictures in names:
            self.view.pictures = pictures
            self.pictures.setCurrentIndex(names.index(pictures))
        self.written.setChecked(bool(found.get("written")))

    def _remember(self) -> None:
        state = {"written": self.written.isChecked(), "pictures": self.view.pictures}
        self._session.guard(lambda: self._session.shelf.set_setting(BARS_VIEW, state))

    # Rows.

    @property
    def selected_bars(self) -> tuple[int, ...]:
        """Written indices of the selected rows, lowest first."""
        rows = {self.model.rows[i.row()].index for i in self.view.selectedIndexes()}
        return tuple(sorted(rows))

    def refresh(self) -> None:
        """Show the session's rows."""
        rows = self._session.rows
        which = FILTERS[self.filter.currentIndex()][0]
        shown = kept(rows, which, self.finder.facts)
        if self.written.isChecked():
            first: dict[int, BarRow] = {}
            for row in shown:
                first.setdefault(row.index, row)
            shown = [first[index] for index in sorted(first)]
        self._follows = True
        self.model.show_rows(shown)
        self._follows = False
        self.count.setText("" if which == "all" else str(len(shown)))
        empty = bool(rows) and not shown
        self.nothing.setText(self._why_empty(which) if empty else "")
        self.nothing.setVisible(empty)
        self.follow()

    def _why_empty(self, which: str) -> str:
        if which == "unfinished":
            return say("Nothing is unfinished: every bar is pinned or written about.")
        if which == "hardest" and not any(f.figure for f in self.finder.facts.values()):
            return say("The bars are measured when they are fingered.")
        return say("No bar is like that.")

    def _measured(self) -> None:
        self.refresh()
        self.view.viewport().update()

    def follow(self) -> None:
        """Show the selected bar."""
        written = self.written.isChecked()
        for at, row in enumerate(self.model.rows):
            same = row.index == self._session.selection.bar_index if written else None
            if same or (not written and row.position == self._session.selection.position):
                index = self.model.index(at)
                if self.view.currentIndex() == index and self.view.selectedIndexes():
                    return
                self._follows = True
                self.view.selectionModel().setCurrentIndex(
                    index, QItemSelectionModel.SelectionFlag.ClearAndSelect
                )
                self.view.scrollTo(index)
                self._follows = False
                return
        self._follows = True
        self.view.selectionModel().clear()
        self._follows = False

    def show_heard(self, position: int, bar: int) -> None:
        """Mark the bar that is heard, and bring it into view; -1 marks none."""
        written = self.written.isChecked()
        self.view.heard, self.view.by_written = (bar if written else position), written
        for at, row in enumerate(self.model.rows):
            if (row.index if written else row.position) == self.view.heard:
                self.view.scrollTo(self.model.index(at))
        self.view.viewport().update()

    def _order_changed(self, written: bool) -> None:
        self.heading.setText(say("Bars as written") if written else say("Bars as played"))
        self.heading.setAccessibleName(self.heading.text())
        self.view.setAccessibleDescription(
            say("The bars in written order with their marks")
            if written
            else say("The bars in playing order with their marks")
        )
        self._remember()
        self.refresh()

    def _pictures_changed(self, which: int) -> None:
        self.view.pictures = SHOWN[which][0]
        self._remember()
        self.view.scheduleDelayedItemsLayout()

    def _chosen(self, index: QModelIndex, _before: QModelIndex) -> None:
        if not self._follows and index.isValid():
            self._session.selection.select(self.model.rows[index.row()].position)

    # Sections.

    def make_section(self) -> None:
        """A section of the selected rows, or from the selected bar on; its letter is then
        edited in place."""
        bars = self.selected_bars or (self._session.selection.bar_index,)
        if bars[0] >= 0:
            self.view.section_from(bars)

    def rename(self, start: int) -> None:
        """Edit the letter of the section that begins at a written bar, where it stands."""
        at = next((i for i, row in enumerate(self.model.rows) if row.index == start), None)
        if at is None:  # not listed: the filter leaves it out
            self.filter.setCurrentIndex(0)
            at = next((i for i, row in enumerate(self.model.rows) if row.index == start), 0)
        index = self.model.index(at)
        self.view.scrollTo(index)
        letter = self.model.rows[at].section
        self.view.editor.edit(start, letter, self.view.visualRect(index))
