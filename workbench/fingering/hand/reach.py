"""How far two left-hand fingers reach, and how far they can.

Fingers spread along the neck and bend across it. Bending is easy: a string's distance counts
``ACROSS`` of what the same way along the neck counts, so that the chords of a first year
(C, G7, G, F and their like) lie within the comfort of a medium hand on the guitar (common
practice, no source).

A hand is measured by three spans (1-2, 1-4 and 2-4); the other three follow
from them: 1-3 midway between 1-2 and 1-4, 2-3 two thirds of 2-4, and 3-4 three
quarters of 2-4, as the little finger opens more freely than the ring finger
(common practice, no source). At their most the inner pairs open further, as far as a guitar chart
asks of every hand (chords-db 0.5.1, the keys that weights are fitted to): 1-3 over four frets
(98 mm), 2-3 over two frets at the nut (69 mm), and 3-4 a little more. Measured is from fret to
fret; a finger that stands back in a wide fret reaches less far. Guidance, not medical advice.
"""

from __future__ import annotations

from functools import lru_cache
from math import hypot

from workbench.instrument.model import Hand, Instrument

Place = tuple[int, int]  # string (1 nearest the floor), fret
Limits = dict[tuple[int, int], tuple[float, float]]

TIP_BEHIND_MM = 6.0  # half the width of a finger tip: it stands against the fret
ACROSS = 0.5
FINGERS = (1, 2, 3, 4)


@lru_cache(maxsize=64)
def pair_limits(hand: Hand) -> Limits:
    """(comfortable, greatest) reach between two finger tips in millimetres, for
    every pair of fingers (f, g) with f < g."""
    return {
        (1, 2): (hand.comfort_12, hand.max_12),
        (1, 3): ((hand.comfort_12 + hand.comfort_14) / 2, (hand.max_12 + 2 * hand.max_14) / 3),
        (1, 4): (hand.comfort_14, hand.max_14),
        (2, 3): (hand.comfort_24 * 2 / 3, hand.max_24 * 0.787),
        (2, 4): (hand.comfort_24, hand.max_24),
        (3, 4): (hand.comfort_24 * 3 / 4, hand.max_24 * 0.79),
    }


@lru_cache(maxsize=4096)
def tip_mm(instrument: Instrument, fret: int) -> float:
    """Where a finger tip presses to stop ``fret``, in millimetres from the nut or capo.

    Just behind the fret by half a finger's width, or midway between the frets
    where they are too narrow for that. The open string (fret 0) is at the nut: 0.
    """
    if fret <= 0:
        return 0.0
    here, before = instrument.fret_mm(fret), instrument.fret_mm(fret - 1)
    return here - min(TIP_BEHIND_MM, (here - before) / 2)


def across_mm(instrument: Instrument, string_a: int, string_b: int) -> float:
    """What the way between two strings counts in a reach, in millimetres (as at the nut)."""
    return abs(string_a - string_b) * instrument.spacing_mm * ACROSS


def span_mm(instrument: Instrument, place_a: Place, place_b: Place) -> float:
    """Reach in millimetres between finger tips on two (string, fret) places: along the neck,
    and across it as ``ACROSS`` counts it."""
    along = tip_mm(instrument, place_a[1]) - tip_mm(instrument, place_b[1])
    return hypot(along, across_mm(instrument, place_a[0], place_b[0]))
