"""``backup``: backups of the lesson store, made, listed and restored."""

from __future__ import annotations

import argparse

from workbench.commands.output import Result, table
from workbench.language.speech import say
from workbench.music.errors import BadInput


def options(parser: argparse.ArgumentParser) -> None:
    what = parser.add_mutually_exclusive_group()
    what.add_argument("--list", action="store_true", help="list the backups, the newest first")
    what.add_argument("--check", action="store_true", help="look whether the store is damaged")
    what.add_argument(
        "--restore", type=int, metavar="N",
        help="put the backup of that number in the list in the store's place (close all windows "
        "first); what was there is moved aside",
    )  # fmt: skip


def run(options: argparse.Namespace) -> Result:
    from workbench.store import backups
    from workbench.store.opening import StorePlace
    from workbench.store.told import restored_words

    place = StorePlace()
    if options.list or options.restore is not None:
        found = backups.backups(place)
        if options.restore is None:
            return _list(found)
        if not 1 <= options.restore <= len(found):
            raise BadInput(
                "There is no backup {n}; 'backup --list' tells the numbers.", n=options.restore
            )
        done = backups.restore(place, found[options.restore - 1])
        said = restored_words(done)
        document = {"restored": str(found[options.restore - 1].path), "lost": list(done.lost),
                    "lost_known": done.known, "aside": str(done.aside)}  # fmt: skip
        return Result(document, said)
    if options.check:
        wrong = backups.problems(place.file) if place.file else []
        if wrong and place.file:
            raise BadInput(backups.damaged_sentence(place, wrong))
        return Result({"damaged": False}, [say("The lesson store {place} is sound.", place=place)])
    from workbench.store.shelf import Shelf

    Shelf().close()  # a store of an older program is brought up to date first
    made = backups.back_up(place)
    return Result({"path": str(made.path)}, [say("The backup is {path}.", path=made.path)])


def _list(found: tuple[object, ...]) -> Result:
    from workbench.store.backups import Backup, contents

    rows, documents = [], []
    for number, backup in enumerate(found, 1):
        assert isinstance(backup, Backup)
        lessons = contents(backup.path)
        amount = "" if lessons is None else str(len(lessons))
        rows.append((number, backup.day.isoformat(), amount, backup.path.name))
        documents.append(
            {"number": number, "day": backup.day.isoformat(), "path": str(backup.path),
             "lessons": None if lessons is None else len(lessons)}
        )  # fmt: skip
    if not rows:
        return Result([], [say("There are no backups yet.")])
    heads = [say("number"), say("day"), say("lessons"), say("file")]
    return Result(documents, table(heads, rows))
