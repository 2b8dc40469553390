"""How quickly a piece becomes sound: against real time, and against a loop by the sample."""

from __future__ import annotations

import time

import numpy as np

from tests.sound.notes_made import bar, note, piece
from workbench.instrument.table import INSTRUMENTS
from workbench.sound.plucked import RATE, Tone, pluck, tuned_loop
from workbench.sound.render import render

SCALE = ("C4", "D4", "E4", "F4", "G4", "A4", "B4", "C5")


def song(bars):
    """Quavers above a held bass, so many bars of it, at 90 a minute."""
    return piece(
        *(
            bar(
                index,
                *(
                    note(f"n{index}-{i}", SCALE[(index * 3 + i) % 8], i / 2, 0.5)
                    for i in range(8)
                ),
                note(f"b{index}", "C3", 0, 4, voice=2),
            )
            for index in range(bars)
        ),
        tempo=90.0,
    )


def test_64_bars(benchmark):
    made, guitar = song(64), INSTRUMENTS["guitar"]
    samples = benchmark(render, made, None, guitar)
    times = samples.size / RATE / benchmark.stats.stats.median
    benchmark.extra_info["times_real_time"] = round(times)
    print(f"\n64 bars: {times:.0f} times as fast as they are played")
    assert times > 20


def by_the_sample(hertz, seconds, tone):
    """The same loop, one sample after the other."""
    loop = tuned_loop(hertz, tone)
    out = list(np.random.Generator(np.random.PCG64(0)).uniform(-1, 1, loop.delay))
    (b0, b1), (_, a1, a2) = loop.b, loop.a
    x1 = y1 = y2 = 0.0
    for n in range(round(seconds * RATE) - loop.delay):
        x = out[n]
        y = b0 * x + b1 * x1 - a1 * y1 - a2 * y2
        x1, y1, y2 = x, y, y1
        out.append(y)
    return out


def test_one_pluck(benchmark):
    tone = Tone(3.0, 0.5)
    benchmark(pluck, 146.8, 3.0, tone)
    begun = time.perf_counter()
    by_the_sample(146.8, 3.0, tone)
    ratio = (time.perf_counter() - begun) / benchmark.stats.stats.median
    benchmark.extra_info["times_faster_than_by_the_sample"] = round(ratio, 1)
    print(f"\none pluck: {ratio:.1f} times as fast as by the sample")
    assert ratio > 2
