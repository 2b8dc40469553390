"""``fit``: let the engine learn from the teacher's pins and chosen alternatives."""

from __future__ import annotations

import argparse

from workbench.commands.output import Meter, Result, table, wrapped


def options(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("--undo", action="store_true", help="take the last fit back")


def run(options: argparse.Namespace) -> Result:
    from workbench.store.learning import fit_to_choices, undo_fit
    from workbench.store.shelf import Shelf

    with Shelf() as shelf:
        if options.undo:
            weights = undo_fit(shelf)
            return Result(
                {"undone": True, "weights": dict(weights)},
                ["The weights are again what they were before the last fit."],
            )
        with Meter("Learning") as meter:
            found = fit_to_choices(shelf, meter)
    document = {
        "choices": found.total,
        "reproduced_before": found.reproduced_before,
        "reproduced_after": found.reproduced_after,
        "leave_one_out": found.leave_one_out,
        "changes": [vars(c) for c in found.changes],
        "weights": dict(found.weights),
    }
    said = (
        f"Of {found.total} choices the engine would have made {found.reproduced_before} before "
        f"and makes {found.reproduced_after} now; {found.leave_one_out} where the choice itself "
        "was left out of the fit."
    )
    text = wrapped(said)
    if found.changes:
        rows = [(c.term, c.before / 1000, c.after / 1000, c.sentence) for c in found.changes]
        lines = [(t, f"{b:.2f}", f"{a:.2f}", s) for t, b, a, s in rows]
        text += ["", *table(["term", "before", "now", "what it weighs"], lines)]
        text += ["", "'fit --undo' takes it back; each lesson's own undo does so for that lesson."]
    else:
        text += ["", "Nothing had to change."]
    return Result(document, text)
