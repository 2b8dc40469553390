"""``plan SCORE``: what to practise on which day, and how long it takes in all."""

from __future__ import annotations

import argparse
from pathlib import Path

from workbench.commands.grade import practice_options
from workbench.commands.output import Result, wrapped
from workbench.commands.prepare import fingering_of, lesson_of
from workbench.commands.source import load, playing_options, score_options
from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.teaching.lessons.playing import playing_of


def options(parser: argparse.ArgumentParser) -> None:
    score_options(parser, lessons=True)
    parser.add_argument("-o", "--output", metavar="OUT.md", help=say("write it as Markdown"))
    parser.add_argument(
        "--days-a-week", type=int, default=6, metavar="N",
        help=say("days with practice (default 6)"),
    )  # fmt: skip
    practice_options(parser)
    playing_options(parser)


def run(options: argparse.Namespace) -> Result:
    from workbench.music.files import write_text
    from workbench.store.grading import model_in_force
    from workbench.teaching.planning.files import (
        day_in_words,
        days_in_words,
        item_in_words,
        markdown,
    )
    from workbench.teaching.planning.plan import make_plan

    target = Path(options.output) if options.output else None
    if target is not None and target.suffix.lower() != ".md":
        raise BadInput("{file}: a plan is written as Markdown; end the name with .md.", file=target)
    lesson = lesson_of(options, load(options, lessons=True))
    asked = options.minutes_a_day
    plan = make_plan(
        lesson.piece,
        fingering_of(lesson),
        *playing_of(lesson),
        minutes_a_day=lesson.minutes_a_day if asked is None else asked,
        days_a_week=options.days_a_week,
        student=options.student,
        tempo_percent=lesson.tempo_percent,
        model=None if options.uncalibrated else model_in_force(),
        done=lesson.plan_done,
    )
    if target is not None:
        write_text(target, markdown(plan, lesson.title))
    time = plan.time
    document = {
        "title": lesson.title,
        "minutes_total": round(time.minutes),
        "minutes_range": [round(time.low), round(time.high)],
        "minutes_left": round(plan.minutes),
        "minutes_a_day": plan.minutes_a_day,
        "days": [
            {
                "day": day.day,
                "rest": day.rest,
                "minutes": round(day.minutes, 1),
                "items": [
                    {
                        "id": item.id,
                        "kind": item.kind,
                        "bars": list(item.bars),
                        "where": str(item.where),
                        "minutes": round(item.minutes, 1),
                        "tempo": [item.tempo_from, item.tempo_to],
                        "exercise": str(item.exercise),
                    }
                    for item in day.items
                ],
            }
            for day in plan.days
        ],
        "done": [item.id for item in plan.done],
        "cautions": [str(caution) for caution in plan.cautions],
        "path": str(target) if target else None,
    }
    if target is not None:
        said = say(
            "{file}: {days}, {time} in all.",
            file=target,
            days=days_in_words(plan.last_day),
            time=time.words,
        )
        return Result(document, [said])
    lines = [
        say(
            "{title}: {time} in all, {minutes} minutes a day",
            title=lesson.title,
            time=time.words,
            minutes=plan.minutes_a_day,
        )
    ]
    for day in plan.days:
        lines += ["", day_in_words(day)]
        for item in day.items:
            lines += wrapped(f"{item_in_words(item)}. {item.exercise}", "  ")
    lines += ["", say("Take care")]
    lines += [line for caution in plan.cautions for line in wrapped(caution, "  ")]
    return Result(document, lines)
