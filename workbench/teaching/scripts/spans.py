"""Bars of a script at which there is nothing to say but how they relate to bars before:
runs of them are said once, as "Bars 13 to 15: as before."."""

from __future__ import annotations

from collections.abc import Container, Sequence
from dataclasses import dataclass

from workbench.language.message import Message, Opening, Unsaid, message
from workbench.music.bar_names import the_bar
from workbench.music.model import Piece


@dataclass(frozen=True)
class Quiet:
    """A place in playing order with no words of the teacher and nothing new: the written
    ``bar``, and the earlier bar that is the same (itself where it is played again)."""

    position: int
    bar: int
    as_bar: int | None


def quiet_words(
    piece: Piece, quiet: Sequence[Quiet], breaks: Container[int]
) -> dict[int, tuple[Message, int]]:
    """What is said of quiet places, by position: the words and the last place they speak of.

    The words stand at the first place of a run; ``breaks`` are places where a run has to
    begin anew, such as those of sections.
    """
    out = {}
    run: list[Quiet] = []
    for one in quiet:
        if run and not (_goes_on(piece, run[-1], one) and one.position not in breaks):
            out[run[0].position] = _words(piece, run), run[-1].position
            run = []
        run.append(one)
    if run:
        out[run[0].position] = _words(piece, run), run[-1].position
    return out


def _goes_on(piece: Piece, before: Quiet, one: Quiet) -> bool:
    """Whether a place belongs to the run of the one before it: the next bar, alike in kind."""
    next_one = (one.position, one.bar) == (before.position + 1, before.bar + 1)
    return next_one and _kind(piece, before) == _kind(piece, one)


def _kind(piece: Piece, one: Quiet) -> tuple[str, int]:
    """What a quiet bar is, and how far away the bar lies that it is like."""
    if one.as_bar is not None:
        return "as", one.bar - one.as_bar
    return ("before" if piece.bars[one.bar].notes else "rest"), 0


def _words(piece: Piece, run: Sequence[Quiet]) -> Message:
    first, last = run[0], run[-1]
    kind, away = _kind(piece, first)
    if len(run) > 1:
        bars = _span(piece, first.bar, last.bar)
        if kind == "as" and away == 0:
            return message("{bars} again.", bars=bars)
        if kind == "as":
            before = _span(piece, first.bar - away, last.bar - away, first_word=False)
            return message("{bars} are as {before}.", bars=bars, before=before)
    else:
        bars = Opening(the_bar(piece.bars[first.bar].number))
        if kind == "as":
            before = the_bar(piece.bars[first.bar - away].number)
            return (
                message("{bar} again.", bar=bars)
                if away == 0
                else message("{bar} is as in {before}.", bar=bars, before=before)
            )
    if kind == "rest":
        return message("{bars}: rest.", bars=bars)
    if first.position == 0:
        return message("{bars}: nothing new.", bars=bars)
    return message("{bars}: as before.", bars=bars)


def _span(piece: Piece, first: int, last: int, *, first_word: bool = True) -> Unsaid:
    """ "Bars 13 to 15"; a pickup is named by itself."""
    if piece.bars[first].number == "0":
        words = message("the pickup to bar {last}", last=piece.bars[last].number)
    else:
        words = message("bars {first} to {last}", first=piece.bars[first].number,
                    last=piece.bars[last].number)  # fmt: skip
    return Opening(words) if first_word else words
