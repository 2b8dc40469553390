"""What the fingering engine takes and gives. Plain frozen values."""

from __future__ import annotations

from dataclasses import dataclass, field
from fractions import Fraction
from typing import Literal

from workbench.language.fact import Fact
from workbench.language.message import mark
from workbench.music.model import NoteFingers

#: How much a student can do already; what eases a fingering goes by it.
Level = Literal["beginner", "easy", "middle", "advanced"]
LEVELS: dict[Level, str] = {
    "beginner": mark("beginner"),
    "easy": mark("easy"),
    "middle": mark("middle"),
    "advanced": mark("advanced"),
}
#: Styles of the right hand, and the fingers that take turns in each.
Style = Literal["i-m", "m-a", "a-m-i", "thumb"]
STYLES: dict[Style, str] = {"i-m": "im", "m-a": "ma", "a-m-i": "ima", "thumb": "im"}


#: Why a note is cut: what its finger or string is needed for; "" where it is held.
CutKind = Literal["", "hop", "string", "barre", "shift", "stretch"]
#: A left finger's way to its note.
FingerMove = Literal["", "open", "place", "planted", "guide", "hop", "shift"]
StrokeKind = Literal["free", "rest"]


@dataclass(frozen=True)
class Pin(NoteFingers):
    """The teacher's word on one note. Fields left at None stay free.

    ``apart``: a note that shares its sound with another voice is to lie on a string of
    its own (a unison). The engine holds pins whatever they cost.
    """

    note: str
    apart: bool = False


@dataclass(frozen=True)
class FingeredNote(NoteFingers):
    """One note with both hands' fingers.

    ``string``/``fret``/``left`` are None where the note cannot be played
    (``impossible`` tells why). ``held`` is the quarter length really held;
    ``cut_reason`` tells why where that is less than ``duration``, else None. Reasons
    are facts; ``telling.words`` makes sentences of them. ``shares`` is the id of the
    note whose sound this one is (two stems, one sound), else None. ``slurred``: the left
    hand sounds it by a slur, and ``right`` is None. ``rings``: the quarter length it
    rings in all, where it goes on beyond what is written (campanella), else None.
    ``pitch`` is the name as spelled in the score, such as "Bb4".
    """

    id: str
    bar: int  # index of the written bar
    onset: Fraction
    duration: Fraction
    midi: int
    held: Fraction
    cut_reason: Fact | None = None
    cut_kind: CutKind = ""
    move: FingerMove = ""
    stroke: StrokeKind = "free"
    pinned: bool = False
    impossible: Fact | None = None
    pitch: str = ""
    shares: str | None = None
    slurred: bool = False
    rings: Fraction | None = None


@dataclass(frozen=True)
class Barre:
    """A finger laid over neighbouring strings. ``strings`` from lower to higher number."""

    onset: Fraction
    fret: int
    strings: tuple[int, ...]
    finger: int = 1


@dataclass(frozen=True)
class FingeredBar:
    """``effort`` is the bar's share of the cost; ``planted`` lists (onset,
    finger, string, fret) of fingers that may stay down though no note asks it."""

    index: int
    number: str
    notes: tuple[FingeredNote, ...]
    barres: tuple[Barre, ...] = ()
    effort: int = 0
    reach_mm: float = 0.0
    planted: tuple[tuple[Fraction, int, int, int], ...] = ()
    remarks: tuple[Fact, ...] = ()
    impossible: Fact | None = None


@dataclass(frozen=True)
class Alternative:
    """Another fingering of one bar, solved inside its surroundings.

    ``cost`` is the whole piece's cost with it, in the same unit as the
    solution's; ``notes`` are the bar's notes under it, ``bar`` the bar with all that is told of it;
    ``right`` is what the bar costs the right hand more than now, in the same unit.
    """

    cost: int
    reason: Fact
    notes: tuple[FingeredNote, ...]
    bar: FingeredBar | None = None
    right: int = 0


@dataclass(frozen=True)
class JoinCut:
    """A note cut where the playing order jumps, from one bar's end to another's start."""

    note: str
    from_bar: int
    to_bar: int
    reason: Fact


@dataclass(frozen=True)
class Audit:
    """Legato in figures: notes, how many are cut, share of written length held (0-1)."""

    notes: int
    cut: int
    held_fraction: float
    joins: tuple[JoinCut, ...] = ()


@dataclass(frozen=True)
class Fingering:
    """A fingered piece. ``cost`` is the sum of the left hand's declared terms
    (thousandths of a unit); ``optimal`` is True when it is proved least among all
    fingerings that hold the pins, give bars of the same music the grips they share here
    and take the other strings that the right hand gained by (``both.py``). ``bound`` is a
    proved lower bound for the left hand of any fingering that holds the pins. The right
    hand is the least-cost one for these strings; its cost stands in ``terms["right"]``."""

    cost: int
    optimal: bool
    bars: tuple[FingeredBar, ...]
    audit: Audit
    bound: int | None = None
    terms: dict[str, int] = field(default_factory=dict)

    def note(self, note_id: str) -> FingeredNote:
        """The fingered note of that id; KeyError if there is none."""
        for bar in self.bars:
            for n in bar.notes:
                if n.id == note_id:
                    return n
        raise KeyError(note_id)


@dataclass(frozen=True)
class Settings:
    """What shapes a solution besides the music.

    ``level``: one of ``LEVELS``. ``style``: of the right hand, one of ``STYLES``.
    ``relaxed_hand``: prefer fingers 1 and 3 to 1 and 2 on neighbouring frets.
    ``rest_strokes``: mark rest strokes in single-line melody where no string beside it rings.
    ``campanella``: on a re-entrant tuning, neighbouring notes of a scale go to different
    strings and ring on. ``weights``: overrides by term name, thousandths. ``school``: id of
    a school of fingering, "" for what all have in common.
    """

    level: Level = "middle"
    style: Style = "i-m"
    relaxed_hand: bool = False
    rest_strokes: bool = False
    weights: tuple[tuple[str, int], ...] = ()
    school: str = ""
    campanella: bool = False
