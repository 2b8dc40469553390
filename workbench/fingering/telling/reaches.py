"""How far the left hand opens at one moment, measured against the student's hand."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from itertools import combinations

from workbench.fingering.hand.reach import Place, pair_limits, span_mm
from workbench.fingering.telling.moments import Moment, moments
from workbench.fingering.types import Barre, FingeredBar
from workbench.instrument.model import Hand, Instrument
from workbench.language.message import Listed, message


@dataclass(frozen=True)
class Reach:
    """The two fingers that are opened most for what they like, and how far, in mm.

    ``from_fret`` is the lower of their frets.
    """

    fingers: tuple[int, int]
    from_fret: int
    apart: float
    comfort: float
    greatest: float

    @property
    def wide(self) -> bool:
        """Beyond what is comfortable for this hand."""
        return self.apart > self.comfort

    @property
    def words(self) -> Listed:
        """For example "1–3: Reach 62 mm of 70 mm in comfort."."""
        first, second = self.fingers
        measured = message(
            "Reach {reach} mm of {comfort} mm in comfort.",
            reach=round(self.apart), comfort=round(self.comfort),
        )  # fmt: skip
        return Listed((f"{first}–{second}:", measured))


def reach_of(
    pressed: Mapping[Place, int], barres: Iterable[Barre], instrument: Instrument, hand: Hand
) -> Reach | None:
    """The reach of the fingers ``pressed`` down; None with fewer than two of them.

    A barre is measured from its nearest string.
    """
    places: dict[int, set[Place]] = {}
    for place, finger in pressed.items():
        places.setdefault(finger, set()).add(place)
    for barre in barres:
        if barre.finger in places:
            places[barre.finger] |= {(string, barre.fret) for string in barre.strings}
    limits = pair_limits(hand)
    found = []
    for first, second in combinations(sorted(places), 2):
        apart, low = min(
            (span_mm(instrument, a, b), min(a[1], b[1]))
            for a in places[first]
            for b in places[second]
        )
        comfort, greatest = limits[first, second]
        found.append(Reach((first, second), low, apart, comfort, greatest))
    return max(found, key=lambda r: r.apart / r.comfort, default=None)


def reach_at(
    moment: Moment, barres: Iterable[Barre], instrument: Instrument, hand: Hand
) -> Reach | None:
    """The reach at one moment of a bar, with those of its barres that notes now sound under."""
    return reach_of(moment.pressed, sounding_barres(moment, barres), instrument, hand)


def sounding_barres(moment: Moment, barres: Iterable[Barre]) -> tuple[Barre, ...]:
    """The barres that a note of the moment lies under."""
    return tuple(
        b
        for b in barres
        if any(
            n.fret == b.fret and n.string in b.strings and n.left == b.finger for n in moment.notes
        )
    )


def widest(bar: FingeredBar, instrument: Instrument, hand: Hand) -> Reach | None:
    """The reach of a bar that is widest for this hand; None where no two fingers are down."""
    found = [reach_at(m, bar.barres, instrument, hand) for m in moments(bar)]
    return max((r for r in found if r), key=lambda r: r.apart / r.comfort, default=None)
