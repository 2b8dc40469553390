"""Notes, chords and rests as MusicXML note elements."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Protocol
from xml.etree.ElementTree import Element, SubElement

from workbench.music.notation.segments import Chord, Segment
from workbench.music.notation.values import PLAIN, Value


class PlayedNote(Protocol):
    """What the writer needs of a fingered note; None where it has no place."""

    @property
    def string(self) -> int | None: ...
    @property
    def fret(self) -> int | None: ...
    @property
    def left(self) -> int | None: ...
    @property
    def right(self) -> str | None: ...
    @property
    def shares(self) -> str | None: ...


Look = Callable[[str], PlayedNote | None]

# MusicXML names of the signs that are not named by a number and its ending
_TYPES = {"breve": "breve", "1": "whole", "2": "half", "4": "quarter", "8": "eighth", "32": "32nd",
          "512": "512th"}  # fmt: skip

# our word: MusicXML group and element
_MARKS = {
    "staccato": ("articulations", "staccato"),
    "staccatissimo": ("articulations", "staccatissimo"),
    "accent": ("articulations", "accent"),
    "strong accent": ("articulations", "strong-accent"),
    "tenuto": ("articulations", "tenuto"),
    "harmonic": ("technical", "harmonic"),
    "trill": ("ornaments", "trill-mark"),
    "mordent": ("ornaments", "mordent"),
    "inverted mordent": ("ornaments", "inverted-mordent"),
    "turn": ("ornaments", "turn"),
    "fermata": ("", "fermata"),
    "arpeggio": ("", "arpeggiate"),
}


@dataclass
class NoteWriter:
    """Writes the notes of one voice after another. ``divisions`` a quarter length."""

    divisions: int
    look: Look
    slurs: dict[int, list[int]] = field(default_factory=dict)  # voice: open slur numbers
    voice: int = 1
    _open: Fraction | None = None  # filled so far of the tuplet being written

    def begin(self, voice: int) -> None:
        """Start on a voice of a bar."""
        self.voice, self._open = voice, None

    def ticks(self, length: Fraction) -> int:
        """A quarter length in divisions; exact, since divisions fit every length."""
        return int(length * self.divisions)

    def rest(self, values: Sequence[Value], *, whole_bar: bool = False) -> list[Element]:
        out = []
        for value in values:
            note = Element("note")
            SubElement(note, "rest", {"measure": "yes"} if whole_bar else {})
            SubElement(note, "duration").text = str(self.ticks(value.sounding))
            self._value(note, value)
            self._close(note, self._bracket(value))
            out.append(note)
        return out

    def chord(self, chord: Chord) -> list[Element]:
        """The elements of a chord, tied where no single note value fits."""
        if chord.grace:
            return [self._grace(chord)]
        rows = chord.values
        out: list[Element] = []
        for place, value in enumerate(rows):
            bracket = self._bracket(value)
            for number, segment in enumerate(chord.members):
                note = Element("note")
                if number:
                    SubElement(note, "chord")
                _pitch(note, segment)
                SubElement(note, "duration").text = str(self.ticks(value.sounding))
                stop = segment.tied_in or place > 0
                start = segment.tied_out or place < len(rows) - 1
                for kind, wanted in (("stop", stop), ("start", start)):
                    if wanted:
                        SubElement(note, "tie", {"type": kind})
                self._value(note, value)
                marks = _ties(stop, start)
                if not number:
                    marks += bracket
                    marks += self._slurs(chord, first=not stop, last=not start)
                self._notations(note, segment, marks, first=not stop)
                out.append(note)
        return out

    def _grace(self, chord: Chord) -> Element:
        segment = chord.members[0]
        note = Element("note")
        SubElement(note, "grace", {"slash": "yes"})
        _pitch(note, segment)
        SubElement(note, "voice").text = str(self.voice)
        SubElement(note, "type").text = "eighth"
        marks = self._slurs(chord, first=True, last=True)
        self._notations(note, segment, marks, first=True)
        return note

    def _slurs(self, chord: Chord, *, first: bool, last: bool) -> list[Element]:
        """The slurs of a chord: one begins and one ends however many of its notes bear it."""
        notes = [segment.note for segment in chord.members]
        open_ = self.slurs.setdefault(notes[0].voice, [])
        marks = []
        if last and open_ and any(n.slur_stop for n in notes):
            marks.append(Element("slur", {"type": "stop", "number": str(open_.pop())}))
        if first and any(n.slur_start for n in notes):
            free = next((n for n in range(1, 7) if n not in open_), None)
            if free is not None:
                open_.append(free)
                marks.append(Element("slur", {"type": "start", "number": str(free)}))
        return marks

    def _value(self, note: Element, value: Value) -> None:
        SubElement(note, "voice").text = str(self.voice)
        if value.sign:
            SubElement(note, "type").text = _TYPES.get(value.sign, f"{value.sign}th")
        for _ in range(value.dots):
            SubElement(note, "dot")
        if value.ratio != PLAIN:
            change = SubElement(note, "time-modification")
            SubElement(change, "actual-notes").text = str(value.ratio[0])
            SubElement(change, "normal-notes").text = str(value.ratio[1])

    def _bracket(self, value: Value) -> list[Element]:
        """Tuplet begin and end: a tuplet ends where its lengths add up to a plain one."""
        if value.ratio == PLAIN:
            self._open = None
            return []
        marks = []
        if self._open is None:
            self._open = Fraction(0)
            marks.append(Element("tuplet", {"type": "start", "number": "1"}))
        self._open += value.sounding
        odd = self._open.denominator
        if odd & (odd - 1) == 0:
            self._open = None
            marks.append(Element("tuplet", {"type": "stop", "number": "1"}))
        return marks

    def _notations(
        self, note: Element, segment: Segment, marks: list[Element], *, first: bool
    ) -> None:
        source = segment.note
        groups: dict[str, list[Element]] = {}
        if first:
            for word in source.articulations:
                if word in _MARKS:
                    group, tag = _MARKS[word]
                    groups.setdefault(group, []).append(Element(tag))
            played = self.look(source.id)
            if played is not None:
                groups.setdefault("technical", []).extend(_technical(played))
        for group in ("ornaments", "technical", "articulations"):
            if groups.get(group):
                holder = Element(group)
                holder.extend(groups[group])
                marks.append(holder)
        self._close(note, marks + groups.get("", []))

    @staticmethod
    def _close(note: Element, marks: list[Element]) -> None:
        if marks:
            SubElement(note, "notations").extend(marks)


def _pitch(note: Element, segment: Segment) -> None:
    source = segment.note.pitch
    pitch = SubElement(note, "pitch")
    SubElement(pitch, "step").text = source.step
    if source.alter:
        SubElement(pitch, "alter").text = str(source.alter)
    SubElement(pitch, "octave").text = str(source.octave)


def _ties(stop: bool, start: bool) -> list[Element]:
    kinds = [k for k, wanted in (("stop", stop), ("start", start)) if wanted]
    return [Element("tied", {"type": k}) for k in kinds]


def _technical(played: PlayedNote) -> list[Element]:
    out = []
    for tag, value in (
        ("fingering", played.left),
        ("pluck", played.right),
        ("string", played.string),
        ("fret", played.fret),
    ):
        if value is not None:
            element = Element(tag)
            element.text = str(value)
            out.append(element)
    return out
