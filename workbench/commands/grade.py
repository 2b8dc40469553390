"""``grade SCORE``: grade, learning time, and what pushes them up."""

from __future__ import annotations

import argparse

from workbench.commands.output import Result, wrapped
from workbench.commands.prepare import fingering_of, lesson_of, playing_of
from workbench.commands.source import load, playing_options, score_options


def options(parser: argparse.ArgumentParser) -> None:
    score_options(parser, lessons=True)
    playing_options(parser)
    parser.add_argument(
        "--minutes-a-day", type=int, metavar="N", help="minutes of practice a day (default 20)"
    )
    parser.add_argument(
        "--student", type=float, metavar="GRADE", help="the student's grade (default: the piece's)"
    )


def run(options: argparse.Namespace) -> Result:
    from workbench.teaching.features import piece_features
    from workbench.teaching.grade import evidence, grade_piece, hard_bar_in_words, hardest_bars
    from workbench.teaching.plan import make_plan

    lesson = lesson_of(options, load(options, lessons=True))
    instrument, hand = playing_of(lesson)
    fingering = fingering_of(lesson)
    piece = lesson.piece
    given = (piece, fingering, instrument, hand)
    found = grade_piece(*given)
    hard = hardest_bars(*given)
    said = evidence(piece_features(*given))
    minutes_a_day = options.minutes_a_day or lesson.minutes_a_day
    plan = make_plan(
        *given,
        minutes_a_day=minutes_a_day,
        student=options.student,
        tempo_percent=lesson.tempo_percent,
    )
    time = plan.time
    document = {
        "title": lesson.title,
        "instrument": lesson.instrument,
        "grade": found.number,
        "level": found.level,
        "evidence": list(said),
        "minutes_total": round(time.minutes),
        "minutes_range": [round(time.low), round(time.high)],
        "minutes_a_day": minutes_a_day,
        "days": plan.last_day,
        "hardest_bars": [
            {
                "index": bar.bar,
                "number": bar.number,
                "score": round(bar.score, 2),
                "reasons": list(bar.reasons),
                "also": list(bar.also),
            }
            for bar in hard
        ],
        "teachers_word": {"grade": lesson.grade, "level": lesson.grade_level or None},
        "cautions": list(plan.cautions),
    }
    lines = [
        f"{lesson.title} - {instrument.name}: {found.words} (an estimate)",
        f"Learning time {time.words}: {plan.last_day} days at {minutes_a_day} minutes a day",
        "",
        "Why",
    ]
    if lesson.grade is not None:
        lines.insert(1, f"The teacher's word: grade {lesson.grade}, {lesson.grade_level}")
    lines += [line for sentence in said for line in wrapped(sentence, "  ")]
    lines += ["", "Hardest bars"]
    lines += [line for bar in hard for line in wrapped(hard_bar_in_words(piece, bar), "  ")]
    lines += ["", "Take care"]
    lines += [line for caution in plan.cautions for line in wrapped(caution, "  ")]
    return Result(document, lines)
