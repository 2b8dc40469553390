"""What an engraving shows."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class MeiOptions:
    """``first``/``last``: written bar indices of a passage, inclusive (None: the
    piece's ends). ``breaks``: bar indices that begin a system. ``marks``:
    (bar index, number) of the teacher's notes. ``open_zero``: write 0 for
    open strings."""

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
