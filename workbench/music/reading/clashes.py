"""Notes that a score cannot mean: one place of the staff, struck at once by two accidentals.

E and E flat of one octave hardly ever begin together; where they do, one of two stems has
lost its accidental or a voice has slipped in its bar (common practice, no source).
"""

from __future__ import annotations

from collections import defaultdict
from fractions import Fraction

from workbench.language.fact import Fact, fact
from workbench.music.beats import beat_at, beat_in_digits
from workbench.music.model import Bar, Piece, Pitch


def clashes(piece: Piece) -> tuple[Fact, ...]:
    """The warning of such notes, none where there are none: the first place and how many."""
    found = [(bar, onset, struck) for bar in piece.bars for onset, struck in _clashing(bar)]
    if not found:
        return ()
    bar, onset, struck = found[0]
    return (
        fact(
            "clash",
            n=len({(b.index, at) for b, at, _ in found}),
            number=bar.number,
            beat=beat_in_digits(beat_at(bar, onset)),
            low=min(struck, key=lambda p: p.midi).name,
            high=max(struck, key=lambda p: p.midi).name,
        ),
    )


def _clashing(bar: Bar) -> list[tuple[Fraction, set[Pitch]]]:
    """Onsets with the pitches of one step and octave that begin there, where they differ."""
    struck: dict[tuple[Fraction, int, str], set[Pitch]] = defaultdict(set)
    for n in bar.notes:
        if not n.grace and n.duration > 0:
            struck[n.onset, n.pitch.octave, n.pitch.step].add(n.pitch)
    return [(place[0], struck[place]) for place in sorted(struck) if len(struck[place]) > 1]
