"""The teacher's choices on the whole shelf, and weights fitted to them."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Sequence
from dataclasses import replace

from workbench.fingering.engine import Solver
from workbench.fingering.fitting import agreement
from workbench.fingering.observed import chain
from workbench.fingering.preferences import Choice, Fit, choice_from, fit
from workbench.fingering.printfit import FEWEST, PrintFit, fit_to_print
from workbench.fingering.types import Settings
from workbench.fingering.weights import weights_for
from workbench.instrument.model import Hand, Instrument
from workbench.instrument.table import hand, instrument
from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.store.shelf import Shelf
from workbench.teaching.lesson import Lesson

WEIGHTS = "fitted weights"  # name of the studio setting
BEFORE = "weights before the fit"
Pairs = tuple[tuple[str, int], ...]


def lesson_choices(lesson: Lesson) -> list[Choice]:
    """What the teacher pinned in a lesson, bar by bar, against what the engine would do."""
    if not lesson.pins:
        return []
    solver = Solver(
        lesson.piece,
        instrument(lesson.instrument, lesson.capo),
        hand(lesson.hand),
        settings=Settings(),
    )
    bars = sorted(
        {lesson.piece.bar_of[p.note] for p in lesson.pins if p.note in lesson.piece.bar_of}
    )
    out: list[Choice] = []
    for bar in bars:
        try:
            choice = choice_from(solver, bar, lesson.pins)
        except BadInput:  # pins no hand can hold teach nothing
            continue
        if choice is not None:
            out.append(choice)
    return out


def studio_weights(shelf: Shelf) -> Pairs:
    """The fitted weights in force on a shelf, empty before the first fit."""
    return tuple((str(t), int(w)) for t, w in shelf.setting(WEIGHTS, []))


def fit_to_choices(shelf: Shelf, progress: Callable[[int, int], None] | None = None) -> Fit:
    """Fit the weights to all choices on the shelf and put them in force: in the
    studio's settings for new lessons, and as one undoable edit in every lesson.

    Raises BadInput where there is nothing to learn from.
    """
    lessons = [shelf.load(row.id) for row in shelf.lessons()]
    choices: list[Choice] = []
    for i, lesson in enumerate(lessons):
        if progress:
            progress(i, len(lessons))
        choices += lesson_choices(lesson)
    if not any(c.rejected for c in choices):
        raise BadInput(
            say(
                "There are no choices to learn from yet; pin some fingers or take another "
                "fingering in a few bars first."
            )
        )
    found = fit(choices, Settings(weights=studio_weights(shelf)), _scale_mm(lessons))
    _put(shelf, found.weights, say("Fit to my choices"))
    shelf.set_settings({WEIGHTS: list(found.weights), BEFORE: list(found.undo)})
    return found


def fit_to_scores(
    shelf: Shelf,
    pieces: Sequence[Piece],
    on: Instrument,
    of: Hand,
    progress: Callable[[int, int], None] | None = None,
) -> PrintFit:
    """Fit the weights to the fingers that scores print and put them in force, as
    ``fit_to_choices`` does. Raises BadInput where too little is printed.
    """
    start = weights_for(Settings(weights=studio_weights(shelf)), on.scale_mm).left
    chains = []
    for i, piece in enumerate(pieces):
        if progress:
            progress(i, 2 * len(pieces))
        chains.append(chain(piece, piece.written, on, of, start))
    printed = sum(agreement(c, start)[1] for c in chains)
    if printed < FEWEST:
        raise BadInput(
            say(
                "The scores print {n} left fingers that can be held on the {instrument}; "
                "give scores with at least {fewest}.",
                n=printed,
                instrument=say(on.name),
                fewest=FEWEST,
            )
        )
    found = fit_to_print(chains, start, progress)
    old = studio_weights(shelf)
    weights = tuple(sorted({**dict(old), **dict(found.weights)}.items()))
    _put(shelf, weights, say("Fit to fingered scores"))
    shelf.set_settings({WEIGHTS: list(weights), BEFORE: list(old)})
    return found


def _scale_mm(lessons: Sequence[Lesson]) -> float:
    """The scale length of the instrument on which most was pinned."""
    count: Counter[float] = Counter()
    for lesson in lessons:
        count[instrument(lesson.instrument).scale_mm] += len(lesson.pins)
    return count.most_common(1)[0][0]


def undo_fit(shelf: Shelf) -> Pairs:
    """Put the weights from before the last fit in force again; gives them.

    Raises BadInput where no fit was made.
    """
    before = shelf.setting(BEFORE)
    if before is None:
        raise BadInput(say("There is no fit to take back; 'fit' makes one."))
    weights = tuple((str(t), int(w)) for t, w in before)
    _put(shelf, weights, say("Take the fit back"))
    shelf.set_settings({WEIGHTS: list(weights), BEFORE: None})
    return weights


def _put(shelf: Shelf, weights: Pairs, label: str) -> None:
    """Give every lesson the weights, read anew: it may have been edited meanwhile."""
    lessons = [shelf.load(row.id) for row in shelf.lessons()]
    changed = [
        replace(x, settings=replace(x.settings, weights=weights))
        for x in lessons
        if x.settings.weights != weights
    ]
    shelf.save_all(changed, label)
