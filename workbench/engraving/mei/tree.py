"""MEI elements for the layers of a bar."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from fractions import Fraction
from itertools import groupby

from lxml import etree

from workbench.engraving import ids
from workbench.engraving.mei.accidentals import SIGNS
from workbench.engraving.mei.beams import beam_groups
from workbench.engraving.mei.voices import Event, Head, Layer
from workbench.music.model import Bar, Key, Note
from workbench.music.notation.values import Value

MEI = "http://www.music-encoding.org/ns/mei"
XML_ID = "{http://www.w3.org/XML/1998/namespace}id"
ARTICULATIONS = {
    "staccato": "stacc",
    "staccatissimo": "stacciss",
    "accent": "acc",
    "tenuto": "ten",
    "marcato": "marc",
    "strong accent": "marc",
    "harmonic": "harm",
}


def add(parent: etree._Element, name: str, **attributes: str) -> etree._Element:
    """A child element; ``clef_line`` becomes ``clef.line``, ``id`` the xml:id."""
    child = etree.SubElement(parent, f"{{{MEI}}}{name}")
    for key, value in attributes.items():
        child.set(XML_ID if key == "id" else key.rstrip("_").replace("_", "."), value)
    return child


def signature(key: Key) -> str:
    """A key signature as MEI writes it: ``2s``, ``3f``, ``0``."""
    if key.fifths == 0:
        return "0"
    return f"{abs(key.fifths)}{'s' if key.fifths > 0 else 'f'}"


def meter(staff: etree._Element, bar: Bar, shown: bool = True) -> None:
    """The time signature of a bar at the head of a staff. Every staff needs it, shown or not:
    marks are set by beats of the meter, and one staff without it makes all beats quarters."""
    count, unit = bar.time_signature
    sign = add(staff, "meterSig", count=str(count), unit=str(unit))
    if not shown:
        sign.set("visible", "false")


def _timing(element: etree._Element, value: Value) -> None:
    element.set("dur", value.sign)
    if value.dots:
        element.set("dots", str(value.dots))


def _pitch(element: etree._Element, note: Note, signs: Mapping[str, str], head_id: str) -> None:
    element.set(XML_ID, head_id)
    element.set("pname", note.pitch.step.lower())
    element.set("oct", str(note.pitch.octave))
    if head_id in signs:
        element.set("accid", signs[head_id])
    elif note.pitch.alter:
        element.set("accid.ges", SIGNS.get(note.pitch.alter, "n"))


def staff_layer(
    staff: etree._Element,
    layer: Layer,
    meter: tuple[int, int],
    length: Fraction,
    signs: Mapping[str, str],
    bar: int,
) -> None:
    """Write one layer of the five-line staff of a bar."""
    out = add(staff, "layer", n=str(layer.number))
    out.set(XML_ID, ids.layer(bar, layer.number, layer.voice))
    if not layer.trailing and not any(e.heads for e in layer.events):
        add(out, "space" if any(e.hidden for e in layer.events) else "mRest")
        if out[-1].tag.endswith("space"):
            out[-1].set("dur", "1")
        return

    for group, members in groupby(layer.events, key=lambda e: e.group):
        row = list(members)
        parent = out
        if group:
            ratio = row[0].value.ratio
            parent = add(out, "tuplet", num=str(ratio[0]), numbase=str(ratio[1]))
            if all(e.hidden for e in row):
                _hide_tuplet(parent)
            elif len(beam_groups(row, meter, length)) == 1:
                parent.set("bracket.visible", "false")
        for beam in beam_groups(row, meter, length):
            _write_graces(parent, beam[0].graces, layer.stems, signs)
            target = add(parent, "beam") if len(beam) > 1 else parent
            for event in beam:
                _write_event(target, event, layer.stems, signs)
                if not event.heads and not event.hidden:
                    target[-1].set(XML_ID, ids.rest(bar, layer.number, event.onset))
    _write_graces(out, layer.trailing, layer.stems, signs)


def _write_graces(
    parent: etree._Element, graces: Sequence[Note], stems: str, signs: Mapping[str, str]
) -> None:
    """One grace note is a crossed eighth, several are sixteenths under a beam."""
    several = len({g.id for g in graces}) > 1
    target = add(parent, "beam") if several else parent
    for grace in graces:
        element = add(target, "note", grace="unacc", dur="16" if several else "8")
        if not several:
            element.set("stem.mod", "1slash")
        if stems:
            element.set("stem.dir", stems)
        _pitch(element, grace, signs, grace.id)


def _hide_tuplet(element: etree._Element) -> None:
    element.set("num.visible", "false")
    element.set("bracket.visible", "false")


def _write_event(
    parent: etree._Element, event: Event, stems: str, signs: Mapping[str, str]
) -> None:
    if not event.heads:
        rest = add(parent, "space" if event.hidden else "rest")
        _timing(rest, event.value)
        return
    carrier = parent
    if len(event.heads) > 1:
        carrier = add(parent, "chord")
        _timing(carrier, event.value)
    for head in event.heads:
        note = add(carrier, "note")
        if carrier is parent:
            _timing(note, event.value)
        _pitch(note, head.note, signs, head.id)
    top = carrier if carrier is not parent else parent[-1]
    if stems:
        top.set("stem.dir", stems)
    if not any(h.tie_in for h in event.heads):
        words = {
            ARTICULATIONS[a]
            for h in event.heads
            for a in h.note.articulations
            if a in ARTICULATIONS
        }
        if words:
            top.set("artic", " ".join(sorted(words)))


def tab_layer(
    staff: etree._Element,
    events: Sequence[Event],
    places: Mapping[str, tuple[int, int]],
) -> None:
    """Write the tablature of a bar: ``places`` gives (string, fret) by note id."""
    out = add(staff, "layer", n="1")
    if not any(e.heads for e in events):
        add(out, "space", dur="1")
        return

    def write(parent: etree._Element, event: Event) -> None:
        heads: list[Head] = [h for h in event.heads if h.note.id in places]
        if not heads:
            _timing(add(parent, "space"), event.value)
            return
        group = add(parent, "tabGrp")
        _timing(group, event.value)
        for head in sorted(heads, key=lambda h: places[h.note.id]):
            string, fret = places[head.note.id]
            note = add(group, "note", id=ids.figure(head.note.id))
            note.set("tab.course", str(string))
            note.set("tab.fret", str(fret))

    # beams mean nothing here: every event stands for itself
    for group, members in groupby(events, key=lambda e: e.group):
        row = list(members)
        parent = out
        if group:
            ratio = row[0].value.ratio
            parent = add(out, "tuplet", num=str(ratio[0]), numbase=str(ratio[1]))
            _hide_tuplet(parent)
        for event in row:
            write(parent, event)
