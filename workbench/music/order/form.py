"""Form of a piece: playing order and sections, and whether there is a form to tell of."""

from __future__ import annotations

from workbench.music.model import Piece
from workbench.music.order.playing import Stretch, playing_order, stretches
from workbench.music.order.sections import Section, sections

__all__ = [
    "Section",
    "Stretch",
    "playing_order",
    "sections",
    "stretches",
]


def in_one_part(piece: Piece) -> bool:
    """Whether the piece is a single section that nobody gave a name: "A" says nothing then."""
    parts = sections(piece)
    return len(parts) == 1 and len(parts[0].letter) <= 2


def has_form(piece: Piece) -> bool:
    """Whether there is a form to tell of: several sections, or one that is played again."""
    played = playing_order(piece)
    return not in_one_part(piece) or len(played) != len(piece.bars)
