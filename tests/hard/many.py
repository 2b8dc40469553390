"""Very many spoilt inputs for everything the program reads.

    python -m tests.hard.many INPUTS FOLDER [PROCESSES]     goes on where it was stopped
    python -m tests.hard.many --one NUMBER                  one of them again, with its traceback

Scores are read in these processes, under a guard of time and memory that is narrower than that of
the reading process. One that passes the guard's limits is read again as the program does it, in
a process that is ended when its time is up, and so is one of every five hundred others.
Archives, stores and words of the command line have no such process and may take 10 s. Whatever is
neither taken nor one sentence is a fault: it is told with its number and ends the run with
status 1. FOLDER keeps what is done, in lines of JSON.
"""

from __future__ import annotations

import json
import os
import shutil
import signal
import sys
import tempfile
import traceback
import warnings
from collections import Counter
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from tests.hard.readers import SCORES, Sound, check_sentence, digest, sound_inputs, spoilt, take
from workbench.commands.workers import Limits, Lost, worked_off
from workbench.music.errors import BadInput
from workbench.music.reading import apart

A_JOB = 250  # inputs
SAMPLED = 500
GUARD_SECONDS, MOST_SECONDS = 0.6, 10.0  # of the processor
GUARD_BYTES = 800 * 2**20
LONGEST = 3600.0  # seconds on the clock for a job, should the guard not help
BOOK = "many.jsonl"

_sound: Sound = {}
_place: list[Path] = []


class TooLong(BaseException):
    """The guard's time is up; no reader catches it by mistake."""


def _ring(*_: object) -> None:
    raise TooLong


def settle() -> Path:
    """A folder, store and log of this process's own, and the sound inputs."""
    if not _place:
        place = Path(tempfile.mkdtemp(prefix="many-"))
        os.environ.update(
            PLUCKWRIGHT_DB=f"sqlite:///{place / 'own.db'}", PLUCKWRIGHT_LOGS=str(place / "logs"),
            PLUCKWRIGHT_LANGUAGE="en", QT_QPA_PLATFORM="offscreen",
        )  # fmt: skip
        os.chdir(place)
        warnings.simplefilter("ignore")
        signal.signal(signal.SIGPROF, _ring)
        _sound.update(sound_inputs(place))
        _place.append(place)
    return _place[0]


def one(number: int) -> tuple[str, str, int]:
    """Kind of an input, what became of it ("taken", "refused", or "limited" where it passed the
    guard's limits) and its digest. Raises what is a fault."""
    kind, ending, data = spoilt(number, _sound)
    path = settle() / f"spoilt{ending}"
    seconds = GUARD_SECONDS if kind in SCORES else MOST_SECONDS
    try:
        # Again and again, for where a library swallows the first one.
        signal.setitimer(signal.ITIMER_PROF, seconds, 0.3)
        try:
            told = take(kind, path, data, number)
        finally:
            signal.setitimer(signal.ITIMER_PROF, 0)
    except (TooLong, MemoryError) as fault:
        assert kind in SCORES, f"{type(fault).__name__}: has no process of its own"
        told = "limited"
    if kind in SCORES and (told == "limited" or number % SAMPLED == 0):
        try:
            # A limit lower than the program's shows as well that it is kept.
            apart.read_apart(path, seconds=GUARD_SECONDS if number % SAMPLED else None)
        except BadInput as wrong:
            check_sentence(str(wrong))
    return kind, told, digest(data)


def job(numbers: tuple[int, int]) -> dict[str, Any]:
    """What became of the inputs of a job."""
    settle()
    first, last = numbers
    found: Counter[str] = Counter()
    digests, faults = [], []
    for number in range(first, last):
        try:
            kind, told, seen = one(number)
        except Exception as fault:
            faults.append([number, f"{type(fault).__name__}: {fault}"])
        else:
            found[f"{kind} {told}"] += 1
            digests.append(seen)
    return {"first": first, "found": found, "faults": faults, "digests": digests}


def done_before(book: Path) -> list[dict[str, Any]]:
    lines = book.read_text(encoding="utf-8").splitlines() if book.is_file() else []
    return [json.loads(line) for line in lines if line.endswith("}")]


def main(number: int, folder: Path, processes: int = 2, at_once: int = A_JOB) -> int:
    """Exit status: 1 where any input brought out a fault."""
    folder.mkdir(parents=True, exist_ok=True)
    done = done_before(folder / BOOK)
    passed = {entry["first"] for entry in done}
    left = [
        (first, min(first + at_once, number))
        for first in range(0, number, at_once) if first not in passed
    ]  # fmt: skip
    with _own_rubbish(folder), (folder / BOOK).open("a", encoding="utf-8") as book:
        for (first, _), answer in worked_off(job, left, processes, Limits(LONGEST, GUARD_BYTES)):
            if isinstance(answer, Lost):
                answer = {
                    "first": first, "found": {}, "digests": [],
                    "faults": [[first, f"the process {answer.why} at this input or one after it"]],
                }  # fmt: skip
            print(json.dumps(answer), file=book, flush=True)
            done.append(answer)
            for at, what in answer["faults"]:
                print(f"{at}: {what}", file=sys.stderr, flush=True)
    return tell(done)


@contextmanager
def _own_rubbish(folder: Path) -> Iterator[None]:
    """Temporary files of the processes lie in a folder that is removed with them."""
    before = os.environ.get("TMPDIR")
    place = tempfile.mkdtemp(dir=folder.resolve())
    os.environ["TMPDIR"] = place
    try:
        yield
    finally:
        if before is None:
            del os.environ["TMPDIR"]
        else:
            os.environ["TMPDIR"] = before
        shutil.rmtree(place, ignore_errors=True)


def tell(done: list[dict[str, Any]]) -> int:
    found: Counter[str] = Counter()
    for entry in done:
        found.update(entry["found"])
    for told, many in sorted(found.items()):
        print(f"{told}: {many}")
    faults = sum(len(entry["faults"]) for entry in done)
    unlike = len({seen for entry in done for seen in entry["digests"]})
    print(f"{sum(found.values()) + faults} inputs, {unlike} of them unlike, {faults} faults")
    return 1 if faults else 0


def again(number: int) -> None:
    """One input again; what it brings out is shown."""
    place = settle()
    kind, ending, data = spoilt(number, _sound)
    kept = place / f"input-{number}{ending}"
    kept.write_bytes(data)
    print(kept, kind, data if kind == "words" else "")
    try:
        print(one(number))
    except Exception:
        traceback.print_exc()


if __name__ == "__main__":
    if sys.argv[1] == "--one":
        again(int(sys.argv[2]))
    else:
        raise SystemExit(main(int(sys.argv[1]), Path(sys.argv[2]), *map(int, sys.argv[3:4])))
