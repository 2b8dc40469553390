"""Watches how long the interface thread is busy between two looks at its events.

What counts is the processor time of that thread itself: however busy the machine is
with other things, only work that the window does in one go makes it long. It is told in
pages: how long the same thread takes for a page of plain text, measured in the same run.
"""

from __future__ import annotations

import statistics
import sys
import threading
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import QTimer
from PySide6.QtGui import QImage, QPainter, QTextDocument

LIMIT = 42.0  # pages of plain text; about a tenth of a second where this was written
WORDS = "Let the thumb rest on its string until the chord has been heard. " * 60
_LOOK_EVERY = 0.004


def page() -> float:
    """Processor seconds that this thread takes to lay out and paint a page of plain text,
    the median of several."""
    took = []
    for _ in range(7):
        begun = time.thread_time()
        document = QTextDocument()
        document.setPlainText(WORDS)
        document.setTextWidth(600)
        image = QImage(600, 850, QImage.Format.Format_RGB32)
        painter = QPainter(image)
        document.drawContents(painter)
        painter.end()
        took.append(time.thread_time() - begun)
    return statistics.median(took)


@dataclass(frozen=True)
class Busy:
    """One stretch of work without a look at the events: what the user did, for how many
    pages' time of the processor, and where the thread was late in it."""

    doing: str
    pages: float
    where: str

    def __str__(self) -> str:
        return f"{self.pages:.1f} pages' time while '{self.doing}':\n{self.where}"


class Watch:
    """A heartbeat on the interface thread, and a second thread that looks where the
    interface is whenever the beat stays away. Start it on the interface thread."""

    def __init__(self, limit: float = LIMIT) -> None:
        self.page = page()
        self.limit = limit
        self.busy: list[Busy] = []
        self.longest: dict[str, float] = {}
        self.doing = "starting"
        self._beat = QTimer()
        self._beat.setInterval(0)
        self._beat.timeout.connect(self.beat)
        self._thread = threading.get_ident()
        self._clock = time.pthread_getcpuclockid(self._thread)
        self._last = time.thread_time()
        self._where = ""
        self._on = False
        self._stop = threading.Event()
        self._looker = threading.Thread(target=self._look, daemon=True)

    def __enter__(self) -> Watch:
        self._on = True
        self._last = time.thread_time()
        self._beat.start()
        self._looker.start()
        return self

    def __exit__(self, *_: object) -> None:
        self.beat()
        self._on = False
        self._beat.stop()
        self._stop.set()
        self._looker.join()

    def beat(self) -> None:
        """The interface looks at its events now."""
        now = time.thread_time()
        took, where = (now - self._last) / self.page, self._where
        if self._on:
            if took > self.limit:
                # The processor may be slower now than it was: asked again beside the block.
                self.page = max(self.page, page())
                took = (now - self._last) / self.page
            self.longest[self.doing] = max(took, self.longest.get(self.doing, 0.0))
            if took > self.limit:
                self.busy.append(Busy(self.doing, took, where))
        self._where = ""
        self._last = time.thread_time()

    def _look(self) -> None:
        while not self._stop.wait(_LOOK_EVERY):
            last = self._last
            if self._on and time.clock_gettime(self._clock) - last > self.limit * self.page / 2:
                frame = sys._current_frames().get(self._thread)
                if frame is not None and self._last == last:
                    self._where = _stack(frame)

    def do(self, doing: str, action: Callable[[], Any]) -> Any:
        """One thing that the user does, measured by itself."""
        self.beat()
        self.doing = doing
        try:
            return action()
        finally:
            self.beat()

    @contextmanager
    def unwatched(self) -> Iterator[None]:
        """What the test does for itself is no work of the window."""
        self.beat()
        self._on = False
        try:
            yield
        finally:
            self._last = time.thread_time()
            self._on = True

    def report(self) -> str:
        """Every stretch that was too long; empty where none was."""
        return "\n".join(map(str, self.busy))


def _stack(frame: Any) -> str:
    """The innermost calls, the last one first. Reads no files: it has to be quick."""
    lines = []
    while frame is not None and len(lines) < 16:
        code = frame.f_code
        lines.append(f"    {code.co_name} ({code.co_filename}:{frame.f_lineno})")
        frame = frame.f_back
    return "\n".join(lines)
