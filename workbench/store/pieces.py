"""Pieces on the shelf, known again by their music."""

from __future__ import annotations

import uuid
from pathlib import PurePath
from typing import Any

from sqlalchemy import func, select
from sqlalchemy.orm import Session

from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.store.base import Store, aware
from workbench.store.documents import clean, fingerprint, fold
from workbench.store.refusals import DamagedRow
from workbench.store.rows import PieceRow
from workbench.store.schema import NAME, LessonRecord, PieceRecord
from workbench.store.scores import Scores

_LESSONS = (
    select(func.count(LessonRecord.number))
    .where(LessonRecord.piece_id == PieceRecord.id, LessonRecord.deleted.is_(None))
    .scalar_subquery()
)


def _rows(session: Session, query: Any) -> tuple[PieceRow, ...]:
    found = session.execute(query).all()
    if any(piece is None for piece, _ in found):
        raise DamagedRow("a piece without a number")
    return tuple(
        PieceRow(
            id=piece.id,
            title=piece.title,
            composer=piece.composer,
            key=piece.key,
            bars=piece.bars,
            source=piece.source,
            created=aware(piece.created),
            lessons=count,
            fingerprint=piece.fingerprint,
        )
        for piece, count in found
    )


class Pieces:
    """Pieces as they were imported; lessons are made of them."""

    def __init__(self, store: Store, scores: Scores) -> None:
        self._store = store
        self._scores = scores

    def find_same(self, piece: Piece) -> PieceRow | None:
        """The oldest piece on the shelf with the same music, whatever its file
        or title was called; None if there is none."""
        with self._store.reading() as session:
            return self.same(session, piece)

    def same(self, session: Session, piece: Piece) -> PieceRow | None:
        query = (
            select(PieceRecord, _LESSONS)
            .where(PieceRecord.fingerprint == fingerprint(piece), PieceRecord.deleted.is_(None))
            .order_by(PieceRecord.created, PieceRecord.id)
            .limit(1)
        )
        return next(iter(_rows(session, query)), None)

    def add_piece(self, piece: Piece, source: str = "") -> PieceRow:
        """Put a piece on the shelf, even where ``find_same`` knows it already.

        ``source`` is the file it was read from; only its name is kept.
        """
        with self._store.writing() as session:
            return self.take_in(session, piece, source)

    def take_in(self, session: Session, piece: Piece, source: str = "") -> PieceRow:
        record = PieceRecord(
            id=uuid.uuid4().hex,
            fingerprint=fingerprint(piece),
            music=self._scores.keep(session, piece),
            title=clean(piece.title),
            composer=clean(piece.composer),
            key=clean(piece.key.name)[:NAME],
            bars=len(piece.bars),
            source=clean(PurePath(source).name),
            created=self._store.time(),
        )
        session.add(record)
        session.flush()
        return self._piece_row(session, record.id)

    def _piece_row(self, session: Session, piece_id: str) -> PieceRow:
        query = select(PieceRecord, _LESSONS).where(PieceRecord.id == piece_id)
        found = _rows(session, query)
        if not found:
            raise BadInput("Piece {id} is not on the shelf.", id=piece_id)
        return found[0]

    def piece(self, piece_id: str) -> PieceRow:
        """The entry of one piece; BadInput where there is none."""
        with self._store.reading() as session:
            return self._piece_row(session, piece_id)

    def pieces(self, search: str = "") -> tuple[PieceRow, ...]:
        """The pieces on the shelf by title; ``search`` narrows to those whose
        title, composer or file name has all its words."""
        query = (
            select(PieceRecord, _LESSONS)
            .where(PieceRecord.deleted.is_(None))
            .order_by(func.lower(PieceRecord.title), PieceRecord.created)
        )
        with self._store.reading() as session:
            rows = _rows(session, query)
        wanted = fold(search).split()
        return tuple(
            row
            for row in rows
            if all(word in fold(f"{row.title} {row.composer} {row.source}") for word in wanted)
        )

    def load_piece(self, piece_id: str) -> Piece:
        """The music of a piece as it was imported."""
        with self._store.reading() as session:
            record = session.get(PieceRecord, piece_id)
            if record is None:
                raise BadInput("Piece {id} is not on the shelf.", id=piece_id)
            return self._scores.read(
                session, record.music, say("Piece '{title}'", title=record.title)
            )

    def delete_piece(self, piece_id: str) -> None:
        """Take a piece off the shelf; ``restore_piece`` puts it back.

        Its lessons keep their music and stay. Raises BadInput where there is
        no such piece.
        """
        self._set_deleted(piece_id, True)

    def restore_piece(self, piece_id: str) -> None:
        """Put a deleted piece back."""
        self._set_deleted(piece_id, False)

    def _set_deleted(self, piece_id: str, deleted: bool) -> None:
        with self._store.writing() as session:
            record = session.get(PieceRecord, piece_id)
            if record is None:
                raise BadInput("Piece {id} is not on the shelf.", id=piece_id)
            record.deleted = self._store.time() if deleted else None
