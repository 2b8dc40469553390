"""Right-hand figures as in Mauro Giuliani's opus 1, the 120 arpeggios (public domain).

From memory; no source is at hand, so that the figures bear names of what they do and not
the numbers of the print. Their frame is the print's: a bar of C and a bar of the dominant
seventh on G, held by the left hand while the right repeats one figure. The thumb has the
bass strings, index, middle and ring finger have strings 3, 2 and 1 each, save where a
figure says otherwise.

A figure is a row of strokes; a stroke is a finger and what it plucks, joined by + where
several pluck together: ``b`` is the bass of the chord, ``t`` the string above the bass, a
number a string.
"""

from __future__ import annotations

from fractions import Fraction

from workbench.fingering.types import Pin
from workbench.music.model import Bar, Key, Note, Piece, Pitch

#: name, strokes
FIGURES: tuple[tuple[str, str], ...] = (
    ("up three", "pb i3 m2"),
    ("up three, high", "pb m2 a1"),
    ("down three", "pb m2 i3"),
    ("up four", "pb i3 m2 a1"),
    ("down four", "pb a1 m2 i3"),
    ("up and down, two strings", "pb i3 m2 i3"),
    ("up and down, high", "pb m2 a1 m2"),
    ("down and up, two strings", "pb m2 i3 m2"),
    ("up and down, three strings", "pb i3 m2 a1 m2 i3"),
    ("down and up, three strings", "pb a1 m2 i3 m2 a1"),
    ("up, skip back", "pb i3 a1 m2"),
    ("middle, index, ring", "pb m2 i3 a1"),
    ("ring, index, middle", "pb a1 i3 m2"),
    ("middle, ring, index", "pb m2 a1 i3"),
    ("index and ring", "pb i3 a1 i3"),
    ("ring and index", "pb a1 i3 a1"),
    ("up four, middle again", "pb i3 m2 a1 i3 m2 a1 m2"),
    ("pinch outside, then up", "pb+a1 i3 m2"),
    ("pinch outside, then down", "pb+a1 m2 i3"),
    ("pinch outside, up and down", "pb+a1 i3 m2 i3"),
    ("pinch outside, down and up", "pb+a1 m2 i3 m2"),
    ("pinch inside, then up", "pb+m2 i3 a1"),
    ("pinch inside, then ring", "pb+i3 m2 a1 m2"),
    ("bass, then two low", "pb i3+m2"),
    ("bass, then two high", "pb m2+a1"),
    ("bass, then outer two", "pb i3+a1"),
    ("bass, then three", "pb i3+m2+a1"),
    ("bass, three, three again", "pb i3+m2+a1 i3+m2+a1"),
    ("four at once", "pb+i3+m2+a1"),
    ("bass, two low, ring", "pb i3+m2 a1"),
    ("bass, ring, two low", "pb a1 i3+m2"),
    ("bass, index, two high", "pb i3 m2+a1"),
    ("bass, two high, index", "pb m2+a1 i3"),
    ("thumb on two strings, up", "pb pt i3 m2 a1"),
    ("thumb on two strings, down", "pb pt a1 m2 i3"),
    ("thumb, up, thumb, up", "pb i3 m2 pt i3 m2"),
    ("thumb and figure by turns", "pb i3 m2 a1 pt a1 m2 i3"),
    ("thumb and pinch by turns", "pb i3 pt+a1 m2"),
)

#: the fingers that do as well on strings 2 and 1 where a figure has no others, as Carcassi's
#: method prints them (right_printed.py, prelude 3)
ALSO = {"up three, high": "pim", "up and down, high": "pimi", "bass, then two high": "pim"}

#: fret and left finger by string, string 1 first, and the bass string: C, and G7 over G
CHORDS = (
    ({1: (0, 0), 2: (1, 1), 3: (0, 0), 4: (2, 2), 5: (3, 3)}, 5),
    ({1: (1, 1), 2: (0, 0), 3: (0, 0), 4: (0, 0), 5: (2, 2), 6: (3, 3)}, 6),
)
OPEN = {1: 64, 2: 59, 3: 55, 4: 50, 5: 45, 6: 40}
SPELT = {0: ("C", 0), 2: ("D", 0), 4: ("E", 0), 5: ("F", 0), 7: ("G", 0), 9: ("A", 0), 11: ("B", 0)}


def strokes_of(text: str, bass: int) -> list[list[tuple[str, int]]]:
    """The strokes of a figure as (finger, string), over a bass on that string."""
    named = {"b": bass, "t": bass - 1}
    return [
        [(pluck[0], named.get(pluck[1]) or int(pluck[1])) for pluck in stroke.split("+")]
        for stroke in text.split()
    ]


def study(text: str, times: int = 2) -> tuple[Piece, tuple[Pin, ...], dict[str, str]]:
    """A figure, so many times in each chord: the piece in quavers at 80 crotchets a minute,
    pins that hold the left hand in the chord, and the figure's right finger by note id."""
    bars, pins, fingers = [], [], {}
    step = Fraction(1, 2)
    for index, (held, bass) in enumerate(CHORDS):
        row = strokes_of(text, bass) * times
        notes = []
        for place, stroke in enumerate(row):
            for finger, string in stroke:
                fret, left = held[string]
                midi = OPEN[string] + fret
                name, alter = SPELT[midi % 12]
                note = Note(
                    f"n{index}-{place}-{string}", place * step, step,
                    Pitch(name, alter, midi // 12 - 1), 2 if finger == "p" else 1,
                )  # fmt: skip
                notes.append(note)
                pins.append(Pin(note.id, string=string, fret=fret, left=left))
                fingers[note.id] = finger
        ordered = tuple(sorted(notes, key=lambda n: (n.onset, n.voice, -n.midi)))
        bars.append(
            Bar(
                index=index,
                number=str(index + 1),
                time_signature=(len(row), 8),
                length=len(row) * step,
                notes=ordered,
            )
        )
    return Piece("Figure", tuple(bars), key=Key(0), tempo=80.0), tuple(pins), fingers
