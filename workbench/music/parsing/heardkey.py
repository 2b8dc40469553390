"""What a score leaves out or a fret cannot give: its key signature, quarter tones."""

from __future__ import annotations

import re
from collections import Counter
from dataclasses import replace

from workbench.language.names import key_words
from workbench.language.speech import count, say
from workbench.music.model import Key, Piece

SHARE = 0.9  # of the notes on a step that bear the signature's sign, for it to be heard
LEAST = 4  # notes that bear one
FLICKERS = 3  # signatures of a single bar, one after another, that nobody means
_SHARPS = "FCGDAEB"
_MEASURE = re.compile(
    r"<measure\b[^>]*?\bnumber=[\"']([^\"']*)[\"']|<alter>\s*(-?[\d.]+)\s*</alter>"
)


def with_heard_key(piece: Piece, key: Key) -> Piece:
    """The piece in ``key`` where it has no key signature and its notes bear that key's
    sharps or flats throughout; else as it is."""
    if not key.fifths or any(bar.key.fifths for bar in piece.bars):
        return piece
    sign = 1 if key.fifths > 0 else -1
    steps = _SHARPS[: key.fifths] if key.fifths > 0 else _SHARPS[key.fifths :]
    met = Counter((n.pitch.step, n.pitch.alter) for n in piece.notes)
    borne = 0
    for step in steps:
        every = sum(n for (name, _), n in met.items() if name == step)
        borne += met[step, sign]
        if every and met[step, sign] < SHARE * every:
            return piece
    if borne < LEAST or not met[steps[0] if sign > 0 else steps[-1], sign]:
        return piece
    told = say(
        "The score has no key signature; it is shown in {key}, as it is heard.",
        key=key_words(key.name),
    )
    bars = tuple(replace(bar, key=key) for bar in piece.bars)
    return replace(piece, bars=bars, key=key, warnings=(*piece.warnings, told))


def with_settled_keys(piece: Piece) -> Piece:
    """The piece without signatures that go to and fro at every bar, as programs that convert
    scores write them: each such bar takes the key around it. The notes stay as they sound."""
    keys = [bar.key for bar in piece.bars]
    changed: list[int] = []
    at = 1
    while at + 1 < len(keys):
        stop = at
        while stop + 1 < len(keys) and keys[stop] != keys[at - 1] == keys[stop + 1]:
            stop += 2
        found = range(at, stop, 2)
        if len(found) >= FLICKERS:
            changed += found
        at = max(at + 1, stop)
    if not changed:
        return piece
    bars = list(piece.bars)
    for place in changed:
        bars[place] = replace(bars[place], key=keys[place - 1])
    told = say(
        "The key signature goes to and fro from bar {first} to bar {last}; {key} is kept there.",
        first=bars[changed[0]].number,
        last=bars[changed[-1]].number,
        key=key_words(keys[changed[0] - 1].name),
    )
    return replace(piece, bars=tuple(bars), warnings=(*piece.warnings, told))


def quarter_tones_told(text: str) -> tuple[str, ...]:
    """A sentence on the notes of a MusicXML text that lie between two frets; none where
    there are none. The standard's <alter> is 0.5 for a quarter tone up."""
    bars: list[str] = []
    bar, notes = "", 0
    for found in _MEASURE.finditer(text):
        if found[1] is not None:
            bar = found[1]
        elif float(found[2]) % 1:
            notes += 1
            bars.append(bar)
    if not notes:
        return ()
    where = ", ".join(list(dict.fromkeys(bars))[:8])
    return (
        count(
            notes,
            "{n} quarter tone (bar {bars}): frets give half tones, so it is read as the nearest "
            "one.",
            "{n} quarter tones (bars {bars}): frets give half tones, so they are read as the "
            "nearest ones.",
            bars=where,
        ),
    )
