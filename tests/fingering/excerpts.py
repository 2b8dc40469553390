"""A few bars of real scores, laid on an instrument: outside material for the engine.

The scores are those shipped inside the music21 package (its corpus), read and
arranged by our own code. A fixed sample: the same files and bars every time.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from functools import lru_cache
from pathlib import Path
from random import Random

from tests.fingering.build import piece
from workbench.arranging.arrange import arrange
from workbench.instrument.model import Instrument
from workbench.music.errors import BadInput
from workbench.music.model import Bar, Piece
from workbench.music.reading.score import read_score

FOLDERS = ("ryansMammoth", "essenFolksong", "airdsAirs", "oneills1850", "bach", "monteverdi")


@lru_cache(maxsize=8)
def files(folder: str) -> tuple[Path, ...]:
    """Score files of one folder of the corpus, by name."""
    from music21 import corpus

    home = [Path(p) for p in corpus.getCorePaths()]
    kinds = (".abc", ".mxl", ".xml", ".musicxml")
    return tuple(sorted(p for p in home if folder in p.parts and p.suffix in kinds))


def excerpt(piece: Piece, first: int, count: int, repeated: bool = False) -> Piece:
    """``count`` written bars from ``first`` as a piece of their own; ``repeated``: played twice."""
    bars: list[Bar] = []
    for i, bar in enumerate(piece.bars[first : first + count]):
        bars.append(
            replace(
                bar, index=i, repeat_start=False, repeat_end=False, endings=(), jump="",
                fine=False, to_coda=False, coda=False, segno=False, times=2,
            )
        )  # fmt: skip
    if repeated and bars:
        bars[0] = replace(bars[0], repeat_start=True)
        bars[-1] = replace(bars[-1], repeat_end=True)
    return replace(piece, bars=tuple(bars))


def taken(
    folder: str,
    on: Instrument,
    number: int,
    bars: int,
    step: int = 7,
    parts: str | None = None,
    repeated: bool = False,
) -> Iterator[tuple[str, Piece]]:
    """``number`` excerpts of ``bars`` bars from every ``step``-th file of a folder, each
    from its second bar on, arranged for an instrument. Scores that cannot be read
    or are too short are passed over."""
    found = 0
    for path in files(folder)[::step]:
        if found == number:
            return
        try:
            whole = read_score(path, parts=parts)
        except BadInput:
            continue
        part = excerpt(whole, 1, bars, repeated)
        if len(part.bars) < bars or not any(n.duration > 0 for n in part.notes):
            continue
        found += 1
        yield f"{folder}/{path.name}", arrange(part, on).piece


SCALE = ("C4", "D4", "E4", "F4", "G4", "A4", "Bb4", "C5", "D5", "E5", "F5")


def two_voices(bars: int) -> Piece:
    """Music of our own in two voices, 8 notes over 2 long ones a bar: a melody that walks
    by chance through F major, so that hardly any bar is like another. Always the same."""
    chance = Random(64)
    at, out = 6, []
    for _ in range(bars):
        top = []
        for _ in range(8):
            at = min(10, max(4, at + chance.choice((-2, -1, -1, 1, 1, 2))))
            top.append(f"{SCALE[at]}:1/2")
        low = [f"{SCALE[chance.randrange(0, 4)]}:2" for _ in range(2)]
        out.append(" ".join(top) + " | " + " ".join(low))
    return piece(*out)
