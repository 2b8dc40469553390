"""Limits that a process sets to itself: the processor's time and the memory of its work."""

from __future__ import annotations

import contextlib
import math
import os
import signal
import threading
import time

OUT_OF_TIME = 74  # exit status
_CPU_SIGNAL = int(getattr(signal, "SIGXCPU", 24))  # of a limit that the system kept


def out_of_time(status: int | None) -> bool:
    """Whether a process with this exit status ended because its time was up."""
    return status in (OUT_OF_TIME, -_CPU_SIGNAL)


def limit_memory(memory: int) -> None:
    """Allow this process so many bytes of data, where the system can."""
    _limit("RLIMIT_DATA", memory)


class Watch:
    """Ends the process when it has worked too long on one thing."""

    def __init__(self) -> None:
        self._until = math.inf
        threading.Thread(target=self._look, daemon=True).start()

    def allow(self, seconds: float) -> None:
        """From now on so many seconds of the processor's time."""
        now = time.process_time()
        self._until = now + seconds
        if seconds != math.inf:  # for work that lets no other thread in
            _limit("RLIMIT_CPU", math.ceil(self._until) + 2)

    def _look(self) -> None:
        while True:
            time.sleep(0.1)
            if time.process_time() > self._until:
                os._exit(OUT_OF_TIME)


def _limit(name: str, value: int) -> None:
    """Set a limit of the system's, where there is such a thing."""
    with contextlib.suppress(ImportError, AttributeError, ValueError, OSError):
        import resource

        kind = getattr(resource, name)
        hard = resource.getrlimit(kind)[1]
        least = value if hard == resource.RLIM_INFINITY else min(value, hard)
        resource.setrlimit(kind, (least, hard))
