"""What a score leaves out or a fret cannot give: its key signature, quarter tones."""

from __future__ import annotations

import re
from collections import Counter
from dataclasses import replace
from itertools import groupby

from workbench.language.fact import Fact, fact
from workbench.music.model import Key, Piece

SHARE = 0.9  # of the notes on a step that bear the signature's sign, for it to be heard
MOST = 0.6  # the same where the music ends on the keynote
LEAST = 3  # notes that bear one; two moved a chorale in the Dorian mode
MAIN = 0.6  # of the chord symbols that are the key's I, IV or V, for them to tell it
FLICKERS = 3  # signatures of a single bar, one after another, that nobody means
AGAINST = 0.15  # more of the notes another signature's scale has where one was set wrongly
ENOUGH = 60  # notes under a signature, to judge it by
_SHARPS = "FCGDAEB"
_CHORD = re.compile(r"([A-G])([#b]*)(m(?!aj)|-|min)?")
_MEASURE = re.compile(
    r"<measure\b[^>]*?\bnumber=[\"']([^\"']*)[\"']|<alter>\s*(-?[\d.]+)\s*</alter>"
)


def key_of_chords(piece: Piece) -> Key | None:
    """The key that chord symbols tell: of its keynote is the first chord and the last, or the
    first chord and the last bass note, and most of the others are its IV and V. None where
    they tell none."""
    found = [m for bar in piece.bars for c in bar.chords if (m := _CHORD.match(c.text))]
    if not found:
        return None
    roots = [_fifths(m[1], _alter(m[2])) for m in found]
    minor = bool(found[0][3])
    key = Key(roots[0] - (3 if minor else 0), "minor" if minor else "major")
    main = sum(root - roots[0] in (0, -1, 1) for root in roots)
    ends = roots[-1] == roots[0] or _ends_on(piece, key)
    return key if ends and main >= MAIN * len(roots) and abs(key.fifths) <= 7 else None


def with_heard_key(piece: Piece, key: Key) -> Piece:
    """The piece in ``key`` where it has no key signature and its notes, and the roots of its
    chord symbols, bear that key's sharps or flats: throughout, or mostly where the music or
    its chord symbols end on the keynote; else as it is."""
    if not key.fifths or any(bar.key.fifths for bar in piece.bars):
        return piece
    sign = 1 if key.fifths > 0 else -1
    steps = _SHARPS[: key.fifths] if key.fifths > 0 else _SHARPS[key.fifths :]
    met = Counter((n.pitch.step, n.pitch.alter) for n in piece.notes)
    met.update(
        (m[1], _alter(m[2])) for b in piece.bars for c in b.chords if (m := _CHORD.match(c.text))
    )
    share = MOST if _ends_on(piece, key) or key_of_chords(piece) == key else SHARE
    borne = 0
    for step in steps:
        every = sum(n for (name, _), n in met.items() if name == step)
        borne += met[step, sign]
        if every and met[step, sign] < share * every:
            return piece
    if borne < LEAST or not met[steps[0] if sign > 0 else steps[-1], sign]:
        return piece
    told = fact("no signature", key=key.name)
    bars = tuple(replace(bar, key=key) for bar in piece.bars)
    return replace(piece, bars=bars, key=key, warnings=(*piece.warnings, told))


def _ends_on(piece: Piece, key: Key) -> bool:
    """Whether the lowest of the last notes is the keynote."""
    last = next((bar for bar in reversed(piece.bars) if bar.notes), None)
    if last is None:
        return False
    onset = max(n.onset for n in last.notes)
    low = min((n for n in last.notes if n.onset == onset), key=lambda n: n.midi)
    tonic = key.fifths + (3 if key.mode == "minor" else 0)
    return _fifths(low.pitch.step, low.pitch.alter) == tonic


def _fifths(step: str, alter: int) -> int:
    """How many fifths above C a note lies."""
    return _SHARPS.index(step) - 1 + 7 * alter


def _alter(signs: str) -> int:
    return signs.count("#") - signs.count("b")


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
    told = fact(
        "signature to and fro",
        first=bars[changed[0]].number,
        last=bars[changed[-1]].number,
        key=keys[changed[0] - 1].name,
    )
    return replace(piece, bars=tuple(bars), warnings=(*piece.warnings, told))


def with_fitting_keys(piece: Piece) -> Piece:
    """The piece without signatures that its notes contradict, as a slip in a file has them: a
    stretch of bars under one takes that whose scale has most of its notes. They stay as they
    sound. Of 43 guitar studies and 180 scores of music21's corpus one is changed."""
    bars, told = list(piece.bars), list(piece.warnings)
    for now, stretch in groupby(piece.bars, key=lambda bar: bar.key):
        row = list(stretch)
        sounding = Counter(n.midi % 12 for bar in row for n in bar.notes)
        has = {k: sum(sounding[pc] for pc in _scale(k)) for k in range(-7, 8)}
        best = max(has, key=lambda k: (has[k], -abs(k - now.fifths)))
        least = AGAINST * sounding.total()
        if sounding.total() < ENOUGH or has[best] - has[now.fifths] < least:
            continue
        # minor for major of the same keynote, or the other way, else the mode stays
        up = 3 if now.mode == "minor" else -3
        other = "major" if now.mode == "minor" else "minor"
        key = Key(best, other if best - now.fifths == up else now.mode)
        for bar in row:
            bars[bar.index] = replace(bar, key=key)
        told.append(
            fact("signature against notes", first=row[0].number, last=row[-1].number,
                 was=now.name, key=key.name)
        )  # fmt: skip
    if len(told) == len(piece.warnings):
        return piece
    return replace(piece, bars=tuple(bars), key=bars[0].key, warnings=tuple(told))


def _scale(fifths: int) -> set[int]:
    """The pitch classes of a signature's scale."""
    return {7 * (fifths + k) % 12 for k in range(-1, 6)}


def quarter_tones_told(text: str) -> tuple[Fact, ...]:
    """A warning of the notes of a MusicXML text that lie between two frets; none where
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
    return (fact("quarter tones", n=notes, bars=where),)
