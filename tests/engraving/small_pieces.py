"""Small pieces and fingerings written out by hand for the tests of engraving and handout."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction

from workbench.fingering.types import Audit, FingeredBar, FingeredNote, Fingering
from workbench.instrument.model import Instrument
from workbench.music.model import Bar, ChordName, Key, Note, Piece, Pitch


def pitch(name: str) -> Pitch:
    step, rest = name[0], name[1:]
    octave = int(rest[-1])
    return Pitch(step, rest.count("#") - rest.count("b"), octave)


def voice(words: str, number: int, start: int, bar: int) -> list[Note]:
    """``C4:1 E4+G4:1/2 r:1 D4:1/3t``: pitches, colon, quarter length, t for triplet."""
    at = Fraction(0)
    out: list[Note] = []
    for word in words.split():
        names, _, length = word.partition(":")
        triplet = length.endswith("t")
        duration = Fraction(length.rstrip("t"))
        if names != "r":
            for name in names.split("+"):
                out.append(
                    Note(
                        f"b{bar}v{number}n{start + len(out)}",
                        at,
                        duration,
                        pitch(name),
                        voice=number,
                        tuplet=(3, 2) if triplet else None,
                    )
                )
        at += duration
    return out


def bar(index: int, *voices: str, meter: tuple[int, int] = (4, 4), **more: object) -> Bar:
    notes = [n for k, words in enumerate(voices, 1) for n in voice(words, k, 0, index)]
    notes.sort(key=lambda n: (n.onset, n.voice))
    length = Fraction(4 * meter[0], meter[1])
    made = Bar(
        index=index, number=str(index + 1), time_signature=meter, length=length, notes=tuple(notes)
    )
    return replace(made, **more)  # type: ignore[arg-type]


def piece(bars: Sequence[Bar], title: str = "Small piece", **more: object) -> Piece:
    return Piece(title, tuple(bars), **more)  # type: ignore[arg-type]


def fingered(piece: Piece, instrument: Instrument) -> Fingering:
    """A plain first-position fingering: lowest fret on a free string, one finger a fret."""
    bars = []
    for bar in piece.bars:
        taken: dict[Fraction, set[int]] = {}
        notes = []
        for note in sorted(bar.notes, key=lambda n: (n.onset, -n.midi)):
            used = taken.setdefault(note.onset, set())
            places = [p for p in instrument.places(note.midi) if p[0] not in used]
            place = min(places, key=lambda p: p[1], default=None)
            if place:
                used.add(place[0])
            left = min(4, place[1]) if place else None
            right = "pima"[min(3, max(0, instrument.strings - place[0]))] if place else None
            notes.append(
                FingeredNote(
                    note.id,
                    bar.index,
                    note.onset,
                    note.duration,
                    note.midi,
                    string=place[0] if place else None,
                    fret=place[1] if place else None,
                    left=left,
                    right=right,
                    held=note.duration,
                )
            )
        bars.append(FingeredBar(bar.index, bar.number, tuple(notes)))
    count = sum(len(b.notes) for b in bars)
    return Fingering(0, True, tuple(bars), Audit(count, 0, 1.0))


def walk() -> Piece:
    """Pickup, two voices, chords, endings, triplets, a tie over a bar line, D.C. al Fine."""
    chords = (ChordName(Fraction(0), "F"), ChordName(Fraction(2), "Bb7"))
    return piece(
        [
            bar(0, "C5:1/2 Bb4:1/2", number="0", pickup=True, length=Fraction(1), key=Key(-1)),
            bar(
                1,
                "A4:1 G4:1/2 F4:1/2 A4:1 C5:1",
                "F4:2 C4:2",
                key=Key(-1),
                section="A",
                number="1",
                repeat_start=True,
                chords=chords,
            ),
            bar(
                2,
                "Bb4:1/3t A4:1/3t G4:1/3t F#4:1/2 G4:1/2 Bb4:2",
                "D4:2 E4:2",
                key=Key(-1),
                number="2",
            ),
            bar(3, "A4+C5:1 F4+A4:1 E4+G4:3", "F4:1 r:1 C4:2", key=Key(-1), number="3"),
            bar(4, "r:1 F4:1/2 G4:1/2 A4:1/2 B4:1/2 C5:1", "C4:4", key=Key(-1), number="4"),
            bar(
                5,
                "F4+A4:3 C5:1/2 Bb4:1/2",
                "C4:4",
                key=Key(-1),
                number="5",
                endings=(1,),
                repeat_end=True,
            ),
            bar(6, "F4+A4:4", "C4:4", key=Key(-1), number="6", endings=(2,), fine=True),
            bar(7, "D5:1/2 C5:1/2 Bb4:1/2 A4:1/2 G4:1 C5:1", key=Key(-1), number="7", section="B"),
            bar(8, "A4:1/4 Bb4:1/4 C5:1/2 D5:3/4 E5:1/4 F5:2", key=Key(-1), number="8"),
            bar(9, "E5:1/2 D5:1 C5:1/2 Bb4:3/2 G4:1/2", "C4:2 D4:2", key=Key(-1), number="9"),
            bar(
                10,
                "F4+A4:3",
                "C4:3",
                key=Key(-1),
                number="10",
                length=Fraction(3),
                jump="D.C. al Fine",
            ),
        ],
        title="A walk by the mill",
        composer="Anna Brook",
        key=Key(-1),
        tempo=88.0,
    )


def tied_over() -> Piece:
    long = Note("long", Fraction(2), Fraction(7), Pitch("G", 0, 4))
    first = bar(0, "C5:2", meter=(4, 4))
    return piece(
        [
            replace(first, notes=(*first.notes, long)),
            bar(1),
            replace(bar(2, "r:1 A4:3/2 B4:3/2"), notes=bar(2, "r:1 A4:3/2 B4:3/2").notes),
        ],
        title="Tied over two bar lines",
    )


def tuplets() -> Piece:
    return piece(
        [
            bar(0, "C5:1/3t D5:1/3t E5:1/3t F5:2/3t E5:1/3t D5:2"),
            bar(1, "C5:2/3t D5:2/3t E5:2/3t r:1/3t G4:1/3t A4:1/3t C5:1"),
            bar(
                2,
                "C5:1/5 D5:1/5 E5:1/5 D5:1/5 C5:1/5 C5:1/6t D5:1/6t E5:1/6t F5:1/2 G5:2",
                "C4:2 G3:2",
            ),
        ],
        title="Tuplets",
    )


def two_voices() -> Piece:
    return piece(
        [
            bar(0, "E5:1/2 D5:1/2 C5:1 r:1 G4:1", "C4:2 r:1 E4:1", meter=(4, 4)),
            bar(1, "A4+C5+E5:3/2 D5:1/2 B4:2", "A3:4"),
            bar(2, "G4:3 r:1", "r:2 C4:2", meter=(4, 4)),
        ],
        title="Two voices",
    )


def compound() -> Piece:
    return piece(
        [
            bar(0, "G4:1/2", meter=(6, 8), pickup=True, length=Fraction(1, 2), number="0"),
            bar(1, "C5:1/2 D5:1/2 E5:1/2 C5:3/2", "C4:3", meter=(6, 8), number="1"),
            bar(2, "D5:1 B4:1/2 C5:1 r:1/2", meter=(6, 8), number="2", key=Key(2)),
            bar(3, "D5:5/2", meter=(6, 8), number="3", length=Fraction(5, 2), key=Key(2)),
        ],
        title="Compound meter, pickup, new key",
    )


def overlapping() -> Piece:
    """One voice whose notes overlap, as MIDI files have them."""
    notes = (
        Note("a", Fraction(0), Fraction(4), Pitch("C", 0, 4)),
        Note("b", Fraction(1), Fraction(2), Pitch("E", 0, 4)),
        Note("c", Fraction(3, 2), Fraction(5, 2), Pitch("G", 0, 4)),
    )
    return piece([replace(bar(0), notes=notes)], title="Overlaps in one voice")
