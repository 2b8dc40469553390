"""Processes that work off a list, each job within a limit of time and memory.

A process that dies, hangs or grows beyond the limit costs only the job it had: it is ended,
the job is told as failed, and another process takes its place.
"""

from __future__ import annotations

import contextlib
import math
import multiprocessing
import signal
import sys
import time
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from multiprocessing.connection import Connection, wait
from typing import Any, Generic, TypeVar

from workbench.music.reading.budget import Watch, limit_memory, out_of_time

J = TypeVar("J")
R = TypeVar("R")

JOBS_A_PROCESS = 50  # then a fresh one, to keep memory in bounds
LOADING = 900.0  # seconds on the clock for a process to be there, on the busiest machine


@dataclass(frozen=True)
class Limits:
    """``seconds`` of the processor's time and ``memory`` in bytes of data for one job.

    A job that waits without working, or has to on a busy machine, may take ``slack`` times as
    long on the clock.
    """

    seconds: float
    memory: int
    slack: float = 20.0


@dataclass(frozen=True)
class Lost:
    """Why there is no answer for a job: "time" of the processor, "clock", or "died"."""

    why: str
    seconds: float


def _serve(work: Callable[[Any], Any], pipe: Connection, limits: Limits) -> None:
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # whoever started us decides when to stop
    limit_memory(limits.memory)
    watch = Watch()
    with contextlib.suppress(EOFError, OSError):
        pipe.send(None)  # what is needed is loaded, work can begin
        while (job := pipe.recv()) is not None:
            watch.allow(limits.seconds)
            answer = work(job)
            watch.allow(math.inf)
            pipe.send(answer)


class _Worker(Generic[J]):
    """One process and the job it has."""

    def __init__(self, work: Callable[[J], Any], limits: Limits) -> None:
        spawn = multiprocessing.get_context("spawn")  # Qt and fork do not go together
        self.pipe, other = spawn.Pipe()
        self._process = spawn.Process(target=_serve, args=(work, other, limits), daemon=True)
        self._process.start()
        other.close()
        self.loaded = False
        self.job: J | None = None
        self.begun = 0.0
        self.done = 0

    def give(self, job: J) -> None:
        self.job, self.begun = job, time.monotonic()
        with contextlib.suppress(OSError):  # dead already: noticed when it is listened to
            self.pipe.send(job)

    def why(self) -> str:
        """Why a process that ended by itself did so."""
        self._process.join(5)
        return "time" if out_of_time(self._process.exitcode) else "died"

    def end(self) -> None:
        self._process.kill()
        self._process.join()
        self.pipe.close()

    def let_go(self) -> None:
        with contextlib.suppress(OSError):
            self.pipe.send(None)
        self._process.join(5)
        self.end()


def worked_off(
    work: Callable[[J], R], jobs: Iterable[J], processes: int, limits: Limits
) -> Iterator[tuple[J, R | Lost]]:
    """Every job with its answer, as they come in. ``work`` is a function of a module.

    Whatever is raised meanwhile, Ctrl-C above all, ends all processes at once.
    """
    left = list(jobs)[::-1]
    workers: list[_Worker[J]] = []
    try:
        while left or any(worker.job is not None for worker in workers):
            while left and len(workers) < processes:
                workers.append(_Worker(work, limits))
            for worker in workers:
                if worker.job is None and left:
                    worker.give(left.pop())
            busy = {w.pipe: w for w in workers if w.job is not None}
            ready = set(wait(list(busy), timeout=0.2))
            for pipe, worker in busy.items():
                found = _answer(worker, pipe in ready, limits)
                if found is None:
                    continue
                job, answer = worker.job, found[0]
                assert job is not None
                worker.job = None
                worker.done += 1
                if isinstance(answer, Lost):
                    workers.remove(worker)
                    worker.end()
                elif worker.done >= JOBS_A_PROCESS:
                    workers.remove(worker)
                    worker.let_go()
                yield job, answer
    finally:
        for worker in workers:
            worker.end() if worker.job is not None or sys.exc_info()[0] else worker.let_go()


def _answer(worker: _Worker[Any], ready: bool, limits: Limits) -> tuple[Any] | None:
    """What became of a worker's job, in a tuple; None while it goes on."""
    seconds = time.monotonic() - worker.begun
    if ready:
        try:
            answer = worker.pipe.recv()
        except (EOFError, OSError):
            return (Lost(worker.why(), seconds),)
        if worker.loaded:
            return (answer,)
        worker.loaded, worker.begun = True, time.monotonic()
        return None
    if seconds > (limits.seconds * limits.slack if worker.loaded else LOADING):
        return (Lost("clock", seconds),)
    return None
