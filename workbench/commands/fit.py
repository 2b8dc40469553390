"""``fit``: let the engine learn from the teacher's pins and chosen alternatives, or the
grade model from the teacher's grades."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING

from workbench.commands.output import Meter, Result, file_to_write, table, wrapped
from workbench.fingering.telling.words import sentence
from workbench.language.names import decimal
from workbench.language.speech import say

if TYPE_CHECKING:
    from collections.abc import Sequence

    from workbench.fingering.learning.preferences import WeightChange
    from workbench.store.shelf import Shelf


def options(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "scores", nargs="*", metavar="SCORE",
        help=say("learn from the left fingers that these scores print"),
    )  # fmt: skip
    parser.add_argument(
        "--instrument", default="guitar", metavar="I",
        help=say("with SCORE: the instrument they are fingered for"),
    )  # fmt: skip
    parser.add_argument(
        "--hand", default="medium", metavar="H", help=say("with SCORE: small, medium or large")
    )
    parser.add_argument(
        "--grades", action="store_true",
        help=say("learn from the grades you gave to lessons, not from pins and choices"),
    )  # fmt: skip
    parser.add_argument(
        "--dry-run", action="store_true",
        help=say("with --grades: show what the fit finds and put nothing in force"),
    )  # fmt: skip
    parser.add_argument(
        "--report", metavar="OUT.html",
        help=say("with SCORE: learn nothing; write the bars that differ most from the print"),
    )  # fmt: skip
    parser.add_argument("--undo", action="store_true", help=say("take the last fit back"))


def run(options: argparse.Namespace) -> Result:
    from workbench.music.errors import BadInput
    from workbench.store.shelf import Shelf

    if options.dry_run and not options.grades:
        raise BadInput("--dry-run goes with --grades; write 'fit --grades --dry-run'.")
    if options.scores and (options.grades or options.undo):
        raise BadInput("Give scores to learn from, or --grades, or --undo; not several.")
    if options.report:
        if not options.scores:
            raise BadInput("--report needs scores that print fingers; name some.")
        return _report(options)
    with Shelf() as shelf:
        if options.scores:
            return _scores(shelf, options)
        if options.grades:
            return _undo_grades(shelf) if options.undo else _grades(shelf, options.dry_run)
        return _undo_choices(shelf) if options.undo else _choices(shelf)


def _scores(shelf: Shelf, options: argparse.Namespace) -> Result:
    from workbench.instrument.table import hand, instrument
    from workbench.music.reading.apart import read_apart
    from workbench.store.learning import fit_of_scores, put_in_force, studio_weights, told

    on, of = instrument(options.instrument), hand(options.hand)
    pieces = [read_apart(path, parts="all") for path in options.scores]
    with Meter(say("Learning")) as meter:
        old = studio_weights(shelf, on.scale_mm)
        fitted = fit_of_scores(pieces, on, of, old, meter)
    put_in_force(shelf, fitted)
    found = fitted.found
    document = {
        "scores": len(pieces),
        "marks": fitted.marks,
        "printed": found.printed,
        "before": round(found.before / found.printed, 4),
        "after": round(found.unseen / found.printed, 4),
        "fitted": round(found.after / found.printed, 4),
        "left_out": found.left_out,
        "changes": [vars(c) for c in found.changes],
        "weights": dict(found.weights),
    }
    text = [line for words in told(fitted) for line in wrapped(words)]
    return Result(document, text + _changes(found.changes))


def _report(options: argparse.Namespace) -> Result:
    from workbench.commands.fit_report import write_report
    from workbench.instrument.table import hand, instrument
    from workbench.music.reading.apart import read_apart

    path = file_to_write(options.report, "report.html")
    on, of = instrument(options.instrument), hand(options.hand)
    pieces = [read_apart(score, parts="all") for score in options.scores]
    with Meter(say("Comparing")) as meter:
        worst = write_report(path, pieces, on, of, meter)
    bars = [
        {
            "score": str(options.scores[row.piece]),
            "bar": pieces[row.piece].bars[row.bar].number,
            "printed": row.printed,
            "met": row.met,
            "schools": dict(row.schools),
        }
        for row in worst
    ]
    words = say("{path}: {n} bars, worst first.", path=options.report, n=len(worst))
    return Result({"output": options.report, "bars": bars}, [words])


def _undo_choices(shelf: Shelf) -> Result:
    from workbench.store.learning import undo_fit

    weights = undo_fit(shelf)
    return Result(
        {"undone": True, "weights": dict(weights)},
        [say("The weights are again what they were before the last fit.")],
    )


def _choices(shelf: Shelf) -> Result:
    from workbench.store.learning import fit_to_choices

    with Meter(say("Learning")) as meter:
        found = fit_to_choices(shelf, meter)
    document = {
        "choices": found.total,
        "reproduced_before": found.reproduced_before,
        "reproduced_after": found.reproduced_after,
        "leave_one_out": found.leave_one_out,
        "changes": [vars(c) for c in found.changes],
        "weights": dict(found.weights),
    }
    text = wrapped(
        say(
            "Of {total} choices the engine would have made {before} before and makes {after} "
            "now; {unseen} where the choice itself was left out of the fit.",
            total=found.total,
            before=found.reproduced_before,
            after=found.reproduced_after,
            unseen=found.leave_one_out,
        )
    )
    return Result(document, text + _changes(found.changes))


def _changes(changes: Sequence[WeightChange]) -> list[str]:
    """The weights that a fit changed, as a table, and how to take it back."""
    from workbench.fingering.learning.preferences import worth_telling

    text: list[str] = []
    if changes:
        seen = worth_telling(changes)
        rows = [(c.term, c.before / 1000, c.after / 1000, sentence(c.term)) for c in seen]
        lines = [(t, decimal(b, 2), decimal(a, 2), s) for t, b, a, s in rows]
        heads = [say("term"), say("before"), say("now"), say("what it weighs")]
        undo = say("'fit --undo' takes it back; each lesson's own undo does so for that lesson.")
        text += ["", *table(heads, lines)] if lines else []
        if len(changes) > len(seen):
            fewer = say("{n} others moved by less than 0.05.", n=len(changes) - len(seen))
            text += ["", fewer]
        text += ["", undo]
    else:
        text += ["", say("Nothing had to change.")]
    return text


def _undo_grades(shelf: Shelf) -> Result:
    from workbench.store.grading import undo_grade_fit
    from workbench.teaching.grading.calibrate import fit_in_words
    from workbench.teaching.grading.grade import shipped_model

    model = undo_grade_fit(shelf) or shipped_model()
    words = say("Grades are estimated again as before the last fit.")
    return Result({"undone": True, "model": model.name}, [words, *wrapped(fit_in_words(model))])


def _grades(shelf: Shelf, dry_run: bool) -> Result:
    from workbench.store.grading import apply_fit, fit_to_grades
    from workbench.teaching.grading.calibrate import fit_in_words

    with Meter(say("Learning")) as meter:
        found = fit_to_grades(shelf, meter)
    model = found.model
    if not dry_run:
        apply_fit(shelf, model)
    rows = zip(found.pieces, found.before, found.after, found.unseen, strict=True)
    pieces = [
        {
            "title": piece.title,
            "word": {"grade": piece.grade, "level": piece.level or None},
            "before": {"grade": before.number, "level": before.level},
            "after": {"grade": after.number, "level": after.level},
            "left_out": {"grade": unseen.number, "level": unseen.level},
        }
        for piece, before, after, unseen in rows
    ]
    document = {
        "pieces": pieces,
        "error_left_out": model.error,
        "error_as_shipped": model.shipped_error,
        "in_force": not dry_run,
        "weights": dict(model.weights),
        "cuts": list(model.cuts),
    }
    lines = [
        (p.title, p.words, b.words, a.words)
        for p, b, a in zip(found.pieces, found.before, found.after, strict=True)
    ]
    heads = [say("piece"), say("your grade"), say("before"), say("now")]
    end = say("'fit --grades --undo' takes it back. Grades already printed stay as they are.")
    if dry_run:
        end = say("Nothing is put in force; without --dry-run it is.")
    return Result(document, [*wrapped(fit_in_words(model)), "", *table(heads, lines), "", end])
