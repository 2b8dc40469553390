"""Every way the left hand can stop the notes that begin together."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from workbench.fingering.hand.holding import PAIRS, Holding, IntArray
from workbench.fingering.hand.reach import across_mm, pair_limits, tip_mm
from workbench.fingering.types import Pin
from workbench.instrument.model import Hand, Instrument
from workbench.language.fact import Fact, fact
from workbench.music.model import Note


@dataclass(frozen=True)
class Grip:
    """``places`` gives (string, fret, finger) for each beginning note, in their
    order; ``fingers`` gives (fret, first string, last string) for fingers 1-4,
    fret 0 where the finger is free."""

    places: tuple[tuple[int, int, int], ...]
    fingers: tuple[tuple[int, int, int], ...]


@dataclass(frozen=True)
class Neck:
    """Whole-millimetre tables of one instrument and hand.

    ``span[r, q, d]``: reach between two finger tips on frets r and q, d strings
    apart. ``comfort`` and ``greatest``: by pair in the order of PAIRS.
    ``at[r]``: where fret r is stopped, from the nut. ``shift[p, q]``: way of
    the hand between positions p and q in half frets. ``holding``: what grips cost.
    ``verdicts[i, a, b]``: whether pair i can stand on the finger places a and b (numbered by
    ``holding.place``): 0 in comfort, 1 beyond it, 2 impossible.
    """

    span: IntArray
    comfort: tuple[int, ...]
    greatest: tuple[int, ...]
    at: IntArray
    shift: IntArray
    holding: Holding
    verdicts: IntArray


@lru_cache(maxsize=32)
def neck(instrument: Instrument, hand: Hand) -> Neck:
    """Tables for an instrument and a hand."""
    n, s = instrument.playable_frets + 1, instrument.strings
    at = np.array([tip_mm(instrument, r) for r in range(n)])
    along = np.abs(at[:, None] - at[None, :])
    across = np.arange(s + 1) * across_mm(instrument, 1, 2)  # one to spare for fingers in the air
    span = np.rint(np.hypot(along[:, :, None], across)).astype(np.int16)
    limits = pair_limits(hand)
    comfort = tuple(round(limits[f + 1, g + 1][0]) for f, g in PAIRS)
    greatest = tuple(round(limits[f + 1, g + 1][1]) for f, g in PAIRS)
    fret = np.array([instrument.fret_mm(r / 2) for r in range(2 * n + 2)])
    shift = np.rint(np.abs(fret[:, None] - fret[None, :])).astype(np.int16)
    apart = max(q - r for r in range(1, n) for q in range(r, n) if along[q, r] <= max(greatest))
    holding = Holding(s, n - 1, span, comfort, apart)
    tips = np.rint(at).astype(np.int16)
    verdicts = _verdicts(span, comfort, greatest, holding)
    return Neck(span, comfort, greatest, tips, shift, holding, verdicts)


def _verdicts(
    span: IntArray, comfort: tuple[int, ...], greatest: tuple[int, ...], holding: Holding
) -> IntArray:
    fret = np.repeat(np.arange(holding.frets + 1), len(holding.laid))
    lo, hi = (np.tile([x[i] for x in holding.laid], holding.frets + 1) for i in (0, 1))
    a, b = fret[:, None], fret[None, :]
    gap = np.maximum(lo[None, :] - hi[:, None], lo[:, None] - hi[None, :])
    reach = span[a, b, np.maximum(gap, 0)]
    crossed = (a > b) | ((a == b) & (gap <= 0))
    out = np.zeros((len(PAIRS), len(fret), len(fret)), np.uint8)
    for i in range(len(PAIRS)):
        bad = crossed | (reach > greatest[i])
        out[i] = np.where(bad, 2, reach > comfort[i])
        out[i, fret == 0] = 0  # a finger that is up is in nobody's way
        out[i, :, fret == 0] = 0
    return out


def apart(a: tuple[int, int, int], b: tuple[int, int, int]) -> int:
    """Strings between two fingers laid at (fret, first string, last string)."""
    return max(0, b[1] - a[2], a[1] - b[2])


def possible(fingers: Sequence[tuple[int, int, int]], table: Neck) -> bool:
    """Whether fingers can stand like this: in order along the neck, no two in
    one place, no pair beyond its greatest reach. The same as ``table.verdicts`` below 2, which
    is for many hands at once; for one hand this is four times as quick."""
    for i, (f, g) in enumerate(PAIRS):
        a, b = fingers[f], fingers[g]
        if not a[0] or not b[0]:
            continue
        if a[0] > b[0]:
            return False
        if a[0] == b[0] and a[1] <= b[2] and b[1] <= a[2]:
            return False
        if table.span[a[0], b[0], apart(a, b)] > table.greatest[i]:
            return False
    return True


def _finger_ways(
    places: list[tuple[int, int]], wanted: list[int | None], table: Neck
) -> list[tuple[tuple[int, ...], tuple[tuple[int, int, int], ...]]]:
    """All fingers for given (string, fret) places, as (finger per note, hand)."""
    out: list[tuple[tuple[int, ...], tuple[tuple[int, int, int], ...]]] = []
    by_string = dict(places)

    def go(i: int, chosen: list[int], hand: list[tuple[int, int, int]]) -> None:
        if i == len(places):
            if all(_barre_free(f, h, by_string) for f, h in enumerate(hand)) and possible(
                hand, table
            ):
                out.append((tuple(chosen), tuple(hand)))
            return
        string, fret = places[i]
        if fret == 0:
            if wanted[i] in (None, 0):
                go(i + 1, [*chosen, 0], hand)
            return
        for f in range(4):
            if wanted[i] not in (None, f + 1):
                continue
            old = hand[f]
            if old[0] == 0:
                new = (fret, string, string)
            elif old[0] == fret:  # a barre
                new = (fret, min(old[1], string), max(old[2], string))
            else:
                continue
            hand[f] = new
            go(i + 1, [*chosen, f + 1], hand)
            hand[f] = old

    go(0, [], [(0, 0, 0)] * 4)
    return out


def _barre_free(number: int, finger: tuple[int, int, int], by_string: dict[int, int]) -> bool:
    """No string under the finger sounds lower; only finger 1 may lie over silent strings."""
    fret, lo, hi = finger
    silent = fret if number == 0 else -1
    return all(by_string.get(s, silent) >= fret for s in range(lo, hi + 1)) if fret else True


def grips(
    notes: Sequence[Note], instrument: Instrument, table: Neck, pins: dict[str, Pin]
) -> list[Grip]:
    """All grips that sound ``notes`` together under the teacher's pins, in a fixed order."""
    options: list[list[tuple[int, int]]] = []
    for n in notes:
        pin = pins.get(n.id)
        options.append(
            [
                (s, r)
                for s, r in instrument.places(n.midi)
                if pin is None or (pin.string in (None, s) and pin.fret in (None, r))
            ]
        )
    wanted = [pins[n.id].left if n.id in pins else None for n in notes]
    out: list[Grip] = []

    def go(i: int, places: list[tuple[int, int]]) -> None:
        if i == len(notes):
            for fingers, hand in _finger_ways(places, wanted, table):
                rows = tuple((s, r, f) for (s, r), f in zip(places, fingers, strict=True))
                out.append(Grip(rows, hand))
            return
        for s, r in options[i]:
            if any(s == t for t, _ in places):
                continue
            if r and any(
                q and abs(int(table.at[q]) - int(table.at[r])) > max(table.greatest)
                for _, q in places
            ):
                continue
            go(i + 1, [*places, (s, r)])

    go(0, [])
    return out


def why_impossible(notes: Sequence[Note], instrument: Instrument, table: Neck) -> Fact:
    """Why no grip sounds these notes together."""
    for n in notes:
        if not instrument.places(n.midi):
            where = "outside"
            if n.midi < instrument.lowest:
                where = "below"
            elif n.midi > instrument.highest:
                where = "above"
            return fact("out of range", note=n.pitch.name, where=where, instrument=instrument.id)
    if len(notes) > instrument.strings:
        return fact("too many notes", notes=len(notes), strings=instrument.strings)
    lone = [n for n in notes if len(instrument.places(n.midi)) == 1]
    for a in lone:
        for b in lone:
            if a is not b and instrument.places(a.midi)[0][0] == instrument.places(b.midi)[0][0]:
                return fact("same string", note=a.pitch.name, other=b.pitch.name)
    return fact("out of reach", notes=tuple(n.pitch.name for n in notes))
