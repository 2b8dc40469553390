"""How far up the neck the fingering may go: the highest fret wished for, or what a piece needs."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace
from fractions import Fraction

from workbench.instrument.model import Instrument
from workbench.music.model import Piece

Where = Callable[[int], Iterable[tuple[int, int]]]


def seated(pitches: Sequence[int], where: Where) -> bool:
    """Whether every pitch can have a string of its own among its (string, fret) places."""
    taken: dict[int, int] = {}

    def seat(i: int, asked: set[int]) -> bool:
        for string, _ in where(pitches[i]):
            if string not in asked:
                asked.add(string)
                if string not in taken or seat(taken[string], asked):
                    taken[string] = i
                    return True
        return False

    return all(seat(i, set()) for i in range(len(pitches)))


def cut_off(
    instrument: Instrument,
    piece: Piece,
    top_fret: int,
    fixed: Iterable[tuple[str, int | None]] = (),
) -> Instrument:
    """The instrument with its neck ended at ``top_fret`` (from the capo), or as much further up
    as the piece needs: where what is struck together has no string each below it, and where
    the strings ``fixed`` for notes, by their ids, ask it (the teacher's or the edition's word)."""
    most = instrument.playable_frets
    top = min(most, top_fret)
    midi = {n.id: n.midi for n in piece.notes}
    for note, string in fixed:
        if note not in midi or string is None or string > instrument.strings:
            continue
        fret = midi[note] - instrument.open_midi[string - 1]
        if top < fret <= most:
            top = fret
    chords: set[frozenset[int]] = set()
    for bar in piece.bars:
        struck: dict[tuple[Fraction, bool], set[int]] = {}
        for n in bar.notes:
            struck.setdefault((n.onset, n.grace), set()).add(n.midi)
        chords |= {frozenset(pitches) for pitches in struck.values()}
    for pitches in chords:
        top = _needed(instrument, sorted(pitches), top, most)
    return instrument if top >= most else replace(instrument, frets=instrument.capo + top)


def _needed(instrument: Instrument, pitches: list[int], top: int, most: int) -> int:
    """The first fret from ``top`` on up to which all can sound; ``top`` where none helps."""
    for fret in range(top, most + 1):

        def where(midi: int, fret: int = fret) -> list[tuple[int, int]]:
            return [p for p in instrument.places(midi) if p[1] <= fret]

        if seated(pitches, where):
            return fret
    return top
