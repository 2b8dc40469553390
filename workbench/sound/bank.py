"""Every sound of a piece made once and kept: plucks, slurs, and strings that ring along."""

from __future__ import annotations

import math
import threading
from collections import OrderedDict
from dataclasses import dataclass
from functools import cache

import numpy as np
from numpy.typing import NDArray

from workbench.instrument.model import A4_HZ, Instrument, frequency
from workbench.sound.plucked import (
    RATE,
    Spectrum,
    Tone,
    burst,
    carried_over,
    check,
    ringing,
    size_for,
    spectrum_of,
    to_samples,
)
from workbench.sound.sounding import Sounding
from workbench.sound.tone import GUITAR_MM, body, string_tone

Sound = NDArray[np.float32]

TAKES = 2  # a pitch is plucked in so many ways in turn, lest it sound like a machine
LOUD_STEPS = 6
LONGEST_SECONDS = 5.9  # no string rings longer
KEPT_BYTES = 96 << 20
SLUR_KEEPS = 0.92  # what a finger coming down or leaving lets the string keep
COUPLING = 0.0011  # of one string to another through the bridge, by ear
NEAR_CENTS = 6.0  # partials nearer than this drive each other
PARTIALS = 5


@dataclass(frozen=True)
class SoundKey:
    """What makes a sound unlike another. ``after`` is what a slur carries on from, and
    for how many samples that had sounded; ``along`` the free string that rings along."""

    midi: int
    string: int | None
    tone: Tone
    take: int
    size: int
    after: tuple[SoundKey, int] | None = None
    along: int | None = None


class Bank:
    """The sounds of one instrument. Safe to ask from any thread."""

    def __init__(self, instrument: Instrument | None = None, a4: float = A4_HZ) -> None:
        self.instrument, self.a4 = instrument, a4
        self._kept: OrderedDict[SoundKey, Sound] = OrderedDict()
        self._bytes = 0
        self._making = threading.RLock()
        self._scales: dict[tuple[int, int | None, Tone, int], float] = {}

    def hertz(self, midi: int) -> float:
        """The frequency of a MIDI number at the A4 chosen."""
        return frequency(midi) * self.a4 / A4_HZ

    def key(self, s: Sounding, seconds: float) -> SoundKey:
        """The key of a note's sound of at least so many seconds."""
        size = size_for(min(seconds, LONGEST_SECONDS))
        fret = 0
        if self.instrument is not None and s.string is not None and s.node == 1:
            fret = s.midi - self.instrument.open_midi[s.string - 1]
        loud = round(s.loud * LOUD_STEPS) / LOUD_STEPS
        tone = string_tone(
            self.instrument, float(2 ** (-fret / 12)), s.finger, loud, s.rest_stroke, s.node
        )
        after = None
        if s.after is not None:
            passed = max(1, round((s.start - s.after.start) * RATE))
            after = (self.key(s.after, passed / RATE), passed)
            tone = string_tone(self.instrument, float(2 ** (-fret / 12)))
        return SoundKey(s.midi, s.string, tone, round(s.start * 1000) % TAKES, size, after)

    def along(self, key: SoundKey) -> tuple[SoundKey, ...]:
        """Keys of the free strings that a sound makes ring."""
        if self.instrument is None or key.string is None or key.after is not None:
            return ()
        return tuple(
            SoundKey(
                key.midi, key.string, key.tone, key.take, max(key.size, size_for(1.4)), None, place
            )
            for place, midi in enumerate(self.instrument.open_midi, 1)
            if place != key.string and coupled(key.midi, midi)
        )

    def has(self, key: SoundKey) -> bool:
        """Whether a sound is there already."""
        return key in self._kept

    def sound(self, key: SoundKey) -> Sound:
        """The sound, its loudest sample near 1."""
        with self._making:
            found = self._kept.get(key)
            if found is not None:
                self._kept.move_to_end(key)
                return found
            made = self._make(key)
            self._kept[key] = made
            self._bytes += made.nbytes
            while self._bytes > KEPT_BYTES and len(self._kept) > 1:
                self._bytes -= self._kept.popitem(last=False)[1].nbytes
            return made

    def _make(self, key: SoundKey) -> Sound:
        scale_mm = self.instrument.scale_mm if self.instrument else GUITAR_MM
        wave = self._string(key, key.size)
        if key.along is not None and self.instrument is not None:
            midi = self.instrument.open_midi[key.along - 1]
            wave = wave * (
                COUPLING * ringing(self.hertz(midi), string_tone(self.instrument), key.size)
            )
        heard = to_samples(wave * body(scale_mm, key.size), key.size)
        return np.asarray(heard * self._scale(key, heard), np.float32)

    def _scale(self, key: SoundKey, heard: NDArray[np.float64]) -> float:
        """What brings the pluck that a sound began with to 1; slurs and ringing strings
        keep their measure to it."""
        if key.after is not None:
            return self._scale_of(key.after[0])
        name = (key.midi, key.string, key.tone, key.take)
        if key.along is not None:
            return self._scale_of(key)
        if name not in self._scales:
            self._scales[name] = 1 / max(1e-9, float(np.max(np.abs(heard[: RATE // 4]))))
        return self._scales[name]

    def _scale_of(self, key: SoundKey) -> float:
        while key.after is not None:
            key = key.after[0]
        name = (key.midi, key.string, key.tone, key.take)
        if name not in self._scales:
            self.sound(SoundKey(key.midi, key.string, key.tone, key.take, size_for(0.3)))
        return self._scales[name]

    def _string(self, key: SoundKey, size: int) -> Spectrum:
        """The string alone, before the body."""
        hertz = self.hertz(key.midi)
        if key.tone.node > 1 and self.instrument is not None and key.string is not None:
            # A harmonic is the open string with a finger laid on its node.
            hertz = self.hertz(self.instrument.open_midi[key.string - 1])
        if key.after is None:
            check(hertz)
            begun = burst(hertz, key.tone, key.midi * TAKES + key.take)
            return np.asarray(spectrum_of(begun, size) * ringing(hertz, key.tone, size))
        before, passed = key.after
        held = size_for((passed + 1) / RATE)
        wave = to_samples(self._string(before, held), held)
        passed = min(passed, wave.size - 1)
        period = max(2, round(RATE / self.hertz(before.midi)))
        last = wave[max(0, passed - period) : passed]
        if last.size < 2:
            last = np.zeros(2)
        begun = SLUR_KEEPS * carried_over(last, hertz)
        return np.asarray(spectrum_of(begun, size) * ringing(hertz, key.tone, size))


@cache
def coupled(midi: int, open_midi: int) -> bool:
    """Whether a free string has a low partial where the sounding one has one."""
    apart = (open_midi - midi) * 100
    return any(
        abs(apart + 1200 * math.log2(j / k)) < NEAR_CENTS
        for j in range(1, PARTIALS + 1)
        for k in range(1, PARTIALS + 1)
    )
