"""Scores of a batch worked off by a Dask cluster, on machines that share no folder with this one.

A score travels as its bytes and comes back as the bytes of its page, which only this process
writes: whatever dies meanwhile, no page is half written, and none is written twice. On the worker
every score is made in a process of its own, under the limits of time and memory of the batch. A
score whose worker dies goes to another one.

Dask is an optional part of the program (the extra ``cluster``).
"""

from __future__ import annotations

import argparse
import contextlib
import json
import os
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

from workbench import __version__
from workbench.commands.workers import Limits, Lost
from workbench.music.errors import BadInput
from workbench.music.files import appearing, write_private
from workbench.music.reading.budget import out_of_time
from workbench.store.location import VARIABLE

Job = tuple[argparse.Namespace, Path, Path]
Report = dict[str, Any]

JOIN_SECONDS = 30  # to reach the scheduler, and for the first worker to be there
AHEAD = 3  # scores sent for every thread, so that none has to wait for the next
DEATHS = 3  # of workers over one score, before that score is given up


def worked_off(
    address: str, jobs: list[Job], limits: Limits
) -> Iterator[tuple[Job, Report | Lost]]:
    """Every job with its report, as they come in.

    Raises BadInput where the cluster cannot be reached, goes away, or has another version of
    the program.
    """
    grading = _grading()
    client = _join(address)
    from distributed import CancelledError, as_completed

    try:
        threads = sum(client.nthreads().values())
        left = list(jobs)[::-1]
        sent: dict[Any, tuple[Job, float]] = {}

        def send_one() -> Any:
            job = left.pop()
            future = client.submit(
                make_elsewhere,
                _question(job, limits, grading),
                pure=False,
                retries=0,
                priority=len(left),
            )
            sent[future] = (job, time.monotonic())
            return future

        first = [send_one() for _ in range(min(len(left), threads * AHEAD))]
        coming = as_completed(first, loop=client.loop)
        for future in coming:
            job, begun = sent.pop(future)
            if future.status == "cancelled":
                raise CancelledError(address)
            yield job, _arrived(job, future, time.monotonic() - begun)
            if left:
                coming.add(send_one())
    except (OSError, CancelledError) as fault:
        raise BadInput(
            "The cluster at {address} went away; what was done is kept: start the cluster and "
            "call the batch again with --resume.",
            address=address,
        ) from fault
    finally:
        with contextlib.suppress(Exception):  # the cluster may be gone
            client.close(timeout=5)


def _join(address: str) -> Any:
    try:
        import dask
        from distributed import Client
    except ImportError as fault:
        raise BadInput(
            "--cluster needs Dask; install it with: pip install 'pluckwright[cluster]'."
        ) from fault
    dask.config.set({"distributed.scheduler.allowed-failures": DEATHS - 1})
    try:
        client = Client(address, timeout=JOIN_SECONDS, set_as_default=False)
    except (OSError, ValueError, TypeError) as fault:
        raise BadInput(
            "No cluster answers at {address}; write the address that 'dask scheduler' shows, "
            "such as tcp://192.168.1.5:8786.",
            address=address,
        ) from fault
    try:
        client.wait_for_workers(1, timeout=JOIN_SECONDS)
        versions = client.run(version_here)
    except Exception as fault:  # whatever a machine without the program raises comes through
        client.close()
        raise BadInput(
            "The cluster at {address} has no worker that can use this program; start "
            "'dask worker' in an environment where it is installed.",
            address=address,
        ) from fault
    others = {where: found for where, found in versions.items() if found != __version__}
    if others:
        client.close()
        where, found = sorted(others.items())[0]
        raise BadInput(
            "The worker at {address} has version {other} of the program and this is "
            "{version}; install the same everywhere.",
            address=where,
            other=found,
            version=__version__,
        )
    return client


def version_here() -> str:
    """The version of the program where this is called."""
    return __version__


def _grading() -> Any:
    """The teacher's own grading, which goes along; None where the shipped one is in force."""
    from workbench.music.codec import to_dict
    from workbench.store.grading import model_in_force

    model = model_in_force()
    return None if model is None else to_dict(model)


def _question(job: Job, limits: Limits, grading: Any) -> dict[str, Any]:
    options, score, _ = job
    try:
        data = score.read_bytes()
    except OSError:
        data = None  # the report says why, as it does without a cluster
    return {
        "options": vars(options), "name": score.name, "score": str(score), "data": data,
        "seconds": limits.seconds, "memory": limits.memory, "slack": limits.slack,
        "model": grading,
    }  # fmt: skip


def _arrived(job: Job, future: Any, seconds: float) -> Report | Lost:
    """The report of a score that came back; its page is written."""
    from distributed import KilledWorker

    try:
        report, page = future.result()
    except KilledWorker:
        return Lost("died", seconds)
    if report is None:
        return Lost(page, seconds)
    report["score"] = str(job[1])
    if report["ok"]:
        with appearing(job[2]) as part:
            part.write_bytes(page)
        report["path"] = str(job[2])
    return dict(report)


# On the worker.


def make_elsewhere(question: dict[str, Any]) -> tuple[Report | None, Any]:
    """The report and the page of a score, or None and why its process was ended."""
    data = question.pop("data")
    with tempfile.TemporaryDirectory(prefix="pluckwright-") as folder:
        score, page = Path(folder) / question["name"], Path(folder) / "page.pdf"
        if data is not None:
            write_private(score, data)
        words = [sys.executable, "-m", __name__, str(score), str(page)]
        environment = dict(os.environ, QT_QPA_PLATFORM="offscreen", PYTHONUTF8="1")
        # The shelf of whoever lends the machine has nothing to do with it.
        environment[VARIABLE] = str(Path(folder) / "lessons.db")
        environment["PYTHONPATH"] = os.pathsep.join(
            [str(Path(__file__).parents[2]), *filter(None, [os.environ.get("PYTHONPATH")])]
        )
        try:
            done = subprocess.run(
                words, input=json.dumps(question).encode(), capture_output=True, env=environment,
                timeout=question["seconds"] * question["slack"], cwd=folder, check=False,
            )  # fmt: skip
        except subprocess.TimeoutExpired:
            return None, "clock"
        try:
            report = json.loads(done.stdout)
        except ValueError:
            return None, "time" if out_of_time(done.returncode) else "died"
        return report, page.read_bytes() if report["ok"] else b""


def serve(words: list[str], ask: Callable[[], bytes] = lambda: sys.stdin.buffer.read()) -> None:
    """Make the page of one score: what the worker starts. The report goes to stdout."""
    from workbench.commands.one_page import make_one
    from workbench.music.reading.budget import Watch, limit_memory
    from workbench.store.setting_names import GRADE_MODEL
    from workbench.store.shelf import Shelf

    question = json.loads(ask())
    limit_memory(question["memory"])
    Watch().allow(question["seconds"])
    if question["model"] is not None:
        with Shelf() as shelf:
            shelf.set_setting(GRADE_MODEL, question["model"])
    out = sys.stdout
    options = argparse.Namespace(**question["options"])
    report = make_one((options, Path(words[0]), Path(words[1])))
    out.write(json.dumps(report))
    out.flush()


if __name__ == "__main__":
    serve(sys.argv[1:])
