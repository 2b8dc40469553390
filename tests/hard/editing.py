"""A scripted session of editing, and what has to be in the store when it was cut short.

Every step that returned is acknowledged: a teacher has seen it done.
"""

from __future__ import annotations

import random
from collections.abc import Callable, Iterable
from dataclasses import replace

from sqlalchemy import text

from tests.store.lessons_made import fingering, lesson, piece
from workbench.store.shelf import Shelf
from workbench.teaching.lessons.lesson import NOTE_KINDS, BarNote

LESSONS = ("l0", "l1", "l2")
Told = tuple[str, str, int]  # what was done, to which lesson, and its number


def lay_out(shelf: Shelf) -> None:
    """The lessons that are edited."""
    for name in LESSONS:
        shelf.save(lesson(name))


def steps(shelf: Shelf, first: int, seed: int) -> Iterable[Callable[[], Told | None]]:
    """Edits without end, numbered from ``first``; each tells what must be kept from then on."""
    chance = random.Random(seed)
    made = {name: shelf.load(name) for name in LESSONS}
    number = first

    def write() -> Told:
        name = chance.choice(LESSONS)
        note = BarNote(f"w{number}", NOTE_KINDS[number % 7], f"word {number}", 1, 2)
        changed = replace(made[name], notes=(*made[name].notes, note))
        shelf.save(changed, f"Note {number}")
        made[name] = changed
        return "note", name, number

    def rewrite() -> Told:
        name = chance.choice(LESSONS)
        changed = replace(made[name], piece=piece(bars=12, shift=number % 7), capo=number % 5)
        shelf.save(changed, "Music")
        made[name] = changed
        return write()

    def back() -> None:
        name = chance.choice(LESSONS)
        # Another tempo than the one that stands: one killed before its undo left its own, and
        # where a save changes nothing, the undo would take back the step before it.
        other = 50 + (made[name].tempo_percent - 49) % 50
        shelf.save(replace(made[name], tempo_percent=other), "Tempo")
        shelf.undo(name)
        made[name] = shelf.load(name)

    def version() -> Told:
        name = chance.choice(LESSONS)
        shelf.keep_version(name, f"version {number}")
        return "version", name, number

    def setting() -> Told:
        shelf.set_setting(f"setting {number}", number)
        shelf.set_group("Monday", [f"Mara {number}"])
        return "setting", "", number

    def solved() -> None:
        shelf.put_fingering(made[chance.choice(LESSONS)], fingering(number))

    while True:
        yield chance.choice((write, write, write, write, rewrite, back, version, setting, solved))
        number += 1


def missing(shelf: Shelf, told: Iterable[Told]) -> list[Told]:
    """What was acknowledged and is not there."""
    notes = {name: {note.text for note in shelf.load(name).notes} for name in LESSONS}
    versions = {name: {v.name for v in shelf.versions(name)} for name in LESSONS}
    settings = shelf.settings()
    there = {
        "note": lambda name, number: f"word {number}" in notes[name],
        "version": lambda name, number: f"version {number}" in versions[name],
        "setting": lambda _, number: settings.get(f"setting {number}") == number,
    }
    return [one for one in told if not there[one[0]](*one[1:])]


def unsound(shelf: Shelf) -> list[str]:
    """What SQLite's own checks find wrong."""
    with shelf.engine.connect() as connection:
        found = [str(row[0]) for row in connection.execute(text("PRAGMA integrity_check"))]
        strays = connection.execute(text("PRAGMA foreign_key_check")).all()
    return [line for line in found if line != "ok"] + [str(row) for row in strays]
