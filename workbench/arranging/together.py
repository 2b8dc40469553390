"""Which notes can sound at once: a string for each, and a hand that reaches."""

from __future__ import annotations

from functools import lru_cache

from workbench.instrument.model import Instrument
from workbench.instrument.table import HANDS

FINGERS = 4
REACH_MM = HANDS["large"].max_14  # what no hand of the table reaches is left to no hand


@lru_cache(maxsize=50_000)
def have_strings(midis: tuple[int, ...], instrument: Instrument) -> bool:
    """True where every pitch can have a string of its own, wherever the fret."""
    return len(midis) <= instrument.strings and _assign(midis, instrument, None)


@lru_cache(maxsize=50_000)
def playable(midis: tuple[int, ...], instrument: Instrument) -> bool:
    """True where the pitches can be struck together: a string each, at most
    four fingers (a barre counts as one), within the greatest reach of a hand."""
    return len(midis) <= instrument.strings and _assign(midis, instrument, REACH_MM)


def _assign(midis: tuple[int, ...], instrument: Instrument, reach: float | None) -> bool:
    choices = sorted((instrument.places(m) for m in midis), key=len)
    taken: dict[int, int] = {}

    def fill(i: int) -> bool:
        if i == len(choices):
            return reach is None or _reached(taken, instrument, reach)
        for string, fret in choices[i]:
            if string not in taken:
                taken[string] = fret
                if fill(i + 1):
                    return True
                del taken[string]
        return False

    return fill(0)


def _reached(taken: dict[int, int], instrument: Instrument, reach: float) -> bool:
    fretted = {s: f for s, f in taken.items() if f > 0}
    if not fretted:
        return True
    low, high = min(fretted.values()), max(fretted.values())
    if instrument.fret_mm(high) - instrument.fret_mm(low) > reach:
        return False
    at_low = [s for s, f in fretted.items() if f == low]
    # a barre cannot lie over an open string that sounds
    barre = all(taken.get(s, low) >= low for s in range(min(at_low), max(at_low) + 1))
    fingers = len(fretted) - (len(at_low) - 1 if barre else 0)
    return fingers <= FINGERS
