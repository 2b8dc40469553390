"""The declared cost of an arrangement: its terms, their sentences and their weights."""

from __future__ import annotations

import json
from dataclasses import dataclass
from functools import lru_cache
from typing import Any, Literal

from workbench.fingering.weights import RESOURCES
from workbench.language.message import mark
from workbench.music.errors import BadInput

Strict = Literal["faithful", "playable", "easy", "sparse"]
STRICT: tuple[Strict, ...] = (mark("faithful"), mark("playable"), mark("easy"), mark("sparse"))
TOP_FRET = 12  # highest fret unless another is asked for
EASY_FRET = 7  # above it a hand is out of the easy positions (common practice, no source)
FIRST_POSITION = 4  # last fret of the first position
SHIFT_MOST = 600  # a change of position costs no more than this, however far
CUT_MOST = 3  # quarter notes: what is lost beyond them is not counted


@dataclass(frozen=True)
class Wishes:
    """The teacher's settings of an arrangement: no fret above ``top_fret``; ``strict`` is
    one of ``STRICT``, from keeping what can be kept to leaving out what makes it hard and on
    to the tune with a bass where it asks no more than a finger.
    ``tune_part`` and ``bass_part`` are the numbers of the parts that are tune and bass, 0
    where they are heard from the notes."""

    top_fret: int = TOP_FRET
    strict: Strict = "playable"
    tune_part: int = 0
    bass_part: int = 0

    def __post_init__(self) -> None:
        if self.strict not in STRICT:
            raise BadInput(
                "'{word}' is no way to arrange; choose one of {known}.",
                word=self.strict,
                known=", ".join(STRICT),
            )
        if min(self.tune_part, self.bass_part) < 0:
            raise BadInput("Parts count from 1, the top one; choose another for tune or bass.")
        if self.tune_part and self.tune_part == self.bass_part:
            raise BadInput(
                "Part {part} cannot be tune and bass at once; choose another for one of them.",
                part=self.tune_part,
            )
        if not 1 <= self.top_fret <= 24:
            raise BadInput("Highest fret {fret}: choose a fret from 1 to 24.", fret=self.top_fret)


@lru_cache(maxsize=1)
def _file() -> dict[str, Any]:
    path = RESOURCES / "weights" / "arranging.json"
    data: dict[str, Any] = json.loads(path.read_text(encoding="utf-8"))
    return data


def terms() -> tuple[str, ...]:
    """The names of all terms."""
    return tuple(_file()["terms"])


@lru_cache(maxsize=8)
def weights(strict: Strict) -> dict[str, int]:
    """Weight of every term in thousandths under a strictness."""
    data = _file()
    factor = data["strictness"][strict]
    return {t: round(row["weight"] * factor.get(t, 1)) for t, row in data["terms"].items()}
