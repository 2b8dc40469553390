"""Tracks to practise with: a passage or a plan's item, slow or full, and clicks alone."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from workbench.fingering.types import Fingering
from workbench.instrument.model import A4_HZ, Instrument
from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.sound.bank import Bank
from workbench.sound.files import write_sound
from workbench.sound.hearing import FASTEST, Manner
from workbench.sound.plucked import RATE
from workbench.sound.programme import Programme
from workbench.sound.render import PEAK
from workbench.sound.transport import Transport
from workbench.teaching.planning.items import PlanItem

FULL = 100.0
STEP = 5  # percent: tracks of tempos nearer than this are one
BLOCK = RATE // 2
MOST_SECONDS = 3 * 3600

Progress = Callable[[float], None]


def programme_samples(
    programme: Programme, progress: Progress | None = None
) -> NDArray[np.float32]:
    """A programme that ends, as it would be heard, till nothing rings any more.

    Raises BadInput for one that would last more than three hours."""
    transport = Transport()
    rounds = list(replace(programme, manner=replace(programme.manner, loop=False)).rounds())
    whole = sum(r.size for r in rounds)
    if whole > MOST_SECONDS * RATE:
        raise BadInput("That is more than three hours of sound; choose fewer bars.")
    transport.play(iter(rounds))
    out = []
    while transport.ringing:
        if progress:
            progress(min(1.0, transport.delivered / max(1, whole)))
        out.append(transport.fill(BLOCK))
    samples = np.concatenate(out) if out else np.zeros(BLOCK, np.float32)
    peak = float(np.max(np.abs(samples), initial=0.0))
    if peak > 0:
        samples *= np.float32(PEAK / peak)
    return samples


def click_track(
    piece: Piece, order: Sequence[int], tempo: float, progress: Progress | None = None
) -> NDArray[np.float32]:
    """The metronome alone over the bars of an order, one bar counted in."""
    manner = Manner(tempo=tempo, metronome=True, count_in=True)
    silent = replace(piece, bars=tuple(replace(bar, notes=()) for bar in piece.bars))
    return programme_samples(Programme(silent, None, None, order, manner), progress)


@dataclass(frozen=True)
class Track:
    """A file of the practice folder: its name, bars, tempo in percent, and the plan's items
    it is for."""

    name: str
    bars: tuple[int, ...]
    tempo: int
    items: tuple[str, ...] = ()


def tracks_of(
    items: Sequence[PlanItem], order: Sequence[int], suffix: str = ".flac"
) -> tuple[Track, ...]:
    """A slow track for the first tempo of every plan item, a track at the last one, and the
    whole piece at full tempo; one for equal bars and tempos."""
    found: dict[tuple[tuple[int, ...], int], list[str]] = {}
    named: dict[tuple[int, ...], str] = {tuple(order): say("whole piece")}
    for item in items:
        if not item.bars or not item.tempo_to:
            continue
        named.setdefault(item.bars, str(item.where or say("whole piece")))
        for tempo in (item.tempo_from or item.tempo_to, item.tempo_to):
            found.setdefault((item.bars, _rounded(tempo)), []).append(item.id)
    whole = (tuple(order), round(FULL))
    found.setdefault(whole, [])
    out = []
    for number, ((bars, tempo), ids) in enumerate(found.items(), 1):
        name = say("{number} {where} at {tempo} percent", number=f"{number:02}",
                   where=named[bars].replace("–", "-"), tempo=tempo)  # fmt: skip
        out.append(Track(_as_file(name) + suffix, bars, tempo, tuple(dict.fromkeys(ids))))
    return tuple(out)


def _rounded(tempo: float) -> int:
    return int(min(FASTEST, max(STEP * 2, STEP * round(tempo / STEP))))


def _as_file(name: str) -> str:
    return re.sub(r"[^\w \-]", "-", name).strip()


def write_tracks(
    piece: Piece,
    fingering: Fingering | None,
    instrument: Instrument | None,
    tracks: Sequence[Track],
    folder: Path,
    progress: Progress | None = None,
    a4: float = A4_HZ,
) -> None:
    """Write the tracks into a folder, counted in. Raises BadInput where that cannot be."""
    folder.mkdir(parents=True, exist_ok=True)
    bank = Bank(instrument, a4)
    for done, track in enumerate(tracks):
        if progress:
            progress(done / len(tracks))
        manner = Manner(tempo=float(track.tempo), count_in=True)
        programme = Programme(piece, fingering, instrument, track.bars, manner, bank=bank)
        write_sound(programme_samples(programme), folder / track.name)


def held_lengths(fingering: Fingering) -> dict[str, Fraction]:
    """The quarter lengths that notes are really held, by id; 0 for what cannot be played."""
    return {
        n.id: (n.rings or n.held) if n.string is not None else Fraction(0)
        for bar in fingering.bars
        for n in bar.notes
    }
