"""The practice plan as a table to tick."""

from __future__ import annotations

from workbench.fingering.types import Fingering
from workbench.handout.blocks import Block, Column, Space, TableRow
from workbench.instrument.model import Instrument
from workbench.instrument.table import hand
from workbench.music.model import Piece
from workbench.teaching.lesson import Lesson
from workbench.teaching.plan import make_plan
from workbench.teaching.plan_items import PlanItem

_COLUMNS = (Column("", 4), Column("Day", 7), Column("What", 14), Column("Where", 17),
            Column("Minutes", 10), Column("Tempo", 15), Column("How", 45))


def plan_blocks(
    lesson: Lesson, piece: Piece, fingering: Fingering, instrument: Instrument, width: float,
    scale: float,
) -> tuple[Block, list[Block]]:
    """The heading row and one row for each thing to do; the day stands in its first row."""
    plan = make_plan(
        piece, fingering, instrument, hand(lesson.hand), minutes_a_day=lesson.minutes_a_day,
        tempo_percent=float(lesson.tempo_percent), done=lesson.plan_done,
    )
    head = TableRow([c.title for c in _COLUMNS], _COLUMNS, width, scale, head=True)
    rows: list[Block] = []
    for day in plan.days:
        if day.rest:
            cells = ["", str(day.day), "rest", "", "", "", ""]
            rows.append(TableRow(cells, _COLUMNS, width, scale))
        for place, item in enumerate(day.items):
            cells = ["", str(day.day) if place == 0 else "", item.kind, item.where,
                     f"{item.minutes:.0f}", _tempo(item), item.exercise]
            rows.append(TableRow(cells, _COLUMNS, width, scale, tick=True))
        rows.append(Space(2.0 * scale))
    return head, rows


def _tempo(item: PlanItem) -> str:
    if not item.tempo_to:
        return ""
    span = f"{item.tempo_from}–{item.tempo_to} %"
    if item.tempo_from == item.tempo_to:
        span = f"{item.tempo_to} %"
    return f"{span}, to {item.beats}" if item.beats else span
