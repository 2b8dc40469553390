"""All keys at a glance, read off the table of commands."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import QSize
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QHBoxLayout,
    QHeaderView,
    QLineEdit,
    QTableWidget,
    QVBoxLayout,
    QWidget,
)

from workbench.language.speech import mark, say
from workbench.ui.bench.commands import MENUS, Command, Menu, commands
from workbench.ui.bench.finger_keys import NOTE_KEYS
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Words
from workbench.ui.kit.rows_table import RowsTable
from workbench.ui.writing.keys import WRITING_KEYS

Row = tuple[str, str, str]  # keys, what they do, where

MORE = (
    (mark("Enter"), mark("in the other fingerings: take the selected one")),
    (mark("Ctrl+Return"), mark("in a remark: keep what is written")),
    (
        mark("F2"),
        mark("in the script: write the bar's words; Ctrl+Return keeps them, Esc leaves them"),
    ),
    (mark("Space"), mark("in the practice plan: tick the selected item")),
    (
        mark("Page Down, Space, arrows"),
        mark("in the reading view: go on; Page Up or Backspace go back"),
    ),
    (mark("+, -, D, Esc"), mark("in the reading view: larger, smaller, dark or light, close")),
    (mark("Ctrl and wheel"), mark("zoom the score or the fretboard")),
)


def menu_rows() -> list[Row]:
    """A row for everything in the menus. What has no key of its own is reached by the
    underlined letters, from Alt on."""
    rows: list[Row] = []
    for menu in MENUS:
        words = say(menu.words)
        rows += _rows(menu, _plain(words), [f"Alt+{_letter(words)}"])
    return rows


def _rows(menu: Menu, where: str, reached: list[str]) -> Iterator[Row]:
    for entry in menu.entries:
        if entry is None:
            continue
        words = entry.say() if isinstance(entry, Command) else say(entry.words)
        path = [*reached, _letter(words) or "…"]
        if isinstance(entry, Menu) and entry.entries:
            yield from _rows(entry, f"{where}, {_plain(words)}", path)
            continue
        keys = key_words(entry) if isinstance(entry, Command) else ""
        yield keys or ", ".join(path), _plain(words), where


def key_words(command: Command) -> str:
    """The keys of a command as this system names them, or its key while music is written."""
    named = (
        QKeySequence(key).toString(QKeySequence.SequenceFormat.NativeText) for key in command.keys
    )
    return ", ".join(named) or command.writing


def first_key(name: str) -> str:
    """The first key of a command by its name. Raises KeyError where there is no such command."""
    named = {command.name: command for command in commands()}
    return key_words(named[name]).split(", ")[0]


def _plain(text: str) -> str:
    return text.replace("&&", "\0").replace("&", "").replace("\0", "&").rstrip(" …")


def _letter(text: str) -> str:
    """The underlined letter of a menu's word."""
    at = text.replace("&&", "  ").find("&")
    return text[at + 1].upper() if 0 <= at < len(text) - 1 else ""


class ShortcutList(QDialog):
    """A table of keys, what they do and where that stands, with a field to find one."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(say("Keys"))
        self.setAccessibleName(say("Keys"))
        inside = say("Music and lists")
        rows = menu_rows()
        rows += [(say(key), say(does), inside) for key, does in (*NOTE_KEYS, *MORE)]
        writing = say("While music is written")
        rows += [(say(key), say(does), writing) for key, does in WRITING_KEYS]
        self.table: QTableWidget = RowsTable(
            say("Keys and what they do"), [say("Key"), say("Does"), say("Where")], rows
        )
        self.table.setShowGrid(False)
        self.table.setAlternatingRowColors(True)
        self.table.setSelectionBehavior(QTableWidget.SelectionBehavior.SelectRows)
        header = self.table.horizontalHeader()
        for column, mode in enumerate(("ResizeToContents", "Stretch", "ResizeToContents")):
            header.setSectionResizeMode(column, QHeaderView.ResizeMode[mode])
        self.search = QLineEdit()
        self.search.setAccessibleName(say("Find a key or what it does"))
        self.search.setPlaceholderText(say("A key, or what it does"))
        self.search.textChanged.connect(self._narrow)
        find = Words(say("&Find"))
        find.setBuddy(self.search)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        buttons.rejected.connect(self.reject)
        top = QHBoxLayout()
        top.addWidget(find)
        top.addWidget(self.search, 1)
        layout = QVBoxLayout(self)
        layout.addLayout(top)
        layout.addWidget(self.table)
        layout.addWidget(buttons)
        self._rows = rows

    def sizeHint(self) -> QSize:
        return QSize(em(self, 46), em(self, 32))

    def _narrow(self, words: str) -> None:
        """Show the rows that have all the words."""
        wanted = words.casefold().split()
        for at, row in enumerate(self._rows):
            text = " ".join(row).casefold()
            self.table.setRowHidden(at, not all(word in text for word in wanted))
