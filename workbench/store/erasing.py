"""Forgetting a student in the store and in its backups."""

from __future__ import annotations

import contextlib

from workbench.store.backups import back_up, backups
from workbench.store.shelf import Shelf


def erase(shelf: Shelf, student: str) -> int:
    """Forget a student for good; how many lessons that were.

    The backups made before hold the name: one is made anew, and they are deleted.
    """
    lessons = shelf.erase_student(student)
    if shelf.place.file is not None:
        old = backups(shelf.place)
        if old:
            back_up(shelf.place)
        for backup in old:
            with contextlib.suppress(OSError):
                backup.path.unlink()
    return lessons
