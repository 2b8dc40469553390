"""Systems of the strip as pixels, painted once for each state and size."""

from __future__ import annotations

import time
from collections import OrderedDict
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QPainter, QPixmap

from workbench.teaching.lessons.bar_rows import note_numbers
from workbench.teaching.lessons.lesson import BarNote
from workbench.ui.bench.services import engraving_in_this_thread

if TYPE_CHECKING:
    from workbench.engraving.paint import PaintedSystem, Placed
    from workbench.engraving.strip import Strip

KEPT = 32  # systems kept as pictures
AT_ONCE = 0.020  # seconds of painting systems anew in one go


def note_marks(notes: tuple[BarNote, ...]) -> tuple[tuple[int, int], ...]:
    """(bar index, number) of the teaching notes for the score."""
    numbers = note_numbers(notes)
    return tuple(sorted((note.first_bar, numbers[note.id]) for note in notes))


def make_strip(width: float, ink: str, shows: dict[str, bool], voices: tuple[str, ...]) -> Strip:
    """What engraves the score; to be made in the thread that uses it."""
    from workbench.engraving.options import EVERY, PRINTED, MeiOptions
    from workbench.engraving.strip import Strip

    engraving_in_this_thread()
    options = MeiOptions(
        tab=shows["tab"], left=shows["left"], right=shows["right"],
        strings=EVERY if shows.get("strings") else PRINTED,
    )  # fmt: skip
    return Strip(width, ink=ink, options=options, voices=voices)


class Pictures:
    """Paints systems, and keeps the pictures of the last ones seen. When many have to be
    painted anew, as after a zoom, it stops after a while, so that nobody waits."""

    def __init__(self) -> None:
        self._kept: OrderedDict[tuple[int, float], tuple[QPixmap, PaintedSystem]] = OrderedDict()
        self._spent = 0.0

    def clear(self) -> None:
        self._kept.clear()

    def begin(self) -> None:
        """A new look at the strip."""
        self._spent = 0.0

    def picture(self, item: Placed, scale: float, ratio: float) -> QPixmap | None:
        """A placed system at ``scale`` logical pixels an image unit, ``ratio`` real pixels
        to one of them; None where that has to wait until the next look."""
        key = (id(item.system), scale * ratio)
        if key in self._kept:
            self._kept.move_to_end(key)
            return self._kept[key][0]
        if self._spent > AT_ONCE:
            return None
        started = time.thread_time()
        made = self._paint(item, scale, ratio)
        self._spent += time.thread_time() - started
        self._kept[key] = (made, item.system)  # held, so that its id stays its own
        while len(self._kept) > KEPT:
            self._kept.popitem(last=False)
        return made

    def _paint(self, item: Placed, scale: float, ratio: float) -> QPixmap:
        size = item.rect.size() * scale * ratio
        made = QPixmap(max(1, round(size.width())), max(1, round(size.height())))
        made.fill(Qt.GlobalColor.transparent)
        painter = QPainter(made)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        item.system.paint(painter, QPointF(0, 0), item.scale * scale * ratio)
        painter.end()
        made.setDevicePixelRatio(ratio)
        return made
