"""The practice plan alone: a table to tick by days, and the cautions."""

from __future__ import annotations

from workbench.engraving.app import ensure_gui
from workbench.fingering.types import Fingering
from workbench.handout.options import HandoutOptions, sheet
from workbench.handout.parts.plan_grid import plan_parts
from workbench.handout.parts.words import practice_words, tempo_words
from workbench.handout.setting.blocks import FactsBlock, TextBlock, TitleBlock
from workbench.handout.setting.compose import Flow
from workbench.handout.setting.paged import Leaves
from workbench.handout.setting.remarks import OwnNotesBlock
from workbench.handout.setting.typeset import SMALL
from workbench.instrument.table import hand
from workbench.instrument.table import instrument as instrument_of
from workbench.language.speech import count, say
from workbench.music.errors import BadInput
from workbench.teaching.grading.grade import GradeModel
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.planning.plan import Plan, make_plan

MOST_DAYS = 366


def plan_sheet(
    lesson: Lesson,
    fingering: Fingering,
    options: HandoutOptions,
    model: GradeModel | None = None,
) -> Leaves:
    """The plan of a lesson from its first day to its last, by the ``model`` of grades in
    force (None: as shipped).

    Raises BadInput where the piece has no notes, or everything in the plan is done.
    """
    ensure_gui()
    piece, instrument = lesson.piece, instrument_of(lesson.instrument, lesson.capo)
    plan = make_plan(
        piece, fingering, instrument, hand(lesson.hand),
        minutes_a_day=lesson.minutes_a_day, tempo_percent=float(lesson.tempo_percent),
        done=lesson.plan_done, model=model,
    )  # fmt: skip
    if not plan.days:
        raise BadInput(
            "Everything in the plan of '{title}' is done; there is nothing to print.",
            title=lesson.title,
        )
    page = sheet(options)
    scale, line = page.scale, page.line
    flow = Flow(page)
    title = lesson.title or piece.title
    flow.put(TitleBlock(title, piece.composer, piece.arranger, line, scale))
    rows = [
        (say("Student"), lesson.student),
        (say("Tempo"), tempo_words(piece, lesson.tempo_percent)),
        (say("Practice time"), _time(plan)),
    ]
    flow.put(FactsBlock([row for row in rows if row[1]], line, scale))
    care = f"**{say('Take care.')}** {' '.join(map(str, plan.cautions))}"
    flow.put(TextBlock(care, line, scale, style=SMALL, after=9.0, boxed=True))
    flow.parts(plan_parts(plan, line, page.room, scale, most=MOST_DAYS))
    own = OwnNotesBlock(line, scale, 4, say("My notes"))
    if own.height <= flow.free:
        flow.own_notes(own)
    heading = say("{title}: practice plan", title=title)
    return Leaves(heading, piece.composer, options, page, flow.pages)


def _time(plan: Plan) -> str:
    """For example ``7 h 40 min in 26 days, 25 min a day``."""
    return count(
        plan.last_day - plan.first_day + 1,
        "{time} in {n} day",
        "{time} in {n} days, {minutes} min a day",
        time=practice_words(round(plan.minutes), 0),
        minutes=plan.minutes_a_day,
    )
