"""The store's statements are also PostgreSQL's (compiled, not run)."""

from __future__ import annotations

import io
import re
from dataclasses import replace

import pytest
from alembic import command
from sqlalchemy import event
from sqlalchemy.dialects import postgresql
from sqlalchemy.exc import DBAPIError, OperationalError, ProgrammingError
from sqlalchemy.schema import CreateIndex, CreateTable
from sqlalchemy.sql.elements import TextClause

from tests.store.lessons_made import fingering, lesson, piece
from workbench.store.opening import migration_config
from workbench.store.refusals import sentence
from workbench.store.schema import Base

POSTGRES = postgresql.dialect()


@pytest.mark.parametrize("table", Base.metadata.sorted_tables, ids=lambda table: table.name)
def test_every_table_can_be_made(table):
    made = str(CreateTable(table).compile(dialect=POSTGRES))
    assert f"CREATE TABLE {table.name}" in made
    assert "DATETIME" not in made and "BLOB" not in made
    for index in table.indexes:
        assert "CREATE INDEX" in str(CreateIndex(index).compile(dialect=POSTGRES))


def test_the_migrations_can_be_written_out():
    written = io.StringIO()
    config = migration_config(dialect="postgresql", output=written)
    command.upgrade(config, "head", sql=True)
    made = written.getvalue()
    tables = set(re.findall(r"CREATE TABLE (\w+)", made))
    tables -= set(re.findall(r"DROP TABLE (\w+)", made))
    assert tables == set(Base.metadata.tables) | {"alembic_version"}
    assert "fts5" not in made and "TRIGGER" not in made and "BLOB" not in made
    assert made.count("SERIAL") == 4, "numbers count up by themselves"
    assert "number INTEGER NOT NULL" in made, "but not where they point at a lesson"


def test_every_statement_of_a_day_at_work_compiles(shelf):
    """Do nearly everything once, without SQLite's own search, and look over its shoulder."""
    seen = []
    event.listen(
        shelf.engine, "before_execute", lambda _connection, statement, *_: seen.append(statement)
    )
    shelf.store.full_text = False
    made = lesson()
    row = shelf.add_piece(made.piece)
    shelf.find_same(made.piece)
    shelf.pieces("boat")
    shelf.add(made, row.id)
    shelf.save(replace(made, piece=piece(shift=1), techniques=("barre",)))
    shelf.undo(made.id)
    shelf.save(replace(made, title="x"))
    shelf.history(made.id)
    shelf.set_group("Tuesday", ["Jo"])
    shelf.lessons("boat", group="Tuesday", technique="barre", grades=(1, 2), student="Jo", limit=3)
    for order in ("grade", "title", "student", "updated"):
        shelf.lessons(order=order)
    kept = shelf.keep_version(made.id, "v")
    shelf.versions(made.id)
    shelf.go_back(kept.id)
    shelf.delete_version(kept.id)
    shelf.put_fingering(made, fingering())
    shelf.cached_fingering(made)
    shelf.remember_choice("pin", lesson_id=made.id, bar=1, chosen=())
    shelf.choices()
    shelf.set_settings({"a": 1, "b": None})
    shelf.students(), shelf.techniques(), shelf.groups(), shelf.settings()
    shelf.delete(made.id)
    shelf.delete_piece(row.id)
    shelf.empty_bin(0)
    assert len(seen) > 60
    compiled = []
    for statement in seen:
        assert not isinstance(statement, TextClause), "words of one dialect"
        compiled.append(str(statement.compile(dialect=POSTGRES)))
    assert any("FOR UPDATE" in words for words in compiled)
    assert any("LIKE" in words for words in compiled)


def test_a_server_that_is_away_is_said_in_a_sentence():
    gone = OperationalError("SELECT 1", {}, Exception("connection refused"))
    said = str(sentence(gone, "postgresql://school/lessons"))
    assert said.startswith("The lesson store postgresql://school/lessons cannot be reached")
    ours: DBAPIError = ProgrammingError("SELEC 1", {}, Exception("syntax error"))
    assert sentence(ours, "x") is None, "a fault of ours is not the user's"
