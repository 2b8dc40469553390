"""Bars put in, taken out and written again."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from fractions import Fraction

from workbench.language.message import Message, message
from workbench.music.bar_names import bar_opening, the_bar
from workbench.music.edits.lengths import struck_anew
from workbench.music.edits.line import (
    Row,
    finished,
    fresh_ids,
    lasting,
    rows_of,
)
from workbench.music.errors import BadInput
from workbench.music.model import Bar, Note, Piece
from workbench.music.order.form import playing_order

MOST_BARS = 2000
_NUMBER = re.compile(r"(\d+)(.*)\Z", re.DOTALL)


@dataclass(frozen=True)
class Rebarred:
    """A piece whose bars are others than before. ``bars`` says for every written bar
    of the piece before where its music begins now; None where the bar is gone."""

    piece: Piece
    bars: tuple[int | None, ...]


def insert_bars(piece: Piece, at: int, count: int = 1) -> Rebarred:
    """Put ``count`` empty bars before the bar of index ``at``; at the end where ``at``
    is the number of bars.

    They take key and time signature of the bar before (the first bar's at the beginning).
    A note held over that bar line is struck anew after the new bars. Raises BadInput
    for a place before a pickup, or for more bars than a piece can have.
    """
    _check_count(piece, count)
    if at == 0 and piece.bars[0].pickup:
        raise BadInput("The pickup comes first; put the bar after it.")
    like = piece.bars[max(0, at - 1)]
    if like.pickup and at < len(piece.bars):
        like = replace(piece.bars[at], endings=())
    after = piece.bars[at].endings if at < len(piece.bars) else ()
    count_, unit = like.time_signature
    empty = Bar(
        index=0, number="", time_signature=like.time_signature,
        length=Fraction(4 * count_, unit), notes=(), key=like.key,
        endings=like.endings if like.endings and after == like.endings else (),
    )  # fmt: skip
    return _spliced(_parted(piece, at), at, [empty] * count)


def duplicate_bars(piece: Piece, first: int, last: int) -> Rebarred:
    """Write bars ``first`` to ``last`` once more after the last of them, without their
    repeats and signs; notes get new ids, and end with the copied bars."""
    _check_span(piece, first, last)
    _check_count(piece, last + 1 - first)
    if piece.bars[first].pickup:
        raise BadInput("The pickup cannot be written again; choose bars after it.")
    parted = _parted(piece, last + 1)
    ids = iter(fresh_ids(parted, sum(len(b.notes) for b in parted.bars[first : last + 1])))
    end = piece.starts[last] + piece.bars[last].length
    copies = []
    for bar in parted.bars[first : last + 1]:
        room = end - piece.starts[bar.index]
        notes = tuple(
            replace(n if n.onset + n.duration <= room else lasting(n, room - n.onset), id=next(ids))
            for n in bar.notes
        )
        plain = replace(bar.without_form(), section="", tempo=None, double_bar=False, times=2)
        copies.append(replace(plain, notes=notes))
    return _spliced(parted, last + 1, copies)


def delete_bars(piece: Piece, first: int, last: int) -> Rebarred:
    """Take bars ``first`` to ``last`` out with all that is in them.

    A note held into them ends at the bar line. A repeat that loses only its first or
    last bar goes on with the bar beside it; endings without a first ending are dissolved.
    Raises BadInput where no bar would be left.
    """
    _check_span(piece, first, last)
    if last + 1 - first == len(piece.bars):
        raise BadInput("A piece needs at least one bar; keep one, or start a new piece.")
    edge = piece.starts[first]
    rows: list[Row] = []
    for at, note in rows_of(piece):
        if at < edge and at + note.duration > edge and not note.grace:
            note = lasting(note, edge - at)
        rows.append((at, note))
    cut = finished(piece, rows)
    gone = cut.bars[first : last + 1]
    before, after = list(cut.bars[:first]), list(cut.bars[last + 1 :])
    _hand_on(before, gone, after)
    by = -sum(1 for b in gone if _numbered(b))
    kept = [*before, *(replace(b, number=_counted(b.number, by)) for b in after)]
    out = _indexed(piece, kept)
    size = last + 1 - first
    bars = tuple(
        None if first <= i <= last else i - size * (i > last) for i in range(len(piece.bars))
    )
    return Rebarred(out, bars)


def _hand_on(before: list[Bar], gone: tuple[Bar, ...], after: list[Bar]) -> None:
    """What the deleted bars leave to their neighbours."""
    repeats = sum(b.repeat_start for b in gone) - sum(b.repeat_end for b in gone)
    if after and repeats > 0:
        after[0] = replace(after[0], repeat_start=True)
    if before and repeats < 0 and not gone[-1].endings:
        times = next(b.times for b in gone if b.repeat_end)
        before[-1] = replace(before[-1], repeat_end=True, times=times)
    if before and gone[-1].double_bar:
        before[-1] = replace(before[-1], double_bar=True)
    if not after:
        return
    tempo = next((b.tempo for b in reversed(gone) if b.tempo is not None), None)
    if tempo is not None and after[0].tempo is None:
        after[0] = replace(after[0], tempo=tempo)
    section = next((b.section for b in gone if b.section), "")
    if section and not after[0].section:
        after[0] = replace(after[0], section=section)


def _parted(piece: Piece, at: int) -> Piece:
    """The piece with every note that is held over the bar line before ``at`` struck anew."""
    if not 0 < at < len(piece.bars):
        return piece
    edge = piece.starts[at]
    rows = rows_of(piece)
    held = [n for s, n in rows if s < edge < s + n.duration and not n.grace]
    return finished(piece, struck_anew(piece, rows, held, edge)) if held else piece


def _spliced(piece: Piece, at: int, new: list[Bar]) -> Rebarred:
    before, after = list(piece.bars[:at]), piece.bars[at:]
    number = int(_counted(before[-1].number, 0) or 0) if before else 0
    for place, bar in enumerate(new, 1):
        before.append(replace(bar, number=str(number + place)))
    later = [replace(b, number=_counted(b.number, len(new))) for b in after]
    if not piece.bars[:at] and later and before:
        # put before everything: the first new bar takes the first bar's number
        start = int(_counted(after[0].number, 0) or 1)
        before = [replace(b, number=str(start + k)) for k, b in enumerate(before)]
    out = _indexed(piece, [*before, *later])
    return Rebarred(out, tuple(i + len(new) * (i >= at) for i in range(len(piece.bars))))


def _numbered(bar: Bar) -> bool:
    return not (bar.pickup and bar.number == "0") and bool(_NUMBER.match(bar.number))


def _counted(number: str, by: int) -> str:
    """A printed bar number moved on: 12a by 2 is 14a. With 0 the figure alone."""
    found = _NUMBER.match(number)
    if not found:
        return number if by else ""
    return str(int(found[1])) if not by else f"{max(0, int(found[1]) + by)}{found[2]}"


def _indexed(piece: Piece, bars: list[Bar]) -> Piece:
    """The piece with these bars, numbered through, its form made sound."""
    counted = [b if b.index == i else replace(b, index=i) for i, b in enumerate(bars)]
    return settled_form(replace(piece, bars=tuple(counted), key=counted[0].key))


def settled_form(piece: Piece) -> Piece:
    """The piece without endings that belong to no repeat, and without jumps to signs
    that are gone. Raises BadInput where the repeats ask for too much."""
    from workbench.music.order.endings import ending_groups

    bars = list(piece.bars)
    for group in ending_groups(piece.bars):
        if 1 not in group.runs[0].passes:
            for i in range(group.first, group.last + 1):
                bars[i] = replace(bars[i], endings=())
    segno, fine = any(b.segno for b in bars), any(b.fine for b in bars)
    coda = any(b.coda for b in bars)
    for i, bar in enumerate(bars):
        jump = bar.jump
        if jump.startswith("D.S.") and not segno:
            jump = jump.replace("D.S.", "D.C.")
        if (jump.endswith("al Fine") and not fine) or (jump.endswith("al Coda") and not coda):
            jump = jump[:4]
        to_coda = bar.to_coda and coda
        if (jump, to_coda) != (bar.jump, bar.to_coda):
            bars[i] = replace(bar, jump=jump, to_coda=to_coda)
    out = piece if tuple(bars) == piece.bars else replace(piece, bars=tuple(bars))
    playing_order(out)
    return out


def _check_span(piece: Piece, first: int, last: int) -> None:
    if not 0 <= first <= last < len(piece.bars):
        raise BadInput("There are no such bars; choose bars of the piece.")


def _check_count(piece: Piece, count: int) -> None:
    if count < 1 or len(piece.bars) + count > MOST_BARS:
        raise BadInput(
            "A piece has at most {most} bars and this one has {bars}; add fewer.",
            most=MOST_BARS,
            bars=len(piece.bars),
        )


def notes_in(piece: Piece, first: int, last: int) -> tuple[Note, ...]:
    """The notes struck in bars ``first`` to ``last``."""
    return tuple(n for b in piece.bars[first : last + 1] for n in b.notes)


def span_words(piece: Piece, first: int, last: int, *, opening: bool = False) -> Message:
    """``bar 5`` or ``bars 5 to 8``, inside a sentence or as its ``opening``."""
    if first == last:
        return (bar_opening if opening else the_bar)(piece.bars[first].number)
    named = {"first": piece.bars[first].number, "last": piece.bars[last].number}
    if opening:
        return message("Bars {first} to {last}", **named)
    return message("bars {first} to {last}", **named)
