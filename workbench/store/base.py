"""What all parts of the shelf stand on: one transaction per call, from any thread."""

from __future__ import annotations

import contextlib
import threading
from collections.abc import Callable, Iterator
from datetime import UTC, datetime
from pathlib import Path

from sqlalchemy.orm import Session, sessionmaker

from workbench.language.message import Message
from workbench.music.errors import BadInput
from workbench.store.location import teacher_name
from workbench.store.opening import StorePlace, newer_sentence, open_engine
from workbench.store.refusals import plain_words

#: How long to wait for another program that is writing, in seconds.
WAIT_SECONDS = 2.0


def utc_now() -> datetime:
    return datetime.now(UTC)


class Store:
    """The open store and its transactions.

    Every transaction is kept whole or not at all, and those of several threads do not disturb
    each other.
    """

    #: How many states of a lesson, and how many solved fingerings, are kept; the oldest are let go.
    longest_history = 1000
    most_fingerings = 2000

    def __init__(
        self,
        url: str | Path | None = None,
        *,
        wait_seconds: float = WAIT_SECONDS,
        now: Callable[[], datetime] = utc_now,
    ) -> None:
        """Open the store at a database URL or file path, by default the user's
        own (see ``location``); it is made, or brought up to date, where needed.

        ``wait_seconds`` is how long to wait for another program that writes;
        ``now`` tells the time (an aware datetime). Raises BadInput, leaving
        the store as it is, where it cannot be used.
        """
        self.place = StorePlace(url)
        self.engine = open_engine(self.place, wait_seconds)
        self.now = now
        # Settings are a teacher's own: in a store that several share, under their name.
        self.owner = "" if self.place.sqlite else teacher_name()
        self._readers = sessionmaker(self.engine)
        self._writers = sessionmaker(self.engine.execution_options(writes=True))
        # Threads of one process take turns here and not by polling the file's
        # lock; a store in memory has one connection, which readers share too.
        self.write_lock = threading.RLock()
        self.full_text = self._has_full_text()

    def close(self) -> None:
        """Let go of the store; the shelf cannot be used any more."""
        self.engine.dispose()

    @contextlib.contextmanager
    def reading(self) -> Iterator[Session]:
        """A transaction that reads."""
        guard = self.write_lock if self.place.memory else contextlib.nullcontext()
        with guard, plain_words(str(self.place)), self._readers() as session:
            yield session

    @property
    def read_only(self) -> Message | None:
        """Why nothing can be changed in this store, in one sentence; None where it can."""
        return newer_sentence(self.place) if self.place.read_only else None

    @contextlib.contextmanager
    def writing(self) -> Iterator[Session]:
        """A transaction that writes; BadInput in a store that may only be read."""
        if refused := self.read_only:
            raise BadInput(refused)
        with (
            self.write_lock,
            plain_words(str(self.place)),
            self._writers() as session,
            session.begin(),
        ):
            yield session

    def _has_full_text(self) -> bool:
        if not self.place.sqlite:
            return False
        with plain_words(str(self.place)), self.engine.connect() as connection:
            found = connection.exec_driver_sql(
                "SELECT count(*) FROM sqlite_master WHERE name = 'lesson_search'"
            )
            return bool(found.scalar())

    def time(self) -> datetime:
        """Now, as it is kept."""
        return kept_time(self.now())


def kept_time(time: datetime) -> datetime:
    """An aware time as it is kept: UTC, without its zone."""
    return time.astimezone(UTC).replace(tzinfo=None)


def aware(time: datetime) -> datetime:
    """A kept time as one that knows its zone."""
    return time.replace(tzinfo=UTC)
