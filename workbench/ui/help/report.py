"""The error report: what happened, on what, in words that those who mend the program need."""

from __future__ import annotations

import platform
import sqlite3
import sys
from datetime import datetime
from typing import TYPE_CHECKING

import PySide6
from PySide6.QtCore import qVersion

from workbench import __version__
from workbench.language import speech
from workbench.music.files import write_private
from workbench.store.location import log_folder

if TYPE_CHECKING:
    from workbench.ui.bench.session import Session

LOG = "fault.log"


def report_text(session: Session) -> str:
    """The whole report. It holds no words of the lesson, its student or the shelf: only
    its size, its instrument and what the program did. English, for those who mend it."""
    lesson = session.lesson
    lines = [
        f"Pluckwright {__version__}, error report of {datetime.now():%Y-%m-%d %H:%M}",
        f"Python {sys.version.split()[0]}, Qt {qVersion()}, PySide {PySide6.__version__}, "
        f"SQLite {sqlite3.sqlite_version}",
        f"System: {platform.platform()}; language {speech.chosen()}",
        f"Store: {session.shelf.engine.dialect.name}",
    ]
    if lesson is None:
        lines.append("No lesson was open.")
    else:
        lines.append(
            f"Lesson: {len(lesson.piece.bars)} bars, {len(lesson.piece.notes)} notes, "
            f"{len(lesson.pins)} pins, {len(lesson.notes)} remarks, "
            f"instrument {lesson.instrument.split(':')[0]}, capo {lesson.capo}, "
            f"bar {session.selection.position + 1} of {len(session.selection.order)} "
            "in playing order"
        )
    lines += ["", session.last_fault or "No fault since the window was opened."]
    return "\n".join(lines).rstrip() + "\n"


def keep_report(session: Session) -> str:
    """Write the report where fault reports go, so that it outlives the window; the path of
    the file, "" where the disk refuses."""
    try:
        folder = log_folder()
        folder.mkdir(parents=True, exist_ok=True)
        path = folder / LOG
        write_private(path, report_text(session).encode("utf-8", "backslashreplace"))
    except OSError:
        return ""
    return str(path)
