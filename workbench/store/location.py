"""Where the lesson store lies: by the system's convention, or where ``PLUCKWRIGHT_DB`` says.

``PLUCKWRIGHT_DB`` holds a database URL (``sqlite:////srv/school/lessons.db``,
``postgresql+psycopg://...``) or simply the path of a file.

Folders: XDG Base Directory Specification 0.8 on Linux, Application Support on
macOS, roaming AppData on Windows.
"""

from __future__ import annotations

import contextlib
import getpass
import os
import sys
from collections.abc import Mapping
from pathlib import Path

VARIABLE = "PLUCKWRIGHT_DB"
FILE_NAME = "lessons.db"
LOGS = "PLUCKWRIGHT_LOGS"
TEACHER = "PLUCKWRIGHT_TEACHER"


def data_folder(environment: Mapping[str, str] | None = None, platform: str = sys.platform) -> Path:
    """The user's data folder of the program; it need not exist yet."""
    env = os.environ if environment is None else environment
    if platform == "win32":
        base = Path(env.get("APPDATA") or Path.home() / "AppData" / "Roaming")
    elif platform == "darwin":
        base = Path.home() / "Library" / "Application Support"
    else:
        base = Path(env.get("XDG_DATA_HOME") or "")
        if not base.is_absolute():  # the specification has relative paths ignored
            base = Path.home() / ".local" / "share"
    return base / "pluckwright"


def store_place(environment: Mapping[str, str] | None = None) -> str | Path:
    """A database URL as text, or the path of a SQLite file."""
    env = os.environ if environment is None else environment
    named = env.get(VARIABLE, "").strip()
    if not named:
        return data_folder(env) / FILE_NAME
    return named if "://" in named else Path(named).expanduser()


def teacher_name() -> str:
    """Whose settings those of this program are in a store that several share:
    ``PLUCKWRIGHT_TEACHER``, else the name that the teacher is logged in with."""
    named = os.environ.get(TEACHER, "").strip()
    if not named:
        with contextlib.suppress(OSError, KeyError, ImportError):
            named = getpass.getuser()
    return named[:200]


def log_folder() -> Path:
    """Where fault reports go; ``PLUCKWRIGHT_LOGS`` may name another folder."""
    if os.environ.get(LOGS):
        return Path(os.environ[LOGS])
    if os.name == "nt":
        base = Path(os.environ.get("LOCALAPPDATA") or Path.home())
    elif sys.platform == "darwin":
        base = Path.home() / "Library" / "Logs"
    else:
        base = Path(os.environ.get("XDG_STATE_HOME") or Path.home() / ".local" / "state")
    return base / "pluckwright"
