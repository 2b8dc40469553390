"""A practice plan by days, and how it flows again when items are ticked."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass, replace

from workbench.fingering.types import Fingering
from workbench.instrument.model import Hand, Instrument
from workbench.language.message import Message, message
from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.teaching.bars.measure import BarMeasure, measure_bars
from workbench.teaching.grading.grade import GradeModel
from workbench.teaching.planning.cautions import cautions
from workbench.teaching.planning.items import PlanItem, Work, work_of
from workbench.teaching.planning.practice import PracticeTime, practice_time, review_gaps

WARM_UP = 2.0  # minutes, on days of a quarter of an hour and more
RUNS_A_DAY = 4
SESSIONS_A_DAY = 2  # on one passage, with other work between them where there is any
LONGEST_DAYS = 3660


@dataclass(frozen=True)
class DayPlan:
    """One day, counted from 1. ``minutes`` are the day's total with its warm-up."""

    day: int
    items: tuple[PlanItem, ...]
    rest: bool = False

    @property
    def minutes(self) -> float:
        return sum(i.minutes for i in self.items)


@dataclass(frozen=True)
class Plan:
    """Days from ``first_day`` on. ``done`` are the items already ticked, kept for the
    record; ``time`` is the estimate behind the plan."""

    days: tuple[DayPlan, ...]
    done: tuple[PlanItem, ...]
    time: PracticeTime
    minutes_a_day: int
    first_day: int
    cautions: tuple[Message, ...]

    @property
    def items(self) -> tuple[PlanItem, ...]:
        """Everything still to do, in order."""
        return tuple(i for d in self.days for i in d.items)

    @property
    def minutes(self) -> float:
        """Minutes still to do, warm-ups included."""
        return sum(d.minutes for d in self.days)

    @property
    def last_day(self) -> int:
        """Number of the last day, 0 where nothing is left to do."""
        return self.days[-1].day if self.days else 0


def make_plan(
    piece: Piece,
    fingering: Fingering,
    instrument: Instrument,
    hand: Hand,
    *,
    minutes_a_day: int = 20,
    days_a_week: int = 6,
    student: float | None = None,
    tempo_percent: float = 100.0,
    done: Collection[str] = (),
    first_day: int = 1,
    time: PracticeTime | None = None,
    model: GradeModel | None = None,
    measures: tuple[BarMeasure, ...] | None = None,
) -> Plan:
    """The plan for what is not ticked yet (``done`` holds ids of plan items), from
    ``first_day`` on.

    The hardest passage is begun first, so that it is met on most days; a passage
    is worked at in short sessions over several days, joined to its neighbours
    once both are known, and played again after growing gaps; the whole piece is
    played through when all is joined. Raises BadInput for impossible minutes or
    days, and as ``practice_time`` does.
    """
    if not 5 <= minutes_a_day <= 240:
        raise BadInput("{n} minutes a day: plan between 5 and 240.", n=minutes_a_day)
    if not 1 <= days_a_week <= 7:
        raise BadInput("{n} days a week: plan between 1 and 7.", n=days_a_week)
    if first_day < 1:
        raise BadInput("Day {n}: the days of a plan count from 1.", n=first_day)
    rows = measures or measure_bars(piece, fingering, instrument, hand)
    spent = time or practice_time(
        piece,
        fingering,
        instrument,
        hand,
        student=student,
        tempo_percent=tempo_percent,
        model=model,
        measures=rows,
    )
    work = work_of(piece, spent, rows)
    ticked = frozenset(done)
    days = _Packing(work, spent, minutes_a_day, days_a_week, ticked, first_day).days()
    kept = tuple(replace(i, done=True) for i in work.everything if i.id in ticked)
    said = cautions(piece, fingering, instrument, hand, minutes_a_day=minutes_a_day, measures=rows)
    return Plan(days, kept, spent, minutes_a_day, first_day, said)


def rest_day(day: int, days_a_week: int) -> bool:
    """True where that day is one of the free ones, spread evenly over the week."""
    free = 7 - days_a_week
    return (day * free) // 7 > ((day - 1) * free) // 7


class _Packing:
    """Fills days one by one. A helper that lives for one call."""

    def __init__(
        self,
        work: Work,
        time: PracticeTime,
        minutes_a_day: int,
        days_a_week: int,
        ticked: frozenset[str],
        first_day: int,
    ) -> None:
        self.gaps = review_gaps(len(time.bars))
        self.minutes_a_day = minutes_a_day
        self.days_a_week = days_a_week
        self.day = first_day
        self.sessions = [[i for i in c.sessions if i.id not in ticked] for c in work.chunks]
        self.reviews = [[i for i in c.reviews if i.id not in ticked] for c in work.chunks]
        self.gone = [len(c.reviews) for c in work.chunks]
        self.joins = [j for j in work.joins if j.item.id not in ticked]
        self.runs = [r for r in work.runs if r.id not in ticked]
        before = first_day - 1
        self.learned = {k: before for k, left in enumerate(self.sessions) if not left}
        self.last_review = dict(self.learned)
        self.today: list[PlanItem] = []
        self.left = 0.0

    def days(self) -> tuple[DayPlan, ...]:
        out: list[DayPlan] = []
        while self._open() and len(out) < LONGEST_DAYS:
            items = () if rest_day(self.day, self.days_a_week) else self._fill()
            # a day on which nothing is due yet is free as well
            out.append(DayPlan(self.day, items, rest=not items))
            self.day += 1
        while out and out[-1].rest:
            out.pop()
        return tuple(out)

    def _open(self) -> bool:
        return any(self.sessions) or any(self.reviews) or bool(self.joins) or bool(self.runs)

    def _fill(self) -> tuple[PlanItem, ...]:
        self.today, self.left = [], float(self.minutes_a_day)
        warm = self.minutes_a_day >= 15
        if warm:
            self.left -= WARM_UP
        room = self.left
        self._review(room * 0.5 if any(self.sessions) else room)
        self._join()
        for _ in range(SESSIONS_A_DAY):
            self._learn()
        self._run()
        if not warm or not self.today:
            return tuple(self.today)
        return (_warm_up(self.day), *self.today)

    def _take(self, item: PlanItem) -> bool:
        """Put an item into the day if it fits; the day's first item always does."""
        if self.today and item.minutes > self.left + 1e-9:
            return False
        self.today.append(item)
        self.left -= item.minutes
        return True

    def _review(self, room: float) -> None:
        due = []
        for k, waiting in enumerate(self.reviews):
            if not waiting or k not in self.learned:
                continue
            turn = self.gone[k] - len(waiting)
            gap = self.gaps[turn] - (self.gaps[turn - 1] if turn else 0)
            if self.last_review[k] + gap <= self.day:
                due.append((self.last_review[k] + gap, k))
        for _, k in sorted(due):
            if self.today and self.reviews[k][0].minutes > room:
                continue
            if self._take(self.reviews[k][0]):
                room -= self.reviews[k].pop(0).minutes
                self.last_review[k] = self.day

    def _join(self) -> None:
        for join in list(self.joins):
            known = all(self.learned.get(k, self.day) < self.day for k in join.chunks)
            if known and self._take(join.item):
                self.joins.remove(join)

    def _learn(self) -> None:
        for k, waiting in enumerate(self.sessions):
            if not waiting or not self._take(waiting[0]):
                continue
            waiting.pop(0)
            if not waiting:
                self.learned[k] = self.last_review[k] = self.day

    def _run(self) -> None:
        if any(self.sessions) or self.joins:
            return
        taken = 0
        while self.runs and taken < RUNS_A_DAY and self._take(self.runs[0]):
            self.runs.pop(0)
            taken += 1


def _warm_up(day: int) -> PlanItem:
    return PlanItem(
        id=f"warm-up:{day}",
        kind="warm up",
        bars=(),
        where="",
        minutes=WARM_UP,
        tempo_from=0,
        tempo_to=0,
        exercise=message(
            "Loosen hands and shoulders; slow open strings, then one easy bar you know well."
        ),
    )
