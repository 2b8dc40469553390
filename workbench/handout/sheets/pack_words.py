"""What the pack's page says, in every language that is offered."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import Any

from workbench.instrument.model import Instrument
from workbench.language.names import key_words
from workbench.language.speech import OFFERED, say, speaking
from workbench.sound.tracks import Track
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.planning.plan import Plan


def page_words(
    lesson: Lesson,
    instrument: Instrument,
    plan_of: Callable[[], Plan | None],
    tracks: Mapping[str, Sequence[Track]],
    folder: str,
) -> dict[str, Any]:
    """The page's sentences by language. ``plan_of`` makes the plan in the language spoken;
    ``tracks`` are those of the plan's items, by their ids."""
    out = {}
    for code in OFFERED:
        with speaking(code):
            out[code] = _words(lesson, instrument, plan_of(), tracks, folder, code)
    return out


def _words(
    lesson: Lesson, instrument: Instrument, plan: Plan | None,
    tracks: Mapping[str, Sequence[Track]], folder: str, code: str,
) -> dict[str, Any]:  # fmt: skip
    other = next(name for other, name in OFFERED.items() if other != code)
    about = [str(instrument.called), key_words(lesson.key or lesson.piece.key.name)]
    if lesson.student:
        about.append(say("for {student}", student=lesson.student))
    return {
        "other": other,
        "about": " · ".join(about),
        "larger": say("Larger text"),
        "left": say("Left-handed"),
        "sheet": say("The sheet (PDF)"),
        "bars": say("The music, bar by bar"),
        "hint": say(
            "Tap a bar to hear it and what follows. With Loop on, tap the first bar, then the "
            "last. Keys: Space plays and stops, arrows go to a bar, Enter plays it, L loops, "
            "plus and minus change the tempo."
        ),
        "care": say("Take care"),
        "cautions": [str(caution) for caution in plan.cautions] if plan else [],
        "tempo": say("Tempo"),
        "loop": say("Loop"),
        "controls": say("Player"),
        "play": say("▶ Play"),
        "stop": say("■ Stop"),
        "bar": say("Bar {bar}"),
        "picture": say("Bar {bar}: notes and tablature"),
        "hear": say("Hear {what} at {tempo} percent"),
        "nosound": say("This browser cannot play the sound; open the files in the folder tracks."),
        "today": say("Today: day {day} of the plan"),
        "later": say("The plan goes on to day {last}; what is ticked is remembered here."),
        "alldone": say("Everything of the plan is done."),
        "days": [
            {
                "day": day.day,
                "items": [
                    {
                        "id": item.id,
                        "what": ", ".join(str(w) for w in (item.what, item.tempo) if w),
                        "how": str(item.exercise),
                        "tracks": [
                            {"tempo": track.tempo, "file": f"{folder}/{track.name}"}
                            for track in tracks.get(item.id, ())
                        ],
                    }
                    for item in day.items
                ],
            }
            for day in (plan.days if plan else ())
            if day.items
        ],
    }
