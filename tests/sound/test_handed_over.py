"""What is handed over as files: MIDI with held lengths, practice tracks, clicks; and three
traits of the string that are told by ear."""

from __future__ import annotations

import json

import numpy as np
import pytest
import soundfile
from music21 import midi as midi21

from tests.sound.notes_made import F, bar, fingered, note, piece
from workbench.cli import main
from workbench.instrument.table import INSTRUMENTS
from workbench.music.writing.score import write_midi
from workbench.sound.plucked import RATE, Tone, grid, pluck
from workbench.sound.tone import body, string_tone
from workbench.sound.tracks import held_lengths


def lengths_in(path):
    """Quarter lengths of the notes of a MIDI file by pitch, read by music21's raw events."""
    file = midi21.MidiFile()
    file.open(str(path))
    file.read()
    file.close()
    at, begun, out = 0, {}, {}
    for event in file.tracks[-1].events:
        if event.isDeltaTime():
            at += event.time
        elif event.isNoteOn():
            begun[event.pitch] = at
        elif event.isNoteOff():
            out[event.pitch] = F(at - begun[event.pitch], file.ticksPerQuarterNote)
    return out


def test_midi_has_the_lengths_that_are_really_held(tmp_path):
    """As written without them; what cannot be played is left out."""
    made = piece(bar(0, note("a", "D4", 0, 4), note("b", "E4", 1, 2), note("c", "A4", 3, 1)))
    hand = fingered(made, a=(3, 2, "5/4"), b=(2, 0, 2))
    write_midi(made, tmp_path / "held.mid", held=held_lengths(hand))
    write_midi(made, tmp_path / "plain.mid")
    assert lengths_in(tmp_path / "held.mid") == {62: F(5, 4), 64: 2}
    assert lengths_in(tmp_path / "plain.mid") == {62: 4, 64: 2, 69: 1}


@pytest.mark.slow
def test_a_folder_of_practice_tracks_slow_and_full(tmp_path, capsys):
    folder, score = tmp_path / "tracks", tmp_path / "bar.abc"
    score.write_text("X:1\nT:Step\nM:4/4\nL:1/4\nQ:1/4=120\nK:C\nCDEF|\n")
    assert main(["sound", str(score), "--what", "tracks", "-o", str(folder), "--json"]) == 0
    names = json.loads(capsys.readouterr().out)["tracks"]
    assert sorted(p.name for p in folder.iterdir()) == sorted(names)
    tempos = {int(n.rsplit(" at ")[1].split()[0]) for n in names}
    assert max(tempos) == 100 and min(tempos) < 80
    for name in names:
        tempo = int(name.rsplit(" at ")[1].split()[0])
        seconds = soundfile.info(str(folder / name)).duration
        # counted in by one bar, then the bar, then what still rings
        assert 0 < seconds - 2 * 2 * 100 / tempo < 5, name


def test_clicks_alone_stand_on_the_beats(tmp_path):
    path, scale = tmp_path / "clicks.flac", tmp_path / "scale.abc"
    scale.write_text("X:1\nT:Steps\nM:4/4\nL:1/4\nQ:1/4=120\nK:C\nCDEF|GABc|\n")
    assert main(["sound", str(scale), "--what", "clicks", "-o", str(path)]) == 0
    heard, rate = soundfile.read(str(path))
    loud = np.abs(heard) > 0.05
    first = np.flatnonzero(loud & ~np.concatenate(([False], loud[:-1])))
    onsets = [first[0]]
    for at in first:
        if at - onsets[-1] > rate // 10:
            onsets.append(at)
    assert rate == RATE and len(onsets) == 12, "a bar counted in and two bars"
    assert np.allclose(np.diff(onsets) / rate, 0.5, atol=0.001)
    peaks = [np.max(np.abs(heard[at : at + rate // 20])) for at in onsets]
    assert all(peaks[4 * b] > max(peaks[4 * b + 1 : 4 * b + 4]) for b in range(3))


def partials(samples, hertz, count):
    spectrum = np.abs(np.fft.rfft(samples * np.hanning(samples.size), 1 << 18))
    places = [round(n * hertz / RATE * (1 << 18)) for n in range(1, count + 1)]
    return [float(np.max(spectrum[p - 30 : p + 30])) for p in places]


def test_where_it_is_plucked_silences_a_partial():
    """Plucked at a quarter of its length a string lacks the fourth partial (Jaffe and
    Smith 1983, the pick position comb)."""
    strength = partials(pluck(110.0, 0.5, Tone(4.0, 2.0, pick=0.25))[: 1 << 14], 110.0, 5)
    assert strength[3] < strength[4] / 5 and strength[3] < strength[2] / 5


def test_a_stopped_string_dies_sooner_than_the_open_one():
    guitar = INSTRUMENTS["guitar"]
    open_, high = (string_tone(guitar, share) for share in (1.0, 0.5))
    assert high.seconds < open_.seconds and high.high_seconds < open_.high_seconds

    def fall(tone, hertz):
        part = pluck(hertz, 1.5, tone)
        early, late = part[: RATE // 4], part[RATE:]
        return np.sqrt(np.mean(late**2)) / np.sqrt(np.mean(early**2))

    assert fall(high, 392.0) < fall(open_, 196.0)


def test_a_small_body_answers_higher_than_a_large_one():
    size = 1 << 16
    hertz = grid(size).omega * RATE / (2 * np.pi)
    low = (hertz > 60) & (hertz < 260)
    tops = [
        float(hertz[low][np.argmax(np.abs(body(scale, size))[low])])
        for scale in (INSTRUMENTS["guitar"].scale_mm, INSTRUMENTS["ukulele"].scale_mm)
    ]
    assert tops[0] == pytest.approx(105, rel=0.1) and tops[1] > 1.5 * tops[0]
