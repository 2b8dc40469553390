"""What the teacher's sheet adds: rejected fingerings and the legato audit."""

from __future__ import annotations

from fractions import Fraction

from workbench.fingering.types import Fingering
from workbench.handout.blocks import Block, Column, Space, TableRow, TextBlock
from workbench.handout.words import bars_word, beat_word, pretty_pitch
from workbench.music.model import Piece
from workbench.teaching.lesson import BarNote

_COLUMNS = (Column("Bar", 7), Column("Beat", 8), Column("Note", 8), Column("Written", 10),
            Column("Held", 10), Column("Why it is cut", 57))


def rejected_words(note: BarNote, piece: Piece) -> str:
    """The rejected fingering of a note as one more paragraph."""
    names = {n.id: pretty_pitch(n.pitch) for n in piece.notes}
    rows = [
        f"{names.get(note_id, 'note')} on string {string}, fret {fret}, finger {finger}"
        for note_id, string, fret, finger in note.rejected
    ]
    return "\n**Rejected:** " + "; ".join(rows) + "." if rows else ""


def length_word(length: Fraction) -> str:
    """Quarter length as a number with a fraction: ``1 1/2``."""
    whole, part = divmod(length, 1)
    if part == 0:
        return str(whole)
    return f"{whole} {part}" if whole else str(part)


def audit_blocks(piece: Piece, fingering: Fingering, width: float, scale: float) -> list[Block]:
    """Legato in figures, and a table of every note cut, the longest loss first."""
    audit = fingering.audit
    cut_words = "No note is cut." if not audit.cut else f"{audit.cut} cut short."
    summary = (
        f"{audit.notes} notes, {cut_words} {audit.held_fraction:.1%} of the written length is held."
    )
    blocks: list[Block] = [
        Space(6 * scale),
        TextBlock(summary, width, scale, heading="Legato audit"),
    ]
    cuts = [(b, n) for b in fingering.bars for n in b.notes if n.cut_reason]
    cuts.sort(key=lambda c: (c[1].held - c[1].duration, c[0].index, c[1].onset))
    if cuts:
        blocks.append(TableRow([c.title for c in _COLUMNS], _COLUMNS, width, scale, head=True))
    names = {n.id: pretty_pitch(n.pitch) for n in piece.notes}
    units = {b.index: b.time_signature[1] for b in piece.bars}
    for bar, note in cuts:
        cells = (bar.number, beat_word(note.onset, units.get(bar.index, 4)),
                 names.get(note.id, ""), length_word(note.duration), length_word(note.held),
                 note.cut_reason or "")
        blocks.append(TableRow(cells, _COLUMNS, width, scale))
    lost = [
        f"Bar {b.number}: {reason}"
        for b in fingering.bars
        for reason in dict.fromkeys([b.impossible, *(n.impossible for n in b.notes)])
        if reason
    ]
    if lost:
        heading = "Cannot be played as written"
        blocks.append(TextBlock("\n".join(lost), width, scale, heading=heading))
    joins = [
        f"From {bars_word(piece, j.from_bar, j.from_bar).lower()} into "
        f"{bars_word(piece, j.to_bar, j.to_bar).lower()}: {j.reason}"
        for j in audit.joins
    ]
    blocks.append(Space(8 * scale))
    if joins:
        blocks.append(TextBlock("\n".join(joins), width, scale, heading="At the joins"))
    return blocks
