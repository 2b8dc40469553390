"""One sound is one note to the hands, however many stems it is written with.

Music for one player writes a sound that belongs to two voices with two stems: two
notes of one pitch that begin together (common practice, no source). Notation keeps
both; hands, ears and counts take them as one sound that rings for the longer value. A
sound that another voice strikes again while it is written to last goes on in the new one.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable
from dataclasses import dataclass, replace
from fractions import Fraction

from workbench.music.model import Bar, Note, Piece


@dataclass(frozen=True)
class Sounds:
    """A piece as it sounds. ``piece`` holds one note a sound; ``lead`` names for every
    other written note the one whose sound it shares; ``voices`` gives the voices of every
    shared sound, by the leading note's id; ``low`` are shared sounds that the lower voice
    moves with, so that the thumb plucks them; ``goes_on`` names for a sound struck again
    within its value the one in which it goes on (the piece holds the first up to there, the
    second for what is left of either).
    """

    piece: Piece
    lead: dict[str, str]
    voices: dict[str, tuple[int, ...]]
    low: frozenset[str]
    goes_on: dict[str, str]

    def of(self, note: str) -> str:
        """The id of the note that stands for the sound of ``note``."""
        return self.lead.get(note, note)


def sounds(piece: Piece, apart: Collection[str] = ()) -> Sounds:
    """Make one note of every sound written more than once.

    The leading note is that of the first voice among them (ids unchanged), with the longest
    value. Notes whose ids are ``apart`` stay by themselves (a unison on two strings).
    Grace notes are sounds of their own.
    """
    lead: dict[str, str] = {}
    voices: dict[str, tuple[int, ...]] = {}
    low: set[str] = set()
    bars: list[Bar] = []
    for bar in piece.bars:
        shared = [g for g in stems(bar.notes, apart) if len(g) > 1]
        if not shared:
            bars.append(bar)
            continue
        chief: dict[str, Note] = {}
        for group in shared:
            first = min(group, key=lambda n: (n.part, n.voice))
            whole = replace(
                first,
                duration=max(n.duration for n in group),
                slur_start=any(n.slur_start for n in group),
                slur_stop=any(n.slur_stop for n in group),
                articulations=tuple(dict.fromkeys(a for n in group for a in n.articulations)),
            )
            chief[first.id] = whole
            lead.update((n.id, first.id) for n in group if n is not first)
            voices[first.id] = tuple(sorted({n.voice for n in group}))
            if _moves_low(group, bar.notes):
                low.add(first.id)
        bars.append(
            replace(
                bar,
                notes=tuple(chief.get(n.id, n) for n in bar.notes if n.id not in lead),
            )
        )
    merged, goes_on = _struck_again(replace(piece, bars=tuple(bars)), apart)
    return Sounds(merged, lead, voices, frozenset(low), goes_on)


def stems(notes: Iterable[Note], apart: Collection[str] = ()) -> list[list[Note]]:
    """The notes of a bar by the sound that they write, in their order: those of one pitch that
    begin together, save what is ``apart``. Grace notes and notes without length are none."""
    groups: dict[tuple[Fraction, int], list[Note]] = {}
    for n in notes:
        if not n.grace and n.duration > 0 and n.id not in apart:
            groups.setdefault((n.onset, n.midi), []).append(n)
    return list(groups.values())


def _struck_again(piece: Piece, apart: Collection[str]) -> tuple[Piece, dict[str, str]]:
    """Sounds that begin within an equal pitch take over what is left of it."""
    lasting: dict[int, tuple[Fraction, Fraction, str]] = {}  # by pitch: start, end, id
    length: dict[str, Fraction] = {}
    goes_on: dict[str, str] = {}
    for bar, start in zip(piece.bars, piece.starts, strict=True):
        for n in sorted(bar.notes, key=lambda n: n.onset):
            if n.grace or n.duration == 0 or n.id in apart:
                continue
            at = start + n.onset
            end = at + n.duration
            if n.midi in lasting and lasting[n.midi][0] < at < lasting[n.midi][1]:
                began, ends, old = lasting[n.midi]
                goes_on[old] = n.id
                length[old] = at - began
                end = max(end, ends)
                length[n.id] = end - at
            lasting[n.midi] = (at, end, n.id)
    if not goes_on:
        return piece, {}
    bars = tuple(
        replace(
            bar,
            notes=tuple(replace(n, duration=length.get(n.id, n.duration)) for n in bar.notes),
        )
        for bar in piece.bars
    )
    return replace(piece, bars=bars), goes_on


def _moves_low(group: list[Note], notes: tuple[Note, ...]) -> bool:
    """Whether the lower voice moves with a shared sound: it is written longer there than the
    upper one, or lasts to its own next note, and nothing below it begins."""
    upper = min(group, key=lambda n: (n.part, n.voice))
    lower = max(group, key=lambda n: (n.part, n.voice))
    if (lower.part, lower.voice) == (upper.part, upper.voice):
        return False
    beneath = any(n.onset == lower.onset and n.midi < lower.midi and not n.grace for n in notes)
    if beneath:
        return False
    if lower.duration > upper.duration:
        return True
    mine = [n for n in notes if (n.part, n.voice) == (upper.part, upper.voice)]
    above = [n.midi for n in mine if n.id != upper.id and not n.grace]
    return bool(above) and lower.midi < min(above) and lower.duration == upper.duration


def stems_of(piece: Piece, note: str, apart: Collection[str] = ()) -> tuple[str, ...]:
    """The ids of all notes that are one sound with this one, itself included; the one that
    stands for the sound comes first. The note alone where the piece does not have it."""
    if note not in piece.bar_of:
        return (note,)
    bar = replace(piece.bars[piece.bar_of[note]], index=0)
    found = sounds(replace(piece, bars=(bar,)), apart)
    lead = found.of(note)
    return (lead, *(n.id for n in bar.notes if n.id != lead and found.of(n.id) == lead))
