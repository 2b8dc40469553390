"""The fingering that a MusicXML score prints: string, fret and both hands' fingers.

Read from the document itself and found again by place and pitch, since the reading
library keeps no plucking fingers and gives those of a chord to the chord as a whole.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from fractions import Fraction
from xml.etree.ElementTree import Element

from workbench.music.model import STEP_SEMITONES, NoteFingers
from workbench.music.parsing.partnames import names_another, names_plucked

#: Part from 1, bar index, onset in the bar, MIDI number as written, grace or not.
Place = tuple[int, int, Fraction, int, bool]
_PLUCKING = "pima"
_DEEPEST = 48  # no neck has more strings or frets than this


NOTHING = NoteFingers()


@dataclass(frozen=True)
class PrintedMarks:
    """The marks of a document by place, the tablature staves (part from 1, staff from 1)
    that only repeat another staff of their part, and the parts (from 1) with finger numbers
    of which nothing tells whether a plucked instrument is meant."""

    marks: Mapping[Place, NoteFingers]
    tab_staves: frozenset[tuple[int, int]] = frozenset()
    doubtful: frozenset[int] = frozenset()


NONE_PRINTED = PrintedMarks({})


def printed_fingering(root: Element) -> PrintedMarks:
    """What the elements of a part-wise MusicXML document print of fingering.

    Finger numbers count where the part is a plucked, fretted instrument's: by a string,
    fret or plucking finger in it, a staff of tablature, a treble clef an octave down, its
    name, instrument or MIDI program. Those of a part that is another's (its name, a finger
    above 4, several staves) are left out; of all other parts they are kept as doubtful.
    """
    marks: dict[Place, NoteFingers] = {}
    tabs: set[tuple[int, int]] = set()
    doubtful: set[int] = set()
    heads = {e.get("id"): e for e in root.iter("score-part")}
    for number, part in enumerate(root.iter("part"), 1):
        found = _Part(number)
        for index, measure in enumerate(part.iter("measure")):
            found.measure(index, measure)
        plucked = found.plucked(heads.get(part.get("id")))
        if plucked is not False:
            marks |= found.marks
        if plucked is None and found.marks:
            doubtful.add(number)
        tabs |= found.repeating_tabs()
    return PrintedMarks(marks, frozenset(tabs), frozenset(doubtful))


class _Part:
    def __init__(self, number: int) -> None:
        self.number = number
        self.divisions = Fraction(1)
        self.marks: dict[Place, NoteFingers] = {}
        self.tabs: set[int] = set()
        self.tablature = self.octave_clef = self.many_fingers = False
        self.played: dict[int, set[tuple[int, Fraction, int]]] = {}  # by staff

    def measure(self, index: int, measure: Element) -> None:
        at = before = Fraction(0)
        for element in measure:
            if element.tag == "attributes":
                self._attributes(element)
            elif element.tag == "backup":
                at -= self._length(element)
            elif element.tag == "forward":
                at += self._length(element)
            elif element.tag == "note":
                if element.find("chord") is not None:
                    onset = before
                else:
                    onset, at = at, at + self._length(element)
                before = onset
                self._note(index, onset, element)

    def _attributes(self, element: Element) -> None:
        text = element.findtext("divisions", "").strip()
        with_dot = text.replace(".", "", 1)
        if with_dot.isdecimal() and Fraction(text):
            self.divisions = Fraction(text)
        for clef in element.iter("clef"):
            staff = _number(clef.get("number")) or 1
            sign = clef.findtext("sign", "").strip()
            if sign == "TAB":
                self.tabs.add(staff)
                self.tablature = True
            else:
                self.tabs.discard(staff)
            down = clef.findtext("clef-octave-change", "").strip() == "-1"
            self.octave_clef |= sign == "G" and down

    def _length(self, element: Element) -> Fraction:
        text = element.findtext("duration", "0").strip()
        try:
            return Fraction(text) / self.divisions
        except (ValueError, ZeroDivisionError):
            return Fraction(0)

    def _note(self, index: int, onset: Fraction, element: Element) -> None:
        midi = _midi(element.find("pitch"))
        if midi is None:
            return
        staff = _number(element.findtext("staff")) or 1
        self.played.setdefault(staff, set()).add((index, onset, midi))
        grace = element.find("grace") is not None
        place = (self.number, index, onset.limit_denominator(65_535), midi, grace)
        for technical in element.iter("technical"):
            self.many_fingers |= any(
                (_number(e.text) or 0) > 4 for e in technical.iter("fingering")
            )
            marks = _marks(technical)
            if marks != NOTHING:
                self.marks[place] = both(self.marks.get(place, NOTHING), marks)

    def plucked(self, head: Element | None) -> bool | None:
        """Whether the part, called so in the part list, is a plucked, fretted instrument's;
        None where nothing tells."""
        if self.tablature or any(
            m.string or m.fret is not None or m.right for m in self.marks.values()
        ):
            return True
        if self.many_fingers:
            return False
        texts, programs = _head_words(head)
        if any(map(names_plucked, texts)):
            return True
        if any(map(names_another, texts)) or len(self.played) > 1:
            return False
        return True if self.octave_clef or any(map(_plucked_program, programs)) else None

    def repeating_tabs(self) -> set[tuple[int, int]]:
        """Staves of tablature all of whose notes stand in another staff as well."""
        music = {staff: notes for staff, notes in self.played.items() if staff not in self.tabs}
        others = set().union(*music.values())
        return {
            (self.number, staff)
            for staff in self.tabs
            if music and self.played.get(staff, set()) <= others
        }


def _head_words(head: Element | None) -> tuple[list[str], list[int]]:
    """Names and sounds of a part, and its MIDI programs (from 1)."""
    if head is None:
        return [], []
    tags = ("part-name", "part-abbreviation", "instrument-name", "instrument-sound")
    texts = [e.text or "" for tag in tags for e in head.iter(tag)]
    programs = [_number(e.text) or 0 for e in head.iter("midi-program")]
    return texts, programs


def _plucked_program(program: int) -> bool:
    """General MIDI level 1: 25 to 32 are guitars, 106 is the banjo."""
    return 25 <= program <= 32 or program == 106


def both(one: NoteFingers, other: NoteFingers) -> NoteFingers:
    """The first one's marks, and the other's where it says nothing."""
    return NoteFingers(
        string=other.string if one.string is None else one.string,
        fret=other.fret if one.fret is None else one.fret,
        left=other.left if one.left is None else one.left,
        right=other.right if one.right is None else one.right,
    )


def _marks(technical: Element) -> NoteFingers:
    found = NOTHING
    string = _number(technical.findtext("string"))
    fret = _number(technical.findtext("fret"))
    left = next((_number(e.text) for e in technical.iter("fingering") if _main(e)), None)
    right = technical.findtext("pluck", "").strip().lower()
    if string is not None and 1 <= string <= _DEEPEST:
        found = replace(found, string=string)
    if fret is not None and fret <= _DEEPEST:
        found = replace(found, fret=fret)
    if left is not None and left <= 4:
        found = replace(found, left=left)
    if len(right) == 1 and right in _PLUCKING:
        found = replace(found, right=right)
    return found


def _main(fingering: Element) -> bool:
    """Whether it is the fingering itself and no alternative or substitution."""
    return "yes" not in (fingering.get("alternate"), fingering.get("substitution"))


def _number(text: str | None) -> int | None:
    text = (text or "").strip()
    return int(text) if text.isascii() and text.isdecimal() and len(text) < 4 else None


def _midi(pitch: Element | None) -> int | None:
    if pitch is None:
        return None
    try:
        octave = int(pitch.findtext("octave", "").strip())
        alter = round(float(pitch.findtext("alter", "0").strip() or 0))
        step = STEP_SEMITONES[pitch.findtext("step", "").strip()]
    except (ValueError, KeyError, OverflowError):
        return None
    return 12 * (octave + 1) + step + alter
