"""Sentences that are not said yet: English with its fields, in no language so far.

What finds something out (that a bar is too long, that a file is none) hands on a message;
it is said where a user reads it, by ``str``, in the language spoken there.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from workbench.language.names import (
    as_first_word,
    chord_words,
    decimal,
    key_words,
    ordinal,
    pitch_words,
    plain,
)
from workbench.language.speech import mark as mark
from workbench.language.speech import say


class Unsaid:
    """What is said by ``str``, in the language spoken then. False where there is nothing
    to say."""

    def __format__(self, spec: str) -> str:
        return format(str(self), spec)


#: Words to be said later, or a text that is the same in every language, such as a teacher's own.
Text = str | Unsaid


@dataclass(frozen=True)
class Message(Unsaid):
    """``text`` in English, the ``sense`` that it is said in, and what its fields hold:
    values, names of pitches and keys, other messages."""

    text: str
    sense: str = ""
    fields: tuple[tuple[str, object], ...] = ()

    def __str__(self) -> str:
        return say(self.text, sense=self.sense, **dict(self.fields))


@dataclass(frozen=True)
class PitchName(Unsaid):
    """A pitch such as ``Bb4``, or a note such as ``Bb``."""

    name: str

    def __str__(self) -> str:
        return pitch_words(self.name)


@dataclass(frozen=True)
class KeyName(Unsaid):
    """A key such as ``E minor``."""

    name: str

    def __str__(self) -> str:
        return key_words(self.name)


@dataclass(frozen=True)
class SymbolName(Unsaid):
    """A chord's name such as ``Bbm7/F#``."""

    name: str

    def __str__(self) -> str:
        return chord_words(self.name)


@dataclass(frozen=True)
class Figure(Unsaid):
    """A number with so many decimals, or with those that it needs."""

    value: float
    places: int | None = None

    def __str__(self) -> str:
        return plain(self.value) if self.places is None else decimal(self.value, self.places)


@dataclass(frozen=True)
class Nth(Unsaid):
    """A place in a row, such as 2nd."""

    number: int

    def __str__(self) -> str:
        return ordinal(self.number)


@dataclass(frozen=True)
class Listed(Unsaid):
    """Several words one after the other, with something ``between``."""

    parts: tuple[Text, ...]
    between: Text = " "

    def __str__(self) -> str:
        return str(self.between).join(map(str, self.parts))

    def __bool__(self) -> bool:
        return any(self.parts)


@dataclass(frozen=True)
class Opening(Unsaid):
    """Words with a capital, as they begin a sentence."""

    words: Text

    def __str__(self) -> str:
        return as_first_word(self.words)

    def __bool__(self) -> bool:
        return bool(self.words)


def message(text: str, /, *, sense: str = "", **fields: object) -> Message:
    """A sentence to be said later, as ``speech.say`` says one now."""
    return Message(text, sense, tuple(fields.items()))


def counted(n: int, one: str, many: str, /, *, sense: str = "", **fields: object) -> Message:
    """``one`` for exactly one, else ``many``, to be said later; ``{n}`` is the number."""
    return message(one if n == 1 else many, sense=sense, n=n, **fields)


def in_a_row(parts: Iterable[Text], between: Text = ", ") -> Listed:
    """Words one after the other, those left out that say nothing."""
    return Listed(tuple(part for part in parts if part), between)


#: How words with one field are called in JSON.
_NAMED: dict[str, tuple[type[PitchName | KeyName | SymbolName | Nth | Opening], str]] = {
    "pitch": (PitchName, "name"), "key": (KeyName, "name"), "chord": (SymbolName, "name"),
    "nth": (Nth, "number"), "opening": (Opening, "words"),
}  # fmt: skip


def to_plain(value: object) -> Any:
    """Words, or what a field of them holds, as JSON takes it."""
    if isinstance(value, Message):
        told = {"say": value.text, "sense": value.sense}
        return told | {"fields": {name: to_plain(held) for name, held in value.fields}}
    if isinstance(value, Listed):
        return {"row": [to_plain(part) for part in value.parts], "between": to_plain(value.between)}
    if isinstance(value, Figure):
        return {"figure": value.value, "places": value.places}
    for name, (kind, field) in _NAMED.items():
        if isinstance(value, kind):
            return {name: to_plain(getattr(value, field))}
    return value if isinstance(value, int | float | str) else str(value)


def from_plain(value: Any) -> Any:
    """What ``to_plain`` wrote. Raises KeyError, TypeError or AttributeError where the data
    is something else."""
    if not isinstance(value, dict):
        return value
    for name, (kind, _) in _NAMED.items():
        if name in value:
            return kind(from_plain(value[name]))
    if "row" in value:
        return Listed(tuple(map(from_plain, value["row"])), from_plain(value["between"]))
    if "figure" in value:
        return Figure(float(value["figure"]), value["places"])
    fields = {name: from_plain(held) for name, held in value["fields"].items()}
    return Message(str(value["say"]), str(value["sense"]), tuple(fields.items()))
