"""A lesson: one piece, prepared for one student or group on one instrument."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from typing import Literal

from workbench.arranging.changes import Change
from workbench.arranging.weights import Strict, Wishes
from workbench.fingering.types import Pin, Settings
from workbench.language.fact import Fact
from workbench.language.message import mark
from workbench.music.model import Bar, Piece

NoteKind = Literal["left hand", "right hand", "sound", "rhythm", "form", "listening", "caution"]
NOTE_KINDS: tuple[NoteKind, ...] = (
    mark("left hand"),
    mark("right hand"),
    mark("sound"),
    mark("rhythm"),
    mark("form"),
    mark("listening"),
    mark("caution"),
)
#: What a note can be about, from the smallest to the largest.
SCOPES = (mark("one note"), mark("one bar"), mark("several bars"), mark("a section"))
#: The thirds of a grade.
GradeThird = Literal["early", "middle", "late"]
NoThird = Literal[""]
#: Places of the script that are no bar, for ``script_edits``.
OPENING, CLOSING = -1, -2


#: A note of a fingering that was not taken: its id, string, fret and left finger.
RejectedNote = tuple[str, int, int, int]


@dataclass(frozen=True)
class BarNote:
    """A teaching note.

    Covers written bars ``first_bar`` to ``last_bar`` (indices, inclusive);
    ``note`` is a note id where it is about one note; ``section`` a section
    letter where it is about a whole section. ``text`` may use *emphasis* and
    **strong**. ``rejected`` is a rejected fingering as (note id, string,
    fret, finger) rows and ``why`` the reason it was not taken; ``grip`` a
    grip picture as frets from the highest-numbered string to string 1 (None =
    not played); ``link`` the id of another lesson that teaches the move.
    """

    id: str
    kind: NoteKind
    text: str
    first_bar: int
    last_bar: int
    note: str | None = None
    section: str | None = None
    rejected: tuple[RejectedNote, ...] = ()
    grip: tuple[int | None, ...] | None = None
    link: str | None = None
    why: str = ""

    @property
    def scope(self) -> str:
        """What it is about, one of ``SCOPES``."""
        if self.note is not None:
            return SCOPES[0]
        if self.section is not None:
            return SCOPES[3]
        return SCOPES[1] if self.first_bar == self.last_bar else SCOPES[2]


@dataclass(frozen=True)
class Lesson:
    """Everything the teacher decided about a piece for a student.

    The music is ``piece`` as arranged (already transposed and placed); what
    arranging altered is in ``arranged``, what of the printed fingering is left out in
    ``changes`` (and the sentences of an older lesson, as they were). ``top_fret``,
    ``strict``, ``tune_part`` and ``bass_part`` are what it was arranged under (``wishes``),
    ``wanted`` the teacher's word on single notes of the source: (note id, octaves up or
    "gone"). The fingering is not stored as truth:
    it follows from piece, instrument, hand, settings and ``pins``; a solved
    copy is cached by the store. ``grade`` (0-8) and ``grade_level``
    (early, middle, late) and ``minutes_a_day``/``days`` are the teacher's
    word, None where not given.
    """

    id: str
    title: str
    piece: Piece
    instrument: str  # id as on the command line, e.g. "ukulele" or "custom:..."
    capo: int = 0
    hand: str = "medium"
    student: str = ""
    key: str = ""
    transposition: int = 0
    settings: Settings = field(default_factory=Settings)
    pins: tuple[Pin, ...] = ()
    notes: tuple[BarNote, ...] = ()
    changes: tuple[Fact, ...] = ()
    sections: tuple[tuple[int, str], ...] = ()  # (first written bar, letter), teacher's
    grade: int | None = None
    grade_level: GradeThird | NoThird = ""
    practice_minutes: int | None = None  # whole learning time
    minutes_a_day: int = 20
    tempo_percent: int = 100
    techniques: tuple[str, ...] = ()
    script_edits: tuple[tuple[int, str], ...] = ()  # place in playing order, text
    plan_done: tuple[str, ...] = ()  # ticked plan items
    arranged: tuple[Change, ...] = ()
    top_fret: int = 12
    strict: Strict = "playable"
    wanted: tuple[tuple[str, str], ...] = ()
    corrected: bool = False  # the music was changed here: the score it came from is older
    tune_part: int = 0
    bass_part: int = 0

    @property
    def wishes(self) -> Wishes:
        """What the piece was arranged under."""
        return Wishes(self.top_fret, self.strict, self.tune_part, self.bass_part)


def sectioned(lesson: Lesson) -> Piece:
    """The piece with the teacher's sections marked in it; as it is where there are none."""
    if not lesson.sections:
        return lesson.piece
    starts = dict(lesson.sections)

    def marked(bar: Bar) -> Bar:
        return replace(bar, section=starts.get(bar.index, ""))

    return replace(lesson.piece, bars=tuple(marked(bar) for bar in lesson.piece.bars))
