"""The dialogs that the menus open, and the small questions they ask."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QFileDialog, QInputDialog

from workbench.language.speech import say
from workbench.music.model import Piece
from workbench.music.suffixes import SCORES, patterns
from workbench.store.setting_names import IMPORT_FOLDER
from workbench.ui.bench.jobs import Progress
from workbench.ui.bench.services import expect_a_score
from workbench.ui.bench.session import Session
from workbench.ui.window.dialogs import Dialogs
from workbench.ui.window.panels import Panels

if TYPE_CHECKING:
    from workbench.handout.options import Audience


class Openers:
    """What a window's menus open. Whatever is half written is kept first."""

    def __init__(self, session: Session, panels: Panels, dialogs: Dialogs) -> None:
        self._session, self._panels, self._dialogs = session, panels, dialogs

    def deeds(self) -> dict[str, Callable[[], object]]:
        """What the commands of the menus do, by their names."""
        return {
            "import": self.choose_score,
            "shelf": self.open_shelf,
            "groups": self.groups,
            "change-music": self.change_music,
            "copy": self.copy,
            "keep-version": self.keep_version,
            "compare-versions": self.compare_versions,
            "history": self.show_history,
            "handout": self.handout,
            "print-student": partial(self.print_handout, "student"),
            "print-teacher": partial(self.print_handout, "teacher"),
            "learn-choices": self.learn_choices,
            "learn-scores": self.learn_scores,
            "help-here": self.show_help,
            "keys": self.show_keys,
            "cautions": self.show_cautions,
            "report": self.show_report,
        }

    def import_score(self, path: str) -> None:
        """Read a score in the background, then ask what to make of it."""
        session, over = self._session, self._dialogs.over

        def work(progress: Progress) -> Piece:
            from workbench.music.reading.apart import read_apart

            return read_apart(path, tick=lambda: progress(-1.0))

        def arrived(piece: Piece) -> None:
            from workbench.ui.lesson.import_dialog import ImportDialog

            self._dialogs.show(ImportDialog(session, path, piece, over))

        session.jobs.start("read", say("Reading the score"), work, arrived)

    def choose_score(self) -> None:
        """Ask for a file, then import it."""
        session = self._session
        folder = str(session.shelf.setting(IMPORT_FOLDER) or Path.home())
        expect_a_score()
        path, _ = QFileDialog.getOpenFileName(
            self._dialogs.over, say("Import a score"), folder,
            f"{say('Scores ({endings})', endings=patterns(SCORES))};;{say('All files (*)')}",
        )  # fmt: skip
        if path:
            session.guard(lambda: session.shelf.set_setting(IMPORT_FOLDER, str(Path(path).parent)))
            self.import_score(path)

    def open_shelf(self) -> None:
        from workbench.ui.shelf.dialog import ShelfDialog

        self._panels.commit()
        session, over = self._session, self._dialogs.over
        dialog = ShelfDialog(session, self._panels.teaching.findings, over)

        def closed() -> None:
            if dialog.made_of is not None:
                from workbench.ui.lesson.import_dialog import ImportDialog

                piece, title = dialog.made_of
                self._dialogs.show(ImportDialog(session, "", piece, over, title=title))

        self._dialogs.show(dialog)
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
            self._dialogs.show(MusicDialog(session, piece, self._dialogs.over))

        session.guard(show)

    def copy(self) -> None:
        """The lesson for another student; the copy is opened."""
        session = self._session
        if session.lesson is None:
            return
        student, agreed = QInputDialog.getText(
            self._dialogs.over, say("Copy the lesson"), say("For whom is the copy?")
        )
        lesson_id = session.lesson.id

        def make() -> None:
            made = session.shelf.duplicate(lesson_id, student=student.strip())
            session.open(made.id)

        if agreed:
            self._panels.commit()
            session.guard(make)

    def keep_version(self) -> None:
        """Keep the lesson as it is now, under a name."""
        session = self._session
        if session.lesson is None:
            return
        name, agreed = QInputDialog.getText(
            self._dialogs.over, say("Keep a version"), say("What is this version called?")
        )
        lesson_id = session.lesson.id
        if agreed and name.strip():
            self._panels.commit()
            if session.guard(lambda: session.shelf.keep_version(lesson_id, name.strip())):
                session.told.emit(say("Version '{name}' is kept.", name=name.strip()))

    def compare_versions(self) -> None:
        """The kept versions of the lesson: what changed, and the way back."""
        from workbench.ui.keeping.versions_dialog import VersionsDialog

        if self._session.lesson is not None:
            self._panels.commit()
            self._dialogs.show(VersionsDialog(self._session, self._dialogs.over))

    def show_history(self) -> None:
        """Every step of the lesson, and the way to any of them."""
        from workbench.ui.keeping.history_dialog import HistoryDialog

        if self._session.lesson is not None:
            self._panels.commit()
            self._dialogs.show(HistoryDialog(self._session, self._dialogs.over))

    def groups(self) -> None:
        """Who learns together."""
        from workbench.ui.lesson.groups_dialog import GroupsDialog

        self._dialogs.show(GroupsDialog(self._session, self._dialogs.over))

    def handout(self) -> None:
        from workbench.ui.paper.handout_dialog import HandoutDialog

        if self._session.lesson is not None:
            self._panels.commit()
            self._dialogs.show(HandoutDialog(self._session, self._dialogs.over))

    def print_handout(self, audience: Audience) -> None:
        """Show the handout as it will be on paper; it is printed from there."""
        from workbench.ui.paper.printing import PrintPreview

        if self._session.lesson is None:
            return
        self._panels.commit()
        if self._session.fingers.fingering is None:
            self._session.failed.emit(
                say("The fingering is still being worked out; try again in a moment.")
            )
            return
        PrintPreview.prepare(self._session, audience, self._dialogs.over, self._dialogs.show)

    def learn_scores(self) -> None:
        """Learn from scores that print fingers."""
        from workbench.ui.views.grading.scores_dialog import ScoresDialog

        self._panels.commit()
        self._dialogs.show(ScoresDialog(self._session, self._dialogs.over))

    def learn_choices(self) -> None:
        """Fit the weights to the teacher's choices, then show what changed."""
        from workbench.ui.views.grading.learning import learn

        learn(self._session, self._dialogs.over)

    def show_keys(self) -> None:
        from workbench.ui.help.shortcut_list import ShortcutList

        self._dialogs.show(ShortcutList(self._dialogs.over))

    def show_help(self) -> None:
        """The help, at the control that has the focus."""
        from workbench.ui.help.browser import help_at

        help_at(self._dialogs.over, self._dialogs.over.focusWidget())

    def show_cautions(self) -> None:
        from workbench.ui.lesson.cautions_dialog import CautionsDialog

        self._dialogs.show(CautionsDialog(self._session, self._dialogs.over))

    def show_report(self) -> None:
        """What went wrong last, to read and to keep."""
        from workbench.ui.help.report_dialog import ReportDialog

        self._dialogs.show(ReportDialog(self._session, self._dialogs.over))
