"""Why no hand can hold what a teacher asks for: the first thing in the way, in words."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import combinations

from workbench.fingering.frame import moments_of
from workbench.fingering.grips import Neck, grips
from workbench.fingering.reach import pair_limits, span_mm
from workbench.fingering.types import Pin
from workbench.instrument.model import Hand, Instrument
from workbench.language.speech import say
from workbench.music.model import Bar, Note, Pitch

Pins = dict[str, Pin]
STEPS = (("C", 0), ("C", 1), ("D", 0), ("E", -1), ("E", 0), ("F", 0), ("F", 1), ("G", 0),
         ("A", -1), ("A", 0), ("B", -1), ("B", 0))  # fmt: skip


def conflict(bar: Bar, pins: Pins, instrument: Instrument, hand: Hand, table: Neck) -> str | None:
    """The first reason, with its beat, why the pins on a bar's notes cannot all be held;
    None where at every moment some grip holds them."""
    for onset, together in moments_of(bar.notes):
        asked = [n for n in together if n.id in pins]
        if not asked or grips(together, instrument, table, pins):
            continue
        reason = reason_against(together, pins, instrument, hand, table)
        beat = float(onset) * bar.time_signature[1] / 4 + 1
        return say("beat {beat}: {reason}", beat=f"{beat:g}", reason=reason)
    return None


def reason_against(
    together: Sequence[Note], pins: Pins, instrument: Instrument, hand: Hand, table: Neck
) -> str:
    """Why no grip holds the pins on notes that begin together."""
    asked = [n for n in together if n.id in pins]
    for n in asked:
        alone = _alone(n, pins[n.id], instrument)
        if alone:
            return alone
    for a, b in combinations(asked, 2):
        if not grips([a, b], instrument, table, pins):
            return _pair(a, b, pins, instrument, hand)
    names = say(" and ").join(n.pitch.name for n in asked)
    others = say(" and ").join(n.pitch.name for n in together if n.id not in pins)
    if others and grips(asked, instrument, table, pins):
        return say("with {names} held like this no hand reaches {others}", names=names,
                   others=others)  # fmt: skip
    return say("no hand holds {names} like this together", names=names)


def _alone(n: Note, pin: Pin, instrument: Instrument) -> str:
    """What is wrong with a single note's pin, "" where it can be meant."""
    pitch = n.pitch.name
    places = [
        (s, r)
        for s, r in instrument.places(n.midi)
        if pin.string in (None, s) and pin.fret in (None, r)
    ]
    if not places:
        if pin.string is None:
            return say("no string sounds {pitch} at fret {fret}", pitch=pitch, fret=pin.fret)
        if pin.fret is None or not 1 <= pin.string <= instrument.strings:
            return say("string {string} does not sound {pitch}", string=pin.string, pitch=pitch)
        sounds = _name(instrument.open_midi[pin.string - 1] + pin.fret)
        return say("string {string}, fret {fret} sounds {sounds}, not {pitch}",
                   string=pin.string, fret=pin.fret, sounds=sounds, pitch=pitch)  # fmt: skip
    if pin.left == 0 and all(r > 0 for _, r in places):
        return say("{pitch} is stopped there and needs a finger, 1 to 4", pitch=pitch)
    if pin.left and all(r == 0 for _, r in places):
        return say("{pitch} is an open string there and takes no finger", pitch=pitch)
    if pin.left is not None and not 0 <= pin.left <= 4:
        return say("left fingers are 0 for the open string and 1 to 4")
    return ""


def _pair(a: Note, b: Note, pins: Pins, instrument: Instrument, hand: Hand) -> str:
    """Why two notes cannot be held as asked."""
    one, other = _place(a, pins, instrument), _place(b, pins, instrument)
    names = {"pitch": a.pitch.name, "other": b.pitch.name}
    if one and other and one[0] == other[0]:
        return say("{pitch} and {other} need the same string at once", **names)
    f, g = pins[a.id].left, pins[b.id].left
    if one and other and f and g:
        if f > g or (f == g and one[1] > other[1]):
            one, other, f, g = other, one, g, f
        if f == g:
            if one[1] != other[1]:
                return say("finger {finger} cannot stop frets {first} and {second} at once",
                           finger=f, first=one[1], second=other[1])  # fmt: skip
            return say("finger {finger} cannot stop two strings there; only finger 1 lies as a "
                       "barre, and nothing may sound below it", finger=f)  # fmt: skip
        if one[1] > other[1]:
            return say("finger {first} would stand in front of finger {second}: fret {one} "
                       "and fret {other}", first=f, second=g, one=one[1], other=other[1],
                       )  # fmt: skip
        apart, most = span_mm(instrument, one, other), pair_limits(hand)[f, g][1]
        if apart > most:
            return say("fingers {first} and {second} would be {apart} mm apart; this hand "
                       "reaches {most} mm at most", first=f, second=g, apart=round(apart),
                       most=round(most))  # fmt: skip
    return say("no hand holds {pitch} and {other} like this together", **names)


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
