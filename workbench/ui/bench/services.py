"""What the window asks of the layers below. Each is loaded when first used, so that
the window is on the screen before the heavy libraries are."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Any, Protocol

from workbench.fingering.types import Alternative, Fingering, Pin
from workbench.instrument.model import Hand, Instrument
from workbench.instrument.table import hand as find_hand
from workbench.instrument.table import instrument as find_instrument
from workbench.music.model import Piece
from workbench.teaching.lessons.lesson import Lesson

if TYPE_CHECKING:
    from workbench.arranging.arrange import Arranged
    from workbench.arranging.keys import Candidate
    from workbench.handout.sheets.page import Extras


Done = Callable[[int, int], None]  # done, of all


class Solver(Protocol):
    """What fingers one piece for one hand, again and again; tells ``progress`` how far it is."""

    progress: Done | None

    def solution(self) -> Fingering: ...

    def with_pins(self, pins: tuple[Pin, ...]) -> Fingering: ...

    def alternatives(self, bar_index: int, count: int) -> tuple[Alternative, ...]: ...

    def right_alternatives(self, bar_index: int, count: int) -> tuple[Alternative, ...]: ...

    def why_not(self, bar: int, pins: Iterable[Pin]) -> Alternative: ...


def _solver(
    lesson: Lesson, instrument: Instrument, hand: Hand, progress: Done | None = None
) -> Solver:
    from workbench.fingering.engine import Solver as Engine

    return Engine(
        lesson.piece,
        instrument,
        hand,
        settings=lesson.settings,
        pins=lesson.pins,
        progress=progress,
    )


def _read(path: str, **choice: Any) -> Piece:
    from workbench.music.reading.apart import read_apart

    return read_apart(Path(path), **choice)


def expect_a_score() -> None:
    """Make ready for a score that the teacher is about to choose."""
    from workbench.music.reading.apart import warm

    warm()


def _arrange(piece: Piece, instrument: Instrument, **choice: Any) -> Arranged:
    from workbench.arranging.arrange import arrange

    return arrange(piece, instrument, **choice)


def _candidates(
    piece: Piece, instrument: Instrument, hand: Hand, **choice: Any
) -> tuple[Candidate, ...]:
    from workbench.arranging.keys import by_key, candidate_keys

    growing = choice.pop("growing", None)
    told = (lambda found: growing(by_key(found))) if growing else None
    return by_key(candidate_keys(piece, instrument, hand, growing=told, **choice))


def engraving_in_this_thread() -> None:
    """Make Verovio find its music fonts: it keeps their place for each thread alone,
    and sets it only in the one that loads it first."""
    import verovio

    verovio.setDefaultResourcePath(str(Path(verovio.__file__).parent / "data"))


def _handout(
    lesson: Lesson,
    fingering: Fingering,
    path: str,
    options: dict[str, Any],
    extras: Extras | None = None,
) -> int:
    from workbench.handout.sheets.page import HandoutOptions, make_handout

    engraving_in_this_thread()
    return make_handout(lesson, fingering, Path(path), HandoutOptions(**options), extras)


def _demo() -> tuple[Lesson, ...]:
    from workbench.teaching.lessons.demo import demo_lessons

    return demo_lessons()


@dataclass(frozen=True)
class Services:
    """The functions the window works with."""

    solver: Callable[..., Solver] = _solver  # lesson, instrument, hand, progress
    read: Callable[..., Piece] = _read
    arrange: Callable[..., Arranged] = _arrange
    candidates: Callable[..., tuple[Candidate, ...]] = _candidates
    handout: Callable[..., int] = _handout  # lesson, fingering, path, options, extras
    demo: Callable[[], tuple[Lesson, ...]] = _demo


def playing_of(lesson: Lesson) -> tuple[Instrument, Hand]:
    """The lesson's instrument with its capo, and its hand."""
    return find_instrument(lesson.instrument, lesson.capo), find_hand(lesson.hand)
