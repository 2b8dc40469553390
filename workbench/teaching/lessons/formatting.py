"""The simple formatting of teaching notes: *emphasis* and **strong**."""

from __future__ import annotations

import html
import re
from dataclasses import dataclass

_MARK = re.compile(r"\*\*(?=\S)(.+?)(?<=\S)\*\*(?!\*)|\*(?=[^\s*])(.+?)(?<=[^\s*])\*", re.DOTALL)


@dataclass(frozen=True)
class StyledText:
    """A stretch of text in one style."""

    text: str
    emphasis: bool = False
    strong: bool = False


def spans(text: str) -> tuple[StyledText, ...]:
    """The text in styled stretches; a star that opens nothing stays a star."""
    return tuple(_spans(text, False, False))


def _spans(text: str, emphasis: bool, strong: bool) -> list[StyledText]:
    out: list[StyledText] = []
    at = 0
    for found in _MARK.finditer(text):
        if found.start() > at:
            out.append(StyledText(text[at : found.start()], emphasis, strong))
        if found.group(1) is not None:
            out += _spans(found.group(1), emphasis, True)
        else:
            out += _spans(found.group(2), True, strong)
        at = found.end()
    if at < len(text):
        out.append(StyledText(text[at:], emphasis, strong))
    return out


@dataclass(frozen=True)
class Part:
    """A stretch of the written text, its places in it: words in a style, or the ``sign``
    that gives them the style."""

    start: int
    end: int
    emphasis: bool = False
    strong: bool = False
    sign: bool = False


def marked(text: str) -> tuple[Part, ...]:
    """The styled words of a text and the signs around them, in order; plain words left out."""
    return tuple(_marked(text, 0, len(text), False, False))


def _marked(text: str, start: int, end: int, emphasis: bool, strong: bool) -> list[Part]:
    out: list[Part] = []
    at = start
    styled = emphasis or strong
    for found in _MARK.finditer(text, start, end):
        if styled and found.start() > at:
            out.append(Part(at, found.start(), emphasis, strong))
        group = 1 if found.group(1) is not None else 2
        inner = (emphasis, True) if group == 1 else (True, strong)
        out.append(Part(found.start(), found.start(group), sign=True))
        out += _marked(text, found.start(group), found.end(group), *inner)
        out.append(Part(found.end(group), found.end(), sign=True))
        at = found.end()
    if styled and at < end:
        out.append(Part(at, end, emphasis, strong))
    return out


def plain(text: str) -> str:
    """The text without its marks, as it is spoken and searched."""
    return "".join(s.text for s in spans(text))


def as_html(text: str) -> str:
    """Safe HTML: ``<em>`` and ``<strong>``, line ends as ``<br>``."""
    out = []
    for s in spans(text):
        body = html.escape(s.text).replace("\n", "<br>")
        body = f"<em>{body}</em>" if s.emphasis else body
        out.append(f"<strong>{body}</strong>" if s.strong else body)
    return "".join(out)
