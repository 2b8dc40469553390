"""The moments of a bar: which fingers are down, what begins, where they come from."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from fractions import Fraction

from workbench.fingering.types import Barre, FingeredBar, FingeredNote, Pin
from workbench.music.remembered import remembered


@dataclass(frozen=True)
class Moment:
    """What sounds when something begins: the notes that begin, and those still held."""

    onset: Fraction
    begins: tuple[FingeredNote, ...]
    held: tuple[FingeredNote, ...]
    planted: tuple[tuple[int, int, int], ...] = ()  # finger, string, fret: stays down unasked
    barres: tuple[Barre, ...] = ()  # of the whole bar

    @property
    def notes(self) -> tuple[FingeredNote, ...]:
        return (*self.begins, *self.held)

    @property
    def pressed(self) -> dict[tuple[int, int], int]:
        """(string, fret) to the left finger on it, sounding or not; open strings have none."""
        down = {(string, fret): finger for finger, string, fret in self.planted}
        down |= {
            (n.string, n.fret): n.left
            for n in self.notes
            if n.left and n.string is not None and n.fret
        }
        return down


@dataclass(frozen=True)
class Way:
    """A left finger's way from one (string, fret) place to another."""

    finger: int
    start: tuple[int, int]
    end: tuple[int, int]


@remembered
def moments(bar: FingeredBar) -> tuple[Moment, ...]:
    """The moments of a bar in order."""
    out = []
    for onset in sorted({note.onset for note in bar.notes}):
        begins = tuple(note for note in bar.notes if note.onset == onset)
        held = tuple(n for n in bar.notes if n.onset < onset < n.onset + n.held)
        planted = tuple(row[1:] for row in bar.planted if row[0] == onset)
        out.append(Moment(onset, begins, held, planted, bar.barres))
    return tuple(out)


def moment_of(bar: FingeredBar, note: str | None) -> Moment | None:
    """The moment at which the note begins, else the first of the bar."""
    found = moments(bar)
    for moment in found:
        if any(n.id == note for n in moment.begins):
            return moment
    return found[0] if found else None


def pinned(bar: FingeredBar, pins: Iterable[Pin]) -> FingeredBar:
    """The bar with the teacher's word already on it, before it is fingered anew: pins
    hold whatever they cost."""
    word = {pin.note: pin for pin in pins}
    notes = tuple(_pinned(note, word[note.id]) if note.id in word else note for note in bar.notes)
    return bar if notes == bar.notes else replace(bar, notes=notes)


def _pinned(note: FingeredNote, pin: Pin) -> FingeredNote:
    moved = pin.string is not None and (pin.string, pin.fret) != (note.string, note.fret)
    left = pin.left if pin.left is not None or moved else note.left
    return replace(
        note,
        string=note.string if pin.string is None else pin.string,
        fret=note.fret if pin.fret is None else pin.fret,
        left=left,
        right=pin.right or note.right,
        pinned=True,
    )


def ways(before: Moment | None, after: Moment | None) -> tuple[Way, ...]:
    """Which fingers go elsewhere between two moments. A barre goes nowhere while its strings
    are played in turn."""
    if before is None or after is None:
        return ()
    start, end = _by_finger(before), _by_finger(after)
    barres = (*before.barres, *after.barres)
    out = []
    for finger in sorted(start.keys() & end.keys()):
        lying = {(s, b.fret) for b in barres if b.finger == finger for s in b.strings}
        pairs = [(a, b) for a in start[finger] for b in end[finger]]
        if not any(a == b or (a[1] == b[1] and {a, b} <= lying) for a, b in pairs):
            nearest = min(pairs, key=lambda p: (abs(p[0][0] - p[1][0]), abs(p[0][1] - p[1][1]), p))
            out.append(Way(finger, *nearest))
    return tuple(out)


def _by_finger(moment: Moment) -> dict[int, list[tuple[int, int]]]:
    """Every left finger's places."""
    out: dict[int, list[tuple[int, int]]] = {}
    for place, finger in moment.pressed.items():
        out.setdefault(finger, []).append(place)
    return out
