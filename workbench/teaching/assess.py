"""A fingered piece judged once: measures, features, estimate and hardest bars together."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from workbench.fingering.types import Fingering
from workbench.instrument.model import Hand, Instrument
from workbench.language.message import Message
from workbench.music.model import Piece
from workbench.teaching.bars.measure import BarMeasure, measure_bars
from workbench.teaching.grading.features import Feature, piece_features
from workbench.teaching.grading.grade import (
    Grade,
    GradeModel,
    HardBar,
    evidence,
    grade_piece,
    hard_bar_in_words,
    hardest_bars,
)
from workbench.teaching.planning.plan import Plan, make_plan


@dataclass(frozen=True)
class Assessment:
    """What a grade rests on, and the grade itself as the model estimates it."""

    measures: tuple[BarMeasure, ...]
    features: tuple[Feature, ...]
    estimate: Grade
    hardest: tuple[HardBar, ...]

    @property
    def evidence(self) -> tuple[Message, ...]:
        """The features in words, hardest first."""
        return evidence(self.features)

    def hardest_in_words(self, piece: Piece) -> tuple[Message, ...]:
        """The bars that push the grade up, one sentence each."""
        return tuple(hard_bar_in_words(piece, bar) for bar in self.hardest)


def assess(
    piece: Piece,
    fingering: Fingering,
    instrument: Instrument,
    hand: Hand,
    model: GradeModel | None = None,
) -> Assessment:
    """Judge a fingered piece. Raises BadInput where it has no notes or the fingering is
    another piece's."""
    given = (piece, fingering, instrument, hand)
    measures = measure_bars(*given)
    features = piece_features(*given, measures)
    return Assessment(
        measures,
        features,
        grade_piece(*given, model, measures),
        hardest_bars(*given, measures=measures),
    )


def assess_and_plan(
    piece: Piece,
    fingering: Fingering,
    instrument: Instrument,
    hand: Hand,
    *,
    minutes_a_day: int = 20,
    student: float | None = None,
    tempo_percent: float = 100.0,
    model: GradeModel | None = None,
) -> tuple[Assessment, Plan]:
    """The judgement, and the practice plan that follows from it.

    Raises BadInput as ``assess`` and ``make_plan`` do.
    """
    given = (piece, fingering, instrument, hand)
    found = assess(*given, model)
    plan = make_plan(
        *given,
        minutes_a_day=minutes_a_day,
        student=student,
        tempo_percent=tempo_percent,
        model=model,
        measures=found.measures,
    )
    return found, plan


def grade_document(found: Assessment, plan: Plan) -> dict[str, Any]:
    """Grade and learning time as a JSON-safe document.

    ``minutes_total`` is the likely learning time and ``minutes_range`` what it may lie
    between; ``days`` counts to the plan's last day, rest days included; ``also`` are
    the indices of bars played the same way.
    """
    grade, time = found.estimate, plan.time
    return {
        "grade": grade.number,
        "level": grade.level,
        "score": round(grade.score, 3),
        "model": grade.model,
        "evidence": [str(told) for told in found.evidence],
        "minutes_total": round(time.minutes),
        "minutes_range": [round(time.low), round(time.high)],
        "minutes_a_day": plan.minutes_a_day,
        "days": plan.last_day,
        "student": time.student,
        "hardest_bars": [
            {
                "index": bar.bar,
                "number": bar.number,
                "score": round(bar.score, 2),
                "reasons": [str(f.sentence) for f in bar.demands],
                "also": list(bar.also),
            }
            for bar in found.hardest
        ],
        "cautions": [str(caution) for caution in plan.cautions],
    }
