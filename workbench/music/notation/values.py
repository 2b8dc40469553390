"""Note values: which durations one note sign can show, and how to split the others.

Durations are quarter lengths. A value is a sign (breve to 1024th) with up to
two dots, inside a tuplet or not. Engraving and export split alike.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from workbench.music.beats import beat_length

#: MEI @dur by quarter length, longest first.
SIGNS: tuple[tuple[Fraction, str], ...] = (
    (Fraction(8), "breve"),
    *((Fraction(4, 2**k), str(2**k)) for k in range(11)),
)
_BY_LENGTH = {
    length * factor: (name, dots)
    for length, name in reversed(SIGNS)
    for dots, factor in ((2, Fraction(7, 4)), (1, Fraction(3, 2)), (0, Fraction(1)))
}
Ratio = tuple[int, int]
PLAIN: Ratio = (1, 1)


@dataclass(frozen=True)
class Value:
    """``sounding`` is the real quarter length; ``ratio`` (3, 2) in a triplet, (1, 1) outside;
    ``sign`` "" where the length is too fine for any sign (never out of ``split``)."""

    sounding: Fraction
    sign: str
    dots: int = 0
    ratio: Ratio = PLAIN

    @property
    def unit(self) -> Fraction:
        """Quarter length of the bare sign, without dots and tuplet."""
        return Fraction(8) if self.sign == "breve" else Fraction(4, int(self.sign))

    @property
    def flags(self) -> int:
        """Flags or beams: 1 for an eighth, 0 from the quarter up."""
        return 0 if self.sign == "breve" else max(0, int(self.sign).bit_length() - 3)


def one_value(duration: Fraction, ratio: Ratio = PLAIN) -> Value | None:
    """The single sign for ``duration`` inside ``ratio``, None where there is none."""
    found = _BY_LENGTH.get(duration * ratio[0] / ratio[1])
    return Value(duration, found[0], found[1], ratio) if found else None


def is_binary(number: Fraction) -> bool:
    """True where the denominator is a power of two."""
    return number.denominator & (number.denominator - 1) == 0


def ratio_for(duration: Fraction) -> Ratio:
    """The usual tuplet in which a duration such as 1/3 or 2/5 has a sign."""
    odd = duration.denominator
    while odd % 2 == 0:
        odd //= 2
    if odd == 1:
        return PLAIN
    normal = 1
    while normal * 2 < odd:
        normal *= 2
    return (odd, normal)


def strong_points(meter: tuple[int, int], length: Fraction) -> tuple[Fraction, ...]:
    """Beats counted so that a short (pickup) bar ends on its last beat."""
    beat = beat_length(meter)
    at = length
    points = []
    while at > 0:
        at -= beat
        if at > 0:
            points.append(at)
    return tuple(reversed(points))


def split(
    onset: Fraction,
    duration: Fraction,
    beats: tuple[Fraction, ...],
    ratio: Ratio = PLAIN,
) -> tuple[Value, ...]:
    """Values that add up to ``duration``, cut at beats where one sign will not do.

    A rest of rounding too small for any sign is left out.
    """
    single = one_value(duration, ratio)
    if single is not None and not _hides_beats(onset, duration, beats, ratio):
        return (single,)
    end = onset + duration
    inside = [b for b in beats if onset < b < end]
    if onset in (0, *beats):
        inside.reverse()  # from a beat the longest sign comes first
    for beat in inside:
        if one_value(beat - onset, ratio) is not None or not is_binary(beat - onset):
            return split(onset, beat - onset, (), ratio) + split(beat, end - beat, beats)
    return _greedy(duration, ratio)


def written(
    onset: Fraction,
    duration: Fraction,
    beats: tuple[Fraction, ...] = (),
    wish: Ratio | None = None,
) -> tuple[Value, ...]:
    """The values of a note by itself: ``wish`` is the tuplet its score gave it, kept where
    one sign shows it."""
    if wish and wish[0] != wish[1]:
        whole = split(onset, duration, (), wish)
        if len(whole) == 1:
            return whole
    return split(onset, duration, beats, PLAIN if is_binary(duration) else ratio_for(duration))


def exactly(values: tuple[Value, ...], duration: Fraction) -> tuple[Value, ...]:
    """The values and what they leave of a duration, so that they add up exactly."""
    left = duration - sum(v.sounding for v in values)
    return (*values, Value(left, "")) if left else values


def _hides_beats(
    onset: Fraction, duration: Fraction, beats: tuple[Fraction, ...], ratio: Ratio
) -> bool:
    """True for a note that starts off the beat and runs over two or more beats."""
    if ratio != PLAIN or onset == 0 or onset in beats:
        return False
    return sum(1 for b in beats if onset < b < onset + duration) >= 2


def _greedy(duration: Fraction, ratio: Ratio) -> tuple[Value, ...]:
    used = ratio if ratio != PLAIN else ratio_for(duration)
    left = duration * used[0] / used[1]
    out: list[Value] = []
    while left > 0:
        best = max((w for w in _BY_LENGTH if w <= left), default=None)
        if best is None:
            break
        if _BY_LENGTH[best][1] == 2 and best != left:
            best = max(w for w in _BY_LENGTH if w <= left and _BY_LENGTH[w][1] == 0)
        sign, dots = _BY_LENGTH[best]
        out.append(Value(best * used[1] / used[0], sign, dots, used))
        left -= best
    return tuple(out)
