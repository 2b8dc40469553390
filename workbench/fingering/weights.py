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

from workbench.fingering.types import Settings

RESOURCES = Path(__file__).resolve().parents[2] / "resources"
LEFT_TERMS = (
    "place",
    "weak",
    "stretch",
    "square",
    "cramped",
    "crossed",
    "barre",
    "hinge",
    "high",
    "hop",
    "guide",
    "shift",
    "free_shift",
    "cut",
    "blocked",
    "relaxed",
    "unsteady",
    "far",
    "leap",
    "position",
)
RIGHT_TERMS = (
    "repeat",
    "bass",
    "thumb_up",
    "style",
    "awkward",
    "wander",
    "spread",
    "home",
    "lead",
)


@lru_cache(maxsize=1)
def _file() -> dict[str, Any]:
    path = RESOURCES / "weights" / "fingering.json"
    data: dict[str, Any] = json.loads(path.read_text(encoding="utf-8"))
    return data


@dataclass(frozen=True)
class Weights:
    """Weight of every term in thousandths, by name."""

    left: dict[str, int]
    right: dict[str, int]


def sentences(term: str) -> tuple[str, str]:
    """What a teacher would say of a term, and of having less of it, in English."""
    data = _file()
    side = data["left"] if term in data["left"] else data["right"]
    return str(side[term]["sentence"]), str(side[term]["less"])


def weights_for(settings: Settings) -> Weights:
    """The weights in force: the file's or the teacher's own, shifted by the student's
    level and the hand setting."""
    data = _file()
    left = {t: int(data["left"][t]["weight"]) for t in LEFT_TERMS}
    right = {t: int(data["right"][t]["weight"]) for t in RIGHT_TERMS}
    for term, weight in settings.weights:
        if term in left:
            left[term] = weight
        elif term in right:
            right[term] = weight
    for term, factor in data["levels"].get(settings.level, {}).items():
        left[term] = round(left[term] * factor)
    if settings.relaxed_hand:
        for term, weight in data["relaxed_hand"].items():
            left[term] = max(left[term], int(weight))
    return Weights(left, right)
