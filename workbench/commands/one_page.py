"""One score of a batch made into its page, by a process that can be given up."""

from __future__ import annotations

import argparse
import sys
import time
from pathlib import Path
from typing import Any

from workbench.commands import handout
from workbench.commands.one_sentence import fault_sentence, file_sentence
from workbench.commands.output import Meter
from workbench.commands.workers import Lost
from workbench.language.speech import choose, say
from workbench.music.errors import BadInput

Job = tuple[argparse.Namespace, Path, Path]
Report = dict[str, Any]


def make_one(job: Job) -> Report:
    """One page in a process of its own. Never raises: what went wrong is in the report."""
    from workbench.music.reading import apart

    options, score, page = job
    begun, worked = time.monotonic(), time.process_time()
    sys.stdout = sys.stderr
    Meter.silent = True
    apart.here = True  # this process itself can be given up
    choose(options.language)
    reason, count = "", None
    try:
        if not score.exists():
            raise BadInput(
                "{name} is a link that leads nowhere; mend or delete it.", name=score.name
            )
        options.score = str(score)
        count = handout.make(options, page)
    except BadInput as wrong:
        reason = str(wrong)
    except MemoryError:
        reason = _too_large(score, options)
    except OSError as fault:
        reason = file_sentence(fault) or fault_sentence(fault)
    except Exception as fault:
        reason = fault_sentence(fault)
    return {
        **_report(score, reason, time.monotonic() - begun, count, page),
        "processor": round(time.process_time() - worked, 3),
    }


def lost(score: Path, answer: Lost, options: argparse.Namespace) -> Report:
    """The report of a score whose process had to be ended, or ended itself."""
    if answer.why == "time":
        reason = say(
            "{score} takes more than {seconds:g} s of the processor's time; take fewer parts "
            "(--parts 1), or allow more (--seconds).",
            score=score.name,
            seconds=options.seconds,
        )
    elif answer.why == "clock":
        reason = say(
            "{score} was given up after {minutes} min on the clock; where the machine was busy "
            "with other things, call the batch again with --resume.",
            score=score.name,
            minutes=round(answer.seconds / 60),
        )
    else:
        reason = say(
            "{score}: its process died; it may need more memory (--memory) or fewer parts "
            "(--parts 1).",
            score=score.name,
        )
    return _report(score, reason, answer.seconds)


def _too_large(score: Path, options: argparse.Namespace) -> str:
    return say(
        "{score} takes more than {memory} MB; take fewer parts (--parts 1), or allow more "
        "(--memory).",
        score=score.name,
        memory=options.memory,
    )


def _report(
    score: Path, reason: str, seconds: float, count: int | None = None, page: Path | None = None
) -> Report:
    return {
        "score": str(score),
        "ok": not reason,
        "reason": reason,
        "seconds": round(seconds, 3),
        "processor": None,
        "pages": count,
        "path": str(page) if page and not reason else None,
    }
