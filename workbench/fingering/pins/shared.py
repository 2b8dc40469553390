"""Notes that share one sound, as the teacher pins them and as they are told."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace
from fractions import Fraction

from workbench.fingering.types import FingeredNote, Pin
from workbench.language.fact import fact
from workbench.music.model import Piece
from workbench.music.ringing.sounds import sounds


def apart(piece: Piece, pins: Iterable[Pin]) -> frozenset[str]:
    """Notes that the pins want on a string of their own: by ``Pin.apart``, or because two
    notes of one sound are pinned to different strings."""
    asked = {p.note: p for p in pins}
    out = {n for n, p in asked.items() if p.apart}
    if not asked:
        return frozenset()
    for note, lead in sounds(piece).lead.items():
        a, b = asked.get(note), asked.get(lead)
        if a and b and a.string and b.string and a.string != b.string:
            out.add(note)
    return frozenset(out)


def together(a: Pin, b: Pin) -> Pin:
    """Two pins on one sound as one: what the first leaves free the second says."""
    return replace(
        a,
        string=a.string if a.string is not None else b.string,
        fret=a.fret if a.fret is not None else b.fret,
        left=a.left if a.left is not None else b.left,
        right=a.right or b.right,
    )


def lasting(
    note: str, told: Mapping[str, FingeredNote], goes_on: Mapping[str, str]
) -> FingeredNote:
    """A sound with what it goes on in where it is struck again, as far as it is held: on
    another string it ends there, whatever the new one does."""
    found = told[note]
    while found.held == found.duration and goes_on.get(note) in told:
        note = goes_on[note]
        later = told[note]
        if later.string != found.string:
            return replace(
                found,
                duration=found.duration + later.duration,
                cut_reason=fact("struck elsewhere", string=later.string or 0, note=found.pitch),
                cut_kind="string",
            )
        found = replace(
            found,
            duration=found.duration + later.duration,
            held=found.held + later.held,
            cut_reason=later.cut_reason,
            cut_kind=later.cut_kind,
        )
    return found


def shortened(note: FingeredNote, duration: Fraction) -> FingeredNote:
    """A sound told as one written note of ``duration``: it is cut only where that note is."""
    if note.duration == duration:
        return note
    held = min(note.held, duration)
    if held < duration:
        return replace(note, duration=duration, held=held)
    return replace(note, duration=duration, held=held, cut_reason=None, cut_kind="")
