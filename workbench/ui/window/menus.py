"""The menus of the window, built of the table of commands."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMainWindow, QMenu

from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.ui.bench.commands import MENUS, Command, Menu
from workbench.ui.bench.session import Session

Deed = Callable[[], object]


@dataclass(frozen=True)
class TickedMenu:
    """A menu of which one entry is ticked: values with their words, and what choosing does."""

    names: Mapping[str, str]
    does: Callable[[str], object]
    now: str | None = None


@dataclass(frozen=True)
class Deeds:
    """What the commands do, by their names: ``plain`` ones, those that are ``ticked`` (told
    whether they are on), menus to choose in, and menus ``filled`` whenever they are opened."""

    plain: Mapping[str, Deed]
    ticked: Mapping[str, Callable[[bool], object]]
    choices: Mapping[str, TickedMenu]
    filled: Mapping[str, Callable[[QMenu], object]]


class Menus:
    """The menus, and the actions in them by the names of their commands."""

    def __init__(self, window: QMainWindow, session: Session, deeds: Deeds) -> None:
        self._window, self._session, self._deeds = window, session, deeds
        self._actions: dict[str, QAction] = {}
        self._menus: dict[str, QMenu] = {}
        self._ticks: dict[str, dict[str, QAction]] = {}
        self._need_lesson: list[QAction] = []
        for menu in MENUS:
            made = window.menuBar().addMenu(say(menu.words))
            made.setAccessibleName(say(menu.words).replace("&", ""))
            self._fill(made, menu)
        for signal in (session.opened, session.history_changed):
            signal.connect(self.refresh)
        self.refresh()

    def __getitem__(self, name: str) -> QAction:
        """The action of a command."""
        return self._actions[name]

    def menu(self, name: str) -> QMenu:
        """A menu by its name in the table."""
        return self._menus[name]

    @property
    def actions(self) -> tuple[QAction, ...]:
        """The actions of all commands, in the order of the menus."""
        return tuple(self._actions.values())

    def _fill(self, menu: QMenu, table: Menu) -> None:
        self._menus[table.name] = menu
        menu.setToolTipsVisible(True)
        for entry in table.entries:
            if entry is None:
                menu.addSeparator()
            elif isinstance(entry, Command):
                self._add(menu, entry)
            else:
                self._fill(menu.addMenu(say(entry.words)), entry)
        if table.name in self._deeds.choices:
            self._choose(menu, table.name, self._deeds.choices[table.name])
        elif not table.entries:
            fill = self._deeds.filled[table.name]
            menu.aboutToShow.connect(lambda: fill(menu))

    def _add(self, menu: QMenu, command: Command) -> None:
        words = command.say()
        action = QAction(f"{words}\t{command.writing}" if command.writing else words, self._window)
        action.setShortcuts([QKeySequence(key) for key in command.keys])
        if command.ticked:
            action.setCheckable(True)
            turn = self._deeds.ticked[command.name]
            action.triggered.connect(lambda on=False: turn(on))
        else:
            does = self._deeds.plain[command.name]
            action.triggered.connect(lambda _checked=False: does())
        menu.addAction(action)
        self._actions[command.name] = action
        if command.lesson:
            self._need_lesson.append(action)

    def _choose(self, menu: QMenu, name: str, choice: TickedMenu) -> None:
        group = QActionGroup(self._window)
        made = self._ticks[name] = {}
        for value, words in choice.names.items():
            action = QAction(words, self._window)
            action.setCheckable(True)
            action.triggered.connect(lambda _on=False, value=value: choice.does(value))
            group.addAction(action)
            menu.addAction(action)
            made[value] = action
        if choice.now is not None:
            made[choice.now].setChecked(True)

    def choices(self, name: str) -> dict[str, QAction]:
        """The entries of a menu to choose in, by their values."""
        return self._ticks[name]

    def tick(self, name: str, on: bool) -> None:
        """Tick a command, or take its tick away, without doing what it does."""
        self._actions[name].setChecked(on)

    def refresh(self) -> None:
        """What can be done now, and what undo and redo would do."""
        lesson = self._session.lesson
        for action in self._need_lesson:
            action.setEnabled(lesson is not None)
        self._menus["versions"].setEnabled(lesson is not None)
        if lesson is None:
            return
        try:
            history = self._session.shelf.history(lesson.id)
        except BadInput as wrong:
            self._session.failed.emit(str(wrong))
            return
        for command, name, label in (
            ("undo", say("&Undo"), history.undo_label),
            ("redo", say("&Redo"), history.redo_label),
        ):
            action = self._actions[command]
            action.setText(f"{name}: {label}" if label else name)
            action.setEnabled(label is not None)
