"""What was altered in a lesson's music, in words."""

from __future__ import annotations

from workbench.arranging.words import sentence
from workbench.fingering.telling.words import words
from workbench.teaching.lessons.lesson import Lesson


def altered(lesson: Lesson) -> tuple[str, ...]:
    """What arranging altered and what is left out of the printed fingering, as sentences in
    the language spoken now."""
    # two stems of one sound change alike, and are told once
    told = (*map(words, lesson.changes), *map(sentence, lesson.arranged))
    return tuple(dict.fromkeys(told))
