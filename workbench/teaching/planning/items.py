"""The pieces of work a plan is made of: sessions on passages, joins, reviews, runs."""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise
from typing import Literal

from workbench.language.message import Listed, Message, Text, Unsaid, mark, message
from workbench.music.bar_names import bars_named, the_bar
from workbench.music.model import Piece
from workbench.music.order.form import sections
from workbench.teaching.bars.measure import BarMeasure
from workbench.teaching.bars.strokes import tempos
from workbench.teaching.grading.features import bar_features
from workbench.teaching.planning.practice import (
    RUN_TEMPOS,
    BarWork,
    PracticeTime,
    review_minutes,
    tempo_after,
)

SESSION = 6.0  # minutes at most on one passage at one time
CHUNK_BARS = 4
CHUNK_MINUTES = 30.0

DRILLS = {
    "left": mark("Left hand alone: set each grip in turn, lift, set again without looking."),
    "right": mark("Right hand alone on open strings, counting aloud, until it runs by itself."),
    "rhythm": mark("Clap and count the rhythm, then play it on one string."),
    "notes": mark("Say the note names in time, then play them slowly."),
}
WorkKind = Literal["warm up", "learn", "join", "review", "play through"]
KINDS: dict[WorkKind, str] = {
    "warm up": mark("Warm up"),
    "learn": mark("Learn"),
    "join": mark("Join"),
    "review": mark("Review"),
    "play through": mark("Play through"),
}
SIDE = {
    "frets": "left",
    "changes": "left",
    "change_speed": "left",
    "reach": "left",
    "barre": "left",
    "shifts": "left",
    "cuts": "left",
    "together": "right",
    "speed": "right",
    "texture": "right",
    "rhythm": "rhythm",
    "key": "notes",
}


@dataclass(frozen=True, kw_only=True)
class PlanItem:
    """One thing to do. ``bars`` are written bars and ``where`` names them; tempos are in
    percent of the written tempo, ``beats`` the quarter notes a minute at the end
    (0 where there is no tempo). The ``id`` stays the same when the plan flows again."""

    id: str
    kind: WorkKind
    bars: tuple[int, ...]
    where: Text
    minutes: float
    tempo_from: int
    tempo_to: int
    exercise: Unsaid
    beats: int = 0
    done: bool = False

    @property
    def kind_in_words(self) -> Message:
        """For example "Learn"."""
        return message(KINDS[self.kind])

    @property
    def what(self) -> Message:
        """For example "Learn bars 1–4"."""
        if not self.where:
            return self.kind_in_words
        return message("{what} {where}", sense="plan", what=self.kind_in_words, where=self.where)

    @property
    def tempo(self) -> str:
        """For example "25–45 %", or "80 %"; empty where there is none."""
        if not self.tempo_to:
            return ""
        if self.tempo_from == self.tempo_to:
            return f"{self.tempo_to} %"
        return f"{self.tempo_from}–{self.tempo_to} %"


@dataclass(frozen=True)
class ChunkWork:
    """A passage of new bars: its learning sessions and its reviews."""

    bars: tuple[int, ...]
    sessions: tuple[PlanItem, ...]
    reviews: tuple[PlanItem, ...]


@dataclass(frozen=True)
class JoinWork:
    """A join, and the chunks (places in ``Work.chunks``) it needs."""

    chunks: tuple[int, int]
    item: PlanItem


@dataclass(frozen=True)
class Work:
    """All there is to do, hardest passage first, then in playing order."""

    chunks: tuple[ChunkWork, ...]
    joins: tuple[JoinWork, ...]
    runs: tuple[PlanItem, ...]

    @property
    def everything(self) -> tuple[PlanItem, ...]:
        rows = [i for c in self.chunks for i in c.sessions + c.reviews]
        return (*rows, *(j.item for j in self.joins), *self.runs)


def chunks_of(piece: Piece, time: PracticeTime) -> tuple[tuple[int, ...], ...]:
    """New bars in passages of at most four that follow each other inside a section."""
    minutes = {b.bar: b.minutes for b in time.bars}
    entered = {s.first_bar for s in sections(piece)}
    out: list[list[int]] = []
    for bar in piece.bars:
        i = bar.index
        if i not in minutes:
            continue
        starts = i in entered or bar.repeat_start or bool(bar.endings)
        follows = bool(out) and out[-1][-1] == i - 1 and len(out[-1]) < CHUNK_BARS
        if follows and not starts and sum(minutes[k] for k in out[-1]) < CHUNK_MINUTES:
            out[-1].append(i)
        else:
            out.append([i])
    return tuple(tuple(c) for c in out)


def work_of(piece: Piece, time: PracticeTime, rows: tuple[BarMeasure, ...]) -> Work:
    """The work behind an estimate, from the bars' measures; its minutes are the estimate's."""
    measures = {m.index: m for m in rows}
    times = {b.bar: b for b in time.bars}
    place = {i: k for k, i in reversed(list(enumerate(time.first[j] for j in time.order)))}
    chunks = sorted(chunks_of(piece, time), key=lambda c: min(place.get(i, i) for i in c))
    hardest = max(chunks, key=lambda c: max(times[i].difficulty for i in c))
    chunks = [hardest, *(c for c in chunks if c != hardest)]
    speed = tempos(piece)
    home = {i: k for k, c in enumerate(chunks) for i in c}
    inside = [0.0] * len(chunks)
    joins: list[JoinWork] = []
    for join in time.joins:
        a, b = home[join.before], home[join.after]
        if a == b:
            inside[a] += join.minutes
            continue
        pair = (join.before, join.after)
        parts = max(1, math.ceil(join.minutes / SESSION))
        for part in range(1, parts + 1):
            item = PlanItem(
                id=f"join:{join.before}-{join.after}:{part}",
                kind="join",
                bars=pair,
                where=_joined(piece, pair),
                minutes=join.minutes / parts,
                tempo_from=75,
                tempo_to=100,
                exercise=message(
                    "From the last beat of {first} into {second}, then both whole.",
                    first=_name(piece, pair[0]),
                    second=_name(piece, pair[1]),
                ),
                beats=round(speed[pair[1]]),
            )
            joins.append(JoinWork((a, b), item))
    passages = tuple(
        ChunkWork(
            c,
            _sessions(piece, c, times, inside[k], measures, speed),
            _reviews(piece, c, times, time.reviews, speed),
        )
        for k, c in enumerate(chunks)
    )
    return Work(passages, tuple(joins), _runs(piece, time, speed))


def _sessions(
    piece: Piece,
    chunk: tuple[int, ...],
    times: dict[int, BarWork],
    inside: float,
    measures: dict[int, BarMeasure],
    speed: tuple[float, ...],
) -> tuple[PlanItem, ...]:
    minutes = sum(times[i].minutes for i in chunk) + inside
    count = max(1, math.ceil(minutes / SESSION))
    hard = max(chunk, key=lambda i: times[i].difficulty)
    slow = times[hard].slowness
    where = bars_named(piece, chunk)
    goals = [_fives(100 * tempo_after(k / count, slow)) for k in range(count + 1)]
    out = []
    for k, (low, high) in enumerate(pairwise(goals), 1):
        out.append(
            PlanItem(
                id=f"learn:{chunk[0]}-{chunk[-1]}:{k}",
                kind="learn",
                bars=chunk,
                where=where,
                minutes=minutes / count,
                tempo_from=low,
                tempo_to=high,
                exercise=_how(piece, k, count, chunk, hard, measures[hard]),
                beats=round(speed[hard] * high / 100),
            )
        )
    return tuple(out)


def _how(
    piece: Piece,
    turn: int,
    count: int,
    chunk: tuple[int, ...],
    hard: int,
    row: BarMeasure,
) -> Unsaid:
    side = SIDE[max(bar_features(row), key=lambda f: f.level).demand.id]
    if turn == 1:
        slowly = message("Then both hands slowly, one bar at a time.")
        return Listed((message(DRILLS[side]), slowly))
    if turn == count:
        return message("The whole passage in tempo, three times in a row without a slip.")
    if len(chunk) > 1 and turn % 2 == 0:
        return message(
            "Loop {bar}, the hardest here, a little faster each time it is right twice; "
            "then the whole passage.",
            bar=_name(piece, hard),
        )
    faster = message("Then the passage, a little faster each time it is right twice.")
    return Listed((message(DRILLS[side]), faster))


def _reviews(
    piece: Piece,
    chunk: tuple[int, ...],
    times: dict[int, BarWork],
    count: int,
    speed: tuple[float, ...],
) -> tuple[PlanItem, ...]:
    each = sum(review_minutes(times[i]) for i in chunk)
    where = bars_named(piece, chunk)
    return tuple(
        PlanItem(
            id=f"review:{chunk[0]}-{chunk[-1]}:{k}",
            kind="review",
            bars=chunk,
            where=where,
            minutes=each,
            tempo_from=80,
            tempo_to=100,
            exercise=message(
                "Play it from memory of the hands first, then look and mend what was lost."
            ),
            beats=round(speed[chunk[0]]),
        )
        for k in range(1, count + 1)
    )


def _runs(piece: Piece, time: PracticeTime, speed: tuple[float, ...]) -> tuple[PlanItem, ...]:
    """Playings through, the long ones in parts that fit a session."""
    out = []
    for turn, (minutes, percent) in enumerate(zip(time.runs, RUN_TEMPOS, strict=True), 1):
        parts = max(1, math.ceil(minutes / SESSION))
        size = math.ceil(len(time.order) / parts)
        spans = [time.order[k : k + size] for k in range(0, len(time.order), size)]
        for k, bars in enumerate(spans, 1):
            where = message("whole piece")
            if len(spans) > 1:
                where = message(
                    "part {k} of {of}: {first} to {last} as played",
                    k=k,
                    of=len(spans),
                    first=_name(piece, bars[0]),
                    last=_name(piece, bars[-1]),
                )
            out.append(
                PlanItem(
                    id=f"run:{turn}:{k}",
                    kind="play through",
                    bars=tuple(bars),
                    where=where,
                    minutes=minutes * len(bars) / len(time.order),
                    tempo_from=percent,
                    tempo_to=percent,
                    exercise=message(
                        "Do not stop for slips; afterwards mark where they were and loop "
                        "those bars."
                    ),
                    beats=round(speed[bars[0]] * percent / 100),
                )
            )
    return tuple(out)


def _joined(piece: Piece, pair: tuple[int, int]) -> Message:
    first, second = _name(piece, pair[0]), _name(piece, pair[1])
    return message("{first} to {second}", first=first, second=second)


def _name(piece: Piece, index: int) -> Message:
    return the_bar(piece.bars[index].number)


def _fives(percent: float) -> int:
    return int(5 * round(percent / 5))
