"""The instruments and hands we know, and how to name one's own.

Scale lengths, tunings and string spacings: common practice, no source.
"""

from __future__ import annotations

import re
from dataclasses import replace

from workbench.instrument.model import Hand, Instrument
from workbench.language.message import mark
from workbench.music.errors import BadInput
from workbench.music.model import STEP_SEMITONES

# id, name, tuning (string 1 first), scale length in mm, frets, string spacing in mm
_ROWS: tuple[tuple[str, str, tuple[int, ...], float, int, float], ...] = (
    ("ukulele", mark("Concert ukulele, high G"), (69, 64, 60, 67), 381.0, 18, 9.5),
    ("ukulele-soprano", mark("Soprano ukulele, high G"), (69, 64, 60, 67), 345.0, 12, 9.0),
    ("ukulele-soprano-low-g", mark("Soprano ukulele, low G"), (69, 64, 60, 55), 345.0, 12, 9.0),
    ("ukulele-concert-low-g", mark("Concert ukulele, low G"), (69, 64, 60, 55), 381.0, 18, 9.5),
    ("ukulele-tenor", mark("Tenor ukulele, high G"), (69, 64, 60, 67), 432.0, 19, 9.5),
    ("ukulele-low-g", mark("Tenor ukulele, low G"), (69, 64, 60, 55), 432.0, 19, 9.5),
    ("baritone-ukulele", mark("Baritone ukulele"), (64, 59, 55, 50), 510.0, 19, 9.5),
    ("guitar", mark("Classical guitar"), (64, 59, 55, 50, 45, 40), 650.0, 19, 8.6),
    ("tenor-guitar", mark("Tenor guitar (C G D A)"), (69, 62, 55, 48), 580.0, 19, 8.5),
    ("mandolin", mark("Mandolin"), (76, 69, 62, 55), 350.0, 20, 7.5),
    ("mandola", mark("Mandola"), (69, 62, 55, 48), 420.0, 20, 8.0),
    ("octave-mandolin", mark("Octave mandolin"), (64, 57, 50, 43), 510.0, 20, 8.5),
)
INSTRUMENTS: dict[str, Instrument] = {
    row[0]: Instrument(row[0], row[1], row[2], row[3], row[4], row[5]) for row in _ROWS
}

# A medium hand is comfortable with what charts of the guitar ask as a matter of course: one
# finger a fret in first position (1-4 98 mm, 2-4 63 mm), which is between the 95th and the
# 98th percentile of the spans in the 2,049 guitar shapes of chords-db 0.5.1 (1-2 44 mm is
# the 90th). Small and large hands: a seventh less and more (common practice, no source).
HANDS: dict[str, Hand] = {
    "small": Hand("small", 38.0, 84.0, 55.0, 62.0, 104.0, 78.0),
    "medium": Hand("medium", 44.0, 98.0, 64.0, 70.0, 118.0, 88.0),
    "large": Hand("large", 50.0, 112.0, 73.0, 80.0, 134.0, 100.0),
}

_NOTE = re.compile(r"^([A-Ga-g])([#b]?)(-?\d)$")


def _midi(name: str, whole: str) -> int:
    found = _NOTE.match(name.strip())
    if not found:
        raise BadInput(
            "Tuning '{whole}': '{name}' is no pitch; write each string like G4 or F#3.",
            whole=whole,
            name=name,
        )
    step, sign, octave = found.groups()
    return 12 * (int(octave) + 1) + STEP_SEMITONES[step.upper()] + {"": 0, "#": 1, "b": -1}[sign]


def instrument(name: str, capo: int = 0) -> Instrument:
    """The instrument of that id, or an own one such as ``custom:G4,C4,E4,A4@345``
    (highest-numbered string to string 1, then the scale length in mm).

    Raises BadInput where the name or capo makes no instrument.
    """
    if name.startswith("custom:"):
        base = _custom(name)
    elif name in INSTRUMENTS:
        base = INSTRUMENTS[name]
    else:
        known = ", ".join(INSTRUMENTS)
        raise BadInput(
            "Instrument '{name}' is not known; choose one of {known}, or an own tuning "
            "like custom:G4,C4,E4,A4@345.",
            name=name,
            known=known,
        )
    if not 0 <= capo <= base.frets - 5:
        raise BadInput(
            "Capo {capo}: on {base} it can sit on frets 0 to {frets}.",
            capo=capo,
            base=base.called,
            frets=base.frets - 5,
        )
    return replace(base, capo=capo) if capo else base


def _custom(name: str) -> Instrument:
    body, _, scale = name.removeprefix("custom:").partition("@")
    pitches = [_midi(p, name) for p in body.split(",") if p.strip()]
    if not 1 <= len(pitches) <= 10:
        raise BadInput(
            "Tuning '{name}': give 1 to 10 strings, highest-numbered string first.", name=name
        )
    try:
        scale_mm = float(scale) if scale else 381.0
    except ValueError:
        scale_mm = 0.0
    if not 200.0 <= scale_mm <= 1200.0:
        raise BadInput(
            "Tuning '{name}': the scale length after @ must be 200 to 1200 mm.", name=name
        )
    spacing = 9.5 if len(pitches) <= 4 else 8.6
    tuning = tuple(reversed(pitches))
    return Instrument(name, f"Own tuning {body}", tuning, scale_mm, 18, spacing)


def hand(name: str) -> Hand:
    """``small``, ``medium``, ``large``, or measured spans ``own:1-2,1-4,2-4`` in mm
    (comfortable; the greatest reach is taken as half as much again).

    Raises BadInput otherwise.
    """
    if name in HANDS:
        return HANDS[name]
    if name.startswith("own:"):
        try:
            a, b, c = (float(x) for x in name[4:].split(","))
        except ValueError:
            a = b = c = 0.0
        if 15 <= a <= 120 and 40 <= b <= 220 and 20 <= c <= 180 and a < b and c < b:
            return Hand(name, a, b, c, a * 1.5, b * 1.5, c * 1.5)
    raise BadInput(
        "Hand '{name}' is not known; choose small, medium, large, or own:34,74,53 "
        "(spans of fingers 1-2, 1-4 and 2-4 in mm).",
        name=name,
    )
