"""Sounds laid side by side in time, any stretch of them at will, always the same samples."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np

from workbench.sound.bank import Bank, Sound, SoundKey
from workbench.sound.plucked import RATE
from workbench.sound.sounding import Sounding

RISE = round(0.0004 * RATE)  # a pluck begins in this time
LIFT = round(0.040 * RATE)  # a lifted finger damps the string in this time
STRIKE = round(0.006 * RATE)  # the plucking finger rests on the string before it plays
PASS = round(0.003 * RATE)  # from one length of a slurred string to the next
ALONG_SECONDS = 2.5  # a string that rings along is heard no longer
MASTER = 0.32  # of full scale for a single plain note
KNEE = 0.75  # above this the sum is bent, so that it never clips
ROOM = 0.24

Gain = Callable[[Sounding], float]


@dataclass(frozen=True)
class MixedSound:
    """A sound in the mix: from frame ``start``, full until ``held`` frames, then fading out
    in ``fade`` frames; in ``rise`` frames it fades in."""

    start: int
    held: int
    fade: int
    rise: int
    gain: float
    key: SoundKey | None
    sound: Sound | None = None

    @property
    def end(self) -> int:
        return self.start + self.held + self.fade


class Mix:
    """Notes as samples. ``block`` gives any stretch of them."""

    def __init__(self, notes: Sequence[Sounding], bank: Bank, gain: Gain | None = None) -> None:
        self.bank = bank
        self.placed = sorted(_placed(notes, bank, gain), key=lambda p: p.start)
        self._starts = [p.start for p in self.placed]
        self._longest = max((p.end - p.start for p in self.placed), default=0)

    @property
    def end(self) -> int:
        """The frame after which nothing sounds."""
        return max((p.end for p in self.placed), default=0)

    def add(self, placed: Sequence[MixedSound]) -> None:
        """Lay in sounds of another kind, such as clicks."""
        self.placed = sorted([*self.placed, *placed], key=lambda p: p.start)
        self._starts = [p.start for p in self.placed]
        self._longest = max((p.end - p.start for p in self.placed), default=0)

    def block(self, start: int, size: int) -> Sound:
        """The sum from frame ``start`` on; the same frames are always the same samples."""
        out = np.zeros(size, np.float32)
        first = bisect_left(self._starts, start - self._longest)
        for p in self.placed[first : bisect_left(self._starts, start + size)]:
            if p.end > start:
                self._add(out, p, start)
        return out

    def _add(self, out: Sound, p: MixedSound, start: int) -> None:
        sound = p.sound if p.sound is not None else self.bank.sound(p.key) if p.key else None
        if sound is None:
            return
        begin, end = max(start, p.start), min(start + out.size, p.end, p.start + sound.size)
        if end <= begin:
            return
        a, b = begin - p.start, end - p.start
        piece = sound[a:b] * np.float32(p.gain)
        if a < p.rise:
            share = np.arange(a, min(b, p.rise)) / p.rise
            piece[: share.size] *= (0.5 - 0.5 * np.cos(np.pi * share)).astype(np.float32)
        if b > p.held:
            from_ = max(a, p.held)
            share = (np.arange(from_, b) - p.held) / p.fade
            piece[from_ - a :] *= (0.5 + 0.5 * np.cos(np.pi * share)).astype(np.float32)
        out[begin - start : end - start] += piece

    def prepare(self, start: int, until: int) -> bool:
        """Make one sound that begins in that stretch and is not made yet; False where
        all are there."""
        low, high = bisect_left(self._starts, start), bisect_left(self._starts, until)
        for p in self.placed[low:high]:
            if p.key is not None and not self.bank.has(p.key):
                self.bank.sound(p.key)
                return True
        return False


def frame(seconds: float) -> int:
    """The nearest frame."""
    return round(seconds * RATE)


def _placed(notes: Sequence[Sounding], bank: Bank, gain: Gain | None) -> list[MixedSound]:
    out = []
    used: dict[int, list[tuple[float, float]]] = {}
    for s in notes:
        if s.string is not None:
            used.setdefault(s.string, []).append((s.start, s.end))
    for spans in used.values():
        spans.sort()
    for s in notes:
        loud = MASTER * s.gain * (gain(s) if gain else 1.0)
        start, stop = frame(s.start), frame(s.end)
        if s.ends == "struck":
            fade = min(STRIKE, (stop - start) // 2)
            held = stop - start - fade
        else:
            held, fade = stop - start, PASS if s.ends == "slurred" else LIFT
        key = bank.key(s, (held + fade) / RATE)
        held = min(held, key.size - fade)  # longer than any string rings
        rise = RISE if s.after is None else PASS
        if loud > 0:
            out.append(MixedSound(start, held, fade, rise, loud, key))
            out += _along(s, key, start, loud, bank, used)
    return out


def _along(
    s: Sounding,
    key: SoundKey,
    start: int,
    loud: float,
    bank: Bank,
    used: dict[int, list[tuple[float, float]]],
) -> list[MixedSound]:
    """Free strings that ring along until somebody plays or stops them."""
    out = []
    for other in bank.along(key):
        spans = used.get(other.along or 0, [])
        place = bisect_right(spans, (s.start, float("inf")))
        if place and spans[place - 1][1] > s.start:
            continue
        nxt = spans[place][0] if place < len(spans) else float("inf")
        seconds = min(nxt - s.start, ALONG_SECONDS, other.size / RATE)
        fade = min(STRIKE if nxt - s.start == seconds else LIFT, frame(seconds))
        held = frame(seconds) - fade
        out.append(MixedSound(start, held, max(1, fade), RISE, loud, other))
    return out


def bent(samples: Sound) -> Sound:
    """The samples with what lies above the knee bent, so that none reaches 1."""
    over = np.abs(samples) - KNEE
    if not np.any(over > 0):
        return samples
    bend = np.sign(samples) * (KNEE + ROOM * np.tanh(over / ROOM))
    return np.where(over > 0, bend, samples).astype(np.float32)
