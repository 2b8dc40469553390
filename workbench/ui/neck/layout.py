"""Where strings, frets and fingers lie on the drawn neck. No Qt: plain numbers."""

from __future__ import annotations

from dataclasses import dataclass

from workbench.fingering.hand.reach import tip_mm
from workbench.instrument.model import Instrument


@dataclass(frozen=True)
class NeckLayout:
    """Pixels for an instrument's neck, string 1 on top as in tablature.

    ``scale`` is pixels a millimetre along the neck, ``gap`` pixels between
    strings, ``head`` the room for names and open strings beside the nut.
    ``mirrored`` puts the nut to the right, for a left-handed player.
    """

    instrument: Instrument
    scale: float
    gap: float
    head: float
    top: float
    foot: float
    mirrored: bool = False

    @property
    def frets(self) -> int:
        return self.instrument.playable_frets

    @property
    def width(self) -> float:
        return self.head + self.instrument.fret_mm(self.frets) * self.scale + self.gap * 0.5

    @property
    def height(self) -> float:
        return self.top + (self.instrument.strings - 1) * self.gap + self.foot

    def _x(self, distance: float) -> float:
        return self.width - distance if self.mirrored else distance

    def along(self, x: float) -> float:
        """How many millimetres from the nut a point lies; below zero beside it."""
        return (self._x(x) - self.head) / self.scale

    def x_of(self, along: float) -> float:
        """Where a distance from the nut in millimetres is drawn."""
        return self._x(self.head + along * self.scale)

    def fret_x(self, fret: int) -> float:
        """The fret wire; 0 is the nut (or capo)."""
        return self.x_of(self.instrument.fret_mm(fret))

    def finger_x(self, fret: int) -> float:
        """Where the tip of a finger that stops the fret is drawn; open strings
        beside the nut."""
        if fret == 0:
            return self._x(self.head - self.gap * 1.05)
        near = self.instrument.fret_mm(fret - 1)
        wire = self.instrument.fret_mm(fret)
        # Far up the neck the drawn finger is wider than the fret: keep it between the wires.
        tip = min(tip_mm(self.instrument, fret), wire - self.gap * 0.36 / self.scale)
        return self._x(self.head + max(tip, (near + wire) / 2) * self.scale)

    def string_y(self, string: int) -> float:
        return self.top + (string - 1) * self.gap

    def place_at(self, x: float, y: float) -> tuple[int, int] | None:
        """The (string, fret) under a point; None off the neck."""
        string = round((y - self.top) / self.gap) + 1
        if not 1 <= string <= self.instrument.strings:
            return None
        if abs(y - self.string_y(string)) > self.gap * 0.5:
            return None
        along = (self.width - x if self.mirrored else x) - self.head
        if along < 0:
            return (string, 0) if along > -self.gap * 1.6 else None
        for fret in range(1, self.frets + 1):
            if along <= self.instrument.fret_mm(fret) * self.scale:
                return (string, fret)
        return None
