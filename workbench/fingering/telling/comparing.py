"""Two fingerings of a bar as a table in words."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from workbench.fingering.telling.heard import sounding
from workbench.fingering.telling.legato import held_fraction
from workbench.fingering.telling.reasons import name
from workbench.fingering.types import FingeredBar, FingeredNote
from workbench.language.names import note_words, percent, plain
from workbench.language.speech import say


@dataclass(frozen=True)
class Row:
    """One line of a comparison: what, and its figure in either fingering."""

    what: str
    first: str
    second: str


def compare(a: FingeredBar, b: FingeredBar) -> tuple[Row, ...]:
    """The comparison table of two fingerings of one bar."""
    both = (a, b)
    rows = [
        Row(say("written length held"), *(percent(held_fraction(x)) for x in both)),
        Row(say("notes cut"), *(str(sum(n.held < n.duration for n in x.notes)) for x in both)),
        Row(say("beats cut off"), *(plain(float(_lost(x))) for x in both)),
        Row(say("greatest reach"), *(f"{x.reach_mm:.0f} mm" for x in both)),
        Row(say("barres"), *(str(len(x.barres)) for x in both)),
        Row(say("fingers put down"), *(str(_put_down(x)) for x in both)),
        Row(say("strings played open"), *(str(_opened(x)) for x in both)),
    ]
    for kind, label in (
        ("shift", say("moves of the hand")),
        ("hop", say("hops")),
        ("guide", say("guide fingers")),
        ("planted", say("planted")),
    ):
        rows.append(Row(label, *(str(sum(n.move == kind for n in sounding(x))) for x in both)))
    for x, y in zip(a.notes, b.notes, strict=True):
        first, second = _figure(x), _figure(y)
        if first != second:
            beat = plain(float(x.onset) + 1)
            words = say("{note} at beat {beat}", note=note_words(name(x)), beat=beat)
            rows.append(Row(words, first, second))
    return tuple(rows)


def _lost(bar: FingeredBar) -> Fraction:
    """Quarter lengths that notes lose against what is written."""
    return sum((n.duration - n.held for n in sounding(bar)), Fraction(0))


def _put_down(bar: FingeredBar) -> int:
    """Fingers that come down somewhere new: a barre and a finger that stays count once."""
    return len({(n.onset, n.left) for n in sounding(bar) if n.left and n.move != "planted"})


def _opened(bar: FingeredBar) -> int:
    return sum(n.fret == 0 for n in sounding(bar))


def _length(q: Fraction) -> str:
    """A quarter length in words a teacher uses: ``1 1/2 beats`` counted in quarters."""
    whole, part = divmod(q, 1)
    text = str(whole) if whole or not part else ""
    if part:
        text = f"{text} {part}".strip()
    return say("{text} beat", text=text) if q <= 1 else say("{text} beats", text=text)


def _figure(n: FingeredNote) -> str:
    if n.string is None:
        return say("not played")
    place = say(
        "string {string} fret {fret} finger {finger} {right}",
        string=n.string,
        fret=n.fret,
        finger=n.left,
        right=n.right,
    )
    if n.held >= n.duration:
        return place
    held = say("held {held} of {written}", held=_length(n.held), written=_length(n.duration))
    return f"{place}, {held}"
