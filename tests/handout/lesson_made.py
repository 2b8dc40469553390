"""A lesson with notes of several kinds, for the tests of the handout."""

from __future__ import annotations

from dataclasses import replace

from tests.engraving.small_pieces import walk
from workbench.teaching.lessons.lesson import BarNote, Lesson

NOTES = (
    BarNote("k1", "left hand", "Keep finger 1 *down*, it is **needed** again.", 1, 1),
    BarNote("k2", "rhythm", "First count the figure, then play it.", 2, 3),
    BarNote(
        "k3",
        "right hand",
        "Thumb and middle together.",
        9,
        9,
        note="b9v1n0",
        rejected=(("b9v1n0", 1, 7, 4),),
    ),
    BarNote("k4", "form", "Stop here at the end.", 6, 6, grip=(2, 0, 1, 0)),
)


def lesson(**changes) -> Lesson:
    made = Lesson(
        "l",
        "A walk by the mill",
        walk(),
        "ukulele",
        student="Mira",
        key="F major",
        grade=2,
        grade_level="early",
        practice_minutes=150,
        notes=NOTES,
    )
    return replace(made, **changes)
