"""First-position scales: one finger a fret (method books, from memory).

On the guitar under the school of that name; editions of the nineteenth century, which the
common weights follow, give fret 3 near the floor to finger 4.

On a guitar in standard tuning first position ends at fret 4 of string 1 (G sharp 4), so that two
octaves of G major fit (G2 to G4) and C major runs from C3 to G4, an octave and a fifth.
The ukulele with high G has one octave of C major there.
"""

from __future__ import annotations

import pytest

from tests.fingering.build import piece
from workbench.fingering.engine import solve
from workbench.fingering.types import Settings
from workbench.instrument.table import hand, instrument

G_MAJOR = "G2 A2 B2 C3 D3 E3 F#3 G3 A3 B3 C4 D4 E4 F#4 G4"
C_MAJOR = "C3 D3 E3 F3 G3 A3 B3 C4 D4 E4 F4 G4"
SCALES = {
    "guitar, C major, an octave": ("guitar", "C3 D3 E3 F3 G3 A3 B3 C4"),
    "guitar, C major, to the end of the position": ("guitar", C_MAJOR),
    "guitar, G major, an octave": ("guitar", "G2 A2 B2 C3 D3 E3 F#3 G3"),
    "guitar, G major, the upper octave": ("guitar", "G3 A3 B3 C4 D4 E4 F#4 G4"),
    "guitar, G major, two octaves": ("guitar", G_MAJOR),
    "ukulele, C major, an octave": ("ukulele", "C4 D4 E4 F4 G4 A4 B4 C5"),
}


@pytest.mark.parametrize("way", ["up", "down", "up and down"])
@pytest.mark.parametrize("level", ["beginner", "middle"])
@pytest.mark.parametrize("name", SCALES)
def test_one_finger_a_fret(name: str, way: str, level: str) -> None:
    on, names = SCALES[name]
    rising = names.split()
    row = {"up": rising, "down": rising[::-1], "up and down": rising + rising[-2::-1]}[way]
    music = piece(" ".join(f"{n}:1/2" for n in row))
    f = solve(
        music,
        instrument(on),
        hand("medium"),
        settings=Settings(level=level, school="" if on == "ukulele" else "finger-a-fret"),
    )
    notes = f.bars[0].notes
    assert [n.left for n in notes] == [n.fret for n in notes]
    assert max(n.fret or 0 for n in notes) <= 4
    assert f.optimal and f.audit.cut == 0
