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
from pathlib import Path

from platformdirs.api import PlatformDirsABC
from platformdirs.macos import MacOS
from platformdirs.unix import Unix
from platformdirs.windows import Windows

VARIABLE = "PLUCKWRIGHT_DB"
FILE_NAME = "lessons.db"
LOGS = "PLUCKWRIGHT_LOGS"
TEACHER = "PLUCKWRIGHT_TEACHER"


def folders(platform: str = sys.platform, *, roaming: bool = False) -> PlatformDirsABC:
    """The user's folders of the program by the conventions of a platform; ``roaming``: those
    that follow the user from one Windows machine to another."""
    kind = {"win32": Windows, "darwin": MacOS}.get(platform, Unix)
    return kind("pluckwright", appauthor=False, roaming=roaming)


def data_folder(platform: str = sys.platform) -> Path:
    """The user's data folder of the program; it need not exist yet."""
    return folders(platform, roaming=True).user_data_path


def store_place() -> str | Path:
    """A database URL as text, or the path of a SQLite file."""
    named = os.environ.get(VARIABLE, "").strip()
    if not named:
        return data_folder() / FILE_NAME
    return named if "://" in named else Path(named).expanduser()


def teacher_name() -> str:
    """Whose settings those of this program are in a store that several share:
    ``PLUCKWRIGHT_TEACHER``, else the name that the teacher is logged in with."""
    named = os.environ.get(TEACHER, "").strip()
    if not named:
        with contextlib.suppress(OSError, KeyError, ImportError):
            named = getpass.getuser()
    return named[:200]


def log_folder(platform: str = sys.platform) -> Path:
    """Where fault reports go; ``PLUCKWRIGHT_LOGS`` may name another folder."""
    if os.environ.get(LOGS):
        return Path(os.environ[LOGS])
    here = folders(platform)
    # Where macOS looks for logs; elsewhere they are part of the program's state.
    return here.user_log_path if platform == "darwin" else here.user_state_path
