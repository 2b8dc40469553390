"""How bars are called: by the numbers printed over them, a bar of number 0 being a pickup.

All of these are said later, in the language spoken then.
"""

from __future__ import annotations

from collections.abc import Iterable

from workbench.language.message import Message, Text, Unsaid, counted, message
from workbench.music.model import Piece

PICKUP = "0"


def bar_name(number: str) -> Message:
    """A bar in a list: "bar 3", or "pickup"."""
    return message("pickup") if number == PICKUP else message("bar {number}", number=number)


def the_bar(number: str) -> Message:
    """A bar inside a sentence: "bar 3", or "the pickup"."""
    return message("the pickup") if number == PICKUP else message("bar {number}", number=number)


def bar_heading(number: str) -> Message:
    """A bar that begins a line: "Bar 3", or "Pickup"."""
    return message("Pickup") if number == PICKUP else message("Bar {bar}", bar=number)


def bar_opening(number: str) -> Message:
    """A bar that begins a sentence: "Bar 3", or "The pickup"."""
    return message("The pickup") if number == PICKUP else message("Bar {bar}", bar=number)


def stretch_heading(piece: Piece, first: int, last: int) -> Text:
    """Written bars that begin a line: "Bar 3", "Bars 3–5", "Pickup to bar 4"; "" where the
    piece has no such bars."""
    at = {b.index: b for b in piece.bars}
    if first not in at or last not in at:
        return ""
    if first == last:
        return message("Pickup") if at[first].pickup else message("Bar {bar}", bar=at[first].number)
    if at[first].pickup:
        return message("Pickup to bar {bar}", bar=at[last].number)
    return message("Bars {first}–{last}", first=at[first].number, last=at[last].number)


def bars_named(piece: Piece, indices: Iterable[int]) -> Unsaid:
    """ "bar 3", "bars 1–4", "pickup, bars 2, 5–6": printed numbers of written bars."""
    wanted = sorted(set(indices))
    if not wanted:
        return message("no bar")
    if wanted[0] < len(piece.bars) and piece.bars[wanted[0]].number == PICKUP:
        after = wanted[1:]
        if not after:
            return message("pickup")
        return message("pickup, {bars}", bars=bars_named(piece, after))
    runs: list[list[int]] = [[wanted[0], wanted[0]]]
    for index in wanted[1:]:
        if index == runs[-1][1] + 1:
            runs[-1][1] = index
        else:
            runs.append([index, index])
    number = {bar.index: bar.number for bar in piece.bars}
    parts = [number[a] if a == b else f"{number[a]}–{number[b]}" for a, b in runs]
    return counted(len(wanted), "bar {bars}", "bars {bars}", bars=", ".join(parts))
