"""Grips written as frets: from the highest-numbered string to string 1."""

from __future__ import annotations

import re
from collections.abc import Sequence

from workbench.fingering.telling.moments import moment_of
from workbench.fingering.types import FingeredBar
from workbench.instrument.model import Instrument
from workbench.music.errors import BadInput

Frets = tuple[int | None, ...]


def grip_text(frets: Sequence[int | None]) -> str:
    """A grip such as ``x-0-1-3`` (x: not played)."""
    return "-".join("x" if fret is None else str(fret) for fret in frets)


def grip_from_text(text: str, instrument: Instrument) -> Frets:
    """The grip that somebody typed: ``x-0-1-3``, ``x 0 1 3``, ``x,0,1,3`` or ``x013``.

    Raises BadInput where it is no grip of this instrument.
    """
    words = re.findall(r"\d+|[^\s,;\-–\d]+", text)
    if len(words) == 1 and len(words[0]) == instrument.strings:
        words = list(words[0])
    elif not re.search(r"[\s,;\-–]", text.strip()):
        words = [sign for word in words for sign in word]
    if len(words) != instrument.strings:
        raise BadInput(
            "Grip '{grip}': give one fret for each of the {strings} strings, from string "
            "{strings} to string 1, such as {example}.",
            grip=text.strip(),
            strings=instrument.strings,
            example=grip_text((2, *(0,) * (instrument.strings - 3), 1, 0)),
        )
    frets = tuple(_fret(word, instrument) for word in words)
    if all(fret is None for fret in frets):
        raise BadInput("Grip '{grip}': at least one string has to be played.", grip=text)
    return frets


def _fret(word: str, instrument: Instrument) -> int | None:
    if word.lower() == "x":
        return None
    if word.isascii() and word.isdigit() and int(word) <= instrument.playable_frets:
        return int(word)
    raise BadInput(
        "Grip: '{word}' is no fret of this instrument; write 0 (open) to {highest}, or x "
        "for a string that is not played.",
        word=word,
        highest=instrument.playable_frets,
    )


def grip_at(bar: FingeredBar, note: str | None, instrument: Instrument) -> Frets:
    """The grip of the moment at which a note begins, the first of the bar without one."""
    frets: list[int | None] = [None] * instrument.strings
    moment = moment_of(bar, note)
    for played in moment.notes if moment else ():
        if played.string is not None:
            frets[instrument.strings - played.string] = played.fret
    return tuple(frets)
