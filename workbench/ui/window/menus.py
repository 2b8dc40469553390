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
class Choice:
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
    choices: Mapping[str, Choice]
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

<<<<<<< HEAD
    def _toggle(
        self, menu: QMenu, text: str, does: Callable[[bool], object], on: bool, *keys: str
    ) -> QAction:
        action = QAction(text, self._window)
        action.setCheckable(True)
        action.setChecked(on)
        action.setShortcuts([QKeySequence(key) for key in keys])
        action.toggled.connect(does)
        menu.addAction(action)
        self.actions.append(action)
        return action

    def _menu(self, title: str) -> QMenu:
        menu = self._window.menuBar().addMenu(title)
        menu.setAccessibleName(title.replace("&", ""))
        menu.setToolTipsVisible(True)
        return menu

    def _lesson_menu(self) -> None:
        menu = self._menu(say("&Lesson"))
        self.import_action = self._add(menu, say("&Import a score …"), self.choose_score, "Ctrl+O")
        self.shelf_action = self._add(menu, say("&Shelf …"), self.open_shelf, "Ctrl+L")
        self.recent = menu.addMenu(say("Rece&nt lessons"))
        self.recent.aboutToShow.connect(lambda: fill_recent(self.recent, self._window))
        self._add(menu, say("Student &groups …"), self.groups)
        menu.addSeparator()
        self._add(menu, say("Instrument and &key …"), self.change_music, "Ctrl+K", lesson=True)
        self._add(menu, say("&Copy for another student …"), self.copy, "Ctrl+Shift+D", lesson=True)
        self._add(menu, say("Keep a &version …"), self.keep_version, "Ctrl+Shift+S", lesson=True)
        self._add(
            menu, say("Compare versio&ns …"), self.compare_versions, "Ctrl+Shift+V", lesson=True
        )
        self._safe_menu(menu.addMenu(say("Sa&fe keeping")))
        self.versions = menu.addMenu(say("Go &back to a version"))
        self.versions.aboutToShow.connect(self._list_versions)
        menu.addSeparator()
        self.handout_action = self._add(
            menu, say("&Handout …"), self.handout, "Ctrl+E", lesson=True
        )
        for words, audience, key in PRINTS:
            self._add(menu, say(words), partial(self.print_handout, audience), key, lesson=True)
        teaching = self._window.teaching
        self._add(menu, say("Export the practice p&lan …"), teaching.export_plan, lesson=True)
        self.script_action = self._add(
            menu, say("Export the scrip&t …"), teaching.export_script, "Ctrl+Shift+E", lesson=True
        )
        self._add(menu, say("&Read the script"), teaching.read, "F5", lesson=True)
        menu.addSeparator()
        self._add(menu, say("&Quit"), self._window.close, "Ctrl+Q")

    def _safe_menu(self, menu: QMenu) -> None:
        safe = self.safe = SafeKeeping(self._window)
        menu.setToolTipsVisible(True)
        self._add(menu, say("&Backups …"), safe.backups)
        self._add(menu, say("Save all in an &archive …"), safe.save_archive)
        self._add(menu, say("&Take in an archive …"), safe.open_archive)
        menu.addSeparator()
        self._add(menu, say("&Empty the bin …"), safe.empty_bin)
        self._add(menu, say("&Forget a student …"), safe.erase_student)

    def _edit_menu(self) -> None:
        session, window = self._session, self._window
        menu = self._menu(say("&Edit"))
        self.undo = self._add(menu, say("&Undo"), self._undo, "Ctrl+Z", lesson=True)
        self.redo = self._add(menu, say("&Redo"), self._redo, "Ctrl+Shift+Z", "Ctrl+Y", lesson=True)
        self._add(menu, say("Undo histor&y …"), self.show_history, "Ctrl+H", lesson=True)
        menu.addSeparator()
        self._add(menu, say("&New remark on the bar"), self._new_note, "Ctrl+N", lesson=True)
        self._add(menu, say("&Pin this bar"), window.choices.keep, "Ctrl+B", lesson=True)
        self._add(menu, say("&Free note or bar"), session.free_note, "Ctrl+Backspace", lesson=True)
        self._add(
            menu, say("Take the other f&ingering"), window.choices.take, "Ctrl+T", lesson=True
        )
        self._add(menu, say("Why no&t …"), window.choices.why_not, "Ctrl+Shift+T", lesson=True)
        self._add(
            menu, say("&Section of the selected bars …"), window.bars.make_section, "Ctrl+G",
            lesson=True,
        )  # fmt: skip
        menu.addSeparator()
        self._add(
            menu, say("Learn from my &choices …"), partial(learn, session, window), lesson=True
        )
        self._add(menu, say("Forget what &was learnt"), partial(forget, session), lesson=True)
        self._add(menu, say("Learn fro&m my grades …"), partial(learn_grades, window))
        menu.addSeparator()
        self._add(menu, say("Next &bar"), lambda: session.select(session.position + 1),
                  "Ctrl+Down", "Ctrl+Right", lesson=True)  # fmt: skip
        self._add(menu, say("Pre&vious bar"), lambda: session.select(session.position - 1),
                  "Ctrl+Up", "Ctrl+Left", lesson=True)  # fmt: skip

    def _view_menu(self) -> None:
        window = self._window
        menu = self._menu(say("&View"))
        for at, name in enumerate(VIEWS):
            self._add(menu, say(name), partial(window.teaching.setCurrentIndex, at),
                      f"Ctrl+{at + 1}")  # fmt: skip
        self._add(menu, say("Bars as &written or as played"), window.bars.written.toggle, "Ctrl+R")
        menu.addSeparator()
        self.themes = self._exclusive(
            menu, say("&Colours"), {name: _capital(say(name)) for name in THEMES},
            lambda v: window.set_look(theme=v),
        )  # fmt: skip
        self.scales = self._exclusive(
            menu, say("&Text size"), {f"{s} %": f"{s} %" for s in SCALES},
            lambda v: window.set_look(scale=int(v.split()[0])),
        )  # fmt: skip
        self._add(menu, say("&Larger text"), lambda: self._scale(1), "Ctrl+Shift++", "Ctrl+Shift+=")
        self._add(menu, say("S&maller text"), lambda: self._scale(-1), "Ctrl+Shift+-")
        self._language_menu(menu)
        menu.addSeparator()
        score = window.score
        self._add(menu, say("Zoom the score &in"), lambda: score.set_zoom(score.zoom * 1.15),
                  "Ctrl++", "Ctrl+=")  # fmt: skip
        self._add(
            menu, say("Zoom the score &out"), lambda: score.set_zoom(score.zoom / 1.15), "Ctrl+-"
        )
        self._add(menu, say("Score at &100 %"), lambda: score.set_zoom(1.0), "Ctrl+0")
        menu.addSeparator()
        for part, words in (
            ("tab", say("T&ablature")), ("left", say("L&eft fingers")),
            ("right", say("&Right fingers")),
        ):  # fmt: skip
            on_row = score.bar.parts[part]  # ticked here and on the score's own row alike
            ticked = self._toggle(menu, words, on_row.setChecked, on_row.isChecked())
            on_row.toggled.connect(ticked.setChecked)
        score.wants_note.connect(self._new_note)
        self.left_handed = self._toggle(
            menu, say("Left-&handed fretboard"), window.set_left_handed, False, "Ctrl+Shift+L"
        )
        menu.addSeparator()
        self.full_screen = self._toggle(menu, say("&Full screen"), self._full_screen, False, "F11")
        self._add(menu, say("Layout as at the &beginning"), window.forget_layout)
        self._add(menu, say("Next &part of the window"), lambda: window.next_part(1), "F6")
        self._add(menu, say("Pre&vious part"), lambda: window.next_part(-1), "Shift+F6")

    def _language_menu(self, menu: QMenu) -> None:
        names = {"": say("As the system")} | speech.OFFERED
        tongues = self._exclusive(menu, say("Lan&guage"), names, self._window.speak)
        tongues[languages.kept_choice(self._session.shelf)].setChecked(True)
        self.languages = tongues

    def _exclusive(
        self, menu: QMenu, title: str, names: dict[str, str], does: Callable[[str], object]
    ) -> dict[str, QAction]:
        """A menu of ``names`` (what is chosen, and its words) of which one is ticked."""
        inner, group = menu.addMenu(title), QActionGroup(self._window)
        made = {}
        for name, words in names.items():
=======
    def _choose(self, menu: QMenu, name: str, choice: Choice) -> None:
        group = QActionGroup(self._window)
        made = self._ticks[name] = {}
        for value, words in choice.names.items():
>>>>>>> main
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
