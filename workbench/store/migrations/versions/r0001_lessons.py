"""Pieces, lessons and the undo history of every lesson."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.create_table(
        "music",
        sa.Column("digest", sa.String(64), nullable=False),
        sa.Column("document", sa.LargeBinary, nullable=False),
        sa.PrimaryKeyConstraint("digest", name="pk_music"),
    )
    op.create_table(
        "pieces",
        sa.Column("id", sa.String(200), nullable=False),
        sa.Column("fingerprint", sa.String(64), nullable=False),
        sa.Column("music", sa.String(64), nullable=False),
        sa.Column("title", sa.Text, nullable=False),
        sa.Column("composer", sa.Text, nullable=False),
        sa.Column("key", sa.String(200), nullable=False),
        sa.Column("bars", sa.Integer, nullable=False),
        sa.Column("source", sa.Text, nullable=False),
        sa.Column("created", sa.DateTime, nullable=False),
        sa.Column("deleted", sa.DateTime),
        sa.PrimaryKeyConstraint("id", name="pk_pieces"),
        sa.ForeignKeyConstraint(["music"], ["music.digest"], name="fk_pieces_music"),
    )
    op.create_index("ix_pieces_fingerprint", "pieces", ["fingerprint"])
    op.create_table(
        "lessons",
        sa.Column("number", sa.Integer, nullable=False),
        sa.Column("id", sa.String(200), nullable=False),
        sa.Column("piece_id", sa.String(200), nullable=False),
        sa.Column("place", sa.Integer, nullable=False),
        sa.Column("view", sa.Text, nullable=False),
        sa.Column("title", sa.Text, nullable=False),
        sa.Column("composer", sa.Text, nullable=False),
        sa.Column("student", sa.Text, nullable=False),
        sa.Column("instrument", sa.Text, nullable=False),
        sa.Column("key", sa.String(200), nullable=False),
        sa.Column("grade", sa.Integer),
        sa.Column("grade_level", sa.String(200), nullable=False),
        sa.Column("created", sa.DateTime, nullable=False),
        sa.Column("updated", sa.DateTime, nullable=False),
        sa.Column("used", sa.DateTime, nullable=False),
        sa.Column("archived", sa.Boolean, nullable=False),
        sa.Column("deleted", sa.DateTime),
        sa.PrimaryKeyConstraint("number", name="pk_lessons"),
        sa.UniqueConstraint("id", name="uq_lessons_id"),
        sa.ForeignKeyConstraint(["piece_id"], ["pieces.id"], name="fk_lessons_piece_id"),
    )
    op.create_index("ix_lessons_piece_id", "lessons", ["piece_id"])
    op.create_index("ix_lessons_used", "lessons", ["used"])
    op.create_table(
        "steps",
        sa.Column("id", sa.Integer, nullable=False),
        sa.Column("lesson", sa.Integer, nullable=False),
        sa.Column("place", sa.Integer, nullable=False),
        sa.Column("label", sa.Text, nullable=False),
        sa.Column("made", sa.DateTime, nullable=False),
        sa.Column("bar", sa.Integer, nullable=False),
        sa.Column("state", sa.Text, nullable=False),
        sa.Column("music", sa.String(64), nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_steps"),
        sa.UniqueConstraint("lesson", "place", name="uq_steps_lesson_place"),
        sa.ForeignKeyConstraint(
            ["lesson"], ["lessons.number"], name="fk_steps_lesson", ondelete="CASCADE"
        ),
        sa.ForeignKeyConstraint(["music"], ["music.digest"], name="fk_steps_music"),
    )
    op.create_index("ix_steps_music", "steps", ["music"])
