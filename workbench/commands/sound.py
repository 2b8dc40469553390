"""``sound SCORE``: the piece as plucked sound, held as long as the fingering holds it."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from pathlib import Path

from workbench.commands.output import Meter, Result, file_to_write
from workbench.commands.prepare import fingering_of, lesson_of
from workbench.commands.source import (
    check_pitch,
    load,
    pitch_option,
    playing_options,
    score_options,
)
from workbench.language.message import message
from workbench.language.speech import count, say
from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.lessons.playing import playing_of

WHAT = ("music", "clicks", "tracks")
#: As on the command line, and as the programme names them.
BROUGHT_OUT = {
    "all": "all notes", "upper": "the upper voice", "lower": "the lower voices",
    "thumb": "the thumb", "fingers": "the fingers",
}  # fmt: skip


def options(parser: argparse.ArgumentParser) -> None:
    score_options(parser, lessons=True)
    parser.add_argument(
        "-o", "--output", required=True, metavar="OUT.wav",
        help="the sound file, .wav or .flac; with --what tracks a folder",
    )  # fmt: skip
    parser.add_argument(
        "--what", choices=WHAT, default="music",
        help="the music (default), a click track alone, or a folder of practice tracks: slow "
        "and full for every item of the plan",
    )  # fmt: skip
    parser.add_argument(
        "--tempo", type=float, metavar="PERCENT", help="of the written tempo (default 100)"
    )
    parser.add_argument(
        "--bars", metavar="A-B", help="only these bars, by their printed numbers, as written"
    )
    parser.add_argument("--count-in", action="store_true", help="one bar of clicks before")
    parser.add_argument("--metronome", action="store_true", help="clicks on the beats")
    parser.add_argument(
        "--bring-out", choices=tuple(BROUGHT_OUT), metavar="NOTES",
        help="upper, lower (voices), thumb or fingers, louder than the rest",
    )  # fmt: skip
    parser.add_argument("--alone", action="store_true", help="of --bring-out: without the rest")
    parser.add_argument(
        "--as-written", action="store_true", help="every note as long as written, none cut short"
    )
    pitch_option(parser)
    playing_options(parser)


def run(options: argparse.Namespace) -> Result:
    from workbench.sound.files import SUFFIXES

    target = Path(options.output)
    check_pitch(options)
    if options.what == "tracks":
        return _tracks(options, target)
    file_to_write(options.output, "piece.wav")
    if target.suffix.lower() not in SUFFIXES:
        raise BadInput(
            "{path}: sound is written as .wav or .flac; end the name with one of them.", path=target
        )
    lesson = lesson_of(options, load(options, lessons=True))
    bars = passage(lesson.piece, options.bars) if options.bars else None
    with Meter("Sound") as meter:
        seconds = _music(options, lesson, bars, target, lambda s: meter(round(100 * s), 100))
    document = {"seconds": round(seconds, 3), "path": str(target)}
    return Result(document, [say("{target}: {seconds:.1f} seconds.", target=target,
                                 seconds=seconds)])  # fmt: skip


def _music(
    options: argparse.Namespace,
    lesson: Lesson,
    bars: tuple[int, int] | None,
    target: Path,
    tell: Callable[[float], None],
) -> float:
    """Write the music or its clicks; the seconds."""
    from workbench.sound.bank import Bank
    from workbench.sound.files import write_sound
    from workbench.sound.hearing import Manner
    from workbench.sound.programme import Programme
    from workbench.sound.timing import bar_times, order_of
    from workbench.sound.tracks import click_track, programme_samples

    tempo = float(lesson.tempo_percent if options.tempo is None else options.tempo)
    order = order_of(lesson.piece, bars)
    bar_times(lesson.piece, order, tempo)  # refuses a tempo that cannot be
    if options.what == "clicks":
        return write_sound(click_track(lesson.piece, order, tempo, tell), target)
    instrument, _ = playing_of(lesson)
    fingering = None if options.as_written else fingering_of(lesson)
    manner = Manner(
        tempo, count_in=options.count_in, metronome=options.metronome, alone=options.alone,
        who=BROUGHT_OUT[options.bring_out or "all"],
    )  # fmt: skip
    programme = Programme(
        lesson.piece, fingering, instrument, order, manner, bank=Bank(instrument, options.a4)
    )
    return write_sound(programme_samples(programme, tell), target)


def _tracks(options: argparse.Namespace, folder: Path) -> Result:
    """A folder of practice tracks."""
    from workbench.music.order.form import playing_order
    from workbench.sound.tracks import tracks_of, write_tracks
    from workbench.teaching.planning.plan import make_plan

    if folder.is_file():
        raise BadInput("{path} is a file; name a folder for the tracks.", path=folder)
    lesson = lesson_of(options, load(options, lessons=True))
    instrument, hand = playing_of(lesson)
    fingering = fingering_of(lesson)
    plan = make_plan(
        lesson.piece, fingering, instrument, hand, minutes_a_day=lesson.minutes_a_day,
        tempo_percent=lesson.tempo_percent, done=lesson.plan_done,
    )  # fmt: skip
    tracks = tracks_of(plan.items, playing_order(lesson.piece))
    with Meter("Tracks") as meter:
        write_tracks(lesson.piece, fingering, instrument, tracks, folder,
                     lambda s: meter(round(100 * s), 100), options.a4)  # fmt: skip
    document = {"path": str(folder), "tracks": [t.name for t in tracks]}
    words = count(len(tracks), "{folder}: {n} track.", "{folder}: {n} tracks.", folder=folder)
    return Result(document, [words, *(f"  {t.name}" for t in tracks)])


def passage(piece: Piece, text: str) -> tuple[int, int]:
    """Indices of the first and last bar of a passage such as ``5-8``, by printed numbers.

    Raises BadInput where the piece has no such bars.
    """
    first, dash, last = text.partition("-")
    found = []
    for number in (first, last if dash else first):
        indices = [bar.index for bar in piece.bars if bar.number == number.strip()]
        if not indices:
            numbers = message(
                "{first} to {last}", first=piece.bars[0].number, last=piece.bars[-1].number
            )
            raise BadInput(
                "--bars {text}: '{piece}' has no bar {number}; its bars are {numbers}.",
                text=text,
                piece=piece.title,
                number=number or message("(none given)"),
                numbers=numbers,
            )
        found.append(indices)
    if found[0][0] > found[1][-1]:
        raise BadInput(
            "--bars {text}: the first bar comes after the last; write them in order.", text=text
        )
    return found[0][0], found[1][-1]
