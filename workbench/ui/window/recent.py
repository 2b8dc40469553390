"""The lessons that were on the bench last, a key press away."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QMenu

from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.store.rows import LessonRow
from workbench.ui.bench.session import Session

HOW_MANY = 9  # each has a digit of its own


def fill_recent(menu: QMenu, session: Session, commit: Callable[[], None]) -> None:
    """List the lessons last used, the open one left out. Before another is opened, ``commit``
    keeps what is half written."""
    menu.clear()
    here = session.lesson.id if session.lesson else ""
    try:
        rows = session.shelf.lessons(limit=HOW_MANY + 1)
    except BadInput as wrong:
        session.failed.emit(str(wrong))
        rows = ()
    rows = tuple(row for row in rows if row.id != here)[:HOW_MANY]
    for digit, row in enumerate(rows, 1):
        action = menu.addAction(f"&{digit}  {_words(row).replace('&', '&&')}")
        action.triggered.connect(lambda _on=False, row=row: _open(session, commit, row))
    if not rows:
        menu.addAction(say("No other lesson yet")).setEnabled(False)


def _words(row: LessonRow) -> str:
    return f"{row.title}, {say('for {student}', student=row.student)}" if row.student else row.title


def _open(session: Session, commit: Callable[[], None], row: LessonRow) -> None:
    commit()
    session.open(row.id)
