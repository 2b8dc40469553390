"""How hard every bar of a lesson is against its other bars, and which earlier bar it is like."""

from __future__ import annotations

from workbench.fingering.types import Fingering
from workbench.teaching.bars.likeness import likenesses
from workbench.teaching.bars.measure import measure_bars
from workbench.teaching.grading.grade import bar_scores
from workbench.teaching.lessons.bar_rows import BarFacts
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.lessons.playing import playing_of


def facts_of(lesson: Lesson, fingering: Fingering | None) -> dict[int, BarFacts]:
    """The facts of every written bar; without a fingering only what its music is like."""
    piece = lesson.piece
    scores: dict[int, float] = {}
    if fingering is not None:
        measures = measure_bars(piece, fingering, *playing_of(lesson))
        scores = {i: s for i, s in bar_scores(measures).items() if piece.bars[i].notes}
    most = max(scores.values(), default=0.0) or 1.0
    return {
        bar.index: BarFacts(
            scores.get(bar.index),
            scores.get(bar.index, 0.0) / most,
            like,
            piece.bars[like.bar].number if like else "",
        )
        for bar, like in zip(piece.bars, likenesses(piece, fingering), strict=True)
    }
