"""The table of demands: how large each measured thing typically is at each grade."""

from __future__ import annotations

import json
from dataclasses import dataclass
from functools import cache
from itertools import pairwise
from pathlib import Path

FOLDER = Path(__file__).resolve().parents[3] / "resources" / "techniques"
TOP = 9.0  # a demand counts at most one grade beyond 8


@dataclass(frozen=True)
class Demand:
    """One thing a piece may ask. ``typical`` holds the amount met at grades 0 to 8,
    rising; ``local`` demands can be judged in a single bar."""

    id: str
    name: str
    unit: str
    weight: float
    typical: tuple[float, ...]
    local: bool

    def level(self, value: float) -> float:
        """The grade at which ``value`` is typical, 0 to 9, rising with the value."""
        rows = self.typical
        if value <= rows[0]:
            return 0.0
        for grade in range(1, len(rows)):
            if value <= rows[grade]:
                return grade - 1 + (value - rows[grade - 1]) / (rows[grade] - rows[grade - 1])
        step = rows[-1] - rows[-2]
        return min(TOP, len(rows) - 1 + (value - rows[-1]) / step)


@dataclass(frozen=True)
class DemandTable:
    """All demands, what share of the judgement falls to the hardest ones, how many
    those are, how many grades beyond that of the length they count, what syllabuses ask
    in words, and where it all comes from."""

    demands: tuple[Demand, ...]
    share_of_hardest: float
    hardest: int
    beyond_length: float
    syllabus: tuple[str, ...]
    about: str

    def demand(self, name: str) -> Demand:
        """The demand of that id; KeyError if there is none."""
        for d in self.demands:
            if d.id == name:
                return d
        raise KeyError(name)


def read_table(text: str) -> DemandTable:
    """The table from its JSON text.

    Raises ValueError where a row does not rise or a weight is negative, since
    the grade would then fall where a demand grows.
    """
    data = json.loads(text)
    demands = []
    for row in data["demands"]:
        typical = tuple(float(x) for x in row["typical"])
        if len(typical) != 9 or any(a >= b for a, b in pairwise(typical)):
            raise ValueError(f"demand {row['id']}: nine rising amounts are needed")
        if row["weight"] < 0:
            raise ValueError(f"demand {row['id']}: the weight must not be negative")
        demands.append(
            Demand(
                row["id"],
                row["name"],
                row["unit"],
                float(row["weight"]),
                typical,
                bool(row.get("local", False)),
            )
        )
    syllabus = tuple(r["asks"] for r in sorted(data["syllabus"], key=lambda r: r["grade"]))
    return DemandTable(
        tuple(demands),
        float(data["share_of_hardest"]),
        int(data["hardest"]),
        float(data["beyond_length"]),
        syllabus,
        data["about"],
    )


@cache
def table() -> DemandTable:
    """The table the program ships with."""
    return read_table((FOLDER / "grading.json").read_text(encoding="utf-8"))
