"""Versions of a lesson, student groups, kept fingerings, choices and settings."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.create_table(
        "versions",
        sa.Column("id", sa.Integer, nullable=False),
        sa.Column("lesson", sa.Integer, nullable=False),
        sa.Column("name", sa.Text, nullable=False),
        sa.Column("made", sa.DateTime, nullable=False),
        sa.Column("state", sa.Text, nullable=False),
        sa.Column("music", sa.String(64), nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_versions"),
        sa.ForeignKeyConstraint(
            ["lesson"], ["lessons.number"], name="fk_versions_lesson", ondelete="CASCADE"
        ),
        sa.ForeignKeyConstraint(["music"], ["music.digest"], name="fk_versions_music"),
    )
    op.create_index("ix_versions_lesson", "versions", ["lesson"])
    op.create_index("ix_versions_music", "versions", ["music"])
    op.create_table(
        "group_members",
        sa.Column("group_name", sa.String(200), nullable=False),
        sa.Column("student", sa.String(200), nullable=False),
        sa.PrimaryKeyConstraint("group_name", "student", name="pk_group_members"),
    )
    op.create_table(
        "fingerings",
        sa.Column("depends_on", sa.String(64), nullable=False),
        sa.Column("document", sa.LargeBinary, nullable=False),
        sa.Column("made", sa.DateTime, nullable=False),
        sa.PrimaryKeyConstraint("depends_on", name="pk_fingerings"),
    )
    op.create_index("ix_fingerings_made", "fingerings", ["made"])
    op.create_table(
        "choices",
        sa.Column("id", sa.Integer, nullable=False),
        sa.Column("made", sa.DateTime, nullable=False),
        sa.Column("kind", sa.String(200), nullable=False),
        sa.Column("lesson", sa.Integer),
        sa.Column("active", sa.Boolean, nullable=False),
        sa.Column("document", sa.Text, nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_choices"),
        sa.ForeignKeyConstraint(
            ["lesson"], ["lessons.number"], name="fk_choices_lesson", ondelete="SET NULL"
        ),
    )
    op.create_index("ix_choices_lesson", "choices", ["lesson"])
    op.create_table(
        "settings",
        sa.Column("name", sa.String(200), nullable=False),
        sa.Column("value", sa.Text, nullable=False),
        sa.PrimaryKeyConstraint("name", name="pk_settings"),
    )
