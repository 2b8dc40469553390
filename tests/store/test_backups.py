"""Backups: made daily, verified, let go in turn, restored with what is lost named."""

from __future__ import annotations

import os
import sqlite3
from contextlib import closing
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest

from tests.store.lessons_made import lesson
from workbench.music.errors import BadInput
from workbench.store import backups
from workbench.store.erasing import erase
from workbench.store.opening import StorePlace
from workbench.store.recovery import Recovery
from workbench.store.shelf import Shelf
from workbench.store.told import restored_words

DAY = datetime(2024, 3, 1, 9, 0, tzinfo=UTC)
DAMAGED = Path(__file__).parents[1] / "hard" / "files" / "damaged.sqlite"


@pytest.fixture
def place(file, clock):
    with Shelf(file, now=clock) as shelf:
        shelf.save(lesson("one"))
    return StorePlace(file)


def test_one_a_day_is_made_even_while_the_store_is_open(place, clock):
    with Shelf(place.file, now=clock) as shelf:
        assert backups.daily(place, DAY) == ""
        assert backups.daily(place, DAY + timedelta(hours=3)) == ""
        shelf.save(replace(shelf.load("one"), title="Later"))
        assert backups.daily(place, DAY + timedelta(days=1)) == ""
    found = backups.backups(place)
    assert [b.day for b in found] == [date(2024, 3, 2), date(2024, 3, 1)]
    assert [next(iter(backups.contents(b.path).values()))[0] for b in found] == [
        "Later", "Boat Song for Mondays",
    ]  # fmt: skip
    if os.name == "posix":
        assert found[0].path.stat().st_mode & 0o077 == 0
        assert found[0].path.parent.stat().st_mode & 0o077 == 0


def test_days_then_weeks_then_months_are_kept():
    every = [backups.Backup(Path(str(n)), date(2023, 1, 1) + timedelta(days=n)) for n in range(800)]
    keep = sorted(int(str(path)) for path in backups.kept_ones(every))
    days = [every[n].day for n in keep]
    newest = every[-1].day
    assert {newest - timedelta(days=n) for n in range(backups.DAYS)} <= set(days)
    assert len({day.isocalendar()[:2] for day in days if newest - day < timedelta(days=35)}) >= 5
    assert len({(day.year, day.month) for day in days}) == backups.MONTHS
    assert len(days) <= backups.DAYS + backups.WEEKS + backups.MONTHS


def test_a_damaged_store_is_told_and_takes_no_good_backups_place(place):
    backups.daily(place, DAY)
    good = backups.backups(place)
    place.file.write_bytes(DAMAGED.read_bytes())
    said = backups.daily(place, DAY + timedelta(days=1))
    assert "is damaged" in said and "Backups" in said
    with pytest.raises(BadInput, match="is damaged"):
        backups.back_up(place, DAY)
    assert backups.backups(place) == good


def test_restoring_names_what_is_lost_and_keeps_what_was_there(place, clock):
    backups.daily(place, DAY)
    with Shelf(place.file, now=clock) as shelf:
        shelf.save(lesson("two", title="Written since"))
        shelf.save(replace(shelf.load("one"), title="Changed since"))
    done = backups.restore(place, backups.backups(place)[0], DAY + timedelta(days=2))
    assert done.lost == ("Changed since", "Written since") and done.known
    assert "Changed since" in " ".join(restored_words(done))
    with Shelf(place.file) as shelf:
        assert [row.title for row in shelf.lessons()] == ["Boat Song for Mondays"]
    with Shelf(done.aside) as shelf:
        assert {row.title for row in shelf.lessons()} == {"Changed since", "Written since"}
    assert backups.daily(place, DAY + timedelta(days=3)) == "", "what was restored is no fault"


def test_a_damaged_store_is_restored(place):
    backups.daily(place, DAY)
    data = bytearray(place.file.read_bytes())
    data[100 : len(data) // 2] = b"\x5a" * (len(data) // 2 - 100)
    place.file.write_bytes(data)
    with pytest.raises(BadInput):
        Shelf(place.file)
    done = backups.restore(place, backups.backups(place)[0])
    assert not done.known and "cannot be told" in " ".join(restored_words(done))
    with Shelf(place.file) as shelf:
        assert shelf.load("one") == lesson("one")


def test_a_damaged_backup_is_not_restored(place):
    backups.daily(place, DAY)
    backup = backups.backups(place)[0]
    backup.path.write_bytes(DAMAGED.read_bytes())
    before = place.file.read_bytes()
    with pytest.raises(BadInput, match="damaged itself"):
        backups.restore(place, backup)
    assert place.file.read_bytes() == before


def test_a_store_that_lost_its_newest_changes_is_noticed(place, clock):
    """As where a copy of the file alone is put back, without the journal beside it."""
    alone = place.file.read_bytes()
    with Shelf(place.file, now=clock) as shelf:
        shelf.save(lesson("two", title="In the journal"))
        backups.daily(place, DAY)
    place.file.write_bytes(alone)
    assert "older than its backup" in backups.daily(place, DAY + timedelta(days=1))


def test_a_full_disk_leaves_no_half_backup(place, monkeypatch):
    def full(*_given):
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "fsync", full)
    with pytest.raises(BadInput, match=r"No backup .* can be written"):
        backups.back_up(place, DAY)
    assert list(backups.folder(place).iterdir()) == []


def test_a_forgotten_student_is_in_no_backup(place, clock):
    with Shelf(place.file, now=clock) as shelf:
        shelf.save(lesson("hers", student="Xanthippe Quill"))
        backups.daily(place, DAY)
        assert erase(shelf, "Xanthippe Quill") == 1
    for backup in backups.backups(place):
        assert b"Xanthippe" not in backup.path.read_bytes()
        with closing(sqlite3.connect(backup.path)) as kept:
            assert kept.execute("SELECT count(*) FROM lessons").fetchone() == (1,)


def test_a_forgotten_student_is_in_nothing_that_lies_beside_the_store(place, clock):
    hers = lesson("hers", student="Xanthippe Quill")
    with Shelf(place.file, now=clock) as shelf:
        shelf.save(hers)
        backups.daily(place, DAY)
    (backup,) = backups.backups(place)
    aside = backups.restore(place, backup, DAY).aside
    older = place.file.with_name(f"{place.file.name}.before-0001")
    older.write_bytes(aside.read_bytes())
    elsewhere = place.file.with_name(f"other-{place.file.name}.before-0001")
    elsewhere.write_bytes(b"another store")
    recovery = Recovery(place)
    unsaved = recovery.keep(hers, "Edit"), recovery.keep(lesson("one"), "Edit")
    with Shelf(place.file, now=clock) as shelf:
        assert erase(shelf, "Xanthippe Quill") == 1
    assert not aside.exists() and not older.exists() and not unsaved[0].exists()
    assert elsewhere.exists() and unsaved[1].exists()
