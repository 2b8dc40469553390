"""Small numbers as words, and as Roman numerals."""

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


def roman(number: int) -> str:
    """Frets and positions, from 1, are named in Roman numerals."""
    out = ""
    for value, letters in ((10, "X"), (9, "IX"), (5, "V"), (4, "IV"), (1, "I")):
        while number >= value:
            out += letters
            number -= value
    return out
