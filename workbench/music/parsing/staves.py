"""Notes of a music21 part as our notes: voices told apart, ties merged."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from fractions import Fraction
from typing import Any

from workbench.language.message import Message, PitchName
from workbench.music.errors import BadInput
from workbench.music.model import WEDGE_END, WEDGES, ChordName, Dynamic, NoteFingers, Pitch
from workbench.music.parsing.fingerxml import NONE_PRINTED, NOTHING, PrintedMarks, both

_MARKS = {
    "Staccato": "staccato",
    "Staccatissimo": "staccatissimo",
    "Accent": "accent",
    "StrongAccent": "strong accent",
    "Tenuto": "tenuto",
    "Fermata": "fermata",
    "StringHarmonic": "harmonic",
    "Harmonic": "harmonic",
    "Trill": "trill",
    "Mordent": "mordent",
    "InvertedMordent": "inverted mordent",
    "Turn": "turn",
    "ArpeggioMark": "arpeggio",
}


@dataclass
class RawNote:
    """A note before ties are merged; ``voice`` is the source's own name of it."""

    bar: int
    onset: Fraction
    duration: Fraction
    pitch: Pitch
    part: int
    voice: tuple[int, str]  # staff, voice name
    order: int
    tie: str = ""
    grace: bool = False
    tuplet: tuple[int, int] | None = None
    slur_starts: frozenset[int] = frozenset()  # which slurs of the part begin here
    slur_stops: frozenset[int] = frozenset()
    articulations: tuple[str, ...] = ()
    marks: NoteFingers = NOTHING


@dataclass
class BarContent:
    """What one part (with all its staves) has in one bar."""

    notes: list[RawNote] = field(default_factory=list)
    end: Fraction = Fraction(0)  # end of the last note or rest
    chords: list[ChordName] = field(default_factory=list)
    dynamics: list[Dynamic] = field(default_factory=list)
    unpitched: int = 0


@dataclass(frozen=True)
class Slurs:
    """The slurs, by number in the part, that begin and end on a music21 note, by its id."""

    starts: dict[int, frozenset[int]]
    stops: dict[int, frozenset[int]]
    slides: frozenset[int] = frozenset()  # a slide leads away from these
    wedges: dict[int, tuple[str, ...]] = field(default_factory=dict)  # begin or end here


def slurs_of(part: Any) -> Slurs:
    starts: dict[int, frozenset[int]] = {}
    stops: dict[int, frozenset[int]] = {}
    for number, slur in enumerate(part.recurse().getElementsByClass("Slur")):
        first, last = slur.getFirst(), slur.getLast()
        if first is not None and last is not None and first is not last:
            starts[id(first)] = starts.get(id(first), frozenset()) | {number}
            stops[id(last)] = stops.get(id(last), frozenset()) | {number}
    slides = set()
    for slide in part.recurse().getElementsByClass("Glissando"):
        first, last = slide.getFirst(), slide.getLast()
        if first is not None and last is not None and first is not last:
            slides.add(id(first))
    return Slurs(starts, stops, frozenset(slides), _wedges(part))


def _wedges(part: Any) -> dict[int, tuple[str, ...]]:
    """Wedges by the elements they begin and end at."""
    out: dict[int, tuple[str, ...]] = {}
    for wedge in part.recurse().getElementsByClass("DynamicWedge"):
        first, last = wedge.getFirst(), wedge.getLast()
        if first is not None and last is not None and first is not last:
            kind = WEDGES["Diminuendo" in wedge.classes]
            out[id(first)] = (*out.get(id(first), ()), kind)
            out[id(last)] = (WEDGE_END, *out.get(id(last), ()))
    return out


def bar_content(
    measure: Any,
    bar: int,
    part: int,
    staff: int,
    slurs: Slurs,
    shift: Any,
    label: Message,
    printed: PrintedMarks = NONE_PRINTED,
) -> BarContent:
    """Notes, chord symbols and real end of a music21 measure.

    ``shift`` is the interval from written to sounding pitch or None; ``printed`` the
    fingering that the source prints. Raises BadInput naming the bar for a pitch outside
    MIDI's range.
    """
    out = BarContent()
    voices = list(measure.voices)
    streams = [(measure, "")] + [(v, str(v.id)) for v in voices]
    for stream, voice in streams:
        base = Fraction(0) if stream is measure else exact(stream.offset)
        for element in stream:
            classes = element.classes
            onset = base + exact(element.offset)
            out.dynamics += [Dynamic(onset, text) for text in slurs.wedges.get(id(element), ())]
            if "ChordSymbol" in classes:
                text = chord_text(element)
                if text:
                    out.chords.append(ChordName(onset, text))
                continue
            if "Dynamic" in classes and element.value:
                out.dynamics.append(Dynamic(onset, str(element.value)))
                continue
            if "GeneralNote" not in classes:
                continue
            length = exact(element.quarterLength)
            out.end = max(out.end, onset + length)
            if "Unpitched" in classes or "PercussionChord" in classes:
                out.unpitched += 1
                continue
            if "NotRest" not in classes:
                continue
            members = element.notes if "Chord" in classes else (element,)
            for member in members:
                pitch, order = _pitch(member, shift, label), len(out.notes)
                raw = RawNote(bar, onset, length, pitch, part, (staff, voice), order)
                _raw(element, member, raw, slurs)
                place = (part, bar, onset, round(member.pitch.ps), raw.grace)
                raw.marks = printed.marks.get(place, NOTHING)
                out.notes.append(raw)
    return out


def exact(value: Any) -> Fraction:
    """A music21 offset or length as a fraction (its floats are exact binary ones)."""
    return Fraction(value).limit_denominator(65_535)


def _raw(element: Any, member: Any, raw: RawNote, slurs: Slurs) -> None:
    """Fill in what the element and, of a chord, the member say."""
    tie = member.tie  # of a chord, for each note its own
    raw.tie = tie.type if tie is not None else ""
    raw.grace = bool(element.duration.isGrace)
    if raw.grace:
        raw.duration = Fraction(0)
    actual = normal = 1
    for tuplet in element.duration.tuplets:
        actual *= tuplet.numberNotesActual
        normal *= tuplet.numberNotesNormal
    told = actual != normal and actual > 0 and normal > 0  # "0 in the time of 4" tells nothing
    raw.tuplet = (actual, normal) if told else None
    raw.slur_starts = slurs.starts.get(id(element), frozenset())
    raw.slur_stops = slurs.stops.get(id(element), frozenset())
    names = [type(m).__name__ for m in (*element.articulations, *element.expressions)]
    if member is not element:
        names += [type(m).__name__ for m in member.articulations]
    marks = [_MARKS[n] for n in names if n in _MARKS]
    if id(element) in slurs.slides:
        marks.append("slide")
    raw.articulations = tuple(dict.fromkeys(marks))


def _pitch(member: Any, shift: Any, label: Message) -> Pitch:
    source = member.pitch if shift is None else member.pitch.transpose(shift)
    alter = round(source.alter)
    octave = source.octave if source.octave is not None else source.implicitOctave
    pitch = Pitch(str(source.step), int(alter), int(octave))
    if not 0 <= pitch.midi <= 127:
        raise BadInput(
            "{place}: {pitch} lies outside the range of MIDI notes (0 to 127); "
            "mend the pitch in the score.",
            place=label,
            pitch=PitchName(pitch.name),
        )
    return pitch if abs(alter) <= 2 else _respelled(pitch.midi)


def _respelled(midi: int) -> Pitch:
    steps = {
        0: ("C", 0),
        2: ("D", 0),
        4: ("E", 0),
        5: ("F", 0),
        7: ("G", 0),
        9: ("A", 0),
        11: ("B", 0),
        1: ("C", 1),
        3: ("E", -1),
        6: ("F", 1),
        8: ("G", 1),
        10: ("B", -1),
    }
    step, alter = steps[midi % 12]
    return Pitch(step, alter, midi // 12 - 1)


def chord_text(symbol: Any) -> str:
    """A chord symbol as printed: Bb7, F#m, C/E."""
    if "NoChord" in symbol.classes:
        return "N.C."
    figure = str(symbol.figure or "").strip()
    if not figure or figure == "Chord Symbol Cannot Be Identified":
        return ""
    # music21 writes a flat of root and bass as "-"
    head = figure[:1] + figure[1:].replace("-", "b", 1) if figure[1:2] == "-" else figure
    name, slash, bass = head.partition("/")
    return name + slash + bass.replace("-", "b")


def merge_ties(notes: list[RawNote], starts: list[Fraction]) -> list[RawNote]:
    """Tied notes joined: the first one's duration runs to the end of the last.

    ``notes`` in order of time; ``starts`` are the bars' starts. A tie whose
    other end is missing is left as a note of its own.
    """
    out: list[RawNote] = []
    open_: dict[tuple[int, int], list[int]] = {}
    ends: dict[int, tuple[Fraction, int]] = {}  # place in out: absolute end, last bar
    for note in sorted(notes, key=lambda n: (n.bar, n.onset, not n.grace, n.order)):
        at = starts[note.bar] + note.onset
        name = (note.part, note.pitch.midi)
        if note.tie in ("stop", "continue"):
            # its own voice first: two voices may hold one pitch over the same bar line
            held = sorted(open_.get(name, []), key=lambda k: out[k].voice == note.voice)
            place = _waiting(held, ends, at, note)
            if place is not None:
                whole = out[place]
                if whole.tuplet != note.tuplet:
                    whole.tuplet = None
                whole.duration = at + note.duration - starts[whole.bar] - whole.onset
                # a slur from the first to the last of tied notes joins nothing to anything
                begun = whole.slur_starts | note.slur_starts
                whole.slur_starts = begun - note.slur_stops
                whole.slur_stops |= note.slur_stops - begun
                whole.articulations = tuple(dict.fromkeys(whole.articulations + note.articulations))
                whole.marks = both(whole.marks, note.marks)
                ends[place] = (at + note.duration, note.bar)
                if note.tie == "stop":
                    open_[name].remove(place)
                continue
        out.append(replace(note))
        if note.tie in ("start", "continue") and not note.grace:
            open_.setdefault(name, []).append(len(out) - 1)
            ends[len(out) - 1] = (at + note.duration, note.bar)
    return out


def _waiting(
    places: list[int], ends: dict[int, tuple[Fraction, int]], at: Fraction, note: RawNote
) -> int | None:
    for place in reversed(places):
        end, bar = ends[place]
        if end == at or (note.onset == 0 and bar == note.bar - 1 and end < at):
            return place
    return None


def number_voices(notes: list[RawNote]) -> dict[tuple[int, int, str], int]:
    """(part, staff, voice name) to our voice number: 1 is the top voice.

    Parts and staves keep their order on the page; the voices of a staff are
    ranked by mean pitch in the bars they share.
    """
    by_voice: dict[tuple[int, int, str], list[RawNote]] = {}
    for note in notes:
        by_voice.setdefault((note.part, *note.voice), []).append(note)
    plain = {v for v in by_voice if v[2] == ""}
    ranks: list[tuple[int, int, float, str, tuple[int, int, str]]] = []
    for voice, members in by_voice.items():
        if voice in plain:
            continue
        mean = sum(n.pitch.midi for n in members) / len(members)
        ranks.append((voice[0], voice[1], -mean, voice[2], voice))
    out: dict[tuple[int, int, str], int] = {}
    staves = sorted({v[:2] for v in by_voice})
    number = 0
    for staff in staves:
        named = [r[4] for r in sorted(ranks) if r[:2] == staff]
        for voice in named:
            number += 1
            out[voice] = number
        if (*staff, "") in plain:
            # a bar with one voice belongs to the staff's top voice
            if not named:
                number += 1
            out[(*staff, "")] = out[named[0]] if named else number
    return out
