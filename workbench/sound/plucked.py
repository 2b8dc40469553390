"""One plucked string: a burst going round a loop of delay and loss, tuned to any fraction.

K. Karplus and A. Strong, "Digital Synthesis of Plucked-String and Drum
Timbres", Computer Music Journal 7(2), 1983; fractional tuning, pick position,
dynamics and slurs as in D. A. Jaffe and J. O. Smith, "Extensions of the
Karplus-Strong Plucked-String Algorithm", in the same issue.

The loop y = burst + loss(y a period ago) is linear, so it is solved at once
for every frequency: Y = B / (1 - H exp(-iwP)). The period P may then be any
number of samples and the loss H needs no phase of its own, so that all
partials lie where they belong. It is solved on a circle a little outside the
unit circle and scaled back, which keeps what rings on past the end from
coming round to the beginning.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache, lru_cache

import numpy as np
from numpy.typing import NDArray

Samples = NDArray[np.float64]
Spectrum = NDArray[np.complex128]

RATE = 44_100  # samples a second
HIGH_HZ = 2_500.0  # where ``high_seconds`` is measured
HIGHEST_HZ = 8_000.0
FULL_HZ, NO_HZ = 9_000.0, 13_000.0  # a plucked string has nothing to say above
WRAP = 1e-4  # what is left of a sound that comes round once more
SIZES = (1 << 15, 1 << 16, 1 << 17, 1 << 18)  # samples a sound may have


@dataclass(frozen=True)
class Tone:
    """How a string sounds. By ear, no source.

    ``seconds`` is the time in which the lowest partial falls by 60 dB,
    ``high_seconds`` the same at 2,500 Hz; ``pick`` is where it is plucked, as
    a share of its length from the bridge; ``softness`` 0 (nail) to 1 (flesh);
    ``node`` is 1, or n where a finger touches the string lightly at an n-th of
    its length, so that only every n-th partial sounds (a natural harmonic).
    """

    seconds: float
    high_seconds: float
    pick: float = 0.18
    softness: float = 0.5
    node: int = 1


@dataclass(frozen=True)
class Grid:
    """The frequencies a sound of ``size`` samples is solved for, up to 13,000 Hz."""

    size: int
    omega: Samples
    cosine: Samples
    top: Samples  # fades out what lies above 9,000 Hz
    grow: Samples  # r to the n

    @property
    def radius(self) -> float:
        return float(WRAP ** (-1.0 / self.size))


@cache
def grid(size: int) -> Grid:
    """The grid for sounds of that many samples."""
    bins = int(NO_HZ / RATE * size)
    omega = 2 * np.pi * np.arange(bins) / size
    hertz = omega * RATE / (2 * np.pi)
    above = np.clip((hertz - FULL_HZ) / (NO_HZ - FULL_HZ), 0, 1)
    grow = WRAP ** (-np.arange(size) / size)
    return Grid(size, omega, np.cos(omega), 0.5 + 0.5 * np.cos(np.pi * above), grow)


def size_for(seconds: float) -> int:
    """The smallest grid that holds so many seconds, or the largest there is."""
    return next((size for size in SIZES if size >= seconds * RATE), SIZES[-1])


@cache
def loss(hertz: float, tone: Tone) -> tuple[float, float]:
    """(pole, gain) of the loss in one period that gives the two decay times."""
    low, high = 2 * np.pi * hertz / RATE, 2 * np.pi * max(HIGH_HZ, 2 * hertz) / RATE
    keep = 10 ** (-3 / (hertz * tone.seconds))  # left of the lowest partial after a period
    keep_high = 10 ** (-3 / (hertz * tone.high_seconds))

    def kept(pole: float, omega: float) -> float:
        return float((1 - pole) / np.sqrt(1 + pole * pole - 2 * pole * np.cos(omega)))

    below, above = 0.0, 0.95
    for _ in range(40):  # the ratio falls as the pole rises
        middle = (below + above) / 2
        falls = kept(middle, high) / kept(middle, low) > keep_high / keep
        below, above = (middle, above) if falls else (below, middle)
    return below, min(keep / kept(below, low), 0.9999)  # never 1: nothing may grow


@lru_cache(maxsize=48)
def ringing(hertz: float, tone: Tone, size: int) -> Spectrum:
    """What a string makes of whatever sets it going, on the grid of that size."""
    g = grid(size)
    pole, gain = loss(hertz, tone)
    period = RATE / hertz
    lost = gain * (1 - pole) / np.sqrt(1 + pole * pole - 2 * pole * g.cosine)
    lost *= g.radius**-period
    return np.asarray(1 / (1 - lost * np.exp(-1j * period * g.omega)))


def spectrum_of(burst: Samples, size: int) -> Spectrum:
    """A short burst on the grid of that size."""
    g = grid(size)
    short = burst / g.grow[: burst.size]
    return np.asarray(np.fft.rfft(short, size)[: g.omega.size])


def to_samples(spectrum: Spectrum, size: int) -> Samples:
    """Back from the grid to samples."""
    g = grid(size)
    return np.asarray(np.fft.irfft(spectrum * g.top, size) * g.grow)


def check(hertz: float) -> None:
    """Raises ValueError for a pitch that no string here can hold (0 to 8,000 Hz)."""
    if not 0 < hertz <= HIGHEST_HZ:
        raise ValueError(f"{hertz} Hz cannot be plucked")


def pluck(hertz: float, seconds: float, tone: Tone, seed: int = 0) -> Samples:
    """The sound of a string plucked once and left to ring, from -1 to 1.

    The same arguments give the same samples; it lasts six seconds at most.
    Raises ValueError for a pitch that the loop cannot hold (0 to 8,000 Hz).
    """
    check(hertz)
    size = size_for(seconds)
    sound = to_samples(
        spectrum_of(burst(hertz, tone, seed), size) * ringing(hertz, tone, size), size
    )
    sound = sound[: max(1, round(seconds * RATE))]
    peak = float(np.max(np.abs(sound)))
    return sound / peak if peak else sound


def burst(hertz: float, tone: Tone, seed: int) -> Samples:
    """One period of noise as the finger leaves the string.

    All partials have the strength that an ideal pluck at ``pick`` gives them,
    by chance only in their phases: every pitch is equally loud and bright.
    """
    size = max(2, int(RATE / hertz))
    partial = np.arange(size // 2 + 1)
    turn = np.random.Generator(np.random.PCG64(seed)).uniform(-np.pi, np.pi, partial.size)
    strength = (np.abs(np.sin(np.pi * partial * tone.pick)) + 0.02) / np.maximum(partial, 1)
    cutoff = max(1.0, size * (1_200 + 6_000 * (1 - tone.softness)) / RATE)  # in partials
    strength /= np.sqrt(1 + (partial / cutoff) ** 4)
    if tone.node > 1:
        strength[partial % tone.node != 0] = 0
    strength[0] = 0  # no direct current
    return np.asarray(np.fft.irfft(strength * np.exp(1j * turn), size))


def carried_over(last: Samples, hertz: float) -> Samples:
    """The wave on a string whose length is changed while it swings: the ``last``
    period of the old sound at the new period's length. Nothing is plucked."""
    size = max(2, int(RATE / hertz))
    old = np.fft.rfft(last)
    bins = size // 2 + 1
    wave = np.zeros(bins, complex)
    wave[: min(bins, old.size)] = old[:bins]
    wave[0] = 0
    return np.asarray(np.fft.irfft(wave * (size / last.size), size))
