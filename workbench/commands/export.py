"""``export SCORE``: the piece as it was arranged and fingered, for other programs."""

from __future__ import annotations

import argparse

from workbench.commands.output import Result, file_to_write
from workbench.commands.prepare import fingering_of, lesson_of
from workbench.commands.source import load, playing_options, score_options
from workbench.language.speech import count, say
from workbench.teaching.lessons.playing import playing_of


def options(parser: argparse.ArgumentParser) -> None:
    score_options(parser, lessons=True)
    parser.add_argument(
        "-o", "--output", required=True, metavar="OUT",
        help="a name in .musicxml or .mxl (MusicXML 4.0, packed), or .mid (Standard MIDI File)",
    )  # fmt: skip
    parser.add_argument(
        "--plain",
        action="store_true",
        help="the notes alone, without strings and fingers; in MIDI as long as written",
    )
    playing_options(parser)


def run(options: argparse.Namespace) -> Result:
    from workbench.fingering.telling.heard import sounding
    from workbench.music.writing.score import form_of_export, write_midi, write_musicxml

    path = file_to_write(options.output, "piece.musicxml")
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
            placed = sum(n.string is not None for bar in fingering.bars for n in sounding(bar))
        write_musicxml(lesson.piece, path, fingering, playing_of(lesson)[0])
    notes = len(lesson.piece.notes)
    document = {"path": str(path), "format": form, "notes": notes, "fingered": placed}
    words = count(notes, "{path}: {n} note as {form}", "{path}: {n} notes as {form}", path=path,
                  form=form)  # fmt: skip
    words += "." if not placed else say(", {n} with string and fingers.", n=placed)
    return Result(document, [words])
