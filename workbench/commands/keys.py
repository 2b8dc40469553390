"""``keys SCORE``: the keys that suit the instrument and the hand, best first."""

from __future__ import annotations

import argparse

from workbench.arranging.weights import STRICT
from workbench.arranging.words import key_reason
from workbench.commands.output import Meter, Result, table, wrapped
from workbench.commands.source import (
    INSTRUMENT_HELP,
    hand_option,
    load,
    part_options,
    player,
    score_options,
    wishes,
)
from workbench.fingering.types import LEVELS, Settings
from workbench.language.names import decimal, key_words
from workbench.language.speech import say


def options(parser: argparse.ArgumentParser) -> None:
    score_options(parser)
    parser.add_argument("--instrument", metavar="I", help=INSTRUMENT_HELP)
    parser.add_argument("--capo", type=int, metavar="FRET", help="fret the capo sits on")
    hand_option(parser)
    part_options(parser)
    parser.add_argument(
        "--top-fret", type=int, metavar="N", help="no note above this fret (default 12)"
    )
    parser.add_argument("--strict", choices=STRICT, help="how much may be left out")
    parser.add_argument("--level", choices=LEVELS, help="level of the student")
    parser.add_argument(
        "--octaves", action="store_true", help="every octave of a key, not only its best"
    )


def run(options: argparse.Namespace) -> Result:
    from workbench.arranging.keys import by_key, candidate_keys

    source = load(options)
    instrument, hand = player(options, source.lesson)
    with Meter(say("Trying keys")) as meter:
        found = candidate_keys(
            source.piece, instrument, hand, progress=meter,
            wishes=wishes(options, source.lesson),
            settings=Settings(level=options.level) if options.level else None,
        )  # fmt: skip
    found = found if options.octaves else by_key(found)
    document = {
        "title": source.piece.title,
        "instrument": instrument.id,
        "source_key": source.piece.key.name,
        "candidates": [
            {
                "key": one.key,
                "transposition": one.transposition,
                "unplayable": one.unplayable,
                "changed": one.changed,
                "effort": one.effort,
                "reasons": [key_reason(one)],
            }
            for one in found
        ],
    }
    rows = [
        (
            i,
            key_words(one.key),
            f"{one.transposition:+d}",
            one.unplayable,
            one.changed,
            decimal(one.effort, 2),
        )
        for i, one in enumerate(found, 1)
    ]
    heads = [
        "",
        say("key", sense="head"),
        say("semitones", sense="head"),
        say("unplayable", sense="head"),
        say("changed", sense="head"),
        say("effort", sense="head"),
    ]
    lines = [
        say(
            "{piece} - {instrument}; written in {key}",
            piece=source.piece.title,
            instrument=instrument.called,
            key=key_words(source.piece.key.name),
        ),
        "",
        *table(heads, rows, right=(2, 3, 4, 5)),
        "",
    ]
    for one in found[:3]:
        lines += wrapped(f"{key_words(one.key)}: " + key_reason(one))
    return Result(document, lines)
