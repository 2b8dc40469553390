"""Where a technique occurs, and what the rules that find it may look at."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property

from workbench.fingering.types import Fingering
from workbench.instrument.model import Hand, Instrument
from workbench.language.message import Text
from workbench.music.model import Note, Piece
from workbench.teaching.bars.strokes import Stroke, by_bar, strokes

#: Figures, the same in every language, or words to be said later.
Detail = Text


@dataclass(frozen=True)
class Occurrence:
    """One place: written bar, onset in it, ids of the notes concerned. ``detail`` tells
    kinds of one technique apart: figures such as "p i m a" for an arpeggio, or words such
    as "fret 3", which are said where they are shown."""

    technique: str
    bar: int
    onset: Fraction
    notes: tuple[str, ...]
    detail: Detail = ""


@dataclass(frozen=True)
class Music:
    """A fingered piece as the rules see it."""

    piece: Piece
    fingering: Fingering
    instrument: Instrument
    hand: Hand

    @cached_property
    def strokes(self) -> tuple[Stroke, ...]:
        """All strokes in written order."""
        return strokes(self.piece, self.fingering)

    @cached_property
    def bars(self) -> dict[int, tuple[Stroke, ...]]:
        """Strokes by written bar."""
        return by_bar(self.strokes)

    @cached_property
    def lines(self) -> tuple[tuple[Stroke, ...], ...]:
        """Runs of strokes of one note each, without a rest or a chord between them."""
        out: list[list[Stroke]] = []
        before: Stroke | None = None
        for stroke in self.strokes:
            if len(stroke.notes) != 1:
                before = None
                continue
            if before is None or before.at + before.notes[0].note.duration < stroke.at:
                out.append([])
            out[-1].append(stroke)
            before = stroke
        return tuple(tuple(run) for run in out)


Rule = Callable[[Music], Iterable[Occurrence]]


def at_stroke(technique: str, stroke: Stroke, detail: Detail = "") -> Occurrence:
    """An occurrence that is all of a stroke."""
    return Occurrence(technique, stroke.bar, stroke.onset, stroke.ids, detail)


def over_run(technique: str, run: Iterable[Stroke], detail: Detail = "") -> Occurrence:
    """An occurrence that begins with the first of some strokes and takes in them all."""
    rows = tuple(run)
    ids = tuple(i for s in rows for i in s.ids)
    return Occurrence(technique, rows[0].bar, rows[0].onset, ids, detail)


def at_note(technique: str, bar: int, note: Note, detail: Detail = "") -> Occurrence:
    """An occurrence of one note."""
    return Occurrence(technique, bar, note.onset, (note.id,), detail)


def runs_where(
    line: tuple[Stroke, ...], joined: Callable[[Stroke, Stroke], bool], least: int
) -> Iterable[tuple[Stroke, ...]]:
    """Longest stretches of a line whose neighbours are all ``joined``, of ``least`` and more."""
    run: list[Stroke] = []
    for stroke in line:
        if run and not joined(run[-1], stroke):
            if len(run) >= least:
                yield tuple(run)
            run = []
        run.append(stroke)
    if len(run) >= least:
        yield tuple(run)
