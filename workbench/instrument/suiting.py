"""Which instrument a score is for, by what it says and prints."""

from __future__ import annotations

import re

from workbench.instrument.table import instrument
from workbench.music.model import Piece

# Names in the languages of printed music; common practice, no source.
_NAMES = {
    "ukulele": re.compile(r"ukulele|\buke\b", re.I),
    "guitar": re.compile(r"guit|gitar|chitarr|\bgtr", re.I),
    "mandolin": re.compile(r"mandolin|mandoline", re.I),
}
_TENOR = re.compile(r"tenor\s?(guit|gitar)", re.I)


def suited(piece: Piece, usual: str) -> str:
    """The id of the instrument to lay a score on: the one that its part's name or its title
    names, or where it prints fingers and goes below the ``usual`` one, the guitar if that has
    its notes. Else the usual one, and also where that is of the kind named."""
    taken = {n.part for n in piece.notes}
    names = [p.name for p in piece.parts if p.number in taken and p.name]
    for text in (*names, piece.title):
        for name, pattern in _NAMES.items():
            if pattern.search(text) and not _TENOR.search(text):
                return usual if kind(usual) == name else name
    if piece.written and not _has(usual, piece) and _has("guitar", piece):
        return "guitar"
    return usual


def kind(name: str) -> str:
    """ "ukulele", "guitar" or "mandolin", or the id itself. An own tuning is a guitar's with
    six strings and more, else a ukulele's."""
    if name.startswith("custom:"):
        return "guitar" if len(instrument(name).open_midi) >= 6 else "ukulele"
    return next((k for k in _NAMES if k in name and name != "tenor-guitar"), name)


def _has(name: str, piece: Piece) -> bool:
    """Whether an instrument has all the notes."""
    strings = instrument(name)
    pitches = [n.midi for n in piece.notes]
    low, high = min(strings.open_midi), max(strings.open_midi) + strings.frets
    return bool(pitches) and low <= min(pitches) and max(pitches) <= high
