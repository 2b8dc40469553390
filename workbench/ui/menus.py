"""Everything the window can do, in its menus, each with a key where it is often used."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QFileDialog, QInputDialog, QMenu, QMessageBox

from workbench.music.errors import BadInput
from workbench.ui import edits
from workbench.ui.learning import forget, learn
from workbench.ui.look import SCALES, THEMES
from workbench.ui.services import SCORE_FILES

if TYPE_CHECKING:
    from workbench.ui.window import Window

LAST_FOLDER = "import.folder"


class Menus:
    """Builds the menus of a window and carries out what they say."""

    def __init__(self, window: Window) -> None:
        self._window, self._session = window, window.session
        self.actions: list[QAction] = []
        self._need_lesson: list[QAction] = []
        self._lesson_menu()
        self._edit_menu()
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
        menu = self._menu("&Lesson")
        self.import_action = self._add(menu, "&Import a score …", self.choose_score, "Ctrl+O")
        self.shelf_action = self._add(menu, "&Shelf …", self.open_shelf, "Ctrl+L")
        menu.addSeparator()
        self._add(menu, "Instrument and &key …", self.change_music, "Ctrl+K", lesson=True)
        self._add(menu, "&Copy for another student …", self.copy, lesson=True)
        self._add(menu, "Keep a &version …", self.keep_version, "Ctrl+Shift+S", lesson=True)
        self.versions = menu.addMenu("&Go back to a version")
        self.versions.aboutToShow.connect(self._list_versions)
        menu.addSeparator()
        self.handout_action = self._add(menu, "&Handout …", self.handout, "Ctrl+E", lesson=True)
        teaching = self._window.teaching
        self._add(menu, "Export the practice p&lan …", teaching.export_plan, lesson=True)
        self.script_action = self._add(
            menu, "Export the scrip&t …", teaching.export_script, "Ctrl+Shift+E", lesson=True
        )
        self._add(menu, "&Read the script", teaching.read, "F5", lesson=True)
        menu.addSeparator()
        self._add(menu, "&Quit", self._window.close, "Ctrl+Q")

    def _edit_menu(self) -> None:
        session, window = self._session, self._window
        menu = self._menu("&Edit")
        self.undo = self._add(menu, "&Undo", self._undo, "Ctrl+Z", lesson=True)
        self.redo = self._add(menu, "&Redo", self._redo, "Ctrl+Shift+Z", "Ctrl+Y", lesson=True)
        menu.addSeparator()
        self._add(menu, "New teaching &note", self._new_note, "Ctrl+N", lesson=True)
        self._add(menu, "&Pin this bar", window.choices.keep, "Ctrl+B", lesson=True)
        self._add(menu, "&Free note or bar", session.free_note, "Ctrl+Backspace", lesson=True)
        self._add(
            menu, "Take the other &fingering", window.choices.take, "Ctrl+T", lesson=True
        )
        self._add(menu, "&Section begins here …", self.section, "Ctrl+G", lesson=True)
        menu.addSeparator()
        self._add(menu, "Learn from my &choices …", partial(learn, session, window), lesson=True)
        self._add(menu, "Forget what &was learnt", partial(forget, session), lesson=True)
        menu.addSeparator()
        self._add(menu, "Next &bar", lambda: session.select(session.position + 1),
                  "Ctrl+Down", "Ctrl+Right", lesson=True)  # fmt: skip
        self._add(menu, "Pre&vious bar", lambda: session.select(session.position - 1),
                  "Ctrl+Up", "Ctrl+Left", lesson=True)  # fmt: skip

    def _view_menu(self) -> None:
        window = self._window
        menu = self._menu("&View")
        for at, name in enumerate(("&Score", "Techni&ques", "Practice pla&n", "Script"), 1):
            self._add(menu, name, partial(window.teaching.setCurrentIndex, at - 1),
                      f"Ctrl+{at}")  # fmt: skip
        menu.addSeparator()
        self.themes = self._exclusive(menu, "&Colours", THEMES, lambda v: window.set_look(theme=v))
        self.scales = self._exclusive(
            menu, "&Text size", tuple(f"{s} %" for s in SCALES),
            lambda v: window.set_look(scale=int(v.split()[0])),
        )  # fmt: skip
        self._add(menu, "&Larger text", lambda: self._scale(1), "Ctrl+Shift++", "Ctrl+Shift+=")
        self._add(menu, "S&maller text", lambda: self._scale(-1), "Ctrl+Shift+-")
        menu.addSeparator()
        score = window.score
        self._add(menu, "Zoom the score &in", lambda: score.set_zoom(score.zoom * 1.15),
                  "Ctrl++", "Ctrl+=")  # fmt: skip
        self._add(menu, "Zoom the score &out", lambda: score.set_zoom(score.zoom / 1.15), "Ctrl+-")
        self._add(menu, "Score at &100 %", lambda: score.set_zoom(1.0), "Ctrl+0")
        menu.addSeparator()
        self._toggle(menu, "T&ablature", lambda on: score.show_parts(tab=on), True)
        self._toggle(menu, "L&eft fingers", lambda on: score.show_parts(left=on), True)
        self._toggle(menu, "&Right fingers", lambda on: score.show_parts(right=on), True)
        self.left_handed = self._toggle(
            menu, "Left-&handed fretboard", window.set_left_handed, False, "Ctrl+Shift+L"
        )
        menu.addSeparator()
        self._toggle(menu, "&Full screen", self._full_screen, False, "F11")
        self._add(menu, "Next &part of the window", lambda: window.next_part(1), "F6")
        self._add(menu, "Pre&vious part", lambda: window.next_part(-1), "Shift+F6")

    def _exclusive(
        self, menu: QMenu, title: str, names: tuple[str, ...], does: Callable[[str], object]
    ) -> dict[str, QAction]:
        inner, group = menu.addMenu(title), QActionGroup(self._window)
        made = {}
        for name in names:
            action = QAction(name[0].upper() + name[1:], self._window)
            action.setCheckable(True)
            action.triggered.connect(lambda _on=False, name=name: does(name))
            group.addAction(action)
            inner.addAction(action)
            made[name] = action
        return made

    def _help_menu(self) -> None:
        menu = self._menu("&Help")
        self._add(menu, "&Keys …", self.show_keys, "F1", "Ctrl+/")
        self._add(menu, "&Health cautions …", self.show_cautions)
        self._add(menu, "&Error report …", self.show_report)

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
            (self.undo, "&Undo", history.undo_label), (self.redo, "&Redo", history.redo_label),
        ):  # fmt: skip
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
        self._window.notes.commit()
        self._window.teaching.commit()
        self._session.undo()

    def _redo(self) -> None:
        self._session.redo()

    def _new_note(self) -> None:
        self._window.side.setCurrentIndex(0)
        self._window.notes.new_note()

    # Dialogs.

    def choose_score(self) -> None:
        """Ask for a file, then import it."""
        folder = str(self._session.shelf.setting(LAST_FOLDER) or Path.home())
        path, _ = QFileDialog.getOpenFileName(
            self._window, "Import a score", folder, f"{SCORE_FILES};;All files (*)"
        )
        if path:
            session = self._session
            session.guard(
                lambda: session.shelf.set_setting(LAST_FOLDER, str(Path(path).parent))
            )
            self._window.import_score(path)

    def open_shelf(self) -> None:
        from workbench.ui.shelf_dialog import ShelfDialog

        self._window.notes.commit()
        self._window.show_dialog(ShelfDialog(self._session, self._window))

    def change_music(self) -> None:
        """Another instrument or key, from the score as it was imported."""
        from workbench.ui.music_dialog import MusicDialog
        from workbench.ui.shelf_dialog import piece_of

        session = self._session
        if session.lesson is None:
            return
        here, found = session.lesson.piece, piece_of(session)

        def show() -> None:
            piece = session.shelf.load_piece(found) if found else here
            self._window.show_dialog(MusicDialog(session, piece, self._window))

        session.guard(show)

    def copy(self) -> None:
        """The lesson for another student; the copy is opened."""
        session = self._session
        if session.lesson is None:
            return
        student, agreed = QInputDialog.getText(
            self._window, "Copy the lesson", "For whom is the copy?"
        )
        lesson_id = session.lesson.id

        def make() -> None:
            made = session.shelf.duplicate(lesson_id, student=student.strip())
            session.open(made.id)

        if agreed:
            self._window.notes.commit()
            session.guard(make)

    def section(self) -> None:
        """Name the section that begins at the selected bar; no name joins it to the one before."""
        session = self._session
        index = session.bar_index
        if index < 0 or session.lesson is None:
            return
        here = next((r.section for r in session.rows if r.index == index), "")
        letter, agreed = QInputDialog.getText(
            self._window, "Section", "Name of the section that begins here (empty: none):",
            text=here,
        )  # fmt: skip
        if agreed:
            session.edit("Set a section", lambda old: edits.begin_section(old, index, letter))

    def keep_version(self) -> None:
        """Keep the lesson as it is now, under a name."""
        session = self._session
        if session.lesson is None:
            return
        name, agreed = QInputDialog.getText(
            self._window, "Keep a version", "What is this version called?"
        )
        lesson_id = session.lesson.id
        if agreed and name.strip():
            self._window.notes.commit()
            if session.guard(lambda: session.shelf.keep_version(lesson_id, name.strip())):
                session.told.emit(f"Version '{name.strip()}' is kept.")

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
            self.versions.addAction("No version is kept yet").setEnabled(False)

    def handout(self) -> None:
        from workbench.ui.handout_dialog import HandoutDialog

        if self._session.lesson is not None:
            self._window.notes.commit()
            left = self._window.neck.neck.mirrored
            self._window.show_dialog(HandoutDialog(self._session, left, self._window))

    def show_keys(self) -> None:
        from workbench.ui.shortcut_list import ShortcutList

        self._window.show_dialog(ShortcutList(self.actions, self._window))

    def show_cautions(self) -> None:
        from workbench.ui.cautions_dialog import CautionsDialog

        self._window.show_dialog(CautionsDialog(self._session, self._window))

    def show_report(self) -> None:
        fault = self._session.last_fault
        box = QMessageBox(self._window)
        box.setWindowTitle("Error report")
        box.setText(
            "What follows tells those who mend the program what happened."
            if fault
            else "Nothing has gone wrong since the window was opened."
        )
        if fault:
            box.setDetailedText(fault)
        self._window.show_dialog(box)
