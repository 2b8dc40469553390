"""The left hand for a chord shape: every fingering, easiest first.

The search is exact: all grips the rules allow are made (shape_grips), those
out of the hand's reach are dropped, the rest are ordered by what it costs to
take and hold them (holding), the same as in a piece.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from math import hypot
from typing import NamedTuple

import numpy as np

from workbench.fingering.hand.among import AMONG, among
from workbench.fingering.hand.grips import neck as neck_of
from workbench.fingering.hand.holding import HOLDING, IntArray
from workbench.fingering.hand.reach import Limits, across_mm, pair_limits, tip_mm
from workbench.fingering.shapes.chordname import ChordLabel, name_chord
from workbench.fingering.shapes.grips import FingeredShape, Frets, ShapePress, grips
from workbench.fingering.types import Settings
from workbench.fingering.weights import alone_for, weights_for
from workbench.instrument.model import Hand, Instrument
from workbench.language.fact import Fact, fact
from workbench.music.errors import BadInput

Weights = tuple[tuple[str, int], ...]
TERMS = (*HOLDING, *AMONG, "place")
SILENT = ("place", "third", "third_treble", "fourth")  # told only where nothing else is


@dataclass(frozen=True)
class ShapeBarre:
    """A finger laid over ``strings`` (numbers, lower first) at ``fret``."""

    fret: int
    strings: tuple[int, ...]
    finger: int


@dataclass(frozen=True)
class ShapeFingering:
    """One fingering. ``fingers`` are 0 (open or not played) to 4 in the order of
    the shape; ``reach_mm`` is the greatest distance between two finger tips;
    ``terms`` holds each cost term's share of ``cost``, greatest first."""

    fingers: tuple[int, ...]
    barres: tuple[ShapeBarre, ...]
    cost: int
    reach_mm: float
    reasons: tuple[Fact, ...]
    terms: tuple[tuple[str, int], ...] = ()


@dataclass(frozen=True)
class ShapeResult:
    """``fingerings`` easiest first; empty where the hand cannot hold the shape,
    and then ``impossible`` says why."""

    frets: Frets
    fingerings: tuple[ShapeFingering, ...]
    chord: ChordLabel
    impossible: Fact | None = None


def shape(
    frets: Sequence[int | None],
    instrument: Instrument,
    hand: Hand,
    limit: int | None = None,
    weights: Weights = (),
) -> ShapeResult:
    """All left-hand fingerings of a chord shape, easiest first, at most ``limit``.

    ``frets`` go from the highest-numbered string to string 1, counted from the
    capo; 0 is open, None not played. ``weights`` overrides cost weights by
    term name. Raises BadInput where the frets are not those of the instrument.
    """
    asked = tuple(frets)
    _check(asked, instrument)
    _check_weights(weights)
    return _shape(asked, instrument, hand, limit, weights)


@lru_cache(maxsize=8192)
def _shape(
    frets: Frets, instrument: Instrument, hand: Hand, limit: int | None, weights: Weights
) -> ShapeResult:
    label = name_chord(_sounding(frets, instrument))
    narrowest: tuple[float, int, int, float] | None = None
    neck = _Measures(_tips(instrument), across_mm(instrument, 1, 2), pair_limits(hand))
    possible: list[tuple[FingeredShape, float]] = []
    for held in grips(frets):
        reach, excess, a, b = _measure(held, neck)
        if excess > 0.0:
            if narrowest is None or excess < narrowest[0]:
                narrowest = (excess, a, b, reach)
        else:
            possible.append((held, reach))
    table = {
        **weights_for(Settings()).left,
        **alone_for(instrument.scale_mm),
        **dict(weights),
    }
    amounts = shape_terms([held for held, _ in possible], instrument, hand)
    price = sum(amounts[t].astype(np.int64) * table[t] for t in TERMS)
    found = []
    for i, (held, reach) in enumerate(possible):
        on = {s: p.finger for p in held.presses for s in p.strings}
        fingers = tuple(on.get(len(frets) - c, 0) for c in range(len(frets)))
        terms = [(t, int(amounts[t][i]) * table[t]) for t in TERMS if amounts[t][i]]
        found.append((int(price[i]), fingers, held, reach, terms))  # type: ignore[index]
    found.sort(key=lambda row: row[:2])
    best = tuple(_fingering(*row) for row in found[:limit])
    return ShapeResult(frets, best, label, None if found else _why_not(narrowest, hand))


def shape_terms(
    held: Sequence[FingeredShape], instrument: Instrument, hand: Hand
) -> dict[str, IntArray]:
    """Every term of taking and holding grips, in its unit: one number a grip."""
    code = np.zeros((len(held), 4), np.int32)
    beside = np.zeros((len(held), len(AMONG)), np.int32)
    for i, grip in enumerate(held):
        fingers = [(0, 0, 0)] * 4
        for p in grip.presses:
            fingers[p.finger - 1] = (p.fret, p.strings[-1], p.strings[0])
            code[i, p.finger - 1] = p.fret << 8 | p.strings[-1] << 4 | p.strings[0]
        strings = len(grip.frets)
        sounded = {strings - c: f for c, f in enumerate(grip.frets) if f is not None}
        beside[i] = among(fingers, sounded)
    return {
        **neck_of(instrument, hand).holding.terms(code, code > 0),
        **{name: beside[:, i] for i, name in enumerate(AMONG)},
        "place": (code > 0).sum(axis=1),
    }


class _Measures(NamedTuple):
    """What a grip is measured with: finger tip places by fret, reach to the next string, limits."""

    tips: tuple[float, ...]
    spacing: float
    limits: Limits


@lru_cache(maxsize=256)
def _tips(instrument: Instrument) -> tuple[float, ...]:
    return tuple(tip_mm(instrument, fret) for fret in range(instrument.playable_frets + 1))


def _measure(held: FingeredShape, neck: _Measures) -> tuple[float, float, int, int]:
    """(greatest distance, mm beyond the hand's greatest span at the worst pair, that pair);
    the last three are 0 within reach, else the distance is that pair's."""
    reach = worst = worst_reach = 0.0
    fingers = (0, 0)
    for a, b in held.pairs:
        distance = _apart(a, b, neck)
        reach = max(reach, distance)
        most = neck.limits[(a.finger, b.finger)][1]
        if distance - most > worst:
            worst, fingers, worst_reach = distance - most, (a.finger, b.finger), distance
    return round(worst_reach or reach, 1), worst, *fingers


def _apart(a: ShapePress, b: ShapePress, neck: _Measures) -> float:
    """Distance between two fingers, at the nearest strings where one is laid."""
    along = neck.tips[b.fret] - neck.tips[a.fret]
    across = max(a.strings[-1] - b.strings[0], b.strings[-1] - a.strings[0], 0)
    return hypot(along, across * neck.spacing)


def _fingering(
    cost: int,
    fingers: tuple[int, ...],
    held: FingeredShape,
    reach: float,
    terms: list[tuple[str, int]],
) -> ShapeFingering:
    told = sorted((t for t in terms if t[1]), key=_greatest_first)
    reasons = tuple(fact("asks", term=name) for name, _ in told if name not in SILENT)
    barres = tuple(
        ShapeBarre(p.fret, tuple(range(p.strings[-1], p.strings[0] + 1)), p.finger)
        for p in held.barres
    )
    return ShapeFingering(
        fingers,
        barres,
        cost,
        reach,
        reasons or (fact("easy" if held.presses else "all open"),),
        tuple(told),
    )


def _greatest_first(term: tuple[str, int]) -> tuple[int, str]:
    return -term[1], term[0]


def _why_not(narrowest: tuple[float, int, int, float] | None, hand: Hand) -> Fact:
    if narrowest is None:
        return fact("fingers too few")
    _, a, b, reach = narrowest
    most = pair_limits(hand)[(a, b)][1]
    return fact("beyond the span", reach=reach, a=a, b=b, hand=hand.name, most=most)


def _sounding(frets: Frets, instrument: Instrument) -> tuple[int, ...]:
    """MIDI numbers from the highest-numbered string to string 1."""
    openings = reversed(instrument.open_midi)
    return tuple(o + f for o, f in zip(openings, frets, strict=True) if f is not None)


def _check(frets: Frets, instrument: Instrument) -> None:
    if len(frets) != instrument.strings:
        raise BadInput(
            "The shape has {frets} places, but {instrument} has {strings} strings; give "
            "one fret for each, from the highest-numbered string to string 1.",
            frets=len(frets),
            instrument=instrument.called,
            strings=instrument.strings,
        )
    for string, fret in zip(range(len(frets), 0, -1), frets, strict=True):
        if fret is not None and not 0 <= fret <= instrument.playable_frets:
            raise BadInput(
                "String {string}: fret {fret} is not on {instrument}; give 0 to {playable_frets}.",
                string=string,
                fret=fret,
                instrument=instrument.called,
                playable_frets=instrument.playable_frets,
            )
    if all(f is None for f in frets):
        raise BadInput("No string of the shape is played; give at least one fret.")


def _check_weights(weights: Weights) -> None:
    for name, _ in weights:
        if name not in TERMS:
            raise BadInput(
                "'{name}' is no cost term of a shape; use {names}.",
                name=name,
                names=", ".join(TERMS),
            )
