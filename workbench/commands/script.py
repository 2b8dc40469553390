"""``script SCORE``: the tutorial's script in playing order, with times."""

from __future__ import annotations

import argparse
from pathlib import Path

from workbench.commands.output import Result, wrapped
from workbench.commands.prepare import fingering_of, lesson_of, playing_of
from workbench.commands.source import load, playing_options, score_options
from workbench.music.errors import BadInput


def options(parser: argparse.ArgumentParser) -> None:
    score_options(parser, lessons=True)
    parser.add_argument(
        "-o",
        "--output",
        metavar="OUT",
        help="write it: .md the script to read, .srt or .vtt cues with times, .txt the chapters",
    )
    playing_options(parser)


def run(options: argparse.Namespace) -> Result:
    from workbench.handout.text_file import script_form, write_text
    from workbench.teaching.script import make_script
    from workbench.teaching.script_files import chapters, clock

    target = Path(options.output) if options.output else None
    if target is not None and target.is_dir():
        name = target / "script.md"
        raise BadInput(f"{target} is a folder; name the file to write, such as {name}.")
    form = script_form(target) if target is not None else None
    lesson = lesson_of(options, load(options, lessons=True))
    script = make_script(lesson, fingering_of(lesson), *playing_of(lesson))
    if target is not None and form is not None:
        write_text(target, form(script))
    document = {
        "title": script.title,
        "seconds": round(script.seconds, 3),
        "opening": script.opening,
        "cues": [
            {
                "position": cue.position,
                "bar": cue.bar,
                "number": cue.number,
                "chapter": cue.chapter or None,
                "start": round(cue.start, 3),
                "speaking": round(cue.speaking, 3),
                "playing": round(cue.playing, 3),
                "say": cue.say,
                "grips": list(cue.grips),
                "right": cue.right,
                "as_bar": cue.as_bar,
                "edited": cue.edited,
            }
            for cue in script.cues
        ],
        "chapters": chapters(script).splitlines(),
        "path": str(target) if target else None,
    }
    length = f"{len(script.cues)} bars, about {clock(script.seconds)}"
    if target is not None:
        return Result(document, [f"{target}: {length}."])
    lines = [f"{script.title}: {length}", "", *wrapped(script.opening)]
    for cue in script.cues:
        if cue.chapter:
            lines += ["", cue.chapter]
        lines += wrapped(f"{clock(cue.start)}  {cue.say}", "  ")
    return Result(document, lines)
