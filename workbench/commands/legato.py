"""``finger --audit`` and ``finger --compare``: what a fingering costs in held length."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING

from workbench.commands.output import Meter, Result, table, wrapped
from workbench.commands.source import pins, printed, settings
from workbench.fingering.telling.legato import NOTHING_PLAYED
from workbench.fingering.telling.words import words as told
from workbench.language.names import percent, pitch_words
from workbench.language.speech import say
from workbench.music.beats import beat_at, beat_in_digits
from workbench.music.errors import BadInput

if TYPE_CHECKING:
    from workbench.arranging.arrange import Arranged
    from workbench.commands.source import Asked
    from workbench.fingering.types import Fingering
    from workbench.instrument.model import Hand, Instrument


def audited(placed: Arranged, fingering: Fingering) -> Result:
    """The notes held too short, worst first, with a figure for each bar that has any."""
    from workbench.fingering.telling.legato import CAUSES, causes, held_fraction, lost, worst_first

    piece, audit = placed.piece, fingering.audit
    names = {note.id: pitch_words(note.pitch.name) for note in piece.notes}
    cut = worst_first(fingering)
    document = {
        "notes": audit.notes,
        "cut": audit.cut,
        "held_fraction": audit.held_fraction,
        "causes": causes(fingering),
        "worst": [
            {
                "id": n.id, "bar": piece.bars[n.bar].number, "onset": str(n.onset), "midi": n.midi,
                "written": str(n.duration), "held": str(n.held), "cause": n.cut_kind,
                "reason": told(n.impossible or n.cut_reason),
            }
            for n in cut
        ],
        "bars": [
            {"index": b.index, "number": b.number, "held_fraction": held_fraction(b)}
            for b in fingering.bars
        ],
    }  # fmt: skip
    text = [
        say(
            "{share:.1%} of the written length is held; {cut} of {notes} notes are cut short.",
            share=audit.held_fraction,
            cut=audit.cut,
            notes=audit.notes,
        )
        if audit.notes
        else say(NOTHING_PLAYED),
    ]
    if cut:
        text += [
            say(
                "Causes: {causes}",
                causes=", ".join(f"{say(CAUSES[k])} {v}" for k, v in causes(fingering).items()),
            )
        ]
        rows = [
            (
                piece.bars[n.bar].number,
                beat_in_digits(beat_at(piece.bars[n.bar], n.onset), "+"),
                names[n.id],
                n.duration,
                n.held,
                lost(n),
                told(n.impossible or n.cut_reason),
            )
            for n in cut
        ]
        heads = [
            say("bar", sense="head"),
            say("beat", sense="head"),
            say("note", sense="head"),
            say("written", sense="head"),
            say("held", sense="head"),
            say("lost", sense="head"),
            say("why", sense="head"),
        ]
        text += ["", *table(heads, rows, right=(0, 3, 4, 5))]
        text += ["", say("Bars that lose most")]
        worst = sorted(fingering.bars, key=held_fraction)[:5]
        text += [f"  bar {b.number}: {percent(held_fraction(b))} held" for b in worst if
                 held_fraction(b) < 1]  # fmt: skip
    return Result(document, text)


def compared(
    options: argparse.Namespace,
    source: Asked,
    placed: Arranged,
    instrument: Instrument,
    hand: Hand,
) -> Result:
    """A bar as the engine fingers it beside the same bar with the teacher's pins."""
    from workbench.fingering.engine import Solver
    from workbench.fingering.telling.comparing import compare

    piece = placed.piece
    bar = next((b for b in piece.bars if b.number == options.compare), None)
    if bar is None:
        raise BadInput("--compare {bar}: there is no bar of that number.", bar=options.compare)
    here = {n.id for n in bar.notes}
    asked = [p for p in pins(options, piece, None) if p.note in here]
    if not asked:
        raise BadInput(
            "--compare {bar}: say with --pin what to try in that bar, such as --pin n12-1=left:4.",
            bar=options.compare,
        )
    tried = {p.note for p in asked}
    options.pin = []
    held = printed(options, piece, source.lesson, instrument, hand)
    kept = [p for p in pins(options, piece, source.lesson, held) if p.note not in tried]
    with Meter("Fingering") as meter:
        solver = Solver(
            piece, instrument, hand,
            settings=settings(options, source.lesson, instrument), pins=kept, progress=meter,
        )  # fmt: skip
        present = solver.solution().bars[bar.index]
    other = solver.why_not(bar.index, [*(p for p in kept if p.note in here), *asked])
    assert other.bar is not None
    rows = compare(present, other.bar)
    document = {
        "bar": bar.number,
        "reason": told(other.reason),
        "cost": [solver.solution().cost, other.cost],
        "rows": [vars(r) for r in rows],
    }
    heads = [say("in this bar"), say("as it is"), say("with the pins")]
    lines = table(heads, [(r.what, r.first, r.second) for r in rows])
    return Result(
        document,
        [
            *wrapped(say("Bar {bar}: {reason}", bar=bar.number, reason=told(other.reason))),
            "",
            *lines,
        ],
    )
