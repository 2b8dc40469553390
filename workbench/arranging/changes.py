"""What arranging altered, as values; ``words`` makes sentences of them."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from workbench.arranging.sounds import BASS, TUNE
from workbench.language.message import mark

ChangeKind = Literal["key", "whole piece", "best key", "phrase", "octave", "shortened", "dropped"]
KEY: ChangeKind = mark("key")
WHOLE: ChangeKind = mark("whole piece")
BEST: ChangeKind = mark("best key")
PHRASE: ChangeKind = mark("phrase")
OCTAVE: ChangeKind = mark("octave")
SHORTENED: ChangeKind = mark("shortened")
DROPPED: ChangeKind = mark("dropped")
#: Why: the instrument has no such note there, too few strings, no grip, a doubling, a
#: string is needed by the next note, the line it belongs to, the tune it would sound above, the
#: teacher's word.
RANGE, STRINGS, GRIP, DOUBLED, NEEDED, HARD, LINE, REENTRANT, COVERS, WISH = (
    "range", "strings", "grip", "doubled", "needed", "hard", "line", "reentrant", "covers", "wish",
)  # fmt: skip


@dataclass(frozen=True)
class Change:
    """One thing arranging altered, besides the transposition of everything.

    ``note`` is the note's id, "" where the whole piece is meant; ``bar`` the index of its
    written bar and ``bar_number`` the printed one; ``onset`` in quarter lengths from the
    start of the bar, ``beat`` from 1 in the beats of the time signature. ``role`` is what
    the note is in the music. ``before`` and ``after`` are pitch names (keys for the whole
    piece, quarter lengths where shortened), ``after`` empty where the note is left out;
    ``amount`` is octaves, or semitones for the whole piece. ``why`` names the cause.
    """

    note: str
    bar: int
    bar_number: str
    onset: Fraction
    beat: Fraction
    kind: ChangeKind
    why: str = ""
    role: str = ""
    part: int = 1
    voice: int = 1
    before: str = ""
    after: str = ""
    amount: int = 0


def tally(changes: tuple[Change, ...]) -> dict[str, int]:
    """How many notes were moved, shortened and left out, and of the tune how many in all."""
    moved = {c.note for c in changes if c.kind in (PHRASE, OCTAVE)}
    short = {c.note for c in changes if c.kind == SHORTENED}
    out = {c.note for c in changes if c.kind == DROPPED}
    tune = {c.note for c in changes if c.role == TUNE and c.kind in (OCTAVE, DROPPED)}
    bass = {c.note for c in changes if c.role == BASS and c.kind in (OCTAVE, DROPPED)}
    return {"moved": len(moved), "shortened": len(short), "dropped": len(out),
            "tune": len(tune), "bass": len(bass)}  # fmt: skip
