"""The engraved systems of a lesson, kept for a while: another paper or audience seldom
needs other music, and a preview should not wait for the same drawing twice."""

from __future__ import annotations

import threading
from collections import deque
from dataclasses import dataclass

from workbench.engraving.drawing.breaks import line_breaks
from workbench.engraving.drawing.render import Engraver, SystemDrawing
from workbench.engraving.options import PRINTED, MeiOptions
from workbench.fingering.types import Fingering
from workbench.instrument.model import Instrument
from workbench.music.model import Piece
from workbench.teaching.lessons.lesson import Lesson

_KEPT = 12


@dataclass(frozen=True)
class _Made:
    """What was drawn from what. Lesson and fingering are told apart by identity:
    comparing whole pieces is slow."""

    lesson: Lesson
    fingering: Fingering
    line: float
    joints: tuple[int, ...]
    strings: str
    widths: dict[int, float]
    systems: tuple[SystemDrawing, ...]


_made: deque[_Made] = deque(maxlen=_KEPT)
_lock = threading.Lock()


def engraved(
    piece: Piece,
    fingering: Fingering,
    instrument: Instrument,
    marks: tuple[tuple[int, int], ...],
    line: float,
    joints: tuple[int, ...],
    *,
    of: Lesson,
    strings: str = PRINTED,
) -> tuple[SystemDrawing, ...]:
    """The systems of a lesson's piece on lines of that width in engraving units; at the
    ``joints`` (bar indices) a system begins in any case. ``strings`` as in MeiOptions."""
    widths: dict[int, float] | None = None
    with _lock:
        for made in _made:
            if made.lesson is of and made.fingering is fingering and made.strings == strings:
                if (made.line, made.joints) == (line, joints):
                    return made.systems
                widths = made.widths
    engraver = Engraver()
    options = MeiOptions(marks=marks, strings=strings)
    if widths is None:
        widths = engraver.bar_widths(piece, fingering, instrument, options)
    breaks = line_breaks(piece, widths, line, joints)
    options = MeiOptions(marks=marks, breaks=breaks, strings=strings)
    systems = tuple(engraver.systems(piece, fingering, instrument, options, line, paper="#ffffff"))
    with _lock:
        _made.append(_Made(of, fingering, line, joints, strings, widths, systems))
    return systems


def forget() -> None:
    """Keep nothing of what was drawn so far."""
    with _lock:
        _made.clear()
