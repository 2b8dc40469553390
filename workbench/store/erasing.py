"""Forgetting a student in the store and in all that was kept beside it."""

from __future__ import annotations

import contextlib
import glob
from pathlib import Path

from workbench.store.backups import back_up, backups
from workbench.store.opening import StorePlace
from workbench.store.recovery import Recovery
from workbench.store.shelf import Shelf


def erase(shelf: Shelf, student: str) -> int:
    """Forget a student for good; how many lessons that were.

    What was not saved yet of these lessons goes too. Whole copies of the store hold the name:
    a new backup is made, the older ones are deleted, and so are stores that were moved aside
    or kept from before their tables changed.
    """
    lessons = shelf.erase_student(student)
    _forget_unsaved(Recovery(shelf.place), student)
    old = [backup.path for backup in backups(shelf.place)]
    if old:
        back_up(shelf.place)
    for copy in (*old, *_copies(shelf.place)):
        with contextlib.suppress(OSError):
            copy.unlink()
    return lessons


def _forget_unsaved(recovery: Recovery, student: str) -> None:
    for kept in recovery.found():
        if kept.lesson.student == student:
            recovery.drop(kept.lesson.id)


def _copies(place: StorePlace) -> list[Path]:
    """Stores beside this one that it was once, or that were in its place."""
    file = place.file
    if file is None:
        return []
    name = glob.escape(file.name)
    return [path for kind in ("before", "aside") for path in file.parent.glob(f"{name}.{kind}-*")]
