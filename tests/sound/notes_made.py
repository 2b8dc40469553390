"""Small music and hand-made fingerings for the tests of sound."""

from __future__ import annotations

from fractions import Fraction

from workbench.fingering.types import Audit, FingeredBar, FingeredNote, Fingering
from workbench.music.model import Bar, Note, Piece, Pitch

F = Fraction


def note(name, pitch, onset, duration, **more) -> Note:
    """A note such as ``note("a", "F#4", 0, 1)``."""
    step, octave = pitch[0], int(pitch[-1])
    alter = {"#": 1, "b": -1}.get(pitch[1:-1], 0)
    return Note(name, F(onset), F(duration), Pitch(step, alter, octave), **more)


def bar(index, *notes, length=4, **more) -> Bar:
    return Bar(
        index=index,
        number=str(index + 1),
        time_signature=(4, 4),
        length=F(length),
        notes=notes,
        **more,
    )


def piece(*bars, tempo=60.0) -> Piece:
    return Piece("Slow Wheel", bars, tempo=tempo)


def fingered(made: Piece, **places) -> Fingering:
    """A fingering from ``note id = (string, fret, held)``; None is impossible."""
    bars = []
    for written in made.bars:
        rows = []
        for n in written.notes:
            string, fret, held = places.get(n.id) or (None, None, 0)
            rows.append(
                FingeredNote(
                    n.id, written.index, n.onset, n.duration, n.midi, string=string, fret=fret,
                    left=None if fret is None else min(fret, 4), right="i", held=F(held),
                )
            )  # fmt: skip
        bars.append(FingeredBar(written.index, written.number, tuple(rows)))
    return Fingering(0, True, tuple(bars), Audit(len(made.notes), 0, 1.0))


SCALE = ("C4", "D4", "E4", "F4", "G4", "A4", "B4", "C5")


def song(bars):
    """Two voices: quavers above a held bass, so many bars of it, at 90 a minute."""
    return piece(
        *(
            bar(
                index,
                *(note(f"n{index}-{i}", SCALE[(index * 3 + i) % 8], i / 2, 0.5) for i in range(8)),
                note(f"b{index}", "C3", 0, 4, voice=2),
            )
            for index in range(bars)
        ),
        tempo=90.0,
    )
