"""Work off the interface thread: the newest of a kind wins, older results are dropped."""

from __future__ import annotations

import contextlib
import threading
from collections.abc import Callable
from dataclasses import dataclass
from functools import partial
from types import BuiltinMethodType, FunctionType, MethodType
from typing import Any, TypeVar

from PySide6.QtCore import QObject, QRunnable, Qt, QThreadPool, Signal
from shiboken6 import isValid

from workbench.music.errors import BadInput

Progress = Callable[[float], None]
T = TypeVar("T")

#: Work that did not end when its window closed: kept whole until the process ends, for a
#: thread must not tell anything to an object that is gone.
_lingering: list[Jobs] = []
PATIENCE = 10_000  # milliseconds that a closing window waits for a lane to be quiet


class Cancelled(Exception):
    """The work was called off; nobody waits for its result."""


@dataclass(frozen=True)
class Ticket:
    """One piece of work: its kind, and the how manieth of that kind it is."""

    kind: str
    generation: int
    label: str


class Teller:
    """What work tells while it runs, always to ``Jobs`` and never to a window itself: a window
    can go while the thread speaks, and Qt does not survive that.

    ``teller(share)`` tells the share done, ``teller.so_far(value)`` a result as far as it
    is. Both raise Cancelled where nobody waits any more. Safe from any thread.
    """

    def __init__(self, jobs: Jobs, ticket: Ticket) -> None:
        self._jobs, self._ticket = jobs, ticket

    def __call__(self, share: float) -> None:
        self._ask()
        self._jobs._progressed.emit(self._ticket, float(share))

    def so_far(self, value: object) -> None:
        self._ask()
        self._jobs._grown.emit(self._ticket, value)

    def _ask(self) -> None:
        if not self._jobs.current(self._ticket):
            raise Cancelled


@dataclass(frozen=True)
class _Waiting:
    """Who waits for a work. The work itself is held too: what it knows of a window must not
    be let go of last by its own thread."""

    work: Callable[[Teller], Any]
    done: Callable[[Any], None]
    wrong: Callable[[str], None]
    growing: Callable[[Any], None] | None
    anyway: Callable[[Any], None] | None


def _gone(answer: object) -> bool:
    """Whether what waits for an answer was closed meanwhile, such as a dialog's list: the
    owner of a method, or any object that a function took along from around it."""
    seen: set[int] = set()
    left = [answer]
    while left:
        value = left.pop()
        if id(value) in seen:
            continue
        seen.add(id(value))
        if isinstance(value, QObject):
            if not isValid(value):
                return True
        elif isinstance(value, partial):
            left += value.func, *value.args, *value.keywords.values()
        elif isinstance(value, MethodType):
            left += value.__self__, value.__func__
        elif isinstance(value, BuiltinMethodType):
            left.append(value.__self__)
        elif isinstance(value, FunctionType):
            for cell in value.__closure__ or ():
                with contextlib.suppress(ValueError):  # not bound yet, or no more
                    left.append(cell.cell_contents)
    return False


class _Task(QRunnable):
    def __init__(self, jobs: Jobs, ticket: Ticket, work: Callable[[Teller], object]) -> None:
        super().__init__()
        self._jobs, self._ticket = jobs, ticket
        self._work: Callable[[Teller], object] | None = work
        self.setAutoDelete(True)

    def run(self) -> None:
        result: object = None
        fault: BaseException | None = None
        try:
            if self._work is None or not self._jobs.current(self._ticket):
                raise Cancelled
            result = self._work(Teller(self._jobs, self._ticket))
        except BaseException as error:
            fault = error
        self._work = None
        self._jobs._keep(self._ticket, result, fault)
        # What was found, and a fault's frames, may know a window: let go of before anybody
        # is told, so that they are never let go of here.
        del result, fault
        with contextlib.suppress(RuntimeError):  # the program itself may be ending
            self._jobs._finished.emit(self._ticket)


class Jobs(QObject):
    """Runs work in the background, one at a time for each lane.

    ``busy`` tells (label, share done; below 0: unknown) of the newest work, or ("", 0.0)
    when all is done. ``failed`` carries one sentence for the user.
    """

    busy = Signal(str, float)
    failed = Signal(str)
    fault = Signal(object)  # a fault of ours, as the exception
    _progressed = Signal(object, float)
    _grown = Signal(object, object)
    _finished = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._lanes: dict[str, QThreadPool] = {}
        self._lock = threading.Lock()
        self._newest: dict[str, int] = {}
        self._waiting: dict[Ticket, _Waiting] = {}
        self._found: dict[Ticket, tuple[object, BaseException | None]] = {}
        self._progressed.connect(self._on_progress, Qt.ConnectionType.QueuedConnection)
        self._grown.connect(self._on_grown, Qt.ConnectionType.QueuedConnection)
        self._finished.connect(self._on_finished, Qt.ConnectionType.QueuedConnection)

    def start(
        self,
        kind: str,
        label: str,
        work: Callable[[Teller], T],
        done: Callable[[T], None],
        *,
        lane: str = "work",
        wrong: Callable[[str], None] | None = None,
        growing: Callable[[Any], None] | None = None,
        anyway: Callable[[T], None] | None = None,
    ) -> Ticket:
        """Run ``work(progress)`` in the background, then ``done(result)`` here.

        ``done`` is dropped where the dialog that asked is closed by then; ``anyway`` comes before
        it and must know no dialog: what is to be told or kept whoever still looks, such as
        where a file was written. ``wrong`` takes the sentence of a BadInput; without it
        ``failed`` does. ``growing`` takes, here too, what the work tells by ``so_far``.

        Whatever of the same kind is still under way is called off. Work in one
        lane runs in the order it was started.
        """
        with self._lock:
            generation = self._newest.get(kind, 0) + 1
            self._newest[kind] = generation
        ticket = Ticket(kind, generation, label)
        self._waiting[ticket] = _Waiting(work, done, wrong or self.failed.emit, growing, anyway)
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
        return not self.awaited

    @property
    def awaited(self) -> tuple[str, ...]:
        """What kinds of work somebody waits for, in the order they were asked."""
        return tuple(t.kind for t in self._waiting if self.current(t))

    def stop(self) -> None:
        """Call everything off and wait until the threads are quiet, for a while."""
        self.cancel()
        for pool in self._lanes.values():
            pool.clear()
        if all([pool.waitForDone(PATIENCE) for pool in self._lanes.values()]):
            self._waiting.clear()
            self._found.clear()
        else:
            self.setParent(None)
            _lingering.append(self)

    def _on_grown(self, ticket: Ticket, value: object) -> None:
        waiting = self._waiting.get(ticket)
        growing = waiting.growing if waiting is not None else None
        if growing is not None and self.current(ticket) and not _gone(growing):
            growing(value)

    def _on_progress(self, ticket: Ticket, share: float) -> None:
        if self.current(ticket):
            self.busy.emit(ticket.label, share)

    def _keep(self, ticket: Ticket, result: object, fault: BaseException | None) -> None:
        self._found[ticket] = result, fault

    def _on_finished(self, ticket: Ticket) -> None:
        waiting = self._waiting.pop(ticket, None)
        result, fault = self._found.pop(ticket, (None, None))
        self._tell_what_is_left()
        if waiting is None or not self.current(ticket) or isinstance(fault, Cancelled):
            return
        if isinstance(fault, BadInput):
            # What nobody looks at any more went wrong all the same.
            wrong = self.failed.emit if _gone(waiting.wrong) else waiting.wrong
            wrong(" ".join(str(fault).split()))
        elif fault is not None:
            self.fault.emit(fault)
        else:
            for answer in (waiting.anyway, waiting.done):
                if answer is not None and not _gone(answer):
                    answer(result)

    def _tell_what_is_left(self) -> None:
        left = [ticket for ticket in self._waiting if self.current(ticket)]
        if left:
            self.busy.emit(left[-1].label, -1.0)
        else:
            self.busy.emit("", 0.0)
