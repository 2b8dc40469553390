"""Whatever is wrong with the store is one sentence, and the store stays as it was."""

from __future__ import annotations

import os
import shutil
import sqlite3
import tempfile
from contextlib import closing
from pathlib import Path

import pytest
from sqlalchemy import event

from tests.store.lessons_made import fingering, lesson, piece
from workbench.music.errors import BadInput
from workbench.store import opening
from workbench.store.shelf import Shelf
from workbench.teaching.lessons.lesson import BarNote


def sentence(caught) -> str:
    """The message, seen to be one sentence without a machine's words."""
    said = str(caught.value)
    assert said.endswith(".") and "\n" not in said
    assert "sqlalche" not in said and "Error" not in said and "errno" not in said.lower()
    return said


@pytest.fixture
def kept(file):
    """A closed store with one lesson."""
    with Shelf(file) as shelf:
        shelf.save(lesson())
    return file


def test_a_store_that_another_program_is_writing(kept):
    with Shelf(kept, wait_seconds=0.05) as shelf, closing(sqlite3.connect(kept)) as other:
        other.execute("BEGIN IMMEDIATE")
        with pytest.raises(BadInput, match="being written by another program") as caught:
            shelf.save(lesson(title="lost"))
        assert str(kept) in sentence(caught)
        assert shelf.load("lesson-1") == lesson(), "reading goes on"
        with pytest.raises(BadInput, match="being written by another program") as caught:
            Shelf(kept, wait_seconds=0.05)
        sentence(caught)
        other.rollback()
        assert shelf.save(lesson(title="kept"))
        assert shelf.load("lesson-1").title == "kept"


def unprivileged(work):
    """What ``work`` gives when done by a user without rights (root has all)."""

    def without_rights():
        os.setgid(65534)
        os.setuid(65534)
        return work()

    return in_child(without_rights) if os.geteuid() == 0 else work()


def in_child(work):
    """What ``work`` gives in a process of its own."""
    reads, writes = os.pipe()
    child = os.fork()
    if child == 0:
        try:
            said = work()
        except BaseException as fault:
            said = f"{type(fault).__name__}: {fault}"
        os.write(writes, said.encode())
        os._exit(0)
    os.close(writes)
    os.waitpid(child, 0)
    with os.fdopen(reads) as stream:
        return stream.read()


def opening_says(file):
    def work():
        try:
            Shelf(file, wait_seconds=0.05).close()
        except BadInput as fault:
            return str(fault)
        return "opened"

    return work


@pytest.fixture
def open_folder():
    """A folder that any user may enter, unlike those of the tests."""
    folder = Path(tempfile.mkdtemp())
    folder.chmod(0o777)
    yield folder
    folder.chmod(0o777)
    shutil.rmtree(folder)


@pytest.mark.skipif(not hasattr(os, "fork"), reason="rights work otherwise here")
def test_a_folder_that_may_only_be_read(open_folder):
    with Shelf(open_folder / "l.db") as shelf:
        shelf.save(lesson())
    before = (open_folder / "l.db").read_bytes()
    (open_folder / "l.db").chmod(0o444)
    open_folder.chmod(0o555)
    for file in (open_folder / "l.db", open_folder / "new.db", open_folder / "sub" / "new.db"):
        said = unprivileged(opening_says(file))
        assert str(file) in said and said.endswith(".")
        assert "may only be read" in said or "cannot be opened" in said
    assert sorted(path.name for path in open_folder.iterdir()) == ["l.db"]
    assert (open_folder / "l.db").read_bytes() == before


@pytest.mark.skipif(not hasattr(os, "fork"), reason="rights work otherwise here")
def test_a_file_that_may_not_be_read_at_all(open_folder):
    file = open_folder / "l.db"
    file.write_bytes(b"SQLite format 3\0")
    file.chmod(0)
    assert "cannot be opened" in unprivileged(opening_says(file))


@pytest.mark.parametrize(
    "content",
    [b"<html>no store</html>", b"SQLite format 3", b"SQLite format 3\0" + bytes(range(256)) * 40],
)
def test_a_file_that_is_no_store(file, content):
    file.parent.mkdir()
    file.write_bytes(content)
    with pytest.raises(BadInput, match=r"left as it (is|was)") as caught:
        Shelf(file)
    assert str(file) in sentence(caught)
    assert file.read_bytes() == content
    assert [path.name for path in file.parent.iterdir()] == [file.name]


def test_a_file_that_was_just_made_becomes_a_store(file):
    file.parent.mkdir()
    file.touch()
    with Shelf(file) as shelf:
        assert shelf.save(lesson())


def test_a_store_that_was_emptied_is_noticed(kept):
    kept.write_bytes(b"")
    os.utime(kept, (1e9, 1e9))
    with pytest.raises(BadInput, match=r"is empty.*Restore a backup") as caught:
        Shelf(kept)
    assert "lesson store" in str(caught.value)
    assert kept.read_bytes() == b""


@pytest.mark.parametrize("keep", [0.2, 0.6])
def test_a_store_that_was_cut_short(kept, keep):
    size = kept.stat().st_size
    os.truncate(kept, int(size * keep) // 4096 * 4096)
    before = kept.read_bytes()
    with pytest.raises(BadInput, match="is damaged") as caught, Shelf(kept) as shelf:
        shelf.load("lesson-1")
        shelf.lessons("guide")
        shelf.save(lesson(title="x"))
    sentence(caught)
    assert kept.read_bytes() == before


def test_a_database_of_something_else(file):
    file.parent.mkdir()
    with closing(sqlite3.connect(file)) as other:
        other.execute("CREATE TABLE recipes (soup TEXT)")
    before = file.read_bytes()
    with pytest.raises(BadInput, match="something other than lessons") as caught:
        Shelf(file)
    sentence(caught)
    assert file.read_bytes() == before


def test_a_store_of_a_newer_program(kept):
    with closing(sqlite3.connect(kept)) as other:
        other.execute("UPDATE alembic_version SET version_num = '0917'")
        other.commit()
    before = kept.read_bytes()
    with Shelf(kept) as shelf:
        refused = str(shelf.read_only)
        assert "newer version" in refused and "Update the program" in refused
        assert shelf.load("lesson-1") == lesson()
        assert [row.id for row in shelf.lessons("boat")] == ["lesson-1"]
        for change in (
            lambda: shelf.save(lesson(title="lost")),
            lambda: shelf.undo("lesson-1"),
            lambda: shelf.delete("lesson-1"),
            lambda: shelf.keep_version("lesson-1", "v"),
        ):
            with pytest.raises(BadInput, match="newer version"):
                change()
        shelf.set_setting("where", 1)  # where somebody looked is not worth a sentence
        assert shelf.setting("where") is None
    assert kept.read_bytes() == before


@pytest.mark.skipif(os.name != "posix", reason="rights of files are those of POSIX")
def test_a_store_is_its_owners_alone(file):
    old = os.umask(0o022)
    try:
        with Shelf(file) as shelf:
            shelf.save(lesson())
            found = {path.name: path.stat().st_mode & 0o077 for path in file.parent.iterdir()}
    finally:
        os.umask(old)
    assert set(found.values()) == {0} and len(found) >= 2, found
    assert file.parent.stat().st_mode & 0o077 == 0


def test_an_error_carries_no_names(shelf):
    from sqlalchemy import text
    from sqlalchemy.exc import SQLAlchemyError

    with pytest.raises(SQLAlchemyError) as caught, shelf.engine.begin() as connection:
        connection.execute(text("INSERT INTO nowhere VALUES (:name)"), {"name": "Mara Lind"})
    assert "Mara" not in str(caught.value)


def limit_pages(engine, more):
    """Let the file grow by so many pages and no further, as on a full disk."""

    def limit(connection, _record):
        pages = connection.execute("PRAGMA page_count").fetchone()[0]
        connection.execute(f"PRAGMA max_page_count = {pages + more}")

    event.listen(engine, "connect", limit)
    engine.dispose()


def test_a_full_disk_while_saving(kept):
    with Shelf(kept) as shelf:
        limit_pages(shelf.engine, 2)
        long = (BarNote("b", "sound", "Listen to the second voice. " * 9000, 0, 1),)
        with pytest.raises(BadInput, match="disk is full") as caught:
            shelf.save(lesson(notes=long))
        assert "nothing was changed" in sentence(caught)
        assert shelf.load("lesson-1") == lesson()
        assert len(shelf.history("lesson-1").steps) == 1
        assert shelf.save(lesson(title="Short")), "what still fits is saved"


@pytest.mark.skipif(not hasattr(os, "fork"), reason="no limit to a file's size here")
def test_a_limit_to_the_size_of_files(kept):
    """The system itself refuses to write on, in the middle of a save."""
    import resource

    def work():
        resource.setrlimit(resource.RLIMIT_FSIZE, (kept.stat().st_size + 50_000,) * 2)
        with Shelf(kept) as shelf:
            long = (BarNote("b", "sound", "Listen to the second voice. " * 90_000, 0, 1),)
            try:
                shelf.save(lesson(notes=long))
            except BadInput as fault:
                return f"{shelf.load('lesson-1').title}: {fault}"
        return "saved"

    said = in_child(work)
    assert said.startswith("Boat Song for Mondays: The lesson store") and "disk" in said
    with Shelf(kept) as shelf:
        assert shelf.load("lesson-1") == lesson()
        assert len(shelf.history("lesson-1").steps) == 1


def test_a_full_disk_while_the_store_is_made(file, monkeypatch):
    made = opening._make_engine

    def small(*given):
        engine = made(*given)
        limit_pages(engine, 3)
        return engine

    monkeypatch.setattr(opening, "_make_engine", small)
    with pytest.raises(BadInput, match="disk is full") as caught:
        Shelf(file)
    sentence(caught)
    monkeypatch.undo()
    with Shelf(file) as shelf:
        assert shelf.lessons() == ()


@pytest.mark.parametrize(
    "url, said",
    [
        ("nonsense", None),
        ("nonsense://x", "driver"),
        ("://", "no database URL"),
        ("oracle+nodriver://school/lessons", "driver"),
        ("sqlite:///lessons.db?mood=ro", "address of a database cannot be used"),
    ],
)
def test_a_url_that_leads_nowhere(tmp_path, monkeypatch, url, said):
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("PLUCKWRIGHT_DB", url)
    if said is None:  # a plain word is a file
        Shelf().close()
        assert (tmp_path / url).exists()
        return
    with pytest.raises(BadInput, match=said) as caught:
        Shelf()
    assert "PLUCKWRIGHT_DB" in sentence(caught)


def test_a_folder_or_a_file_in_the_way(tmp_path):
    with pytest.raises(BadInput, match="is a folder") as caught:
        Shelf(tmp_path)
    sentence(caught)
    (tmp_path / "file").write_text("")
    with pytest.raises(BadInput, match="cannot be opened") as caught:
        Shelf(tmp_path / "file" / "lessons.db")
    sentence(caught)


@pytest.mark.parametrize(
    "damage",
    [
        "UPDATE steps SET state = '{\"title\": '",
        "UPDATE steps SET state = '[]'",
        "UPDATE steps SET state = '{\"title\": 7}'",
        "UPDATE steps SET place = 5",
        "UPDATE music SET document = x'00ff'",
        "UPDATE lessons SET view = '{'",
    ],
)
def test_damaged_content_of_one_lesson_does_not_take_the_others_along(kept, damage):
    with Shelf(kept) as shelf, shelf.engine.begin() as connection:
        connection.exec_driver_sql(damage)
    with Shelf(kept) as shelf:
        with pytest.raises(BadInput, match="damaged") as caught:
            shelf.open("lesson-1")
        sentence(caught)
        shelf.save(lesson("other", piece=piece(shift=4)))
        assert shelf.load("other").piece == piece(shift=4)
        assert len(shelf.lessons()) == 2


@pytest.mark.parametrize(
    "damage",
    [
        ("lesson_search", "unicode61", "unicode99", "SELECT 1"),
        ("lessons", "", "", "UPDATE lessons SET updated = 7"),
        ("pieces", "NOT NULL", "", "UPDATE pieces SET id = NULL"),
    ],
)
def test_what_was_written_over_is_one_sentence_wherever_it_is_met(kept, damage):
    """The index of words, a date that is none, a piece without its number."""
    table, was, now, then = damage
    with closing(sqlite3.connect(kept)) as other:
        other.execute("PRAGMA writable_schema = ON")
        told = "UPDATE sqlite_master SET sql = replace(sql, ?, ?) WHERE name = ?"
        if was:
            other.execute(told, (was, now, table))
        other.commit()
    with closing(sqlite3.connect(kept)) as other:
        other.execute(then)
        other.commit()
    with pytest.raises(BadInput, match="damaged") as caught, Shelf(kept) as shelf:
        shelf.lessons("Boat")
        shelf.lessons()
        shelf.pieces()
    sentence(caught)


def test_a_damaged_fingering_is_solved_again(shelf):
    shelf.put_fingering(lesson(), fingering())
    with shelf.engine.begin() as connection:
        connection.exec_driver_sql("UPDATE fingerings SET document = x'00'")
    assert shelf.cached_fingering(lesson()) is None
