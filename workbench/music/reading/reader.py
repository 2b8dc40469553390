"""The process that reads scores for another one, with a limit to its time and its memory.

It is asked on its standard input and answers on its standard output; a message
is eight bytes of length (big-endian) and that much JSON. It ends with its input.
"""

from __future__ import annotations

import json
import math
import os
import signal
import sys
import traceback
from typing import Any, BinaryIO

from workbench.language.message import to_plain
from workbench.music.codec import piece_to_dict
from workbench.music.errors import BadInput
from workbench.music.reading.budget import Watch, limit_memory

SECONDS = 8  # of the processor, for a score of up to SIZE bytes
SIZE = 2**20
MOST_SECONDS = 60
MEMORY = 2**30  # bytes of data
KEPT = 400 * 2**20  # a process that has grown beyond this is not used again

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


def answer(asked: dict[str, Any], watch: Watch) -> dict[str, Any]:
    """The piece that was asked for, or the sentence that says why there is none."""
    from workbench.music.reading.score import read_score

    given = asked["seconds"]
    watch.allow(given or SECONDS)
    limit_memory(asked["memory"])
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
