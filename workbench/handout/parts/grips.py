"""The grips of a fingering: which are new, which are hard, which fingers stay down."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from workbench.fingering.shapes.chordname import COMMON, name_chord
from workbench.fingering.types import FingeredBar, FingeredNote, Fingering
from workbench.instrument.model import Instrument
from workbench.language.names import as_first_word, chord_words
from workbench.language.speech import say
from workbench.music.beats import beat_at, beat_figure
from workbench.music.model import Bar, Piece
from workbench.teaching.lessons.lesson import BarNote

MOST = 8
WIDE_SPAN = 3  # frets from the lowest to the highest finger; common practice, no source
MANY_FINGERS = 4


@dataclass(frozen=True)
class GripDiagram:
    """``frets`` and ``fingers`` by string, string 1 first; fret None is not played.

    ``barre`` is (fret, lowest string number, highest) or None. ``stays`` and
    ``slides`` tell by string which fingers were there before and which came along
    their string as guides; ``planted`` lists (finger, string, fret) of those that may
    stay down though nothing sounds there. ``hard`` says why the grip is hard, ""
    where it is not; ``note`` names the teaching notes that show it.
    """

    title: str
    where: str
    frets: tuple[int | None, ...]
    fingers: tuple[int, ...]
    barre: tuple[int, int, int] | None = None
    stays: tuple[bool, ...] = ()
    slides: tuple[bool, ...] = ()
    planted: tuple[tuple[int, int, int], ...] = ()
    hard: str = ""
    note: str = ""

    @property
    def fretted(self) -> int:
        return sum(1 for f in self.frets if f)

    @property
    def name(self) -> str:
        """Frets from the highest-numbered string, x not played: ``2-0-1-0``."""
        return "-".join("x" if f is None else str(f) for f in reversed(self.frets))

    def within(self, other: GripDiagram) -> bool:
        """True where ``other`` shows every finger of this grip."""
        return all(
            not f or (f == g and a == b)
            for f, g, a, b in zip(self.frets, other.frets, self.fingers, other.fingers, strict=True)
        )


def grips_of(
    piece: Piece,
    fingering: Fingering,
    instrument: Instrument,
    most: int = MOST,
    known: Collection[str] = (),
) -> tuple[GripDiagram, ...]:
    """The distinct grips of two or more fretted notes that are new or hard, in order of
    appearance; of many, the hardest.

    ``known`` names grips (as ``Grip.name``) that earlier lessons taught: of these only
    the hard ones are shown.
    """
    found: list[GripDiagram] = []
    bars = {b.index: b for b in piece.bars}
    for fingered in fingering.bars:
        bar = bars[fingered.index]
        for onset in sorted({n.onset for n in fingered.notes}):
            grip = _grip_at(fingered, onset, instrument, bar)
            if grip is not None and not any(grip.within(g) for g in found):
                found = [g for g in found if not g.within(grip)] + [grip]
    found = [g for g in found if g.hard or g.name not in known]
    if len(found) > most:
        ranked = sorted(range(len(found)), key=lambda k: (not found[k].hard, -found[k].fretted, k))[
            :most
        ]
        found = [found[k] for k in sorted(ranked)]
    return tuple(found)


def _grip_at(
    fingered: FingeredBar, onset: Fraction, instrument: Instrument, bar: Bar
) -> GripDiagram | None:
    strings = instrument.strings
    frets: list[int | None] = [None] * strings
    fingers, stays, slides = [0] * strings, [False] * strings, [False] * strings
    sounding: list[FingeredNote] = []
    for note in fingered.notes:
        if note.string is None or note.fret is None or not _rings(note, onset):
            continue
        place = note.string - 1
        frets[place], fingers[place] = note.fret, note.left or 0
        stays[place] = note.onset < onset or note.move == "planted"
        slides[place] = note.onset == onset and note.move == "guide"
        sounding.append(note)
    if sum(1 for f in frets if f) < 2:
        return None
    barre = next(
        ((b.fret, min(b.strings), max(b.strings)) for b in fingered.barres if b.onset == onset),
        None,
    )
    name = next((c.text for c in bar.chords if c.onset == onset and c.text), "")
    planted = tuple(
        (finger, string, fret)
        for when, finger, string, fret in fingered.planted
        if when == onset and frets[string - 1] is None and finger not in fingers
    )
    names = {n.midi % 12: n.pitch.rstrip("0123456789-") for n in sounding if n.pitch}
    title = _title(name, [n.midi for n in sounding], names)
    where = say(
        "bar {bar}, beat {beat}", bar=bar.number, beat=beat_figure(beat_at(bar, onset), " + ")
    )
    return GripDiagram(
        title or as_first_word(where),
        where if title else "",
        tuple(frets),
        tuple(fingers),
        barre,
        tuple(stays),
        tuple(slides),
        planted,
        _hard(frets, barre is not None),
    )


def _title(name: str, sounding: Sequence[int], names: Mapping[int, str] | None = None) -> str:
    """The chord as it is written over the music, else as it sounds, spelled as the notes
    are (``names`` by pitch class); "" where it has no name that a player knows."""
    if name:
        return chord_words(name)
    found = name_chord(sounding, names=names)
    known = found.symbol in COMMON and found.inversion is not None and len(found.notes) > 2
    return chord_words(found.name) if known else ""


def _rings(note: FingeredNote, onset: Fraction) -> bool:
    held = note.held if note.held > 0 else note.duration
    return note.onset <= onset < note.onset + held


def _hard(frets: Sequence[int | None], barre: bool) -> str:
    """Why a grip is hard, in a word."""
    fretted = [f for f in frets if f]
    if barre:
        return say("barre", sense="grip")
    if max(fretted) - min(fretted) >= WIDE_SPAN:
        return say("stretch", sense="grip")
    return say("four fingers") if len(fretted) >= MANY_FINGERS else ""


def grip_of_note(
    note: BarNote, number: int, piece: Piece, fingering: Fingering, instrument: Instrument
) -> GripDiagram | None:
    """The grip picture of a teaching note, None where it has none that fits. Fingers are
    those that the fingering has at these places in the bars of the note."""
    if note.grip is None or len(note.grip) != instrument.strings:
        return None
    frets = tuple(reversed(note.grip))
    found: dict[tuple[int, int], int] = {}
    for bar in fingering.bars:
        if note.first_bar <= bar.index <= note.last_bar:
            for n in bar.notes:
                if n.string is not None and n.fret and n.left:
                    found.setdefault((n.string, n.fret), n.left)
    fingers = tuple(found.get((string, fret or 0), 0) for string, fret in enumerate(frets, 1))
    sounding = [m + f for m, f in zip(instrument.open_midi, frets, strict=True) if f is not None]
    title = _title("", sounding) if len(sounding) > 1 else ""
    where = say("remark {number}", number=number)
    return GripDiagram(title or _bar_words(note, piece), "", frets, fingers, note=where)


def _bar_words(note: BarNote, piece: Piece) -> str:
    at = {b.index: b.number for b in piece.bars}
    return say("bar {bar}", bar=at.get(note.first_bar, ""))


def with_pictures(
    grips: Sequence[GripDiagram],
    notes: Sequence[BarNote],
    piece: Piece,
    fingering: Fingering,
    instrument: Instrument,
) -> tuple[GripDiagram, ...]:
    """The grips and the notes' own pictures. No picture comes twice: of one that is
    shown already, or is part of one, the note is only named under it."""
    out = list(grips)
    for number, note in enumerate(notes, 1):
        picture = grip_of_note(note, number, piece, fingering, instrument)
        if picture is None:
            continue
        same = next((k for k, g in enumerate(out) if _shown(picture, g)), None)
        if same is None:
            out.append(picture)
        elif out[same].note:
            number_words = say("{notes}, {number}", notes=out[same].note, number=number)
            out[same] = replace(out[same], note=number_words)
        else:
            out[same] = replace(out[same], note=picture.note)
    return tuple(out)


def _shown(picture: GripDiagram, grip: GripDiagram) -> bool:
    """``grip`` has every stopped string of the picture, and no finger elsewhere."""
    return picture.frets == grip.frets or (
        [f or None for f in picture.frets] == [f or None for f in grip.frets]
    )
