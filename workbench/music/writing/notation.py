"""Exact lengths as written note values: types, dots, tuplets and tied pieces."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

# MusicXML names of note values by their quarter length
TYPES: dict[Fraction, str] = {
    Fraction(32): "maxima",
    Fraction(16): "long",
    Fraction(8): "breve",
    Fraction(4): "whole",
    Fraction(2): "half",
    Fraction(1): "quarter",
    Fraction(1, 2): "eighth",
    Fraction(1, 4): "16th",
    Fraction(1, 8): "32nd",
    Fraction(1, 16): "64th",
    Fraction(1, 32): "128th",
    Fraction(1, 64): "256th",
    Fraction(1, 128): "512th",
    Fraction(1, 256): "1024th",
}


@dataclass(frozen=True)
class Value:
    """One written note value of exactly ``length`` quarter lengths.

    ``type`` is "" where the length is too fine for any note value.
    """

    length: Fraction
    type: str
    dots: int = 0
    tuplet: tuple[int, int] | None = None


def values(length: Fraction, tuplet: tuple[int, int] | None = None) -> tuple[Value, ...]:
    """The tied note values that make up ``length``; ``tuplet`` is tried first.

    The lengths of the result add up exactly.
    """
    if length <= 0:
        return ()
    ratios: list[tuple[int, int] | None] = [tuplet] if tuplet else []
    odd = _odd(length.denominator)
    ratios.append((odd, 1 << (odd.bit_length() - 1)) if odd > 1 else None)
    for ratio in ratios:
        single = _single(length, ratio)
        if single is not None:
            return (single,)
    for ratio in ratios:
        plain = length * Fraction(*(ratio or (1, 1)))
        if _odd(plain.denominator) == 1:
            return _pieces(plain, ratio)
    return (Value(length, ""),)


def _single(length: Fraction, ratio: tuple[int, int] | None) -> Value | None:
    plain = length * Fraction(*(ratio or (1, 1)))
    for dots in range(3):
        base = plain / (2 - Fraction(1, 2**dots))
        if base in TYPES:
            return Value(length, TYPES[base], dots, ratio)
    return None


def _pieces(plain: Fraction, ratio: tuple[int, int] | None) -> tuple[Value, ...]:
    """A binary length as a row of plain note values, longest first."""
    scale = Fraction(*(ratio or (1, 1)))
    out: list[Value] = []
    for size, name in TYPES.items():
        while plain >= size:
            out.append(Value(size / scale, name, 0, ratio))
            plain -= size
    if plain:
        out.append(Value(plain / scale, ""))
    return tuple(out)


def _odd(number: int) -> int:
    while number % 2 == 0:
        number //= 2
    return number
