"""Every step of the open lesson, with the way back and on to any of them."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QColor
from PySide6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QSplitter,
    QVBoxLayout,
    QWidget,
)

from workbench.language.speech import say
from workbench.music.bar_names import the_bar
from workbench.store.rows import History
from workbench.ui.bench.session import Session
from workbench.ui.keeping.changes_list import ChangesList
from workbench.ui.kit.look import colours, em
from workbench.ui.kit.parts import Faint, Words


class HistoryDialog(QDialog):
    """The steps, the newest at the top; the present one is marked."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        assert session.lesson
        self._session, self._lesson_id = session, session.lesson.id
        self.history: History = session.shelf.history(self._lesson_id)
        self.setWindowTitle(say("Undo history"))
        self.setAccessibleName(say("Undo history"))
        self.list = QListWidget()
        self.list.setAccessibleName(say("Steps, the newest first"))
        self.list.setUniformItemSizes(True)
        self.changes = ChangesList(session)
        self.go_button = QPushButton(say("&Go to this step"))
        self.go_button.setDefault(True)
        self.close_button = QPushButton(say("C&lose"))
        steps = Words(say("&Steps"))
        steps.setBuddy(self.list)
        what = Words(say("What &changes there, against now"))
        what.setBuddy(self.changes)
        left, right = QWidget(), QWidget()
        for side, label, part in ((left, steps, self.list), (right, what, self.changes)):
            column = QVBoxLayout(side)
            column.setContentsMargins(0, 0, 0, 0)
            column.addWidget(label)
            column.addWidget(part, 1)
        split = QSplitter()
        split.addWidget(left)
        split.addWidget(right)
        split.setChildrenCollapsible(False)
        split.setSizes([em(self, 26), em(self, 22)])
        bottom = QHBoxLayout()
        bottom.addWidget(self.go_button)
        bottom.addStretch(1)
        bottom.addWidget(self.close_button)
        layout = QVBoxLayout(self)
        layout.addWidget(split, 1)
        layout.addWidget(
            Faint(
                say(
                    "Steps that were undone stay here, fainter, until you change something: "
                    "then they go. A version that is kept never goes."
                )
            )
        )
        layout.addLayout(bottom)
        self.list.currentRowChanged.connect(self._chosen)
        self.list.itemActivated.connect(lambda _: self.go())
        self.go_button.clicked.connect(self.go)
        self.close_button.clicked.connect(self.reject)
        self._fill()

    def sizeHint(self) -> QSize:
        return QSize(em(self, 50), em(self, 28))

    def _fill(self) -> None:
        self.history = self._session.shelf.history(self._lesson_id)
        steps, at = self.history.steps, self.history.at
        faint = QColor(colours(self).faint)
        order, lesson = self._session.selection.order, self._session.lesson
        self.list.blockSignals(True)
        self.list.clear()
        for place in range(len(steps) - 1, -1, -1):
            step = steps[place]
            words = f"{step.made.astimezone():%Y-%m-%d %H:%M}   {step.label}"
            if lesson and 0 <= step.bar < len(order):
                bar = the_bar(lesson.piece.bars[order[step.bar]].number)
                words += f" ({say('at {bar}', bar=bar)})"
            if place == at:
                words += f"   ← {say('now')}"
            elif place > at:
                words += f"   ({say('undone')})"
            item = QListWidgetItem(words)
            item.setData(Qt.ItemDataRole.UserRole, step.place)
            font = item.font()
            font.setBold(place == at)
            font.setItalic(place > at)
            item.setFont(font)
            if place > at:
                item.setForeground(faint)
            self.list.addItem(item)
        self.list.blockSignals(False)
        self.list.setCurrentRow(len(steps) - 1 - at)
        self.list.setFocus()

    @property
    def place(self) -> int | None:
        """The step that is selected."""
        item = self.list.currentItem()
        return int(item.data(Qt.ItemDataRole.UserRole)) if item else None

    def _chosen(self, _row: int) -> None:
        place, now = self.place, self.history.steps[self.history.at].place
        self.go_button.setEnabled(place is not None and place != now)
        if place is None:
            return
        shelf, lesson_id = self._session.shelf, self._lesson_id
        self.changes.compare(
            lambda: (shelf.state_at(lesson_id, now), shelf.state_at(lesson_id, place))
        )

    def go(self) -> None:
        """Make the selected step the present state; the dialog stays for another look."""
        place = self.place
        if place is not None and self.go_button.isEnabled():
            self._session.go_to_step(place)
            self._fill()
