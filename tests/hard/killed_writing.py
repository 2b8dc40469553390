"""The program killed while it writes a file: the older one stands there, or the whole new one.

    python -m tests.hard.killed_writing FOLDER [MOMENTS]

Every kind of file is written once whole, then again and again by a process that is killed: by
itself with SIGKILL at every opening, renaming and removing of a file in the folder; by the system
in the middle of the file, at every tenth of its size; and by kill -9 at MOMENTS random moments.
"""

from __future__ import annotations

import os
import random
import signal
import sys
import time
from collections.abc import Callable
from pathlib import Path

from workbench.cli import main as program

WRITERS = {
    "page.pdf": ("handout", "demo"),
    "page.svg": ("handout", "demo", "--bars", "1-2"),
    "heard.wav": ("sound", "demo", "--bars", "1-2"),
    "score.musicxml": ("export", "demo"),
    "score.mid": ("export", "demo"),
    "score.mxl": ("export", "demo"),
}
BEFORE = b"what stood there before"
PLACES = 10  # in the middle of a file
CHANGES = ("open", "os.rename", "os.remove", "os.truncate", "os.chmod")


def warm() -> None:
    """Load what the verbs need, so that a forked process has little left to load. Nothing of Qt is
    begun: that would not outlive a fork."""
    import music21
    import PySide6.QtGui
    import verovio

    import workbench.commands.export
    import workbench.commands.handout
    import workbench.handout.products
    import workbench.sound  # noqa: F401

    assert music21 and PySide6.QtGui and verovio


def child(words: list[str], begin: Callable[[], None] = lambda: None) -> int:
    """A process that runs the program with these words, after something of its own."""
    number = os.fork()
    if number == 0:
        status = 1
        try:
            null = os.open(os.devnull, os.O_WRONLY)
            os.dup2(null, 1)
            os.dup2(null, 2)
            begin()
            status = program(words)
        finally:
            os._exit(status)
    return number


def at_change(wanted: int, folder: Path) -> Callable[[], None]:
    """Dies at the so manieth change in a folder."""

    def begin() -> None:
        seen = 0

        def look(event: str, given: tuple) -> None:
            nonlocal seen
            if event in CHANGES and str(given[0]).startswith(str(folder)):
                seen += 1
                if seen == wanted:
                    os.kill(os.getpid(), signal.SIGKILL)

        sys.addaudithook(look)

    return begin


def at_size(size: int) -> Callable[[], None]:
    """Dies by the system when a file grows beyond so many bytes."""

    def begin() -> None:
        import resource

        signal.signal(signal.SIGXFSZ, signal.SIG_DFL)
        resource.setrlimit(resource.RLIMIT_FSIZE, (size, resource.RLIM_INFINITY))

    return begin


def one_file(folder: Path, name: str, moments: int, chance: random.Random) -> int:
    """How many processes were killed over a file. Raises AssertionError where one left neither
    the older file nor the whole new one."""
    path = folder / name
    words = [*WRITERS[name], "-o", str(path)]
    begun = time.monotonic()
    assert os.waitpid(child(words), 0)[1] == 0, words
    took, whole = time.monotonic() - begun, path.stat().st_size
    assert path.read_bytes() != BEFORE and whole > 200
    kills = 0

    def look(number: int, told: str) -> bool:
        nonlocal kills
        died = os.WIFSIGNALED(os.waitpid(number, 0)[1])
        kept = path.read_bytes()
        # Some formats carry the time; a whole one is as long as the first one nearly.
        assert kept == BEFORE or abs(len(kept) - whole) <= 64, f"{name} {told}: {len(kept)} bytes"
        kills += died
        path.write_bytes(BEFORE)
        return died

    path.write_bytes(BEFORE)
    change = 1
    while look(child(words, at_change(change, folder)), f"at change {change}"):
        change += 1
    assert kills, "no change was seen"
    for place in range(PLACES):
        size = whole * place // PLACES
        assert look(child(words, at_size(size)), f"at byte {size}"), "it was not cut short"
    for _ in range(moments):
        number = child(words)
        time.sleep(took * chance.uniform(0.3, 1.0))
        os.kill(number, signal.SIGKILL)
        look(number, "at a random moment")
    return kills


def main(folder: Path, moments: int, names: tuple[str, ...] = tuple(WRITERS)) -> int:
    """How many kills there were."""
    warm()
    chance = random.Random(1)
    kills = 0
    for name in names:
        made = one_file(folder.resolve(), name, moments, chance)
        kills += made
        print(f"{name}: {made} kills", flush=True)
    print(f"{kills} kills, no file half written")
    return kills


if __name__ == "__main__":
    place = Path(sys.argv[1])
    place.mkdir(parents=True, exist_ok=True)
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    os.environ["PLUCKWRIGHT_DB"] = f"sqlite:///{place.resolve() / 'own.sqlite'}"
    os.environ["PLUCKWRIGHT_LOGS"] = str(place / "logs")
    many = int(sys.argv[2]) if len(sys.argv) > 2 else 20
    main(place, many, tuple(sys.argv[3:]) or tuple(WRITERS))
