"""``batch FOLDER -o OUT``: handouts of all scores in a folder, on all cores.

Goes on after a failure. Every score has a budget of time and memory; one that needs more, or
brings its process down, costs only itself. What was done stands in a report beside the pages,
a line of JSON for each score, so that a stopped batch can be taken up again.
"""

from __future__ import annotations

import argparse
import contextlib
import glob
import hashlib
import json
import os
import sys
import time
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from workbench.commands import handout
from workbench.commands.one_page import Job, Report, lost, make_one
from workbench.commands.output import Result, table
from workbench.commands.source import playing_options
from workbench.commands.workers import Limits, Lost, worked_off
from workbench.language.names import decimal
from workbench.language.speech import chosen, say
from workbench.music.errors import BadInput
from workbench.music.suffixes import PDF, SCORES, has_suffix

SECONDS, MEGABYTES = 120, 2048
REPORT = "batch.jsonl"
SOME_FAILED = 3  # exit status


def options(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("folder", metavar="FOLDER", help="folder with score files")
    parser.add_argument(
        "-o", "--output", required=True, metavar="OUT", help="folder for the pages, made if needed"
    )
    parser.add_argument("--parts", metavar="LIST", help="parts to take of every score, or 'all'")
    parser.add_argument("--jobs", type=int, metavar="N", help="processes (default: one a core)")
    parser.add_argument(
        "--cluster", metavar="ADDRESS", help="work on the Dask cluster at ADDRESS instead of here"
    )
    parser.add_argument(
        "--recursive", action="store_true", help="the scores of the folders in it as well"
    )
    parser.add_argument(
        "--resume", action="store_true",
        help=f"pass over what OUT/{REPORT} says is done, of the same scores and options",
    )  # fmt: skip
    parser.add_argument(
        "--seconds", type=float, default=SECONDS, metavar="S",
        help=f"processor's time for one score (default {SECONDS})",
    )  # fmt: skip
    parser.add_argument(
        "--memory", type=int, default=MEGABYTES, metavar="MB",
        help=f"memory for one score (default {MEGABYTES})",
    )  # fmt: skip
    playing_options(parser)
    handout.page_options(parser)


def run(options: argparse.Namespace) -> Result:
    scores = find_scores(Path(options.folder), recursive=options.recursive)
    out = Path(options.output)
    if options.seconds <= 0 or options.memory < 256:
        raise BadInput("Give every score more than 0 s and at least 256 MB.")
    out.mkdir(parents=True, exist_ok=True)
    handout.check_playing(options)
    handout.settle_studio(options)
    options.tune, options.language = 1, chosen()
    wanted = _wanted(options)
    known = done_before(out / REPORT, wanted) if options.resume else {}
    jobs, reports = [], list[Report]()
    for score, page in pages(scores, out, Path(options.folder)):
        before = known.get(_name(score, options.folder))
        if before and before["digest"] == digest(score) and page.is_file():
            reports.append(before["report"])
        else:
            jobs.append((options, score, page))
    all_of_them = len(scores)
    limits = Limits(options.seconds, options.memory * 2**20)
    begun, passed = time.monotonic(), len(reports)
    with (out / REPORT).open("a" if options.resume else "w", encoding="utf-8") as book:
        try:
            for (_, score, page), answer in _answers(options, jobs, limits):
                if isinstance(answer, Lost):
                    sweep(page)
                    report = lost(score, answer, options)
                else:
                    report = answer
                reports.append(report)
                print(_entry(report, score, options.folder, wanted), file=book, flush=True)
                made = len(reports) - passed
                left = (time.monotonic() - begun) / made * (len(jobs) - made)
                print(_line(report, len(reports), all_of_them, left), file=sys.stderr, flush=True)
        except KeyboardInterrupt:
            said = say(
                "Stopped with {done} of {all} scores done; call it again with --resume to go on.",
                done=len(reports), all=all_of_them,
            )  # fmt: skip
            print(said, file=sys.stderr)
            for _, _, page in jobs:
                sweep(page)
            raise
    reports.sort(key=lambda report: str(report["score"]))
    done = sum(report["ok"] for report in reports)
    status = 0 if done == len(reports) else SOME_FAILED if done else 2
    return Result(reports, _text(reports, done, out), status=status)


def _answers(
    options: argparse.Namespace, jobs: list[Job], limits: Limits
) -> Iterator[tuple[Job, Report | Lost]]:
    if options.cluster and jobs:
        from workbench.commands import cluster

        return cluster.worked_off(options.cluster, jobs, limits)
    workers = max(1, min(options.jobs or os.cpu_count() or 1, len(jobs)))
    return worked_off(make_one, jobs, workers, limits)


def _line(report: Report, done: int, of: int, left: float) -> str:
    """One line of progress; ``left`` are the seconds that the rest may take."""
    name, seconds = Path(report["score"]).name, report["seconds"]
    said = f"[{done}/{of}] {name} " + say("({seconds:.1f} s)", seconds=seconds) + " "
    said += say("ok") if report["ok"] else say("failed: {reason}", reason=report["reason"])
    if left >= 60:
        said += " " + say("- about {n} min left", n=round(left / 60))
    return said


# The report, and taking a batch up again.


def _wanted(options: argparse.Namespace) -> str:
    """A digest of all options that the pages depend on."""
    beside = (
        "folder", "output", "jobs", "cluster", "resume", "recursive", "seconds", "memory", "json",
    )  # fmt: skip
    kept = {name: value for name, value in sorted(vars(options).items()) if name not in beside}
    return hashlib.sha256(json.dumps(kept, default=str).encode()).hexdigest()


def digest(score: Path) -> str:
    """SHA-256 of a score file; "" where it cannot be read."""
    try:
        with score.open("rb") as stream:
            return hashlib.file_digest(stream, "sha256").hexdigest()
    except OSError:
        return ""


def _name(score: Path, folder: str) -> str:
    return score.relative_to(folder).as_posix()


def _entry(report: Report, score: Path, folder: str, wanted: str) -> str:
    entry = {"name": _name(score, folder), "digest": digest(score), "options": wanted,
             "report": report}  # fmt: skip
    return json.dumps(entry)


def done_before(book: Path, wanted: str) -> dict[str, dict[str, Any]]:
    """What an earlier batch with the same options made, by the name of the score. Lines that
    cannot be read, such as one that was cut off, are passed over."""
    found: dict[str, dict[str, Any]] = {}
    try:
        lines = book.read_text(encoding="utf-8", errors="replace").splitlines()
    except OSError:
        return found
    for line in lines:
        try:
            entry = json.loads(line)
            if entry["options"] == wanted and entry["report"]["ok"] is True:
                found[str(entry["name"])] = entry
        except (ValueError, KeyError, TypeError):
            continue
    return found


# Scores and pages.


def find_scores(folder: Path, *, recursive: bool = False) -> list[Path]:
    """The score files of a folder by name, links that lead nowhere among them.

    Raises BadInput where there is no such folder or no score in it.
    """
    if not folder.is_dir():
        raise BadInput(
            "{folder} is no folder; name the folder that holds the scores.", folder=folder
        )
    inside = folder.rglob("*") if recursive else folder.iterdir()
    found = sorted(
        p for p in inside
        if has_suffix(p, SCORES) and (p.is_file() or (p.is_symlink() and not p.exists()))
    )  # fmt: skip
    if not found:
        raise BadInput(
            "{folder} holds no score file; scores end in {endings}.",
            folder=folder,
            endings=", ".join(SCORES),
        )
    return found


def pages(scores: list[Path], out: Path, folder: Path | None = None) -> Iterator[tuple[Path, Path]]:
    """A page for every score, named after it and the folders it lies in; with its suffix
    where two would clash."""

    def stem(score: Path) -> str:
        inner = score.relative_to(folder).parent.parts if folder else ()
        return "-".join((*inner, score.stem))

    stems = [stem(score).lower() for score in scores]
    for score in scores:
        name = stem(score)
        if stems.count(name.lower()) > 1:
            name = f"{name}-{score.suffix[1:]}"
        yield score, out / f"{name}{PDF}"


def sweep(page: Path) -> None:
    """Delete what a process that was ended left of a half written page."""
    for part in page.parent.glob(f".part-{glob.escape(page.stem[:80])}-*"):
        with contextlib.suppress(OSError):
            part.unlink()


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
    heads = [say("score"), "", say("seconds"), say("pages"), say("reason")]
    told = say("{done} of {all} handouts written to {folder}.", done=done, all=len(reports),
               folder=out)  # fmt: skip
    return [*table(heads, rows, right=(2, 3)), "", told]
