"""Chord symbols as MusicXML harmony elements."""

from __future__ import annotations

import re
from xml.etree.ElementTree import Element, SubElement

_SYMBOL = re.compile(r"^([A-G])([#b]*)(.*?)(?:/([A-G])([#b]*))?$")
_KINDS = {
    "": "major", "maj": "major", "M": "major", "m": "minor", "min": "minor", "-": "minor",
    "7": "dominant", "maj7": "major-seventh", "M7": "major-seventh", "m7": "minor-seventh",
    "min7": "minor-seventh", "dim": "diminished", "o": "diminished", "o7": "diminished-seventh",
    "dim7": "diminished-seventh", "ø7": "half-diminished", "m7b5": "half-diminished",
    "+": "augmented", "aug": "augmented", "+7": "augmented-seventh", "6": "major-sixth",
    "m6": "minor-sixth", "9": "dominant-ninth", "maj9": "major-ninth", "m9": "minor-ninth",
    "11": "dominant-11th", "13": "dominant-13th", "sus4": "suspended-fourth",
    "sus": "suspended-fourth", "sus2": "suspended-second", "5": "power", "mM7": "major-minor",
}  # fmt: skip


def harmony(text: str, offset: int) -> Element:
    """The element for a symbol as printed, ``offset`` divisions after its place.

    A symbol of no known kind keeps its text and is marked "other".
    """
    element = Element("harmony")
    found = _SYMBOL.match(text)
    if text == "N.C." or not found:
        root = SubElement(element, "root")
        SubElement(root, "root-step", {"text": ""}).text = "C"
        kind = "none" if text == "N.C." else "other"
        SubElement(element, "kind", {"text": text}).text = kind
    else:
        step, sign, name, bass, bass_sign = found.groups()
        root = SubElement(element, "root")
        SubElement(root, "root-step").text = step
        _alter(root, "root-alter", sign)
        SubElement(element, "kind", {"text": name}).text = _KINDS.get(name, "other")
        if bass:
            low = SubElement(element, "bass")
            SubElement(low, "bass-step").text = bass
            _alter(low, "bass-alter", bass_sign)
    if offset:
        SubElement(element, "offset").text = str(offset)
    return element


def _alter(parent: Element, tag: str, sign: str) -> None:
    if sign:
        SubElement(parent, tag).text = str(sign.count("#") - sign.count("b"))
