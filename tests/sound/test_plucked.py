"""One string: in tune, dying away, never growing."""

from __future__ import annotations

import numpy as np
import pytest
from scipy.signal import lfilter

from tests.sound.measured import cents, level, pitch_near
from workbench.instrument.table import INSTRUMENTS
from workbench.sound.plucked import RATE, Tone, loss, pluck
from workbench.sound.tone import string_tone

CENTS = 3.0


@pytest.mark.parametrize("instrument", ["guitar", "ukulele-soprano", "mandolin"])
def test_every_pitch_is_in_tune(instrument):
    """Against equal temperament on A4 = 440 Hz (ISO 16)."""
    made = INSTRUMENTS[instrument]
    wrong = {}
    for midi in range(made.lowest, made.highest + 1):
        hertz = 440.0 * 2 ** ((midi - 69) / 12)
        off = cents(pitch_near(pluck(hertz, 1.2, string_tone(made)), hertz), hertz)
        if not abs(off) < CENTS:
            wrong[midi] = off
    assert wrong == {}


@pytest.mark.parametrize("midi", [40, 55, 67])
def test_the_partials_are_in_tune_as_well(midi):
    hertz = 440.0 * 2 ** ((midi - 69) / 12)
    samples = pluck(hertz, 1.5, string_tone(INSTRUMENTS["guitar"]))
    for partial in (2, 3, 4):
        assert abs(cents(pitch_near(samples, hertz * partial), hertz * partial)) < 2 * CENTS


def test_a_whole_delay_alone_would_be_out_of_tune():
    """What the fractional period is for: at A5 one of whole samples misses by far more."""
    nearest = min(abs(cents(RATE / whole, 880.0)) for whole in (50, 51))
    assert nearest > CENTS


@pytest.mark.parametrize("samples", [420, 100, 33])
def test_the_loop_is_that_of_the_papers(samples):
    """For a period of whole samples: the difference equation y = burst + h(y a period ago)
    by scipy.signal, with the loss h as the finite filter nearest to ours."""
    tone = Tone(2.0, 0.4)
    hertz = RATE / samples
    ours = pluck(hertz, 0.4, tone, seed=3)
    pole, gain = loss(hertz, tone)
    omega = 2 * np.pi * np.arange(2049) / 4096
    response = gain * (1 - pole) / np.sqrt(1 + pole**2 - 2 * pole * np.cos(omega))
    h = np.fft.fftshift(np.fft.irfft(response))  # symmetric about its middle
    reach = min(samples - 1, 32)
    h = h[2048 - reach : 2048 + reach + 1]
    below = np.zeros(samples + reach + 1)
    below[0] = 1.0
    below[samples - reach :] -= h
    begun = np.zeros(ours.size)
    begun[:samples] = ours[:samples]
    begun[:samples] -= begun[:samples].mean()
    theirs = lfilter([1.0], below, begun)
    part = slice(3 * samples, ours.size)
    # What lies above 9 kHz is left out of ours.
    assert np.corrcoef(theirs[part], ours[part])[0, 1] > 0.999
    assert level(theirs[part]) == pytest.approx(level(ours[part]), abs=0.3)


def test_the_sound_dies_away_in_the_time_said():
    tone = Tone(seconds=2.0, high_seconds=0.3)
    samples = pluck(220.0, 2.5, tone)
    early, late = (level(samples[int(t * RATE) : int((t + 0.2) * RATE)]) for t in (0.5, 1.5))
    assert early - late == pytest.approx(30, abs=2)  # 60 dB in 2 s


def test_high_partials_die_first():
    samples = pluck(110.0, 1.5, Tone(3.0, 0.4))

    def share_of_highs(part):
        strength = np.abs(np.fft.rfft(part * np.hanning(part.size))) ** 2
        hertz = np.fft.rfftfreq(part.size, 1 / RATE)
        return strength[hertz > 1500].sum() / strength.sum()

    assert share_of_highs(samples[: RATE // 4]) > 20 * share_of_highs(samples[RATE : RATE * 5 // 4])


@pytest.mark.parametrize("hertz", [27.5, 110.0, 987.0, 3951.0, 8000.0])
@pytest.mark.parametrize("seconds", [0.05, 1.0, 60.0])
def test_nothing_ever_grows(hertz, seconds):
    samples = pluck(hertz, 3.0, Tone(seconds, seconds / 4))
    assert np.all(np.isfinite(samples)) and np.max(np.abs(samples)) == pytest.approx(1.0)
    assert level(samples[-RATE // 2 :]) <= level(samples[: RATE // 2]) + 0.1
    assert abs(samples.mean()) < 0.02


def test_the_same_pluck_twice_is_the_same_and_another_take_is_not():
    tone = Tone(2.0, 0.4)
    assert np.array_equal(pluck(196.0, 0.3, tone, 5), pluck(196.0, 0.3, tone, 5))
    assert not np.allclose(pluck(196.0, 0.3, tone, 5), pluck(196.0, 0.3, tone, 6))


@pytest.mark.parametrize("hertz", [0.0, -1.0, 9000.0])
def test_what_no_string_can_sound_is_refused(hertz):
    with pytest.raises(ValueError, match="cannot be plucked"):
        pluck(hertz, 1.0, Tone(1.0, 0.2))
