"""The dialogs that the menus open, and the small questions they ask."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QFileDialog, QInputDialog

from workbench.language.speech import mark, say
from workbench.music.suffixes import SCORES, patterns
from workbench.ui.bench.services import expect_a_score

if TYPE_CHECKING:
    from workbench.ui.window.window import Window

LAST_FOLDER = "import.folder"


class Openers:
    """What a window's menus open. Whatever is half written is kept first."""

    def __init__(self, window: Window) -> None:
        self._window, self._session = window, window.session

    def _keep_written(self) -> None:
        self._window.notes.commit()
        self._window.teaching.commit()

    def choose_score(self) -> None:
        """Ask for a file, then import it."""
        session = self._session
        folder = str(session.shelf.setting(LAST_FOLDER) or Path.home())
        expect_a_score()
        path, _ = QFileDialog.getOpenFileName(
            self._window, say("Import a score"), folder,
            f"{say('Scores ({endings})', endings=patterns(SCORES))};;{say('All files (*)')}",
        )  # fmt: skip
        if path:
            session.guard(lambda: session.shelf.set_setting(LAST_FOLDER, str(Path(path).parent)))
            self._window.import_score(path)

    def open_shelf(self) -> None:
        from workbench.ui.lesson.import_dialog import ImportDialog
        from workbench.ui.shelf.dialog import ShelfDialog

        self._keep_written()
        session, window = self._session, self._window
        dialog = ShelfDialog(session, window.teaching.findings, window)

        def closed() -> None:
            if dialog.made_of is not None:
                piece, title = dialog.made_of
                window.show_dialog(ImportDialog(session, "", piece, window, title=title))

        window.show_dialog(dialog)
        dialog.finished.connect(closed)

    def change_music(self) -> None:
        """Another instrument or key: from the score as it was imported, or from the music as
        it was corrected since."""
        from workbench.ui.lesson.music_dialog import MusicDialog

        session = self._session
        if session.lesson is None:
            return
        here, corrected = session.lesson.piece, session.lesson.corrected
        lesson_id = session.lesson.id

        def show() -> None:
            found = "" if corrected else session.shelf.lesson_row(lesson_id).piece_id
            piece = session.shelf.load_piece(found) if found else here
            self._window.show_dialog(MusicDialog(session, piece, self._window))

        session.guard(show)

    def copy(self) -> None:
        """The lesson for another student; the copy is opened."""
        session = self._session
        if session.lesson is None:
            return
        student, agreed = QInputDialog.getText(
            self._window, say("Copy the lesson"), say("For whom is the copy?")
        )
        lesson_id = session.lesson.id

        def make() -> None:
            made = session.shelf.duplicate(lesson_id, student=student.strip())
            session.open(made.id)

        if agreed:
            self._keep_written()
            session.guard(make)

    def keep_version(self) -> None:
        """Keep the lesson as it is now, under a name."""
        session = self._session
        if session.lesson is None:
            return
        name, agreed = QInputDialog.getText(
            self._window, say("Keep a version"), say("What is this version called?")
        )
        lesson_id = session.lesson.id
        if agreed and name.strip():
            self._keep_written()
            if session.guard(lambda: session.shelf.keep_version(lesson_id, name.strip())):
                session.told.emit(say("Version '{name}' is kept.", name=name.strip()))

    def compare_versions(self) -> None:
        """The kept versions of the lesson: what changed, and the way back."""
        from workbench.ui.keeping.versions_dialog import VersionsDialog

        if self._session.lesson is not None:
            self._keep_written()
            self._window.show_dialog(VersionsDialog(self._session, self._window))

    def show_history(self) -> None:
        """Every step of the lesson, and the way to any of them."""
        from workbench.ui.keeping.history_dialog import HistoryDialog

        if self._session.lesson is not None:
            self._keep_written()
            self._window.show_dialog(HistoryDialog(self._session, self._window))

    def groups(self) -> None:
        """Who learns together."""
        from workbench.ui.lesson.groups_dialog import GroupsDialog

        self._window.show_dialog(GroupsDialog(self._session, self._window))

    def handout(self) -> None:
        from workbench.ui.paper.handout_dialog import HandoutDialog

        if self._session.lesson is not None:
            self._keep_written()
            left = self._window.neck.neck.mirrored
            self._window.show_dialog(HandoutDialog(self._session, left, self._window))

    def print_handout(self, audience: str) -> None:
        """Show the handout as it will be on paper; it is printed from there."""
        from workbench.ui.paper.printing import PrintPreview

        if self._session.lesson is None:
            return
        self._keep_written()
        if self._session.fingering is None:
            self._session.failed.emit(
                say("The fingering is still being worked out; try again in a moment.")
            )
            return
        left = self._window.neck.neck.mirrored
        PrintPreview.prepare(self._session, audience, left, self._window)

    def show_keys(self) -> None:
        from workbench.ui.help.shortcut_list import ShortcutList

        self._window.show_dialog(ShortcutList(self._window.menuBar(), self._window))

    def show_help(self) -> None:
        """The help, at the control that has the focus."""
        from workbench.ui.help.browser import help_at

        help_at(self._window, self._window.focusWidget())

    def take_tour(self) -> None:
        """Walk through the window, one control after another."""
        from workbench.ui.window.tour import begin_tour

        begin_tour(self._window)

    def show_cautions(self) -> None:
        from workbench.ui.lesson.cautions_dialog import CautionsDialog

        self._window.show_dialog(CautionsDialog(self._session, self._window))

    def show_report(self) -> None:
        """What went wrong last, to read and to keep."""
        from workbench.ui.help.report_dialog import ReportDialog

        self._window.show_dialog(ReportDialog(self._session, self._window))


#: Names of the ways a lesson goes on paper, for the menu.
PRINTS = (
    (mark("Print the &handout …"), "student", "Ctrl+P"),
    (mark("Print the &teacher's sheet …"), "teacher", "Ctrl+Shift+P"),
)
