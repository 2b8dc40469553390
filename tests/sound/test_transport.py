"""The player without a window: sample-exact loops, following, stopping, counting in."""

from __future__ import annotations

import time
from fractions import Fraction
from itertools import pairwise

import numpy as np
import pytest

from tests.sound.notes_made import bar, fingered, note, piece
from tests.sound.virtual_device import UKE, VirtualDevice, programme, two_bars
from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.sound.clicks import beats_of
from workbench.sound.device import SoundCard, no_device
from workbench.sound.hearing import WHO, HeardVersion, Manner, Trainer
from workbench.sound.mix import frame
from workbench.sound.player import Player, heard_in
from workbench.sound.plucked import RATE
from workbench.sound.programme import Programme
from workbench.sound.timing import bar_times, soundings
from workbench.sound.transport import Transport


def test_a_loop_is_sample_exact_over_100_rounds():
    """Asked for in blocks of uneven size, every round from the second on is the same to the
    last bit, the length of the score to the sample, and without a gap."""
    transport = Transport()
    plan = programme(order=(0,), manner=Manner(loop=True))
    size = round(4 * 60 / 137 * RATE)
    transport.play(plan.rounds())
    sizes = np.random.Generator(np.random.PCG64(1)).integers(200, 3000, 100_000)
    blocks, total = [], 0
    for n in sizes:
        blocks.append(transport.fill(int(n)))
        total += int(n)
        if total >= 101 * size:
            break
    heard = np.concatenate(blocks)
    second = heard[size : 2 * size]
    assert np.max(np.abs(second)) / np.max(np.abs(heard)) > 0.1
    for number in range(2, 101):
        assert np.array_equal(heard[number * size : (number + 1) * size], second)
    # The last note of a round still rings into the next: more than the first time.
    assert not np.array_equal(heard[:size], second)


def test_once_is_played_once_and_then_there_is_silence():
    transport = Transport()
    plan = programme()
    (only,) = plan.rounds()
    transport.play(plan.rounds())
    heard = np.concatenate([transport.fill(1024) for _ in range(only.size // 1024 + 400)])
    assert not transport.playing and not transport.ringing
    alone = only.mix.block(0, only.mix.end)
    assert np.array_equal(heard[: alone.size], alone)
    assert not heard[alone.size :].any()


def test_stopping_fades_and_makes_no_click():
    transport = Transport()
    transport.play(programme(manner=Manner(loop=True)).rounds())
    before = np.concatenate([transport.fill(512) for _ in range(40)])
    transport.stop()
    after = np.concatenate([transport.fill(512) for _ in range(10)])
    steps = np.abs(np.diff(np.concatenate((before, after)).astype(float)))
    assert np.max(steps[before.size - 1 :]) <= np.max(steps[: before.size - 1])
    assert not after[600:].any() and after[:300].any() and not transport.ringing


def test_the_trainer_climbs_by_steps_after_so_many_rounds():
    trainer = Trainer(60, step=10, rounds=2, top=85)
    rounds = programme(manner=Manner(loop=True, trainer=trainer)).rounds()
    first = [next(rounds) for _ in range(8)]
    assert [r.tempo for r in first] == [60, 60, 70, 70, 80, 80, 85, 85]
    assert [r.size for r in first[::2]] == [frame(8 * 60 / 137 * 100 / t) for t in (60, 70, 80, 85)]
    assert [r.number for r in first] == list(range(8))


@pytest.mark.parametrize(
    "meter, beats",
    [
        ((4, 4), [0, 1, 2, 3]),
        ((3, 4), [0, 1, 2]),
        ((6, 8), [0, Fraction(3, 2)]),
        ((9, 8), [0, Fraction(3, 2), 3]),
        ((3, 8), [0, Fraction(1, 2), 1]),
        ((2, 2), [0, 2]),
        ((5, 8), [Fraction(n, 2) for n in range(5)]),
    ],
)
def test_beats_are_dotted_in_compound_metres(meter, beats):
    """Common practice, no source."""
    made = piece(bar(0, length=Fraction(4 * meter[0], meter[1]))).bars[0]
    from dataclasses import replace

    found = beats_of(replace(made, time_signature=meter))
    assert [onset for onset, _ in found] == beats
    assert [accented for _, accented in found] == [True] + [False] * (len(beats) - 1)


def test_the_metronome_clicks_on_the_beats_and_a_pickup_counts_from_its_end():
    made = piece(bar(0, note("a", "C4", 0, 1), length=1, pickup=True), bar(1))
    plan = programme(made, (0, 1), Manner(metronome=True, alone=True, who=WHO[3]))
    (found,) = plan.rounds()  # the thumb alone: no note at all, only clicks
    clicks = [(p.start, p.gain) for p in found.mix.placed]
    assert [at for at, _ in clicks] == [frame(s) for s in range(5)]
    gains = [gain for _, gain in clicks]
    assert gains[1] > gains[0] == gains[2] == gains[3] == gains[4]


def test_one_bar_is_counted_in_before_the_first_note():
    rounds = list(programme(manner=Manner(count_in=True)).rounds())
    assert [r.counting for r in rounds] == [True, False]
    assert rounds[0].size == frame(4 * 60 / 137) and len(rounds[0].mix.placed) == 4
    pickup = piece(bar(0, note("a", "C4", 0, 1), length=1, pickup=True), bar(1))
    counted = next(programme(pickup, (0, 1), Manner(count_in=True)).rounds())
    assert counted.size == frame(7.0), "a whole bar, then the three beats that the pickup lacks"


def test_play_can_begin_in_the_middle_of_a_bar():
    (found,) = programme(onset=Fraction(2)).rounds()
    assert [s.note for s in found.notes] == ["a2", "a3", "b", "c"]
    assert found.notes[0].start == pytest.approx(0.0) and found.size == frame(6 * 60 / 137)


def test_a_voice_or_the_thumb_can_be_alone_or_louder():
    made = two_bars()

    def gains(who, alone):
        manner = Manner(who=who, alone=alone)
        (found,) = programme(made, manner=manner).rounds()
        return {s.note: manner.gain(s) for s in found.notes}

    alone = gains(WHO[2], True)
    assert alone["c"] == 1 and alone["b"] == 0
    louder = gains(WHO[1], False)
    assert louder["b"] == 1 and 0 < louder["c"] < 0.5


def test_two_fingerings_take_turns():
    made = piece(bar(0, note("a", "D4", 0, 4)))
    held, cut = fingered(made, a=(3, 2, 4)), fingered(made, a=(3, 2, 1))
    rounds = Programme(made, cut, UKE, (0,), against=HeardVersion(made, held, UKE)).rounds()
    found = list(rounds)
    assert [[s.seconds for s in r.notes] for r in found] == [[1.0], [4.0]]
    assert [r.version for r in found] == [0, 1]


def test_a_cut_note_is_missed_from_its_cut_to_its_written_end():
    made = piece(bar(0, note("a", "D4", 0, 3)), bar(1))
    cut = fingered(made, a=(3, 2, 1))
    (found,) = Programme(made, cut, UKE, (0, 1)).rounds()
    assert [found.missed(frame(s)) for s in (0.5, 1.5, 2.9, 3.1)] == [
        frozenset(), {"a"}, {"a"}, frozenset(),
    ]  # fmt: skip
    assert found.sounding(frame(0.5)) == {"a"} and not found.sounding(frame(1.5))


def test_nothing_to_play_is_said():
    with pytest.raises(BadInput, match="nothing to play"):
        programme(order=())


def test_following_stays_within_30_ms_of_the_device_over_10_minutes():
    device = VirtualDevice()
    transport = Transport()
    # Silent sounds: ten minutes of frames are asked for, and their making is tested elsewhere.
    plan = programme(manner=Manner(loop=True, who=WHO[3]))
    size = frame(8 * 60 / 137)
    device.start(transport.fill)
    transport.play(plan.rounds())
    worst = 0.0
    for tenth in range(1, 6001):
        device.run_to(tenth / 10)
        made, at = transport.at(device.heard)
        followed = made.number * size + at
        worst = max(worst, abs(followed - device.true_frame) / RATE)
        told = heard_in(made, at)
        score = (device.true_frame % size) / RATE * 137 / 60
        if 0.1 < score % 1 < 0.9:
            assert told.bar == (0 if score < 4 else 1)
            assert (f"a{int(score)}" in told.notes) == (score < 4)
    print(f"\nfollowing: at most {worst * 1000:.1f} ms off in 10 minutes")
    assert worst < 0.030
    assert transport.delivered / RATE > 599


def test_the_null_device_of_the_library_plays_in_real_time_and_stops_clean():
    player = Player(lambda: SoundCard(null=True))
    plan = programme(manner=Manner(loop=True))
    begun = time.perf_counter()
    player.play(plan)
    seen = set()
    off = []
    off_for = 0.8
    while time.perf_counter() - begun < off_for:
        time.sleep(0.01)
        seen |= player.heard().notes
        off.append(player.device.heard / RATE - (time.perf_counter() - begun))
    assert {"a0", "a1"} <= seen
    assert np.ptp(off[20:]) / off_for < 0.4  # it is followed, whatever else this machine does
    player.stop()
    assert not player.playing
    until = time.perf_counter() + 5
    while player.transport.ringing and time.perf_counter() < until:
        time.sleep(0.01)
    player.rest()
    given = player.transport.delivered
    time.sleep(0.08)
    assert player.transport.delivered == given, "the device sleeps"
    player.play(plan)
    assert player.playing
    player.close()
    assert player.device is None and not player._maker.is_alive()


def test_without_a_device_one_sentence_offers_the_wav(monkeypatch):
    import miniaudio

    def none(*_, **__):
        raise miniaudio.MiniaudioError("failed to init device", -201)

    monkeypatch.setattr(miniaudio, "PlaybackDevice", none)
    player = Player()
    with pytest.raises(BadInput) as said:
        player.play(programme())
    assert str(said.value) == str(no_device()) and "WAV" in str(no_device())
    assert not player.playing and player.device is None
    player.close()


def test_the_rounds_are_made_ahead():
    transport = Transport()
    transport.play(programme(manner=Manner(loop=True, trainer=Trainer(50))).rounds())
    transport.fill(64)
    made = 0
    while transport.prepare():
        made += 1
    assert made > 0 and not transport.prepare()
    starts = [p.start for p in transport.at(0)[0].mix.placed]
    assert all(b >= a for a, b in pairwise(starts))
    assert say(WHO[0])


def test_parts_of_a_long_span_join_without_a_seam():
    """Twenty bars in parts sound as they do in one piece, held and slurred notes too."""
    names = ("C4", "D4", "E4", "F4")
    made = piece(
        *(
            bar(
                i,
                *(note(f"n{i}-{k}", names[(i + k) % 4], k, 1, slur_start=k == 3, slur_stop=k == 0)
                  for k in range(4)),
                note(f"b{i}", "G4", 0, 6 if i % 2 == 0 else 1, voice=2),
            )
            for i in range(20)
        ),
        tempo=240.0,
    )  # fmt: skip
    places = {"C4": (3, 0), "D4": (3, 2), "E4": (3, 4), "F4": (3, 5), "G4": (4, 0)}
    hand = fingered(made, **{n.id: (*places[n.pitch.name], n.duration) for n in made.notes})
    plan = Programme(made, hand, UKE, range(20), Manner(tempo=100))
    parts = list(plan.rounds())
    assert len(parts) == 3 and sum(r.size for r in parts) == frame(20.0)
    together = [
        (s.note, round(at + s.start, 6), round(s.seconds, 6), s.ends, bool(s.after))
        for at, r in zip((0.0, 8.0, 16.0), parts, strict=True)
        for s in r.notes
    ]
    whole = soundings(made, bar_times(made, range(20)), hand, UKE)
    assert together == [
        (s.note, round(s.start, 6), round(s.seconds, 6), s.ends, bool(s.after)) for s in whole
    ]
    assert [t.position for r in parts for t in r.times] == list(range(20))


@pytest.mark.parametrize("where", ["prepare", "fill"])
def test_a_fault_in_a_thread_of_the_sound_ends_in_silence_and_is_told(monkeypatch, where):
    """The device's thread and the one that makes sounds ahead end neither silently nor for good."""
    device = VirtualDevice()
    player = Player(lambda: device)
    asked = []
    calls = {"prepare": lambda: player._keep_making(), "fill": lambda: player._fill(512)}

    def broken(*_):
        asked.append(where)
        player._closed = True  # so that the thread's own loop ends in this test
        player._wake.set()
        raise ZeroDivisionError("a sound that cannot be made")

    monkeypatch.setattr(player, "_make_ahead", lambda: None)
    player.play(programme(manner=Manner(loop=True)))
    assert player._fill(512).any() and player.fault() is None
    with monkeypatch.context() as patch:
        patch.setattr(player.transport, where, broken)
        calls[where]()
    assert asked and not player.playing and not player.transport.ringing
    assert not player._fill(512).any()
    assert isinstance(player.fault(), ZeroDivisionError) and player.fault() is None
    player.play(programme())
    assert player.playing and player._fill(512).any()
