"""What makes one left-hand fingering of a chord shape harder than another.

Each term counts one thing about a grip and has a sentence for it. The cost of
a grip is the sum of amount times weight; the weights are in
``resources/weights/shape.json``. Nothing here knows any chord: a term may look
only at where fingers stand.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from functools import lru_cache
from itertools import combinations, pairwise
from pathlib import Path

from workbench.language.speech import mark

WEIGHTS_FILE = Path(__file__).resolve().parents[2] / "resources" / "weights" / "shape.json"
FIRST_POSITION = 3  # up to here, among open strings, finger n stands on fret n

Frets = tuple[int | None, ...]  # highest-numbered string first; None is not played


@dataclass(frozen=True, slots=True)
class Press:
    """One finger on one fret. ``strings`` as in the shape, highest number first."""

    finger: int
    fret: int
    strings: tuple[int, ...]

    @property
    def laid(self) -> bool:
        """True where the finger stops several strings at once (a barre)."""
        return len(self.strings) > 1

    @property
    def width(self) -> int:
        """How many strings the finger lies over, sounding under it or not."""
        return self.strings[0] - self.strings[-1] + 1

    @property
    def middle(self) -> int:
        """Where the finger stands across the neck, in half strings from string 0."""
        return self.strings[0] + self.strings[-1]


@dataclass(frozen=True, slots=True)
class Grip:
    """A fingered shape: ``presses`` in the order of the fingers used. The rest
    follows from them (see ``grip``) and is kept because every term asks for it:
    laid fingers, fingers used next after each other, all pairs of fingers."""

    frets: Frets
    presses: tuple[Press, ...]
    barres: tuple[Press, ...]
    neighbours: tuple[tuple[Press, Press], ...]
    pairs: tuple[tuple[Press, Press], ...]
    has_open: bool

    def fret_on(self, string: int) -> int | None:
        """The fret of a string by its number; 0 open, None not played."""
        return self.frets[len(self.frets) - string]


def grip(frets: Frets, presses: tuple[Press, ...]) -> Grip:
    """A grip of fingers in any order."""
    ordered = tuple(sorted(presses, key=lambda p: p.finger))
    return Grip(
        frets,
        ordered,
        tuple(p for p in ordered if p.laid),
        tuple(pairwise(ordered)),
        tuple(combinations(ordered, 2)),
        0 in frets,
    )


def third_finger(grip: Grip) -> int:
    """1 where finger 3 is used."""
    return sum(p.finger == 3 for p in grip.presses)


def fourth_finger(grip: Grip) -> int:
    """1 where finger 4 is used."""
    return sum(p.finger == 4 for p in grip.presses)


def first_barre(grip: Grip) -> int:
    """1 where finger 1 is laid over strings."""
    return sum(p.finger == 1 for p in grip.barres)


def barre_width(grip: Grip) -> int:
    """Strings that barres lie over beyond the second one."""
    return sum(p.width - 2 for p in grip.barres)


def second_barre(grip: Grip) -> int:
    """1 where finger 2 is laid over strings."""
    return sum(p.finger == 2 for p in grip.barres)


def third_barre(grip: Grip) -> int:
    """1 where finger 3 is laid over strings."""
    return sum(p.finger == 3 for p in grip.barres)


def fourth_barre(grip: Grip) -> int:
    """1 where finger 4 is laid over strings."""
    return sum(p.finger == 4 for p in grip.barres)


def wide_other_barre(grip: Grip) -> int:
    """Barres over three strings or more with a finger other than the first."""
    return sum(p.finger > 1 and p.width > 2 for p in grip.barres)


def barre_beneath(grip: Grip) -> int:
    """Strings a barre lies over that another finger stops higher up (or that are not played)."""
    return sum(p.width - len(p.strings) for p in grip.barres)


def inner_barre(grip: Grip) -> int:
    """Barres that end before the string nearest the floor. Finger 1 may rest on a
    string that is not played; another finger must bend its tip joint in any case."""
    return sum(
        any(p.finger > 1 or grip.fret_on(s) is not None for s in range(1, p.strings[-1]))
        for p in grip.barres
    )


def barre_with_open(grip: Grip) -> int:
    """Barres held while an open string sounds."""
    return len(grip.barres) if grip.has_open else 0


def barre_above_open(grip: Grip) -> int:
    """Barres whose finger must arch clear of an open string on the floor side."""
    return sum(any(grip.fret_on(s) == 0 for s in range(1, p.strings[-1])) for p in grip.barres)


def crossed(grip: Grip) -> int:
    """Pairs on one fret with the higher finger on the higher-numbered string."""
    return sum(a.fret == b.fret and b.middle > a.middle for a, b in grip.pairs)


def shared_fret(grip: Grip) -> int:
    """1 where two or more fingers crowd on one fret."""
    return int(any(a.fret == b.fret for a, b in grip.neighbours))


def shared_far(grip: Grip) -> int:
    """Half strings between two neighbouring fingers of one fret beyond one string."""
    return sum(max(0, abs(a.middle - b.middle) - 2) for a, b in grip.neighbours if a.fret == b.fret)


def skipped(grip: Grip) -> int:
    """Fingers left out between two that stand as close as neighbours could."""
    return sum(max(0, b.finger - a.finger - max(1, b.fret - a.fret)) for a, b in grip.neighbours)


def against_slant(grip: Grip) -> int:
    """Half strings by which a higher finger on a higher fret stands nearer the bass side."""
    return sum(max(0, b.middle - a.middle) for a, b in grip.pairs if a.fret < b.fret)


def neighbour_against_slant(grip: Grip) -> int:
    """Neighbouring fingers (1-2, 2-3, 3-4) that stand against the slant of the hand."""
    return sum(
        a.fret < b.fret and b.middle > a.middle
        for a, b in grip.neighbours
        if b.finger == a.finger + 1
    )


def _spread(grip: Grip, *fingers: tuple[int, int]) -> int:
    return sum(
        max(0, (b.fret - a.fret) - (b.finger - a.finger))
        for a, b in grip.neighbours
        if (a.finger, b.finger) in fingers
    )


def spread_12(grip: Grip) -> int:
    """Frets between fingers 1 and 2 beyond one finger a fret."""
    return _spread(grip, (1, 2))


def spread_23(grip: Grip) -> int:
    """Frets between fingers 2 and 3 beyond one finger a fret."""
    return _spread(grip, (2, 3))


def spread_outer(grip: Grip) -> int:
    """The same where a finger between the two is left out (1-3, 2-4, 1-4)."""
    return _spread(grip, (1, 3), (2, 4), (1, 4))


def spread_to_barre(grip: Grip) -> int:
    """Barres laid by a finger that is already spread from its neighbour."""
    return sum(b.laid and b.fret - a.fret > b.finger - a.finger for a, b in grip.neighbours)


def _near_nut(grip: Grip) -> bool:
    return grip.has_open and all(p.fret <= FIRST_POSITION for p in grip.presses)


def out_of_first_position(grip: Grip) -> int:
    """Frets by which the whole hand leaves first position near the nut among open
    strings: 0 as soon as one finger n is on fret n."""
    if not _near_nut(grip):
        return 0
    return min((abs(p.fret - p.finger) for p in grip.presses), default=0)


def below_first_position(grip: Grip) -> int:
    """Frets that fingers stand lower than finger n on fret n, near the nut among
    open strings: the fingers are bunched towards the nut."""
    if not _near_nut(grip):
        return 0
    return sum(max(0, p.finger - p.fret) for p in grip.presses)


@dataclass(frozen=True)
class Term:
    """A cost term: its name in the weights file, and its sentence, where ``{n}``
    stands for the amount."""

    name: str
    amount: Callable[[Grip], int]
    sentence: str


# The same wherever the grip lies on the neck.
SHAPE_TERMS: tuple[Term, ...] = (
    Term("third_finger", third_finger, mark("Finger 3 is used, a weaker finger.")),
    Term("fourth_finger", fourth_finger, mark("Finger 4 is used, the weakest finger.")),
    Term("first_barre", first_barre, mark("Finger 1 lies over several strings (barre).")),
    Term("barre_width", barre_width, mark("A barre is wide: {n} more than two strings to press.")),
    Term("second_barre", second_barre, mark("Finger 2 has to lie over several strings.")),
    Term("third_barre", third_barre, mark("Finger 3 has to lie over several strings.")),
    Term("fourth_barre", fourth_barre, mark("Finger 4 has to lie over several strings.")),
    Term(
        "wide_other_barre",
        wide_other_barre,
        mark("A finger other than the first lies over three strings or more."),
    ),
    Term(
        "barre_beneath",
        barre_beneath,
        mark("A barre must stay flat beneath another finger's string."),
    ),
    Term(
        "inner_barre",
        inner_barre,
        mark("A barre ends before string 1, so its tip joint presses instead of the whole finger."),
    ),
    Term(
        "barre_with_open",
        barre_with_open,
        mark("A laid finger may damp the open string beside it."),
    ),
    Term(
        "barre_above_open",
        barre_above_open,
        mark("The barre finger must arch to let an open string nearer the floor ring."),
    ),
    Term(
        "crossed",
        crossed,
        mark("Fingers on one fret cross: the higher finger is on the higher-numbered string."),
    ),
    Term("shared_fret", shared_fret, mark("Two fingers or more crowd on one fret.")),
    Term("shared_far", shared_far, mark("Neighbouring fingers on one fret stand strings apart.")),
    Term(
        "skipped", skipped, mark("A finger is skipped though its neighbours stand close together.")
    ),
    Term(
        "against_slant",
        against_slant,
        mark("A higher finger reaches over to the bass side, against the slant of the hand."),
    ),
    Term(
        "neighbour_against_slant",
        neighbour_against_slant,
        mark("Neighbouring fingers twist against the slant of the hand."),
    ),
    Term(
        "spread_12", spread_12, mark("Fingers 1 and 2 are spread, by {n} more than one fret each.")
    ),
    Term(
        "spread_23", spread_23, mark("Fingers 2 and 3 are spread, by {n} more than one fret each.")
    ),
    Term(
        "spread_outer",
        spread_outer,
        mark("The hand opens wider than one finger a fret, by {n}."),
    ),
    Term("spread_to_barre", spread_to_barre, mark("A finger is spread and must lie flat as well.")),
)
# Depends on the frets themselves.
PLACE_TERMS: tuple[Term, ...] = (
    Term(
        "out_of_first_position",
        out_of_first_position,
        mark("Near the nut, the whole hand leaves first position, by frets: {n}."),
    ),
    Term(
        "below_first_position",
        below_first_position,
        mark("Near the nut, a finger is bunched lower than its own fret (1 on 1, 2 on 2, 3 on 3)."),
    ),
)
STRETCH = "stretch"  # millimetres beyond comfort, measured in shape.py
STRETCH_SENTENCE = mark("The fingers stretch {n} mm beyond what is comfortable for this hand.")
ALL_NAMES: tuple[str, ...] = (*(t.name for t in SHAPE_TERMS + PLACE_TERMS), STRETCH)
SENTENCES: Mapping[str, str] = {
    **{t.name: t.sentence for t in SHAPE_TERMS + PLACE_TERMS},
    STRETCH: STRETCH_SENTENCE,
}


@lru_cache(maxsize=1)
def default_weights() -> Mapping[str, int]:
    """Term name to weight, from the weights file."""
    rows = json.loads(WEIGHTS_FILE.read_text(encoding="utf-8"))["weights"]
    return {name: int(rows[name]["weight"]) for name in ALL_NAMES}


def amounts(grip: Grip, terms: tuple[Term, ...]) -> Iterator[tuple[str, int]]:
    """The terms that apply to a grip, with their amounts (never 0)."""
    for term in terms:
        if n := term.amount(grip):
            yield term.name, n
