"""Pitch and level of rendered sound, measured."""

from __future__ import annotations

import numpy as np
import scipy.fft

from workbench.sound.plucked import RATE


def pitch_near(samples, hertz):
    """The strongest frequency within a semitone of ``hertz``, by a windowed Fourier transform."""
    size = 1 << 19
    strength = np.abs(np.fft.rfft(samples * np.hanning(samples.size), size))
    per_bin = RATE / size
    low, high = (int(hertz * 2 ** (s / 12) / per_bin) for s in (-1, 1))
    top = low + int(np.argmax(strength[low:high]))
    left, middle, right = np.log(strength[top - 1 : top + 2])
    return (top + (left - right) / (2 * (left - 2 * middle + right))) * per_bin


def cents(measured, true):
    return 1200 * np.log2(measured / true)


def level(samples):
    """Decibels of a stretch of samples."""
    return 20 * np.log10(np.sqrt(np.mean(np.square(samples))) + 1e-12)


SIZE, PADDED = 1 << 15, 1 << 18

WINDOW = np.hanning(SIZE)


def by_spectrum(samples, near):
    """The strongest frequency within a semitone of ``near``."""
    strength = np.abs(scipy.fft.rfft(samples * WINDOW, PADDED))
    low, high = (int(near * 2 ** (s / 12) / RATE * PADDED) for s in (-1, 1))
    top = low + int(np.argmax(strength[low:high]))
    left, middle, right = np.log(strength[top - 1 : top + 2])
    return (top + (left - right) / (2 * (left - 2 * middle + right))) * RATE / PADDED
