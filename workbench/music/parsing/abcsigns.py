"""Jump marks of an ABC tune: D.C., D.S., Fine, Segno, Coda, which the reading library drops.

Bars are counted in the text and held against the bars that were read, note for note;
where the two do not agree, nothing is taken.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field

from workbench.music.parsing.signs import Signs

#: Decorations of ABC 2.1, 4.14, and words as they are printed.
_DECORATIONS = {
    "D.C.": "D.C.", "DC": "D.C.", "dacapo": "D.C.", "D.C.alfine": "D.C. al Fine",
    "D.C.alcoda": "D.C. al Coda", "D.S.": "D.S.", "DS": "D.S.", "D.S.alfine": "D.S. al Fine",
    "D.S.alcoda": "D.S. al Coda", "fine": "Fine", "segno": "Segno", "coda": "Coda",
    "dacoda": "To Coda", "tocoda": "To Coda",
}  # fmt: skip
_TOKEN = re.compile(
    r"""
    (?P<quoted>"[^"]*")
  | !(?P<mark>[A-Za-z.\d ]+)!
  | (?P<field>\[[A-Za-z]:[^\]]*\])
  | (?P<grace>\{[^}]*\})
  | (?P<line>:*\[?\|+[\]:]*|::+|\|\])
  | (?P<chord>\[[\^_=]*[A-Ga-g][^\]]*\])
  | (?P<note>[\^_=]*[A-Ga-g][,']*)
  | (?P<rest>[zx])
  | (?P<other>.)
    """,
    re.VERBOSE,
)
_JUMP = re.compile(r"(?i)(d\.?\s?[cs]\b|da\s?capo|dal\s?segno|fine|segno|to coda|coda)")
_WORDS = re.compile(r"^[\^_<>@]?\s*(.*?)\s*$")


@dataclass
class _Counted:
    notes: int = 0
    sounds: bool = False  # holds a note or a rest
    marks: list[str] = field(default_factory=list)


def abc_signs(tune: str, notes: Sequence[int]) -> list[Signs] | None:
    """The jump marks of a tune of one voice, bar by bar.

    ``notes`` counts the struck notes of each bar that was read, grace notes aside.
    None where the tune has several voices or its bars cannot be told.
    """
    if len(set(re.findall(r"(?m)(?:^|\[)V:\s*(\S+)", tune))) > 1:
        return None
    bars = _bars(_music(tune))
    if [bar.notes for bar in bars] != list(notes):
        return None
    out = []
    for bar in bars:
        signs = Signs()
        for mark in bar.marks:
            if mark == "Coda":
                signs.coda_sign = True
            else:
                signs.take_words(mark)
        out.append(signs)
    return out


def _music(tune: str) -> str:
    """The lines of notes, without fields, comments and line ends."""
    _, _, body = re.sub(r"(?m)%.*$", "", tune).partition("\nK:")
    lines = body.split("\n")[1:]
    return " ".join(line.rstrip("\\") for line in lines if not re.match(r"\s*[A-Za-z+]:", line))


def _bars(text: str) -> list[_Counted]:
    bars = [_Counted()]
    tied = last_note = ""
    for token in _TOKEN.finditer(text):
        kind = token.lastgroup
        if kind == "line":
            if bars[-1].sounds:
                bars.append(_Counted())
            elif bars[-1].marks and len(bars) > 1:
                # marks between two bar lines belong to the bar that has just ended
                bars[-2].marks += bars[-1].marks
                bars[-1].marks = []
        elif kind == "note":
            last_note = token.group().lstrip("^_=")
            bars[-1].sounds = True
            bars[-1].notes += last_note != tied
            tied = ""
        elif kind == "rest":
            bars[-1].sounds = True
        elif token.group() == "-":
            tied = last_note
        elif kind == "chord":
            inner = re.sub(r'"[^"]*"', "", token.group())
            bars[-1].sounds = True
            bars[-1].notes += len(re.findall(r"[A-Ga-g]", inner))
        elif kind == "mark":
            name = token.group("mark").replace(" ", "")
            if name in _DECORATIONS:
                bars[-1].marks.append(_DECORATIONS[name])
        elif kind == "quoted":
            found = _WORDS.match(token.group().strip('"'))
            words = found.group(1) if found else ""
            if _JUMP.match(words):
                bars[-1].marks.append(words)
    if not bars[-1].sounds:
        last = bars.pop()
        if bars:
            bars[-1].marks += last.marks
    return bars
