"""Kill a session of editing at random moments, and look what is in the store.

    python -m tests.hard.killed MOMENTS FOLDER [SEED]

Prints how many kills there were, how many edits had been acknowledged, and how many of these
were missing or how often the store failed its check; status 1 where any did.
"""

from __future__ import annotations

import os
import random
import signal
import sys
import time
from pathlib import Path

from tests.hard.editing import Told, lay_out, missing, steps, unsound
from workbench.store.shelf import Shelf

A_STORE = 25  # kills of one store, then a fresh one


def edit(file: Path, first: int, seed: int, pipe: int) -> None:
    """Edit until killed, telling every edit that is done."""
    with Shelf(file) as shelf:
        for step in steps(shelf, first, seed):
            done = step()
            if done:
                os.write(pipe, " ".join(map(str, done)).encode() + b"\n")


def killed_once(file: Path, first: int, chance: random.Random) -> list[Told]:
    """What one session had acknowledged when it was killed."""
    reading, writing = os.pipe()
    seed = chance.randrange(2**32)
    child = os.fork()
    if child == 0:
        os.close(reading)
        try:
            edit(file, first, seed, writing)
        finally:
            os._exit(1)
    os.close(writing)
    said = b""
    acknowledged = chance.choice((0, 0, 1, 2, 4, 8))
    while said.count(b"\n") < acknowledged:
        more = os.read(reading, 4096)
        assert more, "the session ended by itself"
        said += more
    time.sleep(chance.random() * (0.08 if acknowledged == 0 else 0.02))
    os.kill(child, signal.SIGKILL)
    _, status = os.waitpid(child, 0)
    assert os.WIFSIGNALED(status), "the session ended by itself"
    while more := os.read(reading, 4096):
        said += more
    os.close(reading)
    words = [line.split(" ") for line in said.decode().splitlines()]
    return [(what, name, int(number)) for what, name, number in words]


def main(moments: int, folder: Path, seed: int = 1) -> tuple[int, int, int]:
    """How many edits were acknowledged, how many of them lost, and how many checks failed."""
    chance = random.Random(seed)
    every, lost, failed = 0, 0, 0
    told: list[Told] = []
    for moment in range(moments):
        file = folder / f"{moment // A_STORE}.db"
        if moment % A_STORE == 0:
            told = []
            with Shelf(file) as shelf:
                lay_out(shelf)
        new = killed_once(file, moment * 1000, chance)
        every += len(new)
        told += new
        with Shelf(file) as shelf:
            gone = missing(shelf, told)
            wrong = unsound(shelf)
        if gone or wrong:
            print(f"Moment {moment}: missing {gone}, check {wrong}", file=sys.stderr)
        lost, failed = lost + len(gone), failed + bool(wrong)
        if moment % 100 == 99:
            print(f"{moment + 1} kills, {every} acknowledged, {lost} lost, {failed} checks failed",
                  file=sys.stderr, flush=True)  # fmt: skip
    return every, lost, failed


if __name__ == "__main__":
    many = int(sys.argv[1])
    found = main(many, Path(sys.argv[2]), *map(int, sys.argv[3:4]))
    print(f"{many} kills, {found[0]} acknowledged edits, {found[1]} lost, {found[2]} checks failed")
    raise SystemExit(1 if found[1] or found[2] else 0)
