"""A document with what the engraver leaves to us: finger marks and half ties.

The engraver would stack finger marks far from their heads, gives figures of grace notes time
of their own, and draws no tie at the edge of a passage; all these are set in its drawing.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Literal


@dataclass(frozen=True)
class FingerMark:
    """``target`` is the id of the head or tablature figure it belongs to; ``below``: under
    the staff rather than above; ``string``: of a grace note's tablature figure, else 0."""

    id: str
    target: str
    text: str
    kind: Literal["left", "string", "right", "grace"]
    below: bool = False
    string: int = 0


@dataclass(frozen=True)
class HalfTie:
    """A tie that begins or ends outside what is drawn. ``head`` is the id of the note part
    it belongs to; ``above``: it bends upwards."""

    head: str
    incoming: bool
    above: bool


@dataclass(frozen=True)
class Marked:
    """The MEI document, and what is set in the drawing of it."""

    mei: str
    fingers: tuple[FingerMark, ...] = ()
    ties: tuple[HalfTie, ...] = ()


@dataclass
class Gathered:
    """Marks and half ties as a document is written."""

    fingers: list[FingerMark] = field(default_factory=list)
    graces: list[FingerMark] = field(default_factory=list)
    ties: list[HalfTie] = field(default_factory=list)

    def with_document(self, mei: str) -> Marked:
        ties = sorted(self.ties, key=lambda tie: not tie.incoming)
        return Marked(mei, (*self.fingers, *self.graces), tuple(ties))
