"""The program killed, the power gone, or a file cut short: what was told kept is there, and a
file that stood there before is whole."""

from __future__ import annotations

import itertools
import json
import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from tests.hard import killed, killed_writing
from tests.hard.editing import lay_out, missing, steps, unsound
from tests.hard.killed_writing import WRITERS
from tests.whole import so_many
from workbench.store.shelf import Shelf

ROOT = Path(__file__).parents[2]
MOMENTS = so_many(1000, 200)
posix = pytest.mark.skipif(os.name != "posix", reason="needs fork and signals")


def kill(moments, folder):
    words = [sys.executable, "-m", killed.__name__, str(moments), str(folder)]
    done = subprocess.run(words, cwd=ROOT, capture_output=True, text=True)
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout


@posix
def test_killed_at_some_moments(tmp_path):
    assert " 0 lost, 0 checks failed" in kill(8, tmp_path)


@posix
@pytest.mark.slow
def test_killed_at_very_many_moments(tmp_path):
    said = kill(MOMENTS, tmp_path)
    print(said)
    assert f"{MOMENTS} kills" in said


PAGE, FRAME, HEAD = 4096, 4096 + 24, 32  # of a WAL: https://www.sqlite.org/walformat.html


@pytest.fixture(scope="module")
def written(tmp_path_factory):
    """A store as it lies on the disk in the middle of a session: its file, its WAL, and what
    had been acknowledged when the WAL had so many bytes."""
    folder = tmp_path_factory.mktemp("written")
    file, wal = folder / "lessons.db", folder / "lessons.db-wal"
    with Shelf(file) as shelf:
        lay_out(shelf)
    told, base = [], 0
    with Shelf(file) as shelf:
        with shelf.engine.connect() as connection:  # the first 30 edits stay in the WAL
            connection.exec_driver_sql("PRAGMA wal_autocheckpoint = 0")
        for step in itertools.islice(steps(shelf, 0, 11), 30):
            done = step()
            told.append((wal.stat().st_size, done))
        base = file.read_bytes(), wal.read_bytes()
    assert len(base[1]) > 20 * FRAME
    return base, told


def cut(written, size, folder, tail=b""):
    """The store after the power went when so many bytes of the WAL were on the disk; how many
    of all acknowledged edits are there."""
    (data, wal), told = written
    shutil.rmtree(folder, ignore_errors=True)
    folder.mkdir()
    (folder / "lessons.db").write_bytes(data)
    (folder / "lessons.db-wal").write_bytes(wal[:size] + tail)
    with Shelf(folder / "lessons.db") as shelf:
        assert unsound(shelf) == [], size
        sure = [done for at, done in told if done and at <= size]
        assert missing(shelf, sure) == [], size
        every = [done for _, done in told if done]
        return len(every) - len(missing(shelf, every))


def test_the_power_gone_at_some_pages_of_the_log(written, tmp_path):
    frames = (len(written[0][1]) - HEAD) // FRAME
    found = [
        cut(written, HEAD + number * FRAME, tmp_path / "cut")
        for number in range(0, frames + 1, max(1, frames // 8))
    ]
    assert found == sorted(found) and found[0] < found[-1]


@pytest.mark.slow
def test_the_power_gone_at_every_page_of_the_log(written, tmp_path):
    frames = (len(written[0][1]) - HEAD) // FRAME
    before = 0
    for number in range(frames + 1):
        for more, tail in ((0, b""), (24, b""), (2000, b"\xa5" * 2120), (0, b"\0" * FRAME)):
            found = cut(written, HEAD + number * FRAME + more, tmp_path / "cut", tail)
            assert found >= before, "what was there before is there with a page more"
        before = found
    print(f"{4 * (frames + 1)} cuts")


LIMITED = """
import json, resource, sys
from workbench.cli import main
resource.setrlimit(resource.RLIMIT_FSIZE, (100, 100))
print([main(words) for words in json.loads(sys.argv[1])], file=sys.stderr)
"""


@posix
def test_a_file_cut_short_leaves_the_older_one(tmp_path):
    """The system refuses to write on in the middle of the new file."""
    out = tmp_path / "out"
    out.mkdir()
    for name in WRITERS:
        (out / name).write_bytes(b"what stood there before")
    calls = [[*words, "-o", str(out / name)] for name, words in WRITERS.items()]
    done = subprocess.run([sys.executable, "-c", LIMITED, json.dumps(calls)], cwd=ROOT,
                          capture_output=True, text=True)  # fmt: skip
    said = done.stderr.splitlines()
    assert said[-1] == str([2] * len(WRITERS)), done.stderr
    assert len(said) == len(WRITERS) + 1, "a sentence for every file"
    assert {path.name: path.read_bytes() for path in out.iterdir()} == dict.fromkeys(
        WRITERS, b"what stood there before"
    )


@posix
@pytest.mark.slow
def test_a_program_killed_while_it_writes_leaves_the_older_file(tmp_path):
    words = [sys.executable, "-m", killed_writing.__name__, str(tmp_path), "4"]
    done = subprocess.run(words, cwd=ROOT, capture_output=True, text=True)
    assert done.returncode == 0, done.stdout + done.stderr
    print(done.stdout)
    assert "no file half written" in done.stdout
