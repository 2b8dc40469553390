"""How an instrument sounds: its strings' decay, and its body's two main resonances.

All figures by ear and from memory, no source; they shape the colour, never the pitch.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from workbench.instrument.model import Instrument
from workbench.sound.plucked import RATE, Samples, Tone

GUITAR_MM = 650.0
STEEL = ("mandolin", "mandola", "octave-mandolin", "tenor-guitar")


def string_tone(instrument: Instrument | None, fret_share: float = 1.0) -> Tone:
    """The tone of an instrument's string; ``fret_share`` is the part of the
    open length that still swings (1 for the open string)."""
    scale = instrument.scale_mm if instrument else GUITAR_MM
    seconds = float(np.clip(4.5 * (scale / GUITAR_MM) ** 1.2, 1.2, 5.0))
    tone = Tone(seconds, 0.16 * seconds, pick=0.2, softness=0.6)
    if instrument and instrument.id in STEEL:
        tone = replace(tone, high_seconds=0.3 * seconds, pick=0.13, softness=0.25)
    share = max(0.25, fret_share) ** 0.5
    return replace(tone, seconds=tone.seconds * share, high_seconds=tone.high_seconds * share)


def through_body(samples: Samples, instrument: Instrument | None) -> Samples:
    """The strings heard through the body: two broad peaks, lower for larger bodies.

    Peaking filters after R. Bristow-Johnson's "Cookbook formulae for audio
    equalizer biquad filter coefficients".
    """
    from scipy.signal import lfilter  # takes long to load

    scale = instrument.scale_mm if instrument else GUITAR_MM
    low = 105.0 * GUITAR_MM / scale
    for hertz, decibels, q in ((low, 4.0, 3.0), (2.1 * low, 3.0, 2.0), (9_000.0, -6.0, 0.7)):
        gain = 10 ** (decibels / 40)
        omega = 2 * np.pi * hertz / RATE
        alpha = np.sin(omega) / (2 * q)
        b = np.array([1 + alpha * gain, -2 * np.cos(omega), 1 - alpha * gain])
        a = np.array([1 + alpha / gain, -2 * np.cos(omega), 1 - alpha / gain])
        samples = lfilter(b / a[0], a / a[0], samples)
    return samples
