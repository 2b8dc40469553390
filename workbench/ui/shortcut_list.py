"""All keys at a glance: F1 or Ctrl+/."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QHeaderView,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from workbench.ui.look import em
from workbench.ui.note_keys import NOTE_KEYS

MORE = (
    ("F6, Shift+F6", "go to the next or previous part of the window"),
    ("Enter", "in the other fingerings: take the selected one"),
    ("Ctrl+Return", "in a teaching note: keep what is written"),
    ("F2", "in the script: write the bar's words; Ctrl+Return keeps them, Esc leaves them"),
    ("Space", "in the practice plan: tick the selected item"),
    ("Page Down, Space, arrows", "in the reading view: go on; Page Up or Backspace go back"),
    ("+, -, D, Esc", "in the reading view: larger, smaller, dark or light, close"),
    ("Ctrl and wheel", "zoom the score or the fretboard"),
)


class ShortcutList(QDialog):
    """A table of keys and what they do."""

    def __init__(self, actions: list[QAction], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle("Keys")
        self.setAccessibleName("Keys")
        rows = [
            (
                ", ".join(k.toString(QKeySequence.SequenceFormat.NativeText)
                          for k in action.shortcuts()),
                action.text().replace("&", "").rstrip(" …"),
            )
            for action in actions
            if action.shortcuts()
        ]  # fmt: skip
        rows += [*NOTE_KEYS, *MORE]
        self.table = QTableWidget(len(rows), 2)
        self.table.setAccessibleName("Keys and what they do")
        self.table.setHorizontalHeaderLabels(["Key", "Does"])
        self.table.verticalHeader().hide()
        self.table.setEditTriggers(QTableWidget.EditTrigger.NoEditTriggers)
        self.table.setTabKeyNavigation(False)
        self.table.setShowGrid(False)
        self.table.setSelectionMode(QTableWidget.SelectionMode.NoSelection)
        for at, row in enumerate(rows):
            for column, words in enumerate(row):
                self.table.setItem(at, column, QTableWidgetItem(words))
        header = self.table.horizontalHeader()
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(1, QHeaderView.ResizeMode.Stretch)
        self.table.resizeRowsToContents()
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        buttons.rejected.connect(self.reject)
        layout = QVBoxLayout(self)
        layout.addWidget(self.table)
        layout.addWidget(buttons)

    def sizeHint(self) -> QSize:
        return QSize(em(self, 34), em(self, 30))
