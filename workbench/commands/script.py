"""``script SCORE``: the tutorial's script in playing order, with times."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING

from workbench.commands.output import Result, file_to_write, wrapped
from workbench.commands.prepare import fingering_of, lesson_of
from workbench.commands.source import load, playing_options, score_options
from workbench.language.speech import count, say
from workbench.music.errors import BadInput
from workbench.teaching.lessons.formatting import plain
from workbench.teaching.lessons.playing import playing_of

if TYPE_CHECKING:
    from workbench.store.shelf import Shelf
    from workbench.teaching.lessons.lesson import Lesson
    from workbench.teaching.techniques.news import Profile


def options(parser: argparse.ArgumentParser) -> None:
    score_options(parser, lessons=True)
    parser.add_argument(
        "-o",
        "--output",
        metavar="OUT",
        help=say(
            "write it: .md the script to read, .srt or .vtt cues with times, .txt the chapters"
        ),
    )
    parser.add_argument(
        "--student",
        metavar="NAME",
        help=say("pass over what this student's (or group's) earlier lessons in the store taught"),
    )
    playing_options(parser)


def run(options: argparse.Namespace) -> Result:
    from workbench.handout.files.text_file import script_form
    from workbench.music.files import write_text
    from workbench.teaching.scripts.files import chapters, clock
    from workbench.teaching.scripts.script import make_script

    target = file_to_write(options.output, "script.md") if options.output else None
    form = script_form(target) if target is not None else None
    lesson = lesson_of(options, load(options, lessons=True))
    earlier = taught_before(options.student, lesson) if options.student else ()
    known = tuple(dict.fromkeys(move for profile in earlier for move in profile.moves))
    script = make_script(lesson, fingering_of(lesson), *playing_of(lesson), known=known)
    if target is not None and form is not None:
        write_text(target, form(script))
    document = {
        "title": script.title,
        "seconds": round(script.seconds, 3),
        "opening": str(script.opening),
        "closing": str(script.closing),
        "closing_start": round(script.closing_start, 3),
        "earlier": [{"id": p.id, "title": p.title} for p in earlier],
        "cues": [
            {
                "position": cue.position,
                "bar": cue.bar,
                "number": cue.number,
                "chapter": str(cue.chapter) or None,
                "start": round(cue.start, 3),
                "speaking": round(cue.speaking, 3),
                "playing": round(cue.playing, 3),
                "say": str(cue.say),
                "new": [str(move.words) for move in cue.new],
                "grips": list(cue.grips),
                "pictures": list(cue.pictures),
                "right": cue.right,
                "as_bar": cue.as_bar,
                "through": cue.through,
                "edited": cue.edited,
            }
            for cue in script.cues
        ],
        "chapters": chapters(script).splitlines(),
        "path": str(target) if target else None,
    }
    length = count(
        len(script.cues),
        "{n} bar, about {time}",
        "{n} bars, about {time}",
        time=clock(script.seconds),
    )
    if target is not None:
        return Result(document, [f"{target}: {length}."])
    lines = [f"{script.title}: {length}", "", *wrapped(plain(str(script.opening)))]
    for cue in script.cues:
        if cue.chapter:
            lines += ["", str(cue.chapter)]
        if cue.covered:
            continue
        lines += wrapped(f"{clock(cue.start)}  {plain(str(cue.say))}", "  ")
    lines += ["", *wrapped(plain(str(script.closing)))]
    return Result(document, lines)


def taught_before(student: str, lesson: Lesson) -> tuple[Profile, ...]:
    """What the student's lessons in the store taught, oldest first: those before this one
    where it is one of them. Lessons that were never fingered are fingered now.

    Raises BadInput where the store has none of that student.
    """
    from workbench.store.earlier import companions, earlier_lessons
    from workbench.store.shelf import Shelf

    with Shelf() as shelf:
        names = companions(shelf, student)
        if not any(row.student in names for row in shelf.lessons(archived=None)):
            raise BadInput(
                "--student {name}: the store has no lesson of that student or group; "
                "'lessons' lists whose there are.",
                name=student,
            )
        rows = earlier_lessons(shelf, student, lesson.id)
        found = [_profile(shelf, shelf.load(row.id)) for row in rows]
    return tuple(profile for profile in found if profile is not None)


def _profile(shelf: Shelf, lesson: Lesson) -> Profile | None:
    """What a kept lesson teaches; None where it has no notes to play."""
    from workbench.teaching.techniques.news import profile

    if not lesson.piece.notes:
        return None
    fingering = shelf.cached_fingering(lesson)
    if fingering is None:
        fingering = fingering_of(lesson)
        shelf.put_fingering(lesson, fingering)
    grade = float(lesson.grade or 0)  # nothing here asks how hard it is
    return profile(lesson.id, lesson.title, grade, lesson.piece, fingering, *playing_of(lesson))
