"""Beats: how long they are, where a moment lies among them, and how that is written."""

from __future__ import annotations

from fractions import Fraction

from workbench.language.message import Text, message
from workbench.music.model import Bar

_SIGNS = {
    Fraction(1, 4): "¼", Fraction(1, 2): "½", Fraction(3, 4): "¾",
    Fraction(1, 3): "⅓", Fraction(2, 3): "⅔",
}  # fmt: skip


def compound(meter: tuple[int, int]) -> bool:
    """True for 6/8, 9/8, 12/8 and their like, where three go to a beat."""
    beats, unit = meter
    return unit >= 8 and beats > 3 and beats % 3 == 0


def beat_length(meter: tuple[int, int]) -> Fraction:
    """Quarter length of a beat; a dotted one in compound time."""
    unit = Fraction(4, meter[1])
    return unit * 3 if compound(meter) else unit


def metric_onset(bar: Bar, onset: Fraction) -> Fraction:
    """Where an onset lies in the metre: in a pickup the bar is counted from its end."""
    if not bar.pickup:
        return onset
    full = Fraction(4 * bar.time_signature[0], bar.time_signature[1])
    return onset + max(full - bar.length, Fraction(0))


def beat_at(bar: Bar, onset: Fraction) -> Fraction:
    """The place of an onset from 1 on, in the unit of the time signature."""
    return metric_onset(bar, onset) * bar.time_signature[1] / 4 + 1


def counted_beat(bar: Bar, onset: Fraction) -> Text:
    """The beat as a player counts it: "1", "2 and", "3 and a bit"."""
    whole, rest = divmod(metric_onset(bar, onset) / beat_length(bar.time_signature), 1)
    if rest == 0:
        return str(whole + 1)
    if rest == Fraction(1, 2):
        return message("{beat} and", beat=whole + 1)
    return message("{beat} and a bit", beat=whole + 1)


def beat_figure(beat: Fraction, between: str = " ") -> str:
    """A place in figures: "2", "2½", "2 3/8"."""
    whole, rest = divmod(beat, 1)
    return f"{whole}{_SIGNS[rest]}" if rest in _SIGNS else beat_in_digits(beat, between)


def beat_in_digits(beat: Fraction, between: str = " ") -> str:
    """A place without signs for fractions: "2", "2 1/2", "2 3/8"."""
    whole, rest = divmod(beat, 1)
    return f"{whole}{between}{rest}" if rest else str(whole)
