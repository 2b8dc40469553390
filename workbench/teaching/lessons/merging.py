"""Two changes of one lesson, made at the same time, as one: where they do not touch."""

from __future__ import annotations

import dataclasses
from collections.abc import Callable
from typing import Any

from workbench.teaching.lessons.lesson import Lesson

#: Fields that are rows, each row with a name of its own.
_ROWS: dict[str, Callable[[Any], Any]] = {
    "notes": lambda note: note.id,
    "pins": lambda pin: pin.note,
    "sections": lambda row: row[0],
    "script_edits": lambda row: row[0],
    "techniques": lambda name: name,
    "plan_done": lambda name: name,
}
#: Fields that say where and how the piece is played: changed on one side, the rows that
#: speak of its notes cannot be taken over from the other.
_MUSIC = ("piece", "instrument", "capo", "transposition", "key")
_OF_MUSIC = (*_MUSIC, "notes", "pins", "sections", "script_edits", "changes", "corrected")


def merged(base: Lesson, mine: Lesson, theirs: Lesson) -> Lesson | None:
    """``theirs`` with what ``mine`` changed since ``base``; None where both changed the same
    thing differently, so that somebody has to choose."""
    if _crossed(base, mine, theirs) or _crossed(base, theirs, mine):
        return None
    changed: dict[str, Any] = {}
    for field in dataclasses.fields(Lesson):
        name = field.name
        old, new, other = (getattr(lesson, name) for lesson in (base, mine, theirs))
        if new in (old, other):
            continue
        if other == old:
            changed[name] = new
        elif name in _ROWS:
            rows = _rows(_ROWS[name], old, new, other)
            if rows is None:
                return None
            changed[name] = rows
        else:
            return None
    return dataclasses.replace(theirs, **changed)


def _crossed(base: Lesson, one: Lesson, other: Lesson) -> bool:
    """Whether one changed the music, and the other what is said of it."""
    if all(getattr(base, name) == getattr(one, name) for name in _MUSIC):
        return False
    return any(getattr(base, name) != getattr(other, name) for name in _OF_MUSIC)


def _rows(
    name_of: Callable[[Any], Any], old: tuple[Any, ...], new: tuple[Any, ...],
    other: tuple[Any, ...],
) -> tuple[Any, ...] | None:  # fmt: skip
    """The other's rows with those that were changed, added and taken away here."""
    before, mine, theirs = ({name_of(r): r for r in rows} for rows in (old, new, other))
    out = dict(theirs)
    for name in dict.fromkeys((*before, *mine)):
        if before.get(name) == mine.get(name) or mine.get(name) == theirs.get(name):
            continue
        if before.get(name) != theirs.get(name):
            return None
        if name in mine:
            out[name] = mine[name]
        else:
            del out[name]
    return tuple(out.values())
