"""A correction of the music as one step of the lesson's history."""

from __future__ import annotations

from collections.abc import Callable

from workbench.language.message import Listed, Message
from workbench.music.edits.bars import Rebarred
from workbench.music.model import Piece
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.lessons.music_changed import with_piece
from workbench.ui.bench.session import Session

Change = Callable[[Piece], Piece | Rebarred]


def correct(
    session: Session,
    label: str,
    change: Change,
    then: Callable[[Lesson], Lesson] | None = None,
) -> bool:
    """Change the music of the open lesson, and after it the lesson itself with ``then``.

    False where the change was refused; what went with it is told.
    """
    told: list[Message] = []

    def whole(lesson: Lesson) -> Lesson:
        made = change(lesson.piece)
        piece, bars = (made.piece, made.bars) if isinstance(made, Rebarred) else (made, None)
        carried = with_piece(lesson, piece, bars)
        told.extend(carried.dropped)
        return then(carried.lesson) if then else carried.lesson

    done = session.edit(label, whole)
    if done and told:
        session.told.emit(str(Listed(tuple(told))))
    return done
