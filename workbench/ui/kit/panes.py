"""Parts side by side whose border the user can drag."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize
from PySide6.QtWidgets import QSplitter

Needs = tuple[bool, QSize, QSize, QSize]


class Panes(QSplitter):
    """A splitter that lays out anew only when a pane needs other room than before.

    Qt's own does so whenever a word in a pane changes, and passes it on: every splitter and tab
    around it is laid out and painted, several times for one key.
    """

    _needs: tuple[Needs, ...] = ()

    def event(self, event: QEvent) -> bool:
        if event.type() == QEvent.Type.LayoutRequest:
            panes = [pane for at in range(self.count()) if (pane := self.widget(at))]
            needs = tuple(
                (pane.isHidden(), pane.minimumSizeHint(), pane.minimumSize(), pane.maximumSize())
                for pane in panes
            )
            if needs == self._needs:
                return True
            self._needs = needs
        return super().event(event)
