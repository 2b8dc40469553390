"""The menu of safe keeping: backups, archives, the bin, and forgetting a student."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QFileDialog, QInputDialog, QMessageBox

from workbench.language.speech import count, say
from workbench.ui.bench.jobs import Progress
from workbench.ui.bench.session import Session
from workbench.ui.window.dialogs import Dialogs

if TYPE_CHECKING:
    from workbench.store.archiving import Merged
    from workbench.store.backups import Backup

FIRST_LOOK = 4000  # milliseconds after the start, when the window has settled


class SafeKeeping:
    """What the menu does. ``restore`` puts a backup in the store's place, and a new window
    on it in this one's."""

    def __init__(
        self, session: Session, dialogs: Dialogs, restore: Callable[[Backup], object]
    ) -> None:
        self._session, self._dialogs, self._restore = session, dialogs, restore

    def deeds(self) -> dict[str, Callable[[], object]]:
        """What the commands of the menu do, by their names."""
        return {
            "backups": self.backups,
            "save-archive": self.save_archive,
            "open-archive": self.open_archive,
            "empty-bin": self.empty_bin,
            "forget-student": self.erase_student,
        }

    def look_after(self) -> None:
        """The daily check and backup, in the background; says so only where something is
        wrong."""
        place = self._session.shelf.place

        def work(_progress: Progress) -> str:
            from workbench.store.backups import daily

            return daily(place)

        def done(wrong: str) -> None:
            if wrong:
                self._session.failed.emit(wrong)

        self._session.jobs.start(
            "backup", say("Backing up"), work, done, lane="backup", wrong=self._session.failed.emit
        )

    def backups(self) -> None:
        """Show the backups."""
        from workbench.ui.keeping.backups_dialog import BackupsDialog

        dialog = BackupsDialog(self._session.shelf.place, self._dialogs.over)
        dialog.wanted.connect(self._restore)
        self._dialogs.show(dialog)

    def save_archive(self) -> None:
        """Ask where an archive of the whole shelf goes, and write it."""
        from workbench.store.archive import ENDING

        path, _ = QFileDialog.getSaveFileName(
            self._dialogs.over, say("Archive of all lessons"),
            str(Path.home() / f"lessons{ENDING}"),
            say("Archives (*.pluckwright)"),
        )  # fmt: skip
        if path:
            self.write_archive(path)

    def write_archive(self, path: str, lesson_ids: tuple[str, ...] | None = None) -> None:
        """Write lessons into an archive, in the background."""
        shelf = self._session.shelf

        def done(written: int) -> None:
            self._session.told.emit(
                count(written, "{n} lesson is in {path}.", "{n} lessons are in {path}.", path=path)
                + " " + say("It holds your students' names: keep it to yourself.")
            )  # fmt: skip

        self._session.jobs.start(
            "archive", say("Writing the archive"),
            lambda progress: shelf.write_archive(
                Path(path), lesson_ids, lambda _done: progress(-1.0)
            ),
            done, lane="archive",
        )  # fmt: skip

    def open_archive(self) -> None:
        """Ask for an archive, and take it in."""
        path, _ = QFileDialog.getOpenFileName(
            self._dialogs.over, say("Take in an archive"), str(Path.home()),
            f"{say('Archives (*.pluckwright)')};;{say('All files (*)')}",
        )  # fmt: skip
        if path:
            self.merge(path)

    def merge(self, path: str) -> None:
        """Take in an archive, in the background, and show the open lesson anew."""
        session = self._session

        shelf = session.shelf

        def work(progress: Progress) -> Merged:
            return shelf.merge_archive(path, lambda done, of: progress(done / max(1, of)))

        def done(merged: Merged) -> None:
            from workbench.store.told import merged_words

            if session.lesson is not None:
                session.open(session.lesson.id)
            session.told.emit(" ".join(merged_words(merged)))

        session.jobs.start("archive", say("Taking in the archive"), work, done, lane="archive")

    def empty_bin(self) -> None:
        """Ask, then forget what lies in the bin."""
        shelf = self._session.shelf
        rows = shelf.lessons(archived=None, deleted=True)
        if not rows:
            self._session.told.emit(say("The bin is empty."))
            return
        asked = count(
            len(rows),
            "{n} lesson in the bin will be gone for good, with its history. This cannot be undone.",
            "{n} lessons in the bin will be gone for good, with their histories. This cannot be "
            "undone.",
        )
        if self.sure(say("Empty the bin"), asked):
            self._session.guard(lambda: self._forget_bin())

    def _forget_bin(self) -> None:
        shelf = self._session.shelf
        gone = shelf.empty_bin(older_than_days=-1)
        shelf.clear_room()
        self._session.told.emit(
            count(gone, "{n} lesson is gone for good.", "{n} lessons are gone for good.")
        )

    def erase_student(self) -> None:
        """Ask whom, and whether that is meant; then forget the student."""
        session = self._session
        names = session.shelf.students()
        if not names:
            session.told.emit(say("No lesson is for a student yet."))
            return
        name, agreed = QInputDialog.getItem(
            self._dialogs.over, say("Forget a student"), say("Student"), list(names), 0, False
        )
        if agreed and name and self.sure(
            say("Forget a student"),
            say(
                "All lessons for {name}, the name in groups and in earlier states, the older "
                "backups, and stores that were moved aside will be gone for good. This cannot be "
                "undone. Archives and printed pages are yours to look after.",
                name=name,
            ),
        ):  # fmt: skip
            self.forget(name)

    def forget(self, name: str) -> None:
        """Forget a student for good."""
        session = self._session

        def work() -> None:
            from workbench.store.erasing import erase

            if session.lesson is not None and session.lesson.student == name:
                session.put_away()
            gone = erase(session.shelf, name)
            if session.lesson is not None:
                session.open(session.lesson.id)
            session.told.emit(
                count(gone, "{n} lesson is gone for good.", "{n} lessons are gone for good.")
            )

        session.guard(work)

    def sure(self, title: str, words: str) -> bool:
        """Ask before something that cannot be undone."""
        box = QMessageBox(self._dialogs.over)
        box.setWindowTitle(title)
        box.setTextFormat(box.textFormat().PlainText)
        box.setText(words)
        box.setIcon(QMessageBox.Icon.Warning)
        yes = box.addButton(title, QMessageBox.ButtonRole.DestructiveRole)
        box.setDefaultButton(box.addButton(say("Cancel"), QMessageBox.ButtonRole.RejectRole))
        box.exec()
        return box.clickedButton() is yes
