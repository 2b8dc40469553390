"""Searching lessons: their texts and techniques, filled from what is on the shelf.

In SQLite a full text index follows the texts by triggers.
"""

from __future__ import annotations

import json
import unicodedata
from typing import Any

import sqlalchemy as sa
from alembic import context, op

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None

_PARTS = ("title", "composer", "student", "techniques", "notes")
_NAMES = ", ".join(_PARTS)
_NEW = ", ".join(f"new.{part}" for part in _PARTS)
_OLD = ", ".join(f"old.{part}" for part in _PARTS)

_INDEX = f"""CREATE VIRTUAL TABLE lesson_search USING fts5(
    {_NAMES}, content='lesson_texts', content_rowid='number',
    tokenize='unicode61 remove_diacritics 2', prefix='2 3')"""
_ADD = f"INSERT INTO lesson_search(rowid, {_NAMES}) VALUES (new.number, {_NEW});"
_REMOVE = (
    f"INSERT INTO lesson_search(lesson_search, rowid, {_NAMES}) "
    f"VALUES ('delete', old.number, {_OLD});"
)
_TRIGGERS = (
    f"CREATE TRIGGER lesson_texts_added AFTER INSERT ON lesson_texts BEGIN {_ADD} END",
    f"CREATE TRIGGER lesson_texts_gone AFTER DELETE ON lesson_texts BEGIN {_REMOVE} END",
    f"CREATE TRIGGER lesson_texts_changed AFTER UPDATE ON lesson_texts BEGIN {_REMOVE} {_ADD} END",
)


def upgrade() -> None:
    texts = op.create_table(
        "lesson_texts",
        sa.Column("number", sa.Integer, nullable=False, autoincrement=False),
        *(sa.Column(part, sa.Text, nullable=False) for part in _PARTS),
        sa.Column("folded", sa.Text, nullable=False),
        sa.PrimaryKeyConstraint("number", name="pk_lesson_texts"),
        sa.ForeignKeyConstraint(
            ["number"], ["lessons.number"], name="fk_lesson_texts_number", ondelete="CASCADE"
        ),
    )
    techniques = op.create_table(
        "lesson_techniques",
        sa.Column("lesson", sa.Integer, nullable=False),
        sa.Column("technique", sa.String(200), nullable=False),
        sa.Column("place", sa.Integer, nullable=False),
        sa.PrimaryKeyConstraint("lesson", "technique", name="pk_lesson_techniques"),
        sa.ForeignKeyConstraint(
            ["lesson"], ["lessons.number"], name="fk_lesson_techniques_lesson", ondelete="CASCADE"
        ),
    )
    op.create_index("ix_lesson_techniques_technique", "lesson_techniques", ["technique"])
    if op.get_context().dialect.name == "sqlite" and _has_full_text():
        for statement in (_INDEX, *_TRIGGERS):
            op.execute(sa.DDL(statement))  # type: ignore[no-untyped-call]
    if not context.is_offline_mode():
        _fill(texts, techniques)


def _has_full_text() -> bool:
    if context.is_offline_mode():
        return True
    options = op.get_bind().exec_driver_sql("PRAGMA compile_options").scalars()
    return "ENABLE_FTS5" in set(options)


def _fill(texts: Any, techniques: Any) -> None:
    """Enter the lessons that are there already. Reads only what it needs, and
    nothing of the program's own classes, which will have moved on by then."""
    connection = op.get_bind()
    rows = connection.execute(
        sa.text(
            "SELECT lessons.number, lessons.title, lessons.composer, lessons.student, steps.state "
            "FROM lessons LEFT JOIN steps "
            "ON steps.lesson = lessons.number AND steps.place = lessons.place"
        )
    )
    for number, title, composer, student, state in rows.all():
        try:
            data = json.loads(state or "{}")
        except ValueError:  # damaged: the lesson is still found by its title
            data = {}
        names = list(dict.fromkeys(data.get("techniques", ())))
        row = {
            "title": title,
            "composer": composer,
            "student": student,
            "techniques": ", ".join(names),
            "notes": "\n".join(note.get("text", "") for note in data.get("notes", ())),
        }
        row = {part: _clean(text) for part, text in row.items()}
        folded = _fold("\n".join(row.values()))
        connection.execute(texts.insert().values(number=number, folded=folded, **row))
        for place, name in enumerate(dict.fromkeys(_clean(n)[:200] for n in names)):
            connection.execute(
                techniques.insert().values(lesson=number, technique=name, place=place)
            )


def _clean(text: str) -> str:
    return text.replace("\0", "").encode("utf-8", "replace").decode("utf-8")


def _fold(text: str) -> str:
    plain = unicodedata.normalize("NFKD", text)
    return "".join(c for c in plain if not unicodedata.combining(c)).casefold()
