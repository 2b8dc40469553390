"""Solved fingerings, kept so that no lesson is solved twice."""

from __future__ import annotations

from datetime import timedelta

from sqlalchemy import delete, func, select

from workbench.fingering.types import Fingering
from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.store.base import Store
from workbench.store.documents import fingering_key, pack, unpack
from workbench.store.edition import engine_edition
from workbench.store.schema import FingeringRecord
from workbench.store.scores import Scores
from workbench.teaching.lessons.lesson import Lesson

_TICK = timedelta(microseconds=1)


class Fingerings:
    """Fingerings under a digest of all that they depend on."""

    def __init__(self, store: Store, scores: Scores) -> None:
        self._store = store
        self._scores = scores

    def _key(self, lesson: Lesson, edition: str | None = None) -> str:
        """What a lesson's fingering is kept under: a digest of all it depends on.

        ``edition`` names the engine and its weights, by default this program's.
        """
        if edition is None:
            edition = engine_edition()
        return fingering_key(lesson, self._scores.digest(lesson.piece), edition)

    def cached_fingering(self, lesson: Lesson, edition: str | None = None) -> Fingering | None:
        """The kept fingering of this state of a lesson; None where it is to be solved.

        A damaged one counts as none, for it can be solved again.
        """
        key = self._key(lesson, edition)
        with self._store.reading() as session:
            found = session.get(FingeringRecord, key)
            if found is None:
                return None
            try:
                return unpack(Fingering, found.document, say("A kept fingering"))
            except BadInput:
                return None

    def put_fingering(
        self, lesson: Lesson, fingering: Fingering, edition: str | None = None
    ) -> None:
        """Keep the fingering of this state of a lesson, in place of an earlier one."""
        if self._store.read_only:
            return
        key, document = self._key(lesson, edition), pack(fingering)
        with self._store.writing() as session:
            # The newest is the last one kept, whatever the clock says meanwhile.
            last = session.scalar(select(func.max(FingeringRecord.made)))
            made = max(self._store.time(), last + _TICK) if last else self._store.time()
            session.merge(FingeringRecord(key=key, document=document, made=made))
            session.flush()
            newest = select(FingeringRecord.made).order_by(FingeringRecord.made.desc())
            oldest = session.scalar(newest.offset(self._store.most_fingerings - 1).limit(1))
            if oldest is not None:
                session.execute(delete(FingeringRecord).where(FingeringRecord.made < oldest))
