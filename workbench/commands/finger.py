"""``finger SCORE``: both hands' fingers for every note."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING, Any

from workbench.arranging.words import sentence
from workbench.commands.arrange import change_rows
from workbench.commands.legato import audited, compared
from workbench.commands.output import Meter, Result, table, wrapped
from workbench.commands.source import (
    arranged,
    load,
    pins,
    player,
    playing_options,
    printed,
    score_options,
    settings,
)
from workbench.fingering.telling.legato import NOTHING_PLAYED
from workbench.fingering.telling.words import words as told
from workbench.language.names import key_words, pitch_words
from workbench.language.speech import say
from workbench.music.beats import beat_at, beat_in_digits
from workbench.music.errors import BadInput
from workbench.music.telling.warnings import doubts

if TYPE_CHECKING:
    from workbench.arranging.arrange import Arranged
    from workbench.fingering.pins.printed import PrintedPins
    from workbench.fingering.types import Alternative, FingeredBar, FingeredNote, Fingering
    from workbench.instrument.model import Instrument
    from workbench.music.model import Bar


def options(parser: argparse.ArgumentParser) -> None:
    score_options(parser, lessons=True)
    playing_options(parser)
    parser.add_argument(
        "--alternatives", type=int, default=0, metavar="N", help="other fingerings for each bar"
    )
    parser.add_argument(
        "--audit", action="store_true", help="list the notes held too short, worst first"
    )
    parser.add_argument(
        "--compare", metavar="BAR", help="this bar as it is beside the bar with the --pin given"
    )


def run(options: argparse.Namespace) -> Result:
    from workbench.fingering.engine import Solver

    if not 0 <= options.alternatives <= 20:
        raise BadInput(
            "--alternatives {given}: give a number from 0 to 20.", given=options.alternatives
        )
    source = load(options, lessons=True)
    instrument, hand = player(options, source.lesson)
    placed = arranged(options, source, instrument, hand)
    if options.compare is not None:
        return compared(options, source, placed, instrument, hand)
    held = printed(options, placed.piece, source.lesson, instrument, hand)
    others: dict[int, tuple[Alternative, ...]] = {}
    rights: dict[int, tuple[Alternative, ...]] = {}
    with Meter("Fingering") as meter:
        solver = Solver(
            placed.piece,
            instrument,
            hand,
            settings=settings(options, source.lesson, instrument),
            pins=pins(options, placed.piece, source.lesson, held),
            progress=meter,
        )
        fingering = solver.solution()
    if options.alternatives:
        with Meter("Alternatives") as meter:
            for place, bar in enumerate(fingering.bars):
                meter(place, len(fingering.bars))
                others[bar.index] = solver.alternatives(bar.index, options.alternatives)
                rights[bar.index] = solver.right_alternatives(bar.index, options.alternatives)
    if options.audit:
        return audited(placed, fingering)
    return Result(
        _document(placed, instrument, fingering, held, others, rights),
        _text(placed, instrument, fingering, held, {i: o + rights[i] for i, o in others.items()}),
    )


def _document(
    placed: Arranged,
    instrument: Instrument,
    fingering: Fingering,
    held: PrintedPins,
    others: dict[int, tuple[Alternative, ...]],
    rights: dict[int, tuple[Alternative, ...]],
) -> dict[str, Any]:
    return {
        "title": placed.piece.title,
        "instrument": instrument.id,
        "tuning": list(instrument.open_midi),
        "capo": instrument.capo,
        "key": placed.piece.key.name,
        "transposition": placed.transposition,
        "cost": fingering.cost,
        "optimal": fingering.optimal,
        "bound": fingering.bound,
        "terms": dict(fingering.terms),
        "bars": [
            _bar(bar, others.get(bar.index, ()), rights.get(bar.index, ()))
            for bar in fingering.bars
        ],
        "audit": {
            "notes": fingering.audit.notes,
            "cut": fingering.audit.cut,
            "held_fraction": fingering.audit.held_fraction,
            "joins": [
                {
                    "note": join.note,
                    "from_bar": join.from_bar,
                    "to_bar": join.to_bar,
                    "reason": told(join.reason),
                }
                for join in fingering.audit.joins
            ],
        },
        "changes": change_rows(placed),
        "printed": {
            "held": len(held.pins),
            "left_out": [
                {"note": m.note, "bar": m.bar_number, "beat": str(m.beat), "reason": told(m.reason)}
                for m in held.left_out
            ],
        },
    }


def _bar(
    bar: FingeredBar, others: tuple[Alternative, ...], rights: tuple[Alternative, ...]
) -> dict[str, Any]:
    return {
        "index": bar.index,
        "number": bar.number,
        "notes": [_note(note) for note in bar.notes],
        "barres": [
            {
                "onset": str(barre.onset),
                "fret": barre.fret,
                "strings": list(barre.strings),
                "finger": barre.finger,
            }
            for barre in bar.barres
        ],
        "effort": bar.effort,
        "reach_mm": round(bar.reach_mm, 1),
        "remarks": [told(r) for r in bar.remarks],
        "impossible": told(bar.impossible) or None,
        "alternatives": [_alternative(other) for other in others],
        "right_alternatives": [_alternative(other) for other in rights],
    }


def _alternative(other: Alternative) -> dict[str, Any]:
    return {
        "cost": other.cost,
        "reason": told(other.reason),
        "notes": [_note(note) for note in other.notes],
    }


def _note(note: FingeredNote) -> dict[str, Any]:
    return {
        "id": note.id,
        "onset": str(note.onset),
        "duration": str(note.duration),
        "midi": note.midi,
        "string": note.string,
        "fret": note.fret,
        "left": note.left,
        "right": note.right,
        "held": str(note.held),
        "rings": str(note.rings) if note.rings is not None else None,
        "cut_reason": told(note.cut_reason) or None,
        "move": note.move,
        "stroke": note.stroke,
        "pinned": note.pinned,
        "impossible": told(note.impossible) or None,
    }


def _proved(fingering: Fingering) -> str:
    """How near the left hand's effort is to the least there is, and what it is more for."""
    more = fingering.cost - (fingering.cost if fingering.bound is None else fingering.bound)
    if not fingering.optimal:
        return say("not proved least")
    if more <= 0:
        return say("proved least")
    return say(
        "{more:.1f} above its least, for bars alike and for the right hand", more=more / 1000
    )


def _text(
    placed: Arranged,
    instrument: Instrument,
    fingering: Fingering,
    held: PrintedPins,
    others: dict[int, tuple[Alternative, ...]],
) -> list[str]:
    piece = placed.piece
    audit = fingering.audit
    capo = f", capo {instrument.capo}" if instrument.capo else ""
    lines = [
        f"{piece.title} - {instrument.called}{capo}, {key_words(piece.key.name)}",
        say(
            "{notes} notes, {cut} cut short, {share:.1%} of the written length "
            "held; left hand's effort {cost:.1f} ({proved})",
            notes=audit.notes,
            cut=audit.cut,
            share=audit.held_fraction,
            cost=fingering.cost / 1000,
            proved=_proved(fingering),
        )
        if audit.notes
        else say(NOTHING_PLAYED),
        "",
    ]
    names = {note.id: pitch_words(note.pitch.name) for note in piece.notes}
    written = {bar.index: bar for bar in piece.bars}
    heads = [
        say("bar", sense="head"),
        say("beat", sense="head"),
        say("note", sense="head"),
        say("string", sense="head"),
        say("fret", sense="head"),
        say("left", sense="head"),
        say("right", sense="head"),
        say("id", sense="head"),
        say("how", sense="head"),
    ]
    rows: list[tuple[object, ...]] = []
    for bar in fingering.bars:
        for place, note in enumerate(bar.notes):
            rows.append(
                (
                    "" if place else bar.number,
                    beat_in_digits(beat_at(written[bar.index], note.onset), "+"),
                    names.get(note.id, note.midi),
                    note.string if note.string is not None else "-",
                    note.fret if note.fret is not None else "-",
                    note.left if note.left is not None else "-",
                    note.right or "-",
                    note.id,
                    _remark(note),
                )
            )
    lines += table(heads, rows, right=(0, 3, 4, 5))
    lines += _explained(fingering, names, written)
    for index, choices in others.items():
        number = next(bar.number for bar in fingering.bars if bar.index == index)
        for choice in choices:
            lines += [
                "",
                *wrapped(
                    say(
                        "Bar {number}, otherwise: {reason}",
                        number=number,
                        reason=told(choice.reason),
                    )
                ),
                "  " + _row(choice),
            ]
    if audit.joins:
        lines += ["", say("Cut where the playing order jumps")]
        lines += [line for join in audit.joins for line in wrapped(told(join.reason), "  ")]
    if held.left_out:
        lines += ["", say("Printed in the score and left out")]
        lines += [line for slip in held.left_out for line in wrapped(told(slip.reason), "  ")]
    if found := doubts(piece):
        lines += ["", say("To look at in the score")]
        lines += [line for words in found for line in wrapped(words, "  ")]
    if placed.changes:
        lines += ["", say("Changed to suit the instrument")]
        said = dict.fromkeys(sentence(change) for change in placed.changes)
        lines += [line for words in said for line in wrapped(words, "  ")]
    return lines


def _remark(note: FingeredNote) -> str:
    if note.impossible:
        return say("cannot be played")
    cut = (
        say("held {held} of {duration}", held=note.held, duration=note.duration)
        if note.cut_reason
        else ""
    )
    return ", ".join(filter(None, ("pinned" if note.pinned else "", cut)))


def _explained(fingering: Fingering, names: dict[str, str], written: dict[int, Bar]) -> list[str]:
    """Why notes are cut or cannot be played, bar by bar."""
    told_of: list[str] = []
    for bar in fingering.bars:
        if bar.impossible:
            told_of.append(
                say("Bar {bar}: {impossible}", bar=bar.number, impossible=told(bar.impossible))
            )
        for note in bar.notes:
            reason = told(note.impossible or note.cut_reason)
            if reason:
                where = say(
                    "Bar {bar}, beat {beat}",
                    bar=bar.number,
                    beat=beat_in_digits(beat_at(written[bar.index], note.onset), "+"),
                )
                told_of.append(f"{where}, {names.get(note.id, note.midi)}: {reason}")
    said = list(dict.fromkeys(told_of))  # two stems of one sound are cut as one
    lines = [line for words in said for line in wrapped(words, "  ")]
    return ["", say("Notes that are cut or cannot be played"), *lines] if lines else []


def _row(choice: Alternative) -> str:
    """An alternative's notes as string/fret/finger."""
    return "  ".join(
        f"{n.string}/{n.fret}/{n.left}{n.right or ''}" for n in choice.notes if n.string is not None
    )
