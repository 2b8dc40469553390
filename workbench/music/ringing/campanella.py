"""Campanella: neighbouring notes of a scale that ring into one another like small bells.

A note whose voice moves on at once by a step rings until the note it moves to has ended, so
that the two lie on different strings (common practice on re-entrant tunings, no source). A
slurred pair stays on one string, and repeated notes and leaps are as written.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from workbench.music.model import Note, Piece

STEP = 2  # semitones
LONGEST = Fraction(1)  # a quarter: what lasts longer sings by itself


def overlapping(piece: Piece, slurred: Mapping[str, str]) -> dict[str, Fraction]:
    """Notes by id that ring into the next of their scale, with the quarter lengths that each
    rings from its onset. ``slurred`` names for notes the one they are slurred from."""
    voices: dict[int, dict[Fraction, list[Note]]] = {}
    for bar in piece.bars:
        for n in bar.notes:
            if not n.grace and n.duration > 0:
                at = piece.starts[bar.index] + n.onset
                voices.setdefault(n.voice, {}).setdefault(at, []).append(n)
    out: dict[str, Fraction] = {}
    for moments in voices.values():
        for at, notes in moments.items():
            for n in notes:
                near = [
                    m for m in moments.get(at + n.duration, ())
                    if 0 < abs(m.midi - n.midi) <= STEP and slurred.get(m.id) != n.id
                ]  # fmt: skip
                if near and n.duration <= LONGEST:
                    out[n.id] = n.duration + min(LONGEST, *(m.duration for m in near))
    return out
