"""The dialogs over the window: one at a time, with the help behind F1."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QDialog, QMainWindow

from workbench.ui.bench.session import Session

#: Work that ends with its dialog.
OF_DIALOGS = ("keys", "read again", "arrange", "handout", "scores")


class Dialogs:
    """Opens dialogs ``over`` a window. ``shown`` is the one that is open."""

    def __init__(self, session: Session, over: QMainWindow) -> None:
        self._session, self.over = session, over
        self.shown: QDialog | None = None

    def show(self, dialog: QDialog) -> None:
        """Open a dialog without stopping the rest of the program."""
        if self.shown is not None:
            self.shown.close()
        self.shown = dialog
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setModal(True)
        key = QShortcut(QKeySequence(Qt.Key.Key_F1), dialog)
        key.activated.connect(lambda: _help_in(dialog))

        def gone() -> None:
            self._session.jobs.cancel(*OF_DIALOGS)
            if self.shown is dialog:
                self.shown = None

        dialog.finished.connect(gone)
        dialog.show()
        if dialog.sizeHint().isValid():
            dialog.resize(dialog.sizeHint().boundedTo(self.over.size()))


def _help_in(dialog: QDialog) -> None:
    from workbench.ui.help.browser import help_at

    help_at(dialog, dialog.focusWidget())
