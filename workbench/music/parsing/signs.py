"""Repeats, endings and jump signs of a bar, from a music21 measure and from words."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from typing import Any
from xml.etree.ElementTree import Element

MOST_TIMES = 16  # a repeat asked for more often is a slip of the file

_CAPO = re.compile(r"\bd\.?\s*c\b\.?|\bda\s+capo\b", re.I)
_SEGNO = re.compile(r"\bd\.?\s*s\b\.?|\bdal\s+segno\b", re.I)
_CLASSES = {
    "DaCapo": "D.C.",
    "DaCapoAlFine": "D.C. al Fine",
    "DaCapoAlCoda": "D.C. al Coda",
    "DalSegno": "D.S.",
    "DalSegnoAlFine": "D.S. al Fine",
    "DalSegnoAlCoda": "D.S. al Coda",
}


@dataclass
class Signs:
    """What one written bar bears. ``coda_sign`` is a bare sign: which of the two
    it means is settled by ``settle_codas``."""

    repeat_start: bool = False
    repeat_end: bool = False
    left_end: int = 0  # times, where a repeat ends on the bar's left
    times: int = 2
    endings: tuple[int, ...] = ()
    segno: bool = False
    coda: bool = False
    coda_sign: bool = False
    to_coda: bool = False
    fine: bool = False
    jump: str = ""
    section: str = ""
    double_bar: bool = False

    def take_words(self, text: str) -> None:
        """Take a printed word such as "D.C. al Fine", "To Coda" or "Fine"."""
        words = " ".join(text.replace("\u00a0", " ").split()).lower().strip(" .()[]")
        back = "D.C." if _CAPO.search(words) else "D.S." if _SEGNO.search(words) else ""
        if back:
            goal = " al Fine" if "fine" in words else " al Coda" if "coda" in words else ""
            self.jump = back + goal if goal or not self.jump else self.jump
        elif words == "fine":
            self.fine = True
        elif words in ("to coda", "al coda", "to the coda"):
            self.to_coda = True
        elif words == "coda":
            self.coda = True
        elif words in ("segno", "\U0001d10b"):
            self.segno = True

    def take_repeat(self, barline: Any) -> None:
        """Take a music21 bar line, left or right."""
        if barline is None:
            return
        if "Repeat" in barline.classes:
            if barline.direction == "start":
                self.repeat_start = True
            else:
                self.repeat_end = True
                self.times = _times(barline)
        elif barline.type in ("double", "final", "heavy", "heavy-heavy", "heavy-light"):
            self.double_bar = True


def _times(barline: Any) -> int:
    times = int(barline.times or 2)
    return times if 1 <= times <= MOST_TIMES else 2


def measure_signs(measure: Any, endings: dict[int, tuple[int, ...]]) -> Signs:
    """The signs of a music21 measure; ``endings`` by ``id`` of the measure object."""
    signs = Signs(endings=endings.get(id(measure), ()))
    left = measure.leftBarline
    if left is not None and "Repeat" in left.classes:
        if left.direction == "end":
            signs.left_end = _times(left)
        else:
            signs.take_repeat(left)
    signs.take_repeat(measure.rightBarline)
    for element in measure:
        classes = element.classes
        if "Repeat" in classes:
            if element is not left:
                signs.take_repeat(element)
        elif "RepeatExpression" in classes:
            _take_expression(signs, element)
        elif "RehearsalMark" in classes:
            signs.section = str(element.content).strip()
        elif "TextExpression" in classes:
            signs.take_words(str(element.content or ""))
    return signs


def _take_expression(signs: Signs, element: Any) -> None:
    name = type(element).__name__
    text = element.getText() or ""
    if name in _CLASSES:
        signs.jump = _CLASSES[name]
    elif name == "Segno":
        signs.segno = True
    elif name == "Fine":
        signs.fine = True
    elif name == "Coda":
        if "to" in text.lower().split():
            signs.to_coda = True
        elif getattr(element, "useSymbol", False) or not text:
            signs.coda_sign = True
        else:
            signs.coda = True
    else:
        signs.take_words(text)


def merge(one: Signs, other: Signs) -> Signs:
    """The signs of the same bar in two parts."""
    return replace(
        one,
        repeat_start=one.repeat_start or other.repeat_start,
        repeat_end=one.repeat_end or other.repeat_end,
        left_end=max(one.left_end, other.left_end),
        times=max(one.times, other.times),
        endings=one.endings or other.endings,
        segno=one.segno or other.segno,
        coda=one.coda or other.coda,
        coda_sign=one.coda_sign or other.coda_sign,
        to_coda=one.to_coda or other.to_coda,
        fine=one.fine or other.fine,
        jump=one.jump or other.jump,
        section=one.section or other.section,
        double_bar=one.double_bar or other.double_bar,
    )


def sound_signs(root: Element) -> list[Signs]:
    """Signs that a MusicXML document gives to playback only (``sound`` elements),
    bar by bar; they also tell a To Coda sign from a Coda sign."""
    out: list[Signs] = []
    for part in root.iter("part"):
        for index, measure in enumerate(part.iter("measure")):
            if index == len(out):
                out.append(Signs())
            sign = out[index]
            for sound in measure.iter("sound"):
                sign.segno |= "segno" in sound.attrib
                sign.coda |= "coda" in sound.attrib
                sign.to_coda |= "tocoda" in sound.attrib
                sign.fine |= "fine" in sound.attrib
                if sound.get("dacapo") == "yes":
                    sign.jump = "D.C."
                elif "dalsegno" in sound.attrib:
                    sign.jump = "D.S."
    return out


def settle_left_ends(signs: list[Signs], *, own_bar: bool) -> None:
    """A repeat that ends on the left of a bar ends the bar before it.

    ``own_bar``: it ends the bar it stands in. music21 puts it there when an
    ABC source lacks a bar line and the parser splits the bar.
    """
    for index, sign in enumerate(signs):
        if sign.left_end:
            target = sign if own_bar else signs[max(0, index - 1)]
            target.repeat_end, target.times = True, sign.left_end


def settle_codas(signs: list[Signs]) -> None:
    """Tell "To Coda" signs from the one at which the Coda starts (the last)."""
    bare = [i for i, s in enumerate(signs) if s.coda_sign]
    leaving = any(s.to_coda for s in signs)
    arriving = any(s.coda for s in signs)
    jumps = [i for i, s in enumerate(signs) if s.jump]
    for place, index in enumerate(bare):
        sign = signs[index]
        if sign.coda or sign.to_coda:
            continue
        last = place == len(bare) - 1
        after_jump = not jumps or index > jumps[0]
        if not arriving and last and (leaving or len(bare) > 1 or after_jump):
            sign.coda = True
        else:
            sign.to_coda = True
