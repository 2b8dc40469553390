"""Which part of a score is the tune and which the bass, where the teacher says so.

The chosen part's voices come first, so that the tune is written with its stems up and heard
as the melody; those of the bass part come last. What is neither is inner.
"""

from __future__ import annotations

from dataclasses import replace

from workbench.arranging.weights import Wishes
from workbench.music.errors import BadInput
from workbench.music.model import Note, Piece


def with_notes(piece: Piece) -> list[int]:
    """Numbers of the parts that have notes in the piece, the top one first."""
    return sorted({n.part for n in piece.notes})


def led(piece: Piece, wishes: Wishes) -> Piece:
    """The piece with the voices of the tune's part first and those of the bass part last.

    Raises BadInput where a chosen part has no notes in the piece.
    """
    if not (wishes.tune_part or wishes.bass_part):
        return piece
    known = with_notes(piece)
    for part in (wishes.tune_part, wishes.bass_part):
        if part and part not in known:
            raise BadInput(
                "Part {part} has no notes in what is taken of '{title}'; choose tune and "
                "bass from these parts: {known}.",
                part=part,
                title=piece.title,
                known=", ".join(map(str, known)),
            )
    rank = {wishes.bass_part: 2, wishes.tune_part: 0}
    least: dict[int, int] = {}
    for n in piece.notes:
        least[n.voice] = min(least.get(n.voice, 1 << 30), rank.get(n.part, 1))
    ordered = sorted(least, key=lambda voice: (least[voice], voice))
    now = dict(zip(ordered, sorted(least), strict=True))

    def moved(note: Note) -> Note:
        return note if now[note.voice] == note.voice else replace(note, voice=now[note.voice])

    bars = tuple(replace(bar, notes=tuple(map(moved, bar.notes))) for bar in piece.bars)
    return replace(piece, bars=bars)
