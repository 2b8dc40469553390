"""``batch FOLDER -o OUT``: handouts of all scores in a folder, on all cores.

Goes on after a failure. Even a score that brings its process down costs only
itself: what was under way with it is tried again by itself.
"""

from __future__ import annotations

import argparse
import multiprocessing
import os
import sys
import time
from collections.abc import Callable, Generator, Iterable, Iterator
from concurrent.futures import Future, ProcessPoolExecutor, as_completed
from concurrent.futures.process import BrokenProcessPool
from pathlib import Path
from typing import Any

from workbench.commands import handout
from workbench.commands.faults import fault_sentence, file_sentence
from workbench.commands.output import Meter, Result, table
from workbench.commands.source import playing_options
from workbench.language.names import decimal
from workbench.language.speech import choose, chosen, say
from workbench.music.errors import BadInput

SUFFIXES = (".musicxml", ".xml", ".mxl", ".mid", ".midi", ".abc")
PIECES_A_PROCESS = 50  # then a fresh one, to keep memory in bounds

Job = tuple[argparse.Namespace, Path, Path]
Report = dict[str, Any]


def options(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("folder", metavar="FOLDER", help="folder with score files")
    parser.add_argument(
        "-o", "--output", required=True, metavar="OUT", help="folder for the pages, made if needed"
    )
    parser.add_argument("--parts", metavar="LIST", help="parts to take of every score, or 'all'")
    parser.add_argument("--jobs", type=int, metavar="N", help="processes (default: one a core)")
    playing_options(parser)
    handout.page_options(parser)


def run(options: argparse.Namespace) -> Result:
    scores = find_scores(Path(options.folder))
    out = Path(options.output)
    out.mkdir(parents=True, exist_ok=True)
    handout.check_playing(options)
    handout.settle_studio(options)
    options.tune, options.language = 1, chosen()
    jobs = [(options, score, page) for score, page in pages(scores, out)]
    workers = max(1, min(options.jobs or os.cpu_count() or 1, len(jobs)))
    reports: list[Report] = []
    begun = time.monotonic()
    for report in in_processes(make_one, jobs, workers):
        reports.append(report)
        left = (time.monotonic() - begun) / len(reports) * (len(jobs) - len(reports))
        print(_line(report, len(reports), len(jobs), left), file=sys.stderr, flush=True)
    reports.sort(key=lambda report: str(report["score"]))
    done = sum(report["ok"] for report in reports)
    return Result(reports, _text(reports, done, out), status=0 if done else 2)


def _line(report: Report, done: int, of: int, left: float) -> str:
    """One line of progress; ``left`` are the seconds that the rest may take."""
    name, seconds = Path(report["score"]).name, report["seconds"]
    said = f"[{done}/{of}] {name} " + say("({seconds:.1f} s)", seconds=seconds) + " "
    said += say("ok") if report["ok"] else say("failed: {reason}", reason=report["reason"])
    if left >= 60:
        said += " " + say("- about {n} min left", n=round(left / 60))
    return said


def find_scores(folder: Path) -> list[Path]:
    """The score files of a folder by name.

    Raises BadInput where there is no such folder or no score in it.
    """
    if not folder.is_dir():
        raise BadInput(
            say("{folder} is no folder; name the folder that holds the scores.", folder=folder)
        )
    found = sorted(p for p in folder.iterdir() if p.suffix.lower() in SUFFIXES and p.is_file())
    if not found:
        raise BadInput(
            say("{folder} holds no score file; scores end in {endings}.", folder=folder,
                endings=", ".join(SUFFIXES))
        )  # fmt: skip
    return found


def pages(scores: list[Path], out: Path) -> Iterator[tuple[Path, Path]]:
    """A page for every score, named after it; with its suffix where two would clash."""
    stems = [score.stem.lower() for score in scores]
    for score in scores:
        clash = stems.count(score.stem.lower()) > 1
        name = score.name.replace(".", "-") if clash else score.stem
        yield score, out / f"{name}.pdf"


def make_one(job: Job) -> Report:
    """One page in a process of its own. Never raises: what went wrong is in the report."""
    options, score, page = job
    begun = time.monotonic()
    sys.stdout = sys.stderr
    Meter.silent = True
    choose(options.language)
    reason, count = "", None
    try:
        options.score = str(score)
        count = handout.make(options, page)
    except BadInput as wrong:
        reason = str(wrong)
    except OSError as fault:
        reason = file_sentence(fault) or fault_sentence(fault)
    except Exception as fault:
        reason = fault_sentence(fault)
    return _report(score, reason, time.monotonic() - begun, count, page)


def _report(
    score: Path, reason: str, seconds: float, count: int | None = None, page: Path | None = None
) -> Report:
    return {
        "score": str(score),
        "ok": not reason,
        "reason": reason,
        "seconds": round(seconds, 3),
        "pages": count,
        "path": str(page) if page and not reason else None,
    }


def in_processes(
    work: Callable[[Job], Report], jobs: Iterable[Job], workers: int
) -> Iterator[Report]:
    """Reports as they come in. A job whose process dies is reported as failed."""
    left, lost = list(jobs), list[Job]()
    # A new pool now and then: letting a pool renew its own processes stops it for good
    # under Python 3.11 (python/cpython issue 115634).
    each = workers * PIECES_A_PROCESS
    for start in range(0, len(left), each):
        lost += yield from _pool(work, left[start : start + each], workers)
    for job in lost:
        begun = time.monotonic()
        dead = yield from _pool(work, [job], 1)
        for _, score, _ in dead:
            reason = say(
                "{score}: its process died; the score is skipped, please report it.",
                score=score.name,
            )
            yield _report(score, reason, time.monotonic() - begun)


def _pool(
    work: Callable[[Job], Report], jobs: list[Job], workers: int
) -> Generator[Report, None, list[Job]]:
    """Yields reports; returns the jobs that were lost because a process died."""
    lost: list[Job] = []
    spawn = multiprocessing.get_context("spawn")  # Qt and fork do not go together
    with ProcessPoolExecutor(workers, mp_context=spawn) as pool:
        started: dict[Future[Report], Job] = {}
        try:
            for job in jobs:
                started[pool.submit(work, job)] = job
        except BrokenProcessPool:
            lost += jobs[len(started) :]
        try:
            for future in as_completed(started):
                try:
                    yield future.result()
                except BrokenProcessPool:
                    lost.append(started[future])
        except KeyboardInterrupt:
            pool.shutdown(wait=False, cancel_futures=True)
            raise
    return lost


def _text(reports: list[Report], done: int, out: Path) -> list[str]:
    rows = [
        (
            Path(report["score"]).name,
            say("ok") if report["ok"] else say("failed"),
            decimal(report["seconds"]),
            report["pages"] or "",
            report["reason"],
        )
        for report in reports
    ]
    seconds, sheets = say("seconds"), say("pages")
    heads = [say("score"), "", seconds, sheets, say("reason")]
    told = say("{done} of {all} handouts written to {folder}.", done=done, all=len(reports),
               folder=out)  # fmt: skip
    return [*table(heads, rows, right=f"{seconds},{sheets}"), "", told]
