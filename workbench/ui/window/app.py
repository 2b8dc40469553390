"""Starts the window."""

from __future__ import annotations

import contextlib
import os
import sys
import traceback
from collections.abc import Sequence
from typing import TYPE_CHECKING

from workbench.language import speech
from workbench.language.speech import mark, say
from workbench.music.errors import BadInput
from workbench.store.setting_names import LANGUAGE

if TYPE_CHECKING:
    from workbench.store.backups import Backup
    from workbench.store.shelf import Shelf
    from workbench.ui.bench.services import Services
    from workbench.ui.window.window import Window

NO_DISPLAY = mark(
    "There is no display to open the window on; use a verb instead, such as 'read demo' or "
    "'handout demo -o handout.pdf' ('--help' lists them)."
)


_open: list[Window] = []  # the windows on the screen, the newest last


def has_display(environment: dict[str, str] | None = None, platform: str = sys.platform) -> bool:
    """Whether a window could be shown here."""
    env = dict(os.environ) if environment is None else environment
    named = any(env.get(name) for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"))
    return named or not platform.startswith("linux")


def build(shelf: Shelf, services: Services | None = None) -> Window:
    """The window on a shelf, empty as yet. An application object must be there."""
    from workbench.ui.bench.session import Session
    from workbench.ui.kit import look
    from workbench.ui.window import languages, layout
    from workbench.ui.window.window import Window

    languages.speak(languages.wanted(shelf))
    look.load_fonts()
    # Before there are widgets: to dress them anew takes as long as to build them.
    look.apply(layout.kept(shelf).look)
    window = Window(Session(shelf, services))
    window.language_wanted.connect(lambda code: change_language(window, code))
    window.restore_wanted.connect(lambda backup: restore_backup(window, backup))
    return window


def change_language(window: Window, code: str) -> Window:
    """Put a window in another language in this one's place, on the same shelf and at the
    same bar of the same lesson; "" is the language of the system.

    The choice is kept on the shelf. What was half written is kept first.
    """

    session = window.session
    if not session.guard(lambda: session.shelf.set_setting(LANGUAGE, code or None)):
        return window
    window.keep_all()
    session.keep_view()
    where = window.pos(), window.size(), window.windowState()
    services = session.services
    new = build(session.shelf, services)
    new.move(where[0])
    new.resize(where[1])
    new.setWindowState(where[2])
    _take_over(new, instead=window)
    new.show()
    window.close()
    window.deleteLater()
    begin(new)
    name = speech.OFFERED[speech.chosen()]
    new.session.told.emit(say("The window speaks {language} now.", language=name))
    return new


def _take_over(window: Window, instead: Window | None = None) -> None:
    """Hold on to the window that is open: nobody else does."""
    if instead in _open:
        _open.remove(instead)
    _open.append(window)
    window.destroyed.connect(lambda: _open.remove(window) if window in _open else None)


def _report(fault: BaseException) -> None:
    """A fault that nobody took care of is told in the window, with its report."""
    traceback.print_exception(fault)
    if _open:
        _open[-1].session.report(fault)


def begin(window: Window) -> None:
    """Open the lesson that was on the bench last, or lay out the demo shelf where
    nothing was ever on it."""
    session = window.session

    def open_last() -> None:
        opened = session.open_last()
        if not opened and not session.shelf.lessons(archived=None, limit=1):
            session.fill_with_demo()

    session.guard(open_last)
    if refused := session.shelf.read_only:
        session.failed.emit(str(refused))
    left = session.keeper.left()
    if left:
        from workbench.ui.keeping.left_dialog import LeftDialog

        window.show_dialog(LeftDialog(session, left, window))


def _first_look(window: Window, with_score: bool) -> None:
    begin(window)
    if not with_score and window.dialog is None:
        window.session.guard(window.guide.offer)


def open_shelf() -> tuple[Shelf | None, str]:
    """The store, and what was done to it. Where it cannot be opened the teacher is told why,
    and may restore a backup, begin a new one, or give up: then there is None."""
    from workbench.store.opening import StorePlace
    from workbench.store.shelf import Shelf
    from workbench.ui.keeping.trouble_dialog import TroubleDialog
    from workbench.ui.kit import look

    said = ""
    while True:
        try:
            return Shelf(), said
        except BadInput as wrong:
            sentence = " ".join(str(wrong).split())
        print(sentence, file=sys.stderr)
        look.load_fonts()
        look.apply(look.Look())
        place = None
        with contextlib.suppress(BadInput):
            place = StorePlace()
        dialog = TroubleDialog(sentence, place)
        if not dialog.exec():
            return None, said
        said = dialog.said


def restore_backup(window: Window, backup: Backup) -> Window:
    """Put a backup in the store's place, and a new window on it in this one's."""
    from workbench.store.backups import restore
    from workbench.store.shelf import Shelf
    from workbench.store.told import restored_words

    session = window.session
    window.keep_all()
    session.close()
    session.shelf.close()
    said, wrong = "", ""
    try:
        said = " ".join(restored_words(restore(session.shelf.place, backup)))
    except BadInput as fault:
        wrong = str(fault)
    session.lesson = None  # nothing of the old store is kept in the new one
    place = session.shelf.place
    new = build(Shelf(place.file or place.url.render_as_string(False)), session.services)
    new.resize(window.size())
    _take_over(new, instead=window)
    new.show()
    window.close()
    window.deleteLater()
    begin(new)
    new.notice.say(wrong or said)
    return new


def open_file(window: Window, path: str) -> None:
    """A file that the desktop hands over: an archive is taken in, a score imported."""
    from workbench.music.suffixes import has_suffix
    from workbench.store.archive import ENDING

    if has_suffix(path, (ENDING,)):
        window.safe.merge(path)
    else:
        window.import_score(path)


def run(argv: Sequence[str] = ()) -> int:
    """Open the window, on a score or archive where one is named; the exit status.

    Raises BadInput where the store cannot be used.
    """
    if not has_display():
        print(say(NO_DISPLAY), file=sys.stderr)
        return 2
    from PySide6.QtCore import QTimer
    from PySide6.QtGui import QIcon
    from PySide6.QtWidgets import QApplication

    from workbench.fingering.weights import RESOURCES
    from workbench.ui.bench.tidying import Tidying
    from workbench.ui.window import languages

    # The interface gets its turn soon even while something is worked out behind it.
    sys.setswitchinterval(0.0005)
    app = QApplication.instance() or QApplication(["pluckwright", *argv])
    app.setApplicationName("Pluckwright")
    # Where the desktop finds name and icon.
    QApplication.setDesktopFileName("pluckwright")
    QApplication.setWindowIcon(QIcon(str(RESOURCES / "pictures" / "icon.svg")))
    languages.speak(languages.wanted())
    shelf, said = open_shelf()
    if shelf is None:
        return 2
    tidying = Tidying(app)
    window = build(shelf)
    window.notice.say(said) if said else None
    _take_over(window)
    sys.excepthook = lambda _kind, fault, _trace: _report(fault)
    window.show()
    # The window is on the screen before its content is looked for.
    QTimer.singleShot(0, lambda: _first_look(window, bool(argv)))
    if argv:
        QTimer.singleShot(0, lambda: open_file(window, argv[0]))
    from workbench.ui.window.safe_keeping import FIRST_LOOK

    QTimer.singleShot(FIRST_LOOK, window, window.safe.look_after)
    tidying.spare()
    status = app.exec()
    sys.excepthook = sys.__excepthook__
    tidying.end()
    shelf.close()
    return int(status)


def main() -> int:
    """The window without a file."""
    return run(())
