"""What all parts of the shelf stand on: one transaction per call, from any thread."""

from __future__ import annotations

import contextlib
import threading
from collections.abc import Callable, Iterator
from datetime import UTC, datetime
from pathlib import Path

from sqlalchemy import delete, exists, select
from sqlalchemy.orm import Session, sessionmaker

from workbench.language.speech import say
from workbench.music.codec import from_dict, to_dict
from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.store.documents import (
    MusicMemory,
    as_text,
    lesson_from,
    music_document,
    read_text,
    unpack,
)
from workbench.store.faults import plain_words
from workbench.store.location import teacher_name
from workbench.store.opening import Place, newer_sentence, open_engine
from workbench.store.rows import View
from workbench.store.schema import (
    LessonRecord,
    MusicRecord,
    PieceRecord,
    StepRecord,
    VersionRecord,
)
from workbench.teaching.lessons.lesson import Lesson

#: How long to wait for another program that is writing, in seconds.
WAIT_SECONDS = 2.0


def utc_now() -> datetime:
    return datetime.now(UTC)


class ShelfBase:
    """The open store and its transactions.

    Every public call is one transaction: it is kept whole or not at all, and
    calls from several threads do not disturb each other.
    """

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
        self.place = Place(url)
        self.engine = open_engine(self.place, wait_seconds)
        self._now = now
        # Settings are a teacher's own: in a store that several share, under their name.
        self.owner = "" if self.place.sqlite else teacher_name()
        self._readers = sessionmaker(self.engine)
        self._writers = sessionmaker(self.engine.execution_options(writes=True))
        self._music = MusicMemory()
        # Threads of one process take turns here and not by polling the file's
        # lock; a store in memory has one connection, which readers share too.
        self._write_lock = threading.RLock()
        self._full_text = self._has_full_text()

    def close(self) -> None:
        """Let go of the store; the shelf cannot be used any more."""
        self.engine.dispose()

    def __enter__(self) -> ShelfBase:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    @contextlib.contextmanager
    def _reading(self) -> Iterator[Session]:
        guard = self._write_lock if self.place.memory else contextlib.nullcontext()
        with guard, plain_words(str(self.place)), self._readers() as session:
            yield session

    @property
    def read_only(self) -> str:
        """Why nothing can be changed in this store, in one sentence; "" where it can."""
        return newer_sentence(self.place) if self.place.read_only else ""

    @contextlib.contextmanager
    def _writing(self) -> Iterator[Session]:
        if self.read_only:
            raise BadInput(self.read_only)
        with (
            self._write_lock,
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

    def _time(self) -> datetime:
        return kept_time(self._now())

    # Music, kept once under its digest.

    def _keep_music(self, session: Session, piece: Piece) -> str:
        known = self._music.digest_of(piece)
        if known and session.get(MusicRecord, known):
            return known
        digest, document = music_document(piece)
        if session.get(MusicRecord, digest) is None:
            session.add(MusicRecord(digest=digest, document=document))
            session.flush()
        self._music.hold(digest, piece)
        return digest

    def _read_music(self, session: Session, digest: str, what: str) -> Piece:
        piece = self._music.piece_of(digest)
        if piece is None:
            record = session.get(MusicRecord, digest)
            if record is None:
                raise BadInput("The music of {what} is missing in the lesson store.", what=what)
            piece = unpack(Piece, record.document, what)
            self._music.hold(digest, piece)
        return piece

    def _drop_unused_music(self, session: Session, *only: str) -> None:
        """Forget music that nothing points at; all of it, or ``only`` these digests."""
        session.flush()
        unused = delete(MusicRecord)
        for owner in (PieceRecord, StepRecord, VersionRecord):
            unused = unused.where(~exists().where(owner.music == MusicRecord.digest))
        if only:
            unused = unused.where(MusicRecord.digest.in_(set(only)))
        session.execute(unused, execution_options={"synchronize_session": False})

    # Lessons.

    def _record(self, session: Session, lesson_id: str) -> LessonRecord:
        """The row of a lesson, locked against other writers where that matters."""
        query = select(LessonRecord).where(LessonRecord.id == lesson_id)
        if session.get_bind().get_execution_options().get("writes"):
            query = query.with_for_update()
        found = session.scalar(query)
        if found is None:
            raise BadInput(
                "Lesson {id} is not on the shelf; list them with 'lessons'.", id=lesson_id
            )
        return found

    def _step(self, session: Session, record: LessonRecord, place: int) -> StepRecord | None:
        return session.scalar(
            select(StepRecord).where(StepRecord.lesson == record.number, StepRecord.place == place)
        )

    def _present(self, session: Session, record: LessonRecord) -> StepRecord:
        step = self._step(session, record, record.place)
        if step is None:
            raise BadInput(
                "Lesson '{title}' is damaged in the lesson store: its present state is "
                "missing; go back to a version of it or restore the store from a copy.",
                title=record.title,
            )
        return step

    def _lesson(
        self, session: Session, record: LessonRecord, step: StepRecord | VersionRecord
    ) -> Lesson:
        what = say("Lesson '{title}'", title=record.title)
        piece = self._read_music(session, step.music, what)
        view = read_view(record.view)
        return lesson_from(step.state, piece, record.id, view.selected_bar, what)


def read_view(text: str) -> View:
    """A view as it was kept."""
    return from_dict(View, read_text(text, say("What was last looked at")))


def view_text(view: View) -> str:
    """A view as it is kept."""
    return as_text(to_dict(view))


def kept_time(time: datetime) -> datetime:
    """An aware time as it is kept: UTC, without its zone."""
    return time.astimezone(UTC).replace(tzinfo=None)


def aware(time: datetime) -> datetime:
    """A kept time as one that knows its zone."""
    return time.replace(tzinfo=UTC)
