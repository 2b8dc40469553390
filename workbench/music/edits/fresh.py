"""A piece begun from nothing: empty bars to write in."""

from __future__ import annotations

from fractions import Fraction

from workbench.music.edits.bars import MOST_BARS
from workbench.music.edits.meters import checked_key, checked_meter
from workbench.music.edits.signs import set_tempo, set_titles
from workbench.music.errors import BadInput
from workbench.music.model import Bar, Key, PartInfo, Piece


def new_piece(
    title: str,
    composer: str = "",
    *,
    key: Key = Key(0),  # noqa: B008  (frozen)
    meter: tuple[int, int] = (4, 4),
    tempo: float = 90.0,
    bars: int = 16,
    pickup: Fraction = Fraction(0),
    arranger: str = "",
) -> Piece:
    """Empty bars, counted from 1, after a pickup of ``pickup`` quarter lengths (0: none).

    Raises BadInput for what no piece has: no title, no bars, a pickup as long as a bar.
    """
    checked_key(key)
    checked_meter(meter)
    if not 1 <= bars <= MOST_BARS:
        raise BadInput("A piece has 1 to {most} bars; choose a number there.", most=MOST_BARS)
    size = Fraction(4 * meter[0], meter[1])
    if not 0 <= pickup < size:
        raise BadInput("A pickup is shorter than a bar; choose a shorter one.")
    made = []
    if pickup:
        made.append(
            Bar(
                index=0,
                number="0",
                time_signature=meter,
                length=pickup,
                notes=(),
                key=key,
                pickup=True,
            )
        )
    for number in range(1, bars + 1):
        made.append(
            Bar(
                index=len(made),
                number=str(number),
                time_signature=meter,
                length=size,
                notes=(),
                key=key,
            )
        )
    empty = Piece(title, tuple(made), key=key, parts=(PartInfo(1, "", 0),))
    return set_tempo(set_titles(empty, title, composer, arranger), 0, tempo)
