"""A device of sound without a card, and a short programme to play on it."""

from __future__ import annotations

import numpy as np

from tests.sound.notes_made import bar, note, piece
from workbench.instrument.table import instrument
from workbench.sound.device import Clock
from workbench.sound.hearing import Manner
from workbench.sound.plucked import RATE
from workbench.sound.programme import Programme

UKE = instrument("ukulele")


def two_bars(**more):
    return piece(
        bar(0, *(note(f"a{i}", p, i, 1) for i, p in enumerate(("C4", "E4", "G4", "A4")))),
        bar(1, note("b", "C4", 0, 4), note("c", "E4", 1, 2, voice=2)),
        tempo=137.0,
        **more,
    )


def programme(made=None, order=(0, 1), manner=None, **more):
    made = made or two_bars()
    return Programme(made, None, UKE, order, manner or Manner(), **more)


class VirtualDevice:
    """A device with a clock of its own, a little off, that asks in blocks of 441 frames
    with up to 8 ms of delay; ``behind`` two blocks as real ones are."""

    BLOCK, DRIFT = 882, 1 + 150e-6

    def __init__(self):
        self.time = 0.0
        self.clock = Clock(2 * self.BLOCK, now=lambda: self.time)
        self.calls = 0
        self.random = np.random.Generator(np.random.PCG64(2))

    def start(self, fill):
        self.fill = fill

    def stop(self):
        pass

    close = stop

    @property
    def heard(self):
        return self.clock.heard

    def run_to(self, until):
        """Let time pass; every block is asked for when the device has room for it."""
        while True:
            due = self.calls * self.BLOCK / RATE / self.DRIFT
            if due > until:
                break
            self.time = max(self.time, due + self.random.uniform(0, 0.008))
            self.clock.called(self.BLOCK)
            self.fill(self.BLOCK)
            self.calls += 1
        self.time = max(self.time, until)

    @property
    def true_frame(self):
        """What leaves the loudspeaker now: the first block is heard two blocks late."""
        return self.time * RATE * self.DRIFT - 2 * self.BLOCK
