"""Notes that last no time, as damaged files have them."""

from __future__ import annotations

from typing import Any

from workbench.language.fact import Fact, fact
from workbench.music.parsing.staves import BarContent


def without_length(bars: list[BarContent]) -> list[int]:
    """Take out notes of no or negative length, and such as begin before their bar: nobody
    can play them. The indices of their bars, one for each note."""
    out: list[int] = []
    for index, bar in enumerate(bars):
        kept = [n for n in bar.notes if n.onset >= 0 and (n.grace or n.duration > 0)]
        out += [index] * (len(bar.notes) - len(kept))
        bar.notes[:] = kept
    return out


def lost_notes(frame: list[Any], bars: list[int], notes: int) -> Fact:
    """The warning that tells of them; ``bars`` are indices, ``frame`` the bars read."""
    named = ", ".join(frame[i].measureNumberWithSuffix() for i in bars[:8] if i < len(frame))
    return fact("no length", n=notes, bars=named, more=" ..." if len(bars) > 8 else "")
