"""Which notes the left hand sounds, because they are slurred from the note before.

A slur in music for plucked strings may be one of two things. A *playing slur* tells the
left hand to sound the notes after the first by hammering on or pulling off; a *phrasing
slur* says what belongs together and every note is plucked. They look alike, and are told
apart here by this rule (common practice, no source). A slur of one voice is a playing
slur where

- it covers at most ``MOST_NOTES`` notes, grace notes not counted, and no more than a bar;
- neighbours differ in pitch, each within ``LEAP`` of the next and all within ``SPAN``, as
  one string gives them to one hand;
- no rest, no staccato or tenuto and no repeat sign stands in it;
- no other voice bears a slur over the same moments, unless with the same notes.

Of a chord under a slur its highest note is meant. Grace notes are slurred to one another
and to the note they lead to, with a slur or without, within the same intervals.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from workbench.music.model import Bar, Note, Piece

MOST_NOTES = 4  # what four fingers and an open string do at one go
LEAP = 5  # semitones between neighbours: frets within reach on one string
SPAN = 7  # semitones in all: such a reach and the open string below it
PLUCKED = {"staccato", "staccatissimo", "tenuto", "harmonic"}


@dataclass(frozen=True)
class SlurredMoment:
    """Notes of one voice that begin together, highest first; a grace note by itself.
    ``at`` counts quarter lengths from the beginning of the piece."""

    bar: Bar
    at: Fraction
    notes: tuple[Note, ...]

    @property
    def top(self) -> Note:
        return self.notes[0]

    @property
    def grace(self) -> bool:
        return self.top.grace


@dataclass(frozen=True)
class Slur:
    """A slur as written: the moments of its voice that it covers, two or more."""

    moments: tuple[SlurredMoment, ...]

    @property
    def first(self) -> SlurredMoment:
        return self.moments[0]

    @property
    def last(self) -> SlurredMoment:
        return self.moments[-1]


def slurred(piece: Piece) -> dict[str, str]:
    """Every note that is not plucked because it is slurred, by id, with the id of the note
    it is slurred from."""
    out: dict[str, str] = {}
    lines = _lines(piece)
    for line in lines.values():
        for run in _grace_runs(line):
            out.update(_links(run))
    every = [slur for line in lines.values() for slur in _slurs(line)]
    for slur in every:
        if is_played(slur) and not any(_together(slur, other) for other in every):
            out.update(_links([m.top for m in slur.moments]))
    return out


def slurs(piece: Piece) -> list[Slur]:
    """All slurs of a piece, voice by voice, in the order of their ends.

    Where slurs lie in one another, an end belongs to the slur begun last.
    """
    return [slur for line in _lines(piece).values() for slur in _slurs(line)]


def is_played(slur: Slur) -> bool:
    """Whether the slur by itself is one for the left hand to play."""
    notes = [m.top for m in slur.moments]
    if sum(not n.grace for n in notes) > MOST_NOTES:
        return False
    if slur.last.at - slur.first.at > slur.first.bar.length:
        return False
    if any(PLUCKED & set(n.articulations) for n in notes):
        return False
    return _one_string(notes) and all(_joined(a, b) for a, b in pairwise(slur.moments))


def _joined(a: SlurredMoment, b: SlurredMoment) -> bool:
    """Whether nothing stands between two moments: no rest and no sign of the form."""
    if not a.grace and a.at + max(n.duration for n in a.notes) < b.at:
        return False
    parted = a.bar.repeat_end or b.bar.repeat_start or a.bar.endings != b.bar.endings
    return a.bar.index == b.bar.index or not parted


def _one_string(notes: list[Note]) -> bool:
    """Whether one string may give these notes to one hand, one after another."""
    steps = all(0 < abs(a.midi - b.midi) <= LEAP for a, b in pairwise(notes))
    return steps and max(n.midi for n in notes) - min(n.midi for n in notes) <= SPAN


def _together(slur: Slur, other: Slur) -> bool:
    """Whether another voice bears the same slur over other notes."""
    if other is slur or (other.first.at, other.last.at) != (slur.first.at, slur.last.at):
        return False
    mine, theirs = ([m.top.midi for m in s.moments] for s in (slur, other))
    if mine == theirs:
        return False
    a, b = slur.first.top, other.first.top
    return (a.part, a.voice) != (b.part, b.voice)


def _links(notes: list[Note]) -> Iterator[tuple[str, str]]:
    return ((b.id, a.id) for a, b in pairwise(notes))


def _grace_runs(line: list[SlurredMoment]) -> Iterator[list[Note]]:
    """Grace notes with the note they lead to, where the left hand can play them."""
    run: list[Note] = []
    for moment in line:
        if moment.grace:
            run.append(moment.top)
            continue
        if run:
            near = min(moment.notes, key=lambda n: (abs(n.midi - run[-1].midi), -n.midi))
            notes = [*run, near]
            if moment.top.onset == run[0].onset and _one_string(notes):
                yield notes
        run = []


def _lines(piece: Piece) -> dict[tuple[int, int], list[SlurredMoment]]:
    """The moments of every voice in written order."""
    out: dict[tuple[int, int], list[SlurredMoment]] = defaultdict(list)
    for bar, start in zip(piece.bars, piece.starts, strict=True):
        voices: dict[tuple[int, int], dict[tuple[Fraction, bool, int], list[Note]]] = {}
        for place, n in enumerate(bar.notes):
            moments = voices.setdefault((n.part, n.voice), {})
            grace = n.grace or n.duration == 0
            moments.setdefault((n.onset, not grace, place if grace else 0), []).append(n)
        for voice, moments in voices.items():
            out[voice] += [
                SlurredMoment(bar, start + key[0], tuple(sorted(notes, key=lambda n: -n.midi)))
                for key, notes in sorted(moments.items(), key=lambda row: row[0])
            ]
    return out


def _slurs(line: list[SlurredMoment]) -> Iterator[Slur]:
    """The slurs of one voice; a chord begins and ends one slur however many of its notes
    bear the mark. One without a beginning or an end is none."""
    begun: list[int] = []
    for place, moment in enumerate(line):
        if begun and any(n.slur_stop for n in moment.notes):
            yield Slur(tuple(line[begun.pop() : place + 1]))
        if any(n.slur_start for n in moment.notes):
            begun.append(place)
