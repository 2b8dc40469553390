"""Right-hand fingers as an old edition prints them.

Matteo Carcassi, Méthode complète pour guitare, op. 59 (1836): the preludes in progressive
keys, edited by G. C. Santisteban (d. 1919), Bryn Mawr, Oliver Ditson, 1906; public domain, and
so is the transcription (Mutopia Project, ftp/CarcassiM/O59/CarcassiMethodPreludes, typeset by
Jeffrey Olson). Taken over by hand: the bars that print right-hand fingers and a bar beside
them where the figure goes on. A letter after a pitch is the finger printed there; most notes
have none. Bass notes stand in both voices, as printed. The little finger, printed once, is
left out.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from tests.fingering.build import piece
from workbench.music.model import Piece

#: number of the prelude: quarter notes a minute, length of a note, bars (upper | lower voice)
PRELUDES: dict[int, tuple[float, str, tuple[str, ...]]] = {
    1: (90, "1/2", (
        "C3p G3i C4m E4a E3 G3 C4 E4 | C3:2 E3:2",
        "A2 A3 C4 E4 C3 A3 C4 E4 | A2:2 C3:2",
    )),
    2: (60, "1/4", (
        "A2p A3i C4m A3i C4 A3 A2 A3 F3 A3 C4 A3 C4 A3 F3 A3 | A2:3/2 A2:1/2 F3:3/2 F3:1/2",
        "D3 A3 B3 A3 B3 A3 D3 A3 E3 G#3 B3 G#3 B3 G#3 E3 G#3 | D3:3/2 D3:1/2 E3:3/2 E3:1/2",
        "A2 A3 C4 A3 E4a A3i C4m A3i G2 G3 B3 G3 F4 G3 B3 G3 | A2:2 G2:2",
        "A2p E3p A3i E3 C4m A3 E4a C4 A3:1 r:1 | A2:2 A2:1 r:1",
    )),
    3: (60, "1/4", (
        "G2p B3i G4m B3i G3p B3 G4 B3 E3 B3 G4 B3 G3 B3 G4 B3 | G2:1 G3:1 E3:1 G3:1",
        "C3 C4 E4 C4 G3 C4 E4 C4 A2 C4 E4 C4 A3 C4 E4 C4 | C3:1 G3:1 A2:1 A3:1",
    )),
    4: (60, "1/4", (
        "E2p G3i B3m G4a G3i B3m E2 G3 B3 E4 G3 B3 | E2:3/2 E2:3/2",
        "E2 A3 C4 F#4 A3 C4 E2 A3 C4 E4 A3 C4 | E2:3/2 E2:3/2",
    )),
    5: (60, "1/4", (
        "D3p A3i D4m A3i F#4a A3i D4m A3i D#3 A3 B3 A3 F#4 A3 B3 A3 | D3:2 D#3:2",
        "E3 G3 B3 G3 G4 G3 B3 G3 A2 A3 C#4 A3 G4 A3 C#4 A3 | E3:2 A2:2",
    )),
    6: (72, "1/3", (
        "B2p F#3p B3i D4m B3i F#3p F#4a D4m B3i | B2:2 r:1",
        "B2 F#3 B3 D4 B3 F#3 F#4 D4 B3 | B2:2 r:1",
    )),
    7: (60, "1/4", (
        "A2p A3i C#4m A3i C#4m A3i A2p A3i C#4m A3i E4m A3i | A2:3/2 A2:3/2",
        "D3 A3 B3 A3 B3 A3 D3 A3 B3 A3 F#4 A3 | D3:3/2 D3:3/2",
        "A3m A3i C#4m C#4i E4m E4i A4+C#4:1 r:1/2 | A2:3/2 A2:1 r:1/2",
    )),
    8: (60, "1/4", (
        "F#3p A3i C#4m A3i F#4a A3 C#4 A3 F#3 A3 C#4 F#4 | F#3:2 F#3:1",
        "D3 A3 D4 A3 F#4 A3 D4 A3 D3 A3 D4 F#4 | D3:2 D3:1",
    )),
    9: (60, "1/4", (
        "E2 B3i E4m B3i G#4a B3i E4m B3i E2 B3 E4 B3 G#4 B3 E4 B3 | E2:2 E2:2",
        "E2p B2p E3p G#3i B3m E4i G#4m B4i E4m+G#3i:2 | E2:2 E2:2",
    )),
    10: (120, "1/2", (
        "C#3 G#3 C#4 E4 C#4 G#3 C#3p G#3i C#4m E4a C#4m G#3i | C#3:3 C#3:3",
    )),
    11: (60, "1/4", (
        "F3 A3 C4 F4 C4 A3 F3p A3i C4m F4a C4m A3i | F3:3/2 F3:3/2",
        "C3 G3 C4 E4 C4 G3 C3 G3 C4 E4 C4 G3 | C3:3/2 C3:3/2",
    )),
    12: (60, "1/4", (
        "D3p A3i D4m A3i F4a A3i D4m A3i D3 Bb3 C#4 Bb3 G4 Bb3 C#4 Bb3 | D3:2 D3:2",
        "D3 A3 D4 A3 F4 A3 D4 A3 D3 D4 F3 D4 D3 D4 C3 D4 | D3:2 D3:1/2 F3:1/2 D3:1/2 C3:1/2",
    )),
    13: (120, "1/2", (
        "Bb2p F3p Bb3i D4m F4a Bb4 Bb2:1 r:2 | Bb2:3 Bb2:1 r:2",
    )),
}  # fmt: skip
FINGERS = "pima"


@dataclass(frozen=True)
class Printed:
    """A prelude's bars and the right finger that the edition prints, by note id."""

    piece: Piece
    fingers: dict[str, str]


def printed(number: int) -> Printed:
    """The bars of a prelude and what is printed at them."""
    tempo, value, bars = PRELUDES[number]
    made, marks = [], {}
    for index, text in enumerate(bars):
        voices = []
        for voice, part in enumerate(text.split("|"), 1):
            words = []
            for place, word in enumerate(part.split()):
                names, _, length = word.partition(":")
                for letter, name in zip("abcdef", names.split("+"), strict=False):
                    if name[-1] in FINGERS:
                        marks[f"b{index}v{voice}n{place}{letter}"] = name[-1]
                bare = (
                    "+".join(n.rstrip(FINGERS) for n in names.split("+")) if names != "r" else "r"
                )
                words.append(f"{bare}:{length or value}")
            voices.append(" ".join(words))
        made.append(" | ".join(voices))
    return Printed(replace(piece(*made, tempo=tempo), title=f"Prelude {number}"), marks)
