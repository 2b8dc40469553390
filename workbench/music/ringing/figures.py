"""Broken chords: notes that ring on beyond what is written until the figure turns.

In a broken chord every note is written short and played long: the hand holds the chord and
its notes ring into one another (common practice, no source). A note belongs to one where it
is no longer than ``LONGEST`` and its voice goes through at least ``FEWEST`` notes on end by
leaps of ``LEAP`` semitones or more, through as many pitches, the bass that it begins over
counted. It rings until, in any voice, a note within ``STEP`` semitones of it begins (the tune
moves on, or it is struck again), a new bass changes the harmony, or the figure ends: at the
latest with its bar. Notes that come back within the figure, or follow one another at once, do
not end one another, so that a seventh rings beside its root; nor does a pedal, struck again
and again, end what it is struck between.

A run through more pitches than there are strings cannot ring whole: the hand takes it as two
chords or more, parted where it leaps widest.

What leaps over a few strings with nothing else sounding is a tune, not a broken chord: a reel on
the notes of its chord is played where it lies best (common practice, no source).
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from itertools import groupby, pairwise

from workbench.music.model import Note, Piece

LONGEST = Fraction(1, 2)
LEAP = 3
STEP = 2
FEWEST = 3
MUCH = Fraction(3, 10)  # of the notes ring on in a piece of broken chords


def ringing(piece: Piece, wide: int = 0, strings: int = 6) -> dict[str, Fraction]:
    """Notes of broken chords by id, with the quarter lengths that each rings from its onset;
    only those that ring longer than they are written. ``wide``: semitones that a chord spans
    at least where no other note sounds with it; ``strings``: pitches that can ring at once."""
    out: dict[str, Fraction] = {}
    for bar in piece.bars:
        notes = sorted((n for n in bar.notes if not n.grace and n.duration > 0), key=_order)
        for run in (part for whole in _runs(notes) for part in _chords(whole, strings)):
            chord = {n.midi for n in run}
            pedal = _pedal(run)
            end = max(n.onset + n.duration for n in run)
            if max(chord) - min(chord) < wide and _alone(run, end, notes):
                continue
            for n in run:
                turns = next((m.onset for m in notes if _ends(m, n, run, chord, pedal)), end)
                stop = min(turns, end)
                if stop > n.onset + n.duration:
                    out[n.id] = stop - n.onset
    return out


def is_broken(piece: Piece, rings: Mapping[str, Fraction]) -> bool:
    """Whether a piece is one of broken chords: more than ``MUCH`` of its notes ring on
    (``rings``)."""
    return len(rings) > MUCH * sum(not n.grace for n in piece.notes)


def _alone(run: list[Note], end: Fraction, bar: list[Note]) -> bool:
    """Whether nothing of the bar sounds with a run that ends at ``end``, and no lower note up
    to where it begins."""
    mine, begin, lowest = {n.id for n in run}, run[0].onset, min(n.midi for n in run)
    beside = (n for n in bar if n.id not in mine and n.onset < end)
    return all(
        n.onset + n.duration < begin or (n.onset + n.duration == begin and n.midi >= lowest)
        for n in beside
    )


def _order(n: Note) -> tuple[Fraction, int]:
    return n.onset, n.midi


def _chords(run: list[Note], strings: int) -> list[list[Note]]:
    """A run as chords of no more pitches than there are strings, as far as each has ``FEWEST``
    moments: parted at the widest leap, the first of equals."""
    moments = [list(group) for _, group in groupby(run, key=lambda n: n.onset)]
    if len({n.midi for n in run}) <= strings or len(moments) < 2 * FEWEST:
        return [run]
    places = range(FEWEST, len(moments) - FEWEST + 1)
    at = max(places, key=lambda i: (_gap(moments[i - 1], moments[i]), -i))
    first, second = ([n for m in part for n in m] for part in (moments[:at], moments[at:]))
    return [*_chords(first, strings), *_chords(second, strings)]


def _alternate(m: Note, n: Note, run: list[Note]) -> bool:
    """Whether the later pitch m was there before n, or n comes back after m."""
    return any(
        (x.midi == m.midi and x.onset < n.onset) or (x.midi == n.midi and x.onset > m.onset)
        for x in run
    )


def _pedal(run: list[Note]) -> int | None:
    """The pitch that a run strikes again and again between its other notes: at half of its
    moments or more, and twice on end at least."""
    pitches = [n.midi for n in run]
    most = max(pitches, key=pitches.count)
    often = 2 * pitches.count(most) >= len(pitches)
    return most if often and any(a == b == most for a, b in pairwise(pitches)) else None


def _ends(m: Note, n: Note, run: list[Note], chord: set[int], pedal: int | None) -> bool:
    """Whether note m ends the ringing of n, a note of a run of the pitches ``chord``; a
    ``pedal`` ends no other pitch."""
    if m.onset < n.onset + n.duration:
        return False
    if m.midi == n.midi:
        return True
    if m.midi == pedal:
        return False
    inside = m.midi in chord and run[0].onset <= m.onset <= run[-1].onset
    if inside and (m.onset == n.onset + n.duration or _alternate(m, n, run)):
        return False
    new_bass = m.midi < min(chord) and m.midi % 12 not in {x % 12 for x in chord}
    return new_bass or abs(m.midi - n.midi) <= STEP


def _runs(notes: list[Note]) -> list[list[Note]]:
    """Broken chords of a bar, each as its notes in order."""
    out: list[list[Note]] = []
    for voice in sorted({n.voice for n in notes}):
        moments: list[list[Note]] = []
        for n in notes:
            if n.voice != voice:
                continue
            if moments and moments[-1][0].onset == n.onset:
                moments[-1].append(n)
            else:
                moments.append([n])
        run: list[list[Note]] = []
        for moment in moments:
            short = max(n.duration for n in moment) <= LONGEST
            if run and not (short and _goes_on(run, moment)):
                out += _figure(run, notes)
                run = []
            if short:
                run.append(moment)
        out += _figure(run, notes)
    return out


def _gap(a: list[Note], b: list[Note]) -> int:
    """The least interval between different pitches of two moments; 0 where none differ."""
    return min((abs(x.midi - y.midi) for x in a for y in b if x.midi != y.midi), default=0)


def _goes_on(run: list[list[Note]], b: list[Note]) -> bool:
    """Whether the figure goes on: joined to the last note, and by leap; or by a step between
    notes that the chord has anyway, as a seventh beside its root, not two steps on end."""
    a = run[-1]
    if b[0].onset != a[0].onset + a[0].duration:
        return False
    if not 0 < _gap(a, b) < LEAP:
        return True
    known = {n.midi for moment in run for n in moment}
    return len(run) > 1 and (_gap(run[-2], a) >= LEAP or {n.midi for n in b} <= known)


def _figure(run: list[list[Note]], bar: list[Note]) -> list[list[Note]]:
    """The notes of a run where it is a broken chord: enough notes and pitches (with the bass
    under it: it may be held, or written in the same voice), and at least twice as many leaps
    and returns to pitches already there as steps to new ones."""
    notes = [n for moment in run for n in moment]
    seen: set[int] = set()
    leaps = returns = steps = 0
    for a, b in pairwise(run):
        seen |= {n.midi for n in a}
        if min(abs(x.midi - y.midi) for x in a for y in b) >= LEAP:
            leaps += 1
        elif {n.midi for n in b} <= seen:
            returns += 1
        else:
            steps += 1
    many = len(run) >= FEWEST and len({n.midi for n in notes} | _bass(run, bar)) >= FEWEST
    return [notes] if many and leaps and leaps + returns >= 2 * steps else []


def _bass(run: list[list[Note]], notes: list[Note]) -> set[int]:
    """Pitches below the run, struck as it begins or one note before."""
    first = run[0][0]
    lowest = min(n.midi for moment in run for n in moment)
    since = first.onset - first.duration
    return {n.midi for n in notes if since <= n.onset <= first.onset and n.midi < lowest}
