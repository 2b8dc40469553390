"""What each thing on a page is - heading, paragraph, table cell, figure, ornament -
told while it is painted, so that the PDF can carry it for screen readers.

The painter's PDF device knows no structure. A line far outside the paper marks in
its drawing where a new thing begins; ``pdf_file`` puts the real operators there.
"""

from __future__ import annotations

from contextvars import ContextVar
from dataclasses import dataclass, field

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QPainter, QPen

ARTIFACT = "Artifact"
#: Where the marking lines stand, in dots of the device; no paper reaches there.
FAR = 29000
FIRST = 40000


@dataclass(frozen=True)
class Tag:
    """``role`` is a structure type of ISO 32000-1, 14.8.4 or ``ARTIFACT``; ``alt`` words
    for a figure; ``within`` the table and row of a cell, by any numbers that tell
    them apart."""

    role: str
    alt: str = ""
    within: tuple[int, int] | None = None


@dataclass
class Recorder:
    """The tags of one document in the order in which they were painted."""

    tags: list[Tag] = field(default_factory=list)


_recording: ContextVar[Recorder | None] = ContextVar("recording", default=None)


def record(recorder: Recorder | None) -> None:
    """Take down tags in this thread from now on; None ends it."""
    _recording.set(recorder)


def begin(
    painter: QPainter, role: str, alt: str = "", within: tuple[int, int] | None = None
) -> None:
    """What is painted next, up to the next call, is ``role``. Only a PDF takes it down."""
    recorder = _recording.get()
    if recorder is None:
        return
    place = -float(FIRST + len(recorder.tags))
    recorder.tags.append(Tag(role, alt, within))
    painter.save()
    painter.resetTransform()
    painter.setPen(QPen(Qt.GlobalColor.black, 0))
    painter.drawLine(QPointF(place, -FAR), QPointF(place, -FAR - 1))
    painter.restore()
