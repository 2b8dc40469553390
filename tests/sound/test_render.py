"""A piece as sound, and the file it is written to."""

from __future__ import annotations

import errno
import os
import wave

import numpy as np
import pytest

from tests.sound.measured import cents, level, pitch_near
from tests.sound.notes_made import bar, fingered, note, piece
from workbench.instrument.table import instrument
from workbench.music.errors import BadInput
from workbench.sound.files import make_sound, write_wav
from workbench.sound.plucked import RATE
from workbench.sound.render import PEAK, TAIL_SECONDS, render

UKE = instrument("ukulele")
LINE = ["C4", "E4", "G4", "A4", "G4", "F4", "E4", "D4"]


def line():
    """Eight crotchets in two bars, a second each."""
    notes = [note(f"n{i}", name, i % 4, 1) for i, name in enumerate(LINE)]
    return piece(bar(0, *notes[:4]), bar(1, *notes[4:], repeat_end=True))


def at(samples, start, end):
    return samples[round(start * RATE) : round(end * RATE)].astype(float)


def test_each_note_is_heard_at_its_time_and_pitch():
    made = line()
    samples = render(made, instrument=UKE, order=[0, 1])
    assert samples.dtype == np.float32 and samples.ndim == 1
    assert samples.size == round((8 + TAIL_SECONDS) * RATE)
    assert np.max(np.abs(samples)) == pytest.approx(PEAK, rel=1e-6)
    for second, sounding in enumerate(made.notes):
        hertz = 440.0 * 2 ** ((sounding.midi - 69) / 12)
        heard = at(samples, second + 0.1, second + 0.95)
        assert abs(cents(pitch_near(heard, hertz), hertz)) < 3
        before = pitch_strength(at(samples, second - 0.9, second - 0.05), hertz) if second else 0
        assert pitch_strength(heard, hertz) > 5 * before


def pitch_strength(samples, hertz):
    """How strong one frequency is, by correlation with it."""
    wave_ = np.exp(-2j * np.pi * hertz * np.arange(samples.size) / RATE)
    return abs(np.mean(samples * np.hanning(samples.size) * wave_))


def test_repeats_and_tempo_make_it_longer():
    def seconds(**how):
        return render(line(), **how).size / RATE - TAIL_SECONDS

    assert seconds() == pytest.approx(16, abs=1e-3)
    assert seconds(tempo_percent=200) == pytest.approx(8, abs=1e-3)
    assert seconds(bars=(1, 1)) == pytest.approx(4, abs=1e-3)


def test_a_cut_note_falls_silent_and_a_held_one_does_not():
    made = piece(bar(0, note("a", "C4", 0, 4)))
    held = render(made, fingered(made, a=(3, 0, 4)), UKE)
    cut = render(made, fingered(made, a=(3, 0, 1)), UKE)
    assert level(at(held, 1.2, 1.5)) - level(at(cut, 1.2, 1.5)) > 40
    early_held, early_cut = at(held, 0.1, 0.9), at(cut, 0.1, 0.9)
    assert level(early_held) == pytest.approx(level(early_cut), abs=0.5)


def test_the_finger_decides_the_pitch():
    made = piece(bar(0, note("a", "C4", 0, 4)))
    low_g = instrument("ukulele-low-g")
    samples = render(made, fingered(made, a=(4, 5, 4)), low_g)
    assert abs(cents(pitch_near(at(samples, 0.1, 3), 261.6256), 261.6256)) < 3  # C4, ISO 16


def test_silence_stays_silence():
    made = piece(bar(0, note("a", "C4", 0, 4)))
    samples = render(made, fingered(made), UKE)
    assert samples.size == round((4 + TAIL_SECONDS) * RATE) and not samples.any()


def test_there_are_no_clicks():
    """No jump from sample to sample that the string's own movement does not make."""
    made = line()
    samples = render(made, instrument=UKE, order=[0, 1]).astype(float)
    steps = np.abs(np.diff(samples))
    ends = np.concatenate([at(steps, s + 0.9, s + 0.999) for s in range(8)])
    assert np.max(ends) < np.max(steps) / 2
    assert np.max(np.abs(samples[-RATE // 10 :])) < 1e-3, "it ends in silence"


def test_the_same_piece_gives_the_same_samples():
    assert np.array_equal(render(line(), bars=(0, 0)), render(line(), bars=(0, 0)))


def test_progress_is_told_and_can_stop_the_work():
    told = []
    render(line(), bars=(0, 1), progress=told.append)
    assert told == sorted(told) and told[0] == 0 and told[-1] == 1 and len(told) == 10

    class Stop(Exception):
        pass

    def stop(share):
        if share > 0.4:
            raise Stop

    with pytest.raises(Stop):
        render(line(), progress=stop)


def test_the_file_holds_the_sound(tmp_path):
    told = make_sound(line(), tmp_path / "wheel.wav", instrument=UKE, bars=(0, 0))
    assert told == {"seconds": 5.0, "path": str(tmp_path / "wheel.wav")}
    with wave.open(told["path"]) as file:
        assert (file.getnchannels(), file.getsampwidth(), file.getframerate()) == (1, 2, 44100)
        frames = np.frombuffer(file.readframes(file.getnframes()), "<i2")
    samples = render(line(), instrument=UKE, bars=(0, 0))
    assert np.max(np.abs(frames / 32767 - samples)) <= 0.5 / 32767 + 1e-6
    assert [path.name for path in tmp_path.iterdir()] == ["wheel.wav"]
    if os.name == "posix":
        (tmp_path / "plain").touch()
        assert (tmp_path / "wheel.wav").stat().st_mode == (tmp_path / "plain").stat().st_mode


def test_what_is_too_loud_is_clipped_and_not_wrapped(tmp_path):
    assert write_wav(np.array([0.0, 2.0, -2.0]), tmp_path / "x.wav") == 3 / 44100
    with wave.open(str(tmp_path / "x.wav")) as file:
        assert np.frombuffer(file.readframes(3), "<i2").tolist() == [0, 32767, -32767]


def test_a_full_disk_leaves_the_old_file(tmp_path, monkeypatch):
    file = tmp_path / "x.wav"
    file.write_bytes(b"old")

    def full(_handle):
        raise OSError(errno.ENOSPC, "No space left on device")

    monkeypatch.setattr(os, "fsync", full)
    with pytest.raises(BadInput, match=r"x\.wav cannot be written \(No space left on device\)"):
        write_wav(np.zeros(9), file)
    assert file.read_bytes() == b"old"
    assert [path.name for path in tmp_path.iterdir()] == ["x.wav"]


def test_a_folder_that_is_not_there(tmp_path):
    with pytest.raises(BadInput, match="cannot be written"):
        write_wav(np.zeros(9), tmp_path / "no" / "x.wav")
    with pytest.raises(BadInput, match="is a folder"):
        write_wav(np.zeros(9), tmp_path)
