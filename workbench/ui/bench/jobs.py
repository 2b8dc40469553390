"""Work off the interface thread: the newest of a kind wins, older results are dropped."""

from __future__ import annotations

import contextlib
import threading
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, TypeVar

from PySide6.QtCore import QObject, QRunnable, Qt, QThreadPool, Signal
from shiboken6 import isValid

from workbench.music.errors import BadInput

Progress = Callable[[float], None]
T = TypeVar("T")


class Cancelled(Exception):
    """The work was called off; nobody waits for its result."""


@dataclass(frozen=True)
class Ticket:
    """One piece of work: its kind, and the how manieth of that kind it is."""

    kind: str
    generation: int
    label: str


def _gone(answer: object) -> bool:
    """Whether what waits for an answer was closed meanwhile, such as a dialog's list."""
    owner = getattr(answer, "__self__", None)
    return isinstance(owner, QObject) and not isValid(owner)


class _Task(QRunnable):
    def __init__(self, jobs: Jobs, ticket: Ticket, work: Callable[[Progress], object]) -> None:
        super().__init__()
        self._jobs, self._ticket, self._work = jobs, ticket, work
        self.setAutoDelete(True)

    def run(self) -> None:
        jobs, ticket = self._jobs, self._ticket

        def progress(share: float) -> None:
            if not jobs.current(ticket):
                raise Cancelled
            jobs._progressed.emit(ticket, float(share))

        result: object = None
        fault: BaseException | None = None
        try:
            if not jobs.current(ticket):
                raise Cancelled
            result = self._work(progress)
        except BaseException as error:
            fault = error
        # The window, and the signal with it, may be gone by now: nobody to tell.
        with contextlib.suppress(RuntimeError):
            jobs._finished.emit(ticket, result, fault)


class Jobs(QObject):
    """Runs work in the background, one at a time for each lane.

    ``busy`` tells (label, share done; below 0: unknown) of the newest work, or ("", 0.0)
    when all is done. ``failed`` carries one sentence for the user.
    """

    busy = Signal(str, float)
    failed = Signal(str)
    fault = Signal(object)  # a fault of ours, as the exception
    _progressed = Signal(object, float)
    _finished = Signal(object, object, object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._lanes: dict[str, QThreadPool] = {}
        self._lock = threading.Lock()
        self._newest: dict[str, int] = {}
        self._waiting: dict[Ticket, tuple[Callable[[Any], None], Callable[[str], None]]] = {}
        self._progressed.connect(self._on_progress, Qt.ConnectionType.QueuedConnection)
        self._finished.connect(self._on_finished, Qt.ConnectionType.QueuedConnection)

    def start(
        self,
        kind: str,
        label: str,
        work: Callable[[Progress], T],
        done: Callable[[T], None],
        *,
        lane: str = "work",
        wrong: Callable[[str], None] | None = None,
    ) -> Ticket:
        """Run ``work(progress)`` in the background, then ``done(result)`` here.

        ``wrong`` takes the sentence of a BadInput; without it ``failed`` does.

        Whatever of the same kind is still under way is called off. Work in one
        lane runs in the order it was started.
        """
        with self._lock:
            generation = self._newest.get(kind, 0) + 1
            self._newest[kind] = generation
        ticket = Ticket(kind, generation, label)
        self._waiting[ticket] = (done, wrong or self.failed.emit)
        pool = self._lanes.get(lane)
        if pool is None:
            pool = self._lanes[lane] = QThreadPool(self)
            pool.setMaxThreadCount(1)
            pool.setExpiryTimeout(-1)  # one thread for good: the engraver is bound to its own
        self.busy.emit(label, -1.0)
        pool.start(_Task(self, ticket, work))
        return ticket

    def current(self, ticket: Ticket) -> bool:
        """Whether anybody still waits for this work. Safe from any thread."""
        with self._lock:
            return self._newest.get(ticket.kind) == ticket.generation

    def cancel(self, *kinds: str) -> None:
        """Call off all work of these kinds, or all work at all."""
        with self._lock:
            for kind in kinds or tuple(self._newest):
                self._newest[kind] = self._newest.get(kind, 0) + 1

    @property
    def idle(self) -> bool:
        """Whether nothing runs whose result anybody waits for."""
        return not any(self.current(ticket) for ticket in self._waiting)

    def stop(self) -> None:
        """Call everything off and wait until the threads are quiet."""
        self.cancel()
        for pool in self._lanes.values():
            pool.clear()
            pool.waitForDone(10_000)
        self._waiting.clear()

    def _on_progress(self, ticket: Ticket, share: float) -> None:
        if self.current(ticket):
            self.busy.emit(ticket.label, share)

    def _on_finished(self, ticket: Ticket, result: object, fault: BaseException | None) -> None:
        answers = self._waiting.pop(ticket, None)
        wanted = answers is not None and self.current(ticket)
        self._tell_what_is_left()
        if not wanted or answers is None or isinstance(fault, Cancelled):
            return
        done, wrong = answers
        if _gone(done):
            return
        if isinstance(fault, BadInput):
            wrong(" ".join(str(fault).split()))
        elif fault is not None:
            self.fault.emit(fault)
        else:
            done(result)

    def _tell_what_is_left(self) -> None:
        left = [ticket for ticket in self._waiting if self.current(ticket)]
        if left:
            self.busy.emit(left[-1].label, -1.0)
        else:
            self.busy.emit("", 0.0)
