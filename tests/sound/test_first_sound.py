"""How soon something is heard: on the device's own clock, and against the work of a bar."""

from __future__ import annotations

import time

import numpy as np
import pytest

from tests.sound.notes_made import song
from tests.sound.virtual_device import VirtualDevice, programme
from tests.whole import so_many
from workbench.instrument.table import instrument
from workbench.sound.bank import Bank
from workbench.sound.device import PERIOD_SECONDS, PERIODS, SoundCard
from workbench.sound.hearing import Manner
from workbench.sound.mix import frame
from workbench.sound.player import Player, heard_in
from workbench.sound.plucked import RATE
from workbench.sound.programme import Programme
from workbench.sound.render import render

GUITAR = instrument("guitar")
LONG = 64  # bars


class EventDevice(VirtualDevice):
    """The virtual device, and what it was given."""

    def start(self, fill):
        self.given = []
        super().start(lambda size: self.given.append(fill(size)))


@pytest.mark.parametrize("bars", [2, 256])
def test_the_first_sound_leaves_within_100_ms_of_the_key(bars):
    """In frames: what lies in the device before the first one that is not silent. The piece's
    length does not matter."""
    device = EventDevice()
    player = Player(lambda: device)
    player.play(Programme(song(bars), None, GUITAR, tuple(range(bars))))
    device.run_to(0.1)
    player.close()
    heard = np.concatenate(device.given)
    loud = int(np.argmax(np.abs(heard) > np.max(np.abs(heard)) / 100))
    behind = max(2 * device.BLOCK, round(PERIOD_SECONDS * PERIODS * RATE))
    assert np.any(heard) and (behind + loud) / RATE < 0.100


def heard_first(made):
    """Processor seconds from the key to the first sound, nothing of the piece made before."""
    plan = Programme(made, None, GUITAR, tuple(range(LONG)), Manner(), bank=Bank(GUITAR))
    begun = time.thread_time()
    device = EventDevice()
    player = Player(lambda: device)
    player.play(plan)
    device.run_to(0.02)
    taken = time.thread_time() - begun
    player.close()
    return taken


def made_whole(made):
    """Processor seconds that making the whole piece takes."""
    begun = time.thread_time()
    render(made, None, GUITAR)
    return time.thread_time() - begun


def test_what_stands_between_key_and_sound_is_little_work():
    """Less than making one bar in four takes, in the same run; the best of some tries each,
    so that neither what is loaded the first time nor a neighbour's work counts."""
    made = song(LONG)
    first = min(heard_first(made) for _ in range(4))
    whole = min(made_whole(made) for _ in range(2))
    print(f"\nkey to first sound: {first / whole:.3f} of the making of {LONG} bars")
    assert first < whole / 4


@pytest.mark.slow
def test_following_a_real_clock_for_minutes():
    """The library's null device runs by the computer's clock: what is told is never more than
    a period and 30 ms behind or before what was asked for, and it does not drift."""
    player = Player(lambda: SoundCard(null=True))
    plan = programme(manner=Manner(loop=True))
    size = frame(8 * 60 / 137)
    begun = time.perf_counter()
    player.play(plan)
    off = []
    off_for = so_many(600, 120)
    while time.perf_counter() - begun < off_for:
        time.sleep(0.05)
        made, at = player.transport.at(player.device.heard)
        followed = made.number * size + at
        off.append(followed / RATE - (time.perf_counter() - begun))
        told = heard_in(made, at)
        score = at / RATE * 137 / 60
        if 0.1 < score % 1 < 0.9:
            assert told.bar == (0 if score < 4 else 1)
    player.close()
    drift = abs(np.median(off[-200:]) - np.median(off[20:220])) / off_for
    print(f"\ndrift: {drift * 1e6:.1f} millionths of the clock")
    assert drift * off_for < 0.03
