"""Hand states as arrays: where the fingers are and what sounds, many states at once."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np
import numpy.typing as npt

from workbench.fingering.hand.among import AMONG, among
from workbench.fingering.hand.grips import Grip
from workbench.fingering.hand.holding import IntArray
from workbench.fingering.lattice.layers import LatticeLayer
from workbench.instrument.model import Instrument

BoolArray = npt.NDArray[Any]


def bits(lo: IntArray, hi: IntArray, down: BoolArray) -> IntArray:
    """Strings lo..hi as a bit set (string 1 is bit 1), 0 where the finger is up."""
    one = np.int32(1)
    spread = (one << (hi.astype(np.int32) + 1)) - (one << lo.astype(np.int32))
    return np.where(down, spread, 0).astype(np.int16)


def pick(x: IntArray, rows: IntArray) -> IntArray:
    """Rows of an (n, m) array, columns kept together in memory: sums along a row are quick."""
    out: IntArray = x.T.take(rows, axis=1).T
    return out


@dataclass(frozen=True)
class States:
    """K hand states. ``fret``, ``lo``, ``hi``: (K, 4) by finger, fret 0 = up;
    ``ring``: (K, S) slot of the note sounding on each string, 0 = none;
    ``pos``: (K,) position of the hand in half frets, 0 = not yet placed;
    ``grip``: (K,) index of the grip that begins the layer's notes."""

    fret: IntArray
    lo: IntArray
    hi: IntArray
    ring: IntArray
    pos: IntArray
    grip: IntArray

    def __len__(self) -> int:
        return len(self.pos)

    def code(self) -> IntArray:
        """(K, 4): fret, first and last string of each finger in one number, 0 = up."""
        return self.fret << 8 | self.lo << 4 | self.hi

    def take(self, i: int) -> States:
        """State ``i`` alone."""
        k = slice(i, i + 1)
        return States(self.fret[k], self.lo[k], self.hi[k], self.ring[k], self.pos[k], self.grip[k])

    def rows(self) -> IntArray:
        """(K, 14 + S) whole numbers: equal rows are equal states."""
        return np.concatenate(
            [self.fret, self.lo, self.hi, self.ring, self.pos[:, None], self.grip[:, None]], axis=1
        )


def start_state(strings: int) -> States:
    """The hand before the piece: nothing down, nothing sounding, nowhere yet."""
    z = np.zeros((1, 4), np.int16)
    one = np.zeros(1, np.int16)
    return States(z, z, z, np.zeros((1, strings), np.int16), one, one)


def top_finger(states: States, strings: int) -> IntArray:
    """(K, S): the finger 1-4 that stops each string, 0 where none does."""
    best = np.zeros((len(states), strings), np.int16)
    top = np.zeros((len(states), strings), np.int16)
    names = np.arange(1, strings + 1, dtype=np.int16)
    for f in range(4):
        fret = states.fret[:, f : f + 1]
        covers = (states.lo[:, f : f + 1] <= names) & (names <= states.hi[:, f : f + 1])
        better = covers & (fret > best)
        best = np.where(better, fret, best)
        top = np.where(better, np.int16(f + 1), top)
    return top


@dataclass(frozen=True)
class Before:
    """What a layer asks of the states before it, one row a state.

    ``upto``: the finger's note sounds right up to now; ``held``: its note goes
    on; ``useful``: silent, but its note returns soon; ``cover``: strings as
    bits; ``rest``: slot here of what goes on on each string; ``top``: finger by
    string; ``busy``: some finger's note sounds up to now; ``lost``: sixteenths
    that would be lost on each string; ``tune``: string of the melody note just
    before, 0 where the melody does not move on from there; ``wished``: by string, what goes
    on rings beyond what is written.
    """

    upto: BoolArray
    held: BoolArray
    useful: BoolArray
    cover: IntArray
    rest: IntArray
    top: IntArray
    busy: BoolArray
    lost: IntArray
    tune: IntArray
    wished: BoolArray


def before(states: States, layer: LatticeLayer, instrument: Instrument) -> Before:
    """Read the states before a layer against what goes on in it."""
    strings = instrument.strings
    top = top_finger(states, strings)
    upto_slot = np.array([False, *layer.upto])
    carry = np.array([0, *layer.carry], np.int16)
    lost_slot = np.array([0, *(-(-q * 4 // 1) for q in layer.left_over)], np.int16)
    lost_slot = np.minimum(lost_slot, 32)
    upto_s = upto_slot[states.ring]
    rest = carry[states.ring]
    k = len(states)
    upto = np.zeros((k, 4), bool)
    held = np.zeros((k, 4), bool)
    for f in range(4):
        mine = top == f + 1
        upto[:, f] = (mine & upto_s).any(axis=1)
        held[:, f] = (mine & (rest > 0)).any(axis=1)
    useful = np.zeros((k, 4), bool)
    if layer.soon:
        soon = np.zeros(256, bool)
        soon[[m for m in layer.soon if 0 <= m < 200]] = True
        open_midi = np.array([0, *instrument.open_midi], np.int16)
        for f in range(4):
            single = (states.fret[:, f] > 0) & (states.lo[:, f] == states.hi[:, f])
            midi = np.where(single, open_midi[states.lo[:, f]] + states.fret[:, f], 255)
            useful[:, f] = soon[midi]
    cover = bits(states.lo, states.hi, states.fret > 0)
    tune = np.zeros(k, np.int16)
    if layer.tune:
        tune = (np.argmax(states.ring == layer.tune, axis=1) + 1).astype(np.int16)
    busy = np.asarray(upto.any(axis=1))
    lost = lost_slot[states.ring]
    wished = np.array([False, *layer.wished, *[False] * (len(layer.carry) - len(layer.wished))])
    return Before(upto, held, useful, cover, rest, top, busy, lost, tune, wished[states.ring])


@dataclass(frozen=True)
class Need:
    """What a layer's grips ask, one row a grip: finger places (``code`` as in
    States), the strings played below a fret (``under[g, r]`` as bits), the slot each
    string begins, and whether the note is fretted where an open string would sound
    it; ``tune``: string of the melody note, 0 = none; ``among``: (grips, terms) of
    among.among;
    ``inverted``: pairs of notes of which the higher lies on the lower-tuned string;
    ``displaced``: places between each note's and the lowest on the neck, summed;
    ``stops``: (grips, notes, 3) string, fret and finger of each note; ``open_from``: the
    open string nearest the floor that is struck, 99 where none is."""

    code: IntArray
    fret: IntArray
    lo: IntArray
    hi: IntArray
    cover: IntArray
    under: IntArray
    slot: IntArray
    unsteady: IntArray
    tune: IntArray
    among: IntArray
    inverted: IntArray
    displaced: IntArray
    stops: IntArray
    open_from: IntArray


def _fret(place: tuple[int, int]) -> int:
    return place[1]


def need(grips: list[Grip], layer: LatticeLayer, instrument: Instrument) -> Need:
    """The grips of a layer as arrays."""
    g, s, n = len(grips), instrument.strings, instrument.playable_frets + 1
    hand = np.array([x.fingers for x in grips], np.int16).reshape(g, 4, 3)
    slot = np.zeros((g, s), np.int16)
    string_fret = np.full((g, s), -1, np.int16)
    unsteady = np.zeros(g, np.int16)
    tune = np.zeros(g, np.int16)
    opens = set(instrument.open_midi)
    open_from = [min((p[0] for p in x.places if p[1] == 0), default=99) for x in grips]
    beside = [among(x.fingers, {string: at for string, at, _ in x.places}) for x in grips]
    inverted, displaced = np.zeros(g, np.int16), np.zeros(g, np.int16)
    ranks = [
        {string: i for i, (string, _) in enumerate(sorted(instrument.places(n.midi), key=_fret))}
        for n in layer.notes
    ]
    tuned = instrument.open_midi
    for i, grip in enumerate(grips):
        told = [(layer.notes[j].midi, tuned[p[0] - 1]) for j, p in enumerate(grip.places)]
        displaced[i] = sum(ranks[j][p[0]] for j, p in enumerate(grip.places))
        inverted[i] = sum(a > b and s < t for a, s in told for b, t in told)
        for j, (string, at, _) in enumerate(grip.places):
            slot[i, string - 1] = j + 1
            string_fret[i, string - 1] = at
            unsteady[i] += at > 0 and layer.notes[j].midi in opens
        if layer.melody:
            tune[i] = grip.places[layer.melody - 1][0]
    bit = (1 << np.arange(1, s + 1)).astype(np.int16)
    frets = np.arange(n)
    below = (string_fret[:, None, :] >= 0) & (string_fret[:, None, :] < frets[None, :, None])
    under = (below * bit).sum(axis=2).astype(np.int16)
    fret: IntArray = hand[:, :, 0]
    lo, hi = hand[:, :, 1], hand[:, :, 2]
    return Need(
        (fret << 8 | lo << 4 | hi),
        fret,
        lo,
        hi,
        bits(lo, hi, np.asarray(fret > 0)),
        under,
        slot,
        unsteady,
        tune,
        np.array(beside, np.int16).reshape(g, len(AMONG)),
        inverted,
        displaced,
        np.array([x.places for x in grips], np.int16).reshape(g, -1, 3),
        np.array(open_from, np.int16),
    )
