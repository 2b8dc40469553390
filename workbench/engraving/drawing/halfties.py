"""Half ties: where a tied note begins or ends outside what is drawn.

The engraver draws none at the edge of a passage.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from lxml import etree

from workbench.engraving.drawing.boxes import Box
from workbench.engraving.mei.marked import HalfTie

SVG = "http://www.w3.org/2000/svg"
_LONG = 330.0  # of an incoming one, engraving units
_GAP = 28.0
_HIGH = 96.0
_THICK = 40.0
_OFF = 84.0  # from the middle of the head to the tips


def draw(
    page: etree._Element,
    ties: Iterable[HalfTie],
    drawn: Sequence[Box],
    bars: Iterable[tuple[float, float]],
) -> None:
    """Draw half ties at their heads. ``drawn`` and ``bars`` (left and right edges) in the
    coordinates of ``page``."""
    heads = {box.owner: box for box in drawn if box.kind == "notehead"}
    edges = list(bars)
    for tie in ties:
        head = heads.get(tie.head)
        if head is None:
            continue
        way = -1.0 if tie.above else 1.0
        y = (head.top + head.bottom) / 2 + way * _OFF
        if tie.incoming:
            left, right = head.left - _LONG, head.left - _GAP
        else:
            left = head.right + _GAP
            ends = [end for start, end in edges if start <= head.left <= end]
            right = max(left + _LONG / 2, min(ends, default=left + _LONG) - _GAP)
        group = etree.SubElement(page, f"{{{SVG}}}g")
        group.set("class", "tie")
        third, outer = (right - left) / 3, y + way * _HIGH
        inner = outer - way * _THICK
        etree.SubElement(
            group, f"{{{SVG}}}path",
            d=f"M{left:g},{y:g} C{left + third:g},{outer:g} {right - third:g},{outer:g} "
            f"{right:g},{y:g} C{right - third:g},{inner:g} {left + third:g},{inner:g} "
            f"{left:g},{y:g}",
        )  # fmt: skip
