"""The declared cost of the left hand, term by term.

Each term is one function over a batch of steps (a step is one hand state, the
next grip and what stays down) and gives a whole number of its unit for every
step. Units, weights and the sentence a teacher would say: resources/weights.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, fields

import numpy as np

from workbench.fingering.grips import PAIRS, IntArray, Neck
from workbench.fingering.states import BoolArray


@dataclass(frozen=True)
class Steps:
    """E steps. ``old_*``: the hand before, ``fret``/``lo``/``hi``: after, all (E, 4).

    ``need``: the finger stops a note that begins; ``same``: it was there
    already; ``guided``: on the same string at another fret; ``upto``: its old
    note sounds right up to now; ``held``: it holds a note that goes on;
    ``hinged``: finger 1 rolls down to a barre while it sounds; ``grown``: (E, 4) the
    finger stays but covers more strings; ``busy``: some finger is at
    work up to now; ``lost``: sixteenths of written length cut off;
    ``old_pos``/``pos``: hand positions; ``unsteady``: fretted though open
    would do; ``lowest_new``: lowest fret stopped anew on another string (99: none);
    ``old_tune``/``tune``: strings of the melody note before and now, 0 = none.
    """

    old_fret: IntArray
    fret: IntArray
    lo: IntArray
    hi: IntArray
    need: BoolArray
    same: BoolArray
    guided: BoolArray
    upto: BoolArray
    held: BoolArray
    hinged: BoolArray
    grown: BoolArray
    busy: BoolArray
    lost: IntArray
    old_pos: IntArray
    pos: IntArray
    unsteady: IntArray
    lowest_new: IntArray
    old_tune: IntArray
    tune: IntArray

    def take(self, chosen: BoolArray) -> Steps:
        """The chosen steps alone."""
        return Steps(*(getattr(self, f.name)[chosen] for f in fields(self)))

    @property
    def placed(self) -> BoolArray:
        """The finger is put down anew (not planted, not guided)."""
        return self.need & ~self.same & ~self.guided


def join_steps(parts: Sequence[Steps]) -> Steps:
    """Several batches of steps as one."""
    return Steps(*(np.concatenate([getattr(p, f.name) for p in parts]) for f in fields(Steps)))


FINGER_WEAKNESS = np.array([0, 0, 1, 2], np.int16)
FINGER_INDEX = np.arange(4, dtype=np.int16)


def total(x: IntArray | BoolArray) -> IntArray:
    out: IntArray = x.sum(axis=1, dtype=np.int32)
    return out


def place(s: Steps, neck: Neck) -> IntArray:
    """Fingers put down."""
    return total(s.placed)


def weak(s: Steps, neck: Neck) -> IntArray:
    """Load on fingers 3 and 4: 1 and 2 for each time they stop a note anew."""
    return total((s.need & ~s.same) * FINGER_WEAKNESS)


def stretch(s: Steps, neck: Neck) -> IntArray:
    """Millimetres by which pairs of fingers exceed their comfortable span."""
    out = np.zeros(len(s.pos), np.int32)
    for i, (f, g) in enumerate(PAIRS):
        both = (s.fret[:, f] > 0) & (s.fret[:, g] > 0)
        if not both.any():
            continue
        d = np.maximum(0, np.maximum(s.lo[:, g] - s.hi[:, f], s.lo[:, f] - s.hi[:, g]))
        over = neck.span[s.fret[:, f], s.fret[:, g], d] - neck.comfort[i]
        out += np.where(both, np.maximum(over, 0), 0)
    return out


def square(s: Steps, neck: Neck) -> IntArray:
    """Frets by which new fingers miss one finger a fret, seen from the hand's position."""
    ought = s.pos[:, None] + FINGER_INDEX
    return total(np.where(s.need & ~s.same, np.abs(s.fret - ought), 0))


def cramped(s: Steps, neck: Neck) -> IntArray:
    """New fingers drawn back below their own number, the more the nearer the nut.

    12 b / r^2 for a finger b frets back on fret r: finger 4 on fret 3 counts 1,
    3 on fret 2 counts 3, 2 on fret 1 counts 12.
    """
    back = np.maximum(0, FINGER_INDEX + 1 - s.fret)
    much = 12 * back // np.maximum(1, s.fret * s.fret)
    return total(np.where(s.need & ~s.same, much, 0))


def crossed(s: Steps, neck: Neck) -> IntArray:
    """Pairs on one fret with the lower finger nearer the floor."""
    out = np.zeros(len(s.pos), np.int32)
    for f, g in PAIRS:
        out += (s.fret[:, f] > 0) & (s.fret[:, f] == s.fret[:, g]) & (s.hi[:, f] < s.lo[:, g])
    return out


def barre(s: Steps, neck: Neck) -> IntArray:
    """Strings under a barre laid anew (0 for a finger on one string)."""
    wide = (s.fret > 0) & (s.hi > s.lo) & s.need & (~s.same | s.grown)
    return total(np.where(wide, s.hi - s.lo + 1, 0))


def hinge(s: Steps, neck: Neck) -> IntArray:
    """1 where finger 1 rolls down to a barre while it holds a note."""
    return np.asarray(s.hinged, np.int32)


def high(s: Steps, neck: Neck) -> IntArray:
    """Frets above the fourth of every note stopped anew."""
    return total(np.where(s.need & ~s.same, np.maximum(0, s.fret - 4), 0))


def hop(s: Steps, neck: Neck) -> IntArray:
    """Fingers that leave a sounding note for another string at once."""
    return total(s.placed & s.upto)


def guide(s: Steps, neck: Neck) -> IntArray:
    """Millimetres slid by guide fingers."""
    way = np.abs(neck.at[s.fret] - neck.at[s.old_fret])
    return total(np.where(s.guided & s.need, way, 0))


def _way(s: Steps, neck: Neck) -> IntArray:
    known = (s.old_pos > 0) & (s.pos > 0)
    return np.where(known, neck.shift[s.old_pos, s.pos], 0).astype(np.int32)


def shift(s: Steps, neck: Neck) -> IntArray:
    """Millimetres the hand moves along the neck while a finger is still at work."""
    return np.where(s.busy, _way(s, neck), 0)


def free_shift(s: Steps, neck: Neck) -> IntArray:
    """Millimetres the hand moves while an open string or a rest gives it time."""
    return np.where(s.busy, 0, _way(s, neck))


def cut(s: Steps, neck: Neck) -> IntArray:
    """Sixteenths of written length that held notes lose."""
    return np.asarray(s.lost, np.int32)


def blocked(s: Steps, neck: Neck) -> IntArray:
    """Fingers above a held one that cannot reach the lower frets stopped beneath it."""
    stuck = s.held & (s.fret > s.lowest_new[:, None])
    return total(np.where(stuck, 3 - FINGER_INDEX, 0))


def relaxed(s: Steps, neck: Neck) -> IntArray:
    """1 where 1 and 2 stand on neighbouring frets and finger 3 is free to be used instead."""
    one_two = (s.fret[:, 0] > 0) & (s.fret[:, 1] == s.fret[:, 0] + 1) & (s.fret[:, 2] == 0)
    return np.asarray(one_two & (s.need[:, 0] | s.need[:, 1]), np.int32)


def unsteady(s: Steps, neck: Neck) -> IntArray:
    """Notes fretted where an open string would sound them."""
    return np.asarray(s.unsteady, np.int32)


def far(s: Steps, neck: Neck) -> IntArray:
    """Strings from the first that fingers 3 and 4 reach across, times their weakness."""
    return total(np.where(s.need & ~s.same, FINGER_WEAKNESS * (s.lo - 1), 0))


def leap(s: Steps, neck: Neck) -> IntArray:
    """Strings that a melody skips though it moves by step or by a small leap in pitch."""
    both = (s.old_tune > 0) & (s.tune > 0)
    return np.where(both, np.maximum(0, np.abs(s.tune - s.old_tune) - 1), 0).astype(np.int32)


def position(s: Steps, neck: Neck) -> IntArray:
    """Notes stopped anew while the hand stands above first position."""
    return total((s.need & ~s.same) & (s.pos > 1)[:, None])


TERMS = (
    place,
    weak,
    stretch,
    square,
    cramped,
    crossed,
    barre,
    hinge,
    high,
    hop,
    guide,
    shift,
    free_shift,
    cut,
    blocked,
    relaxed,
    unsteady,
    far,
    leap,
    position,
)


def features(s: Steps, neck: Neck) -> dict[str, IntArray]:
    """Every term by name, in its unit."""
    return {t.__name__: t(s, neck) for t in TERMS}


def cost(s: Steps, neck: Neck, weights: dict[str, int]) -> IntArray:
    """Declared cost of every step in thousandths."""
    out = np.zeros(len(s.pos), np.int32)
    for t in TERMS:
        w = weights[t.__name__]
        if w:
            out += t(s, neck).astype(np.int32) * np.int32(w)
    return out
