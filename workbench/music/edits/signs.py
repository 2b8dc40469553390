"""Repeats, endings, jumps, chord names, tempo and titles."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace
from fractions import Fraction

from workbench.language.message import message
from workbench.music.bar_names import bar_opening
from workbench.music.edits.bars import span_words
from workbench.music.errors import BadInput
from workbench.music.model import Bar, ChordName, Piece
from workbench.music.order.endings import ending_groups
from workbench.music.order.form import playing_order
from workbench.music.parsing.signs import MOST_TIMES

JUMPS = ("", "D.C.", "D.C. al Fine", "D.C. al Coda", "D.S.", "D.S. al Fine", "D.S. al Coda")
LONGEST_NAME = 24  # characters of a chord name
SLOWEST, FASTEST = 10, 400  # quarter notes a minute


def with_bar(piece: Piece, index: int, change: Callable[[Bar], Bar]) -> Piece:
    """The piece with one bar changed. Raises BadInput where there is no such bar, or the
    repeats then ask for too much."""
    if not 0 <= index < len(piece.bars):
        raise BadInput("There is no such bar; choose one of the piece.")
    bars = list(piece.bars)
    bars[index] = change(bars[index])
    out = replace(piece, bars=tuple(bars))
    playing_order(out)
    return out


def set_repeat(
    piece: Piece,
    index: int,
    *,
    start: bool | None = None,
    end: bool | None = None,
    times: int | None = None,
) -> Piece:
    """A repeat begins with a bar, or ends with it, and is played ``times`` in all.
    What is None stays. Raises BadInput for a number of times out of bounds."""
    if times is not None and not 2 <= times <= MOST_TIMES:
        raise BadInput(
            "A repeat is played 2 to {most} times in all; choose a number there.", most=MOST_TIMES
        )

    def change(bar: Bar) -> Bar:
        ends = bar.repeat_end if end is None else end
        return replace(
            bar,
            repeat_start=bar.repeat_start if start is None else start,
            repeat_end=ends,
            times=(bar.times if times is None else times) if ends else 2,
        )

    return with_bar(piece, index, change)


def set_endings(piece: Piece, first: int, last: int, passes: tuple[int, ...]) -> Piece:
    """Bars ``first`` to ``last`` are played only in these passes: (1,) first ending, (2,)
    second, () in all of them.

    The last bar of an ending that is followed by another gets its repeat sign. Raises
    BadInput where a later ending would stand without the one before it.
    """
    if not 0 <= first <= last < len(piece.bars):
        raise BadInput("There are no such bars; choose bars of the piece.")
    if any(not 1 <= p <= MOST_TIMES for p in passes):
        raise BadInput("Endings are numbered 1 to {most}; choose there.", most=MOST_TIMES)
    bars = list(piece.bars)
    for i in range(first, last + 1):
        bars[i] = replace(bars[i], endings=tuple(sorted(set(passes))))
    out = replace(piece, bars=tuple(bars))
    for group in ending_groups(out.bars):
        if 1 not in group.runs[0].passes:
            raise BadInput(
                "{bars} would be a later ending without a first one before it; "
                "mark the first ending first.",
                bars=span_words(out, group.runs[0].first, group.runs[0].last, opening=True),
            )
        for run in group.runs[:-1]:
            bars[run.last] = replace(bars[run.last], repeat_end=True)
        if not passes or len(group.runs) > 1:
            continue
        # a first ending alone as yet: its repeat sign shows what it is for
        bars[group.last] = replace(bars[group.last], repeat_end=True)
    out = replace(piece, bars=tuple(bars))
    playing_order(out)
    return out


def clear_endings(piece: Piece, index: int) -> Piece:
    """Dissolve the endings around a bar: their bars are played each time."""
    for group in ending_groups(piece.bars):
        if group.first <= index <= group.last:
            bars = list(piece.bars)
            for i in range(group.first, group.last + 1):
                bars[i] = replace(bars[i], endings=())
            return replace(piece, bars=tuple(bars))
    raise BadInput(
        "{bar} is in no ending; choose a bar under a bracket.",
        bar=bar_opening(piece.bars[index].number),
    )


def set_double_bar(piece: Piece, index: int, on: bool) -> Piece:
    """A double bar line ends the bar, or a plain one."""
    return with_bar(piece, index, lambda bar: replace(bar, double_bar=on))


def set_jump(piece: Piece, index: int, jump: str) -> Piece:
    """D.C. or D.S. after a bar, one of ``JUMPS``. Raises BadInput where it leads to a
    sign that the piece has not."""
    if jump not in JUMPS:
        raise BadInput("'{jump}' is no jump; choose one of the list.", jump=jump)
    needs = {
        "D.S.": (any(b.segno for b in piece.bars), message("Segno")),
        "al Fine": (any(b.fine for b in piece.bars), message("Fine")),
        "al Coda": (any(b.coda for b in piece.bars), message("Coda")),
    }
    for word, (there, sign) in needs.items():
        if word in jump and not there:
            raise BadInput(
                "{jump} leads to a {sign}, and the piece has none; mark its bar first.",
                jump=jump,
                sign=sign,
            )
    return with_bar(piece, index, lambda bar: replace(bar, jump=jump))


def set_signs(
    piece: Piece,
    index: int,
    *,
    segno: bool | None = None,
    coda: bool | None = None,
    to_coda: bool | None = None,
    fine: bool | None = None,
) -> Piece:
    """Signs of a bar that jumps lead to; what is None stays."""

    def change(bar: Bar) -> Bar:
        return replace(
            bar,
            segno=bar.segno if segno is None else segno,
            coda=bar.coda if coda is None else coda,
            to_coda=bar.to_coda if to_coda is None else to_coda,
            fine=bar.fine if fine is None else fine,
        )

    return with_bar(piece, index, change)


def set_chord(piece: Piece, index: int, onset: Fraction, text: str) -> Piece:
    """The chord name over a moment of a bar; none where it is empty."""
    name = _short(text)
    if not 0 <= index < len(piece.bars) or not 0 <= onset < piece.bars[index].length:
        raise BadInput("That moment lies outside the bar; choose one inside.")

    def change(bar: Bar) -> Bar:
        rest = [c for c in bar.chords if c.onset != onset]
        if name:
            rest.append(ChordName(onset, name))
        return replace(bar, chords=tuple(sorted(rest, key=lambda c: c.onset)))

    return with_bar(piece, index, change)


def set_tempo(piece: Piece, index: int, tempo: float | None) -> Piece:
    """Quarter notes a minute from a bar on; None takes the mark away, save at the
    beginning. Raises BadInput for a tempo nobody plays."""
    if tempo is None:
        if index == 0:
            raise BadInput("The piece needs a tempo at its beginning; give one.")
        return with_bar(piece, index, lambda bar: replace(bar, tempo=None))
    if not (math.isfinite(tempo) and SLOWEST <= tempo <= FASTEST):
        raise BadInput(
            "Tempo: give {slow} to {fast} quarter notes a minute.", slow=SLOWEST, fast=FASTEST
        )
    if index == 0:
        had = piece.bars[0].tempo is not None if piece.bars else False
        out = replace(piece, tempo=float(tempo))
        return with_bar(out, 0, lambda bar: replace(bar, tempo=float(tempo) if had else None))
    return with_bar(piece, index, lambda bar: replace(bar, tempo=float(tempo)))


def set_titles(piece: Piece, title: str, composer: str, arranger: str) -> Piece:
    """Title, composer and arranger. Raises BadInput without a title."""
    named = " ".join(title.split())
    if not named:
        raise BadInput("A piece needs a title; write at least one word.")
    return replace(
        piece,
        title=named,
        composer=" ".join(composer.split()),
        arranger=" ".join(arranger.split()),
    )


def _short(text: str) -> str:
    name = " ".join(text.split())
    if len(name) > LONGEST_NAME:
        raise BadInput(
            "'{text}' is too long to be printed there; use at most {most} characters.",
            text=name[:LONGEST_NAME] + "…",
            most=LONGEST_NAME,
        )
    return name
