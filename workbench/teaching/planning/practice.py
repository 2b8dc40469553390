"""How long a piece takes to learn, and from what that follows.

The model. Only new material costs time: bars played the very same way are
learned once. The first try at a bar is ``slowness`` times too slow; the time of
the n-th try falls as n to the power -a (the power law of practice, Newell and
Rosenbloom 1981), and the bar is learned when it reaches its tempo. Joins
between bars, spaced reviews (Cepeda et al. 2006: spread practice is kept longer
than massed practice) and playing through are added. Both works are named from
memory. The constants are set so that a piece of middle grade 1, for a student
of grade 1 at 20 to 30 minutes a day, takes one to two weeks (common practice,
no source). People differ more than models do: read the range, not the figure.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from itertools import pairwise

from workbench.fingering.types import Fingering
from workbench.instrument.model import Hand, Instrument
from workbench.language.message import Figure, Message, message
from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.music.order.form import playing_order
from workbench.teaching.bars.measure import BarMeasure, measure_bars
from workbench.teaching.bars.strokes import bar_seconds, same_as
from workbench.teaching.grading.features import features_from, piece_amounts
from workbench.teaching.grading.grade import GradeModel, bar_scores, grade_features

EXPONENT = 0.40  # of the power law: likely, quick and slow learners (no source)
EXPONENT_QUICK = 0.45
EXPONENT_SLOW = 0.355
SLOWNESS = 4.2  # first try at a bar of one's own grade, grade 1, times the tempo (no source)
SLOWNESS_OF_GRADE = 1.1  # times this for each grade of the bar: hard music stays hard
SLOWNESS_A_GRADE = 1.3  # times this for each grade above the student
LEAST_SLOWNESS = 1.3
MOST_SLOWNESS = 14.0  # beyond it the bar is no longer practised but put off
PAUSE = 8.0  # seconds between tries: look, think, set the hands
READING = 32.0  # seconds a note to read a new bar and find the fingers, at one's own grade
JOIN_SHARE = 0.4  # tries for a join between two bars, as a share of the harder bar's
REVIEW_SHARE = 0.22  # a review of a bar, as a share of what learning it took ...
REVIEW_MOST = 1.5  # ... and at most so many minutes
RUN_TEMPOS = (60, 70, 80, 80, 90, 90, 100, 100, 100, 100)  # percent of the tempo, one playing each
MENDING = 1.5  # minutes after a playing through, for the bars that slipped


@dataclass(frozen=True)
class BarWork:
    """A new bar: difficulty on the scale of grades, how many times too slow the first
    try is, tries until it is in tempo, and minutes for them. ``reading`` of these
    minutes go before the first try; ``seconds`` the bar takes in the tempo aimed at."""

    bar: int
    difficulty: float
    slowness: float
    tries: float
    minutes: float
    reading: float = 0.0
    seconds: float = 0.0


@dataclass(frozen=True)
class PracticedJoin:
    """From one new bar to another as they follow in playing order."""

    before: int
    after: int
    minutes: float


@dataclass(frozen=True, kw_only=True)
class PracticeTime:
    """``minutes`` in all, likely to lie between ``low`` and ``high``.

    ``first`` says for every written bar the bar it repeats (or itself);
    ``runs`` are the minutes of each playing through, at RUN_TEMPOS.
    ``exponent`` is that of the learning curve.
    """

    bars: tuple[BarWork, ...]
    joins: tuple[PracticedJoin, ...]
    reviews: int
    review_minutes: float
    runs: tuple[float, ...]
    minutes: float
    low: float
    high: float
    student: float
    exponent: float
    first: tuple[int, ...]
    order: tuple[int, ...]

    @property
    def words(self) -> Message:
        """For example "about 3½ to 5 hours"."""
        if self.high < 90:
            low, high = _near(self.low, 5), _near(self.high, 5)
            return message("about {low} to {high} minutes", low=low, high=high)
        low_hours, high_hours = _half_hours(self.low), _half_hours(self.high)
        return message("about {low} to {high} hours", low=low_hours, high=high_hours)


def tries_to_tempo(slowness: float, exponent: float = EXPONENT) -> float:
    """Tries until a bar is in tempo: the n for which slowness · n^-exponent = 1."""
    return float(max(1.0, slowness) ** (1.0 / exponent))


def time_of_try(number: float, slowness: float, seconds: float, exponent: float) -> float:
    """Seconds that the n-th try takes, for a bar of so many seconds in tempo."""
    return float(seconds * max(1.0, slowness * number**-exponent))


def seconds_of_tries(slowness: float, seconds: float, exponent: float) -> float:
    """Seconds for all tries until in tempo: the curve summed, and a pause after each."""
    tries = tries_to_tempo(slowness, exponent)
    whole = int(tries)
    playing = sum(time_of_try(k, slowness, seconds, exponent) for k in range(1, whole + 1))
    playing += (tries - whole) * seconds
    return playing + tries * PAUSE


def tempo_after(share: float, slowness: float, exponent: float = EXPONENT) -> float:
    """Share of the tempo (0-1) reached after that share (0-1) of the tries."""
    number = max(1.0, share * tries_to_tempo(slowness, exponent))
    return min(1.0, float(number**exponent / max(1.0, slowness)))


def learning_curve(bar: BarWork, exponent: float = EXPONENT) -> tuple[tuple[float, float], ...]:
    """(minutes spent on the bar, share of its tempo reached), try by try, from the
    reading of it until it is in tempo."""
    minutes = bar.reading
    out = [(minutes, 1.0 / max(1.0, bar.slowness))]
    for number in range(1, int(tries_to_tempo(bar.slowness, exponent)) + 2):
        took = time_of_try(number, bar.slowness, bar.seconds, exponent)
        minutes += (took + PAUSE) / 60.0
        out.append((minutes, bar.seconds / took if took > 0 else 1.0))
    return tuple(out)


def practice_time(
    piece: Piece,
    fingering: Fingering,
    instrument: Instrument,
    hand: Hand,
    *,
    student: float | None = None,
    tempo_percent: float = 100.0,
    model: GradeModel | None = None,
    order: tuple[int, ...] | None = None,
    measures: tuple[BarMeasure, ...] | None = None,
) -> PracticeTime:
    """Learning time of a fingered piece.

    ``student`` is the student's grade (0-8; that of the piece where not given),
    ``tempo_percent`` the tempo aimed at, ``order`` (the written bars in playing
    order) and ``measures`` are worked out where they are not given. Raises BadInput for
    a piece without notes, a student or tempo out of range, or a fingering of
    another piece.
    """
    if not piece.notes:
        raise BadInput(
            "'{title}' has no notes to learn; read a score with notes in it.",
            title=piece.title,
        )
    if not 20.0 <= tempo_percent <= 200.0:
        raise BadInput(
            "Tempo {percent} %: aim at 20 to 200 % of the written tempo.",
            percent=Figure(tempo_percent),
        )
    if student is not None and not 0.0 <= student <= 9.0:
        raise BadInput("Student's grade {grade}: give a grade from 0 to 8.", grade=Figure(student))
    rows = measures or measure_bars(piece, fingering, instrument, hand)
    whole = grade_features(features_from(piece_amounts(piece, rows)), model)
    scores = bar_scores(rows)
    first = same_as(piece, fingering)
    seconds = bar_seconds(piece)
    played = order if order is not None else playing_order(piece)
    level = float(whole.number) if student is None else student
    # a bar is met inside its piece: half its own difficulty, half the piece's
    difficulty = {i: 0.5 * scores[i] + 0.5 * whole.score for i in scores}

    def estimate(exponent: float) -> PracticeTime:
        return _estimate(
            piece, played, first, difficulty, seconds, level, tempo_percent / 100.0, exponent
        )

    likely = estimate(EXPONENT)
    low, high = estimate(EXPONENT_QUICK).minutes, estimate(EXPONENT_SLOW).minutes
    return replace(likely, low=low, high=high)


def _estimate(
    piece: Piece,
    order: tuple[int, ...],
    first: tuple[int, ...],
    difficulty: dict[int, float],
    seconds: tuple[float, ...],
    student: float,
    tempo: float,
    exponent: float,
) -> PracticeTime:
    bars: dict[int, BarWork] = {}
    for bar in piece.bars:
        i = bar.index
        if not bar.notes or first[i] != i:
            continue
        above = difficulty[i] - student
        own = SLOWNESS * SLOWNESS_OF_GRADE ** (difficulty[i] - 1.0)
        slow = min(MOST_SLOWNESS, max(LEAST_SLOWNESS, own * SLOWNESS_A_GRADE**above * tempo))
        reading = READING * len(bar.notes) * SLOWNESS_A_GRADE**above
        once = seconds[i] / tempo
        spent = reading + seconds_of_tries(slow, once, exponent)
        tries = tries_to_tempo(slow, exponent)
        bars[i] = BarWork(i, difficulty[i], slow, tries, spent / 60.0, reading / 60.0, once)
    joins: dict[tuple[int, int], PracticedJoin] = {}
    for here, there in pairwise(order):
        pair = (first[here], first[there])
        if pair in joins or pair[0] not in bars or pair[1] not in bars:
            continue
        harder = max(bars[pair[0]].tries, bars[pair[1]].tries)
        both = (seconds[pair[0]] + seconds[pair[1]]) / tempo
        joins[pair] = PracticedJoin(*pair, JOIN_SHARE * harder * (both + PAUSE) / 60.0)
    learning = sum(b.minutes for b in bars.values())
    reviews = len(review_gaps(len(bars)))
    review = sum(review_minutes(b) for b in bars.values()) * reviews
    once = sum(seconds[i] for i in order) / 60.0 / tempo
    runs = tuple(once * 100.0 / percent * 1.25 + MENDING for percent in RUN_TEMPOS)
    total = learning + sum(j.minutes for j in joins.values()) + review + sum(runs)
    return PracticeTime(
        bars=tuple(bars.values()),
        joins=tuple(joins.values()),
        reviews=reviews,
        review_minutes=review,
        runs=runs,
        minutes=total,
        low=total,
        high=total,
        student=student,
        exponent=exponent,
        first=first,
        order=order,
    )


def review_minutes(bar: BarWork) -> float:
    """Minutes for playing a learned bar again."""
    return min(REVIEW_MOST, REVIEW_SHARE * bar.minutes)


def review_gaps(new_bars: int) -> tuple[int, ...]:
    """Days after learning at which a chunk is played again: the more there is to
    learn, the longer it has to be kept, and the wider the gaps."""
    if new_bars <= 12:
        return (1, 3)
    return (1, 3, 7) if new_bars <= 40 else (1, 3, 7, 16)


def _near(value: float, step: int) -> int:
    return max(step, round(value / step) * step)


def _half_hours(minutes: float) -> str:
    halves = max(1, round(minutes / 30.0))
    whole = str(halves // 2) if halves >= 2 else ""
    return whole + ("½" if halves % 2 else "")
