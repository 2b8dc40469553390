"""The metronome: a click on every beat, the first of the bar accented, dotted beats in
compound metres."""

from __future__ import annotations

from fractions import Fraction
from functools import cache

import numpy as np

from workbench.music.beats import beat_length, metric_onset
from workbench.music.model import Bar
from workbench.sound.bank import Sound
from workbench.sound.mix import MixedSound, frame
from workbench.sound.plucked import RATE

SECONDS = 0.05
ACCENTED_HZ, PLAIN_HZ = 1_760.0, 1_175.0
ACCENTED_GAIN, PLAIN_GAIN = 0.34, 0.2


def beats_of(bar: Bar) -> tuple[tuple[Fraction, bool], ...]:
    """(onset, accented) of every beat of a bar; a pickup counts from its end."""
    beat = beat_length(bar.time_signature)
    late = metric_onset(bar, Fraction(0))
    out, at = [], Fraction(0)
    while at - late < bar.length:
        if at >= late:
            out.append((at - late, at == 0))
        at += beat
    return tuple(out)


@cache
def click(accented: bool) -> Sound:
    """One click."""
    at = np.arange(round(SECONDS * RATE)) / RATE
    hertz = ACCENTED_HZ if accented else PLAIN_HZ
    sound = np.sin(2 * np.pi * hertz * at) * np.exp(-at * 90)
    sound *= np.minimum(1, at / 0.001)
    return np.asarray(sound, np.float32)


def placed_click(seconds: float, accented: bool) -> MixedSound:
    """A click at so many seconds."""
    sound = click(accented)
    gain = ACCENTED_GAIN if accented else PLAIN_GAIN
    fade = round(0.01 * RATE)
    return MixedSound(frame(seconds), sound.size - fade, fade, 1, gain, None, sound)
