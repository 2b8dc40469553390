"""How quickly a piece becomes sound: a whole piece and one string, each against the same
loop taken one sample after the other in the same run."""

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


def test_64_bars(benchmark):
    """As long as all its notes sound, by the sample; one string of three seconds stands for
    each stretch of three seconds."""
    made, guitar = song(64), INSTRUMENTS["guitar"]
    samples = benchmark(render, made, None, guitar)
    begun = time.perf_counter()
    by_the_sample(146.8, 3.0, Tone(3.0, 0.5))
    one = time.perf_counter() - begun
    sounding = sum(float(n.duration) for b in made.bars for n in b.notes) * 60 / 90
    times, ours = samples.size / RATE, benchmark.stats.stats.median
    ratio = sounding / 3.0 * one / ours
    benchmark.extra_info.update(
        times_real_time=round(times / ours), times_faster_than_by_the_sample=round(ratio, 1)
    )
    print(f"\n64 bars: {ratio:.1f} times as fast as by the sample, "
          f"{times / ours:.0f} times as fast as they are played")  # fmt: skip
    assert ratio > 2
