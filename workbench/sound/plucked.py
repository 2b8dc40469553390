"""One plucked string: a loop of delay, filter and tuning, set going by a burst of noise.

K. Karplus and A. Strong, "Digital Synthesis of Plucked-String and Drum
Timbres", Computer Music Journal 7(2), 1983; tuned by an allpass filter, with
pick position and dynamics, as in D. A. Jaffe and J. O. Smith, "Extensions of
the Karplus-Strong Plucked-String Algorithm", in the same issue. The loop's
lowpass has one pole, so that low strings lose their upper partials as quickly
as real ones do.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import Any

import numpy as np
from numpy.typing import NDArray

Samples = NDArray[np.float64]

RATE = 44_100  # samples a second
HIGH_HZ = 2_500.0  # where ``high_seconds`` is measured
HIGHEST_HZ = 8_000.0


@dataclass(frozen=True)
class Tone:
    """How a string sounds. By ear, no source.

    ``seconds`` is the time in which the lowest partial falls by 60 dB,
    ``high_seconds`` the same at 2,500 Hz; ``pick`` is where it is plucked, as
    a share of its length from the bridge; ``softness`` 0 (nail) to 1 (flesh).
    """

    seconds: float
    high_seconds: float
    pick: float = 0.18
    softness: float = 0.5


@dataclass(frozen=True)
class Loop:
    """The string's loop: whole samples of ``delay``, then filter ``b``/``a``."""

    delay: int
    b: tuple[float, ...]
    a: tuple[float, ...]


def _response(b: Any, a: Any, omega: float) -> complex:
    z = np.exp(-1j * omega)
    return complex(np.polyval(b[::-1], z) / np.polyval(a[::-1], z))


def _lowpass(hertz: float, tone: Tone) -> tuple[float, float]:
    """(pole, gain) of the loop's lowpass that give the two decay times."""
    low, high = 2 * np.pi * hertz / RATE, 2 * np.pi * max(HIGH_HZ, 2 * hertz) / RATE
    keep = 10 ** (-3 / (hertz * tone.seconds))  # left of the lowest partial after a period
    keep_high = 10 ** (-3 / (hertz * tone.high_seconds))

    def ratio(pole: float) -> float:
        b, a = (1 - pole,), (1.0, -pole)
        return abs(_response(b, a, high)) / abs(_response(b, a, low))

    below, above = 0.0, 0.95
    for _ in range(40):  # the ratio falls as the pole rises
        middle = (below + above) / 2
        below, above = (middle, above) if ratio(middle) > keep_high / keep else (below, middle)
    pole = below
    gain = keep / abs(_response((1 - pole,), (1.0, -pole), low))
    return pole, min(gain, 0.9999)  # never 1: nothing may grow


@cache
def tuned_loop(hertz: float, tone: Tone) -> Loop:
    """The loop whose lowest partial lies exactly at ``hertz``.

    The delays of line, lowpass and allpass add up to one period; the
    allpass makes up the fraction (Jaffe and Smith, equation for C at the
    fundamental).
    """
    pole, gain = _lowpass(hertz, tone)
    omega = 2 * np.pi * hertz / RATE
    lowpass_delay = -np.angle(_response((1 - pole,), (1.0, -pole), omega)) / omega
    rest = RATE / hertz - lowpass_delay
    delay = int(rest - 0.3)  # leaves 0.3 to 1.3 samples, where the allpass is stable and flat
    fraction = rest - delay
    c = float(np.sin(omega * (1 - fraction) / 2) / np.sin(omega * (1 + fraction) / 2))
    b = gain * (1 - pole) * np.array([c, 1.0])
    a = np.convolve([1.0, -pole], [1.0, c])
    return Loop(delay, tuple(map(float, b)), tuple(map(float, a)))


def pluck(hertz: float, seconds: float, tone: Tone, seed: int = 0) -> Samples:
    """The sound of a string plucked once and left to ring, from -1 to 1.

    The same arguments give the same samples. Raises ValueError for a pitch
    that the loop cannot hold (0 to 8,000 Hz).
    """
    from scipy.signal import lfilter  # takes long to load

    if not 0 < hertz <= HIGHEST_HZ:
        raise ValueError(f"{hertz} Hz cannot be plucked")
    loop = tuned_loop(hertz, tone)
    length = max(1, round(seconds * RATE))
    blocks = -(-length // loop.delay)
    out = np.empty(blocks * loop.delay)
    block = _burst(loop.delay, tone, seed)
    b, a = np.array(loop.b), np.array(loop.a)
    state = np.zeros(2)
    for start in range(0, out.size, loop.delay):
        out[start : start + loop.delay] = block
        # A whole period depends only on the one before, so it is filtered at once.
        block, state = lfilter(b, a, block, zi=state)
    out = out[:length]
    peak = float(np.max(np.abs(out)))
    return out / peak if peak else out


def _burst(size: int, tone: Tone, seed: int) -> Samples:
    """One period of noise as the finger leaves the string."""
    noise = np.random.Generator(np.random.PCG64(seed)).uniform(-1, 1, size)
    spectrum = np.fft.rfft(noise)
    partial = np.arange(spectrum.size)
    # Even strength in all partials, by chance only in their phases: every
    # pitch is equally loud and equally bright.
    spectrum = np.exp(1j * np.angle(spectrum)) / np.maximum(partial, 1)
    spectrum *= np.abs(np.sin(np.pi * partial * tone.pick)) + 0.02
    cutoff = size * (1_200 + 6_000 * (1 - tone.softness)) / RATE  # in partials
    spectrum /= np.sqrt(1 + (partial / max(cutoff, 1.0)) ** 4)
    spectrum[0] = 0  # no direct current
    return np.fft.irfft(spectrum, size)
