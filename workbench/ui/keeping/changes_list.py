"""A list of what changed between two states of a lesson, worked out behind the interface."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QWidget

from workbench.language.speech import say
from workbench.teaching.lessons.differences import differences
from workbench.teaching.lessons.lesson import Lesson
from workbench.ui.bench.session import Session
from workbench.ui.kit.word_list import WordList

Two = Callable[[], tuple[Lesson | None, Lesson | None]]
KIND = "differences"


class ChangesList(WordList):
    """Shows sentences; ``told`` holds those shown last."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self.told: tuple[str, ...] = ()
        self.setAccessibleName(say("What changed"))

    def compare(self, load: Two) -> None:
        """Load two states, earlier and later, in the background; show what changed."""

        def work(_progress: object) -> tuple[str, ...]:
            before, after = load()
            if before is None or after is None:
                return (say("This state of the lesson is not kept any more."),)
            return differences(before, after) or (say("Nothing is different."),)

        self._session.jobs.start(
            KIND, say("Comparing"), work, self._show, lane="shelf",
            wrong=lambda sentence: self._show((sentence,)),
        )  # fmt: skip

    def _show(self, told: tuple[str, ...]) -> None:
        self.told = told
        self.clear()
        self.addItems(list(told))
