"""What the shelf gives out about its content: plain frozen values.

All times are UTC and know it.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import datetime
from typing import Any, Literal

from workbench.fingering.types import FingeredNote
from workbench.language.fact import Fact
from workbench.teaching.lessons.lesson import GradeThird, NoThird

ChoiceKind = Literal["pin", "alternative"]


@dataclass(frozen=True)
class PieceRow:
    """A piece on the shelf. ``source`` is the file name it was read from,
    ``lessons`` how many lessons (not deleted) are made of it."""

    id: str
    title: str
    composer: str
    key: str
    bars: int
    source: str
    created: datetime
    lessons: int
    fingerprint: str


@dataclass(frozen=True)
class LessonRow:
    """A lesson in a list. ``used`` is when it was last looked at, ``updated``
    when it was last changed; ``deleted`` is None unless it lies in the bin."""

    id: str
    title: str
    composer: str
    student: str
    instrument: str
    key: str
    grade: int | None
    grade_level: GradeThird | NoThird
    techniques: tuple[str, ...]
    piece_id: str
    created: datetime
    updated: datetime
    used: datetime
    archived: bool
    deleted: datetime | None


@dataclass(frozen=True)
class View:
    """Where the teacher left off in a lesson: never a step of its undo history.

    ``selected_bar`` is a position in playing order, ``note`` the selected
    note's id, ``zoom`` 1 for 100 %; ``more`` holds whatever else a face of
    the program wants to find again (JSON values).
    """

    selected_bar: int = 0
    note: str | None = None
    zoom: float = 1.0
    more: dict[str, Any] = field(default_factory=dict)


@dataclass(frozen=True)
class Step:
    """One state in a lesson's history: ``label`` says what was done to reach
    it, ``bar`` the position in playing order where it was done."""

    place: int
    label: str
    made: datetime
    bar: int


@dataclass(frozen=True)
class History:
    """A lesson's states, oldest first; ``at`` is the index of the present one."""

    steps: tuple[Step, ...]
    at: int

    @property
    def undo_label(self) -> str | None:
        """What undo would take back; None where there is nothing to undo."""
        return self.steps[self.at].label if self.at > 0 else None

    @property
    def redo_label(self) -> str | None:
        """What redo would do again; None where there is nothing to redo."""
        return self.steps[self.at + 1].label if self.at + 1 < len(self.steps) else None


@dataclass(frozen=True)
class Version:
    """A named state of a lesson that undo and redo leave alone."""

    id: int
    lesson_id: str
    name: str
    made: datetime


@dataclass(frozen=True)
class Group:
    """A student group and who is in it."""

    name: str
    students: tuple[str, ...]


@dataclass(frozen=True)
class KeptChoice:
    """One decision of the teacher, kept to learn from.

    ``kind`` is "pin" or "alternative". ``chosen`` and ``rejected`` are the
    bar's notes under either fingering; ``chosen_terms`` and
    ``rejected_terms`` the declared cost terms of both, in thousandths.
    ``active`` is False where the teacher has set the choice aside.
    """

    id: int
    made: datetime
    kind: ChoiceKind
    lesson_id: str | None
    bar: int
    instrument: str
    hand: str
    level: str
    chosen: tuple[FingeredNote, ...]
    rejected: tuple[FingeredNote, ...]
    chosen_terms: dict[str, int]
    rejected_terms: dict[str, int]
    reason: Fact | None = None
    active: bool = True
