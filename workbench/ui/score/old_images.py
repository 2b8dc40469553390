"""Old images of the score are let go of a few systems at a time: all those of a long piece at
once are a wait that can be felt."""

from __future__ import annotations

import time
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer

if TYPE_CHECKING:
    from workbench.engraving.paint import Placed, ScoreImage

AT_ONCE = 0.004  # seconds of it in one go


class OldImages(QObject):
    """Holds what is no longer shown until there is time to destroy it."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._left: list[Placed] = []
        self._between = QTimer(self)
        self._between.setInterval(0)
        self._between.timeout.connect(self._some)

    def take(self, image: ScoreImage | None) -> None:
        """An image that is shown no more; systems that others hold cost nothing."""
        if image is not None:
            self._left.extend(image.placed)
            self._between.start()

    def _some(self) -> None:
        until = time.thread_time() + AT_ONCE
        while self._left:
            self._left.pop()
            if time.thread_time() >= until:
                break
        if not self._left:
            self._between.stop()
