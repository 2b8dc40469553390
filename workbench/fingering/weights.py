"""The declared cost: its terms, their sentences and their weights.

Weights are whole thousandths, so that sums are exact and two solvers can be
held to the same optimum to the last digit.
"""

from __future__ import annotations

import json
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Any

from workbench.fingering.habits import is_habit
from workbench.fingering.types import Settings
from workbench.language.message import mark

RESOURCES = Path(__file__).resolve().parents[2] / "resources"
MOST = 12_000  # thousandths that a weight may grow to
COMMON = mark("Common to all editions")  # where no school of fingering is chosen
RIGHT_TERMS = (
    "repeat",
    "bass",
    "thumb_up",
    "style",
    "awkward",
    "region",
    "crossing",
    "wander",
    "spread",
    "home",
    "lead",
    "strum",
)


@lru_cache(maxsize=1)
def _file() -> dict[str, Any]:
    path = RESOURCES / "weights" / "fingering.json"
    data: dict[str, Any] = json.loads(path.read_text(encoding="utf-8"))
    return data


@dataclass(frozen=True)
class Weights:
    """Weight of every term in thousandths, by name; ``left`` holds habits too where a hand's own
    were learned."""

    left: dict[str, int]
    right: dict[str, int]


def sentences(term: str) -> tuple[str, str]:
    """What a teacher would say of a term, and of having less of it, in English."""
    data = _file()
    side = data["left"] if term in data["left"] else data["right"]
    return str(side[term]["sentence"]), str(side[term]["less"])


def least(term: str) -> int:
    """What no fit lets the weight of a left-hand term or habit fall below, in thousandths."""
    return 0 if is_habit(term) else int(_file()["left"][term]["least"])


def most(term: str) -> int:
    """What no fit lets the weight of a left-hand term or habit grow beyond, in thousandths."""
    return MOST if is_habit(term) else int(_file()["left"][term].get("most", MOST))


def schools() -> dict[str, tuple[str, str]]:
    """Schools of fingering by id: what they do, in a few words and in a sentence, in English."""
    return {k: (str(r["title"]), str(r["does"])) for k, r in _file()["schools"].items()}


def is_small(scale_mm: float) -> bool:
    """Whether an instrument of this scale length has the weights of small instruments."""
    return scale_mm < float(_file()["small"]["below_mm"])


def alone_for(scale_mm: float) -> dict[str, int]:
    """Weights of holding for a chord that stands alone, as charts finger it: the terms are
    those of pieces, but a chord to be strummed is held for its own sake."""
    data = _file()
    name = "alone, ukulele" if is_small(scale_mm) else "alone, guitar"
    return {t: int(w) for t, w in data[name]["weights"].items()}


def weights_for(settings: Settings, scale_mm: float = 650.0) -> Weights:
    """The weights in force: the file's, those of a small instrument or of a school of
    fingering where they differ, the teacher's own, then shifted by the student's level and
    the hand setting. ``scale_mm`` is the instrument's scale length."""
    data = _file()
    left = {str(t): int(row["weight"]) for t, row in data["left"].items()}
    right = {t: int(data["right"][t]["weight"]) for t in RIGHT_TERMS}
    left.update(data["schools"].get(settings.school, {"weights": {}})["weights"])
    if is_small(scale_mm):
        left.update(data["small"]["weights"])
    for term, weight in settings.weights:
        if term in left:
            left[term] = weight
        elif term in right:
            right[term] = weight
        elif is_habit(term):
            left[term] = weight
    for term, factor in data["levels"].get(settings.level, {}).items():
        left[term] = round(left[term] * factor)
    if settings.relaxed_hand:
        for term, weight in data["relaxed_hand"].items():
            left[term] = max(left[term], int(weight))
    if settings.campanella:
        left.update(data["campanella"])
    return Weights(left, right)
