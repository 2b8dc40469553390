"""A fingered piece as sound."""

from __future__ import annotations

from collections.abc import Callable, Sequence

import numpy as np
from numpy.typing import NDArray

from workbench.fingering.types import Fingering
from workbench.instrument.model import Instrument, frequency
from workbench.music.model import Piece
from workbench.sound.plucked import RATE, Samples, pluck
from workbench.sound.timing import Sounding, bar_times, order_of, soundings
from workbench.sound.tone import string_tone, through_body

RELEASE_SECONDS = 0.06  # a lifted finger damps the string in this time
TAIL_SECONDS = 1.0  # after the last note's end
LONGEST_SECONDS = 8.0  # no string rings longer
PEAK = 0.8
TAKES = 2  # a pitch is plucked in so many ways in turn, lest it sound like a machine

Progress = Callable[[float], None]


def render(
    piece: Piece,
    fingering: Fingering | None = None,
    instrument: Instrument | None = None,
    tempo_percent: float = 100,
    bars: tuple[int, int] | None = None,
    order: Sequence[int] | None = None,
    progress: Progress | None = None,
) -> NDArray[np.float32]:
    """The piece as one channel of samples from -1 to 1, 44,100 a second.

    It follows the playing order, or ``order`` (written bar indices); ``bars``
    (first and last index) takes a passage, see ``timing.order_of``. Notes
    sound as long as the fingering really holds them; without one, as long as
    written. ``progress`` is told the share done, 0 to 1; what it raises stops
    the work. The same piece gives the same samples.

    Raises BadInput for bars or a tempo that cannot be.
    """
    times = bar_times(piece, order_of(piece, bars, order), tempo_percent)
    notes = soundings(piece, times, fingering, instrument)
    end = max([times[-1].start + times[-1].seconds, *(n.start + n.seconds for n in notes)])
    mix = np.zeros(round((end + TAIL_SECONDS) * RATE))
    strings = _Strings(instrument, notes)
    for done, note in enumerate(notes):
        if progress:
            progress(done / len(notes))
        _add(mix, strings.sound(note, done), note)
    mix = through_body(mix, instrument)
    peak = float(np.max(np.abs(mix)))
    if peak > 0:
        mix *= PEAK / peak
    if progress:
        progress(1.0)
    return mix.astype(np.float32)


class _Strings:
    """Every pitch plucked once and kept, as long as its longest note asks."""

    def __init__(self, instrument: Instrument | None, notes: Sequence[Sounding]) -> None:
        self._instrument = instrument
        self._longest: dict[tuple[int, int | None], float] = {}
        for note in notes:
            key = (note.midi, note.string)
            self._longest[key] = max(self._longest.get(key, 0.0), note.seconds)
        self._kept: dict[tuple[int, int | None, bool, int], Samples] = {}

    def sound(self, note: Sounding, turn: int) -> Samples:
        key = (note.midi, note.string, note.soft, turn % TAKES)
        if key not in self._kept:
            seconds = min(self._longest[key[:2]] + RELEASE_SECONDS, LONGEST_SECONDS)
            tone = string_tone(self._instrument, self._share(note))
            seed = note.midi * TAKES + turn % TAKES
            self._kept[key] = pluck(frequency(note.midi), seconds, tone, seed)
        return self._kept[key]

    def _share(self, note: Sounding) -> float:
        """The part of the open string that swings, by the twelve-tone rule."""
        if self._instrument is None or note.string is None:
            return 1.0
        fret = note.midi - self._instrument.open_midi[note.string - 1]
        return float(2 ** (-fret / 12))


def _add(mix: Samples, sound: Samples, note: Sounding) -> None:
    """Lay a note into the mix: held for its seconds, then damped."""
    start = round(note.start * RATE)
    release = min(round(RELEASE_SECONDS * RATE), sound.size)
    held = min(round(note.seconds * RATE), sound.size - release)
    size = held + release  # the tail of the mix is longer than a release
    piece = sound[:size] * note.gain
    piece[held:] *= 0.5 + 0.5 * np.cos(np.linspace(0, np.pi, release))
    if note.soft:  # a string not struck begins gently
        attack = min(round(0.012 * RATE), size)
        piece[:attack] *= np.linspace(0, 1, attack)
    mix[start : start + size] += piece
