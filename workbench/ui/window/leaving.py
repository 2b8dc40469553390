"""What the window asks before anything could be lost: at a conflict, and when it is closed."""

from __future__ import annotations

from PySide6.QtCore import QTimer

from workbench.language.speech import say
from workbench.ui.bench.session import Session
from workbench.ui.window.dialogs import Dialogs
from workbench.ui.window.panels import Panels


class Leaving:
    """Asks. ``warned``: it was said that something is not saved."""

    def __init__(self, session: Session, panels: Panels, dialogs: Dialogs) -> None:
        self._session, self._panels, self._dialogs = session, panels, dialogs
        self.warned = False

    def choose_state(self) -> None:
        """Ask which of two states of the lesson stands."""
        from workbench.ui.keeping.meeting_dialog import MeetingDialog

        def ask() -> None:
            keeper = self._session.keeper
            if keeper.meeting and not isinstance(self._dialogs.shown, MeetingDialog):
                self._dialogs.show(MeetingDialog(keeper, self._dialogs.over))

        QTimer.singleShot(0, ask)  # whoever made the change has done with it then

    def all_kept(self) -> bool:
        """Whether the window may go: nothing that was typed would be lost, or that was said."""
        keeper = self._session.keeper
        kept = keeper.meeting is None and self._panels.notes.commit() and keeper.try_again()
        if kept or self.warned:
            return True
        self.warned = True
        if keeper.meeting is not None:
            self.choose_state()
        aside = keeper.waiting or keeper.meeting is not None
        self._panels.notice.say(
            say(
                "The last change is not saved. Close again to leave all the same: it is written "
                "aside and offered at the next start."
            )
            if aside
            else say("What you wrote can be kept nowhere; copy it before you close again.")
        )
        return False
