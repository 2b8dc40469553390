"""``export SCORE``: the piece as it was arranged and fingered, for other programs."""

from __future__ import annotations

import argparse
from pathlib import Path

from workbench.commands.output import Result
from workbench.commands.prepare import fingering_of, lesson_of, playing_of
from workbench.commands.source import load, playing_options, score_options
from workbench.language.speech import count, say
from workbench.music.errors import BadInput


def options(parser: argparse.ArgumentParser) -> None:
    score_options(parser, lessons=True)
    parser.add_argument(
        "-o", "--output", required=True, metavar="OUT",
        help="a name in .musicxml or .mxl (MusicXML 4.0, packed), or .mid (Standard MIDI File)",
    )  # fmt: skip
    parser.add_argument(
        "--plain", action="store_true", 
        help="the notes alone, without strings and fingers; in MIDI as long as written"
    )
    playing_options(parser)


def run(options: argparse.Namespace) -> Result:
    from workbench.fingering.heard import sounding
    from workbench.music.writing import form_of_export, write_midi, write_musicxml

    path = Path(options.output)
    if path.is_dir():
        raise BadInput(
            say("{path} is a folder; name the file to write, such as {name}.", path=path,
                name=path / "piece.musicxml")
        )  # fmt: skip
    form = form_of_export(path)
    lesson = lesson_of(options, load(options, lessons=True))
    placed = 0
    if form == "MIDI":
        from workbench.sound.tracks import held_lengths

        held = None if options.plain else held_lengths(fingering_of(lesson))
        write_midi(lesson.piece, path, held=held)
    else:
        fingering = None if options.plain else fingering_of(lesson)
        if fingering:
            placed = sum(
                n.string is not None for bar in fingering.bars for n in sounding(bar)
            )
        write_musicxml(lesson.piece, path, fingering, playing_of(lesson)[0])
    notes = len(lesson.piece.notes)
    document = {"path": str(path), "format": form, "notes": notes, "fingered": placed}
    words = count(notes, "{path}: {n} note as {form}", "{path}: {n} notes as {form}", path=path,
                  form=form)  # fmt: skip
    words += "." if not placed else say(", {n} with string and fingers.", n=placed)
    return Result(document, [words])
