"""The legato audit read from a fingering: what is cut, worst first, and why."""

from __future__ import annotations

from collections import Counter
from fractions import Fraction

from workbench.fingering.types import FingeredBar, FingeredNote, Fingering
from workbench.language.message import mark

CAUSES = {
    "hop": mark("a finger hops"),
    "string": mark("its string is taken"),
    "barre": mark("a barre is laid or lifted"),
    "shift": mark("the hand shifts"),
    "stretch": mark("the next grip lies out of reach"),
}


def lost(note: FingeredNote) -> Fraction:
    """Quarter lengths by which a note is held too short."""
    return note.duration - note.held


def worst_first(fingering: Fingering) -> tuple[FingeredNote, ...]:
    """Notes held too short, the greatest loss first, then in score order."""
    cut = [n for bar in fingering.bars for n in bar.notes if lost(n) > 0]
    return tuple(sorted(cut, key=lambda n: -lost(n)))


#: What is told instead of figures where there is nothing to hold.
NOTHING_PLAYED = mark("No note of it can be played as it is; choose another key, octave or tuning.")


def held_fraction(bar: FingeredBar) -> float:
    """Share of a bar's written length that is held, 0 to 1; 1 where it has no notes."""
    written = sum((n.duration for n in bar.notes), Fraction(0))
    kept = sum((n.held for n in bar.notes), Fraction(0))
    return float(kept / written) if written else 1.0


def causes(fingering: Fingering) -> dict[str, int]:
    """How many notes are cut by each cause, the commonest first."""
    count = Counter(n.cut_kind for n in worst_first(fingering) if n.cut_kind)
    return dict(count.most_common())
