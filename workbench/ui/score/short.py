"""A few bars engraved by themselves: staff and tablature."""

from __future__ import annotations

from workbench.engraving.paint import ScoreImage
from workbench.engraving.strip import Strip
from workbench.fingering.types import Fingering
from workbench.instrument.model import Instrument
from workbench.music.model import Piece
from workbench.ui.bench.services import engraving_in_this_thread


def engraved(
    piece: Piece, fingering: Fingering, instrument: Instrument, width: float, ink: str
) -> ScoreImage:
    """Staff and tablature of a few bars with the fingers of both hands."""
    engraving_in_this_thread()
    return Strip(width, ink=ink).image(piece, fingering, instrument)
