"""``arrange SCORE``: the score laid on an instrument, and what that altered."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TYPE_CHECKING, Any

from workbench.arranging.words import sentence
from workbench.commands.output import Result, file_to_write, wrapped
from workbench.commands.source import (
    INSTRUMENT_HELP,
    Asked,
    arranged,
    arranging_options,
    hand_option,
    level_option,
    load,
    pattern_asked,
    player,
    score_options,
    taken,
    wishes,
)
from workbench.language.names import key_words, percent
from workbench.language.speech import say
from workbench.music.errors import BadInput

if TYPE_CHECKING:
    from workbench.arranging.arrange import Arranged
    from workbench.instrument.model import Hand, Instrument


def options(parser: argparse.ArgumentParser) -> None:
    score_options(parser, lessons=True)
    parser.add_argument("--instrument", metavar="I", help=INSTRUMENT_HELP)
    parser.add_argument("--capo", type=int, metavar="FRET", help="fret the capo sits on")
    arranging_options(parser)
    hand_option(parser)
    level_option(parser)
    parser.add_argument(
        "--for-grade",
        type=int,
        metavar="N",
        help="of easier and harder versions the fullest that asks no more than this grade",
    )
    parser.add_argument(
        "-o", "--output", metavar="OUT",
        help="where to write the arrangement: .musicxml or .mxl, or .mid",
    )  # fmt: skip


def run(options: argparse.Namespace) -> Result:
    from workbench.music.writing.score import form_of_export, write_midi, write_musicxml

    path = file_to_write(options.output, "piece.musicxml") if options.output else None
    form = form_of_export(path) if path else ""
    source = load(options, lessons=True)
    instrument, hand = player(options, source.lesson)
    made: list[dict[str, Any]] = []
    if options.for_grade is None:
        placed = arranged(options, source, instrument, hand)
    else:
        placed, made = _for_grade(options, source, instrument, hand)
    if path is not None and form == "MIDI":
        write_midi(placed.piece, path)
    elif path is not None:
        write_musicxml(placed.piece, path, None, instrument)
    document = {
        "title": placed.piece.title,
        "instrument": instrument.id,
        "key": placed.key,
        "transposition": placed.transposition,
        "cost": placed.cost,
        "proved": placed.proved,
        "changes": change_rows(placed),
        "kept": {
            name: round(share, 4)
            for name, share in (
                ("tune", placed.kept.tune), ("bass", placed.kept.bass),
                ("inner", placed.kept.inner),
            )
        },
        "path": str(path) if path else None,
    }  # fmt: skip
    if made:
        document["versions"] = made
    lines = _text(placed, str(instrument.called), path, made)
    pattern = pattern_asked(options, source.piece)
    if pattern is not None:
        document["pattern"] = pattern.letters
        lines.insert(1, say("Accompaniment: {letters}", letters=pattern.letters))
    return Result(document, lines)


def _for_grade(
    options: argparse.Namespace, source: Asked, instrument: Instrument, hand: Hand
) -> tuple[Arranged, list[dict[str, Any]]]:
    """The version for a grade, and a row for each, with what it has otherwise."""
    from workbench.store.grading import model_in_force
    from workbench.teaching.grading.easier import aimed, differs, versions

    if options.strict:
        raise BadInput("Give either --for-grade or --strict: a version is as strict as it is.")
    piece, key, transpose = taken(options, source, instrument, hand)
    found = versions(
        piece, instrument, hand, key=key, transpose=transpose, top_fret=options.top_fret,
        model=model_in_force(), base=wishes(options, None),
    )  # fmt: skip
    chosen = aimed(found, options.for_grade)
    rows = [
        {
            "strict": v.wishes.strict,
            "top_fret": v.wishes.top_fret,
            "grade": v.grade.number,
            "level": v.grade.level,
            "words": str(v.grade.words),
            "notes": len(v.placed.piece.notes),
            "chosen": v is chosen,
            "differs": [str(told) for told in differs(chosen.placed.piece, v.placed.piece)],
        }
        for v in found
    ]
    return chosen.placed, rows


def change_rows(placed: Arranged) -> list[dict[str, Any]]:
    """The changes as JSON: names of fields as the command line promises them."""
    return [
        {
            "note": c.note,
            "bar": c.bar_number,
            "onset": str(c.onset),
            "beat": str(c.beat),
            "part": c.part,
            "voice": c.voice,
            "role": c.role,
            "kind": c.kind,
            "from": c.before,
            "to": c.after,
            "amount": c.amount,
            "reason": sentence(c),
        }
        for c in placed.changes
    ]


def _text(
    placed: Arranged, instrument: str, path: Path | None, made: list[dict[str, Any]]
) -> list[str]:
    from workbench.arranging.words import counted, semitones

    lines = [
        f"{placed.piece.title} - {instrument}, {key_words(placed.key)}",
        say("Moved {way}. Kept: {tune} of the tune, {bass} of the bass, {inner} of the inner "
            "notes.", way=semitones(placed.transposition), tune=percent(placed.kept.tune),
            bass=percent(placed.kept.bass), inner=percent(placed.kept.inner)),
    ]  # fmt: skip
    for row in made:
        line = say("{strict}, up to fret {fret}: {grade}, {notes} notes",
                   strict=say(row["strict"]), fret=row["top_fret"], grade=row["words"],
                   notes=row["notes"])  # fmt: skip
        lines += ["", f"{line} *" if row["chosen"] else line]
        lines += [f"  {words}" for words in row["differs"]]
    if placed.changes:
        lines += ["", *filter(None, [counted(placed.changes)])]
        # two stems of one sound change alike, and are told once
        told = dict.fromkeys(sentence(c) for c in placed.changes)
        lines += [line for words in told for line in wrapped(words, "  ")]
    if path is not None:
        lines += ["", say("{path} is written.", path=path)]
    return lines
