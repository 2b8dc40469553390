"""A bar as a MusicXML measure: attributes, bar lines, signs, voices."""

from __future__ import annotations

from fractions import Fraction
from xml.etree.ElementTree import Element, SubElement

from workbench.music.model import WEDGE_END, WEDGES, Bar, Dynamic, Key, Piece
from workbench.music.notation.segments import Chord
from workbench.music.notation.values import Value, exactly, strong_points, written
from workbench.music.order.endings import EndingRun, ending_groups
from workbench.music.writing.chordxml import harmony
from workbench.music.writing.notexml import Look, NoteWriter

_DYNAMICS = ("pppp", "ppp", "pp", "p", "mp", "mf", "f", "ff", "fff", "ffff", "fp", "sf", "sfz")
_JUMP_SOUND = {"D.C.": {"dacapo": "yes"}, "D.S.": {"dalsegno": "segno"}}


class BarWriter:
    """Writes the measures of a piece in order."""

    def __init__(self, piece: Piece, divisions: int, look: Look) -> None:
        self.piece = piece
        self.divisions = divisions
        self.notes = NoteWriter(divisions, look)
        self.meter: tuple[int, int] | None = None
        self.key: Key | None = None
        self.tempo: float | None = None
        self.runs: dict[int, EndingRun] = {}
        self.open_ended: set[int] = set()  # last bars of brackets that stay open
        for group in ending_groups(piece.bars):
            for run in group.runs:
                self.runs |= {run.first: run, run.last: run}
            if not piece.bars[group.last].repeat_end:
                self.open_ended.add(group.last)

    def bar(self, bar: Bar, voices: dict[int, list[Chord]]) -> Element:
        measure = Element("measure", {"number": bar.number or str(bar.index + 1)})
        if bar.pickup or bar.length != Fraction(4 * bar.time_signature[0], bar.time_signature[1]):
            measure.set("implicit", "yes" if bar.pickup else "no")
        self._left_line(measure, bar)
        self._attributes(measure, bar)
        self._signs_before(measure, bar)
        main = min(voices, default=1)
        written = self._voice(measure, bar, main, voices.get(main, []), main=True)
        for number in sorted(voices):
            if number == main:
                continue
            self._move(measure, "backup", written)
            written = self._voice(measure, bar, number, voices[number], main=False)
        if written < bar.length:
            self._move(measure, "forward", bar.length - written)
        self._signs_after(measure, bar)
        self._right_line(measure, bar)
        return measure

    def _voice(
        self, measure: Element, bar: Bar, number: int, chords: list[Chord], *, main: bool
    ) -> Fraction:
        """Write one voice; the quarter length reached."""
        self.notes.begin(number)
        at = Fraction(0)
        symbols = list(bar.chords) if main else []
        signs = list(bar.dynamics) if main else []
        for mark in [d for d in signs if d.text not in (*WEDGES, WEDGE_END) or not chords]:
            measure.append(dynamic(mark.text, self.notes.ticks(mark.onset)))
            signs.remove(mark)
        if main and not chords:
            for symbol in symbols:
                measure.append(harmony(symbol.text, self.notes.ticks(symbol.onset)))
            full = bar.length == Fraction(4 * bar.time_signature[0], bar.time_signature[1])
            values = (Value(bar.length, ""),) if full else rests(bar, Fraction(0), bar.length)
            measure.extend(self.notes.rest(values, whole_bar=full))
            return bar.length
        for chord in chords:
            gap = chord.onset - at
            until = chord.onset + chord.duration
            while symbols and symbols[0].onset < (chord.onset if gap else until):
                symbol = symbols.pop(0)
                measure.append(harmony(symbol.text, self.notes.ticks(symbol.onset - at)))
            if gap and main:
                measure.extend(self.notes.rest(rests(bar, at, chord.onset)))
            elif gap:
                self._move(measure, "forward", gap)
            at = chord.onset
            while symbols and symbols[0].onset < until:
                symbol = symbols.pop(0)
                measure.append(harmony(symbol.text, self.notes.ticks(symbol.onset - at)))
            # Readers bind a wedge to the note that follows its beginning and the one
            # before its end.
            begin = [d for d in signs if d.text in WEDGES and d.onset < until]
            self._wedges(measure, signs, begin, at)
            measure.extend(self.notes.chord(chord))
            self._wedges(measure, signs, [d for d in signs if d.onset <= at], at)
            at = until
        for mark in signs:
            measure.append(dynamic(mark.text, self.notes.ticks(mark.onset - at)))
        for symbol in symbols:
            measure.append(harmony(symbol.text, self.notes.ticks(symbol.onset - at)))
        if main and at < bar.length:
            measure.extend(self.notes.rest(rests(bar, at, bar.length)))
            at = bar.length
        return at

    def _wedges(
        self, measure: Element, signs: list[Dynamic], now: list[Dynamic], at: Fraction
    ) -> None:
        """Write those that come now."""
        for mark in now:
            measure.append(dynamic(mark.text, self.notes.ticks(max(Fraction(0), mark.onset - at))))
            signs.remove(mark)

    def _move(self, measure: Element, tag: str, length: Fraction) -> None:
        if length:
            SubElement(SubElement(measure, tag), "duration").text = str(self.notes.ticks(length))

    def _attributes(self, measure: Element, bar: Bar) -> None:
        attributes = Element("attributes")
        if bar.index == 0:
            SubElement(attributes, "divisions").text = str(self.divisions)
        if bar.key != self.key:
            key = SubElement(attributes, "key")
            SubElement(key, "fifths").text = str(bar.key.fifths)
            SubElement(key, "mode").text = bar.key.mode
            self.key = bar.key
        if bar.time_signature != self.meter:
            time = SubElement(attributes, "time")
            SubElement(time, "beats").text = str(bar.time_signature[0])
            SubElement(time, "beat-type").text = str(bar.time_signature[1])
            self.meter = bar.time_signature
        if bar.index == 0:
            self._clef(attributes)
        if len(attributes):
            measure.append(attributes)

    def _clef(self, attributes: Element) -> None:
        """A treble clef, an octave lower or a bass clef for low music."""
        pitches = sorted(n.midi for n in self.piece.notes)
        middle = pitches[len(pitches) // 2] if pitches else 60
        sign, line = ("G", "2") if middle >= 50 else ("F", "4")
        clef = SubElement(attributes, "clef")
        SubElement(clef, "sign").text = sign
        SubElement(clef, "line").text = line
        if sign == "G" and pitches and (pitches[0] < 52 or middle < 60):
            SubElement(clef, "clef-octave-change").text = "-1"

    def _signs_before(self, measure: Element, bar: Bar) -> None:
        if bar.section:
            direction, kind = _direction(measure)
            SubElement(kind, "rehearsal").text = bar.section
        if bar.tempo is not None or bar.index == 0:
            tempo = bar.tempo if bar.tempo is not None else self.piece.tempo
            if tempo != self.tempo:
                self.tempo = tempo
                direction, kind = _direction(measure)
                mark = SubElement(kind, "metronome")
                SubElement(mark, "beat-unit").text = "quarter"
                SubElement(mark, "per-minute").text = f"{tempo:.10g}"
                SubElement(direction, "sound", {"tempo": f"{tempo:.10g}"})
        if bar.segno:
            direction, kind = _direction(measure)
            SubElement(kind, "segno")
            SubElement(direction, "sound", {"segno": "segno"})
        if bar.coda:
            direction, kind = _direction(measure)
            SubElement(kind, "coda")
            SubElement(direction, "sound", {"coda": "coda"})

    def _signs_after(self, measure: Element, bar: Bar) -> None:
        if bar.to_coda:
            _words(measure, "To Coda", {"tocoda": "coda"})
        if bar.fine:
            _words(measure, "Fine", {"fine": "yes"})
        if bar.jump:
            _words(measure, bar.jump, _JUMP_SOUND.get(bar.jump[:4], {}))

    def _left_line(self, measure: Element, bar: Bar) -> None:
        run = self.runs.get(bar.index)
        opens = run is not None and run.first == bar.index
        if not bar.repeat_start and not opens:
            return
        line = SubElement(measure, "barline", {"location": "left"})
        if bar.repeat_start:
            SubElement(line, "bar-style").text = "heavy-light"
        if run is not None and opens:
            self._ending(line, run, "start")
        if bar.repeat_start:
            SubElement(line, "repeat", {"direction": "forward"})

    def _right_line(self, measure: Element, bar: Bar) -> None:
        run = self.runs.get(bar.index)
        closes = run is not None and run.last == bar.index
        final = bar.index == len(self.piece.bars) - 1
        if not (bar.repeat_end or closes or bar.double_bar or final):
            return
        line = SubElement(measure, "barline", {"location": "right"})
        if bar.repeat_end or final:
            SubElement(line, "bar-style").text = "light-heavy"
        elif bar.double_bar:
            SubElement(line, "bar-style").text = "light-light"
        if run is not None and closes:
            self._ending(line, run, "discontinue" if bar.index in self.open_ended else "stop")
        if bar.repeat_end:
            attributes = {"direction": "backward"}
            if bar.times != 2:
                attributes["times"] = str(bar.times)
            SubElement(line, "repeat", attributes)

    @staticmethod
    def _ending(line: Element, run: EndingRun, kind: str) -> None:
        numbers = ",".join(map(str, run.passes))
        ending = SubElement(line, "ending", {"number": numbers, "type": kind})
        if kind == "start":
            ending.text = ".".join([*map(str, run.passes), ""])


def rests(bar: Bar, start: Fraction, end: Fraction) -> tuple[Value, ...]:
    """The values of a rest inside a bar, up to the next beat and on from it."""
    values: tuple[Value, ...] = ()
    beats = strong_points(bar.time_signature, bar.length)
    while start < end:
        later = [b for b in beats if start < b < end]
        stop = end if start in (0, *beats) else min(later, default=end)
        values += exactly(written(start, stop - start, beats), stop - start)
        start = stop
    return values


def _direction(measure: Element) -> tuple[Element, Element]:
    direction = SubElement(measure, "direction", {"placement": "above"})
    return direction, SubElement(direction, "direction-type")


def _words(measure: Element, text: str, sound: dict[str, str]) -> None:
    direction, kind = _direction(measure)
    SubElement(kind, "words").text = text
    if sound:
        SubElement(direction, "sound", sound)


def dynamic(text: str, offset: int) -> Element:
    """The element for a dynamic mark, ``offset`` divisions after its place."""
    element = Element("direction", {"placement": "below"})
    kind = SubElement(element, "direction-type")
    if text in (*WEDGES, WEDGE_END):
        SubElement(kind, "wedge", {"type": text})
    elif text in _DYNAMICS:
        SubElement(SubElement(kind, "dynamics"), text)
    else:
        SubElement(SubElement(kind, "dynamics"), "other-dynamics").text = text
    if offset:
        SubElement(element, "offset").text = str(offset)
    return element
