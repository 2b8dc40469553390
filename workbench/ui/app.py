"""Starts the window."""

from __future__ import annotations

import os
import sys
from collections.abc import Sequence
from typing import TYPE_CHECKING

from workbench.music.errors import BadInput

if TYPE_CHECKING:
    from workbench.store.shelf import Shelf
    from workbench.ui.services import Services
    from workbench.ui.window import Window

NO_DISPLAY = (
    "There is no display to open the window on; use a verb instead, such as 'read demo' or "
    "'handout demo -o handout.pdf' ('--help' lists them)."
)


def has_display(environment: dict[str, str] | None = None, platform: str = sys.platform) -> bool:
    """Whether a window could be shown here."""
    env = dict(os.environ) if environment is None else environment
    named = any(env.get(name) for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"))
    return named or not platform.startswith("linux")


def build(shelf: Shelf, services: Services | None = None) -> Window:
    """The window on a shelf, empty as yet. An application object must be there."""
    from workbench.ui import look
    from workbench.ui.session import Session
    from workbench.ui.window import Window

    look.load_fonts()
    look.apply(look.Look())
    return Window(Session(shelf, services))


def begin(window: Window) -> None:
    """Open the lesson that was on the bench last, or lay out the demo shelf where
    nothing was ever on it."""
    session = window.session

    def open_last() -> None:
        opened = session.open_last()
        if not opened and not session.shelf.lessons(archived=None, limit=1):
            session.fill_with_demo()

    session.guard(open_last)


def run(argv: Sequence[str] = ()) -> int:
    """Open the window, with a score file to import where one is named; the exit status.

    Raises BadInput where the store cannot be used.
    """
    if not has_display():
        print(NO_DISPLAY, file=sys.stderr)
        return 2
    from PySide6.QtCore import QTimer
    from PySide6.QtWidgets import QApplication

    from workbench.store.shelf import Shelf

    # The interface gets its turn soon even while something is worked out behind it.
    sys.setswitchinterval(0.0005)
    app = QApplication.instance() or QApplication(["pluckwright", *argv])
    app.setApplicationName("Pluckwright")
    try:
        shelf = Shelf()
    except BadInput as wrong:
        print(" ".join(str(wrong).split()), file=sys.stderr)
        return 2
    window = build(shelf)
    sys.excepthook = lambda _kind, fault, _trace: window.session.report(fault)
    window.show()
    # The window is on the screen before its content is looked for.
    QTimer.singleShot(0, lambda: begin(window))
    if argv:
        QTimer.singleShot(0, lambda: window.import_score(argv[0]))
    status = app.exec()
    sys.excepthook = sys.__excepthook__
    shelf.close()
    return int(status)


def main() -> int:
    """The window without a file."""
    return run(())
