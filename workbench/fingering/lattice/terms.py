"""The declared cost of the left hand, term by term.

What it is to hold fingers somewhere is priced in holding.py, for shapes and pieces alike;
here is what a step adds to it: the way of the hand, fingers that hop or slide, notes cut.
Each term is one function over a batch of steps (a step is one hand state, the next grip
and what stays down) and gives a whole number of its unit for every step. Units, weights
and the sentence a teacher would say: resources/weights.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, fields

import numpy as np

from workbench.fingering.hand.among import AMONG
from workbench.fingering.hand.grips import Neck
from workbench.fingering.hand.holding import HOLDING, IntArray, Press, far
from workbench.fingering.lattice.states import BoolArray


@dataclass(frozen=True, kw_only=True)
class Steps:
    """E steps. ``old_*``: the hand before, ``fret``/``lo``/``hi``: after, all (E, 4).

    ``need``: the finger stops a note that begins; ``same``: it was there
    already; ``guided``: on the same string at another fret; ``upto``: its old
    note sounds right up to now; ``held``: it holds a note that goes on;
    ``hinged``: finger 1 rolls down to a barre while it sounds; ``grown``: (E, 4) the
    finger stays but covers more strings; ``swapped``: fingers put where another stood;
    ``busy``: some finger is at work up to now; ``lost``: sixteenths of written length cut
    off; ``cuts``: notes cut; ``faded``, ``taken``: notes of broken chords that stop ringing,
    by a finger that leaves and by another note on their string; ``old_pos``/``pos``: hand
    positions in half frets; ``unsteady``: fretted though open would do; ``among``: (E, terms)
    of among.among; ``inverted``: pairs of notes whose strings stand the other way round;
    ``displaced``: strings between the notes' places and the lowest on the neck;
    ``lowest_new``: lowest fret stopped anew on another string (99: none);
    ``old_tune``/``tune``: strings of the melody note before and now, 0 = none; ``slurred``:
    ways in which a slur into this grip is broken; ``open_from``: the open string nearest the
    floor that is struck (99: none); ``broken``: the piece is one of broken chords; ``held_on``:
    every note that begins is a quaver or longer.
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
    swapped: IntArray
    busy: BoolArray
    lost: IntArray
    cuts: IntArray
    faded: IntArray
    taken: IntArray
    old_pos: IntArray
    pos: IntArray
    unsteady: IntArray
    among: IntArray
    inverted: IntArray
    displaced: IntArray
    lowest_new: IntArray
    old_tune: IntArray
    tune: IntArray
    slurred: IntArray
    open_from: IntArray
    broken: BoolArray
    held_on: BoolArray

    def take(self, chosen: BoolArray) -> Steps:
        """The chosen steps alone."""
        return Steps(**{f.name: getattr(self, f.name)[chosen] for f in fields(self)})

    @property
    def new(self) -> BoolArray:
        """The finger has just come to stop a note here."""
        return self.need & (~self.same | self.grown)

    @property
    def placed(self) -> BoolArray:
        """The finger is put down anew (not planted, not guided)."""
        return self.need & ~self.same & ~self.guided

    @property
    def code(self) -> IntArray:
        """(E, 4): fret << 8 | lo << 4 | hi of the fingers that sound something, 0 of others."""
        return np.where(self.need | self.held, self.fret << 8 | self.lo << 4 | self.hi, 0)


def join_steps(parts: Sequence[Steps]) -> Steps:
    """Several batches of steps as one."""
    names = [f.name for f in fields(Steps)]
    return Steps(**{name: np.concatenate([getattr(p, name) for p in parts]) for name in names})


FINGER_INDEX = np.arange(4, dtype=np.int16)
FIRST = 3  # half frets up to which the hand stands in first position
MIDDLE = (6, 12)  # half frets above and up to which a position is a middle one
MOVE = 4  # half frets from which a change of position is a move of the hand, not a lean


def total(x: IntArray | BoolArray) -> IntArray:
    out: IntArray = x.sum(axis=1, dtype=np.int32)
    return out


def place(s: Steps, neck: Neck) -> IntArray:
    """Fingers put down."""
    return total(s.placed)


def hinge(s: Steps, neck: Neck) -> IntArray:
    """1 where finger 1 rolls down to a barre while it holds a note."""
    return np.asarray(s.hinged, np.int32)


def high(s: Steps, neck: Neck) -> IntArray:
    """Frets above the fourth of every note stopped anew."""
    return total(np.where(s.need & ~s.same, np.maximum(0, s.fret - 4), 0))


def hop(s: Steps, neck: Neck) -> IntArray:
    """Fingers that leave a sounding note for another string and fret at once."""
    return total(s.placed & s.upto & (s.fret != s.old_fret))


def hop_across(s: Steps, neck: Neck) -> IntArray:
    """Fingers that leave a sounding note for another string on the same fret."""
    return total(s.placed & s.upto & (s.fret == s.old_fret))


def swap(s: Steps, neck: Neck) -> IntArray:
    """Fingers put where another finger stood just before."""
    return np.asarray(s.swapped, np.int32)


def slide(s: Steps, neck: Neck) -> IntArray:
    """Fingers that move along their string while their note still sounds."""
    return total(s.guided & s.need & s.upto)


def guide(s: Steps, neck: Neck) -> IntArray:
    """Millimetres slid by guide fingers."""
    way = np.abs(neck.at[s.fret] - neck.at[s.old_fret])
    return total(np.where(s.guided & s.need, way, 0))


def _apart(s: Steps) -> IntArray:
    known = (s.old_pos > 0) & (s.pos > 0)
    return np.where(known, np.abs(s.pos - s.old_pos), 0).astype(np.int32)


def _way(s: Steps, neck: Neck) -> IntArray:
    known = (s.old_pos > 0) & (s.pos > 0)
    return np.where(known, neck.shift[s.old_pos, s.pos], 0).astype(np.int32)


def _led(s: Steps) -> BoolArray:
    return np.asarray((s.guided & s.need).any(axis=1))


def _holding(s: Steps) -> BoolArray:
    return np.asarray(s.held.any(axis=1))


def led_by_4(s: Steps, neck: Neck) -> IntArray:
    """1 where finger 4 slides along its string to its next note."""
    return np.asarray((s.guided & s.need)[:, 3], np.int32)


def lean(s: Steps, neck: Neck) -> IntArray:
    """Half frets up to three that the hand leans with no finger leading along its string."""
    return np.where(_leaning(s) & s.busy, _apart(s), 0).astype(np.int32)


def _leaning(s: Steps) -> BoolArray:
    out: BoolArray = (_apart(s) < MOVE) & ~_led(s) & ~_holding(s)
    return out


def free_lean(s: Steps, neck: Neck) -> IntArray:
    """The same while an open string or a rest gives the hand time."""
    return np.where(_leaning(s) & ~s.busy, _apart(s), 0).astype(np.int32)


def whole_lean(s: Steps, neck: Neck) -> IntArray:
    """1 where the hand leans by a whole fret."""
    return np.asarray(_apart(s) == 2, np.int32)


def move(s: Steps, neck: Neck) -> IntArray:
    """1 where the hand moves to another position while a finger is at work."""
    return ((_apart(s) >= MOVE) & s.busy).astype(np.int32)


def blind(s: Steps, neck: Neck) -> IntArray:
    """1 where the hand moves to another position and no finger leads along its string."""
    return ((_apart(s) >= MOVE) & ~_led(s)).astype(np.int32)


def shift(s: Steps, neck: Neck) -> IntArray:
    """Millimetres the hand moves along the neck while a finger is still at work."""
    return np.where(s.busy, _way(s, neck), 0)


def free_shift(s: Steps, neck: Neck) -> IntArray:
    """Millimetres the hand moves while an open string or a rest gives it time."""
    return np.where(s.busy, 0, _way(s, neck))


def cut(s: Steps, neck: Neck) -> IntArray:
    """Sixteenths of written length that held notes lose."""
    return np.asarray(s.lost, np.int32)


def cuts(s: Steps, neck: Neck) -> IntArray:
    """Held notes cut short."""
    return np.asarray(s.cuts, np.int32)


def faded(s: Steps, neck: Neck) -> IntArray:
    """Notes of a broken chord that stop ringing before the figure turns."""
    return np.asarray(s.faded, np.int32)


def taken(s: Steps, neck: Neck) -> IntArray:
    """Notes of a broken chord whose string another note takes before the figure turns."""
    return np.asarray(s.taken, np.int32)


def blocked(s: Steps, neck: Neck) -> IntArray:
    """Fingers above a held one that cannot reach the lower frets stopped beneath it."""
    stuck = s.held & (s.fret > s.lowest_new[:, None])
    return total(np.where(stuck, 3 - FINGER_INDEX, 0))


def relaxed(s: Steps, neck: Neck) -> IntArray:
    """1 where 1 and 2 stand on neighbouring frets and finger 3 is free to be used instead."""
    one_two = (s.fret[:, 0] > 0) & (s.fret[:, 1] == s.fret[:, 0] + 1) & (s.fret[:, 2] == 0)
    return np.asarray(one_two & (s.need[:, 0] | s.need[:, 1]), np.int32)


def open_only(s: Steps, neck: Neck) -> IntArray:
    """1 where nothing but open strings is struck."""
    return np.asarray(~s.need.any(axis=1), np.int32)


def unsteady(s: Steps, neck: Neck) -> IntArray:
    """Notes fretted where an open string would sound them."""
    return np.asarray(s.unsteady, np.int32)


def leap(s: Steps, neck: Neck) -> IntArray:
    """Strings that a melody skips though it moves by step or by a small leap in pitch."""
    both = (s.old_tune > 0) & (s.tune > 0)
    return np.where(both, np.maximum(0, np.abs(s.tune - s.old_tune) - 1), 0).astype(np.int32)


def position(s: Steps, neck: Neck) -> IntArray:
    """Notes stopped anew while the hand stands above first position."""
    return total((s.need & ~s.same) & (s.pos > FIRST)[:, None])


def middle(s: Steps, neck: Neck) -> IntArray:
    """1 where something is stopped anew while the hand stands between third and sixth position."""
    there = (s.pos > MIDDLE[0]) & (s.pos <= MIDDLE[1])
    return np.asarray(there & s.new.any(axis=1), np.int32)


def inverted(s: Steps, neck: Neck) -> IntArray:
    """Pairs of notes together whose higher one lies on the lower-tuned string."""
    return np.asarray(s.inverted, np.int32)


def displaced(s: Steps, neck: Neck) -> IntArray:
    """Strings between the notes' places and the lowest places on the neck."""
    return np.asarray(s.displaced, np.int32)


# What counts more where notes are held, where a piece is a tune, where it is broken chords. A
# place that is a little worse counts under a held note, hardly in a run; in broken chords the
# hand moves freely under an open bass, and shapes lie where all their notes sound on.


def far_held(s: Steps, neck: Neck) -> IntArray:
    """Strings that fingers 3 and 4 reach across, as ``far``, for notes of a quaver or more."""
    across = [far(Press(f, s.fret[:, f], s.lo[:, f], s.hi[:, f])) for f in range(4)]
    reached = np.where(s.new, np.stack(across, axis=1), 0)
    return np.where(s.held_on, total(reached), 0).astype(np.int32)


def displaced_held(s: Steps, neck: Neck) -> IntArray:
    """Strings as ``displaced``, for notes of a quaver or more."""
    return np.where(s.held_on, s.displaced, 0).astype(np.int32)


def free_shift_tune(s: Steps, neck: Neck) -> IntArray:
    """Millimetres as ``free_shift``, where the piece is not of broken chords."""
    return np.where(s.broken, 0, free_shift(s, neck)).astype(np.int32)


def taken_broken(s: Steps, neck: Neck) -> IntArray:
    """Notes as ``taken``, in a piece of broken chords."""
    return np.where(s.broken, s.taken, 0).astype(np.int32)


def arched(s: Steps, neck: Neck) -> IntArray:
    """Laid fingers that hold on while an open string nearer the floor is struck: they must
    arch clear of it."""
    stays = (s.held | s.need) & ~s.new
    return total(stays & (s.hi > s.lo) & (s.lo > s.open_from[:, None]))


def slur(s: Steps, neck: Neck) -> IntArray:
    """Ways in which a slur is broken: across strings, by one finger, or not prepared."""
    return np.asarray(s.slurred, np.int32)


TERMS = (
    place, hinge, high, hop, hop_across, swap, slide, guide, led_by_4,
    lean, free_lean, whole_lean, move, blind, shift, free_shift, cut, cuts, faded, taken, blocked,
    relaxed, open_only, unsteady, leap, position, middle, inverted, displaced, far_held,
    displaced_held, free_shift_tune, taken_broken, arched, slur,
)  # fmt: skip
LEFT_TERMS = (*HOLDING, *AMONG, *(t.__name__ for t in TERMS))


def features(s: Steps, neck: Neck) -> dict[str, IntArray]:
    """Every term by name, in its unit."""
    new = s.new
    with_others = np.where(np.asarray(new.any(axis=1))[:, None], s.among, 0)
    return {
        **neck.holding.terms(s.code, new),
        **{name: with_others[:, i] for i, name in enumerate(AMONG)},
        **{t.__name__: t(s, neck) for t in TERMS},
    }


def cost(s: Steps, neck: Neck, weights: Mapping[str, int]) -> IntArray:
    """Declared cost of every step in thousandths."""
    new = s.new
    out = neck.holding.cost(s.code, new, weights)
    beside = s.among.astype(np.int32) @ np.array([weights[t] for t in AMONG], np.int32)
    out += np.where(new.any(axis=1), beside, 0)
    for t in TERMS:
        w = weights[t.__name__]
        if w:
            out += t(s, neck).astype(np.int32) * np.int32(w)
    return out
