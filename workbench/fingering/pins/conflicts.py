"""Why no hand can hold what a teacher asks for: the first thing in the way."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import combinations

from workbench.fingering.hand.grips import Neck, grips
from workbench.fingering.hand.reach import pair_limits, span_mm
from workbench.fingering.lattice.layers import moments_of
from workbench.fingering.types import Pin
from workbench.instrument.model import Hand, Instrument
from workbench.language.fact import Fact, fact
from workbench.music.model import Bar, Note, Pitch

Pins = dict[str, Pin]
STEPS = (("C", 0), ("C", 1), ("D", 0), ("E", -1), ("E", 0), ("F", 0), ("F", 1), ("G", 0),
         ("A", -1), ("A", 0), ("B", -1), ("B", 0))  # fmt: skip


def conflict(bar: Bar, pins: Pins, instrument: Instrument, hand: Hand, table: Neck) -> Fact | None:
    """The first reason, with its beat, why the pins on a bar's notes cannot all be held;
    None where at every moment some grip holds them."""
    for onset, together in moments_of(bar.notes):
        asked = [n for n in together if n.id in pins]
        if not asked or grips(together, instrument, table, pins):
            continue
        reason = reason_against(together, pins, instrument, hand, table)
        beat = float(onset) * bar.time_signature[1] / 4 + 1
        return fact("at beat", beat=beat, why=(reason,))
    return None


def reason_against(
    together: Sequence[Note], pins: Pins, instrument: Instrument, hand: Hand, table: Neck
) -> Fact:
    """Why no grip holds the pins on notes that begin together."""
    asked = [n for n in together if n.id in pins]
    for n in asked:
        alone = _alone(n, pins[n.id], instrument)
        if alone:
            return alone
    for a, b in combinations(asked, 2):
        if not grips([a, b], instrument, table, pins):
            return _pair(a, b, pins, instrument, hand)
    names = tuple(n.pitch.name for n in asked)
    others = tuple(n.pitch.name for n in together if n.id not in pins)
    if others and grips(asked, instrument, table, pins):
        return fact("others out of reach", held=names, notes=others)
    return fact("not held together", notes=names)


def _alone(n: Note, pin: Pin, instrument: Instrument) -> Fact | None:
    """What is wrong with a single note's pin, None where it can be meant."""
    pitch = n.pitch.name
    places = [
        (s, r)
        for s, r in instrument.places(n.midi)
        if pin.string in (None, s) and pin.fret in (None, r)
    ]
    if not places:
        if pin.string is None:
            return fact("no string sounds", note=pitch, fret=pin.fret or 0)
        if pin.fret is None or not 1 <= pin.string <= instrument.strings:
            return fact("string does not sound", string=pin.string, note=pitch)
        sounds = _name(instrument.open_midi[pin.string - 1] + pin.fret)
        return fact("sounds otherwise", string=pin.string, fret=pin.fret, sounds=sounds, note=pitch)
    if pin.left == 0 and all(r > 0 for _, r in places):
        return fact("needs a finger", note=pitch)
    if pin.left and all(r == 0 for _, r in places):
        return fact("takes no finger", note=pitch)
    if pin.left is not None and not 0 <= pin.left <= 4:
        return fact("no such finger")
    return None


def _pair(a: Note, b: Note, pins: Pins, instrument: Instrument, hand: Hand) -> Fact:
    """Why two notes cannot be held as asked."""
    one, other = _place(a, pins, instrument), _place(b, pins, instrument)
    if one and other and one[0] == other[0]:
        return fact("same string", note=a.pitch.name, other=b.pitch.name)
    f, g = pins[a.id].left, pins[b.id].left
    if one and other and f and g:
        if f > g or (f == g and one[1] > other[1]):
            one, other, f, g = other, one, g, f
        if f == g:
            if one[1] != other[1]:
                return fact("two frets at once", finger=f, first=one[1], second=other[1])
            return fact("two strings at once", finger=f)
        if one[1] > other[1]:
            return fact("fingers crossed", first=f, second=g, one=one[1], other=other[1])
        apart, most = span_mm(instrument, one, other), pair_limits(hand)[f, g][1]
        if apart > most:
            return fact("too wide", first=f, second=g, apart=round(apart), most=round(most))
    return fact("not held together", notes=(a.pitch.name, b.pitch.name))


def _place(n: Note, pins: Pins, instrument: Instrument) -> tuple[int, int] | None:
    """The one (string, fret) that a pin leaves to a note."""
    pin = pins[n.id]
    found = [
        (s, r)
        for s, r in instrument.places(n.midi)
        if pin.string in (None, s) and pin.fret in (None, r)
    ]
    return found[0] if len(found) == 1 else None


def _name(midi: int) -> str:
    step, alter = STEPS[midi % 12]
    return Pitch(step, alter, midi // 12 - 1).name
