"""A batch on a Dask cluster: the same pages as here, and a worker that dies loses nothing."""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import pypdf
import pytest

from tests.cli.scores import bar_xml, score_xml
from workbench.commands.batch import REPORT

distributed = pytest.importorskip(
    "distributed", reason="Dask, the optional extra 'cluster', is not installed"
)

ROOT = Path(__file__).parents[2]
TUNE = score_xml([bar_xml("C4", "D4", "E4", "F4"), bar_xml("G4", "A4", "G4", "C4")])
MANY = 5


@pytest.fixture
def cluster(tmp_path):
    """A scheduler and two workers with one thread each, as processes of their own."""
    environment = dict(
        os.environ, PYTHONPATH=str(ROOT), PLUCKWRIGHT_DB=str(tmp_path / "none.db"),
        DASK_DISTRIBUTED__SCHEDULER__WORKER_TTL="60s",
    )  # fmt: skip
    place = tmp_path / "scheduler.json"
    plain = ["--no-dashboard", "--scheduler-file", str(place)]
    running = []

    def begin(*words):
        running.append(
            subprocess.Popen(
                [sys.executable, "-m", "distributed.cli." + words[0], *plain, *words[1:]],
                env=environment, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, cwd=tmp_path,
                start_new_session=True,
            )
        )  # fmt: skip

    begin("dask_scheduler", "--host", "127.0.0.1", "--port", "0")
    for _ in range(2):
        begin("dask_worker", "--nthreads", "1", "--no-nanny")
    while not place.exists():
        assert running[0].poll() is None
        time.sleep(0.05)
    address = json.loads(place.read_text())["address"]
    with distributed.Client(address, set_as_default=False) as client:
        client.wait_for_workers(2)
    yield address, [process.pid for process in running[1:]]
    for process in running:
        if process.poll() is None:
            os.killpg(process.pid, signal.SIGKILL)
        process.wait()


def batch(*words):
    return [sys.executable, "-m", "workbench", "batch", *map(str, words), "--json"]


def texts(folder):
    """What is on the pages, by the name of the file."""
    return {
        path.name: [page.extract_text() for page in pypdf.PdfReader(path).pages]
        for path in sorted(folder.glob("*.pdf"))
    }


@pytest.mark.slow
@pytest.mark.skipif(os.name != "posix", reason="signals are POSIX's")
def test_a_worker_killed_in_the_middle_loses_nothing_and_doubles_nothing(cluster, tmp_path):
    address, workers = cluster
    scores, out = tmp_path / "scores", tmp_path / "out"
    scores.mkdir()
    for number in range(MANY):
        (scores / f"{number}.xml").write_text(TUNE.replace("Morning", f"Morning {number}"))
    (scores / "broken.mid").touch()
    with subprocess.Popen(
        batch(scores, "-o", out, "--cluster", address), cwd=ROOT, text=True,
        stdout=subprocess.PIPE, stderr=subprocess.PIPE,
    ) as running:  # fmt: skip
        first = [running.stderr.readline() for _ in range(2)]
        os.killpg(workers[0], signal.SIGKILL)
        said, progress = running.communicate()
        assert running.returncode == 3, progress  # one of the scores is none
    assert [line[:4] for line in first] == ["[1/6", "[2/6"]
    rows = {Path(row["score"]).name: row for row in json.loads(said)}
    assert [name for name, row in rows.items() if not row["ok"]] == ["broken.mid"], said
    assert "broken.mid" in rows["broken.mid"]["reason"]
    told = [json.loads(line)["name"] for line in (out / REPORT).read_text().splitlines()]
    assert sorted(told) == sorted([*(f"{n}.xml" for n in range(MANY)), "broken.mid"])
    assert {path.name for path in out.iterdir()} == {REPORT, *(f"{n}.pdf" for n in range(MANY))}
    # Made here, and in another order: the same pages.
    done = subprocess.run(batch(scores, "-o", tmp_path / "here", "--jobs", "2"), cwd=ROOT,
                          capture_output=True)  # fmt: skip
    assert done.returncode == 3
    assert texts(out) == texts(tmp_path / "here")


def test_a_cluster_that_is_not_there_is_a_sentence(call, tmp_path, tune, monkeypatch):
    from workbench.commands import cluster

    monkeypatch.setattr(cluster, "JOIN_SECONDS", 0.5)
    for address in ("tcp://127.0.0.1:9", "nonsense://x", "127.0.0.1"):
        got = call("batch", tmp_path, "-o", tmp_path / "out", "--cluster", address)
        assert got.status == 2 and address in got.err, got.err
        assert got.err.count("\n") == 1 and "Traceback" not in got.err
