"""Very many spoilt inputs for every reader, in one process.

    python -m tests.hard.many INPUTS [SEED]

Every input is read here first, under a guard of time and memory that is narrower than that of the
reading process. One that passes the guard's limits is read again as the program does it, in the
process with the real limits, and so is one of every five hundred others. Whatever is neither a
piece nor one sentence ends the run with status 1, its input kept in the folder of temporary files.
"""

from __future__ import annotations

import random
import signal
import sys
import tempfile
import warnings
from collections import Counter
from pathlib import Path

from tests.hard.mutations import mutated
from tests.store.lessons_made import lesson
from workbench.commands.workers import limit_memory
from workbench.music.errors import BadInput
from workbench.music.reading import apart
from workbench.music.reading.score import read_score
from workbench.music.writing.score import musicxml_bytes, write_midi, write_musicxml
from workbench.store.archive import read_archive
from workbench.store.shelf import Shelf

DEMO = Path(__file__).parents[2] / "resources" / "demo"
ABC = (
    'X:1\nT:Quay Street\nM:6/8\nL:1/8\nQ:3/8=90\nK:G\n|:G2B d2g|f2e d3|"C"e2c "D"{c}d2B|[1A3 G3:|'
    "[2(3ABc G3|]\nV:2\nG,6|D6|C3 D3|G,6|\n"
)
GUARD_SECONDS, GUARD_BYTES = 3.0, 800 * 2**20
SAMPLED = 500


class TooLong(BaseException):
    """The guard's time is up; no reader catches it by mistake."""


def _ring(*_: object) -> None:
    raise TooLong


def sound_inputs(folder: Path) -> dict[str, tuple[str, bytes]]:
    """A sound input of every kind with the ending of its name."""
    score = read_score(DEMO / "pebble-path.musicxml")
    write_musicxml(score, folder / "a.mxl")
    write_midi(score, folder / "a.mid")
    with Shelf(folder / "a.db") as shelf:
        shelf.save(lesson())
        shelf.write_archive(folder / "a.pluckwright")
    return {
        "musicxml": (".musicxml", musicxml_bytes(score)),
        "mxl": (".mxl", (folder / "a.mxl").read_bytes()),
        "midi": (".mid", (folder / "a.mid").read_bytes()),
        "abc": (".abc", ABC.encode()),
        "archive": (".pluckwright", (folder / "a.pluckwright").read_bytes()),
    }


def one(kind: str, path: Path, sample: bool) -> str:
    """What became of an input: taken, refused, or by which limit of the guard it went on to the
    reading process. Raises what is a fault."""
    try:
        signal.setitimer(signal.ITIMER_REAL, GUARD_SECONDS)
        try:
            read_archive(path) if kind == "archive" else read_score(path)
        finally:
            signal.setitimer(signal.ITIMER_REAL, 0)
        told = "taken"
    except BadInput as wrong:
        assert str(wrong) and "\n" not in str(wrong), str(wrong)
        told = "refused"
    except (TooLong, MemoryError) as fault:
        assert kind != "archive", f"{type(fault).__name__}: an archive has no process of its own"
        told = "limited"
    if (sample or told == "limited") and kind != "archive":
        try:
            apart.read_apart(path)
        except BadInput as wrong:
            assert str(wrong) and "\n" not in str(wrong), str(wrong)
    return told


def main(number: int, seed: int = 1) -> int:
    """Exit status: 1 where any input brought out a fault."""
    warnings.simplefilter("ignore")
    signal.signal(signal.SIGALRM, _ring)
    limit_memory(GUARD_BYTES)
    chance = random.Random(seed)
    found: Counter[tuple[str, str]] = Counter()
    faults = 0
    with tempfile.TemporaryDirectory() as name:
        inputs = sound_inputs(Path(name))
        kinds = list(inputs)
        for at in range(number):
            kind = kinds[at % len(kinds)]
            ending, whole = inputs[kind]
            path = Path(name) / f"spoilt{ending}"
            path.write_bytes(mutated(kind, whole, chance))
            try:
                found[kind, one(kind, path, at % SAMPLED < len(kinds))] += 1
            except Exception as fault:
                faults += 1
                kept = Path(tempfile.gettempdir()) / f"fault-{seed}-{at}{ending}"
                kept.write_bytes(path.read_bytes())
                print(f"{kept}: {type(fault).__name__}: {fault}", file=sys.stderr, flush=True)
            if at % 100 == 99:
                print(f"{at + 1} inputs, {faults} faults", file=sys.stderr, flush=True)
    for kind in kinds:
        print(kind, {told: n for (of, told), n in sorted(found.items()) if of == kind})
    print(f"{number} inputs, {faults} faults")
    return 1 if faults else 0


if __name__ == "__main__":
    raise SystemExit(main(*map(int, sys.argv[1:3])))
