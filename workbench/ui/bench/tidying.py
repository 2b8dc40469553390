"""Memory is tidied in the interface's thread alone.

Objects that refer to one another in a circle, as a dialog and what it connects do, are found
by Python's collector, in whatever thread happens to make an object just then. A widget let go
of in another thread than its own brings the program down.
"""

from __future__ import annotations

import gc

from PySide6.QtCore import QObject, QTimer

EVERY = 1000  # milliseconds


class Tidying:
    """Takes the collector's turns over, by its own measure, until ``end``."""

    def __init__(self, parent: QObject | None = None) -> None:
        gc.disable()
        self._timer = QTimer(parent)
        self._timer.setInterval(EVERY)
        self._timer.timeout.connect(self.tidy)
        self._timer.start()

    def spare(self) -> None:
        """What is there by now stays anyway, and need not be looked through again."""
        gc.freeze()

    def tidy(self) -> None:
        """Look through the generations that are due."""
        for generation, most in enumerate(gc.get_threshold()):
            if gc.get_count()[generation] <= most:
                return
            gc.collect(generation)

    def end(self) -> None:
        """Leave it to the collector again."""
        self._timer.stop()
        gc.unfreeze()
        gc.enable()
