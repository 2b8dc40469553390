"""Lines of text: wrapped by exact widths, painted as real text."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace

from PySide6.QtCore import QPointF
from PySide6.QtGui import QColor, QPainter

from workbench.engraving.app import SANS, SERIF, font, text_width
from workbench.teaching.lessons.formatting import spans

_DRAWN_AT = 100  # pixel size fonts are made at; the painter scales from there
INK = QColor(0, 0, 0)
PAPER = QColor(255, 255, 255)
GREY = QColor(70, 70, 70)


@dataclass(frozen=True)
class Style:
    """``size`` in points."""

    size: float
    family: str = SERIF
    bold: bool = False
    italic: bool = False

    def width(self, text: str) -> float:
        return text_width(text, self.size, self.family, self.bold, self.italic)

    def scaled(self, by: float) -> Style:
        return replace(self, size=self.size * by)


BODY = Style(9.5)
SMALL = Style(8.0)
LABEL = Style(6.8, SANS)
HEADING = Style(9.0, SANS, bold=True)
TITLE = Style(21.0, bold=True)


@dataclass(frozen=True)
class StyledRun:
    text: str
    style: Style


Line = tuple[StyledRun, ...]


def fitting(style: Style, text: str, width: float) -> Style:
    """The style, smaller where the text would be wider than ``width`` (never under 4.5)."""
    while style.width(text) > width and style.size > 4.5:
        style = style.scaled(0.94)
    return style


def draw(
    painter: QPainter, x: float, y: float, text: str, style: Style, color: QColor = INK
) -> float:
    """Draw one run with its baseline at ``y``; returns the width."""
    if text:
        painter.save()
        painter.translate(x, y)
        painter.scale(style.size / _DRAWN_AT, style.size / _DRAWN_AT)
        painter.setFont(font(_DRAWN_AT, style.family, bold=style.bold, italic=style.italic))
        painter.setPen(color)
        painter.drawText(QPointF(0, 0), text)
        painter.restore()
    return style.width(text)


def draw_line(painter: QPainter, x: float, y: float, line: Line) -> None:
    for run in line:
        x += draw(painter, x, y, run.text, run.style)


def line_width(line: Line) -> float:
    return sum(r.style.width(r.text) for r in line)


def wrap(text: str, style: Style, width: float) -> list[Line]:
    """The text, with *emphasis* and **strong**, in lines no wider than ``width``."""
    out: list[Line] = []
    for paragraph in text.replace("\t", " ").split("\n"):
        words: list[StyledRun] = []
        for span in spans(paragraph):
            face = replace(
                style, bold=style.bold or span.strong, italic=style.italic or span.emphasis
            )
            words += [StyledRun(w, face) for w in re.findall(r" +|[^ ]+", span.text)]
        out += _fill(words, width)
    return out


def _fill(words: list[StyledRun], width: float) -> list[Line]:
    lines: list[Line] = []
    row: list[StyledRun] = []
    used = 0.0
    for word in _fitting(_glued(words), width):
        wide = sum(r.style.width(r.text) for r in word)
        blank = all(r.text.isspace() for r in word)
        if row and used + wide > width and not blank:
            lines.append(_merged(row))
            row, used = [], 0.0
        if blank and not row:
            continue
        row += word
        used += wide
    lines.append(_merged(row))
    return lines


def _glued(runs: list[StyledRun]) -> list[list[StyledRun]]:
    """Runs that touch without a space between them stay together."""
    out: list[list[StyledRun]] = []
    for run in runs:
        if out and not run.text.isspace() and not out[-1][-1].text.isspace():
            out[-1].append(run)
        else:
            out.append([run])
    return out


def _fitting(words: list[list[StyledRun]], width: float) -> list[list[StyledRun]]:
    """Words wider than the line are cut."""
    out: list[list[StyledRun]] = []
    for word in words:
        if sum(r.style.width(r.text) for r in word) <= width:
            out.append(word)
            continue
        for run in word:
            part = ""
            for char in run.text:
                if part and run.style.width(part + char) > width:
                    out.append([StyledRun(part, run.style)])
                    part = ""
                part += char
            out.append([StyledRun(part, run.style)])
    return out


def _merged(row: list[StyledRun]) -> Line:
    """Neighbours of one style become one run; no space at the end."""
    out: list[StyledRun] = []
    for run in row:
        if out and out[-1].style == run.style:
            out[-1] = StyledRun(out[-1].text + run.text, run.style)
        else:
            out.append(run)
    if out:
        out[-1] = StyledRun(out[-1].text.rstrip(), out[-1].style)
    return tuple(out)
