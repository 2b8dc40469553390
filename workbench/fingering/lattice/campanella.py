"""The frame of a piece with all that rings on: broken chords, and scales where asked for."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from workbench.fingering.lattice.layers import Frame, build_frame
from workbench.fingering.types import Settings
from workbench.instrument.model import Instrument
from workbench.music.model import Piece
from workbench.music.ringing.campanella import overlapping
from workbench.music.ringing.figures import is_broken, ringing

FIFTH = 7  # semitones


def suited(settings: Settings, instrument: Instrument) -> Settings:
    """The settings as they hold on this instrument: campanella needs a re-entrant tuning."""
    return settings if instrument.reentrant else replace(settings, campanella=False)


def wide_chord(instrument: Instrument) -> int:
    """Semitones that a broken chord spans at least where it stands alone: half of what the open
    strings do, an octave on the guitar, and a fifth at least."""
    return max(FIFTH, (max(instrument.tuning) - min(instrument.tuning)) // 2)


def ringing_frame(
    piece: Piece,
    playable: frozenset[str],
    slurred: Mapping[str, str],
    settings: Settings,
    instrument: Instrument,
) -> Frame:
    """The layers of a piece, each note as long as it rings."""
    rings = ringing(piece, wide_chord(instrument), len(instrument.tuning))
    broken = is_broken(piece, rings)
    if not settings.campanella:
        return build_frame(piece, playable, slurred, rings, broken)
    bells = overlapping(piece, slurred)
    longer = {n: max(rings.get(n, q), q) for n, q in bells.items()}
    frame = build_frame(piece, playable, slurred, {**rings, **longer}, broken)
    return replace(frame, bells=longer)
