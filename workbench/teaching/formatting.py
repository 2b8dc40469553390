"""The simple formatting of teaching notes: *emphasis* and **strong**."""

from __future__ import annotations

import html
import re
from dataclasses import dataclass

_MARK = re.compile(r"\*\*(?=\S)(.+?)(?<=\S)\*\*(?!\*)|\*(?=[^\s*])(.+?)(?<=[^\s*])\*", re.DOTALL)


@dataclass(frozen=True)
class Span:
    """A stretch of text in one style."""

    text: str
    emphasis: bool = False
    strong: bool = False


def spans(text: str) -> tuple[Span, ...]:
    """The text in styled stretches; a star that opens nothing stays a star."""
    return tuple(_spans(text, False, False))


def _spans(text: str, emphasis: bool, strong: bool) -> list[Span]:
    out: list[Span] = []
    at = 0
    for found in _MARK.finditer(text):
        if found.start() > at:
            out.append(Span(text[at : found.start()], emphasis, strong))
        if found.group(1) is not None:
            out += _spans(found.group(1), emphasis, True)
        else:
            out += _spans(found.group(2), True, strong)
        at = found.end()
    if at < len(text):
        out.append(Span(text[at:], emphasis, strong))
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
