"""The fingering that a score prints, as pins on the piece laid on an instrument."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from itertools import combinations

from workbench.fingering.hand.grips import grips, neck
from workbench.fingering.lattice.layers import moments_of
from workbench.fingering.pins.conflicts import reason_against
from workbench.fingering.types import Pin
from workbench.instrument.model import Hand, Instrument
from workbench.language.fact import Fact, Value, fact
from workbench.music.model import Note, Piece, WrittenFingers

#: Share of the printed marks that may miss the instrument before they are taken to be
#: another instrument's; common practice, no source.
MOST_ASTRAY = Fraction(1, 4)

Mark = tuple[str, str]  # note id, and "left" or "place"
What = tuple[str, dict[str, Value]]  # kind of a fact, and fields


@dataclass(frozen=True)
class LeftOut:
    """A printed mark that no hand can play, or ("" for the note) all that are another
    instrument's. ``reason`` tells its bar and beat."""

    note: str
    bar_number: str
    beat: Fraction
    reason: Fact


@dataclass(frozen=True)
class PrintedPins:
    """What is held of the printed fingering, and what is not."""

    pins: tuple[Pin, ...] = ()
    left_out: tuple[LeftOut, ...] = ()


def printed_pins(
    piece: Piece, instrument: Instrument, hand: Hand, *, chosen: bool = True
) -> PrintedPins:
    """Pins for what the source prints and what still fits.

    A finger without its string is held where the note still has the pitch it was printed
    for; a place on the neck where it sounds the note on this instrument; a plucking finger
    in any case. Where not all marks of a moment can be played together, the fewest possible
    are left out and named. ``chosen``: the instrument is somebody's choice, so that the
    fingers of a part that does not say whose they are may be meant for it.
    """
    by_note = {w.note: w for w in piece.written if chosen or not w.doubtful}
    if not _fits(piece, by_note, instrument):
        return _another_instruments(piece, by_note, instrument)
    check = _Check(piece, instrument, hand)
    pins: list[Pin] = []
    left_out: list[LeftOut] = []
    for bar in piece.bars:
        for onset, together in moments_of(bar.notes):
            asked = {
                n.id: _meant(by_note[n.id], n, instrument)
                for n in together
                if n.id in by_note and instrument.places(n.midi)
            }
            if not asked:
                continue
            beat = onset * bar.time_signature[1] / 4 + 1
            kept, faults = check.moment(together, asked)
            pins += [p for p in kept.values() if p != Pin(p.note)]
            for note, (kind, what), why in faults:
                reason = fact(kind, bar=bar.number, beat=float(beat), **what, why=(why,))
                left_out.append(LeftOut(note, bar.number, beat, reason))
    return PrintedPins(tuple(pins), tuple(left_out))


def prints_for(piece: Piece, instrument: Instrument) -> bool:
    """Whether the score is an edition for this instrument: it prints fingering that is meant
    for a plucked one and fits this one, and the instrument has every note."""
    marks = {w.note: w for w in piece.written if not w.doubtful}
    if not marks or not all(instrument.places(n.midi) for n in piece.notes):
        return False
    notes = [n for n in piece.notes if n.id in marks and n.midi == marks[n.id].midi]
    return bool(notes) and _fits(piece, marks, instrument)


def can_mean(piece: Piece, instrument: Instrument) -> bool:
    """Whether what the score prints can be meant for this instrument, doubtful or not."""
    return _fits(piece, {w.note: w for w in piece.written}, instrument)


def _fits(piece: Piece, marks: Mapping[str, WrittenFingers], instrument: Instrument) -> bool:
    notes = [n for n in piece.notes if n.id in marks and n.midi == marks[n.id].midi]
    astray = sum(_slip(_asked(marks[n.id]), n, instrument) for n in notes)
    return astray <= MOST_ASTRAY * len(notes)


def _asked(written: WrittenFingers) -> Pin:
    return Pin(
        written.note,
        string=written.string,
        fret=written.fret,
        left=written.left,
        right=written.right,
    )


def _slip(pin: Pin, note: Note, instrument: Instrument) -> bool:
    """Whether a note's mark can be meant nowhere on this instrument."""
    places = instrument.places(note.midi)
    fits = [
        fret
        for string, fret in places
        if pin.string in (None, string)
        and pin.fret in (None, fret)
        and (pin.left is None or (pin.left == 0) == (fret == 0))
    ]
    return bool(places) and not fits


def _meant(written: WrittenFingers, note: Note, instrument: Instrument) -> Pin:
    """The mark of a note as it can be meant here: a note that has moved keeps no finger
    without a place, and only a place that sounds it."""
    pin = _asked(written)
    if written.midi == note.midi:
        return pin
    place = _place(written, note, instrument)
    if place is None:
        return Pin(written.note, right=written.right)
    left = None if written.left is None or (written.left == 0) != (place[1] == 0) else written.left
    string, fret = place
    return Pin(written.note, string=string, fret=fret, left=left, right=written.right)


def _place(written: WrittenFingers, note: Note, instrument: Instrument) -> tuple[int, int] | None:
    """String and fret as printed; where one of them is missing the one that fits it."""
    if written.string is None and written.fret is None:
        return None
    fits = [
        (string, fret)
        for string, fret in instrument.places(note.midi)
        if written.string in (None, string) and written.fret in (None, fret)
    ]
    return fits[0] if len(fits) == 1 else None


def _another_instruments(
    piece: Piece, by_note: dict[str, WrittenFingers], instrument: Instrument
) -> PrintedPins:
    """Nothing of the left hand, for another instrument's strings or fingers are meant."""
    pins = tuple(
        Pin(n.id, right=by_note[n.id].right)
        for n in piece.notes
        if n.id in by_note and by_note[n.id].right
    )
    told = fact("print for another", instrument=instrument.id)
    return PrintedPins(pins, (LeftOut("", piece.bars[0].number, Fraction(1), told),))


class _Check:
    """What a hand can hold of the marks of one moment; equal moments are looked at once."""

    def __init__(self, piece: Piece, instrument: Instrument, hand: Hand) -> None:
        self.instrument, self.hand, self.neck = instrument, hand, neck(instrument, hand)
        self._known: dict[object, frozenset[tuple[int, str]]] = {}

    def moment(
        self, together: Sequence[Note], asked: dict[str, Pin]
    ) -> tuple[dict[str, Pin], list[tuple[str, What, Fact]]]:
        """The pins that are held, and (note id, what is left out, why)."""
        notes, asked = _one_sound_each(together, asked)
        key = tuple((n.midi, replace(asked.get(n.id, Pin("")), note="")) for n in notes)
        if key not in self._known:
            self._known[key] = frozenset(
                (at, field)
                for at, n in enumerate(notes)
                for note, field in self._least(notes, asked)
                if note == n.id
            )
        off = {(notes[at].id, field) for at, field in self._known[key]}
        if not off:
            return asked, []
        why = reason_against(notes, asked, self.instrument, self.hand, self.neck)
        kept = _without(asked, off)
        names = {n.id: n.pitch.name for n in notes}
        faults = []
        for note in dict.fromkeys(note for note, _ in sorted(off)):
            what = _what(asked[note], [f for n, f in off if n == note], names[note])
            faults.append((note, what, why))
        return kept, faults

    def _least(self, notes: Sequence[Note], asked: dict[str, Pin]) -> tuple[Mark, ...]:
        """The fewest marks without which the others can be held; fingers go before places
        and lower notes before higher ones."""
        if self._held(notes, asked):
            return ()
        if not grips(notes, self.instrument, self.neck, {}):
            # not all of it can be played anyway; what is printed goes before what is not
            notes = [n for n in notes if n.id in asked]
        marks = [
            (n.id, field)
            for field in ("left", "place")
            for n in reversed(notes)
            if n.id in asked and _says(asked[n.id], field)
        ]
        for size in range(len(marks) + 1):
            for off in combinations(marks, size):
                if self._held(notes, _without(asked, set(off))):
                    return off
        return tuple(marks)

    def _held(self, notes: Sequence[Note], pins: dict[str, Pin]) -> bool:
        return bool(grips(notes, self.instrument, self.neck, pins))


def _says(pin: Pin, field: str) -> bool:
    return pin.left is not None if field == "left" else (pin.string, pin.fret) != (None, None)


def _without(pins: dict[str, Pin], off: set[Mark]) -> dict[str, Pin]:
    out = dict(pins)
    for note, field in off:
        if field == "left":
            out[note] = replace(out[note], left=None)
        else:
            out[note] = replace(out[note], string=None, fret=None)
    return out


def _what(pin: Pin, fields: Sequence[str], pitch: str) -> What:
    """What is printed at a note and left out: the kind of the fact and its fields."""
    if "place" not in fields:
        return "printed finger", {"finger": pin.left or 0, "note": pitch}
    if pin.string is not None:
        return "printed string", {"string": pin.string, "note": pitch}
    return "printed fret", {"fret": pin.fret or 0, "note": pitch}


def _one_sound_each(
    together: Sequence[Note], asked: dict[str, Pin]
) -> tuple[list[Note], dict[str, Pin]]:
    """Two stems of one pitch as one note where their marks agree; a unison that is printed
    with two fingers or on two strings stays two."""
    notes: list[Note] = []
    pins: dict[str, Pin] = {}
    for n in together:
        pin = asked.get(n.id)
        alike = [first for first in notes if first.midi == n.midi]
        for first in alike:
            both = _both(pins.get(first.id, Pin(first.id)), pin)
            if both is not None:
                if both != Pin(first.id):
                    pins[first.id] = both
                break
        else:
            notes.append(n)
            if pin is not None:
                pins[n.id] = replace(pin, apart=bool(alike))
    return notes, pins


def _both(one: Pin, other: Pin | None) -> Pin | None:
    """The marks of both; None where they contradict each other."""
    if other is None:
        return one
    out = one
    for field in ("string", "fret", "left", "right"):
        mine, theirs = getattr(one, field), getattr(other, field)
        if field != "right" and None not in (mine, theirs) and mine != theirs:
            return None
        if mine is None:
            out = replace(out, **{field: theirs})
    return out
