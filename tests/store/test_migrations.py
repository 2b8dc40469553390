"""A store of any earlier revision is brought up to date with everything in it."""

from __future__ import annotations

import json
import os
import sqlite3
import subprocess
import sys
import zlib
from contextlib import closing
from fractions import Fraction

import pytest
import setuptools
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext
from alembic.script import ScriptDirectory
from sqlalchemy import event

from tests.store.lessons_made import lesson
from workbench.music.errors import BadInput
from workbench.music.model import Bar, Note, Piece, Pitch
from workbench.store import opening
from workbench.store.schema import Base
from workbench.store.shelf import Shelf

# A store as the first revision wrote it, spelled out so that it stays as it
# was then whatever the program's own classes become.
PIECE = {
    "title": "Low Tide",
    "composer": "Ida Brandt",
    "bars": [
        {
            "index": 0, "number": "1", "time_signature": [4, 4], "length": "4",
            "notes": [
                {
                    "id": "n1", "onset": "1/3", "duration": "2/3",
                    "pitch": {"step": "E", "alter": -1, "octave": 4},
                }
            ],
        }
    ],
}  # fmt: skip
STATES = [
    {"title": "Low Tide", "instrument": "ukulele", "student": "Mara", "techniques": ["shift"]},
    {
        "title": "Low Tide, slow", "instrument": "ukulele", "student": "Mara",
        "techniques": ["shift", "partial barre"],
        "notes": [
            {
                "id": "b", "kind": "sound", "text": "Étude of *patience*.", "first_bar": 0,
                "last_bar": 0,
            }
        ],
    },
]  # fmt: skip
THEN = "2023-05-06 07:08:09.000000"


def first_revision(file, states=STATES):
    """Make a store of the first revision with one lesson, at its last state."""
    file.parent.mkdir(exist_ok=True)
    engine = opening._make_engine(opening.StorePlace(file), 1)
    with engine.begin() as connection:
        opening.migrate(connection, "0001")
        run = connection.exec_driver_sql
        document = zlib.compress(json.dumps(PIECE).encode())
        run("INSERT INTO music VALUES (?, ?)", ("d" * 64, document))
        run(
            "INSERT INTO pieces VALUES ('p', ?, ?, 'Low Tide', 'Ida Brandt', 'C major', 1, "
            "'tide.abc', ?, NULL)",
            ("f" * 64, "d" * 64, THEN),
        )
        run(
            "INSERT INTO lessons VALUES (1, 'tide', 'p', ?, '{\"selected_bar\": 0}', "
            "'Low Tide, slow', 'Ida Brandt', 'Mara', 'ukulele', 'C major', NULL, '', ?, ?, ?, "
            "0, NULL)",
            (len(states) - 1, THEN, THEN, THEN),
        )
        for place, state in enumerate(states):
            text = state if isinstance(state, str) else json.dumps(state)
            run(
                "INSERT INTO steps VALUES (NULL, 1, ?, ?, ?, 0, ?, ?)",
                (place, f"Step {place}", THEN, text, "d" * 64),
            )
    engine.dispose()
    return file


def stored_revision(file):
    with closing(sqlite3.connect(file)) as connection:
        return connection.execute("SELECT version_num FROM alembic_version").fetchone()[0]


@pytest.mark.parametrize("by_way_of", ["0001", "0002", "0003"])
def test_everything_is_still_there_after_a_migration(file, by_way_of):
    first_revision(file)
    engine = opening._make_engine(opening.StorePlace(file), 1)
    with engine.begin() as connection:
        opening.migrate(connection, by_way_of)
    engine.dispose()
    assert stored_revision(file) == by_way_of
    note = Note("n1", Fraction(1, 3), Fraction(2, 3), Pitch("E", -1, 4))
    with Shelf(file) as shelf:
        found = shelf.load("tide")
        assert found.piece == Piece(
            "Low Tide",
            (Bar(index=0, number="1", time_signature=(4, 4), length=Fraction(4), notes=(note,)),),
            "Ida Brandt",
        )
        assert (found.title, found.notes[0].text) == ("Low Tide, slow", "Étude of *patience*.")
        for words in ("tide slow", "ida", "mara", "etude", "barre"):
            assert [row.id for row in shelf.lessons(words)] == ["tide"], words
        assert shelf.techniques() == ("partial barre", "shift")
        assert shelf.undo("tide").title == "Low Tide"
        assert not shelf.lessons("etude")
        assert shelf.lessons()[0].created.year == 2023
        assert shelf.keep_version("tide", "v").name == "v"
    assert stored_revision(file) == opening.HEAD
    copy = file.with_name("lessons.db.before-0004")
    assert stored_revision(copy) == by_way_of, "a copy as it was is kept beside it"
    assert os.name != "posix" or copy.stat().st_mode & 0o077 == 0, "students' names are in it"


def test_a_damaged_lesson_does_not_hold_up_the_migration(file):
    first_revision(file, [STATES[0], "{damaged"])
    with Shelf(file) as shelf:
        assert [row.id for row in shelf.lessons("tide")] == ["tide"]
        assert shelf.undo("tide").title == "Low Tide"


def test_a_migration_that_falls_over_leaves_the_store_as_it_was(file, monkeypatch):
    first_revision(file)
    with closing(sqlite3.connect(file)) as connection:
        before = list(connection.iterdump())
    made = opening._make_engine

    def failing(*given):
        engine = made(*given)

        def fall_over(_connection, _cursor, statement, *_):
            if "INSERT INTO lesson_texts" in statement:
                raise RuntimeError("half way")

        event.listen(engine, "after_cursor_execute", fall_over)
        return engine

    monkeypatch.setattr(opening, "_make_engine", failing)
    with pytest.raises(RuntimeError, match="half way"):
        Shelf(file)
    with closing(sqlite3.connect(file)) as connection:
        assert list(connection.iterdump()) == before


def test_without_room_for_a_copy_nothing_is_migrated(file):
    first_revision(file)
    file.with_name("lessons.db.before-0004").mkdir()
    with pytest.raises(BadInput, match="no copy of it can be kept"):
        Shelf(file)
    assert stored_revision(file) == "0001"
    assert not list(file.parent.glob("*.part"))


def test_a_new_store_has_no_copy_beside_it(file):
    Shelf(file).close()
    assert [path.name for path in file.parent.iterdir()] == [file.name]


def test_tables_and_models_say_the_same(shelf):
    def ours(_thing, name, kind, *_):
        return not (kind == "table" and str(name).startswith("lesson_search"))

    with shelf.engine.connect() as connection:
        context = MigrationContext.configure(
            connection, opts={"include_object": ours, "compare_type": True}
        )
        assert compare_metadata(context, Base.metadata) == []


def test_the_named_revisions_are_those_of_the_folder():
    scripts = ScriptDirectory.from_config(opening.migration_config())
    assert scripts.get_heads() == [opening.HEAD]
    found = [script.revision for script in scripts.walk_revisions()]
    assert found == [opening.HEAD, *reversed(opening.EARLIER)]


def test_the_migrations_are_in_the_package_that_is_installed():
    packages = setuptools.find_packages(str(opening.MIGRATIONS.parents[2]), include=["workbench*"])
    assert "workbench.store.migrations.versions" in packages


def test_opening_an_up_to_date_store_loads_no_migration_library(file):
    with Shelf(file) as shelf:
        shelf.save(lesson())
    code = (
        "import sys; from workbench.store.shelf import Shelf\n"
        "with Shelf(sys.argv[1]) as shelf: print(len(shelf.lessons()))\n"
        "print({'alembic', 'mako', 'music21', 'numpy', 'PySide6'} & set(sys.modules))"
    )
    done = subprocess.run(
        [sys.executable, "-c", code, f"sqlite:///{file}"], capture_output=True, text=True
    )
    assert done.stdout.split("\n")[:2] == ["1", "set()"], done.stderr
