"""A fingered piece as sound."""

from __future__ import annotations

from collections.abc import Callable, Sequence

import numpy as np
from numpy.typing import NDArray

from workbench.fingering.types import Fingering
from workbench.instrument.model import A4_HZ, Instrument
from workbench.music.model import Piece
from workbench.sound.bank import Bank
from workbench.sound.mix import Mix
from workbench.sound.plucked import RATE
from workbench.sound.timing import bar_times, order_of, soundings

TAIL_SECONDS = 1.0  # after the last note's end
PEAK = 0.8
BLOCK = RATE  # made in one go

Progress = Callable[[float], None]


def render(
    piece: Piece,
    fingering: Fingering | None = None,
    instrument: Instrument | None = None,
    tempo_percent: float = 100,
    bars: tuple[int, int] | None = None,
    order: Sequence[int] | None = None,
    progress: Progress | None = None,
    a4: float = A4_HZ,
) -> NDArray[np.float32]:
    """The piece as one channel of samples from -1 to 1, 44,100 a second.

    It follows the playing order, or ``order`` (written bar indices); ``bars``
    (first and last index) takes a passage, see ``timing.order_of``. Notes
    sound as long as the fingering really holds them; without one, as long as
    written. ``progress`` is told the share done, 0 to 1; what it raises stops
    the work. ``a4`` is the pitch of A4 in hertz. The same piece gives the same samples.

    Raises BadInput for bars or a tempo that cannot be.
    """
    times = bar_times(piece, order_of(piece, bars, order), tempo_percent)
    notes = soundings(piece, times, fingering, instrument)
    end = max([times[-1].start + times[-1].seconds, *(n.end for n in notes)])
    return rendered(Mix(notes, Bank(instrument, a4)), round((end + TAIL_SECONDS) * RATE), progress)


def rendered(mix: Mix, size: int, progress: Progress | None = None) -> NDArray[np.float32]:
    """So many frames of a mix, its loudest at the usual peak and its end silent."""
    out = np.zeros(size, np.float32)
    for start in range(0, size, BLOCK):
        if progress:
            progress(start / size)
        out[start : start + BLOCK] = mix.block(start, min(BLOCK, size - start))
    fade = min(size, round(TAIL_SECONDS * RATE / 2))  # strings that ring along still do
    out[size - fade :] *= (0.5 + 0.5 * np.cos(np.linspace(0, np.pi, fade))).astype(np.float32)
    peak = float(np.max(np.abs(out), initial=0.0))
    if peak > 0:
        out *= np.float32(PEAK / peak)
    if progress:
        progress(1.0)
    return out
