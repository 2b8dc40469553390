"""What it is to hold fingers there: the cost of a grip, the same for shapes and for pieces.

A grip costs what its fingers cost one by one and what its pairs of fingers cost; nothing
here looks at more than two fingers at once. So a chord taken at once and the same chord
built up note by note cost the same in all: every finger counts when it is put down, every
pair when its second finger joins. A term is one function over arrays, and its weight and
its sentence for a teacher stand in resources/weights.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from functools import cached_property
from typing import Any

import numpy as np
import numpy.typing as npt

IntArray = npt.NDArray[Any]
PAIRS = ((0, 1), (0, 2), (0, 3), (1, 2), (1, 3), (2, 3))
TREBLE = 2  # strings nearest the floor that a slanted hand gives to finger 4
UP_THE_NECK = 4  # frets that first position reaches
BASS = 3  # strings beyond which the little finger has to reach
BESIDE = tuple(p for p in PAIRS if p[1] == p[0] + 1)


@dataclass(frozen=True)
class Press:
    """Presses of one finger (0 to 3) as arrays: fret, lower and higher string number."""

    finger: int
    fret: IntArray
    lo: IntArray
    hi: IntArray

    @property
    def middle(self) -> IntArray:
        """Across the neck in half strings."""
        return self.lo + self.hi

    @property
    def laid(self) -> IntArray:
        return self.hi > self.lo


# -- one finger ------------------------------------------------------------------


def third(p: Press) -> IntArray:
    """1 for finger 3."""
    return np.full(p.fret.shape, int(p.finger == 2))


def fourth(p: Press) -> IntArray:
    """1 for finger 4."""
    return np.full(p.fret.shape, int(p.finger == 3))


def third_treble(p: Press) -> IntArray:
    """1 for finger 3 on strings 1 and 2 from fret 3 on, where the hand's slant favours 4."""
    return ((p.lo <= TREBLE) & (p.finger == 2) & (p.fret > 2)).astype(int)


def fourth_bass(p: Press) -> IntArray:
    """1 for finger 4 beyond the three strings nearest the floor."""
    return ((p.lo > BASS) & (p.finger == 3)).astype(int)


def second_treble(p: Press) -> IntArray:
    """Finger 2 near the floor: 1 on string 2, 2 on string 1, where a slanted hand has 1 and 4."""
    out: IntArray = np.maximum(0, TREBLE + 1 - p.lo) * int(p.finger == 1)
    return out


def third_first(p: Press) -> IntArray:
    """1 for finger 3 on string 1."""
    return np.asarray((p.lo == 1) & (p.finger == 2), int)


def fourth_inner(p: Press) -> IntArray:
    """1 for finger 4 on string 3 or 4."""
    return ((p.lo > TREBLE) & (p.lo <= BASS + 1) & (p.finger == 3)).astype(int)


def fourth_up(p: Press) -> IntArray:
    """1 for finger 4 from fret 5 on, where the next position has a stronger finger for it."""
    return np.asarray((p.fret > UP_THE_NECK) & (p.finger == 3), int)


def first_bass(p: Press) -> IntArray:
    """1 for the tip of finger 1 beyond the three strings nearest the floor."""
    return np.asarray((p.lo > BASS) & (p.lo == p.hi) & (p.finger == 0), int)


def second_on_3(p: Press) -> IntArray:
    """1 for finger 2 on fret 3, which is finger 3's in first position."""
    return np.asarray((p.fret == 3) & (p.finger == 1), int)


def _drawn(p: Press) -> IntArray:
    back = np.maximum(0, p.finger + 1 - p.fret)
    much: IntArray = 12 * back // np.maximum(1, p.fret * p.fret)
    return much


def cramped(p: Press) -> IntArray:
    """Finger 2 or 3 drawn back below its own number, the more the nearer the nut.

    12 b / r^2 for a finger b frets back on fret r: 3 on fret 2 counts 3, 2 on fret 1 counts 12.
    """
    return _drawn(p) * int(p.finger < 3)


def cramped_4(p: Press) -> IntArray:
    """The same for finger 4: on fret 3 it counts 1, on fret 2 it counts 6."""
    return _drawn(p) * int(p.finger == 3)


def far(p: Press) -> IntArray:
    """Strings from the first that fingers 3 (once) and 4 (twice) reach across."""
    return (0, 0, 1, 2)[p.finger] * (p.lo - 1)


def barre(p: Press) -> IntArray:
    """1 for finger 1 laid over strings."""
    return (p.laid & (p.finger == 0)).astype(int)


def barre_width(p: Press) -> IntArray:
    """Strings that a laid finger covers beyond the second one."""
    return np.asarray(np.maximum(0, p.hi - p.lo - 1))


def barre_2(p: Press) -> IntArray:
    """1 for finger 2 laid over strings."""
    return (p.laid & (p.finger == 1)).astype(int)


def barre_3(p: Press) -> IntArray:
    """1 for finger 3 laid over strings."""
    return (p.laid & (p.finger == 2)).astype(int)


def barre_4(p: Press) -> IntArray:
    """1 for finger 4 laid over strings."""
    return (p.laid & (p.finger == 3)).astype(int)


def barre_wide(p: Press) -> IntArray:
    """1 for a finger other than the first laid over three strings or more."""
    return np.asarray((p.hi - p.lo > 1) & (p.finger > 0), int)


def wide_4(p: Press) -> IntArray:
    """1 for finger 4 laid over three strings or more."""
    return np.asarray((p.hi - p.lo > 1) & (p.finger == 3), int)


# -- two fingers -----------------------------------------------------------------


def crossed(a: Press, b: Press) -> IntArray:
    """1 where two fingers share a fret and the higher one is on the bass side."""
    return np.asarray((a.fret == b.fret) & (b.middle > a.middle), int)


def against_slant(a: Press, b: Press) -> IntArray:
    """Half strings by which a higher finger on a higher fret stands nearer the bass side."""
    return np.where(a.fret < b.fret, np.maximum(0, b.middle - a.middle), 0)


def twisted(a: Press, b: Press) -> IntArray:
    """1 where neighbouring fingers stand so."""
    beside = b.finger == a.finger + 1
    return ((a.fret < b.fret) & (b.middle > a.middle) & beside).astype(int)


def level(a: Press, b: Press) -> IntArray:
    """1 where finger 1 and finger 2 or 3 stand on one fret."""
    here = (a.fret == b.fret) & (a.finger == 0) & (b.finger < 3)
    return np.asarray(here, int)


def apart_24(a: Press, b: Press) -> IntArray:
    """1 where fingers 2 and 4 stand on one fret by their tips."""
    here = (a.finger, b.finger) == (1, 3)
    return np.asarray((a.fret == b.fret) & ~a.laid & ~b.laid & here, int)


def weak_pair(a: Press, b: Press) -> IntArray:
    """1 where the tips of fingers 3 and 4 work together and 4 bends in to string 1."""
    here = (a.finger, b.finger) == (2, 3)
    return np.asarray((b.lo == 1) & ~a.laid & ~b.laid & here, int)


def third_by_barre(a: Press, b: Press) -> IntArray:
    """1 for finger 3 on string 1 over a barre, where finger 4 comes easier."""
    return np.asarray(a.laid & ~b.laid & (b.lo == 1) & ((a.finger, b.finger) == (0, 2)), int)


def fourth_by_barre(a: Press, b: Press) -> IntArray:
    """1 for finger 4 drawn back to the fret next to a barre."""
    return np.asarray(a.laid & (b.fret == a.fret + 1) & ((a.finger, b.finger) == (0, 3)), int)


# -- two fingers with none between them in use --------------------------------------


def shared_far(a: Press, b: Press) -> IntArray:
    """Half strings beyond one string between two fingers of one fret."""
    return np.where(a.fret == b.fret, np.maximum(0, np.abs(a.middle - b.middle) - 2), 0)


def skipped(a: Press, b: Press) -> IntArray:
    """Fingers left out between two that stand as close as neighbours could."""
    return np.where(a.laid, 0, _between(a, b))


def skipped_by_barre(a: Press, b: Press) -> IntArray:
    """The same where the lower of the two is laid over strings and the hand turned with it."""
    return np.where(a.laid, _between(a, b), 0)


def _between(a: Press, b: Press) -> IntArray:
    return np.asarray(np.maximum(0, b.finger - a.finger - np.maximum(1, b.fret - a.fret)))


def _spread(a: Press, b: Press, which: tuple[tuple[int, int], ...]) -> IntArray:
    wide: IntArray = np.maximum(0, (b.fret - a.fret) - (b.finger - a.finger))
    return wide if (a.finger, b.finger) in which else wide * 0


def spread_12(a: Press, b: Press) -> IntArray:
    """Frets between fingers 1 and 2 beyond one finger a fret."""
    return _spread(a, b, ((0, 1),))


def spread_23(a: Press, b: Press) -> IntArray:
    """Frets between fingers 2 and 3 beyond one finger a fret."""
    return _spread(a, b, ((1, 2),))


def spread_34(a: Press, b: Press) -> IntArray:
    """Frets between fingers 3 and 4 beyond one finger a fret."""
    return _spread(a, b, ((2, 3),))


def spread_outer(a: Press, b: Press) -> IntArray:
    """The same where a finger between the two is left out (1-3, 2-4, 1-4)."""
    return _spread(a, b, ((0, 2), (1, 3), (0, 3)))


def spread_to_barre(a: Press, b: Press) -> IntArray:
    """1 where a finger is spread from its neighbour and lies flat as well."""
    return (b.laid & (b.fret - a.fret > b.finger - a.finger)).astype(int)


FINGER_TERMS: tuple[Callable[[Press], IntArray], ...] = (
    third, fourth, third_treble, fourth_bass, second_treble, third_first, fourth_inner,
    fourth_up, first_bass, second_on_3, cramped, cramped_4, far, barre, barre_width,
    barre_2, barre_3, barre_4, barre_wide, wide_4,
)  # fmt: skip
PAIR_TERMS: tuple[Callable[[Press, Press], IntArray], ...] = (
    crossed, against_slant, twisted, level, apart_24, weak_pair, third_by_barre, fourth_by_barre,
)  # fmt: skip
NEIGHBOUR_TERMS: tuple[Callable[[Press, Press], IntArray], ...] = (
    shared_far, skipped, skipped_by_barre, spread_12, spread_23, spread_34, spread_outer,
    spread_to_barre,
)  # fmt: skip
REACH_TERMS = ("stretch", "beyond")  # by the millimetres of instrument and hand
HOLDING = (
    *(t.__name__ for t in FINGER_TERMS),
    *(t.__name__ for t in PAIR_TERMS),
    *REACH_TERMS,
    *(t.__name__ for t in NEIGHBOUR_TERMS),
)


@dataclass(frozen=True, eq=False)
class Holding:
    """The terms of holding, looked up by finger places.

    ``span[r, q, d]`` (mm between tips on frets r and q, d strings apart) and ``comfort``
    (mm by pair, in the order of PAIRS) are those of the neck and the hand.
    """

    strings: int
    frets: int
    span: IntArray
    comfort: tuple[int, ...]
    far_apart: int  # most frets between two fingers
    _priced: dict[tuple[int, ...], tuple[IntArray, IntArray, IntArray]] = field(
        default_factory=dict
    )

    @cached_property
    def laid(self) -> list[tuple[int, int]]:
        """Every (lower, higher string) a finger can cover."""
        n = self.strings
        return [(lo, hi) for lo in range(1, n + 1) for hi in range(lo, n + 1)]

    @cached_property
    def across(self) -> IntArray:
        """Place in ``laid`` by lo << 4 | hi."""
        out = np.zeros(256, np.int32)
        for i, (lo, hi) in enumerate(self.laid):
            out[lo << 4 | hi] = i
        return out

    @cached_property
    def single(self) -> dict[str, IntArray]:
        """(4, frets + 1, ways across) for every finger term; fret 0 counts nothing."""
        lo = np.array([x for x, _ in self.laid])[None, :]
        hi = np.array([x for _, x in self.laid])[None, :]
        fret = np.arange(self.frets + 1)[:, None]
        grids = np.broadcast_arrays(fret, lo, hi)
        out = {}
        for term in FINGER_TERMS:
            rows = np.stack([term(Press(f, *grids)) for f in range(4)])
            rows[:, 0] = 0
            out[term.__name__] = rows.astype(np.int32)
        return out

    @cached_property
    def double(self) -> dict[str, IntArray]:
        """(pairs, frets + 1, frets apart, ways across, ways across) for every pair term."""
        lo = np.array([x for x, _ in self.laid])
        hi = np.array([x for _, x in self.laid])
        fret = np.arange(self.frets + 1)[:, None, None, None]
        more = np.arange(self.far_apart + 1)[None, :, None, None]
        low, lo_a, hi_a, lo_b, hi_b = np.broadcast_arrays(
            fret, lo[:, None], hi[:, None], lo[None, :], hi[None, :]
        )
        shape = np.broadcast_shapes(low.shape, more.shape)
        low, lo_a, hi_a, lo_b, hi_b, up = (
            np.broadcast_to(x, shape) for x in (low, lo_a, hi_a, lo_b, hi_b, more)
        )
        high = np.minimum(low + up, self.frets)
        out: dict[str, list[IntArray]] = {}
        gap = np.maximum(0, np.maximum(lo_b - hi_a, lo_a - hi_b))
        for i, (f, g) in enumerate(PAIRS):
            a, b = Press(f, low, lo_a, hi_a), Press(g, high, lo_b, hi_b)
            for term in (*PAIR_TERMS, *NEIGHBOUR_TERMS):
                out.setdefault(term.__name__, []).append(term(a, b).astype(np.int16))
            over = np.maximum(0, self.span[low, high, gap] - self.comfort[i])
            out.setdefault("stretch", []).append(over.astype(np.int16))
            out.setdefault("beyond", []).append((over > 0).astype(np.int16))
        return {name: np.stack(rows) for name, rows in out.items()}

    def place(self, code: IntArray) -> IntArray:
        """One number below ``places`` for every finger place; 0 where the finger is up."""
        out: IntArray = (code >> 8).astype(np.int32) * len(self.laid) + self.across.take(code & 255)
        return np.where(code > 0, out, 0)

    def _place(self, code: IntArray) -> tuple[IntArray, IntArray]:
        return (code >> 8).astype(np.int32), self.across.take(code & 255)

    def _pair_index(self, code: IntArray, f: int, g: int) -> IntArray:
        """Flat place in a pair table; anything where a finger is up."""
        n = len(self.laid)
        (fa, xa), (fb, xb) = self._place(code[:, f]), self._place(code[:, g])
        apart = np.clip(fb - fa, 0, self.far_apart)
        out: IntArray = ((fa * (self.far_apart + 1) + apart) * n + xa) * n + xb
        return out

    def cost(self, code: IntArray, new: IntArray, weights: Mapping[str, int]) -> IntArray:
        """Cost in thousandths of hands (``code``: (E, 4), fret << 8 | lo << 4 | hi, 0 = not
        counted) of which the fingers ``new`` (E, 4) have just come."""
        one, two, beside = self._tables(weights)
        out = np.zeros(len(code), np.int32)
        for f in range(4):
            r, x = self._place(code[:, f])
            out += np.where(new[:, f], one[f].ravel().take(r * len(self.laid) + x), 0)
        for i, (f, g) in enumerate(PAIRS):
            on = (code[:, f] > 0) & (code[:, g] > 0) & (new[:, f] | new[:, g])
            if not on.any():
                continue
            rows = np.flatnonzero(on)
            at = self._pair_index(code[rows], f, g)
            worth = two[i].ravel().take(at)
            near = (code[rows, f + 1 : g] == 0).all(axis=1)
            worth = worth + np.where(near, beside[i].ravel().take(at), 0)
            out[rows] += worth
        return out

    def _tables(self, weights: Mapping[str, int]) -> tuple[IntArray, IntArray, IntArray]:
        key = tuple(int(weights[t]) for t in HOLDING)
        if key not in self._priced:
            w = dict(zip(HOLDING, key, strict=True))
            one = sum(self.single[t.__name__] * w[t.__name__] for t in FINGER_TERMS)
            names = (*(t.__name__ for t in PAIR_TERMS), *REACH_TERMS)
            two = sum(self.double[t].astype(np.int32) * w[t] for t in names)
            beside = sum(
                self.double[t.__name__].astype(np.int32) * w[t.__name__] for t in NEIGHBOUR_TERMS
            )
            if len(self._priced) > 8:
                self._priced.clear()
            self._priced[key] = (one, two, beside)  # type: ignore[assignment]
        return self._priced[key]

    def terms(self, code: IntArray, new: IntArray) -> dict[str, IntArray]:
        """Every term of holding by name, in its unit; arguments as in ``cost``."""
        n = len(self.laid)
        out: dict[str, IntArray] = {t: np.zeros(len(code), np.int32) for t in HOLDING}
        for f in range(4):
            r, x = self._place(code[:, f])
            for t in FINGER_TERMS:
                row = self.single[t.__name__][f].ravel().take(r * n + x)
                out[t.__name__] += np.where(new[:, f], row, 0)
        names = (*(t.__name__ for t in PAIR_TERMS), *REACH_TERMS)
        for i, (f, g) in enumerate(PAIRS):
            on = (code[:, f] > 0) & (code[:, g] > 0) & (new[:, f] | new[:, g])
            rows = np.flatnonzero(on)
            if not len(rows):
                continue
            at = self._pair_index(code[rows], f, g)
            near = (code[rows, f + 1 : g] == 0).all(axis=1)
            for name in names:
                out[name][rows] += self.double[name][i].ravel().take(at)
            for term in NEIGHBOUR_TERMS:
                row = self.double[term.__name__][i].ravel().take(at)
                out[term.__name__][rows] += np.where(near, row, 0)
        return out
