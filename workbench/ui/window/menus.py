"""Everything the window can do, in its menus, each with a key where it is often used."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMenu

from workbench.language import speech
from workbench.language.speech import mark, say
from workbench.music.errors import BadInput
from workbench.ui.kit.look import SCALES, THEMES
from workbench.ui.views.grading.learning import forget, learn, learn_grades
from workbench.ui.window import languages
from workbench.ui.window.music_menu import MusicMenu
from workbench.ui.window.openers import PRINTS, Openers
from workbench.ui.window.recent import fill_recent
from workbench.ui.window.safe_keeping import SafeKeeping
from workbench.ui.window.sound_menu import SoundMenu

if TYPE_CHECKING:
    from workbench.ui.window.window import Window

VIEWS = (
    mark("&Score"), mark("Techni&ques"), mark("Practice pla&n"), mark("Script"), mark("Gra&de"),
    mark("Arrangement"),
)  # fmt: skip


class Menus(Openers):
    """Builds the menus of a window and carries out what they say."""

    def __init__(self, window: Window) -> None:
        super().__init__(window)
        self.actions: list[QAction] = []
        self._need_lesson: list[QAction] = []
        self._lesson_menu()
        self._edit_menu()
        self.music = MusicMenu(window, self._menu(say("&Music")), self._add)
        SoundMenu(window, self._menu(say("&Sound")), self._add)
        self._view_menu()
        self._help_menu()
        session = self._session
        for signal in (session.opened, session.history_changed):
            signal.connect(self.refresh)
        self.refresh()

    def _add(
        self, menu: QMenu, text: str, does: Callable[[], object], *keys: str, lesson: bool = False
    ) -> QAction:
        action = QAction(text, self._window)
        action.setShortcuts([QKeySequence(key) for key in keys])
        action.triggered.connect(lambda _checked=False: does())
        menu.addAction(action)
        self.actions.append(action)
        if lesson:
            self._need_lesson.append(action)
        return action

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
            action = QAction(words, self._window)
            action.setCheckable(True)
            action.triggered.connect(lambda _on=False, name=name: does(name))
            group.addAction(action)
            inner.addAction(action)
            made[name] = action
        return made

    def _help_menu(self) -> None:
        menu = self._menu(say("&Help"))
        self._add(menu, say("&Help on this"), self.show_help, "F1")
        self._add(menu, say("&Keys …"), self.show_keys, "Ctrl+/")
        self._add(menu, say("&Tour of the window"), self.take_tour)
        self._add(menu, say("Health &cautions …"), self.show_cautions)
        self._add(menu, say("&Error report …"), self.show_report)

    def refresh(self) -> None:
        """What can be done now, and what undo and redo would do."""
        lesson = self._session.lesson
        for action in self._need_lesson:
            action.setEnabled(lesson is not None)
        self.versions.setEnabled(lesson is not None)
        if lesson is None:
            return
        try:
            history = self._session.shelf.history(lesson.id)
        except BadInput as wrong:
            self._session.failed.emit(str(wrong))
            return
        for action, name, label in (
            (self.undo, say("&Undo"), history.undo_label),
            (self.redo, say("&Redo"), history.redo_label),
        ):
            action.setText(f"{name}: {label}" if label else name)
            action.setEnabled(label is not None)

    def show_look(self) -> None:
        """Tick the theme and text size in use."""
        self.themes[self._window.look.theme].setChecked(True)
        self.scales[f"{self._window.look.scale} %"].setChecked(True)

    def _scale(self, by: int) -> None:
        at = SCALES.index(self._window.look.scale) + by
        if 0 <= at < len(SCALES):
            self._window.set_look(scale=SCALES[at])

    def _full_screen(self, on: bool) -> None:
        self._window.showFullScreen() if on else self._window.showNormal()

    def _undo(self) -> None:
        self._keep_written()
        self._session.undo()

    def _redo(self) -> None:
        self._session.redo()

    def _new_note(self) -> None:
        self._window.side.setCurrentIndex(0)
        self._window.notes.new_note()

    def _list_versions(self) -> None:
        self.versions.clear()
        lesson = self._session.lesson
        found = self._session.shelf.versions(lesson.id) if lesson else ()
        for version in reversed(found):
            made = version.made.astimezone().strftime("%Y-%m-%d %H:%M")
            action = self.versions.addAction(f"{version.name}, {made}")
            action.triggered.connect(
                lambda _on=False, number=version.id: self._session.go_back(number)
            )
        if not found:
            self.versions.addAction(say("No version is kept yet")).setEnabled(False)


def _capital(words: str) -> str:
    return words[0].upper() + words[1:]
