"""Small numbers as words."""

from __future__ import annotations

from workbench.language.speech import mark, say

_NUMBERS = (
    mark("no", sense="number"),
    mark("one", sense="number"),
    mark("two", sense="number"),
    mark("three", sense="number"),
    mark("four", sense="number"),
    mark("five", sense="number"),
    mark("six", sense="number"),
    mark("seven", sense="number"),
    mark("eight", sense="number"),
    mark("nine", sense="number"),
    mark("ten", sense="number"),
)


def in_words(number: int) -> str:
    """A small number as a word ("three"), a greater one in figures."""
    return say(_NUMBERS[number], sense="number") if number < len(_NUMBERS) else str(number)
