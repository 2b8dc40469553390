"""The music of pieces and lessons, kept once under its digest."""

from __future__ import annotations

from sqlalchemy import delete, exists
from sqlalchemy.orm import Session

from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.store.documents import MusicMemory, music_document, unpack
from workbench.store.schema import MusicRecord, PieceRecord, StepRecord, VersionRecord


class Scores:
    """Music in the store, and what was lately written or read of it."""

    def __init__(self) -> None:
        self._memory = MusicMemory()

    def digest(self, piece: Piece) -> str:
        """The digest of a piece, whether or not it is in the store."""
        known = self._memory.digest_of(piece)
        if known is None:
            known, _ = music_document(piece)
            self._memory.hold(known, piece)
        return known

    def keep(self, session: Session, piece: Piece) -> str:
        known = self._memory.digest_of(piece)
        if known and session.get(MusicRecord, known):
            return known
        digest, document = music_document(piece)
        if session.get(MusicRecord, digest) is None:
            session.add(MusicRecord(digest=digest, document=document))
            session.flush()
        self._memory.hold(digest, piece)
        return digest

    def read(self, session: Session, digest: str, what: str) -> Piece:
        piece = self._memory.piece_of(digest)
        if piece is None:
            record = session.get(MusicRecord, digest)
            if record is None:
                raise BadInput("The music of {what} is missing in the lesson store.", what=what)
            piece = unpack(Piece, record.document, what)
            self._memory.hold(digest, piece)
        return piece

    def drop_unused(self, session: Session, *only: str) -> None:
        """Forget music that nothing points at; all of it, or ``only`` these digests."""
        session.flush()
        unused = delete(MusicRecord)
        for owner in (PieceRecord, StepRecord, VersionRecord):
            unused = unused.where(~exists().where(owner.music == MusicRecord.digest))
        if only:
            unused = unused.where(MusicRecord.digest.in_(set(only)))
        session.execute(unused, execution_options={"synchronize_session": False})
