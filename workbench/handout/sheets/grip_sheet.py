"""The grip sheet: every grip of a piece once, on one page."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction
from typing import Literal

from workbench.engraving.app import ensure_gui
from workbench.fingering.types import FingeredBar, Fingering
from workbench.handout.options import MM, HandoutOptions, Sheet, sheet
from workbench.handout.parts.grip_boxes import GripsBlock
from workbench.handout.parts.grips import GripDiagram, grips_of
from workbench.handout.parts.words import CAUTION, tuning_words
from workbench.handout.setting.blocks import Block, FactsBlock, TextBlock, TitleBlock
from workbench.handout.setting.compose import Page
from workbench.handout.setting.paged import Leaves
from workbench.handout.setting.typeset import SMALL
from workbench.instrument.model import Instrument
from workbench.instrument.table import instrument as instrument_of
from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.teaching.lessons.lesson import Lesson

Order = Literal["appearance", "difficulty"]
_EVERY = 10_000
_LARGEST, _SMALLEST = 1.9, 0.35  # of the size that boxes have on a handout
_READABLE = 0.62  # a finger number is then about 4 points high


def grip_sheet(
    lesson: Lesson, fingering: Fingering, options: HandoutOptions, order: Order = "appearance"
) -> Leaves:
    """All grips of two or more stopped strings, each once with the bars it comes in, as
    large as one page allows.

    ``order``: as they appear, or the easy ones first. Raises BadInput where the piece has
    no such grip, or more than one page can hold readably.
    """
    ensure_gui()
    instrument, piece = instrument_of(lesson.instrument, lesson.capo), lesson.piece
    found = [
        replace(grip, where=bars_of(grip, piece, fingering))
        for grip in grips_of(piece, fingering, instrument, most=_EVERY)
    ]
    if not found:
        raise BadInput(
            "'{title}' has no grip of two or more stopped strings; there is no grip sheet "
            "to print.",
            title=lesson.title,
        )
    if order == "difficulty":
        found.sort(key=difficulty)
    page = sheet(options)
    return Leaves(
        say("{title}: grips", title=lesson.title or piece.title),
        piece.composer,
        options,
        page,
        [_page(lesson, found, instrument, options, page)],
    )


def difficulty(grip: GripDiagram) -> tuple[bool, int, int, int]:
    """Easy grips first: no barre, few fingers, close together, near the nut."""
    fretted = [fret for fret in grip.frets if fret]
    span = max(fretted) - min(fretted)
    fingers = len({finger for finger in grip.fingers if finger})
    return grip.barre is not None, fingers + 2 * max(0, span - 1), span, min(fretted)


def bars_of(grip: GripDiagram, piece: Piece, fingering: Fingering) -> str:
    """The printed numbers of the bars in which the grip is held, such as ``bars 1, 3–5``."""
    stopped = {
        (string, fret, finger)
        for string, (fret, finger) in enumerate(zip(grip.frets, grip.fingers, strict=True), 1)
        if fret
    }
    indices = [
        bar.index
        for bar in fingering.bars
        if any(stopped <= _held(bar, onset) for onset in {n.onset for n in bar.notes})
    ]
    numbers = {bar.index: bar.number for bar in piece.bars}
    runs: list[list[int]] = []
    for index in indices:
        if runs and runs[-1][-1] == index - 1:
            runs[-1].append(index)
        else:
            runs.append([index])
    words = [
        numbers[run[0]] if len(run) == 1 else f"{numbers[run[0]]}–{numbers[run[-1]]}"
        for run in runs
    ]
    if len(indices) == 1:
        return say("bar {bar}", bar=words[0])
    if len(words) > 5:
        return say("bars {bars}, {n} in all", bars=", ".join([*words[:4], "…"]), n=len(indices))
    return say("bars {bars}", bars=", ".join(words))


def _held(bar: FingeredBar, moment: Fraction) -> set[tuple[int, int, int]]:
    """(string, fret, finger) of all that is stopped at a moment."""
    return {
        (n.string, n.fret, n.left or 0)
        for n in bar.notes
        if n.string is not None and n.fret
        and n.onset <= moment < n.onset + (n.held if n.held > 0 else n.duration)
    }  # fmt: skip


def _page(
    lesson: Lesson,
    grips: Sequence[GripDiagram],
    instrument: Instrument,
    options: HandoutOptions,
    page: Sheet,
) -> Page:
    scale, line = page.scale, page.line
    head: list[Block] = [
        TitleBlock(lesson.title or lesson.piece.title, lesson.piece.composer,
                   lesson.piece.arranger, line, scale),
        FactsBlock(
            [
                (say("Instrument"), str(instrument.called)),
                (say("Tuning (string, note)"), tuning_words(instrument)),
                (say("Grips"), str(len(grips))),
            ],
            line,
            scale,
        ),
    ]  # fmt: skip
    care = TextBlock(
        f"**{say('Take care.')}** {say(CAUTION)}", line, scale, style=SMALL, after=0, boxed=True
    )
    heading = say("Grips")
    if options.left_handed:
        heading = say("{heading} (left-handed: string 1 on the left)", heading=heading)
    room = page.room - sum(b.height for b in head) - care.height - 2 * MM
    size = _LARGEST * scale
    made = GripsBlock(tuple(grips), line, size, options.left_handed, heading)
    while made.height > room and size > _SMALLEST:
        size *= 0.97
        made = GripsBlock(tuple(grips), line, size, options.left_handed, heading)
    if made.height > room or size < _READABLE:
        raise BadInput(
            "'{title}' has {n} grips, more than one page can show readably; print the "
            "handout, which shows the new and hard ones.",
            title=lesson.title,
            n=len(grips),
        )
    out, at = Page(), 0.0
    for block in (*head, made):
        out.placed.append((block, at))
        at += block.height
    out.placed.append((care, page.room - care.height))
    return out
