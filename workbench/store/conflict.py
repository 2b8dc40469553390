"""What is raised where somebody else has changed a lesson meanwhile."""

from __future__ import annotations

from workbench.language.message import message
from workbench.music.errors import BadInput


class Conflict(BadInput):
    """A change was made on a state of a lesson that is no longer the present one.
    Nothing was saved."""

    def __init__(self, title: str) -> None:
        super().__init__(
            message(
                "Lesson '{title}' was changed in another window meanwhile; nothing was "
                "overwritten. Choose which of the two stands.",
                title=title,
            )
        )


class StoreRefused(BadInput):
    """The store could not be written: its disk is full, somebody else is writing, or the
    server is away. The same may succeed later."""
