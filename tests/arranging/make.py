"""Small pieces for these tests, written as text or drawn by hypothesis."""

from __future__ import annotations

from fractions import Fraction

from hypothesis import strategies as st

from workbench.arranging.transpose import _at, spelled
from workbench.music.model import Bar, Key, Note, Piece, Pitch

C_MAJOR = Key(0)

#: A descant, a tune and a bass, each a part of its own, in ABC.
THREE_LINES = """X:1
T:Three lines
M:4/4
L:1/4
K:C
V:1
g2 a2|g4|
V:2
E F E D|C4|
V:3
C,2 F,2|C,4|
"""


def pitch(name: str) -> Pitch:
    """``F#4`` or ``Bb3`` as a pitch."""
    step, middle, octave = name[0], name[1:-1], int(name[-1])
    return Pitch(step, middle.count("#") - middle.count("b"), octave)


def piece(*voices: str, meter: tuple[int, int] = (4, 4), key: Key = C_MAJOR) -> Piece:
    """Voices as text: notes ``C4:2`` (quarter lengths, 1 when left out), chords
    ``C4+E4:2``, rests ``-``; ``|`` between bars."""
    bars: dict[int, list[Note]] = {}
    full = Fraction(4 * meter[0], meter[1])
    count = 0
    for voice, text in enumerate(voices, 1):
        for index, words in enumerate(text.split("|")):
            at = Fraction(0)
            for word in words.split():
                names, _, length = word.partition(":")
                duration = Fraction(length or 1)
                for name in names.split("+"):
                    if name != "-":
                        note = Note(f"n{count}", at, duration, pitch(name), voice)
                        bars.setdefault(index, []).append(note)
                        count += 1
                at += duration
    size = max(len(text.split("|")) for text in voices)
    return Piece(
        "Made",
        tuple(
            Bar(
                index=i,
                number=str(i + 1),
                time_signature=meter,
                length=full,
                notes=tuple(sorted(bars.get(i, []), key=lambda n: (n.onset, n.voice))),
                key=key,
            )
            for i in range(size)
        ),
        key=key,
    )


@st.composite
def pieces(draw, lowest: int = 36, highest: int = 96, voices: int = 3) -> Piece:
    """Pieces of one to four bars and up to three voices, spelled within their key."""
    key = Key(draw(st.integers(-5, 5)), draw(st.sampled_from(["major", "minor"])))
    bars = []
    count = 0
    for index in range(draw(st.integers(1, 4))):
        notes = []
        for voice in range(1, draw(st.integers(1, voices)) + 1):
            at = Fraction(0)
            while at < 4:
                length = Fraction(draw(st.sampled_from(["1/2", "1", "3/2", "2", "1/3"])))
                length = min(length, 4 - at)
                for _ in range(draw(st.sampled_from([0, 1, 1, 1, 2, 3]))):
                    midi = draw(st.integers(lowest, highest))
                    # chromatic notes from five fifths below the tonic to six above it
                    fifth = next(
                        f for f in range(key.fifths - 5, key.fifths + 7) if (7 * f - midi) % 12 == 0
                    )
                    notes.append(Note(f"n{count}", at, length, _at(*spelled(fifth), midi), voice))
                    count += 1
                at += length
        bars.append(
            Bar(
                index=index,
                number=str(index + 1),
                time_signature=(4, 4),
                length=Fraction(4),
                notes=tuple(notes),
                key=key,
            )
        )
    return Piece("Drawn", tuple(bars), key=key)
