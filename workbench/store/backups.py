"""Daily backups of a store in a file: made, verified, let go in turn, and restored.

They lie in a folder beside the store, one SQLite file a day, readable by their owner alone.
A store that many share on a server is backed up by whoever looks after the server.
"""

from __future__ import annotations

import contextlib
import json
import os
import re
import sqlite3
from collections.abc import Iterable
from contextlib import closing
from dataclasses import dataclass
from datetime import date, datetime
from pathlib import Path

from workbench.language.message import Message, message
from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.music.files import appearing
from workbench.store.opening import StorePlace
from workbench.store.refusals import plain_words

DAYS, WEEKS, MONTHS = 7, 5, 12  # how many backups of each are kept
TOKEN = "store.backed_up"  # setting: the newest backup that the store knows of
_NAME = re.compile(r"lessons-(\d{4}-\d{2}-\d{2})(?:-(\d+))?\.db")


@dataclass(frozen=True)
class Backup:
    """One backup; ``number`` tells several of one day apart."""

    path: Path
    day: date
    number: int = 0


@dataclass(frozen=True)
class Restored:
    """What restoring brought about: where the store that was there lies now, the titles of
    lessons whose last changes are not in the backup, and whether these could be told."""

    aside: Path | None
    lost: tuple[str, ...]
    known: bool


def folder(place: StorePlace) -> Path | None:
    """Where the backups of a store lie; None for one without a file."""
    return place.file.with_name(f"{place.file.name}.backups") if place.file else None


def backups(place: StorePlace) -> tuple[Backup, ...]:
    """The backups there are, newest first."""
    found = []
    where = folder(place)
    with contextlib.suppress(OSError):
        for path in where.iterdir() if where else ():
            named = _NAME.fullmatch(path.name)
            if named:
                with contextlib.suppress(ValueError):
                    day = date.fromisoformat(named[1])
                    found.append(Backup(path, day, int(named[2] or 0)))
    return tuple(sorted(found, key=lambda b: (b.day, b.number), reverse=True))


def problems(file: Path) -> list[str]:
    """What SQLite finds wrong with a store, in its own words; empty where all is well."""
    try:
        with closing(_open(file)) as store:
            found = [row[0] for row in store.execute("PRAGMA integrity_check(20)")]
            found = [] if found == ["ok"] else found
            broken = store.execute("PRAGMA foreign_key_check").fetchmany(20)
            found += [f"row {row[1]} of {row[0]} points at nothing" for row in broken]
            store.execute("SELECT count(*) FROM lessons").fetchone()
            return found
    except UnicodeDecodeError:
        return [say("its texts are no texts any more")]
    except (sqlite3.Error, OSError) as fault:
        return [str(fault)]


def _open(file: Path) -> sqlite3.Connection:
    return sqlite3.connect(f"{file.resolve().as_uri()}?mode=ro", uri=True, timeout=10)


def back_up(place: StorePlace, now: datetime | None = None) -> Backup:
    """Make a backup of the store as it is, and verify it.

    Raises BadInput where there is no room, or where the store is damaged: a damaged one
    never takes the place of a good one.
    """
    where, file = folder(place), place.file
    if where is None or file is None:
        raise BadInput(
            "The store {place} lies on a server; its backups are made there.", place=place
        )
    now = now or datetime.now().astimezone()
    day = now.date()
    taken = {b.number for b in backups(place) if b.day == day}
    number = max(taken, default=-1) + 1
    name = f"lessons-{day}.db" if number == 0 else f"lessons-{day}-{number}.db"
    path = where / name
    try:
        where.mkdir(mode=0o700, exist_ok=True)
        with plain_words(str(place)), appearing(path, private=True) as part:
            with closing(sqlite3.connect(file, timeout=10)) as store:
                _mark(store, name)
                with closing(sqlite3.connect(part)) as copy:
                    store.backup(copy, pages=2000)
                    copy.execute("PRAGMA journal_mode = DELETE")
            wrong = problems(part)
            if wrong:
                raise BadInput(damaged_sentence(place, wrong))
    except OSError as fault:
        raise BadInput(
            "No backup of the lesson store can be written into {folder} ({fault}); make room "
            "or change the folder's rights.",
            folder=where,
            fault=fault.strerror or fault,
        ) from fault
    return Backup(path, day, number)


def _mark(store: sqlite3.Connection, name: str) -> None:
    """Write into the store which backup it knows of, so that an older store is noticed."""
    with store:
        store.execute(
            "INSERT INTO teacher_settings VALUES ('', ?, ?) "
            "ON CONFLICT (owner, name) DO UPDATE SET value = excluded.value",
            (TOKEN, json.dumps(name)),
        )


def damaged_sentence(place: StorePlace, wrong: list[str]) -> Message:
    """What to tell of a damaged store."""
    return message(
        "The lesson store {place} is damaged ({what}); restore a backup: Lesson, Safe keeping, "
        "Backups.",
        place=place,
        what=wrong[0],
    )


def daily(place: StorePlace, now: datetime | None = None) -> str:
    """What is done once a day: check the store, back it up, let old backups go. One sentence
    where something is wrong, else "". Raises BadInput where no backup can be made."""
    if place.file is None or place.memory or place.read_only:
        return ""
    now = now or datetime.now().astimezone()
    there = backups(place)
    if there and not _knows(place.file, there[0].path):
        return say(
            "The lesson store {place} is older than its backup of {day}: changes are missing in "
            "it. Look at the backups: Lesson, Safe keeping, Backups.",
            place=place,
            day=there[0].day,
        )
    wrong = problems(place.file)
    if wrong:
        return str(damaged_sentence(place, wrong))
    if all(b.day != now.date() for b in there):
        back_up(place, now)
        let_go(place)
    return ""


def _knows(file: Path, newest: Path) -> bool:
    """Whether the store has in it what the newest backup has."""
    try:
        with closing(_open(file)) as store, closing(_open(newest)) as copy:
            ask = "SELECT value FROM teacher_settings WHERE owner = '' AND name = ?"
            mine = store.execute(ask, (TOKEN,)).fetchone()
            return mine is not None and mine == copy.execute(ask, (TOKEN,)).fetchone()
    except (sqlite3.Error, UnicodeDecodeError):
        return True  # damaged: that is found and told by itself


def kept_ones(found: Iterable[Backup]) -> set[Path]:
    """Which of the backups are kept: the newest of each of so many days, weeks and months."""
    keep: set[Path] = set()
    newest_first = sorted(found, key=lambda b: (b.day, b.number), reverse=True)
    for most, period in (
        (DAYS, lambda day: day),
        (WEEKS, lambda day: day.isocalendar()[:2]),
        (MONTHS, lambda day: (day.year, day.month)),
    ):
        seen: dict[object, Path] = {}
        for backup in newest_first:
            seen.setdefault(period(backup.day), backup.path)
        keep |= set(list(seen.values())[:most])
    return keep


def let_go(place: StorePlace) -> None:
    """Delete the backups whose turn it is."""
    found = backups(place)
    keep = kept_ones(found)
    for backup in found:
        if backup.path not in keep:
            with contextlib.suppress(OSError):
                backup.path.unlink()


def contents(file: Path) -> dict[str, tuple[str, str]] | None:
    """Lesson id to its title and when it was last changed; None where it cannot be told."""
    try:
        with closing(_open(file)) as store:
            rows = store.execute("SELECT id, title, updated FROM lessons").fetchall()
            return {row[0]: (row[1], row[2]) for row in rows}
    except (sqlite3.Error, UnicodeDecodeError):
        return None


def restore(place: StorePlace, backup: Backup, now: datetime | None = None) -> Restored:
    """Put a backup in the store's place. Nobody may have the store open.

    What was there is moved aside, not deleted. Raises BadInput, with the store as it was,
    where the backup is damaged or the disk refuses.
    """
    file = place.file
    assert file
    wrong = problems(backup.path)
    if wrong:
        raise BadInput(
            "The backup {path} is damaged itself ({what}); choose another one.",
            path=backup.path,
            what=wrong[0],
        )
    now = now or datetime.now().astimezone()
    before = contents(file) if file.exists() else {}
    try:
        with appearing(file, private=True) as part:
            part.write_bytes(backup.path.read_bytes())
            aside = _set_aside(file, now)
    except OSError as fault:
        raise BadInput(
            "The backup cannot be put in place of {file} ({fault}); make room or change the "
            "folder's rights.",
            file=file,
            fault=fault.strerror or fault,
        ) from fault
    with contextlib.suppress(BadInput, sqlite3.Error):
        back_up(place, now)  # the newest backup is then what the store is
    after = contents(file) or {}
    lost = [title for name, (title, time) in (before or {}).items()
            if name not in after or after[name][1] < time]  # fmt: skip
    return Restored(aside, tuple(sorted(lost)), before is not None)


def _set_aside(file: Path, now: datetime) -> Path | None:
    """Move a store and what belongs to it out of the way."""
    if not file.exists():
        return None
    aside = file.with_name(f"{file.name}.aside-{now:%Y%m%d-%H%M%S}")
    for ending in ("-wal", "-shm"):
        beside = file.with_name(file.name + ending)
        if beside.exists():
            os.replace(beside, aside.with_name(aside.name + ending))
    os.replace(file, aside)
    return aside


def begin_anew(place: StorePlace, now: datetime | None = None) -> Path | None:
    """Move a store that cannot be used out of the way, so that a new one can be made."""
    return _set_aside(place.file, now or datetime.now().astimezone()) if place.file else None
