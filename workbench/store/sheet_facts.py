"""What the shelf knows that a printed page of a lesson wants: its history, and the grips
that earlier lessons of the student taught."""

from __future__ import annotations

from datetime import datetime
from itertools import groupby

from workbench.instrument.table import hand, instrument
from workbench.language.speech import count, say
from workbench.store.earlier import earlier_lessons
from workbench.store.shelf import Shelf
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.techniques.news import moves_of

MOST_ROWS = 40
_MOST_LABELS = 4


def lesson_history(shelf: Shelf, lesson_id: str) -> tuple[tuple[str, str], ...]:
    """(date, what) rows, oldest first: the kept versions by name, and what was done each
    day. Of a long history the latest. Raises BadInput where the lesson is not on the shelf."""
    rows: list[tuple[datetime, str]] = [
        (v.made.astimezone(), say("Version '{name}'", name=v.name))
        for v in shelf.versions(lesson_id)
    ]
    history = shelf.history(lesson_id)
    steps = history.steps[: history.at + 1]
    for _, group in groupby(steps, key=lambda s: s.made.astimezone().date()):
        day = list(group)
        labels = list(dict.fromkeys(s.label for s in day if s.label))
        words = "; ".join(labels[:_MOST_LABELS])
        if len(labels) > _MOST_LABELS:
            more = len(labels) - _MOST_LABELS
            words = count(more, "{words} and {n} more", "{words} and {n} more", words=words)
        if words:
            rows.append((day[-1].made.astimezone(), words))
    rows.sort(key=lambda r: r[0])
    return tuple((made.strftime("%Y-%m-%d"), words) for made, words in rows[-MOST_ROWS:])


def known_grips(shelf: Shelf, lesson: Lesson) -> frozenset[str]:
    """Grips that the student's earlier lessons on instruments with as many strings taught,
    as frets from the highest-numbered string (``2-0-1-0``). A lesson that was never
    fingered tells nothing."""
    strings = instrument(lesson.instrument).strings
    known: set[str] = set()
    if not lesson.student:
        return frozenset()
    for row in earlier_lessons(shelf, lesson.student, lesson.id):
        before = shelf.load(row.id)
        fingering = shelf.cached_fingering(before)
        player = instrument(before.instrument, before.capo)
        if fingering is None or player.strings != strings or not before.piece.notes:
            continue
        moves = moves_of(before.piece, fingering, player, hand(before.hand))
        known |= {m.move.name for m in moves if m.move.kind == "grip"}
    return frozenset(known)
