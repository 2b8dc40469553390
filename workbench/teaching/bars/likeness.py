"""Which earlier bar a bar is like: in its music, its left-hand grips or its right hand."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import groupby
from typing import Literal

from workbench.fingering.types import Fingering
from workbench.language.message import Message, message
from workbench.music.model import Piece
from workbench.teaching.bars.strokes import Place, Stroke, by_bar, strokes, written_as

Kind = Literal["music", "grips", "right hand"]
KINDS: tuple[Kind, ...] = ("music", "grips", "right hand")
PATTERN = 3  # strokes from which a right hand is a pattern

Grips = tuple[frozenset[Place], ...]


@dataclass(frozen=True)
class Likeness:
    """A bar is like an earlier one: ``kind`` is one of KINDS, ``bar`` the index of the
    first written bar that is so."""

    kind: Kind
    bar: int

    def words(self, number: str) -> Message:
        """For example "same grips as bar 3"; ``number`` is the earlier bar's printed one."""
        if number == "0":
            return {
                "music": message("same music as the pickup"),
                "grips": message("same grips as the pickup"),
            }.get(self.kind) or message("same right-hand pattern as the pickup")
        return {
            "music": message("same music as bar {bar}", bar=number),
            "grips": message("same grips as bar {bar}", bar=number),
        }.get(self.kind) or message("same right-hand pattern as bar {bar}", bar=number)


def likenesses(piece: Piece, fingering: Fingering | None) -> tuple[Likeness | None, ...]:
    """For every written bar what it shares with the first earlier bar that is like it.

    Same music says most and is named before same grips, these before the right hand.
    Bars of rest are like none. Without a fingering only the music is compared.
    Raises BadInput where the fingering is another piece's.
    """
    played = by_bar(strokes(piece, fingering)) if fingering else {}
    first: dict[tuple[str, object], int] = {}
    out: list[Likeness | None] = []
    for bar, written in zip(piece.bars, written_as(piece), strict=True):
        rows = played.get(bar.index, ())
        traits = {
            "music": written if bar.notes else None,
            "grips": grips_of(rows) or None,
            "right hand": (bar.length, right_hand(rows)) if len(rows) >= PATTERN else None,
        }
        found = None
        for kind in KINDS:
            if traits[kind] is None:
                continue
            earlier = first.setdefault((kind, traits[kind]), bar.index)
            if found is None and earlier != bar.index:
                found = Likeness(kind, earlier)
        out.append(found)
    return tuple(out)


def grips_of(rows: tuple[Stroke, ...]) -> Grips:
    """The grips of a bar in order: fingers on frets, new or held, without those that
    only build up the next grip or let go of the last."""
    run = [grip for grip, _ in groupby(stroke.grip for stroke in rows) if grip]
    out: list[frozenset[Place]] = []
    for grip in run:
        while out and out[-1] < grip:  # it was being built up
            out.pop()
        if not out or not grip <= out[-1]:
            out.append(grip)
    return tuple(out)


def right_hand(rows: tuple[Stroke, ...]) -> tuple[object, ...]:
    """When which right fingers pluck; empty where a note has none."""
    if any(p.hands.right is None for stroke in rows for p in stroke.notes):
        return ()
    return tuple((stroke.onset, stroke.right) for stroke in rows)
