"""How quickly a piece becomes sound: against real time, and against a plain string of
scipy.signal.lfilter in the same run."""

from __future__ import annotations

import time

import numpy as np
from scipy.signal import lfilter

from tests.sound.notes_made import song
from workbench.instrument.table import INSTRUMENTS
from workbench.sound.plucked import RATE, Tone, pluck
from workbench.sound.render import render


def plain_string(hertz, seconds):
    """A string as the papers have it, one difference equation for scipy.signal.lfilter."""
    period = round(RATE / hertz)
    below = np.zeros(period + 2)
    below[0], below[period], below[period + 1] = 1.0, -0.498, -0.498
    begun = np.zeros(round(seconds * RATE))
    begun[:period] = np.random.Generator(np.random.PCG64(0)).uniform(-1, 1, period)
    return lfilter([1.0], below, begun)


def test_64_bars(benchmark):
    """50 times as fast as they are played, and faster than plain strings for every note."""
    made, guitar = song(64), INSTRUMENTS["guitar"]
    samples = benchmark(render, made, None, guitar)
    median = benchmark.stats.stats.median
    times = samples.size / RATE / median
    begun = time.perf_counter()
    for n in made.bars[0].notes:
        plain_string(440.0 * 2 ** ((n.midi - 69) / 12), float(n.duration) * 60 / 90)
    plain = (time.perf_counter() - begun) * len(made.bars)
    benchmark.extra_info["times_real_time"] = round(times)
    benchmark.extra_info["plain_strings_take"] = round(plain / median, 1)
    print(
        f"\n64 bars: {times:.0f} times as fast as they are played; "
        f"plain strings for the same notes take {plain / median:.1f} times as long"
    )
    assert plain / median > 5


def test_one_pluck(benchmark):
    tone = Tone(3.0, 0.5)
    seeds = iter(range(1_000_000))
    benchmark(lambda: pluck(146.8, 2.9, tone, next(seeds)))
    begun = time.perf_counter()
    plain_string(146.8, 2.9)
    ratio = (time.perf_counter() - begun) / benchmark.stats.stats.median
    benchmark.extra_info["times_a_plain_string"] = round(ratio, 1)
    print(f"\none pluck: {ratio:.1f} times as fast as a plain string by scipy.signal.lfilter")
    assert ratio > 2
