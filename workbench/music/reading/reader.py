"""The process that reads scores for another one, with a limit to its time and its memory.

It is asked on its standard input and answers on its standard output; a message
is eight bytes of length (big-endian) and that much JSON. It ends with its input.
"""

from __future__ import annotations

import contextlib
import json
import math
import os
import signal
import sys
import threading
import time
import traceback
from typing import Any, BinaryIO

from workbench.language.message import to_plain
from workbench.music.codec import piece_to_dict
from workbench.music.errors import BadInput

SECONDS = 8  # of the processor, for a score of up to SIZE bytes
SIZE = 2**20
MOST_SECONDS = 60
MEMORY = 2**30  # bytes of data
KEPT = 400 * 2**20  # a process that has grown beyond this is not used again
OUT_OF_TIME = 74  # exit status

HEAD = 8


def seconds_for(size: int) -> float:
    """Seconds of the processor's time that a score of ``size`` bytes (unpacked) may take."""
    return float(min(MOST_SECONDS, SECONDS * max(1.0, size / SIZE)))


def send(stream: BinaryIO, message: Any) -> None:
    """Write one message."""
    data = json.dumps(message, separators=(",", ":")).encode("ascii")
    stream.write(len(data).to_bytes(HEAD, "big") + data)
    stream.flush()


def receive(stream: BinaryIO) -> Any:
    """The next message; None where the other side is gone."""
    head = stream.read(HEAD)
    if len(head) < HEAD:
        return None
    size = int.from_bytes(head, "big")
    data = stream.read(size)
    return json.loads(data) if len(data) == size else None


class Watch:
    """Ends the process when it has worked too long on one score."""

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


def answer(asked: dict[str, Any], watch: Watch) -> dict[str, Any]:
    """The piece that was asked for, or the sentence that says why there is none."""
    from workbench.music.reading.score import read_score

    given = asked["seconds"]
    watch.allow(given or SECONDS)
    _limit("RLIMIT_DATA", asked["memory"])
    try:
        os.chdir(asked["folder"])
        piece = read_score(
            asked["path"],
            tune=asked["tune"],
            parts=asked["parts"],
            loaded=lambda size: watch.allow(given or seconds_for(size)),
        )
        return {"piece": piece_to_dict(piece)}
    except BadInput as wrong:
        return {"wrong": to_plain(wrong.message)}
    except MemoryError:
        return {"memory": True}
    except Exception as fault:
        return {"fault": "".join(traceback.format_exception(fault))}
    finally:
        watch.allow(math.inf)


def _grown() -> bool:
    """Whether the process holds more than it should keep. What the system calls the most
    it ever held may be that of the program it was started by, hence the file."""
    try:
        with open("/proc/self/statm", encoding="ascii") as numbers:
            pages = int(numbers.read().split()[1])
        return pages * os.sysconf("SC_PAGE_SIZE") > KEPT
    except (OSError, ValueError, AttributeError):
        return False


def serve() -> None:
    """Answer until nobody asks any more."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # whoever asks decides when to stop
    asked_on = sys.stdin.buffer
    told_on = os.fdopen(os.dup(1), "wb")
    os.dup2(2, 1)  # what libraries print must not get between the answers
    watch = Watch()
    goes_on = True
    while goes_on and (asked := receive(asked_on)) is not None:
        answered = answer(asked, watch)
        goes_on = not _grown()
        send(told_on, {**answered, "goes_on": goes_on})


if __name__ == "__main__":
    serve()
