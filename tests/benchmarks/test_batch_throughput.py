"""A folder of real scores to pages: pieces a minute, processor seconds and memory.

The scores are music21's corpus, evenly sampled; the top part of each is taken.
``PLUCKWRIGHT_WHOLE=1`` takes 500 of them.
"""

from __future__ import annotations

import json
import os
import shutil
import statistics
import subprocess
import sys
import time
from pathlib import Path

import pytest

from tests.music.outside import corpus_files
from tests.whole import so_many

PIECES = so_many(500, 60)
MOST_MEGABYTES = 1500  # of one process


def peak_of_children() -> float:
    """The largest process among the ended children, in megabytes."""
    import resource

    peak = resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss
    return peak / (2**20 if sys.platform == "darwin" else 2**10)


def folder_of_scores(folder: Path, count: int) -> None:
    """``count`` corpus scores, evenly taken from all, one with no notes among them."""
    folder.mkdir()
    every = corpus_files()
    for place in range(count):
        score = every[place * len(every) // count]
        shutil.copy(score, folder / f"{place:04}-{score.name}")
    (folder / "9999-empty.musicxml").write_bytes(b"")


@pytest.mark.slow
@pytest.mark.skipif(os.name == "nt", reason="memory of children is told by POSIX alone")
def test_pieces_a_minute_and_memory(tmp_path):
    folder_of_scores(tmp_path / "scores", PIECES)
    words = ["batch", tmp_path / "scores", "-o", tmp_path / "pages", "--json"]
    begun, before = time.monotonic(), os.times()
    run = subprocess.run(
        [sys.executable, "-m", "workbench", *map(str, words)], capture_output=True, check=False
    )
    seconds, after = time.monotonic() - begun, os.times()
    assert run.returncode == 3, run.stderr[-2000:]  # some failed: the empty one
    reports = json.loads(run.stdout)
    good = [r for r in reports if r["ok"]]
    bad = [r for r in reports if not r["ok"]]
    work = after.children_user + after.children_system
    work -= before.children_user + before.children_system
    middle = statistics.median(r["seconds"] for r in reports)
    longest = max(reports, key=lambda r: r["seconds"])
    print(
        f"\n{len(reports)} scores in {seconds:.0f} s: {60 * len(reports) / seconds:.1f} a minute "
        f"on {os.cpu_count()} cores, {work / len(reports):.2f} processor seconds each, "
        f"median {middle:.2f} s, longest {longest['seconds']:.1f} s "
        f"({Path(longest['score']).name}), {len(bad)} failed, "
        f"largest process {peak_of_children():.0f} MB"
    )
    for row in bad:
        print(f"  {Path(row['score']).name}: {row['reason']}")
    assert len(reports) == PIECES + 1
    assert any("9999-empty" in r["score"] for r in bad)
    assert len(good) >= 0.9 * PIECES
    assert not [r for r in bad if "fault of ours" in r["reason"]]
    assert all(Path(r["path"]).read_bytes().startswith(b"%PDF") for r in good)
    assert peak_of_children() < MOST_MEGABYTES
