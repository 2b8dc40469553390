"""Play, stop, and what is heard now: the transport and a device together, without Qt."""

from __future__ import annotations

import threading
from collections.abc import Callable

import numpy as np

from workbench.sound.bank import Sound
from workbench.sound.device import Device, SoundCard
from workbench.sound.hearing import SILENCE, Heard
from workbench.sound.plucked import RATE
from workbench.sound.programme import Programme, Round
from workbench.sound.transport import Transport


class Player:
    """Plays programmes on a device that is opened when first needed."""

    def __init__(self, opened: Callable[[], Device] = SoundCard) -> None:
        self._opened = opened
        self.device: Device | None = None
        self.transport = Transport()
        self._running = False
        self._wake = threading.Event()
        self._maker: threading.Thread | None = None
        self._fault: BaseException | None = None
        self._closed = False

    def play(self, programme: Programme) -> None:
        """Begin at once. Raises BadInput without a sound device or anything to play."""
        rounds = programme.rounds()
        if self.device is None:
            self.device = self._opened()
        self.transport.play(rounds)
        if not self._running:
            self._running = True
            try:
                self.device.start(self._fill)
            except BaseException:
                self._running = False
                self.transport.stop()
                self.device.close()
                self.device = None
                raise
        self._make_ahead()

    def change(self, programme: Programme) -> None:
        """Let another programme come with the next round."""
        self.transport.follow_with(programme.rounds())

    def stop(self) -> None:
        """Fade out; the device goes to sleep when ``rest`` is called next."""
        self.transport.stop()

    def rest(self) -> None:
        """Let the device sleep where nothing is to be heard any more."""
        if self._running and not self.transport.ringing and self.device is not None:
            self._running = False
            self.device.stop()

    def close(self) -> None:
        """Silence, and the device is let go."""
        self._closed = True
        self._wake.set()
        self.transport.stop()
        if self.device is not None:
            self.device.stop()
            self.device.close()
            self.device = None
        if self._maker is not None:
            self._maker.join(2.0)

    @property
    def playing(self) -> bool:
        return self.transport.playing

    def fault(self) -> BaseException | None:
        """What went wrong in a thread of the sound since it was last asked: then all is silent,
        and playing anew begins afresh."""
        fault, self._fault = self._fault, None
        return fault

    def heard(self) -> Heard:
        """What is heard now."""
        if self.device is None:
            return SILENCE
        made, at = self.transport.at(self.device.heard)
        return heard_in(made, at)

    def _make_ahead(self) -> None:
        """Make sounds before they are needed, in a thread of their own."""
        self._wake.set()
        if self._maker is None:
            self._maker = threading.Thread(target=self._keep_making, daemon=True)
            self._maker.start()

    def _keep_making(self) -> None:
        while not self._closed:
            self._wake.clear()
            try:
                while not self._closed and self.transport.prepare():
                    pass
            except Exception as fault:  # nobody sees what is raised in a thread
                self._gone_wrong(fault)
            self._wake.wait(0.1 if self.transport.playing else None)

    def _fill(self, size: int) -> Sound:
        """The next frames for the device; silence where they cannot be made."""
        try:
            return self.transport.fill(size)
        except Exception as fault:
            self._gone_wrong(fault)
            return np.zeros(size, np.float32)

    def _gone_wrong(self, fault: Exception) -> None:
        if self.transport.playing:  # told once
            self._fault = fault
        self.transport.give_up()


def heard_in(made: Round | None, at: int) -> Heard:
    """What a frame of a round says of itself."""
    if made is None:
        return SILENCE
    if made.counting:
        return Heard(True, round=made.number, tempo=made.tempo, counting=True)
    bar = made.bar_at(at)
    if bar is None:
        return Heard(True, round=made.number, tempo=made.tempo)
    return Heard(
        True, bar.position, bar.index, made.sounding(at), made.number, made.tempo,
        missed=made.missed(at), version=made.version,
        share=max(0.0, min(1.0, (at / RATE - bar.start) / bar.seconds)) if bar.seconds else 0.0,
    )  # fmt: skip
