"""How hard a fingered piece is: a grade from 0 to 8, its evidence, its hardest bars.

The judgement is a sum with weights that are never negative over features that
never fall when more is asked, so that the grade cannot fall either. Half comes
from all the demands together, the rest from the few that stand out.

What holds, and how it is known: with the hands unchanged a quicker tempo, a key with more
sharps or flats, or a voice added never lowers the score (``tests/teaching``, over made-up
music and over the scores in music21's package). Where the piece is fingered anew for what
is asked, nothing is promised: another key may lie better on the strings, and the engine
may find an easier way. In a sample of those scores fingered anew for twice the tempo (23)
and with the lower voices (6) no score fell.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from workbench.fingering.types import Fingering
from workbench.instrument.model import Hand, Instrument
from workbench.language.message import Message, Text, in_a_row, mark, message
from workbench.music.bar_names import bars_named
from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.teaching.bars.measure import BarMeasure, measure_bars
from workbench.teaching.bars.strokes import same_as
from workbench.teaching.grading.demands import table
from workbench.teaching.grading.features import Feature, bar_features, piece_features
from workbench.teaching.lessons.lesson import GradeThird, Lesson

#: The thirds of a grade, and their words.
THIRD_WORDS: dict[GradeThird, str] = {
    "early": mark("early"),
    "middle": mark("middle"),
    "late": mark("late"),
}
THIRDS = tuple(THIRD_WORDS)
IN_WORDS = {
    "early": mark("grade {number}, early"),
    "middle": mark("grade {number}, middle"),
    "late": mark("grade {number}, late"),
}
SHIPPED = "as shipped"
HARDEST = "hardest"  # name of the weight that the hardest demands share
LENGTH = "length"  # id of the demand that tells how many different bars there are


@dataclass(frozen=True)
class GradeModel:
    """An ordinal model: ``weights`` by demand id (and "hardest"), none negative, and
    the eight rising ``cuts`` between grades 0 to 8 on the scale of their sum.

    ``name`` says which model made a grade; ``graded`` how many pieces of the
    teacher it was fitted to (0: as shipped). ``error`` is its mean absolute
    error in grades with each piece left out in turn, ``shipped_error`` that of
    the model as shipped on the same pieces; None where not fitted.
    """

    name: str
    weights: tuple[tuple[str, float], ...]
    cuts: tuple[float, ...]
    graded: int = 0
    error: float | None = None
    shipped_error: float | None = None

    def __post_init__(self) -> None:
        if any(w < 0 for _, w in self.weights):
            raise ValueError("the weights of a grade model must not be negative")
        if len(self.cuts) != 8 or any(a >= b for a, b in pairwise(self.cuts)):
            raise ValueError("a grade model needs eight rising cuts")


@dataclass(frozen=True)
class Grade:
    """``number`` 0-8 and ``level`` early, middle or late; ``score`` is the sum behind it,
    ``model`` the name of the model that made it."""

    number: int
    level: GradeThird
    score: float
    model: str

    @property
    def words(self) -> Message:
        """For example "grade 1, middle"."""
        return message(IN_WORDS[self.level], number=self.number)


@dataclass(frozen=True)
class HardBar:
    """A bar that pushes the grade up, by its hardest ``demands``, hardest first (none beyond
    first lessons: empty). ``also`` are later bars played the same way."""

    bar: int
    number: str
    score: float
    demands: tuple[Feature, ...]
    also: tuple[int, ...] = ()


def shipped_model() -> GradeModel:
    """The model as shipped: the table's weights, and a piece whose every demand is
    typical of grade n scores n."""
    t = table()
    total = sum(d.weight for d in t.demands)
    rest = 1.0 - t.share_of_hardest
    weights = [(d.id, rest * d.weight / total) for d in t.demands]
    weights.append((HARDEST, t.share_of_hardest))
    return GradeModel(SHIPPED, tuple(weights), tuple(g - 0.5 for g in range(1, 9)))


def parts_of_score(features: Sequence[Feature]) -> dict[str, float]:
    """The levels the model weighs: one for each demand, and the mean of the hardest few.

    What is hard for a few bars only asks no staying power, so the hardest count no more than
    some grades beyond the length of the piece, where that is known.
    """
    levels = {f.demand.id: f.level for f in features}
    top = sorted(levels.values(), reverse=True)[: table().hardest]
    hardest = sum(top) / len(top) if top else 0.0
    if LENGTH in levels:
        hardest = min(hardest, levels[LENGTH] + table().beyond_length)
    levels[HARDEST] = hardest
    return levels


def score(features: Sequence[Feature], model: GradeModel) -> float:
    """The weighted sum behind the grade; rises, or stays, with every feature."""
    levels = parts_of_score(features)
    return sum(w * levels.get(name, 0.0) for name, w in model.weights)


def grade_features(features: Sequence[Feature], model: GradeModel | None = None) -> Grade:
    """The grade of measured or stated features."""
    used = model or shipped_model()
    return grade_of_score(score(features, used), used)


def grade_of_score(total: float, model: GradeModel) -> Grade:
    """Number and level of a score: thirds of the way between two cuts.

    Grade 0 is taken to be as wide as 1 on the scale of the sums, grade 8 as wide as
    the grades below it on average.
    """
    cuts = model.cuts
    number = sum(1 for c in cuts if total >= c)
    low = cuts[number - 1] if number else cuts[0] - 1.0
    high = cuts[number] if number < 8 else cuts[7] + (cuts[7] - cuts[0]) / 7
    third = int(3 * (total - low) / (high - low)) if high > low else 0
    return Grade(number, THIRDS[max(0, min(2, third))], total, model.name)


def place_of(number: int, level: str = "") -> float:
    """A grade as a figure: 1 for the middle of grade 1, or where no level is given;
    early and late lie a third below and above."""
    return number + (THIRDS.index(level) - 1 if level in THIRDS else 0) / 3


def grade_piece(
    piece: Piece,
    fingering: Fingering,
    instrument: Instrument,
    hand: Hand,
    model: GradeModel | None = None,
    measures: tuple[BarMeasure, ...] | None = None,
) -> Grade:
    """The grade of a fingered piece.

    Raises BadInput where it has no notes or the fingering is another piece's.
    """
    if not piece.notes:
        raise BadInput(
            "'{title}' has no notes to grade; read a score with notes in it.",
            title=piece.title,
        )
    return grade_features(piece_features(piece, fingering, instrument, hand, measures), model)


def evidence(features: Sequence[Feature], count: int | None = None) -> tuple[Message, ...]:
    """The features in words, hardest first; all of them, or the first ``count``."""
    ranked = sorted(features, key=lambda f: (-f.level, f.demand.name))
    return tuple(f.sentence for f in (ranked if count is None else ranked[:count]))


def bar_scores(measures: Sequence[BarMeasure]) -> dict[int, float]:
    """How much every bar asks by itself, on the scale of grades (0-9)."""
    t = table()
    out: dict[int, float] = {}
    for row in measures:
        features = bar_features(row)
        total = sum(f.demand.weight for f in features)
        mean = sum(f.demand.weight * f.level for f in features) / total
        hardest = parts_of_score(features)[HARDEST]
        out[row.index] = (1 - t.share_of_hardest) * mean + t.share_of_hardest * hardest
    return out


def hardest_bars(
    piece: Piece,
    fingering: Fingering,
    instrument: Instrument,
    hand: Hand,
    count: int = 3,
    measures: tuple[BarMeasure, ...] | None = None,
) -> tuple[HardBar, ...]:
    """The bars that push the grade up, hardest first; a repeated bar is listed once."""
    rows = measures if measures is not None else measure_bars(piece, fingering, instrument, hand)
    scores = bar_scores(rows)
    first = same_as(piece, fingering)
    by_index = {r.index: r for r in rows}
    own = [b for b in piece.bars if b.notes and first[b.index] == b.index]
    own.sort(key=lambda b: (-scores[b.index], b.index))
    out = []
    for bar in own[:count]:
        found = sorted(bar_features(by_index[bar.index]), key=lambda f: -f.level)
        also = tuple(i for i, f in enumerate(first) if f == bar.index and i != bar.index)
        out.append(
            HardBar(
                bar.index,
                bar.number,
                scores[bar.index],
                tuple(f for f in found[:3] if f.level >= 1.0),
                also,
            )
        )
    return tuple(out)


def hard_bar_in_words(piece: Piece, hard: HardBar) -> Message:
    """ "Bar 5 (also bar 13): barres: ..., shifts: ..."."""
    what: Text = in_a_row((f.sentence for f in hard.demands), "; ") or message(
        "nothing beyond first lessons"
    )
    if not hard.also:
        return message("Bar {number}: {what}.", number=hard.number, what=what)
    return message(
        "Bar {number} (also {others}): {what}.",
        number=hard.number,
        others=bars_named(piece, hard.also),
        what=what,
    )


def shown_grade(lesson: Lesson, estimate: Grade) -> Grade:
    """The grade to print: the teacher's word where it is given, else the estimate.

    The teacher's level stands where they gave one, else "middle"; the model is
    then named "teacher".
    """
    if lesson.grade is None:
        return estimate
    return Grade(lesson.grade, lesson.grade_level or "middle", estimate.score, "teacher")


def unchanged_in_print(printed: Grade, now: Grade) -> Message | None:
    """A sentence where a grade already printed differs from the estimate of today.

    The printed one stays until the teacher changes it.
    """
    if (printed.number, printed.level) == (now.number, now.level):
        return None
    return message(
        "The handout says {printed}; the estimate is {now} now. "
        "The printed grade stays until you change it.",
        printed=printed.words,
        now=now.words,
    )
