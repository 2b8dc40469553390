"""Beams: notes shorter than a quarter are joined within the beat."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from workbench.engraving.mei.voices import Event
from workbench.music.beats import beat_length
from workbench.music.notation.values import PLAIN

Group = list[Event]


def _window(meter: tuple[int, int], eighths_only: bool) -> Fraction:
    """Length within which beams run: half a bar of eighths in 4/4, else the beat."""
    count, unit = meter
    if unit >= 8:
        return Fraction(12, unit) if count % 3 == 0 else Fraction(4, unit) * 2
    if eighths_only and (count, unit) in ((4, 4), (2, 4), (2, 2)):
        return Fraction(2)
    return max(Fraction(1), beat_length(meter)) if unit >= 4 else Fraction(2)


def beam_groups(events: Sequence[Event], meter: tuple[int, int], length: Fraction) -> list[Group]:
    """The events in order, gathered: two or more in a list share a beam.

    A rest, a longer note, a grace note, a tuplet's edge or the end of the beat
    ends a beam.
    A short bar is counted from its end, as a pickup is.
    """
    full = Fraction(4 * meter[0], meter[1])
    shift = full - length if length < full else Fraction(0)
    wide = _window(meter, True)
    narrow = _window(meter, False)
    plain: dict[int, bool] = {}
    for event in events:
        slot = int((event.onset + shift) // wide)
        fine = event.value.flags <= 1 and event.value.ratio == PLAIN and bool(event.heads)
        plain[slot] = plain.get(slot, True) and (fine or event.value.flags == 0)
    groups: list[Group] = []
    last: tuple[int, int, bool] | None = None
    for event in events:
        at = event.onset + shift
        use_wide = plain[int(at // wide)]
        place = (event.group, int(at // (wide if use_wide else narrow)), use_wide)
        if event.value.flags and event.heads:
            if last == place and not event.graces:
                groups[-1].append(event)
            else:
                groups.append([event])
            last = place
        else:
            groups.append([event])
            last = None
    return groups
