"""What values know of a finding: its kind and its fields, in no language.

Values that are kept (in the store, in a cache) carry facts; the words are made where
something is shown, so that what was found in one language is read in another.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Union

#: Whole numbers, numbers, names, several names, facts within a fact.
Value = Union[int, float, str, tuple[str, ...], tuple["Fact", ...]]  # noqa: UP007

TEXT = "text"  # kind of a fact that is nothing but a sentence, its field "text"


@dataclass(frozen=True)
class Fact:
    """A kind, such as "hop", and fields by name, such as ("finger", 2)."""

    kind: str
    fields: tuple[tuple[str, Value], ...] = ()

    @classmethod
    def from_text(cls, text: str) -> Fact:
        """A finished sentence, as documents held it before they held facts."""
        return cls(TEXT, (("text", text),))

    def parts(self, name: str) -> tuple[Fact, ...]:
        """The facts in a field; none where it is missing."""
        found = dict(self.fields).get(name, ())
        return tuple(f for f in found if isinstance(f, Fact)) if isinstance(found, tuple) else ()


def fact(kind: str, /, **fields: Value) -> Fact:
    """A fact of that kind."""
    return Fact(kind, tuple(fields.items()))
