"""The piece as MEI 5: a five-line staff and a tablature staff, voices as layers."""

from __future__ import annotations

from collections import defaultdict, deque
from fractions import Fraction

from lxml import etree

from workbench.engraving import ids
from workbench.engraving.mei import marks, tree
from workbench.engraving.mei.above import Above
from workbench.engraving.mei.accidentals import accidentals
from workbench.engraving.mei.marked import Gathered, Marked
from workbench.engraving.mei.stringmarks import strings_told
from workbench.engraving.mei.tree import MEI, add
from workbench.engraving.mei.voices import Layer, attack_events, bar_layers, tie_targets
from workbench.engraving.options import MeiOptions
from workbench.fingering.telling.heard import sounding
from workbench.fingering.types import FingeredNote, Fingering
from workbench.instrument.model import Instrument
from workbench.music.errors import BadInput
from workbench.music.model import Bar, Note, Piece
from workbench.music.notation.segments import split_at_bars
from workbench.music.notation.values import strong_points
from workbench.music.ringing.slurs import slurs

_NAMES = ("c", "c", "d", "d", "e", "f", "f", "g", "g", "a", "a", "b")
_SHARP = (1, 3, 6, 8, 10)
OCTAVE_CLEF_BELOW = 53  # instruments that go lower are written an octave up


def to_mei(
    piece: Piece,
    fingering: Fingering | None = None,
    instrument: Instrument | None = None,
    options: MeiOptions | None = None,
) -> Marked:
    """The MEI document with the marks that are set in its drawing; names as in ``ids``.

    Raises BadInput where the piece has no bars.
    """
    if not piece.bars:
        raise BadInput("'{title}' has no bars; there is nothing to engrave.", title=piece.title)
    return _Writer(piece, fingering, instrument, options or MeiOptions()).document()


_recent: deque[tuple[Piece, dict[int, list[Layer]]]] = deque(maxlen=4)


def _piece_layers(piece: Piece) -> dict[int, list[Layer]]:
    """Layers of every bar; they follow from the piece alone and are only read.
    Kept for the last few pieces, told apart by identity: hashing one is slow."""
    for known, layers in list(_recent):
        if known is piece:
            return layers
    made = _make_layers(piece)
    _recent.append((piece, made))
    return made


def _make_layers(piece: Piece) -> dict[int, list[Layer]]:
    used: dict[str, int] = {}
    out: dict[int, list[Layer]] = {}
    for bar, segments in zip(piece.bars, split_at_bars(piece), strict=True):
        graces = [n for n in bar.notes if n.grace]
        beats = strong_points(bar.time_signature, bar.length)
        parts = [s.within(bar.length) for s in segments if s.duration and s.onset < bar.length]
        out[bar.index] = bar_layers(parts, graces, bar.length, beats, used)
    return out


class _Writer:
    def __init__(
        self,
        piece: Piece,
        fingering: Fingering | None,
        instrument: Instrument | None,
        options: MeiOptions,
    ) -> None:
        self.piece, self.instrument, self.options = piece, instrument, options
        first = 0 if options.first is None else options.first
        last = piece.bars[-1].index if options.last is None else options.last
        self.bars = [b for b in piece.bars if first <= b.index <= last]
        if not self.bars:
            raise BadInput(
                "'{title}' has no bars {first} to {last}.",
                title=piece.title,
                first=first + 1,
                last=last + 1,
            )
        self.fingered_bars = {b.index: b for b in fingering.bars} if fingering else {}
        self.fingered: dict[str, FingeredNote] = {
            n.id: n for b in self.fingered_bars.values() for n in sounding(b)
        }
        self.silent = marks.strummed(
            n for bar in self.bars if bar.index in self.fingered_bars
            for n in sounding(self.fingered_bars[bar.index])
        )  # fmt: skip
        self.tab = options.tab and instrument is not None
        self.strings = instrument.strings if instrument is not None else 0
        self.circled = strings_told(piece, self.fingered, instrument, options.strings)
        every = _piece_layers(piece)
        self.layers = {bar.index: every[bar.index] for bar in self.bars}
        above = self.options.above
        self.above = None if above is None else Above(above, _piece_layers)
        self.gathered = Gathered()
        self.next_ids = tie_targets(self.layers[bar.index] for bar in self.bars)
        self.slur_ends = self._slur_ends()

    @property
    def _octave_below(self) -> bool:
        return self.instrument is not None and self.instrument.lowest < OCTAVE_CLEF_BELOW

    def _slur_ends(self) -> dict[str, str]:
        """Ids of first and last note of the slurs that lie whole in what is shown; of a
        chord its highest note."""
        shown = {n.id for bar in self.bars for n in bar.notes}
        ends = {s.first.top.id: s.last.top.id for s in slurs(self.piece)}
        return {a: b for a, b in ends.items() if {a, b} <= shown}

    def document(self) -> Marked:
        root = etree.Element(f"{{{MEI}}}mei", nsmap={None: MEI}, meiversion="5.0")
        desc = add(add(root, "meiHead"), "fileDesc")
        titles = add(desc, "titleStmt")
        add(titles, "title").text = self.piece.title
        if self.piece.composer:
            add(titles, "composer").text = self.piece.composer
        add(desc, "pubStmt")
        score = add(add(add(add(root, "music"), "body"), "mdiv"), "score")
        self._score_def(score)
        section = add(score, "section")
        add(section, "pb")
        ending: etree._Element | None = None
        before: Bar | None = None
        for bar in self.bars:
            new_ending = before is None or bar.endings != before.endings
            breaks = before is not None and bar.index in self.options.breaks
            if breaks and new_ending:
                add(section, "pb")  # outside, or the label is set as if it went on
            if new_ending:
                ending = None
                if bar.endings:
                    label = marks.ending_label(bar.endings)
                    ending = add(section, "ending", n=" ".join(map(str, bar.endings)), label=label)
            parent = section if ending is None else ending
            if before is not None:
                self._changes(parent, before, bar)
            if breaks and not new_ending:
                add(parent, "pb")
            self._measure(parent, bar)
            before = bar
        text: str = etree.tostring(root, encoding="unicode")
        return self.gathered.with_document(text)

    def _score_def(self, score: etree._Element) -> None:
        group = add(add(score, "scoreDef"), "staffGrp", bar_thru="true")
        if self.tab:
            group.set("symbol", "bracket")
        if self.above is not None:
            begins = self.bars[0].index == self.piece.bars[0].index
            self.above.staves(group, self.bars[0].index, begins)
        staff = add(group, "staffDef", n="1", lines="5")
        clef = add(staff, "clef", shape="G", line="2")
        if self._octave_below:
            clef.set("dis", "8")
            clef.set("dis.place", "below")
        first = self.bars[0]
        add(staff, "keySig", sig=tree.signature(first.key))
        tree.meter(staff, first, shown=first.index == self.piece.bars[0].index)
        if self.tab and self.instrument is not None:
            lines = add(
                group,
                "staffDef",
                n="2",
                lines=str(self.instrument.strings),
                notationtype="tab.guitar",
            )
            add(lines, "clef", shape="TAB")
            tree.meter(lines, first, shown=False)
            tuning = add(lines, "tuning")
            for string, midi in enumerate(self.instrument.open_midi, 1):
                course = add(
                    tuning,
                    "course",
                    n=str(string),
                    pname=_NAMES[midi % 12],
                    oct=str(midi // 12 - 1),
                )
                if midi % 12 in _SHARP:
                    course.set("accid", "s")

    def _changes(self, parent: etree._Element, before: Bar, bar: Bar) -> None:
        new_key, new_meter = bar.key != before.key, bar.time_signature != before.time_signature
        if not (new_key or new_meter):
            return
        group = add(add(parent, "scoreDef"), "staffGrp")
        if self.above is not None:
            self.above.changes(group, before.index, bar.index)
        staff = add(group, "staffDef", n="1")
        if new_key:
            add(staff, "keySig", sig=tree.signature(bar.key))
        if new_meter:
            tree.meter(staff, bar)
            if self.tab and self.instrument is not None:
                tree.meter(add(group, "staffDef", n="2"), bar, shown=False)

    def _measure(self, parent: etree._Element, bar: Bar) -> None:
        options = self.options
        measure = add(parent, "measure", id=ids.bar(bar.index), n=bar.number)
        if bar.length != Fraction(4 * bar.time_signature[0], bar.time_signature[1]):
            measure.set("metcon", "false")
        if bar.repeat_start:
            measure.set("left", "rptstart")
        if bar.repeat_end:
            measure.set("right", "rptend")
        elif bar.index == self.piece.bars[-1].index:
            measure.set("right", "end")
        elif bar.fine or bar.jump or bar.double_bar:
            measure.set("right", "dbl")
        if self.above is not None:
            self.gathered.ties += self.above.measure(measure, bar.index)
        layers = self.layers[bar.index]
        signs = accidentals(layers, bar.key)
        staff = add(measure, "staff", n="1")
        for layer in layers:
            tree.staff_layer(staff, layer, bar.time_signature, bar.length, signs, bar.index)
        if self.tab:
            self.gathered.graces += marks.grace_figures(layers, self.fingered)
            self._tablature(measure, bar)
        if options.tempo:
            if bar.tempo is not None:
                marks.tempo_mark(measure, bar, bar.tempo)
            elif bar.index == self.piece.bars[0].index:
                marks.tempo_mark(measure, bar, self.piece.tempo)
        numbers = [number for index, number in options.marks if index == bar.index]
        marks.bar_marks(measure, bar, options, numbers)
        if bar.index in self.fingered_bars and options.left:
            marks.barre_marks(measure, bar, self.fingered_bars[bar.index], self.strings)
        fingers = self.gathered.fingers
        fingers += marks.finger_marks(layers, self.fingered, self.silent, options, self.tab)
        if options.strings:
            fingers += marks.string_marks(layers, self.circled)
        marks.fermatas(measure, layers)
        middle = 59 if self._octave_below else 71
        self.gathered.ties += marks.ties(measure, layers, self.next_ids, middle)
        marks.slurs(measure, bar.notes, self.slur_ends)

    def _tablature(self, measure: etree._Element, bar: Bar) -> None:
        places: dict[str, tuple[int, int]] = {}
        attacks: dict[Fraction, list[Note]] = defaultdict(list)
        for note in bar.notes:
            mark = self.fingered.get(note.id)
            if note.grace or mark is None or mark.string is None or mark.fret is None:
                continue
            places[note.id] = (mark.string, mark.fret)
            attacks[note.onset].append(note)
        beats = strong_points(bar.time_signature, bar.length)
        events = attack_events(attacks, bar.length, beats)
        tree.tab_layer(add(measure, "staff", n="2"), events, places)
