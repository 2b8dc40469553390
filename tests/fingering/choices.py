"""How often the first choices of a bar hold a whole printed bar.

    python -m tests.fingering.choices           every study (minutes)
    python -m tests.fingering.choices --every 6  every sixth

Studies: tests/data/guitar-editions (Mutopia Project; README there). A bar counts where it
prints a fretted finger; it is met where all its printed fingers and strings are. The first
choice is the piece's own fingering, the others are what the window offers for the bar. The
weights in force have seen these studies.
"""

from __future__ import annotations

import sys
from collections import Counter

from tests.fingering.agreement import load, studies
from workbench.fingering.engine import Solver
from workbench.fingering.types import FingeredNote
from workbench.instrument.table import hand, instrument
from workbench.music.model import WrittenFingers
from workbench.music.ringing.sounds import sounds

CHOICES = 4


def meets(notes: tuple[FingeredNote, ...], asked: dict[str, WrittenFingers]) -> bool:
    """Whether the notes of a bar have all the fingers and strings that are printed."""
    return all(
        w.left in (None, n.left) and w.string in (None, n.string)
        for n in notes
        if (w := asked.get(n.id)) is not None
    )


def ranks(study: str) -> list[int]:
    """For every bar that prints a fretted finger, the choice (from 1) that meets it, 0 none."""
    piece, printed = load(study)
    lead = sounds(piece)
    asked = {lead.of(w.note): w for w in printed}
    solver = Solver(piece, instrument("guitar"), hand("medium"))
    found = solver.solution()
    out = []
    for bar in found.bars:
        mine = {n.id: asked[n.id] for n in bar.notes if n.id in asked}
        if not any(w.left for w in mine.values()):
            continue
        rank = 1 if meets(bar.notes, mine) else 0
        if not rank:
            others = solver.alternatives(bar.index, CHOICES - 1)
            rank = next((i for i, a in enumerate(others, 2) if meets(a.notes, mine)), 0)
        out.append(rank)
    return out


def main() -> None:
    every = int(sys.argv[sys.argv.index("--every") + 1]) if "--every" in sys.argv else 1
    count: Counter[int] = Counter()
    for study in studies()[::every]:
        count.update(ranks(study))
        bars = sum(count.values())
        first, four = count[1] / bars, (bars - count[0]) / bars
        print(f"{study:24} {bars} bars: first {first:.1%}, among four {four:.1%}", flush=True)


if __name__ == "__main__":
    main()
