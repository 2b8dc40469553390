"""One step of the lattice: every state before a layer with every grip that begins it.

What stays down is no free choice, so that the lattice stays small: a finger
that may stay (its note goes on, or it returns soon) does stay; it is lifted
only where staying is impossible or would stretch the hand past its comfort,
and then both ways are kept. Finger 1, where its note ends and it is needed on the
same fret at once, may roll down to a barre or hop: both ways are kept too.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from workbench.fingering.hand.grips import Neck
from workbench.fingering.hand.holding import PAIRS, IntArray
from workbench.fingering.lattice.layers import LatticeLayer
from workbench.fingering.lattice.states import (
    Before,
    BoolArray,
    Need,
    States,
    before,
    bits,
    pick,
)
from workbench.fingering.lattice.terms import Steps, cost
from workbench.instrument.model import Instrument

FOUR = np.arange(4)


@dataclass(frozen=True)
class Edges:
    """Steps between two layers, sorted by the state before. ``first[a]`` is
    where the steps of state a begin (one more entry closes the list);
    ``into`` the state after; ``cost`` in thousandths."""

    first: IntArray
    into: IntArray
    cost: IntArray

    def of(self, a: int) -> slice:
        return slice(int(self.first[a]), int(self.first[a + 1]))

    def before(self) -> IntArray:
        """The state before of every step."""
        return np.repeat(np.arange(len(self.first) - 1), np.diff(self.first))


@dataclass(frozen=True)
class Batch:
    """Chosen steps: state before ``a``, grip ``g``, fingers that stay ``keep`` (E, 4)."""

    a: IntArray
    g: IntArray
    keep: BoolArray


def _wanted(old: States, b: Before, n: Need, a: IntArray, g: IntArray) -> IntArray:
    """Fingers that may and would stay down, as bits (finger 1 is bit 0)."""
    wish = b.held | b.useful
    width = n.under.shape[1]
    under = n.under.ravel()
    row = g * width
    masks = np.zeros(len(a), np.int8)
    # finger 1 stopping anew on the fret where it sounds: it stays, as a barre if need be
    sounds = b.held[:, 0] | b.upto[:, 0]
    for f in range(4):
        fret = old.fret[:, f]
        may = wish[:, f] & (fret > 0)
        both_may = sounds & (fret > 0) if f == 0 else may
        if not (may.any() or both_may.any()):
            continue
        at, asked = fret.take(a), n.fret[:, f].take(g)
        below = under.take(row + at)
        stays = may.take(a) & ((below & b.cover[:, f].take(a)) == 0) & (asked == 0)
        if f == 0 and both_may.any():
            both = (asked > 0) & (asked == at) & sounds.take(a)
            lo = np.minimum(old.lo[:, 0].take(a), n.lo[:, 0].take(g))
            hi = np.maximum(old.hi[:, 0].take(a), n.hi[:, 0].take(g))
            stays |= both & ((below & bits(lo, hi, both)) == 0)
        masks |= stays.astype(np.int8) << np.int8(f)
    return masks


def _hand(old: States, n: Need, x: Batch) -> tuple[IntArray, IntArray, IntArray]:
    """Finger places after the steps: fret, lo, hi, each (E, 4)."""
    asked = pick(n.code, x.g)
    before = pick(old.code(), x.a)
    needed = asked > 0
    code = np.where(needed, asked, np.where(x.keep, before, 0))
    fret, lo, hi = code >> 8, code >> 4 & 15, code & 15
    wide = needed[:, 0] & x.keep[:, 0]
    if wide.any():
        old_lo, old_hi = before[:, 0] >> 4 & 15, before[:, 0] & 15
        lo[:, 0] = np.where(wide, np.minimum(lo[:, 0], old_lo), lo[:, 0])
        hi[:, 0] = np.where(wide, np.maximum(hi[:, 0], old_hi), hi[:, 0])
    return fret, lo, hi


class Judge:
    """Whether hands are possible, and within comfort, by tables over pairs of finger places."""

    def __init__(self, old: States, n: Need, neck: Neck) -> None:
        place = neck.holding.place
        self.table = neck.verdicts
        self.size = self.table.shape[1]
        self.before = place(old.code())
        self.asked = place(n.code)
        self.old, self.need, self.place = old, n, place

    def __call__(self, a: IntArray, g: IntArray, masks: IntArray) -> tuple[BoolArray, BoolArray]:
        """(possible, comfortable) of the steps from states ``a`` by grips ``g``, where the
        fingers in the bits of ``masks`` stay."""
        fingers = []
        for f in range(4):
            asked = self.asked[:, f].take(g)
            stays = (masks >> np.int8(f) & 1).astype(bool)
            kept = np.where(stays, self.before[:, f].take(a), 0)
            hand = np.where(asked > 0, asked, kept)
            if f == 0:
                wide = np.flatnonzero(stays & (asked > 0))
                if len(wide):
                    old, n, at, to = self.old, self.need, a[wide], g[wide]
                    lo = np.minimum(old.lo[at, 0], n.lo[to, 0])
                    hi = np.maximum(old.hi[at, 0], n.hi[to, 0])
                    hand[wide] = self.place(n.fret[to, 0] << 8 | lo << 4 | hi)
            fingers.append(hand)
        worst = np.zeros(len(a), np.uint8)
        for i, (f, g2) in enumerate(PAIRS):
            worst |= self.table[i].ravel().take(fingers[f] * self.size + fingers[g2])
        return worst < 2, worst == 0


def _distinct(code: IntArray, size: int) -> IntArray:
    """Distinct whole numbers below ``size``, in order; quicker than sorting."""
    flags = np.zeros(size, bool)
    flags[code] = True
    return np.flatnonzero(flags)


def choose(
    old: States,
    layer: LatticeLayer,
    n: Need,
    neck: Neck,
    instrument: Instrument,
    keep_nothing: bool = False,
) -> tuple[Batch, Before]:
    """All steps of the lattice into a layer."""
    b = before(old, layer, instrument)
    k, grips = len(old), len(n.fret)
    a = np.repeat(np.arange(k), grips)
    g = np.tile(np.arange(grips), k)
    if keep_nothing:
        return Batch(a, g, np.zeros((len(a), 4), bool)), b
    masks = _wanted(old, b, n, a, g)
    judge = Judge(old, n, neck)
    found: list[tuple[IntArray, IntArray, IntArray]] = []
    # a note that ends now may also be left by a hop instead of a roll to a barre
    roll = (masks & 1 > 0) & (n.fret[:, 0].take(g) > 0) & ~b.held[:, 0].take(a)
    if roll.any():
        masks = np.concatenate([masks, masks[roll] & ~np.int8(1)])
        a, g = np.concatenate([a, a[roll]]), np.concatenate([g, g[roll]])
    while len(a):
        good, easy = judge(a, g, masks)
        found.append((a[good], g[good], masks[good]))
        hard = ~easy & (masks > 0)
        if not hard.any():
            break
        ha, hg, hm = a[hard], g[hard], masks[hard]
        nexts = []
        for f in range(4):
            has = (hm >> np.int8(f) & 1).astype(bool)
            nexts.append((ha[has] * grips + hg[has]) * 16 + (hm[has] & ~np.int8(1 << f)))
        code = _distinct(np.concatenate(nexts), k * grips * 16)
        pair, masks = code // 16, (code % 16).astype(np.int8)
        a, g = pair // grips, pair % grips
    fa, fg, fm = (np.concatenate(x) for x in zip(*found, strict=True))
    if len(found) > 1:
        code = _distinct((fa * grips + fg) * 16 + fm, k * grips * 16)
        pair, fm = code // 16, code % 16
        fa, fg = pair // grips, pair % grips
    keep = np.stack([fm >> f & 1 for f in range(4)]).astype(bool).T
    return Batch(fa, fg, keep), b


def steps_of(
    old: States, layer: LatticeLayer, x: Batch, b: Before, n: Need, instrument: Instrument
) -> tuple[Steps, States]:
    """The steps as the cost terms see them, and the (not yet merged) states after."""
    fret, lo, hi = _hand(old, n, x)
    asked = pick(n.fret, x.g)
    needed = asked > 0
    old_fret = pick(old.fret, x.a)
    touch = (pick(b.cover, x.a) & pick(n.cover, x.g)) != 0
    wide = needed[:, 0] & x.keep[:, 0]
    equal = old_fret == asked
    same = needed & equal & touch
    same[:, 0] |= wide
    guided = needed & (old_fret > 0) & ~equal & touch
    old_lo, old_hi = pick(old.lo, x.a), pick(old.hi, x.a)
    grown = same & ((hi > old_hi) | (lo < old_lo))
    hinged = wide & grown[:, 0]
    ring = pick(n.slot, x.g)
    cover = bits(lo, hi, fret > 0)
    lost, cuts, faded, taken = _ring_on(ring, x, b, n, cover, fret, instrument)
    held = x.keep & pick(b.held, x.a)
    low = np.where(needed & ~same, asked, 99).min(axis=1)
    pos = np.where(fret.any(axis=1), where(fret), old.pos[x.a]).astype(np.int16)
    steps = Steps(
        old_fret=old_fret,
        fret=fret,
        lo=lo,
        hi=hi,
        need=needed,
        same=same,
        guided=guided,
        upto=pick(b.upto, x.a),
        held=held,
        hinged=hinged,
        grown=grown,
        swapped=_swapped(old, x, old_fret, asked, needed & ~same, pick(n.cover, x.g)),
        busy=b.busy[x.a],
        lost=lost,
        cuts=cuts,
        faded=faded,
        taken=taken,
        old_pos=old.pos[x.a],
        pos=pos,
        unsteady=n.unsteady[x.g],
        among=pick(n.among, x.g),
        inverted=n.inverted[x.g],
        displaced=n.displaced[x.g],
        lowest_new=low,
        old_tune=b.tune[x.a],
        tune=n.tune[x.g],
        slurred=_slurred(old, layer, b, n, x),
        open_from=n.open_from[x.g],
        broken=np.full(len(x.a), layer.broken),
        held_on=np.full(len(x.a), layer.held_on),
    )
    return steps, States(fret, lo, hi, ring, pos, x.g)


def where(fret: IntArray) -> IntArray:
    """Hand positions in half frets, from (E, 4) frets by finger: the middle of what each
    finger that is down says of it (finger n on fret n + k: position 1 + k)."""
    down = fret > 0
    many = np.maximum(1, down.sum(axis=1))
    sums = np.where(down, fret - FOUR, 0).sum(axis=1)
    out: IntArray = np.maximum(2, (4 * sums + many) // (2 * many))
    return out


def _swapped(
    old: States, x: Batch, old_fret: IntArray, asked: IntArray, put: BoolArray, cover: IntArray
) -> IntArray:
    """Fingers put down on a string and fret where another finger stood before."""
    out = np.zeros(len(x.a), np.int16)
    before = pick(bits(old.lo, old.hi, old.fret > 0), x.a)
    for f in range(4):
        for g in range(4):
            if f != g:
                there = (asked[:, f] == old_fret[:, g]) & ((cover[:, f] & before[:, g]) != 0)
                out += put[:, f] & there
    return out


def _slurred(old: States, layer: LatticeLayer, b: Before, n: Need, x: Batch) -> IntArray:
    """How badly slurs into this moment are broken: across strings 3, one finger for both
    notes or the wrong one of two 1."""
    out = np.zeros(len(x.a), np.int16)
    for slot, parent in layer.slurs:
        here = old.ring == parent
        known = here.any(axis=1)
        string = np.argmax(here, axis=1)
        rows = np.arange(len(old))
        finger = b.top[rows, string]
        fret = np.where(finger > 0, old.fret[rows, np.maximum(finger, 1) - 1], 0)
        new_string, new_fret, new_finger = (n.stops[x.g, slot - 1, i] for i in range(3))
        across = (string + 1)[x.a] != new_string
        up = new_fret > fret[x.a]
        f = finger[x.a]
        wrong = np.where(up, (f > 0) & (new_finger <= f), (new_finger > 0) & (new_finger >= f))
        out += np.where(known[x.a], np.where(across, 3, wrong), 0).astype(np.int16)
    return out


def _ring_on(
    ring: IntArray, x: Batch, b: Before, n: Need, cover: IntArray, fret: IntArray, ins: Instrument
) -> tuple[IntArray, IntArray, IntArray, IntArray]:
    """Let notes that go on sound on in ``ring`` (changed in place); sixteenths lost by the
    rest, how many of them are cut, and how many that rang beyond what is written end, by a
    finger that leaves and by another note on their string."""
    lost = np.zeros(len(x.a), np.int16)
    cuts = np.zeros(len(x.a), np.int16)
    faded = np.zeros(len(x.a), np.int16)
    taken = np.zeros(len(x.a), np.int16)
    every = cover[:, 0] | cover[:, 1] | cover[:, 2] | cover[:, 3]
    for s in range(ins.strings):
        if not b.rest[:, s].any():
            continue
        goes_on, stopper = b.rest[x.a, s], b.top[x.a, s]
        bit = 1 << (s + 1)
        stays = (every & bit) == 0
        for f in range(4):
            mine = stopper == f + 1
            if mine.any():
                alive = x.keep[:, f].copy()
                for other in range(4):  # a finger laid over it higher up would change its pitch
                    if other != f:
                        alive &= ~(((cover[:, other] & bit) != 0) & (fret[:, other] > fret[:, f]))
                stays = np.where(mine, alive, stays)
        stays &= (n.slot[x.g, s] == 0) & (goes_on > 0)
        ring[:, s] = np.where(stays, goes_on, ring[:, s])
        gone = (goes_on > 0) & ~stays
        lost += np.where(gone, b.lost[x.a, s], 0).astype(np.int16)
        cuts += gone & ~b.wished[x.a, s]
        wished, other = b.wished[x.a, s], n.slot[x.g, s] > 0
        faded += gone & wished & ~other
        taken += gone & wished & other
    return lost, cuts, faded, taken


_MIX = np.random.default_rng(20).integers(1, 2**63, 64, dtype=np.uint64) | np.uint64(1)


def merge(after: States) -> tuple[States, IntArray]:
    """Equal states made one: the distinct states, and which of them each row is."""
    columns = [*after.code().T, *after.ring.T, after.pos, after.grip]
    key = np.zeros(len(after), np.uint64)
    for column, mix in zip(columns, _MIX, strict=False):
        key += column.astype(np.uint64) * mix
    _, index, inverse = np.unique(key, return_index=True, return_inverse=True)
    inverse = inverse.reshape(-1)
    if not all((c[index][inverse] == c).all() for c in columns):  # two states under one key
        rows = after.rows()
        _, index, inverse = np.unique(rows, axis=0, return_index=True, return_inverse=True)
        inverse = inverse.reshape(-1)
    fret, lo, hi, ring = (
        pick(x, index).astype(np.int16) for x in (after.fret, after.lo, after.hi, after.ring)
    )
    pos, grip = (x[index].astype(np.int16) for x in (after.pos, after.grip))
    some = States(fret, lo, hi, ring, pos, grip)
    return some, inverse


def expand(
    old: States,
    layer: LatticeLayer,
    n: Need,
    neck: Neck,
    instrument: Instrument,
    weights: dict[str, int],
) -> tuple[States, Edges]:
    """The states of a layer and the steps into them."""
    batch, b = choose(old, layer, n, neck, instrument)
    steps, after = steps_of(old, layer, batch, b, n, instrument)
    price = cost(steps, neck, weights)
    states, into = merge(after)
    order = np.argsort(batch.a, kind="stable")
    first = np.zeros(len(old) + 1, np.int32)
    np.cumsum(np.bincount(batch.a, minlength=len(old)), out=first[1:])
    small = np.uint16 if len(states) <= 2**16 else np.int32  # most of the memory is here
    return states, Edges(first, into[order].astype(small), price[order])
