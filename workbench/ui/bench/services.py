"""What the window asks of the layers below. Each is loaded when first used, so that
the window is on the screen before the heavy libraries are."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from pathlib import Path
from typing import Protocol

from workbench.fingering.types import Alternative, Fingering, Pin
from workbench.instrument.model import Hand, Instrument
from workbench.teaching.lessons.lesson import Lesson

Done = Callable[[int, int], None]  # done, of all


class LessonSolver(Protocol):
    """What fingers one piece for one hand, again and again; tells ``progress`` how far it is."""

    progress: Done | None

    def solution(self) -> Fingering: ...

    def with_pins(self, pins: tuple[Pin, ...]) -> Fingering: ...

    def alternatives(self, bar_index: int, count: int) -> tuple[Alternative, ...]: ...

    def right_alternatives(self, bar_index: int, count: int) -> tuple[Alternative, ...]: ...

    def why_not(self, bar: int, pins: Iterable[Pin]) -> Alternative: ...


def _solver(
    lesson: Lesson, instrument: Instrument, hand: Hand, progress: Done | None = None
) -> LessonSolver:
    from workbench.fingering.engine import Solver as Engine

    return Engine(
        lesson.piece,
        instrument,
        hand,
        settings=lesson.settings,
        pins=lesson.pins,
        progress=progress,
    )


def expect_a_score() -> None:
    """Make ready for a score that the teacher is about to choose."""
    from workbench.music.reading.apart import warm

    warm()


def engraving_in_this_thread() -> None:
    """Make Verovio find its music fonts: it keeps their place for each thread alone,
    and sets it only in the one that loads it first."""
    import verovio

    verovio.setDefaultResourcePath(str(Path(verovio.__file__).parent / "data"))


def _demo() -> tuple[Lesson, ...]:
    from workbench.teaching.lessons.demo import demo_lessons

    return demo_lessons()


@dataclass(frozen=True)
class Services:
    """The functions the window works with."""

    solver: Callable[..., LessonSolver] = _solver  # lesson, instrument, hand, progress
    demo: Callable[[], tuple[Lesson, ...]] = _demo
