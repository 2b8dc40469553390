"""Opening a store: the engine, its safety settings, and bringing its tables up to date.

The migration library is loaded only where there is something to migrate; an
up-to-date store costs one small query.
"""

from __future__ import annotations

import contextlib
import os
import sqlite3
import time
import warnings
from pathlib import Path
from typing import Any

from sqlalchemy import URL, Connection, Engine, create_engine, event, inspect, make_url, text
from sqlalchemy.exc import ArgumentError, NoSuchModuleError, SAWarning
from sqlalchemy.pool import StaticPool

from workbench.language.message import Message, message
from workbench.music.errors import BadInput
from workbench.store.location import VARIABLE, store_place
from workbench.store.refusals import plain_words

#: The revision that the tables of this program have (the newest in migrations/).
HEAD = "0004"
#: Revisions that this program can bring up to date.
EARLIER = ("0001", "0002", "0003")

BEING_MADE = 30  # seconds for which an empty file is one that somebody makes just now
CONNECT_SECONDS = 10
STATEMENT_MS = 60_000
MIGRATION_LOCK = 0x506C7563  # any number that nobody else locks

MIGRATIONS = Path(__file__).parent / "migrations"


class StorePlace:
    """Where a store lies: its URL, and its file if it has one."""

    def __init__(self, url: str | Path | URL | None = None) -> None:
        found = store_place() if url is None else url
        if isinstance(found, str) and "://" not in found:
            found = Path(found)
        if isinstance(found, Path):
            found = URL.create("sqlite", database=str(found))
        try:
            self.url = make_url(found)
            # Without a driver named, the one that the program comes with.
            if self.url.drivername == "postgresql":
                self.url = self.url.set(drivername="postgresql+psycopg")
            self.url.get_dialect()
        except (NoSuchModuleError, ImportError):
            pass  # said when it is opened
        except (ArgumentError, ValueError, TypeError, AttributeError) as fault:
            raise BadInput(
                "{variable} is no database URL; write one like sqlite:////folder/lessons.db, "
                "or the path of a file.",
                variable=VARIABLE,
            ) from fault
        #: Whether the store is from a newer program: it is read, and left as it is.
        self.read_only = False
        self.sqlite = self.url.get_backend_name() == "sqlite"
        name = self.url.database or ""
        self.memory = self.sqlite and (name in ("", ":memory:") or "mode=memory" in name)
        # SQLite's own "file:" names are handed on as they are.
        plain = self.sqlite and not self.memory and not name.startswith("file:")
        self.file = Path(name).absolute() if plain else None
        if self.file:
            self.url = self.url.set(database=str(self.file))

    def __str__(self) -> str:
        return str(self.file) if self.file else self.url.render_as_string(hide_password=True)


def open_engine(place: StorePlace, wait_seconds: float) -> Engine:
    """An engine on a store whose tables are up to date.

    Raises BadInput, leaving the store as it is, where it cannot be used.
    """
    if place.file:
        _prepare_file(place.file)
    engine = _make_engine(place, wait_seconds)
    try:
        with plain_words(str(place)):
            _bring_up_to_date(engine, place)
    except BaseException:
        engine.dispose()
        raise
    return engine


def _prepare_file(file: Path) -> None:
    try:
        new_folder = not file.parent.exists()
        file.parent.mkdir(parents=True, exist_ok=True)
        if new_folder:
            file.parent.chmod(0o700)  # students' names are nobody else's business
        if file.is_dir():
            raise BadInput("The lesson store {file} is a folder; name a file in it.", file=file)
        if file.exists():
            with file.open("rb") as stream:
                start = stream.read(16)
            if not start and time.time() - file.stat().st_mtime > BEING_MADE:
                raise BadInput(
                    "The lesson store {file} is empty: what was in it is lost, or it was "
                    "never made. Restore a backup, or delete the file to start a new store.",
                    file=file,
                )
            if start and start != b"SQLite format 3\0":
                raise BadInput(
                    "{file} is no lesson store (or is damaged) and was left as it is; "
                    "put a copy of it back, or name another place in {variable}.",
                    file=file,
                    variable=VARIABLE,
                )
        else:
            os.close(os.open(file, os.O_CREAT | os.O_RDWR, 0o600))
    except OSError as fault:
        raise BadInput(
            "The lesson store {file} cannot be opened ({fault}); check the folder, "
            "or name another place in {variable}.",
            file=file,
            fault=fault.strerror,
            variable=VARIABLE,
        ) from fault


def _make_engine(place: StorePlace, wait_seconds: float) -> Engine:
    options: dict[str, object] = {}
    if place.sqlite:
        options["connect_args"] = {"check_same_thread": False, "timeout": wait_seconds}
        if place.memory:
            options["poolclass"] = StaticPool
    else:
        options["pool_pre_ping"] = True
    if place.url.get_backend_name() == "postgresql":
        # No wait is for ever: neither for the server, nor for another writer's lock.
        lock = max(1000, round(1000 * wait_seconds))
        options["connect_args"] = {
            "connect_timeout": CONNECT_SECONDS,
            "options": f"-c lock_timeout={lock} -c statement_timeout={STATEMENT_MS}",
        }
    try:
        # An error never carries what was being saved: it has students' names in it.
        with warnings.catch_warnings():
            # What is asked for in an address and not known would be passed over.
            warnings.simplefilter("error", SAWarning)
            engine = create_engine(place.url, hide_parameters=True, **options)
    except (NoSuchModuleError, ImportError) as fault:
        raise BadInput(
            "{variable}: the driver for a '{driver}' database is not installed; "
            "install it with pip, or name a SQLite file.",
            variable=VARIABLE,
            driver=place.url.drivername,
        ) from fault
    except (ArgumentError, SAWarning, TypeError, ValueError) as fault:
        raise BadInput(
            "{variable}: this address of a database cannot be used; write one like "
            "postgresql://user@server/lessons, or the path of a file.",
            variable=VARIABLE,
        ) from fault
    if place.sqlite:
        event.listen(engine, "connect", _settle_connection)
        event.listen(engine, "connect", lambda raw, _: _query_only(raw, place))
        event.listen(engine, "begin", _begin)
    return engine


def _settle_connection(connection: Any, _record: Any) -> None:
    # None: the driver leaves transactions to us, so that DDL is in them as well.
    connection.isolation_level = None
    connection.execute("PRAGMA foreign_keys = ON")
    # What was told to be kept is on the disk, whatever happens to the power.
    connection.execute("PRAGMA synchronous = FULL")
    # What is deleted is gone from the file as well: students have a right to that.
    connection.execute("PRAGMA secure_delete = ON")


def _query_only(connection: Any, place: StorePlace) -> None:
    if place.read_only:
        connection.execute("PRAGMA query_only = ON")


def _begin(connection: Connection) -> None:
    # A writer takes the lock at once: two readers that both want to write
    # later would otherwise have to give up half way.
    writes = connection.get_execution_options().get("writes")
    connection.exec_driver_sql("BEGIN IMMEDIATE" if writes else "BEGIN")


def _bring_up_to_date(engine: Engine, place: StorePlace) -> None:
    with engine.begin() as connection:
        found = revision(connection)
    _check_revision(found, place)
    if place.read_only:
        engine.dispose()  # connections made from now on may only read
        return
    if found != HEAD:
        if place.file and found:
            _copy_aside(place.file, found)
        with engine.execution_options(writes=True).begin() as connection:
            if engine.dialect.name == "postgresql":
                # Several may open an empty database at once; one makes the tables.
                connection.execute(text(f"SELECT pg_advisory_xact_lock({MIGRATION_LOCK})"))
            # Another program may have been here between the look and the lock.
            found = revision(connection)
            _check_revision(found, place)
            if found != HEAD:
                migrate(connection)
    if place.file:
        with contextlib.closing(engine.raw_connection()) as raw:
            # Kept in the file: a no-op from the second opening on.
            raw.cursor().execute("PRAGMA journal_mode = WAL")
        with engine.execution_options(writes=True).begin():
            pass  # says now, not at the first edit, that the store cannot be written


def revision(connection: Connection) -> str:
    """The revision of the store's tables, "" for an empty database, "?" for foreign ones."""
    tables = set(inspect(connection).get_table_names())
    if not tables:
        return ""
    if not {"alembic_version", "lessons"} <= tables:
        return "?"
    return str(connection.scalar(text("SELECT version_num FROM alembic_version")) or "?")


def _check_revision(found: str, place: StorePlace) -> None:
    if found == "?":
        raise BadInput(
            "{place} holds something other than lessons and was left as it is; "
            "name another place in {variable}.",
            place=place,
            variable=VARIABLE,
        )
    place.read_only = bool(found) and found != HEAD and found not in EARLIER


def newer_sentence(place: StorePlace) -> Message:
    """What to tell where a store of a newer program is to be changed."""
    return message(
        "The lesson store {place} was written by a newer version of the program; it can be read "
        "here and is left as it is. Update the program to work on it.",
        place=place,
    )


def _copy_aside(file: Path, found: str) -> None:
    """Keep a copy of the store as it was before its tables change."""
    copy = file.with_name(f"{file.name}.before-{HEAD}")
    part = copy.with_name(copy.name + ".part")
    part.unlink(missing_ok=True)
    try:
        os.close(os.open(part, os.O_CREAT | os.O_EXCL | os.O_RDWR, 0o600))
        with (
            contextlib.closing(sqlite3.connect(file)) as source,
            contextlib.closing(sqlite3.connect(part)) as target,
        ):
            source.backup(target)
        part.replace(copy)
    except (OSError, sqlite3.Error) as fault:
        part.unlink(missing_ok=True)
        raise BadInput(
            "The lesson store {file} is to be brought from {found} to {known}, but no copy "
            "of it can be kept beside it ({fault}); make room or change the folder's rights.",
            file=file,
            found=found,
            known=HEAD,
            fault=fault,
        ) from fault


def migration_config(**attributes: Any) -> Any:
    """The migration library's configuration, without any file of its own."""
    from alembic.config import Config

    config = Config()
    config.set_main_option("script_location", str(MIGRATIONS).replace("%", "%%"))
    config.attributes.update(attributes)
    return config


def migrate(connection: Connection, to: str = "head") -> None:
    """Bring the tables to a revision inside the connection's transaction."""
    from alembic import command

    command.upgrade(migration_config(connection=connection), to)
