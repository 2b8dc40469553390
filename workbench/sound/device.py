"""Where the samples go: the computer's sound device, asked for frames by its own clock."""

from __future__ import annotations

import contextlib
import ctypes
import sys
import time
from collections.abc import Callable, Generator
from typing import Any, Protocol

from workbench.language.message import Message, message
from workbench.music.errors import BadInput
from workbench.sound.bank import Sound
from workbench.sound.plucked import RATE

PERIOD_SECONDS = 0.02
PERIODS = 3
Fill = Callable[[int], Sound]


class Device(Protocol):
    """Something that plays: ``start`` asks ``fill`` for frames until ``stop``.

    ``heard`` is the frame that leaves the loudspeaker now, of those it was given since
    it was first started."""

    def start(self, fill: Fill) -> None: ...

    def stop(self) -> None: ...

    def close(self) -> None: ...

    @property
    def heard(self) -> int: ...


class Clock:
    """Tells from the calls for frames which one is heard.

    Every call is a new mark, so that a device's clock that runs a little fast or slow
    is followed without drift. ``behind`` are the frames that lie in the device before
    those asked for now.
    """

    def __init__(self, behind: int, now: Callable[[], float] = time.perf_counter) -> None:
        self.behind, self.now = behind, now
        self._given = 0
        self._mark = (0, now(), 0)  # first frame of the last call, its time, frames at its end

    def called(self, size: int) -> None:
        """So many frames are asked for now."""
        first = self._given
        self._given += size
        self._mark = (first, self.now(), self._given)

    @property
    def heard(self) -> int:
        first, at, end = self._mark
        passed = round((self.now() - at) * RATE)
        return max(0, min(first - self.behind + passed, end))


class SoundCard:
    """The computer's sound device, by miniaudio. ``null`` plays into nothing, in real time.

    Raises BadInput, as one sentence that offers the WAV, where there is no device.
    """

    def __init__(self, null: bool = False) -> None:
        try:
            import miniaudio
        except (ImportError, OSError) as fault:
            raise BadInput(no_device()) from fault
        _hush()
        kinds = miniaudio.Backend
        real = [kind for kind in kinds if kind not in (kinds.NULL, kinds.CUSTOM)]
        try:
            self._device: Any = miniaudio.PlaybackDevice(
                output_format=miniaudio.SampleFormat.FLOAT32,
                nchannels=1,
                sample_rate=RATE,
                buffersize_msec=round(PERIOD_SECONDS * 1000),
                callback_periods=PERIODS,
                backends=[kinds.NULL] if null else real,
                app_name="Pluckwright",
            )
        except (miniaudio.MiniaudioError, OSError) as fault:
            raise BadInput(no_device()) from fault
        self._clock = Clock(round(PERIOD_SECONDS * (PERIODS - 1) * RATE))

    def start(self, fill: Fill) -> None:
        """Ask for frames from now on. Raises BadInput where the device is gone."""
        clock = self._clock

        def frames() -> Generator[Any, int, None]:
            size = yield b""
            while True:
                clock.called(size)
                size = yield fill(size).tobytes()

        pull = frames()
        next(pull)
        try:
            self._device.start(pull)
        except Exception as fault:
            with contextlib.suppress(Exception):
                self._device.stop()
            raise BadInput(no_device()) from fault

    def stop(self) -> None:
        with contextlib.suppress(Exception):
            self._device.stop()

    def close(self) -> None:
        """Stop and let the device go."""
        self._device.close()

    @property
    def heard(self) -> int:
        return self._clock.heard


#: Kept, for the library calls it as long as the program runs.
_SILENT = ctypes.CFUNCTYPE(None)(lambda: None)


def _hush() -> None:
    """Keep ALSA from writing to the terminal what it misses; the user gets one sentence."""
    if sys.platform.startswith("linux"):
        with contextlib.suppress(OSError, AttributeError):
            ctypes.CDLL("libasound.so.2").snd_lib_error_set_handler(_SILENT)


def no_device() -> Message:
    """The sentence for a computer without sound."""
    return message(
        "This computer has no sound device that can be used; save the sound as a WAV file "
        "(Sound, Export sound) and play it elsewhere."
    )
