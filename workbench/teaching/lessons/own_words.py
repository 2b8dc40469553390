"""What people wrote in a lesson: names, titles and texts, as against what the program finds."""

from __future__ import annotations

from workbench.teaching.lessons.lesson import Lesson


def own_words(lesson: Lesson) -> tuple[str, ...]:
    """Everything in words that the score or the teacher brought into a lesson."""
    piece = lesson.piece
    found = [lesson.title, lesson.student, piece.title, piece.composer, piece.arranger]
    found += [*piece.tunes, *(part.name for part in piece.parts)]
    for note in lesson.notes:
        found += note.text, note.why
    found += (text for _, text in lesson.script_edits)
    return tuple(dict.fromkeys(filter(None, found)))
