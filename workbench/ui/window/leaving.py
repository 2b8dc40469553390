"""What the window asks before anything could be lost: at a conflict, and when it is closed."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QTimer

from workbench.language.speech import say

if TYPE_CHECKING:
    from workbench.ui.window.window import Window


def choose_state(window: Window) -> None:
    """Ask which of two states of the lesson stands."""
    from workbench.ui.keeping.meeting_dialog import MeetingDialog

    def ask() -> None:
        keeper = window.session.keeper
        if keeper.meeting and not isinstance(window.dialog, MeetingDialog):
            window.show_dialog(MeetingDialog(keeper, window))

    QTimer.singleShot(0, ask)  # whoever made the change has done with it then


def all_kept(window: Window) -> bool:
    """Whether the window may go: nothing that was typed would be lost, or that was said."""
    keeper = window.session.keeper
    kept = keeper.meeting is None and window.notes.commit() and keeper.try_again()
    if kept or window.warned:
        return True
    window.warned = True
    if keeper.meeting is not None:
        choose_state(window)
    aside = keeper.waiting or keeper.meeting is not None
    window.notice.say(
        say(
            "The last change is not saved. Close again to leave all the same: it is written "
            "aside and offered at the next start."
        )
        if aside
        else say("What you wrote can be kept nowhere; copy it before you close again.")
    )
    return False
