"""Sentences that are not said yet: English with its fields, in no language so far.

What finds something out (that a bar is too long, that a file is none) hands on a message;
it is said where a user reads it, by ``str``, in the language spoken there.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from workbench.language.names import key_words, pitch_words
from workbench.language.speech import mark as mark
from workbench.language.speech import say


@dataclass(frozen=True)
class Message:
    """``text`` in English, the ``sense`` that it is said in, and what its fields hold:
    values, names of pitches and keys, other messages."""

    text: str
    sense: str = ""
    fields: tuple[tuple[str, object], ...] = ()

    def __str__(self) -> str:
        return say(self.text, sense=self.sense, **dict(self.fields))

    def __format__(self, spec: str) -> str:
        return format(str(self), spec)


@dataclass(frozen=True)
class PitchName:
    """A pitch such as ``Bb4`` in a message."""

    name: str

    def __str__(self) -> str:
        return pitch_words(self.name)


@dataclass(frozen=True)
class KeyName:
    """A key such as ``E minor`` in a message."""

    name: str

    def __str__(self) -> str:
        return key_words(self.name)


def message(text: str, /, *, sense: str = "", **fields: object) -> Message:
    """A sentence to be said later, as ``speech.say`` says one now."""
    return Message(text, sense, tuple(fields.items()))


def counted(n: int, one: str, many: str, /, *, sense: str = "", **fields: object) -> Message:
    """``one`` for exactly one, else ``many``, to be said later; ``{n}`` is the number."""
    return message(one if n == 1 else many, sense=sense, n=n, **fields)


def to_plain(value: object) -> Any:
    """A message, or what a field of it holds, as JSON takes it."""
    if isinstance(value, Message):
        told = {"say": value.text, "sense": value.sense}
        return told | {"fields": {name: to_plain(held) for name, held in value.fields}}
    if isinstance(value, PitchName | KeyName):
        return {"pitch" if isinstance(value, PitchName) else "key": value.name}
    return value if isinstance(value, int | float | str) else str(value)


def from_plain(value: Any) -> Any:
    """What ``to_plain`` wrote. Raises KeyError, TypeError or AttributeError where the data
    is something else."""
    if not isinstance(value, dict):
        return value
    if "pitch" in value:
        return PitchName(str(value["pitch"]))
    if "key" in value:
        return KeyName(str(value["key"]))
    fields = {name: from_plain(held) for name, held in value["fields"].items()}
    return Message(str(value["say"]), str(value["sense"]), tuple(fields.items()))
