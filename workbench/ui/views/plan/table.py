"""The plan as a table: a heading for each day, a box to tick for everything to do."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QPointF, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPen
from PySide6.QtWidgets import QHeaderView, QStyle, QStyleOptionViewItem, QTableWidgetItem

from workbench.language.speech import say
from workbench.teaching.planning.files import day_in_words
from workbench.teaching.planning.items import PlanItem
from workbench.teaching.planning.plan import Plan
from workbench.ui.kit.look import colours
from workbench.ui.views.page import QuietTable, RowDelegate, cell

ID = Qt.ItemDataRole.UserRole
BAR = ID + 1
DAY = ID + 2


class PlanTable(QuietTable):
    """Shows a plan; tells what is ticked and which bar a row is about."""

    ticked = Signal(str, bool, str)  # id of the item, on or off, its words
    bar_chosen = Signal(int)  # a written bar

    def __init__(self) -> None:
        columns = (say("To do"), say("Minutes"), say("Tempo"), say("How"))
        super().__init__(columns, say("Practice plan by days"), {0: 26})
        self._filling = False
        self.setItemDelegateForColumn(0, _Ticks(self))
        header = self.horizontalHeader()
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.Interactive)
        header.setSectionResizeMode(3, QHeaderView.ResizeMode.Stretch)
        self.itemChanged.connect(self._changed)
        self.currentCellChanged.connect(self._go_to)

    def show_plan(self, plan: Plan) -> None:
        """Show a plan; the row that was selected stays so."""
        here = self.currentItem()
        chosen = here.data(ID) if here else None
        scrolled = self.verticalScrollBar().value()
        self._filling = True
        self.setUpdatesEnabled(False)
        self.clearSpans()
        self.setRowCount(0)
        for day in plan.days:
            self._heading(day_in_words(day), day.day)
            for item in day.items:
                self._row(item)
        if plan.done:
            minutes = sum(item.minutes for item in plan.done)
            self._heading(say("Done, {n} minutes", n=round(minutes)), 0)
            for item in plan.done:
                self._row(item)
        row = self.row_of(chosen) if chosen else -1
        if row >= 0:
            self.setCurrentCell(row, 0)
        self.fit()
        self.verticalScrollBar().setValue(scrolled)
        self.setUpdatesEnabled(True)
        self._filling = False

    def chosen_item(self) -> str:
        """The id of the item in the current row; empty without one."""
        first = self.item(self.currentRow(), 0) if self.currentRow() >= 0 else None
        return str(first.data(ID) or "") if first is not None else ""

    def row_of(self, item: str) -> int:
        """The row of a plan item; -1 where it has none."""
        return self._find(ID, item)

    def go_to_day(self, day: int) -> None:
        """Bring a day's heading to the top."""
        row = self._find(DAY, day)
        heading = self.item(row, 0) if row >= 0 else None
        if heading is not None:
            self.scrollToItem(heading, self.ScrollHint.PositionAtTop)

    def _find(self, role: int, wanted: object) -> int:
        for row in range(self.rowCount()):
            first = self.item(row, 0)
            if first is not None and first.data(role) == wanted:
                return row
        return -1

    def _heading(self, words: str, day: int) -> None:
        row = self.rowCount()
        self.insertRow(row)
        item = cell(words, bold=True)
        item.setFlags(Qt.ItemFlag.ItemIsEnabled)
        item.setBackground(self.palette().alternateBase())
        item.setData(DAY, day)
        self.setItem(row, 0, item)
        self.setSpan(row, 0, 1, self.columnCount())

    def _row(self, item: PlanItem) -> None:
        row = self.rowCount()
        self.insertRow(row)
        what = cell(str(item.what))
        if item.kind != "warm up":  # comes anew every day, so that there is nothing to tick
            what.setFlags(what.flags() | Qt.ItemFlag.ItemIsUserCheckable)
            what.setCheckState(Qt.CheckState.Checked if item.done else Qt.CheckState.Unchecked)
        what.setData(ID, item.id)
        what.setData(BAR, item.bars[0] if item.bars else -1)
        tempo = item.tempo
        if tempo:
            tempo = f"{tempo}\n{say('to ♩ = {beats}', beats=item.beats)}"
        cells = (
            what,
            cell(f"{max(1, round(item.minutes))}"),
            cell(tempo),
            cell(str(item.exercise)),
        )
        for column, part in enumerate(cells):
            # in the middle, as the box to tick is
            part.setTextAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
            self.setItem(row, column, part)

    def _changed(self, item: QTableWidgetItem) -> None:
        name = item.data(ID)
        if self._filling or item.column() != 0 or not name:
            return
        self.ticked.emit(name, item.checkState() == Qt.CheckState.Checked, item.text())

    def _go_to(self, row: int, *_others: int) -> None:
        first = self.item(row, 0)
        bar = first.data(BAR) if first is not None and not self._filling else None
        if bar is not None and bar >= 0:
            self.bar_chosen.emit(bar)


class _Ticks(RowDelegate):
    """Draws the box to tick so that it is seen on a dark ground as well."""

    def paint(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        super().paint(painter, option, index)
        state = index.data(Qt.ItemDataRole.CheckStateRole)
        if state is None:
            return
        full = QStyleOptionViewItem(option)
        self.initStyleOption(full, index)
        view = option.widget
        where = QStyle.SubElement.SE_ItemViewItemCheckIndicator
        box = view.style().subElementRect(where, full, view).toRectF().adjusted(1, 1, -1, -1)
        c = colours(view)
        done = Qt.CheckState(state) == Qt.CheckState.Checked
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(c.ink), 1.4))
        painter.setBrush(QColor(c.accent if done else c.panel))
        painter.drawRoundedRect(box, 2, 2)
        if done:
            side = box.width()
            painter.setPen(QPen(QColor(c.accent_ink), max(1.8, side * 0.14)))
            corners = ((0.22, 0.52), (0.42, 0.72), (0.8, 0.28))
            painter.drawPolyline(
                [QPointF(box.x() + x * side, box.y() + y * box.height()) for x, y in corners]
            )
        painter.restore()
