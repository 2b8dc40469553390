"""``sound SCORE``: the piece as plucked sound, held as long as the fingering holds it."""

from __future__ import annotations

import argparse
from pathlib import Path

from workbench.commands.output import Meter, Result
from workbench.commands.prepare import fingering_of, lesson_of, playing_of
from workbench.commands.source import load, playing_options, score_options
from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.music.model import Piece


def options(parser: argparse.ArgumentParser) -> None:
    score_options(parser, lessons=True)
    parser.add_argument("-o", "--output", required=True, metavar="OUT.wav", help="the sound file")
    parser.add_argument(
        "--tempo", type=float, metavar="PERCENT", help="of the written tempo (default 100)"
    )
    parser.add_argument(
        "--bars", metavar="A-B", help="only these bars, by their printed numbers, as written"
    )
    playing_options(parser)


def run(options: argparse.Namespace) -> Result:
    from workbench.sound.files import make_sound

    target = Path(options.output)
    if target.is_dir():
        name = target / "piece.wav"
        raise BadInput(
            say(
                "{target} is a folder; name the file to write, such as {name}.",
                target=target,
                name=name,
            )
        )
    lesson = lesson_of(options, load(options, lessons=True))
    bars = passage(lesson.piece, options.bars) if options.bars else None
    tempo = lesson.tempo_percent if options.tempo is None else options.tempo
    instrument, _ = playing_of(lesson)
    fingering = fingering_of(lesson)
    with Meter("Sound") as meter:
        made = make_sound(
            lesson.piece,
            target,
            fingering,
            instrument,
            tempo_percent=tempo,
            bars=bars,
            progress=lambda share: meter(round(100 * share), 100),
        )
    document = {**made, "path": str(target)}
    return Result(
        document, [say("{target}: {seconds:.1f} seconds.", target=target, seconds=made["seconds"])]
    )


def passage(piece: Piece, text: str) -> tuple[int, int]:
    """Indices of the first and last bar of a passage such as ``5-8``, by printed numbers.

    Raises BadInput where the piece has no such bars.
    """
    first, dash, last = text.partition("-")
    found = []
    for number in (first, last if dash else first):
        indices = [bar.index for bar in piece.bars if bar.number == number.strip()]
        if not indices:
            numbers = say(
                "{first} to {last}", first=piece.bars[0].number, last=piece.bars[-1].number
            )
            raise BadInput(
                say(
                    "--bars {text}: '{piece}' has no bar {number}; its bars are {numbers}.",
                    text=text,
                    piece=piece.title,
                    number=number or say("(none given)"),
                    numbers=numbers,
                )
            )
        found.append(indices)
    if found[0][0] > found[1][-1]:
        raise BadInput(f"--bars {text}: the first bar comes after the last; write them in order.")
    return found[0][0], found[1][-1]
