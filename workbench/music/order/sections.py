"""The sections of a piece: by rehearsal marks, else by what divides the page."""

from __future__ import annotations

from dataclasses import dataclass

from workbench.music.model import Bar, Piece
from workbench.music.order.endings import ending_groups
from workbench.music.remembered import remembered


@dataclass(frozen=True)
class Section:
    """Written bars ``first_bar`` to ``last_bar`` (indices, inclusive) under one letter.

    Sections with the same music bear the same letter.
    """

    letter: str
    first_bar: int
    last_bar: int


@remembered
def sections(piece: Piece) -> tuple[Section, ...]:
    """The sections in written order, covering every bar once.

    Rehearsal marks rule where there are any; else repeats, endings, double
    bar lines, Fine, Coda and changes of key divide the piece.
    """
    bars = piece.bars
    if not bars:
        return ()
    if any(b.section for b in bars):
        starts = [0] + [b.index for b in bars if b.section and b.index > 0]
        names = [bars[s].section or "Intro" for s in starts]
    else:
        starts = _divided(bars)
        names = _lettered(bars, starts)
    ends = [s - 1 for s in starts[1:]] + [len(bars) - 1]
    return tuple(Section(n, a, b) for n, a, b in zip(names, starts, ends, strict=True))


def _divided(bars: tuple[Bar, ...]) -> list[int]:
    starts = {0}
    endings = {i: g for g in ending_groups(bars) for i in range(g.first, g.last + 1)}
    for bar in bars:
        group = endings.get(bar.index)
        if group is not None:
            if bar.index == group.last:
                starts.add(bar.index + 1)
            if bar.index != group.first:
                continue
        elif bar.repeat_end or bar.fine or bar.jump or bar.double_bar:
            starts.add(bar.index + 1)
        before = bars[bar.index - 1] if bar.index else None
        if bar.repeat_start or bar.coda or (before is not None and before.key != bar.key):
            starts.add(bar.index)
    starts.discard(len(bars))
    return _joined(bars, sorted(starts))


def _joined(bars: tuple[Bar, ...], starts: list[int]) -> list[int]:
    """A stretch that is only a pickup belongs to the section it leads into."""
    out: list[int] = []
    skip = False
    for place, start in enumerate(starts):
        if not skip:
            out.append(start)
        stop = starts[place + 1] if place + 1 < len(starts) else len(bars)
        skip = stop - start == 1 and stop < len(bars) and leads_in(bars[start])
    return out


def leads_in(bar: Bar) -> bool:
    """Whether a bar is a pickup, or the first bar written full with rests before its notes."""
    late = bool(bar.notes) and min(n.onset for n in bar.notes) > 0
    return bar.pickup or (bar.index == 0 and late)


def _lettered(bars: tuple[Bar, ...], starts: list[int]) -> list[str]:
    seen: dict[object, str] = {}
    out: list[str] = []
    for place, start in enumerate(starts):
        stop = starts[place + 1] if place + 1 < len(starts) else len(bars)
        if bars[start].coda:
            out.append("Coda")
            continue
        music = tuple(_sound(b) for b in bars[start:stop])
        if music not in seen:
            seen[music] = _letter(len(seen))
        out.append(seen[music])
    return out


def _sound(bar: Bar) -> object:
    return (
        bar.length,
        tuple(sorted((n.onset, n.midi, n.duration, n.voice, n.grace) for n in bar.notes)),
    )


def _letter(number: int) -> str:
    """A, B ... Z, AA, AB ..."""
    letters = ""
    number += 1
    while number:
        number, rest = divmod(number - 1, 26)
        letters = chr(ord("A") + rest) + letters
    return letters
