"""Every fret of every instrument in tune, on rendered audio.

Two estimators that share nothing with the synthesis: the peak of a windowed
scipy.fft spectrum, interpolated by a parabola through the logarithms; and the
advance of phase between two windows a known time apart (Flanagan and Golden,
"Phase Vocoder", Bell System Technical Journal 45, 1966). The reference is
equal temperament on A4 = 440 Hz (ISO 16).
"""

from __future__ import annotations

import numpy as np
import pytest

from tests.sound.measured import SIZE, by_spectrum, cents
from workbench.instrument.table import INSTRUMENTS
from workbench.sound.bank import Bank
from workbench.sound.mix import Mix
from workbench.sound.plucked import RATE
from workbench.sound.sounding import Sounding

CENTS = 2.0


def by_phase(samples, near, apart=2048):
    """The frequency by how far the phase at ``near`` advances in ``apart`` samples."""
    size = samples.size - apart
    turn = np.exp(-2j * np.pi * near * np.arange(size) / RATE) * np.hanning(size)
    one, two = (np.sum(samples[s : s + size] * turn) for s in (0, apart))
    expected = 2 * np.pi * near * apart / RATE
    moved = np.angle(two / one * np.exp(-1j * expected))
    return near + moved * RATE / (2 * np.pi * apart)


@pytest.mark.parametrize("name", INSTRUMENTS)
def test_every_fret_is_in_tune(name):
    made = INSTRUMENTS[name]
    bank, wrong, seen = Bank(made), {}, 0
    for string, open_midi in enumerate(made.tuning, 1):
        for fret in range(made.frets + 1):
            midi = open_midi + fret
            true = 440.0 * 2 ** ((midi - 69) / 12)
            mix = Mix([Sounding(0.0, 1.2, midi, 1.0, string)], bank)
            samples = mix.block(round(0.03 * RATE), SIZE).astype(float)
            off = [cents(f(samples, true), true) for f in (by_spectrum, by_phase)]
            seen += 1
            if not max(map(abs, off)) < CENTS:
                wrong[string, fret] = off
    assert seen == made.strings * (made.frets + 1)
    assert wrong == {}


def test_another_a4_moves_every_pitch():
    made = INSTRUMENTS["ukulele"]
    for a4 in (415.0, 432.0, 443.0):
        mix = Mix([Sounding(0.0, 1.2, 67, 1.0, 4)], Bank(made, a4))
        true = a4 * 2 ** (-2 / 12)
        heard = by_spectrum(mix.block(round(0.03 * RATE), SIZE).astype(float), true)
        assert abs(cents(heard, true)) < CENTS


def test_the_estimators_themselves_are_right():
    """On sines a known few cents off: neither is taken at its word."""
    for off in (-7.0, 0.0, 3.0, 12.0):
        hertz = 311.127 * 2 ** (off / 1200)
        sine = np.sin(2 * np.pi * hertz * np.arange(SIZE) / RATE) * np.exp(-np.arange(SIZE) / RATE)
        assert cents(by_spectrum(sine, 311.127), 311.127) == pytest.approx(off, abs=0.05)
        assert cents(by_phase(sine, 311.127), 311.127) == pytest.approx(off, abs=0.05)
