"""What an engraving shows."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Final, Literal

from workbench.music.model import Piece

PRINTED, EVERY = "printed", "every"


@dataclass(frozen=True)
class MeiOptions:
    """``first``/``last``: written bar indices of a passage, inclusive (None: the
    piece's ends). ``breaks``: bar indices that begin a system. ``marks``:
    (bar index, number) of the teacher's notes. ``open_zero``: write 0 for
    open strings. ``strings``: string numbers in circles, PRINTED where the score prints
    them, EVERY where a note is on another string than a player would take it on at
    sight, "" nowhere."""

    tab: bool = True
    left: bool = True
    right: bool = True
    chords: bool = True
    tempo: bool = True
    open_zero: bool = False
    first: int | None = None
    last: int | None = None
    breaks: tuple[int, ...] = ()
    marks: tuple[tuple[int, int], ...] = ()
    strings: str = PRINTED
    above: Piece | None = field(default=None, compare=False)


TABLATURE: Final = "tablature"
STAFF: Final = "staff"


@dataclass(frozen=True)
class SmallLook:
    """How a bar is drawn alone and small: ``kind`` TABLATURE or STAFF, in ``ink``, at most
    ``width`` by ``height`` pixels, ``ratio`` device pixels to each; ``zoom`` multiplies
    the size it has where there is room."""

    kind: Literal["tablature", "staff"]
    ink: str
    width: int
    height: int
    ratio: float = 1.0
    zoom: float = 1.0
