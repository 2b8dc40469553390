"""No ink on ink: the shipped lessons and scores of music21's corpus as they are printed."""

from __future__ import annotations

from functools import cache

import pytest

from tests.handout.collisions import collisions, mark_rects
from tests.music.outside import corpus_files
from workbench.arranging.arrange import arrange
from workbench.fingering.engine import solve
from workbench.handout.sheets.page import Handout, HandoutOptions
from workbench.instrument.table import hand, instrument
from workbench.music.errors import BadInput
from workbench.music.reading.score import read_score
from workbench.teaching.lessons.demo import demo_lessons
from workbench.teaching.lessons.lesson import Lesson

LESSONS = demo_lessons()
PIECES = 100
INSTRUMENTS = ("ukulele", "guitar", "ukulele-low-g", "baritone-ukulele")
MOST_BARS = 100


@pytest.mark.parametrize("lesson", LESSONS, ids=[x.title for x in LESSONS])
@pytest.mark.parametrize("large", [False, True])
def test_finger_marks_of_the_shipped_lessons_stand_free(lesson, large) -> None:
    player = instrument(lesson.instrument, lesson.capo)
    fingering = solve(
        lesson.piece, player, hand(lesson.hand), settings=lesson.settings, pins=lesson.pins
    )
    handout = Handout(lesson, fingering, HandoutOptions(large=large))
    assert [c for s in handout.systems() for c in collisions(s)] == []
    assert sum(len(mark_rects(s)) for s in handout.systems()) > 20


@cache
def sample():
    """Every k-th corpus score, so that there are some more than are wanted: a few have
    no notes, or are longer than a handout."""
    every = corpus_files()
    return [every[place * len(every) // (PIECES * 5 // 4)] for place in range(PIECES * 5 // 4)]


def printed(place: int) -> Handout | None:
    """A corpus piece on one of the instruments, all parts or the top one; None where it
    has no notes or is long."""
    path = sample()[place]
    try:
        piece = read_score(path, parts="all" if place % 2 else None)
    except BadInput:
        return None
    if not piece.notes or len(piece.bars) > MOST_BARS:
        return None
    player = instrument(INSTRUMENTS[place % 4])
    arranged = arrange(piece, player)
    lesson = Lesson(path.stem, path.stem, arranged.piece, player.id)
    fingering = solve(arranged.piece, player, hand("medium"))
    return Handout(lesson, fingering, HandoutOptions(plan=False))


def faults(places) -> tuple[int, list[str]]:
    """How many pieces were printed, and the collisions on their pages."""
    count, found = 0, []
    for place in places:
        handout = printed(place)
        if handout is not None:
            count += 1
            found += [
                f"{sample()[place].name}, bars {s.first}-{s.last}: {c}"
                for s in handout.systems()
                for c in collisions(s)
            ]
    return count, found


def test_finger_marks_of_a_few_corpus_pieces_stand_free() -> None:
    count, found = faults((3, 12, 40, 77, 101))
    assert found == []
    assert count >= 3


@pytest.mark.slow
@pytest.mark.parametrize("part", range(10))
def test_finger_marks_of_a_hundred_corpus_pieces_stand_free(part) -> None:
    each = len(sample()) // 10
    count, found = faults(range(part * each, (part + 1) * each))
    assert found == []
    assert count >= 6
