"""Fretted instruments in millimetres and MIDI numbers, and hands."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

from workbench.language.message import Message, message

A4_HZ = 440.0  # ISO 16
A4_LOWEST, A4_HIGHEST = 390.0, 470.0  # that strings are tuned to; common practice, no source


def frequency(midi: float) -> float:
    """Frequency in hertz of a MIDI number in equal temperament, A4 = 440 Hz (ISO 16)."""
    return float(A4_HZ * 2.0 ** ((midi - 69) / 12))


def fret_mm(scale_mm: float, fret: float) -> float:
    """Distance of a fret from the nut in millimetres: L(1 - 2^(-n/12))."""
    return float(scale_mm * (1.0 - 2.0 ** (-fret / 12.0)))


def roman(number: int) -> str:
    """Frets and positions, from 1, are named in Roman numerals."""
    out = ""
    for value, letters in ((10, "X"), (9, "IX"), (5, "V"), (4, "IV"), (1, "I")):
        while number >= value:
            out += letters
            number -= value
    return out


@dataclass(frozen=True)
class Instrument:
    """A plucked, fretted instrument.

    ``name`` is in English. ``tuning`` holds the MIDI numbers of the open strings, string 1 (nearest
    the floor) first. ``scale_mm`` is the scale length, ``spacing_mm`` the
    distance between neighbouring strings at the nut, ``frets`` the number of
    frets on the neck. ``capo`` is the fret the capo sits on; frets are then
    counted from the capo, as players do.
    """

    id: str
    name: str
    tuning: tuple[int, ...]
    scale_mm: float
    frets: int
    spacing_mm: float
    capo: int = 0

    @property
    def called(self) -> Message:
        """What it is called, to be said where it is shown."""
        if self.id.startswith("custom:"):
            strings = self.id.removeprefix("custom:").partition("@")[0]
            return message("Own tuning {body}", body=strings)
        return message(self.name)

    @property
    def strings(self) -> int:
        return len(self.tuning)

    @property
    def playable_frets(self) -> int:
        """Highest fret counted from the capo."""
        return self.frets - self.capo

    @property
    def sounding_scale_mm(self) -> float:
        """Scale length from the capo (or nut) to the saddle, in millimetres."""
        return float(self.scale_mm * 2.0 ** (-self.capo / 12.0))

    @cached_property
    def open_midi(self) -> tuple[int, ...]:
        """MIDI numbers of the open strings with the capo on, string 1 first."""
        return tuple(m + self.capo for m in self.tuning)

    @property
    def lowest(self) -> int:
        return min(self.open_midi)

    @property
    def highest(self) -> int:
        return max(self.open_midi) + self.playable_frets

    @property
    def reentrant(self) -> bool:
        """True where pitch does not fall from string 1 to the last."""
        return any(a < b for a, b in zip(self.tuning, self.tuning[1:], strict=False))

    def fret_mm(self, fret: float) -> float:
        """Distance in millimetres from the capo (or nut) to a fret counted from it."""
        return fret_mm(self.sounding_scale_mm, fret)

    def places(self, midi: int) -> tuple[tuple[int, int], ...]:
        """All (string, fret) that sound ``midi``, string 1 first; empty if none."""
        return tuple(
            (s, midi - o)
            for s, o in enumerate(self.open_midi, 1)
            if 0 <= midi - o <= self.playable_frets
        )


@dataclass(frozen=True)
class Hand:
    """How far a left hand reaches, between finger tips, along and across the neck.

    Three measured spans in millimetres, 1-2, 1-4 and 2-4, each as comfortable
    and as greatest. Guidance, not medical advice.
    """

    name: str
    comfort_12: float
    comfort_14: float
    comfort_24: float
    max_12: float
    max_14: float
    max_24: float
