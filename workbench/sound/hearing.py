"""What is asked to be heard, and what is heard now: values alone, nothing that makes a sound."""

from __future__ import annotations

from dataclasses import dataclass, field

from workbench.fingering.types import Fingering
from workbench.instrument.model import Instrument
from workbench.language.speech import mark
from workbench.music.model import Piece
from workbench.sound.sounding import Sounding

SLOWEST, FASTEST = 25, 150  # percent of the written tempo

#: Who can be heard alone or louder: voices by number, and what the right hand's thumb
#: and fingers pluck.
WHO = (
    mark("all notes"),
    mark("the upper voice"),
    mark("the lower voices"),
    mark("the thumb"),
    mark("the fingers"),
)
QUIET = 0.28  # the others', where one is louder


@dataclass(frozen=True)
class Trainer:
    """Climb from ``start`` by ``step`` percent after every ``rounds`` rounds, to ``top``."""

    start: float
    step: float = 5.0
    rounds: int = 2
    top: float = 100.0

    def tempo(self, number: int) -> float:
        """The tempo of a round, counted from 0."""
        return min(self.top, self.start + self.step * (number // max(1, self.rounds)))


@dataclass(frozen=True)
class Manner:
    """How it is played. ``tempo`` in percent of the written one; ``who`` one of ``WHO``,
    heard ``alone`` or else louder than the rest."""

    tempo: float = 100.0
    loop: bool = False
    count_in: bool = False
    metronome: bool = False
    who: str = WHO[0]
    alone: bool = True
    trainer: Trainer | None = None

    def gain(self, s: Sounding) -> float:
        """The share of its loudness with which a note is heard."""
        chosen = {
            WHO[0]: True,
            WHO[1]: s.voice == 1,
            WHO[2]: s.voice != 1,
            WHO[3]: s.finger == "p",
            WHO[4]: s.finger != "p",
        }[self.who]
        return 1.0 if chosen else 0.0 if self.alone else QUIET


@dataclass(frozen=True)
class HeardVersion:
    """What the same bars are heard as: a piece with a fingering, or as written without."""

    piece: Piece
    fingering: Fingering | None = None
    instrument: Instrument | None = None


@dataclass(frozen=True)
class Heard:
    """What is heard now: position in playing order, written bar, note ids, round and tempo.

    ``position`` is -1 while counting in or where nothing plays; ``missed`` are notes that
    are cut and still written; ``version`` 1 is the one compared with."""

    playing: bool
    position: int = -1
    bar: int = -1
    notes: frozenset[str] = frozenset()
    round: int = 0
    tempo: float = 0.0
    counting: bool = False
    missed: frozenset[str] = frozenset()
    version: int = 0
    share: float = field(default=0.0, compare=False)  # of the bar that is over


SILENCE = Heard(False)
