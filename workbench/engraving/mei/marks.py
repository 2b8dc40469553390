"""Marks of a bar: fingers, chord names, tempo, section letters, ties, slurs, repeats."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence
from fractions import Fraction

from lxml import etree

from workbench.engraving import ids
from workbench.engraving.mei.marked import FingerMark, HalfTie
from workbench.engraving.mei.tree import add
from workbench.engraving.mei.voices import Event, Layer
from workbench.engraving.options import MeiOptions
from workbench.fingering.right.plucking import together
from workbench.fingering.types import Barre, FingeredBar, FingeredNote
from workbench.instrument.model import roman
from workbench.language.names import chord_words
from workbench.music.model import Bar, Note

RIGHT = ("p", "i", "m", "a")
#: SMuFL metronome note signs (E1D5 quarter up, E1E7 augmentation dot).
_QUARTER, _EIGHTH, _HALF, _DOT = "\ueca5", "\ueca7", "\ueca3", "\uecb7"


def when(onset: Fraction, bar: Bar) -> str:
    """MEI @tstamp: beats of the meter's unit, counted from 1."""
    return f"{float(1 + onset * Fraction(bar.time_signature[1], 4)):.5g}"


def ending_label(endings: Sequence[int]) -> str:
    """For example ``1.`` or ``1. 2.``"""
    return " ".join(f"{n}." for n in endings)


def finger_marks(
    layers: Sequence[Layer],
    fingered: Mapping[str, FingeredNote],
    silent: Collection[str],
    options: MeiOptions,
    tab: bool,
) -> Iterator[FingerMark]:
    """Left-hand numbers at the heads of the staff, p i m a under the tablature
    (under the staff where there is none). The notes in ``silent`` have no letter."""
    for layer in layers:
        below = layer.stems == "down"
        for head_id in attacked(layer):
            mark = fingered.get(head_id)
            if mark is None:
                continue
            if options.left and mark.left is not None and (mark.left or options.open_zero):
                text = f"–{mark.left}" if mark.move == "guide" else str(mark.left)
                yield FingerMark(ids.left(mark.id), head_id, text, "left", below)
            if mark.id in silent:
                continue
            if options.right and mark.right and (mark.string or not tab):
                target = ids.figure(mark.id) if tab else head_id
                text = mark.right + (REST_STROKE if mark.stroke == "rest" else "")
                yield FingerMark(ids.right(mark.id), target, text, "right", True)


def strummed(fingered: Iterable[FingeredNote]) -> set[str]:
    """Notes of strums whose letter stands at the string nearest the floor already: a strum has
    its letter once."""
    chords: dict[tuple[int, Fraction], list[FingeredNote]] = {}
    for note in fingered:
        chords.setdefault((note.bar, note.onset), []).append(note)
    out: set[str] = set()
    for chord in chords.values():
        if together(chord) == "strum":
            out |= {n.id for n in sorted(chord, key=lambda n: n.string or 99)[1:]}
    return out


REST_STROKE = "ˇ"  # after the letter: the finger comes to rest on the next string


def attacked(layer: Layer) -> list[str]:
    """Ids of the heads struck in a layer, grace notes included, in order. The
    first head of a note bears the note's own id."""
    out: list[str] = []
    for event in layer.events:
        out += [g.id for g in event.graces]
        out += [h.id for h in event.heads if not h.tie_in]
    return out + [g.id for g in layer.trailing]


def grace_figures(
    layers: Sequence[Layer], fingered: Mapping[str, FingeredNote]
) -> Iterator[FingerMark]:
    """The tablature figures of grace notes."""
    for layer in layers:
        for grace in (*(g for e in layer.events for g in e.graces), *layer.trailing):
            mark = fingered.get(grace.id)
            if mark and mark.string is not None and mark.fret is not None:
                name, text = ids.figure(grace.id), str(mark.fret)
                yield FingerMark(name, grace.id, text, "grace", string=mark.string)


def string_marks(layers: Sequence[Layer], circled: Mapping[str, int]) -> Iterator[FingerMark]:
    """Numbers of strings at the heads of the staff; they are drawn in circles."""
    for layer in layers:
        for head_id in attacked(layer):
            if head_id in circled:
                below = layer.stems == "down"
                yield FingerMark(
                    ids.string(head_id), head_id, str(circled[head_id]), "string", below
                )


def barre_marks(measure: etree._Element, bar: Bar, fingered: FingeredBar, strings: int) -> None:
    """``B II`` above the staff where a barre is laid on, ``½B II`` where it is a half one.
    ``strings``: how many the instrument has."""
    seen: set[tuple[Fraction, int]] = set()
    for number, barre in enumerate(fingered.barres):
        if (barre.onset, barre.fret) in seen:
            continue
        seen.add((barre.onset, barre.fret))
        text = add(
            measure, "dir", id=ids.of_bar("barre", bar.index, number), tstamp=when(barre.onset, bar)
        )
        text.set("place", "above")
        text.set("staff", "1")
        half = "½" if is_half(barre, strings) else ""
        text.text = f"{half}B {roman(barre.fret)}"


def is_half(barre: Barre, strings: int) -> bool:
    """Whether a barre leaves strings free: of six strings a full one lies over five or
    six, of four over all (common practice, no source)."""
    return len(barre.strings) < (strings - 1 if strings > 5 else strings)


def ties(
    measure: etree._Element, layers: Sequence[Layer], next_ids: Mapping[str, str], middle: int
) -> Iterator[HalfTie]:
    """Writes the ties between the parts of one note, and gives those whose other part lies
    outside the passage. ``middle``: MIDI number on the staff's middle line."""
    inside = set(next_ids.values())
    for layer in layers:
        for event in layer.events:
            for place, head in enumerate(event.heads):
                above = _curves_up(layer, event, place, middle)
                if head.tie_out and head.id in next_ids:
                    add(measure, "tie", startid=f"#{head.id}", endid=f"#{next_ids[head.id]}")
                elif head.tie_out:
                    yield HalfTie(head.id, False, above)
                if head.tie_in and head.id not in inside:
                    yield HalfTie(head.id, True, above)


def _curves_up(layer: Layer, event: Event, place: int, middle: int) -> bool:
    """Ties of two voices bend outwards, as do those of a chord; else away from the stem."""
    count = len(event.heads)
    if layer.stems:
        return layer.stems == "up"
    if count > 1:
        return place >= count / 2
    return event.heads[place].note.midi >= middle


def slurs(measure: etree._Element, notes: Sequence[Note], ends: Mapping[str, str]) -> None:
    """Slurs that start in this bar."""
    for note in notes:
        if note.id in ends:
            add(measure, "slur", startid=f"#{note.id}", endid=f"#{ends[note.id]}")


def fermatas(measure: etree._Element, layers: Sequence[Layer]) -> None:
    """One fermata for a moment that has any, whichever of its voices bear one."""
    seen: set[Fraction] = set()
    for layer in layers:
        for event in layer.events:
            bears = [h for h in event.heads if "fermata" in h.note.articulations and not h.tie_in]
            if bears and event.onset not in seen:
                seen.add(event.onset)
                add(measure, "fermata", startid=f"#{bears[0].id}", place="above", staff="1")


def tempo_mark(measure: etree._Element, bar: Bar, tempo: float) -> None:
    """A metronome mark in the beat of the meter. ``tempo`` in quarters a minute."""
    count, unit = bar.time_signature
    sign, dot, rate = _QUARTER, "", tempo
    if unit == 8 and count % 3 == 0:
        dot, rate = _DOT, tempo * 2 / 3
    elif unit == 2:
        sign, rate = _HALF, tempo / 2
    mark = add(measure, "tempo", id=ids.tempo(bar.index), tstamp="1", place="above", staff="1")
    rend = add(mark, "rend", fontstyle="normal")
    rend.set("glyph.auth", "smufl")
    rend.text = sign + dot
    rend.tail = f" = {rate:.0f}"


def bar_marks(measure: etree._Element, bar: Bar, options: MeiOptions, marks: Sequence[int]) -> None:
    """Chord names, section letter, teacher's marks, segno, coda, Fine, jumps."""
    if options.chords:
        for k, chord in enumerate(bar.chords):
            if chord.text.strip():
                harm = add(
                    measure,
                    "harm",
                    id=ids.of_bar("harm", bar.index, k),
                    tstamp=when(chord.onset, bar),
                    staff="1",
                    place="above",
                )
                harm.text = chord_words(chord.text)
    if bar.section:
        reh = add(
            measure, "reh", id=ids.of_bar("reh", bar.index), tstamp="0", staff="1", place="above"
        )
        add(reh, "rend", rend="box").text = bar.section
    if marks:
        mark = add(
            measure, "dir", id=ids.remarks(marks, bar.index), tstamp="1", staff="1", place="above"
        )
        mark.text = " ".join(f"[{number}]" for number in marks)
    for sign, stands in (("segno", bar.segno), ("coda", bar.coda)):
        if stands:
            name = ids.of_bar(sign, bar.index)
            add(measure, "repeatMark", id=name, tstamp="1", staff="1", place="above", func=sign)
    texts = []
    if bar.repeat_end and bar.times > 2:
        texts.append(f"{bar.times}×")
    if bar.to_coda:
        texts.append("To Coda")
    if bar.fine:
        texts.append("Fine")
    if bar.jump:
        texts.append(bar.jump)
    for k, text in enumerate(texts):
        word = add(
            measure,
            "dir",
            id=ids.of_bar("jump", bar.index, k),
            tstamp=when(bar.length, bar),
            staff="1",
            place="above",
        )
        rend = add(word, "rend", halign="right", fontweight="bold")
        rend.text = text
