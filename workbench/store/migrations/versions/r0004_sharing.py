"""Sharing a store: revisions of lessons, settings that belong to a teacher."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0004"
down_revision = "0003"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column("lessons", sa.Column("revision", sa.Integer, nullable=False, server_default="0"))
    op.create_table(
        "teacher_settings",
        sa.Column("owner", sa.String(200), nullable=False),
        sa.Column("name", sa.String(200), nullable=False),
        sa.Column("value", sa.Text, nullable=False),
        sa.PrimaryKeyConstraint("owner", "name", name="pk_teacher_settings"),
    )
    op.execute(
        "INSERT INTO teacher_settings (owner, name, value) SELECT '', name, value FROM settings"
    )
    op.drop_table("settings")
