"""Rounds one after the other as samples, and which of them is heard when."""

from __future__ import annotations

import itertools
import threading
from collections import deque
from collections.abc import Iterator

import numpy as np

from workbench.sound.bank import Sound
from workbench.sound.mix import bent
from workbench.sound.plucked import RATE
from workbench.sound.programme import Round

FADE = round(0.012 * RATE)  # what is stopped or changed dies in this time
AHEAD = 2 * RATE  # sounds are made so far before they are needed
REMEMBERED = 64


class Transport:
    """Gives the frames that come next. ``fill`` is called by the device, all else by anyone.

    Frames are counted from the first that was ever asked for. A round begins exactly
    where the one before ends; what still rings is added to it.
    """

    def __init__(self) -> None:
        self._lock = threading.RLock()
        self._rounds: Iterator[Round] = iter(())
        self._next: Round | None = None
        self._active: list[tuple[int, Round]] = []  # where it begins, and what
        self._begun: deque[tuple[int, Round | None]] = deque(maxlen=REMEMBERED)
        self._boundary = 0  # where the next round begins
        self._fading: list[tuple[int, Round]] = []
        self._fade_from = 0
        self.delivered = 0
        self.playing = False

    def play(self, rounds: Iterator[Round]) -> None:
        """Begin now; what was played fades out beneath.

        Raises BadInput where the first round cannot be."""
        first = next(rounds, None)
        with self._lock:
            self._drop()
            self._rounds, self._next = rounds, first
            self._boundary = self.delivered
            self.playing = first is not None

    def follow_with(self, rounds: Iterator[Round]) -> None:
        """Let other rounds come when the one that plays is over."""
        with self._lock:
            waiting = [self._next] if self._next is not None else []
            if self._boundary > self.delivered:
                waiting = []  # the round that plays is followed by the others at once
            self._rounds, self._next = itertools.chain(waiting, rounds), None

    def stop(self) -> None:
        """Fade out at once."""
        with self._lock:
            self._drop()
            self._rounds, self._next, self.playing = iter(()), None, False
            self._begun.append((self.delivered, None))

    def give_up(self) -> None:
        """Silence at once, without fading: what plays cannot be made."""
        with self._lock:
            self.stop()
            self._fading = []

    def _drop(self) -> None:
        self._fading, self._fade_from = self._active, self.delivered
        self._active = []

    def fill(self, size: int) -> Sound:
        """The next frames."""
        with self._lock:
            start = self.delivered
            out = np.zeros(size, np.float32)
            while self.playing and self._boundary < start + size:
                self._begin()
            for begin, made in self._active:
                at = max(start, begin)
                if at < start + size:
                    out[at - start :] += made.mix.block(at - begin, start + size - at)
            self._add_fading(out, start)
            self.delivered = start + size
            self._active = [(b, r) for b, r in self._active if b + _last(r) > self.delivered]
            return bent(out)

    def _begin(self) -> None:
        made = self._next or next(self._rounds, None)
        self._next = None
        if made is None:
            self.playing = False
            self._begun.append((self._boundary, None))
            return
        self._active.append((self._boundary, made))
        self._begun.append((self._boundary, made))
        self._boundary += made.size

    def _add_fading(self, out: Sound, start: int) -> None:
        left = self._fade_from + FADE - start
        if not self._fading:
            return
        if left <= 0:
            self._fading = []
            return
        size = min(left, out.size)
        gone = np.arange(FADE - left, FADE - left + size) / FADE
        for begin, made in self._fading:
            at = max(start, begin)
            if at < start + size:
                part = made.mix.block(at - begin, start + size - at)
                part *= (0.5 + 0.5 * np.cos(np.pi * gone[at - start :])).astype(np.float32)
                out[at - start : size] += part

    @property
    def ringing(self) -> bool:
        """Whether anything is to be heard still."""
        with self._lock:
            return (
                self.playing
                or bool(self._active)
                or (bool(self._fading) and self.delivered < self._fade_from + FADE)
            )

    def at(self, frame: int) -> tuple[Round | None, int]:
        """The round that is heard at a frame, and the frame within it."""
        with self._lock:
            for begin, made in reversed(self._begun):
                if begin <= frame:
                    return made, frame - begin
        return None, 0

    def prepare(self) -> bool:
        """Make one sound that is needed soon; False where there is nothing to make."""
        with self._lock:
            rows = [(r, self.delivered - b) for b, r in self._active[-1:]]
            if self.playing and self._next is None and self._boundary - self.delivered < AHEAD:
                self._next = next(self._rounds, None)
                if self._next is None:
                    self._rounds = iter(())
            if self._next is not None:
                rows.append((self._next, self.delivered - self._boundary))
        return any(made.mix.prepare(at, at + AHEAD) for made, at in rows)


def _last(made: Round) -> int:
    return max(made.size, made.mix.end)
