"""Judges a fingering note by note from what it says, knowing nothing of how it was found.

Own formulas throughout: fret n lies at L(1 - 2^(-n/12)); a finger tip presses 6 mm
behind its fret (midway where the frets are nearer than that). Whole millimetres are
compared with half a millimetre to spare.
"""

from __future__ import annotations

from fractions import Fraction
from itertools import combinations, pairwise
from math import hypot

from workbench.fingering.types import FingeredNote, Fingering, Pin
from workbench.instrument.model import Hand, Instrument
from workbench.music.model import Piece

SPARE_MM = 1.0


def greatest(hand: Hand, f: int, g: int) -> float:
    """Greatest span of two fingers: three are measured, three follow from them."""
    return {
        (1, 2): hand.max_12,
        (1, 3): (hand.max_12 + 2 * hand.max_14) / 3,
        (1, 4): hand.max_14,
        (2, 3): hand.max_24 * 0.787,
        (2, 4): hand.max_24,
        (3, 4): hand.max_24 * 0.79,
    }[f, g]


def tip(on: Instrument, fret: int) -> float:
    length = on.scale_mm * 2 ** (-on.capo / 12)
    here, before = (length * (1 - 2 ** (-r / 12)) for r in (fret, fret - 1))
    return max(here - 6.0, (here + before) / 2)


def complaints(
    fingering: Fingering, piece: Piece, on: Instrument, hand: Hand, pins: tuple[Pin, ...] = ()
) -> list[str]:
    """Every law of the hand that a fingering breaks, in words; none if it is sound.

    Bars are taken in written order (give music without repeats).
    """
    out: list[str] = []
    start: dict[str, Fraction] = {}
    at = Fraction(0)
    for bar in piece.bars:
        start.update({n.id: at + n.onset for n in bar.notes})
        at += bar.length
    notes = [n for bar in fingering.bars for n in bar.notes]
    if [n.id for n in notes] != [n.id for n in piece.notes]:
        out.append("not the notes of the piece")
    by_id = {n.id: n for n in notes}
    for n in notes:  # two stems of one sound are told alike, then taken as one
        if n.shares:
            other = by_id[n.shares]
            if (n.string, n.fret, n.left) != (other.string, other.fret, other.left):
                out.append(f"{n.id}: one sound with {n.shares}, in two places")
    played = [n for n in notes if n.string is not None and not n.shares]
    out += [
        f"{n.id}: silent without a reason" for n in notes if n.string is None and not n.impossible
    ]
    asked = {p.note: p for p in pins}
    for n in played:
        out += _one(n, on, asked.get(n.id))
    grace = {n.id for n in piece.notes if n.grace}
    moments: dict[Fraction, list[FingeredNote]] = {}
    for n in played:
        if n.id not in grace:
            moments.setdefault(start[n.id], []).append(n)
    for time, begun in sorted(moments.items()):
        anew = {(n.string, n.midi) for n in begun}  # whoever strikes a sound again holds it
        going_on = [
            n for n in played
            if n.id not in grace and start[n.id] < time < start[n.id] + n.held
            and (n.string, n.midi) not in anew
        ]  # fmt: skip
        out += _together([*begun, *going_on], on, hand)
        out += _right(begun, asked)
    return out


def _one(n: FingeredNote, on: Instrument, pin: Pin | None) -> list[str]:
    out = []
    assert n.string is not None and n.fret is not None
    if not 1 <= n.string <= on.strings or not 0 <= n.fret <= on.frets - on.capo:
        return [f"{n.id}: string {n.string}, fret {n.fret} is not on the neck"]
    if on.tuning[n.string - 1] + on.capo + n.fret != n.midi:
        out.append(f"{n.id}: string {n.string} fret {n.fret} does not sound {n.midi}")
    if (n.left == 0) != (n.fret == 0) or n.left not in (0, 1, 2, 3, 4):
        out.append(f"{n.id}: fret {n.fret} by finger {n.left}")
    if n.right not in ("p", "i", "m", "a") and not n.slurred:
        out.append(f"{n.id}: right finger {n.right}")
    if not 0 <= n.held <= n.duration:
        out.append(f"{n.id}: held {n.held} of {n.duration}")
    if (n.held < n.duration) != bool(n.cut_reason):
        out.append(f"{n.id}: held {n.held} of {n.duration}, reason {n.cut_reason}")
    if pin:
        told = (n.string, n.fret, n.left, n.right)
        wish = (pin.string, pin.fret, pin.left, pin.right)
        if any(w not in (None, x) for w, x in zip(wish, told, strict=True)):
            out.append(f"{n.id}: pin {wish} not obeyed, {told}")
    return out


def _together(sounding: list[FingeredNote], on: Instrument, hand: Hand) -> list[str]:
    """Notes that sound at one time: one a string, fingers in order and within reach."""
    out: list[str] = []
    strings = {(n.string, n.midi) for n in sounding}  # struck anew a string sounds on
    if len({s for s, _ in strings}) < len(strings):
        out.append(f"{[n.id for n in sounding]}: two notes on one string at once")
    places: dict[int, list[tuple[int, int]]] = {}
    for n in sounding:
        if n.left:
            assert n.string and n.fret
            places.setdefault(n.left, []).append((n.fret, n.string))
    for finger, mine in places.items():
        frets = {r for r, _ in mine}
        if len(frets) > 1:
            out.append(f"{[n.id for n in sounding]}: finger {finger} in two places {mine}")
        low, high = min(s for _, s in mine), max(s for _, s in mine)
        for n in sounding:
            if n.string and low <= n.string <= high and (n.fret or 0) < min(frets):
                out.append(f"{n.id}: sounds beneath a barre at fret {min(frets)}")
    for f, g in combinations(sorted(places), 2):
        a, b = places[f], places[g]
        if min(r for r, _ in a) > min(r for r, _ in b):
            out.append(f"{[n.id for n in sounding]}: finger {f} above finger {g}")
        if set(a) & set(b):
            out.append(f"{[n.id for n in sounding]}: fingers {f} and {g} in one place")
        along = tip(on, a[0][0]) - tip(on, b[0][0])
        across = min(abs(s - t) for _, s in a for _, t in b)
        between = _inside(a, b)
        mm = hypot(along, 0 if between else across * on.spacing_mm / 2)
        if mm > greatest(hand, f, g) + SPARE_MM:
            out.append(f"{[n.id for n in sounding]}: {f} and {g} are {mm:.0f} mm apart")
    return out


def _inside(a: list[tuple[int, int]], b: list[tuple[int, int]]) -> bool:
    """Whether one finger's strings lie within the other's barre."""
    for x, y in ((a, b), (b, a)):
        strings = [s for _, s in x]
        if any(min(strings) <= s <= max(strings) for _, s in y):
            return True
    return False


def _right(begun: list[FingeredNote], asked: dict[str, Pin]) -> list[str]:
    """Notes plucked at once: from the highest-numbered string to string 1 p, i, m, a."""
    if any(n.id in asked and asked[n.id].right for n in begun):
        return []
    begun = [n for n in begun if not n.slurred]
    row = ["pima".index(n.right or "") for n in sorted(begun, key=lambda n: -(n.string or 0))]
    strings = sorted(n.string or 0 for n in begun)
    if len(row) > 2 and len(set(row)) == 1 and strings[-1] - strings[0] == len(row) - 1:
        return []  # a strum: one finger over neighbouring strings
    for a, b in pairwise(row):
        if a > b or (a == b and a != 0):
            return [f"{[n.id for n in begun]}: right hand {[n.right for n in begun]} crosses"]
    if len(row) <= 4 and row.count(0) > 1:
        return [f"{[n.id for n in begun]}: the thumb plucks {row.count(0)} strings of {len(row)}"]
    return []
