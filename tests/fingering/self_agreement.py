"""How far the editions agree with themselves: a bound on what any model can foretell.

    python -m tests.fingering.self_agreement

Where a finger is printed for a note, and the same note in the same chord, with the same chords
before and after it, has a printed finger in another work: is it the same one? Studies:
tests/data/guitar-editions (Mutopia Project; README there).
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Callable, Iterable
from typing import NamedTuple

from tests.fingering.agreement import author, load, school, studies
from workbench.fingering.lattice.layers import moments_of

Chord = tuple[int, ...]


class Printed(NamedTuple):
    """A printed finger, the MIDI number it stands at, and the chords before, at and after it."""

    study: str
    left: int
    midi: int
    before: Chord
    here: Chord
    after: Chord


def printed_in(study: str) -> list[Printed]:
    """The printed fretted fingers of a study with what stands around them."""
    piece, marks = load(study)
    left = {mark.note: mark.left for mark in marks if mark.left}
    moments = [group for bar in piece.bars for _, group in moments_of(bar.notes)]
    chords = [(), *(tuple(sorted({n.midi for n in group})) for group in moments), ()]
    return [
        Printed(study, left[n.id], n.midi, *chords[at : at + 3])
        for at, group in enumerate(moments)
        for n in group
        if n.id in left
    ]


class Found(NamedTuple):
    """Printed fingers, those with a like elsewhere, and those that the likes print as well."""

    every: int
    alike: int
    same: int


def against_others(
    rows: Iterable[Printed],
    like: Callable[[Printed], object],
    group: Callable[[str], str],
) -> Found:
    """Rows against what most of their likes in other studies of the same ``group`` print."""
    rows = list(rows)
    seen: dict[object, Counter[tuple[str, int]]] = defaultdict(Counter)
    for row in rows:
        seen[group(row.study), like(row)][row.study, row.left] += 1
    alike = same = 0
    for row in rows:
        votes: Counter[int] = Counter()
        for (study, left), many in seen[group(row.study), like(row)].items():
            if study != row.study:
                votes[left] += many
        if votes:
            alike += 1
            same += min(votes, key=lambda left: (-votes[left], left)) == row.left
    return Found(len(rows), alike, same)


LIKES: dict[str, Callable[[Printed], object]] = {
    "the chords before, here and after": lambda r: (r.midi, r.before, r.here, r.after),
    "the chord here": lambda r: (r.midi, r.here),
    "the note": lambda r: r.midi,
}


def main() -> None:
    rows = [row for study in studies() for row in printed_in(study)]
    for name, group in (("author", author), ("edition", school)):
        mine = [row for row in rows if group(row.study) != "others"]
        print(f"In other works of the same {name}, where these are the same:")
        for words, like in LIKES.items():
            found = against_others(mine, like, group)
            print(f"  {words:36} {found.alike} of {found.every}, {found.same / found.alike:.1%}")


if __name__ == "__main__":
    main()
