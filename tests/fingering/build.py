"""Small music of our own, written as text, for the tests of the engine."""

from __future__ import annotations

from fractions import Fraction

from workbench.music.model import Bar, Note, Piece, Pitch

LETTERS = {"C": 0, "D": 2, "E": 4, "F": 5, "G": 7, "A": 9, "B": 11}


def pitch(name: str) -> Pitch:
    alter = name.count("#") - name[1:].count("b")
    return Pitch(name[0], alter, int(name[-1]))


def notes(text: str, bar: int, voice: int) -> tuple[list[Note], Fraction]:
    """``C4:1 E4+G4:1/2 r:1`` gives a crotchet, a chord of two quavers, a rest."""
    at, out = Fraction(0), []
    for i, word in enumerate(text.split()):
        names, _, length = word.partition(":")
        duration = Fraction(length or "1")
        if names != "r":
            for j, name in enumerate(names.split("+")):
                out.append(
                    Note(f"b{bar}v{voice}n{i}{'abcdef'[j]}", at, duration, pitch(name), voice)
                )
        at += duration
    return out, at


def piece(*bars: str, tempo: float = 90.0, **marks: dict[int, dict[str, object]]) -> Piece:
    """A piece of bars; voices of a bar are parted by ``|``. ``marks={0: {...}}``
    sets fields of bars by index."""
    made = []
    for index, text in enumerate(bars):
        found: list[Note] = []
        length = Fraction(0)
        for voice, part in enumerate(text.split("|"), 1):
            some, end = notes(part, index, voice)
            found += some
            length = max(length, end)
        extra = marks.get("marks", {}).get(index, {})
        found.sort(key=lambda n: (n.onset, n.voice))
        made.append(
            Bar(
                index=index,
                number=str(index + 1),
                time_signature=(max(1, int(length)), 4),
                length=length,
                notes=tuple(found),
                **extra,
            )
        )
    return Piece("Trial", tuple(made), tempo=tempo)
