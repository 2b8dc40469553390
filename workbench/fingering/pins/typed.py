"""Fingerings typed by hand, one figure a note as in tablature, and what they leave open.

A figure is a fret, ``3``; with its string, ``2/3``; with a left finger after a dot,
``3.1`` or ``2/3.1``; with a right finger, ``3.1i`` or only ``i``. A ``-`` leaves the note
to the engine.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from workbench.fingering.types import Pin
from workbench.instrument.model import Instrument
from workbench.music.errors import BadInput
from workbench.music.model import Bar, Note

FIGURE = re.compile(
    r"(?:(?P<string>\d+)/)?(?P<fret>\d+)?(?:\.(?P<left>[0-4]))?(?P<right>[pima])?", re.IGNORECASE
)
FREE = "-"


def in_order(bar: Bar) -> tuple[Note, ...]:
    """The notes of a bar in the order in which figures are typed: as they sound, the
    highest of those that begin together first."""
    return tuple(sorted(bar.notes, key=lambda n: (n.onset, not n.grace, -n.midi, n.id)))


def read_figures(text: str, notes: Sequence[Note], instrument: Instrument) -> tuple[Pin, ...]:
    """The pins that a line of figures asks for, one for each note that is not left free.

    Fewer figures than notes leave the rest free. Raises BadInput for a figure that is
    none, or more of them than there are notes.
    """
    words = text.split()
    if len(words) > len(notes):
        raise BadInput(
            "{typed} figures for {notes} notes; type one figure for each note.",
            typed=len(words),
            notes=len(notes),
        )
    out = []
    for at, (word, note) in enumerate(zip(words, notes, strict=False), 1):
        pin = _figure(word, note.id)
        if pin is None:
            raise BadInput(
                "Figure {at}, '{word}', cannot be read; write a fret such as 3, string "
                "and fret such as 2/3, a finger after a dot such as 2/3.1, p i m or a, "
                "or - for any.",
                at=at,
                word=word,
            )
        if pin != Pin(note.id):
            out.append(complete(pin, note, instrument))
    return tuple(out)


def _figure(word: str, note: str) -> Pin | None:
    if word == FREE:
        return Pin(note)
    found = FIGURE.fullmatch(word)
    if found is None or not word:
        return None
    string, fret, left = (
        None if found[name] is None else int(found[name]) for name in ("string", "fret", "left")
    )
    return Pin(
        note,
        string=string,
        fret=fret,
        left=left,
        right=found["right"].lower() if found["right"] else None,
    )


def write_figures(pins: Sequence[Pin], notes: Sequence[Note]) -> str:
    """The line of figures that asks for these pins; "" where there are none."""
    asked = {pin.note: pin for pin in pins}
    words = [figure(asked.get(n.id, Pin(n.id))) for n in notes]
    while words and words[-1] == FREE:
        words.pop()
    return " ".join(words)


def figure(pin: Pin) -> str:
    """One note's figure."""
    string = "" if pin.string is None else f"{pin.string}/"
    fret = "" if pin.fret is None else str(pin.fret)
    left = "" if pin.left is None else f".{pin.left}"
    return f"{string}{fret}{left}{pin.right or ''}" or FREE


def complete(pin: Pin, note: Note, instrument: Instrument) -> Pin:
    """The pin with what follows from it: the fret from the string, the string from the
    fret, no finger on an open string. What sounds another pitch is left as it is."""
    places = [
        (s, r)
        for s, r in instrument.places(note.midi)
        if pin.string in (None, s) and pin.fret in (None, r)
    ]
    if (pin.string, pin.fret) != (None, None) and len(places) == 1:
        pin = replace(pin, string=places[0][0], fret=places[0][1])
    if pin.fret == 0 and pin.left is None and (pin.string, 0) in places:
        pin = replace(pin, left=0)
    return pin
