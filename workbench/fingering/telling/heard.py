"""A fingered piece as it is heard: one note and one finger for every sound.

Notation and fingering keep every stem; whoever counts, measures, plays or draws what
the hands do takes the sounds.
"""

from __future__ import annotations

from dataclasses import replace

from workbench.fingering.types import FingeredBar, FingeredNote, Fingering
from workbench.music.model import Piece
from workbench.music.remembered import remembered
from workbench.music.ringing.sounds import sounds


@remembered
def heard(piece: Piece, fingering: Fingering) -> tuple[Piece, Fingering]:
    """The piece and its fingering with one note a sound, of the longest value and held as
    long as the longest of its stems. A unison that is played on two strings stays two. The
    very same piece and fingering where no sound is shared.
    """
    leads = {n.shares for bar in fingering.bars for n in bar.notes if n.shares is not None}
    if not leads:
        return piece, fingering
    alone = {
        n.id for bar in fingering.bars for n in bar.notes if n.shares is None and n.id not in leads
    }
    bars = tuple(replace(bar, notes=_sounds_of(bar)) for bar in fingering.bars)
    return sounds(piece, alone).piece, replace(fingering, bars=bars)


def sounding(bar: FingeredBar) -> tuple[FingeredNote, ...]:
    """The notes of a fingered bar that stand for a sound, as they are written."""
    return tuple(n for n in bar.notes if n.shares is None)


def _sounds_of(bar: FingeredBar) -> tuple[FingeredNote, ...]:
    longest: dict[str, FingeredNote] = {}
    for n in bar.notes:
        lead = n.shares or n.id
        if lead not in longest or n.duration > longest[lead].duration:
            longest[lead] = n
    return tuple(
        replace(
            n,
            duration=longest[n.id].duration,
            held=longest[n.id].held,
            cut_reason=longest[n.id].cut_reason,
            cut_kind=longest[n.id].cut_kind,
        )
        for n in sounding(bar)
    )
