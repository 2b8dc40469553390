"""What the engine learns from the teacher: from choices on the whole shelf, or from scores
that print fingers. What is learned on guitars goes to lessons on guitars, and what is learned
on ukuleles and other small instruments to lessons on those, whose weights are others."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from pathlib import Path

from workbench.fingering.engine import Solver
from workbench.fingering.learning.fitting import agreement
from workbench.fingering.learning.observed import chain
from workbench.fingering.learning.preferences import Choice, Fit, choice_from, fit
from workbench.fingering.learning.printfit import FEWEST, FOLDS, PrintFit, fit_to_print
from workbench.fingering.pins.printed import can_mean
from workbench.fingering.types import Settings
from workbench.fingering.weights import is_small, weights_for
from workbench.instrument.model import Hand, Instrument
from workbench.instrument.table import hand, instrument
from workbench.language.speech import count, say
from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.store.location import store_place
from workbench.store.setting_names import FITTED_SMALL_WEIGHTS, FITTED_WEIGHTS, WEIGHTS_BEFORE
from workbench.store.shelf import Shelf
from workbench.teaching.lessons.lesson import Lesson

WEIGHTS = {False: FITTED_WEIGHTS, True: FITTED_SMALL_WEIGHTS}  # settings of the studio
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


def studio_weights(shelf: Shelf, scale_mm: float) -> Pairs:
    """The fitted weights in force on a shelf for instruments of this scale length, empty
    before the first fit."""
    return tuple((str(t), int(w)) for t, w in shelf.setting(WEIGHTS[is_small(scale_mm)], []))


def weights_in_force(scale_mm: float) -> Pairs:
    """The fitted weights of the user's own store; none where there is no store yet. Makes
    no store."""
    place = store_place()
    if isinstance(place, Path) and not place.exists():
        return ()
    with Shelf() as shelf:
        return studio_weights(shelf, scale_mm)


def as_learnt(shelf: Shelf, lesson: Lesson, was: str = "") -> Lesson:
    """A new lesson with what was learnt for its instrument. ``was``: the instrument it was on
    before, whose weights stay where the new one is of the same kind."""
    scale = instrument(lesson.instrument).scale_mm
    if was and is_small(instrument(was).scale_mm) == is_small(scale):
        return lesson
    weights = studio_weights(shelf, scale)
    return replace(lesson, settings=replace(lesson.settings, weights=weights))


def fit_to_choices(shelf: Shelf, progress: Callable[[int, int], None] | None = None) -> Fit:
    """Fit the weights to the choices on the shelf and put them in force: in the studio's
    settings for new lessons, and as one undoable edit in every lesson on an instrument of
    the kind (small or not) on which most was pinned, from which alone is learned.

    Raises BadInput where there is nothing to learn from.
    """
    lessons = [shelf.load(row.id) for row in shelf.lessons()]
    scale = _scale_mm(lessons)
    choices: list[Choice] = []
    for i, lesson in enumerate(lessons):
        if progress:
            progress(i, len(lessons))
        if is_small(instrument(lesson.instrument).scale_mm) == is_small(scale):
            choices += lesson_choices(lesson)
    if not any(c.rejected for c in choices):
        raise BadInput(
            "There are no choices to learn from yet; pin some fingers or take another "
            "fingering in a few bars first."
        )
    old = studio_weights(shelf, scale)
    found = fit(choices, Settings(weights=old), scale)
    _put_in_force(shelf, is_small(scale), found.weights, old, say("Fit to my choices"))
    return found


@dataclass(frozen=True)
class ScoresFit:
    """What ``fit_of_scores`` found, not in force yet. ``old`` and ``new`` are the weights
    before and after, for instruments that are ``small`` or not; ``marks`` counts the left
    fingers and strings that the ``scores`` print."""

    found: PrintFit
    small: bool
    old: Pairs
    new: Pairs
    scores: int
    marks: int


def marks_of(piece: Piece) -> int:
    """How many of its notes have a left finger or a string printed."""
    return sum(w.left is not None or w.string is not None for w in piece.written)


def fit_of_scores(
    pieces: Sequence[Piece],
    on: Instrument,
    of: Hand,
    old: Pairs,
    progress: Callable[[int, int], None] | None = None,
) -> ScoresFit:
    """Fit weights, starting from the studio's ``old`` ones, to the fingers that scores print.

    ``progress(done, all)`` is called as the work goes on; what it raises ends it. Raises
    BadInput where too little is printed, or for another instrument.
    """
    steps = len(pieces) + min(FOLDS, max(len(pieces), 2)) + 1

    def tell(done: int, _all: int = 0) -> None:
        if progress:
            progress(min(done, steps), steps)

    start = weights_for(Settings(weights=old), on.scale_mm).left
    chains = []
    for i, piece in enumerate(pieces):
        tell(i)
        if not can_mean(piece, on):
            raise BadInput(
                "The fingering that '{title}' prints is for another instrument than the "
                "{instrument}; choose that one, or leave the score out.",
                title=piece.title,
                instrument=on.called,
            )
        chains.append(chain(piece, piece.written, on, of, start))
    printed = sum(agreement(c, start)[1] for c in chains)
    if printed < FEWEST:
        raise BadInput(
            "The scores print {n} left fingers that can be held on the {instrument}; "
            "give scores with at least {fewest}.",
            n=printed,
            instrument=on.called,
            fewest=FEWEST,
        )
    found = fit_to_print(chains, start, lambda done, _: tell(len(pieces) + done))
    new = tuple(sorted({**dict(old), **dict(found.weights)}.items()))
    marks = sum(marks_of(piece) for piece in pieces)
    return ScoresFit(found, is_small(on.scale_mm), old, new, len(pieces), marks)


def told(fitted: ScoresFit) -> tuple[str, ...]:
    """What was read, and how much of it the engine meets before and after, in sentences."""
    found = fitted.found
    read = count(
        fitted.scores,
        "{n} score was read; it prints {marks} left fingers and strings.",
        "{n} scores were read; they print {marks} left fingers and strings.",
        marks=fitted.marks,
    )
    met = say(
        "Of {printed} printed fingers of stopped notes the engine met {before:.1%} before and "
        "meets {fitted:.1%} now; {after:.1%} where the score (or, in one score alone, the bar) "
        "was left out of the fit.",
        printed=found.printed,
        before=found.before / found.printed,
        fitted=found.after / found.printed,
        after=found.unseen / found.printed,
    )
    if not found.left_out:
        return read, met
    out = count(
        found.left_out,
        "{n} printed mark that no hand can hold was left out.",
        "{n} printed marks that no hand can hold were left out.",
    )
    return read, met, out


def put_in_force(shelf: Shelf, fitted: ScoresFit) -> None:
    """Put what was learned from scores in force, as ``fit_to_choices`` does."""
    _put_in_force(shelf, fitted.small, fitted.new, fitted.old, say("Fit to fingered scores"))


def _scale_mm(lessons: Sequence[Lesson]) -> float:
    """The scale length of the instrument on which most was pinned."""
    pinned: Counter[float] = Counter()
    for lesson in lessons:
        pinned[instrument(lesson.instrument).scale_mm] += len(lesson.pins)
    return pinned.most_common(1)[0][0] if pinned else instrument("guitar").scale_mm


def can_undo(shelf: Shelf) -> bool:
    """Whether there is a fit to take back."""
    return shelf.setting(WEIGHTS_BEFORE) is not None


def undo_fit(shelf: Shelf) -> Pairs:
    """Put the weights from before the last fit in force again; gives them.

    Raises BadInput where no fit was made.
    """
    before = shelf.setting(WEIGHTS_BEFORE)
    if before is None:
        raise BadInput("There is no fit to take back; 'fit' makes one.")
    if isinstance(before, list):  # kept before kinds of instruments were told apart
        before = {"small": False, "weights": before}
    weights = tuple((str(t), int(w)) for t, w in before["weights"])
    _put_in_force(shelf, bool(before["small"]), weights, None, say("Take the fit back"))
    return weights


def _put_in_force(shelf: Shelf, small: bool, weights: Pairs, old: Pairs | None, label: str) -> None:
    """Give the weights to the studio and to every lesson of the kind, read anew: it may have
    been edited meanwhile. ``old`` is what taking back comes to; None where nothing is."""
    lessons = [shelf.load(row.id) for row in shelf.lessons()]
    changed = [
        replace(x, settings=replace(x.settings, weights=weights))
        for x in lessons
        if x.settings.weights != weights and is_small(instrument(x.instrument).scale_mm) == small
    ]
    shelf.save_all(changed, label)
    before = None if old is None else {"small": small, "weights": list(old)}
    shelf.set_settings({WEIGHTS[small]: list(weights), WEIGHTS_BEFORE: before})
