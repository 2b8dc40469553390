"""Measured features of a fingered piece and of each of its bars.

Every feature grows, or stays, when more is asked: more accidentals, another
voice, a faster tempo. That is why lengths count bars, not seconds, cuts are
counted a bar, not as a share of the notes, and patterns voice by voice.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from workbench.fingering.types import Fingering
from workbench.instrument.model import Hand, Instrument
from workbench.language.message import Figure, Message, Text, counted, in_a_row, mark, message
from workbench.music.model import Piece
from workbench.teaching.bars.measure import RHYTHM_POINTS, BarMeasure, measure_bars
from workbench.teaching.bars.strokes import written_as
from workbench.teaching.grading.demands import Demand, table


@dataclass(frozen=True)
class Feature:
    """A demand as met in a piece or bar: ``value`` in the demand's own unit and the
    grade (0-9) at which that is typical; of rhythm also the ``kinds`` met, of the key the
    ``signs`` of its signature."""

    demand: Demand
    value: float
    level: float
    kinds: tuple[str, ...] = ()
    signs: int | None = None

    @property
    def sentence(self) -> Message:
        """For example "left-hand changes: 2.5 a bar, as in grade 2"."""
        d = self.demand
        name = message(d.name)
        if self.value == 0:
            nothing = (
                message(_NOTHING[d.id]) if d.id in _NOTHING else message("none", sense="demand")
            )
            return message("{demand}: {amount}", demand=name, amount=nothing)
        grade = min(8, int(self.level))
        if grade == 0:
            return message(
                "{demand}: {amount}, as in first lessons", demand=name, amount=self.amount
            )
        return message(
            "{demand}: {amount}, as in grade {grade}", demand=name, amount=self.amount, grade=grade
        )

    @property
    def amount(self) -> Text:
        """The value with its unit, such as "2.5 a bar"; kinds of rhythm by their names."""
        if self.kinds:
            return in_a_row(message(RHYTHM_WORDS[kind]) for kind in self.kinds)
        if self.signs is not None:
            return _key_words(self.signs, self.value - self.signs)
        words = _AMOUNTS.get(self.demand.id)
        if words is None:
            return _figure(self.value)
        if isinstance(words, tuple):
            shown = round(self.value) if "{whole}" in words[0] else self.value
            words = words[0 if shown == 1 else 1]
        return message(
            words,
            value=_figure(self.value),
            whole=f"{self.value:.0f}",
            percent=f"{100 * self.value:.0f}",
        )


def _figure(value: float) -> Text:
    """A number to one place, as it is written in the language spoken."""
    if 0 < value < 0.05:
        return message("less than {value}", value=Figure(0.1, 1))
    tenths = round(value, 1)
    return f"{tenths:.0f}" if tenths == int(tenths) else Figure(tenths, 1)


def _key_words(signs: int, outside: float) -> Message:
    """The signature, and how many notes a bar lie ``outside`` it (counted up to OUTSIDE)."""
    told = counted(signs, "{n} sharp or flat", "{n} sharps or flats")
    if not signs:
        told = message(_NOTHING["key"])
    if outside <= 0:
        return told
    more = message("{n} or more", n=OUTSIDE) if outside >= OUTSIDE else _figure(outside)
    return message("{signs}, notes outside the key a bar: {more}", signs=told, more=more)


OUTSIDE = 3  # notes a bar outside the signature beyond which more are not counted
RHYTHM_WORDS = {
    "quavers": mark("eighth notes"),
    "semiquavers": mark("sixteenth notes"),
    "demisemiquavers": mark("thirty-second notes"),
    "dotted rhythm": mark("dotted notes"),
    "triplets": mark("triplets"),
    "other tuplets": mark("tuplets other than triplets"),
    "syncopation": mark("syncopation"),
    "tie over the bar": mark("ties over the bar line"),
    "compound time": mark("compound time"),
    "uneven time": mark("uneven time"),
    "change of time": mark("changes of time"),
    "grace notes": mark("grace notes"),
    "two against three": mark("two against three"),
}
#: What stands for none of a demand, where "none" would not do.
_NOTHING = {"key": mark("no sharps or flats"), "frets": mark("open strings only")}
#: How much of each demand, in words, where a figure alone would not do; where there are two,
#: the first is for exactly one.
_AMOUNTS: dict[str, str | tuple[str, str]] = {
    "range": (mark("{value} semitone"), mark("{value} semitones")),
    "changes": mark("{value} a bar"),
    "change_speed": mark("{value} a second where they come fastest"),
    "reach": mark("{percent} % of the greatest span"),
    "barre": mark("{value} a bar (a full barre counts twice)"),
    "shifts": mark("{value} a bar"),
    "cuts": mark("{value} a bar"),
    "together": mark("{value} a bar"),
    "rhythm": (mark("{value} point"), mark("{value} points")),
    "speed": mark("{value} a second where they come fastest"),
    "length": (mark("{whole} different bar"), mark("{whole} different bars")),
    "texture": mark("{value} on average"),
}


def features_from(
    values: Mapping[str, float],
    *,
    local: bool = False,
    rhythm: frozenset[str] = frozenset(),
    signs: int | None = None,
) -> tuple[Feature, ...]:
    """Features from measured amounts by demand id, such as those a syllabus states.

    A demand not given counts as not asked. ``local`` keeps to what one bar shows; ``rhythm``
    are the kinds of rhythm met, ``signs`` the sharps or flats of the signature.
    """
    kinds = tuple(kind for kind in RHYTHM_WORDS if kind in rhythm)
    return tuple(
        Feature(
            d,
            values.get(d.id, 0.0),
            d.level(values.get(d.id, 0.0)),
            kinds if d.id == "rhythm" else (),
            signs if d.id == "key" else None,
        )
        for d in table().demands
        if d.local or not local
    )


def piece_features(
    piece: Piece,
    fingering: Fingering,
    instrument: Instrument,
    hand: Hand,
    measures: tuple[BarMeasure, ...] | None = None,
) -> tuple[Feature, ...]:
    """The features of the whole piece, one for each demand of the table.

    Raises BadInput where the fingering belongs to another piece.
    """
    rows = measures if measures is not None else measure_bars(piece, fingering, instrument, hand)
    return features_from(piece_amounts(piece, rows), rhythm=_kinds(rows), signs=_signs(rows))


def _signs(rows: tuple[BarMeasure, ...]) -> int:
    """The most sharps or flats of a signature."""
    return max((r.accidentals for r in rows), default=0)


def _kinds(rows: tuple[BarMeasure, ...]) -> frozenset[str]:
    return frozenset().union(*(r.rhythm for r in rows))


def piece_amounts(piece: Piece, rows: tuple[BarMeasure, ...]) -> dict[str, float]:
    """Amounts by demand id for the whole piece."""
    bars = max(1, len(rows))
    lows = [r.lowest for r in rows if r.lowest is not None]
    highs = [r.highest for r in rows if r.highest is not None]
    different = len({at for b, at in zip(piece.bars, written_as(piece), strict=True) if b.notes})
    return {
        "range": float(max(highs) - min(lows)) if lows else 0.0,
        "frets": float(max((r.highest_fret for r in rows), default=0)),
        "positions": float(len(frozenset().union(*(r.positions for r in rows)))) if rows else 0.0,
        "places": float(len(frozenset().union(*(r.places for r in rows)))) if rows else 0.0,
        "changes": sum(r.changes for r in rows) / bars,
        "change_speed": _upper([_rate(r.changes, r.seconds) for r in rows]),
        "reach": _upper([r.reach.share for r in rows]),
        "barre": sum(r.barre for r in rows) / bars,
        "shifts": sum(r.shifts for r in rows) / bars,
        "cuts": sum(r.cuts for r in rows) / bars,
        "patterns": float(len(frozenset().union(*(r.patterns for r in rows)))) if rows else 0.0,
        "together": sum(r.together for r in rows) / bars,
        "rhythm": sum(RHYTHM_POINTS[k] for k in _kinds(rows)),
        "speed": _upper([_rate(r.onsets, r.seconds) for r in rows]),
        "length": different + 0.1 * (len(piece.bars) - different),
        "key": _signs(rows) + min(float(OUTSIDE), sum(r.chromatic for r in rows) / bars),
        "texture": sum(r.sounding for r in rows) / bars,
    }


def bar_features(row: BarMeasure) -> tuple[Feature, ...]:
    """What a single bar asks, in the demands that one bar shows."""
    return features_from(
        {
            "frets": float(row.highest_fret),
            "changes": float(row.changes),
            "change_speed": _rate(row.changes, row.seconds),
            "reach": row.reach.share,
            "barre": row.barre * 0.5,
            "shifts": row.shifts * 0.5,
            "cuts": float(row.cuts),
            "together": float(row.together),
            "rhythm": sum(RHYTHM_POINTS[k] for k in row.rhythm),
            "speed": _rate(row.onsets, row.seconds),
            "key": row.accidentals + min(float(OUTSIDE), float(row.chromatic)),
            "texture": row.sounding,
        },
        local=True,
        rhythm=row.rhythm,
        signs=row.accidentals,
    )


def _rate(count: int, seconds: float) -> float:
    return count / seconds if seconds > 0 else 0.0


def _upper(values: list[float]) -> float:
    """The value that one bar in ten exceeds; grows when any of the values grows."""
    if not values:
        return 0.0
    ranked = sorted(values)
    return ranked[int(0.9 * (len(ranked) - 1) + 0.5)]
