"""``shape FRETS``: the left hand for a chord shape."""

from __future__ import annotations

import argparse
from typing import Any

from workbench.commands.output import Result, wrapped
from workbench.commands.source import INSTRUMENT_HELP, hand_option, player
from workbench.instrument.model import Instrument
from workbench.language.names import chord_words
from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.teaching.bars.harmony import INVERSIONS


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
    from workbench.fingering.shapes.shape import shape
    from workbench.fingering.shapes.words import shape_document

    if options.limit < 1:
        raise BadInput("--limit {given}: give 1 or more.", given=options.limit)
    instrument, hand = player(options, None)
    documents: list[dict[str, Any]] = []
    lines: list[str] = []
    for text in options.frets:
        found = shape(parse_frets(text, instrument), instrument, hand, options.limit)
        document = shape_document(found)
        documents.append(document)
        lines += ([""] if lines else []) + _text(text, instrument, document)
    return Result(documents[0] if len(documents) == 1 else documents, lines)


def parse_frets(text: str, instrument: Instrument) -> tuple[int | None, ...]:
    """Frets from the highest-numbered string to string 1; None for ``x``.

    Raises BadInput where the text names no shape of this instrument.
    """
    words = text.replace(" ", "").split(",")
    if len(words) != instrument.strings:
        raise BadInput(
            "Shape '{text}': {instrument} has {strings} strings; give one fret for each, "
            "from the highest-numbered string to string 1.",
            text=text,
            instrument=instrument.called,
            strings=instrument.strings,
        )
    frets: list[int | None] = []
    for word in words:
        if word.lower() == "x":
            frets.append(None)
        elif word.isascii() and word.isdigit() and int(word) <= instrument.playable_frets:
            frets.append(int(word))
        else:
            raise BadInput(
                "Shape '{text}': '{word}' is no fret; give 0 to {most}, or x for a "
                "string that is not played.",
                text=text,
                word=word,
                most=instrument.playable_frets,
            )
    if all(fret is None for fret in frets):
        raise BadInput("Shape '{text}': no string is played; give at least one fret.", text=text)
    return tuple(frets)


def _text(text: str, instrument: Instrument, document: dict[str, Any]) -> list[str]:
    chord = document["chord"]
    name = chord_words(chord["name"] or "") or say("no common chord")
    if chord["inversion"] in INVERSIONS:
        name += f", {say(INVERSIONS[chord['inversion']])}"
    lines = [
        say("{text} on {instrument}: {name}", text=text, instrument=instrument.called, name=name)
    ]
    if document["impossible"]:
        return lines + wrapped(document["impossible"], "  ")
    for place, one in enumerate(document["fingerings"], 1):
        barres = "".join(f"; {_barre(barre)}" for barre in one["barres"])
        lines.append(
            f"{place:>3}  "
            + say(
                "fingers {fingers}   reach {reach:.0f} mm, effort {effort}",
                fingers=",".join(map(str, one["fingers"])),
                reach=one["reach_mm"],
                effort=one["cost"],
            )
            + barres
        )
        lines += wrapped(" ".join(one["reasons"]), "       ")
    return lines


def _barre(barre: dict[str, Any]) -> str:
    strings = f"{barre['strings'][0]}-{barre['strings'][-1]}"
    return say(
        "barre with finger {finger} at fret {fret}, strings {strings}",
        finger=barre["finger"],
        fret=barre["fret"],
        strings=strings,
    )
