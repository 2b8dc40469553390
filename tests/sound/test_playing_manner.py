"""What a player's hands do to strings: slurs, slides, harmonics, rolled chords, damping."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import pytest

from tests.sound.measured import by_spectrum, cents
from tests.sound.notes_made import F, bar, fingered, note, piece
from workbench.instrument.table import instrument
from workbench.music.model import Dynamic
from workbench.sound.bank import Bank
from workbench.sound.mix import LIFT, Mix, bent
from workbench.sound.plucked import RATE
from workbench.sound.render import render
from workbench.sound.sounding import Sounding
from workbench.sound.timing import bar_times, order_of, soundings

UKE = instrument("ukulele")


def sounds(made, hand=None, played_on=UKE):
    return soundings(made, bar_times(made, order_of(made)), hand, played_on)


def samples(notes, seconds, played_on=UKE, start=0.0):
    return (
        Mix(notes, Bank(played_on)).block(round(start * RATE), round(seconds * RATE)).astype(float)
    )


def hertz(midi):
    return 440.0 * 2 ** ((midi - 69) / 12)


def begins(heard, after=0.0):
    """Seconds at which the signal first rises above a fiftieth of what follows."""
    part = np.abs(heard[round(after * RATE) :])
    return after + int(np.argmax(part > np.max(part[: RATE // 5]) / 50)) / RATE


def loudness(heard, start, end):
    part = heard[round(start * RATE) : round(end * RATE)]
    return 20 * np.log10(np.sqrt(np.mean(part**2)) + 1e-12)


@pytest.mark.parametrize("tempo", [25, 60, 100, 137, 150])
def test_onsets_lie_within_a_millisecond_of_the_score(tempo):
    """Score time worked out here, by hand, from the tempo alone."""
    rows = [("a", "C4", F(0), 3), ("b", "E4", F(3, 2), 2), ("c", "G4", F(7, 3), 2)]
    for name, pitch, onset, string in rows:
        made = piece(bar(0, note(name, pitch, onset, F(1, 2))), tempo=72.0)
        hand = fingered(made, **{name: (string, 0 if pitch != "G4" else 3, F(1, 2))})
        heard = render(made, hand, UKE, tempo_percent=tempo).astype(float)
        expected = float(onset) * 60 / 72 * 100 / tempo
        assert begins(heard) == pytest.approx(expected, abs=0.001)


@pytest.mark.parametrize("held", ["1/2", "7/8", "2", "11/4"])
def test_a_cut_note_ends_when_the_audit_says(held):
    made = piece(bar(0, note("a", "D4", 0, 4)))
    whole = samples(sounds(made, fingered(made, a=(3, 2, 4))), 4)
    cut = samples(sounds(made, fingered(made, a=(3, 2, held))), 4)
    end = round(float(F(held)) * RATE)
    own = Mix([Sounding(0.0, float(F(held)), 62, 1.0, 3)], Bank(None)).placed[0]
    assert own.start + own.held == end and own.fade == LIFT
    assert np.allclose(whole[: end - 1], cut[: end - 1], atol=5e-4)
    after = end / RATE + LIFT / RATE
    assert loudness(cut, after, after + 0.2) < loudness(whole, after, after + 0.2) - 30


def test_note_ends_make_no_click():
    """No step from one sample to the next is larger at an end than while the note rings."""
    for ends, seconds in (("damped", 0.4), ("struck", 0.5), ("damped", 1.3)):
        heard = samples([Sounding(0.0, seconds, 62, 1.0, 3, ends=ends)], seconds + 0.2, None)
        steps = np.abs(np.diff(heard))
        ringing = np.max(steps[round((seconds - 0.1) * RATE) : round((seconds - 0.02) * RATE)])
        ending = np.max(steps[round((seconds - 0.02) * RATE) :])
        assert ending <= ringing * 1.1
        assert np.max(np.abs(heard[round((seconds + 0.05) * RATE) :])) == 0.0


def test_a_string_sounds_one_note_at_a_time():
    """From the second pluck on, the first might as well never have been played."""
    made = piece(bar(0, note("a", "C4", 0, 4), note("b", "D4", 1, 1)))
    hand = fingered(made, a=(3, 0, 4), b=(3, 2, 1))
    both = sounds(made, hand)
    assert [(s.note, s.seconds, s.ends) for s in both] == [("a", 1, "struck"), ("b", 1, "damped")]
    alone = [s for s in both if s.note == "b"]
    bank = Bank(None)
    together, second = (Mix(n, bank).block(RATE, RATE) for n in (both, alone))
    assert np.array_equal(together, second)


def test_two_voices_on_one_pitch_are_one_sound_as_long_as_the_longer():
    made = piece(bar(0, note("a", "C4", 0, 1), note("b", "C4", 0, 3, voice=2)))
    hand = fingered(made, a=(3, 0, 1), b=(3, 0, 3))
    assert [(s.start, s.seconds) for s in sounds(made, hand)] == [(0.0, 3.0)]
    assert [(s.start, s.seconds) for s in sounds(made)] == [(0.0, 3.0)]


def slurred(**more):
    made = piece(
        bar(0, note("a", "D4", 0, 1, slur_start=True), note("b", "E4", 1, 1, slur_stop=True))
    )
    return made, fingered(made, a=(3, 2, 1), b=(3, 4, 1), **more)


def test_a_slurred_note_is_not_plucked():
    """It begins with what the string still has: no louder, no brighter than before."""
    made, hand = slurred()
    first, second = sounds(made, hand)
    assert second.after == first and first.ends == "slurred"
    heard = samples((first, second), 2, None)
    plain = samples([Sounding(1.0, 1.0, 64, first.gain, 3)], 2, None)
    assert loudness(heard, 1.01, 1.1) <= loudness(heard, 0.85, 0.99) + 1
    assert loudness(heard, 1.01, 1.1) < loudness(plain, 1.01, 1.1) - 6
    assert abs(cents(by_spectrum(heard[round(1.05 * RATE) :][: 1 << 15], hertz(64)), hertz(64))) < 2
    steps = np.abs(np.diff(heard))
    assert np.max(steps[RATE - 400 : RATE + 400]) < 1.5 * np.max(steps[RATE - 6000 : RATE - 600])


def test_a_slur_to_another_string_is_plucked():
    made, _ = slurred()
    first, second = sounds(made, fingered(made, a=(3, 2, 1), b=(2, 0, 1)))
    assert second.after is None and first.ends != "slurred"


def test_a_slide_passes_every_fret_between():
    made = piece(bar(0, note("a", "D4", 0, 1, articulations=("slide",)), note("b", "G4", 1, 1)))
    found = sounds(made, fingered(made, a=(3, 2, 1), b=(3, 7, 1)))
    assert [s.midi for s in found] == [62, 63, 64, 65, 66, 67]
    assert found[-1].start == 1.0 and all(b.after == a for a, b in pairwise(found))
    heard = samples(found, 2, None)
    assert abs(cents(by_spectrum(heard[round(1.05 * RATE) :][: 1 << 15], hertz(67)), hertz(67))) < 2


@pytest.mark.parametrize("fret, partial", [(12, 2), (7, 3), (5, 4)])
def test_a_natural_harmonic_is_a_partial_of_the_open_string(fret, partial):
    """Nodes of an ideal string: common practice, no source."""
    pitch = {12: "C5", 7: "G4", 5: "F4"}[fret]
    made = piece(bar(0, note("a", pitch, 0, 2, articulations=("harmonic",))))
    (found,) = sounds(made, fingered(made, a=(3, fret, 2)))
    heard = samples([found], 1)
    true = hertz(60) * partial
    assert abs(cents(by_spectrum(heard[1000:][: 1 << 15], true), true)) < 1
    spectrum = np.abs(np.fft.rfft(heard[: 1 << 15] * np.hanning(1 << 15)))

    def strength(frequency):
        place = round(frequency / RATE * (1 << 15))
        return np.max(spectrum[place - 3 : place + 4])

    assert strength(hertz(60)) < strength(true) / 100, "the open string itself is silent"


def test_a_rolled_chord_comes_from_the_lowest_note_up():
    chord = [
        note(n, p, 1, 2, articulations=("arpeggio",))
        for n, p in (("a", "C5"), ("b", "C4"), ("c", "F4"))
    ]
    found = sounds(piece(bar(0, *chord)))
    assert [s.note for s in found] == ["b", "c", "a"]
    gaps = np.diff([s.start for s in found])
    assert np.all(gaps > 0.02) and np.all(gaps < 0.06) and found[0].start == 1.0
    assert {s.end for s in found} == {3.0}


def test_dynamics_and_accents_of_the_score_are_heard():
    notes = [note(f"n{i}", "C4", i, 1) for i in range(3)]
    notes.append(note("n3", "C4", 3, 1, articulations=("accent",)))
    marks = (Dynamic(F(0), "pp"), Dynamic(F(2), "ff"))
    made = piece(bar(0, *notes, dynamics=marks), bar(1, note("n4", "C4", 0, 1)))
    loud = [s.loud for s in sounds(made)]
    assert loud[0] == loud[1] < loud[2] < loud[3] and loud[4] == loud[2]
    heard = samples(sounds(made), 5, None)
    assert loudness(heard, 2, 2.5) > loudness(heard, 1, 1.5) + 10

    def bright(start):
        part = np.abs(np.fft.rfft(heard[round(start * RATE) :][:8192] * np.hanning(8192))) ** 2
        return part[600:].sum() / part.sum()

    assert bright(2.0) > 1.5 * bright(1.0), "louder is brighter"


def test_fingers_differ():
    def bright(**more):
        heard = samples([Sounding(0.0, 1.0, 60, 1.0, 3, **more)], 0.3, None)
        part = np.abs(np.fft.rfft(heard[:8192] * np.hanning(8192))) ** 2
        return part[600:].sum() / part.sum()

    assert bright(finger="p") < bright(finger="i") < bright(finger="a")
    assert bright(finger="i", rest_stroke=True) < bright(finger="i")


def test_a_free_string_rings_along_and_a_played_one_does_not():
    """High G4 open beside G4 on the E string (fret 3): the re-entrant ring."""
    source = Sounding(0.0, 0.5, 67, 1.0, 2)
    ring = loudness(samples([source], 2), 1.0, 1.4)
    alone = loudness(samples([source], 2, None), 1.0, 1.4)
    assert ring > alone + 20
    assert ring < loudness(samples([source], 2), 0.0, 0.4) - 18, "it is a whisper"
    busy = [source, Sounding(0.0, 0.5, 67, 0.0, 4)]
    assert loudness(samples(busy, 2), 1.0, 1.4) < ring - 15
    far = loudness(samples([Sounding(0.0, 0.5, 66, 1.0, 2)], 2), 1.0, 1.4)
    assert far < ring - 15, "F#4 has no partial in common with the open strings"


def test_nothing_clips_and_it_ends_in_silence():
    chord = [note(f"n{i}", p, 0, 4, articulations=("strong accent",)) for i, p in
             enumerate(("G4", "C4", "E4", "A4"))]  # fmt: skip
    made = piece(bar(0, *chord, dynamics=(Dynamic(F(0), "fff"),)))
    hand = fingered(made, n0=(4, 0, 4), n1=(3, 0, 4), n2=(2, 0, 4), n3=(1, 0, 4))
    raw = Mix(sounds(made, hand), Bank(UKE)).block(0, RATE)
    assert np.max(np.abs(raw)) > 1, "or there is nothing to bend"
    assert np.max(np.abs(bent(raw))) < 1
    out = render(made, hand, UKE)
    assert np.max(np.abs(out)) <= 0.8 + 1e-6
    assert np.max(np.abs(out[-RATE // 100 :])) < 1e-5


def test_any_stretch_is_the_same_samples():
    made, hand = slurred()
    mix = Mix(sounds(made, hand), Bank(UKE))
    whole = mix.block(0, 2 * RATE)
    parts = np.concatenate([mix.block(a, 441) for a in range(0, 2 * RATE, 441)])
    assert np.array_equal(whole, parts)


@pytest.mark.parametrize(
    ("marks", "steps"),
    [
        ([(0, "p"), (0, "crescendo"), (3, "stop"), (3, "f")], [1, 1, 1, 0]),
        ([(0, "f"), (0, "diminuendo"), (3, "stop")], [-1, -1, -1, 0]),
        ([(0, "f"), (0, "crescendo"), (2, "stop"), (2, "p")], [1, -1, 0, 0]),
        ([(1, "crescendo")], [0, 0, 0, 0]),
    ],
    ids=["to the mark at its end", "a step where none stands", "against the mark", "without end"],
)
def test_a_wedge_leads_evenly(marks, steps):
    notes = [note(f"n{i}", "C4", i, 1) for i in range(4)]
    made = piece(
        bar(0, *notes, dynamics=tuple(Dynamic(F(t), w) for t, w in marks)),
        bar(1, note("n4", "C4", 0, 1)),
    )
    loud = [s.loud for s in sounds(made)]
    found = [b - a for a, b in pairwise(loud)]
    assert [int(np.sign(round(step, 6))) for step in found] == steps
    if steps[1] == steps[0] != 0:
        assert found[0] == pytest.approx(found[1])
