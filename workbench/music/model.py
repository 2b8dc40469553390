"""The piece of music: frozen values with exact fractions.

Times are quarter lengths (a crotchet is 1) held as ``Fraction``. A note's
``onset`` counts from the start of its bar. Ties are merged: a note that is
tied over a bar line is one note whose duration runs past its bar; whoever
engraves it splits it again.
"""

from __future__ import annotations

from dataclasses import KW_ONLY, dataclass, field, replace
from fractions import Fraction
from functools import cached_property

from workbench.language.fact import Fact

STEPS = "CDEFGAB"
STEP_SEMITONES = {"C": 0, "D": 2, "E": 4, "F": 5, "G": 7, "A": 9, "B": 11}

Q0 = Fraction(0)
WEDGES = ("crescendo", "diminuendo")  # as MusicXML calls them
WEDGE_END = "stop"


@dataclass(frozen=True, order=True)
class Pitch:
    """A spelled pitch. ``alter`` in semitones (+1 sharp), ``octave`` in
    scientific numbering: C4 is middle C, MIDI 60 (ISO 16: A4 = 440 Hz = MIDI 69)."""

    step: str
    alter: int
    octave: int

    @property
    def midi(self) -> int:
        """MIDI note number."""
        return 12 * (self.octave + 1) + STEP_SEMITONES[self.step] + self.alter

    @property
    def name(self) -> str:
        """For example ``F#4``, ``Bb3``."""
        sign = "#" * self.alter if self.alter > 0 else "b" * -self.alter
        return f"{self.step}{sign}{self.octave}"


@dataclass(frozen=True)
class Key:
    """A key: ``fifths`` sharps (negative: flats) as in MusicXML, and the mode."""

    fifths: int
    mode: str = "major"  # "major" or "minor"

    @property
    def name(self) -> str:
        """For example ``F major``, ``D minor``, ``Bb major``."""
        line = ["F", "C", "G", "D", "A", "E", "B"]
        place = self.fifths + (1 if self.mode == "major" else 4)
        step = line[place % 7]
        sharps = place // 7
        return f"{step}{'#' * sharps if sharps > 0 else 'b' * -sharps} {self.mode}"


@dataclass(frozen=True)
class Note:
    """One sounding note, ties merged.

    ``id`` is unique in the piece and an XML NCName (it becomes the engraved
    element's id). ``voice`` 1 is the top voice of the part. ``tuplet`` is
    (actual, normal), (3, 2) for a triplet, or None. A grace note has
    ``grace=True`` and duration 0; ``onset`` is that of the note it leads to.
    """

    id: str
    onset: Fraction
    duration: Fraction
    pitch: Pitch
    voice: int = 1
    part: int = 1
    grace: bool = False
    tuplet: tuple[int, int] | None = None
    slur_start: bool = False
    slur_stop: bool = False
    articulations: tuple[str, ...] = ()  # staccato, accent, fermata, harmonic ...

    @property
    def midi(self) -> int:
        return self.pitch.midi


@dataclass(frozen=True)
class ChordName:
    """A chord symbol as printed, at ``onset`` quarter lengths into the bar."""

    onset: Fraction
    text: str


@dataclass(frozen=True)
class Dynamic:
    """A dynamic mark such as ``pp`` or ``f``, at ``onset`` quarter lengths into the bar; or
    where a wedge begins (one of ``WEDGES``) or has come to its end (``WEDGE_END``)."""

    onset: Fraction
    text: str


@dataclass(frozen=True, kw_only=True)
class Bar:
    """A written bar.

    ``index`` counts written bars from 0; ``number`` is the printed number
    ("0" for a pickup, "12a" where the source has it). ``length`` is the real
    length: shorter than the time signature says for a pickup bar.
    ``endings`` are the passes in which the bar is played ((1,) first ending,
    (2,) second), empty outside endings. ``jump`` is one of "", "D.C.",
    "D.C. al Fine", "D.C. al Coda", "D.S.", "D.S. al Fine", "D.S. al Coda".
    ``times`` is how often a repeat ending here is played in all.
    """

    index: int
    number: str
    time_signature: tuple[int, int]
    length: Fraction
    notes: tuple[Note, ...] = ()
    key: Key = Key(0)
    tempo: float | None = None  # quarter notes a minute from this bar on
    pickup: bool = False
    repeat_start: bool = False
    repeat_end: bool = False
    times: int = 2
    endings: tuple[int, ...] = ()
    segno: bool = False
    coda: bool = False  # the Coda section starts here
    to_coda: bool = False  # leave for the Coda after this bar, after a jump
    fine: bool = False
    jump: str = ""
    section: str = ""  # rehearsal mark: A, B, ...
    chords: tuple[ChordName, ...] = ()
    double_bar: bool = False  # a double bar line (or a final one) ends the bar
    dynamics: tuple[Dynamic, ...] = ()

    def without_form(self) -> Bar:
        """The bar with no repeat, ending, jump or sign: as part of an excerpt."""
        return replace(
            self,
            repeat_start=False,
            repeat_end=False,
            endings=(),
            segno=False,
            coda=False,
            to_coda=False,
            fine=False,
            jump="",
        )


@dataclass(frozen=True)
class PartInfo:
    """A part of the source score: ``number`` from 1, top part first."""

    number: int
    name: str
    notes: int
    staves: int = 1
    lowest: int | None = None  # MIDI
    highest: int | None = None


@dataclass(frozen=True)
class NoteFingers:
    """Where and with which fingers a note is played, None for what is not said: as the
    source prints it, as the teacher wants it, as the engine found it.

    ``string`` 1 is nearest the floor; ``left`` 0 (open) to 4; ``right`` one of p i m a.
    """

    _: KW_ONLY
    string: int | None = None
    fret: int | None = None
    left: int | None = None
    right: str | None = None


@dataclass(frozen=True)
class WrittenFingers(NoteFingers):
    """The fingering that the source prints at a note, None where it prints nothing.

    ``midi`` is the pitch as printed: a finger without its string speaks of that pitch alone.
    ``doubtful``: nothing in the score tells whether its part is a plucked instrument's.
    """

    note: str
    midi: int | None = None
    doubtful: bool = False


@dataclass(frozen=True)
class Piece:
    """A piece as read: bars in written order, and what the source says of it."""

    title: str
    bars: tuple[Bar, ...]
    composer: str = ""
    arranger: str = ""
    key: Key = Key(0)
    tempo: float = 90.0  # quarter notes a minute
    parts: tuple[PartInfo, ...] = ()
    tunes: tuple[str, ...] = ()  # titles in a book of several tunes
    warnings: tuple[Fact, ...] = field(default=())  # words: ``telling.warnings``
    written: tuple[WrittenFingers, ...] = ()

    @cached_property
    def starts(self) -> tuple[Fraction, ...]:
        """Start of every written bar in quarter lengths from the beginning."""
        out, at = [], Q0
        for bar in self.bars:
            out.append(at)
            at += bar.length
        return tuple(out)

    @property
    def notes(self) -> tuple[Note, ...]:
        """All notes, bar by bar."""
        return tuple(n for bar in self.bars for n in bar.notes)

    @cached_property
    def bar_of(self) -> dict[str, int]:
        """Note id to the index of its bar."""
        return {n.id: bar.index for bar in self.bars for n in bar.notes}
