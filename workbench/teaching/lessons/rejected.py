"""A fingering that the teacher did not take, told note by note."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from workbench.fingering.types import FingeredBar
from workbench.teaching.lessons.lesson import RejectedNote

Rejected = tuple[RejectedNote, ...]


def fingered_otherwise(bar: FingeredBar, rejected: Rejected) -> FingeredBar:
    """The bar with some notes where they were not taken."""
    other = {note: (string, fret, left) for note, string, fret, left in rejected}
    notes = tuple(
        replace(
            n,
            string=other[n.id][0],
            fret=other[n.id][1],
            left=other[n.id][2],
            pinned=False,
            cut_reason=None,
        )
        if n.id in other
        else n
        for n in bar.notes
    )
    return replace(bar, notes=notes, barres=())


def differing(bar: FingeredBar, notes: Iterable[RejectedNote]) -> Rejected:
    """The rows that differ from the bar's present fingering."""
    now = {n.id: (n.string, n.fret, n.left) for n in bar.notes}
    return tuple(row for row in notes if row[0] in now and now[row[0]] != row[1:])
