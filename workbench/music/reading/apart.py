"""Reading a score in a process of its own, so that no file can hang or fill this one.

The process is started when first needed, or by ``warm``, and kept for the next score.
"""

from __future__ import annotations

import atexit
import contextlib
import os
import subprocess
import sys
import threading
import time
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import Any

from workbench.language.message import Message, from_plain, message
from workbench.music.codec import piece_from_dict
from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.music.reading.budget import out_of_time
from workbench.music.reading.reader import MEMORY, MOST_SECONDS, receive, send

WAIT = 5 * MOST_SECONDS  # seconds on the clock, for a machine that is busy with other things
TICK = 0.05
FROZEN = "--reader"  # what the packed program, which has no ``python -m``, is told instead


#: Whether this process is itself one that can be given up: then it reads by itself.
here = False


class ReaderFault(RuntimeError):
    """A fault of ours in the reading process, with what it tells of it."""


class _ReadingProcess:
    """One reading process."""

    def __init__(self) -> None:
        root = str(Path(__file__).resolve().parents[3])
        environment = dict(os.environ, OPENBLAS_NUM_THREADS="1", PYTHONIOENCODING="utf-8")
        kept = environment.get("PYTHONPATH")
        environment["PYTHONPATH"] = os.pathsep.join([root, *([kept] if kept else [])])
        self.late = False
        frozen = getattr(sys, "frozen", False)
        words = [FROZEN] if frozen else ["-m", "workbench.music.reading.reader"]
        self._process = subprocess.Popen(
            [sys.executable, *words], stdin=subprocess.PIPE, stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL, env=environment,
        )  # fmt: skip

    @property
    def alive(self) -> bool:
        return self._process.poll() is None

    def ask(self, question: dict[str, Any], tick: Callable[[], None]) -> Any:
        """The answer; None where the process has died over it. Whatever ``tick``, which is
        called now and then, raises calls the reading off."""
        stdin, stdout = self._process.stdin, self._process.stdout
        assert stdin and stdout
        found: list[Any] = []

        def listen() -> None:
            with contextlib.suppress(OSError, ValueError):
                send(stdin, question)  # type: ignore[arg-type]
                found.append(receive(stdout))  # type: ignore[arg-type]

        listener = threading.Thread(target=listen, daemon=True)
        listener.start()
        until = time.monotonic() + WAIT
        try:
            while listener.is_alive():
                listener.join(TICK)
                tick()
                if time.monotonic() > until:
                    self.late = True
                    self.end()
        except BaseException:
            self.end()
            raise
        return found[0] if found else None

    def out_of_time(self) -> bool:
        """Whether it ended because its time was up; it is made to end where it has not."""
        with contextlib.suppress(subprocess.TimeoutExpired):
            return out_of_time(self._process.wait(2)) or self.late
        self.end()
        return True

    def end(self) -> None:
        """Stop it at once."""
        self._process.kill()
        self._process.wait()


_lock = threading.Lock()
_kept: list[_ReadingProcess] = []


def _take() -> _ReadingProcess:
    with _lock:
        while _kept:
            reader = _kept.pop()
            if reader.alive:
                return reader
    return _ReadingProcess()


def _give_back(reader: _ReadingProcess) -> None:
    with _lock:
        if not _kept:
            _kept.append(reader)
            return
    reader.end()


@atexit.register
def let_go() -> None:
    """Stop the process that is kept."""
    with _lock:
        while _kept:
            _kept.pop().end()


def warm() -> None:
    """Start the process now, for a score that will be read soon."""
    _give_back(_take())


def read_apart(
    path: str | Path,
    *,
    tune: int = 1,
    parts: str | Sequence[int] | None = None,
    seconds: float | None = None,
    memory: int | None = None,
    tick: Callable[[], None] = lambda: None,
) -> Piece:
    """The piece in the file, as ``reading.read_score`` gives it, read in another process.

    ``tick`` is called about twenty times a second and may raise to call the
    reading off; ``seconds`` of the processor's time are allowed, by default as
    many as ``reader.seconds_for`` says, and ``memory`` bytes of data. Raises
    BadInput where the file cannot be used, or takes more time or memory than a
    score needs.
    """
    if here:
        from workbench.music.reading.score import read_score

        return read_score(path, tune=tune, parts=parts)
    question = {
        "path": str(path),
        "folder": os.getcwd(),
        "tune": tune,
        "parts": parts if parts is None or isinstance(parts, str) else list(parts),
        "seconds": seconds,
        "memory": memory or MEMORY,
    }
    reader = _take()
    answer = reader.ask(question, tick)
    name = Path(path).name
    if answer is None:
        if reader.out_of_time():
            raise BadInput(
                "{name} takes too long to read and was given up; it is damaged, or it has to "
                "be split into its movements.",
                name=name,
            )
        raise BadInput(_too_large(name, question))
    if answer["goes_on"]:
        _give_back(reader)
    if "wrong" in answer:
        raise BadInput(from_plain(answer["wrong"]))
    if "memory" in answer:
        raise BadInput(_too_large(name, question))
    if "fault" in answer:
        raise ReaderFault(answer["fault"])
    return piece_from_dict(answer["piece"])


def _too_large(name: str, question: dict[str, Any]) -> Message:
    return message(
        "{name} needs more than {most} MB of memory to read and was given up; it is damaged, or "
        "it has to be split into its movements.",
        name=name,
        most=question["memory"] // 2**20,
    )
