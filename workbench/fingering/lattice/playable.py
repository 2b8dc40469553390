"""Which notes a hand can sound at all, and why not the others."""

from __future__ import annotations

from collections.abc import Sequence

from workbench.fingering.hand.grips import Neck, grips, why_impossible
from workbench.fingering.lattice.layers import moments_of
from workbench.fingering.types import Pin
from workbench.instrument.model import Instrument
from workbench.language.fact import Fact, fact
from workbench.music.model import Note, Piece


def split_playable(
    piece: Piece, instrument: Instrument, neck: Neck, pins: dict[str, Pin]
) -> tuple[frozenset[str], dict[str, Fact]]:
    """(ids that can be played, reason by id for those that cannot).

    Where notes that begin together have no grip, inner notes are given up
    first, then the lower ones; the top note stays as long as it can.
    """
    playable: set[str] = set()
    reasons: dict[str, Fact] = {}
    known: dict[tuple[int, ...], bool] = {}

    def fits(notes: Sequence[Note]) -> bool:
        here = {n.id: pins[n.id] for n in notes if n.id in pins}
        key = tuple(n.midi for n in notes)
        if here:
            return bool(grips(notes, instrument, neck, here))
        if key not in known:
            known[key] = len(notes) <= instrument.strings and bool(
                grips(notes, instrument, neck, {})
            )
        return known[key]

    for bar in piece.bars:
        for onset, together in moments_of(bar.notes):
            notes = list(together)
            beat = float(onset) * bar.time_signature[1] / 4 + 1
            while notes and not fits(notes):
                out = _give_up(notes, instrument, pins)
                reasons[out.id] = fact(
                    "at bar",
                    bar=bar.number,
                    beat=beat,
                    why=(_why(notes, out, instrument, neck, pins),),
                )
                notes.remove(out)
            playable.update(n.id for n in notes)
    return frozenset(playable), reasons


def _give_up(notes: list[Note], instrument: Instrument, pins: dict[str, Pin]) -> Note:
    for n in notes:
        if not instrument.places(n.midi):
            return n
    loose = [n for n in notes if n.id not in pins] or notes
    middle = [n for n in loose if n is not notes[0] and n is not notes[-1]]
    return (middle or [n for n in loose if n is not notes[0]] or loose)[0]


def _why(
    notes: list[Note], out: Note, instrument: Instrument, neck: Neck, pins: dict[str, Pin]
) -> Fact:
    if instrument.places(out.midi) and any(n.id in pins for n in notes):
        pinned = [n for n in notes if n.id in pins]
        for n in pinned:
            if not grips([n], instrument, neck, {n.id: pins[n.id]}):
                return fact("silent pin", note=n.pitch.name)
        if grips(notes, instrument, neck, {}):
            names = tuple(n.pitch.name for n in pinned)
            return fact("pins in the way", pinned=names, note=out.pitch.name)
    return why_impossible([out] if not instrument.places(out.midi) else notes, instrument, neck)
