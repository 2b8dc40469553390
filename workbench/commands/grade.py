"""``grade SCORE``: grade, learning time, and what pushes them up."""

from __future__ import annotations

import argparse

from workbench.commands.output import Result, wrapped
from workbench.commands.prepare import fingering_of, lesson_of
from workbench.commands.source import load, playing_options, score_options
from workbench.language.speech import say
from workbench.teaching.lessons.playing import playing_of


def options(parser: argparse.ArgumentParser) -> None:
    score_options(parser, lessons=True)
    playing_options(parser)
    practice_options(parser)


def practice_options(parser: argparse.ArgumentParser) -> None:
    """How long a day, for whom, and by which grades."""
    parser.add_argument(
        "--minutes-a-day", type=int, metavar="N",
        help=say("minutes of practice a day (default 20)"),
    )  # fmt: skip
    parser.add_argument(
        "--student", type=float, metavar="GRADE",
        help=say("the student's grade (default: the piece's)"),
    )  # fmt: skip
    parser.add_argument(
        "--uncalibrated", action="store_true",
        help=say("estimate as shipped, whatever was learnt from your grades"),
    )  # fmt: skip


def run(options: argparse.Namespace) -> Result:
    from workbench.store.grading import model_in_force
    from workbench.teaching.assess import assess_and_plan, grade_document
    from workbench.teaching.grading.grade import shown_grade
    from workbench.teaching.planning.files import days_in_words

    lesson = lesson_of(options, load(options, lessons=True))
    instrument, hand = playing_of(lesson)
    asked = options.minutes_a_day
    found, plan = assess_and_plan(
        lesson.piece,
        fingering_of(lesson),
        instrument,
        hand,
        minutes_a_day=lesson.minutes_a_day if asked is None else asked,
        student=options.student,
        tempo_percent=lesson.tempo_percent,
        model=None if options.uncalibrated else model_in_force(),
    )
    document = {
        "title": lesson.title,
        "instrument": lesson.instrument,
        **grade_document(found, plan),
        "teachers_word": {"grade": lesson.grade, "level": lesson.grade_level or None},
    }
    lines = [
        say(
            "{title} - {instrument}: {grade} (an estimate)",
            title=lesson.title,
            instrument=instrument.called,
            grade=found.estimate.words,
        )
    ]
    if lesson.grade is not None:
        word = shown_grade(lesson, found.estimate).words
        lines.append(say("The teacher's word: {grade}", grade=word))
    lines.append(
        say(
            "Learning time {time}: {days} at {minutes} minutes a day",
            time=plan.time.words,
            days=days_in_words(plan.last_day),
            minutes=plan.minutes_a_day,
        )
    )
    parts = (
        (say("Why"), found.evidence),
        (say("Hardest bars"), found.hardest_in_words(lesson.piece)),
        (say("Take care"), plan.cautions),
    )
    for heading, sentences in parts:
        lines += ["", heading]
        lines += [line for sentence in sentences for line in wrapped(sentence, "  ")]
    return Result(document, lines)
