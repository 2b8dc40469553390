"""``shape FRETS``: the left hand for a chord shape."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING, Any

from workbench.commands.output import Result
from workbench.commands.source import INSTRUMENT_HELP, hand_option, player
from workbench.instrument.model import Instrument
from workbench.music.errors import BadInput

if TYPE_CHECKING:
    from workbench.fingering.shape import ShapeResult


def options(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "frets",
        nargs="+",
        metavar="FRETS",
        help="from the highest-numbered string to string 1, x not played: 2,0,1,0",
    )
    parser.add_argument("--instrument", metavar="I", help=INSTRUMENT_HELP)
    parser.add_argument("--capo", type=int, metavar="FRET", help="fret the capo sits on")
    hand_option(parser)
    parser.add_argument(
        "--limit", type=int, default=5, metavar="N", help="at most so many fingerings (default 5)"
    )


def run(options: argparse.Namespace) -> Result:
    from workbench.fingering.shape import shape

    if options.limit < 1:
        raise BadInput(f"--limit {options.limit}: give 1 or more.")
    instrument, hand = player(options, None)
    documents, lines = [], []
    for text in options.frets:
        found = shape(parse_frets(text, instrument), instrument, hand, options.limit)
        documents.append(_document(text, found))
        lines += ([""] if lines else []) + _text(text, instrument, found)
    return Result(documents[0] if len(documents) == 1 else documents, lines)


def parse_frets(text: str, instrument: Instrument) -> tuple[int | None, ...]:
    """Frets from the highest-numbered string to string 1; None for ``x``.

    Raises BadInput where the text names no shape of this instrument.
    """
    words = text.replace(" ", "").split(",")
    if len(words) != instrument.strings:
        raise BadInput(
            f"Shape '{text}': {instrument.name} has {instrument.strings} strings; "
            "give one fret for each, from the highest-numbered string to string 1."
        )
    frets: list[int | None] = []
    for word in words:
        if word.lower() == "x":
            frets.append(None)
        elif word.isascii() and word.isdigit() and int(word) <= instrument.playable_frets:
            frets.append(int(word))
        else:
            raise BadInput(
                f"Shape '{text}': '{word}' is no fret; give 0 to "
                f"{instrument.playable_frets}, or x for a string that is not played."
            )
    if all(fret is None for fret in frets):
        raise BadInput(f"Shape '{text}': no string is played; give at least one fret.")
    return tuple(frets)


def _document(text: str, found: ShapeResult) -> dict[str, Any]:
    return {
        "frets": text,
        "chord": {"name": found.chord.name, "inversion": found.chord.inversion},
        "fingerings": [
            {
                "fingers": list(one.fingers),
                "barres": [
                    {"fret": b.fret, "strings": list(b.strings), "finger": b.finger}
                    for b in one.barres
                ],
                "cost": one.cost,
                "reach_mm": round(one.reach_mm, 1),
                "reasons": list(one.reasons),
            }
            for one in found.fingerings
        ],
    }


def _text(text: str, instrument: Instrument, found: ShapeResult) -> list[str]:
    raise NotImplementedError
