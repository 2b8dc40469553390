"""How migrations are run: on the connection, and in the transaction, that is handed over.

Without a connection the statements are written out for the dialect named in
the attributes, for a school's administrator to read.
"""

from __future__ import annotations

from alembic import context

from workbench.store.schema import Base

_given = context.config.attributes

if "connection" in _given:
    context.configure(connection=_given["connection"], target_metadata=Base.metadata)
else:
    context.configure(
        dialect_name=_given.get("dialect", "sqlite"),
        target_metadata=Base.metadata,
        output_buffer=_given.get("output"),
        literal_binds=True,
    )
with context.begin_transaction():
    context.run_migrations()
