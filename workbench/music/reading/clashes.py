"""Notes that a score cannot mean: one place of the staff, struck at once by two accidentals.

E and E flat of one octave hardly ever begin together; where they do, one of two stems has
lost its accidental or a voice has slipped in its bar (common practice, no source).
"""

from __future__ import annotations

from itertools import combinations

from workbench.language.fact import Fact, fact
from workbench.music.beats import beat_at, beat_in_digits
from workbench.music.model import Bar, Note, Piece


def clashes(piece: Piece) -> tuple[Fact, ...]:
    """The warning of such notes, none where there are none: the first place and how many."""
    found = [(bar, low, high) for bar in piece.bars for low, high in _clashing(bar)]
    if not found:
        return ()
    bar, low, high = found[0]
    return (
        fact(
            "clash",
            n=len({(b.index, note.onset) for b, note, _ in found}),
            number=bar.number,
            beat=beat_in_digits(beat_at(bar, low.onset)),
            low=low.pitch.name,
            high=high.pitch.name,
        ),
    )


def _clashing(bar: Bar) -> list[tuple[Note, Note]]:
    """Pairs of one step and octave and different accidentals that begin together."""
    struck = sorted(
        (n for n in bar.notes if not n.grace and n.duration > 0), key=lambda n: (n.onset, n.midi)
    )
    return [
        (a, b)
        for a, b in combinations(struck, 2)
        if a.onset == b.onset
        and a.midi != b.midi
        and (a.pitch.step, a.pitch.octave) == (b.pitch.step, b.pitch.octave)
    ]
