"""How an instrument sounds: its strings, the fingers that pluck them, its body.

All figures by ear and from memory, no source; they shape the colour, never the pitch.
"""

from __future__ import annotations

from dataclasses import replace
from functools import lru_cache

import numpy as np

from workbench.instrument.model import Instrument
from workbench.sound.plucked import RATE, Spectrum, Tone, grid

GUITAR_MM = 650.0
STEEL = ("mandolin", "mandola", "octave-mandolin", "tenor-guitar")
#: Place on the string (added) and softness (added) of each plucking finger.
FINGERS = {"p": (0.07, 0.22), "i": (0.0, 0.0), "m": (-0.01, -0.04), "a": (-0.03, -0.08)}
REST_STROKE = (0.03, 0.08)
LOUD_SOFTNESS = 0.45  # a loud pluck is brighter: from softest to loudest


@lru_cache(maxsize=4096)
def string_tone(
    instrument: Instrument | None,
    fret_share: float = 1.0,
    finger: str = "i",
    loud: float = 0.5,
    rest_stroke: bool = False,
    node: int = 1,
) -> Tone:
    """The tone of an instrument's string; ``fret_share`` is the part of the
    open length that still swings (1 for the open string), ``finger`` one of p i m a,
    ``loud`` 0 (softest) to 1."""
    scale = instrument.scale_mm if instrument else GUITAR_MM
    seconds = max(1.2, min(5.0, 4.5 * (scale / GUITAR_MM) ** 1.2))
    tone = Tone(seconds, 0.16 * seconds, pick=0.2, softness=0.55)
    if instrument and instrument.id in STEEL:
        tone = replace(tone, high_seconds=0.3 * seconds, pick=0.13, softness=0.25)
    share = max(0.25, fret_share) ** 0.5
    along, soft = FINGERS.get(finger, FINGERS["i"])
    if rest_stroke:
        along, soft = along + REST_STROKE[0], soft + REST_STROKE[1]
    soft -= LOUD_SOFTNESS * (loud - 0.5)
    return Tone(
        tone.seconds * share,
        tone.high_seconds * share,
        # The fretting finger shortens the string, the plucking one stays where it is.
        max(0.06, min(0.48, (tone.pick + along) / max(0.4, fret_share))),
        max(0.0, min(1.0, tone.softness + soft)),
        node,
    )


@lru_cache(maxsize=8)
def body(scale_mm: float, size: int) -> Spectrum:
    """What the body makes of the strings: broad peaks, lower for larger bodies.

    Peaking filters after R. Bristow-Johnson's "Cookbook formulae for audio
    equalizer biquad filter coefficients", here as responses on the grid.
    """
    g = grid(size)
    back = np.exp(-1j * g.omega) / g.radius
    low = 105.0 * GUITAR_MM / scale_mm
    whole = np.ones(g.omega.size, complex)
    for hertz, decibels, q in (
        (low, 4.0, 3.0),
        (2.1 * low, 3.0, 2.0),
        (4.3 * low, 2.0, 3.5),
        (9_000.0, -6.0, 0.7),
    ):
        gain = 10 ** (decibels / 40)
        omega = 2 * np.pi * hertz / RATE
        alpha, middle = np.sin(omega) / (2 * q), -2 * np.cos(omega) * back
        whole *= (1 + alpha * gain + middle + (1 - alpha * gain) * back**2) / (
            1 + alpha / gain + middle + (1 - alpha / gain) * back**2
        )
    return whole
