"""``pack SCORE``: the sheet, the tracks and a page that plays them, to hand over."""

from __future__ import annotations

import argparse
from pathlib import Path

from workbench.commands.output import Meter, Result
from workbench.commands.prepare import fingering_of, lesson_of
from workbench.commands.source import (
    check_pitch,
    load,
    pitch_option,
    playing_options,
    score_options,
)
from workbench.handout.offered import PAPERS
from workbench.language.speech import say


def options(parser: argparse.ArgumentParser) -> None:
    score_options(parser, lessons=True)
    parser.add_argument(
        "-o", "--output", required=True, metavar="OUT",
        help="a new folder, or a name in .zip to have it packed",
    )  # fmt: skip
    parser.add_argument("--paper", choices=tuple(PAPERS), default="a4", help="default a4")
    parser.add_argument("--large", action="store_true", help="large print and large text")
    parser.add_argument("--left-handed", action="store_true", help="for a left-handed player")
    pitch_option(parser)
    playing_options(parser)


def run(options: argparse.Namespace) -> Result:
    from workbench.handout.sheets.pack import PackOptions, write_pack

    target = Path(options.output)
    check_pitch(options)
    lesson = lesson_of(options, load(options, lessons=True))
    fingering = fingering_of(lesson)
    how = PackOptions(options.paper, options.large, options.left_handed, options.a4)
    with Meter("Pack") as meter:
        write_pack(lesson, fingering, target, how,
                   progress=lambda share: meter(round(100 * share), 100))  # fmt: skip
    return Result({"path": str(target)}, [say("{target}: the student's pack.", target=target)])
