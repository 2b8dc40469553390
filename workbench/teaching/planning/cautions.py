"""Cautions where playing can hurt. Guidance, not medical advice."""

from __future__ import annotations

from workbench.fingering.types import Fingering
from workbench.instrument.model import Hand, Instrument
from workbench.language.message import Message, mark, message
from workbench.music.bar_names import bars_named
from workbench.music.model import Piece
from workbench.teaching.bars.measure import WIDE, BarMeasure, measure_bars

ALWAYS = mark(
    "Warm up before playing and stop at once where anything hurts; pain that stays or "
    "comes back belongs before a teacher and a health professional."
)
GUIDANCE = mark("Figures about hands are guidance, not medical advice.")
LONG_DAY = 40  # minutes after which a break is due; common practice, no source


def cautions(
    piece: Piece,
    fingering: Fingering,
    instrument: Instrument,
    hand: Hand,
    *,
    minutes_a_day: int = 20,
    measures: tuple[BarMeasure, ...] | None = None,
) -> tuple[Message, ...]:
    """What to take care of in this piece at that many minutes a day."""
    rows = measures if measures is not None else measure_bars(piece, fingering, instrument, hand)
    said = [message(ALWAYS)]
    wide = tuple(m.index for m in rows if m.reach.strain > WIDE)
    if wide:
        said.append(
            message(
                "Stretch well beyond what a {hand} hand spans in comfort in {bars}: begin at a "
                "higher fret or with a capo, a minute at a time, and let the thumb give way "
                "behind the neck.",
                hand=message(hand.name),
                bars=bars_named(piece, wide),
            )
        )
    barred = tuple(m.index for m in rows if m.barre)
    if barred:
        said.append(
            message(
                "Barre in {bars}: use the weight of the arm, not the grip of the thumb, and let "
                "go between tries.",
                bars=bars_named(piece, barred),
            )
        )
    if minutes_a_day > LONG_DAY:
        said.append(
            message(
                "{minutes} minutes in a day: split them, with a break of five minutes after "
                "every twenty-five.",
                minutes=minutes_a_day,
            )
        )
    return tuple(said)
