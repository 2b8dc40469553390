"""Lessons that the store refused to keep, written aside until it takes them.

One file for each lesson, JSON, readable by its owner alone. The folder beside the store
comes first; where that is full or may not be written, the folder for logs, then the one
for temporary files.
"""

from __future__ import annotations

import contextlib
import getpass
import hashlib
import json
import tempfile
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

from workbench.language.message import Message
from workbench.language.stored import kept, read
from workbench.music.codec import from_dict, to_dict
from workbench.music.errors import BadInput
from workbench.music.files import write_private
from workbench.store.location import log_folder
from workbench.store.opening import StorePlace
from workbench.teaching.lessons.lesson import Lesson

FOLDER = "not-saved"


@dataclass(frozen=True)
class Unsaved:
    """A lesson as it was last on the bench; ``label`` says what was done last."""

    lesson: Lesson
    label: str | Message
    made: datetime
    path: Path


class Recovery:
    """What is kept aside for one store."""

    def __init__(self, place: StorePlace) -> None:
        self._store = hashlib.sha256(str(place).encode("utf-8", "replace")).hexdigest()[:12]
        beside = [place.file.parent / FOLDER] if place.file else []
        with contextlib.suppress(OSError, KeyError):
            user = getpass.getuser()
            beside.append(log_folder() / FOLDER)
            beside.append(Path(tempfile.gettempdir()) / f"pluckwright-{user}" / FOLDER)
        self._folders = beside

    def _name(self, lesson_id: str) -> str:
        digest = hashlib.sha256(lesson_id.encode("utf-8", "replace")).hexdigest()[:16]
        return f"{self._store}-{digest}.json"

    def keep(self, lesson: Lesson, label: str, now: datetime | None = None) -> Path | None:
        """Write the lesson aside; where it lies, None where no folder takes it."""
        document = {
            "label": kept(label),
            "made": (now or datetime.now(UTC)).isoformat(),
            "lesson": to_dict(lesson),
        }
        data = json.dumps(document).encode("ascii")
        for folder in self._folders:
            path = folder / self._name(lesson.id)
            with contextlib.suppress(OSError):
                folder.mkdir(parents=True, exist_ok=True, mode=0o700)
                write_private(path, data)
                return path
        return None

    def drop(self, lesson_id: str) -> None:
        """Forget what is kept aside of a lesson."""
        for folder in self._folders:
            with contextlib.suppress(OSError):
                (folder / self._name(lesson_id)).unlink()

    def found(self) -> tuple[Unsaved, ...]:
        """All that is kept aside, oldest first; what cannot be read is passed over."""
        out: list[Unsaved] = []
        for folder in self._folders:
            with contextlib.suppress(OSError):
                for path in sorted(folder.glob(f"{self._store}-*.json")):
                    out += _read(path)
        return tuple(sorted(out, key=lambda kept: kept.made))


def _read(path: Path) -> list[Unsaved]:
    try:
        document = json.loads(path.read_bytes())
        lesson = from_dict(Lesson, document["lesson"])
        made = datetime.fromisoformat(document["made"])
        return [Unsaved(lesson, read(str(document["label"])), made, path)]
    except (OSError, ValueError, KeyError, TypeError, BadInput):
        return []
