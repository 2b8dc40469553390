"""Rests moved clear of what other voices have at the same moment.

The engraver sets the rests of two voices apart; where three or more meet it lets them
lie on note heads. They are moved here, by whole staff spaces, the least way that is free.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from lxml import etree

from workbench.engraving.drawing.boxes import Box, boxes

SPACE = 180.0  # a staff space in engraving units
FARTHEST = 14  # spaces that a rest may be moved
ASIDE = (0.0, 120.0, -120.0, 240.0, -240.0)  # to the right, where up and down is no room
_AIR = 14.0
_SOFT = ("tie", "slur", "lv")  # a rest may lie under an arc
_MOVED = re.compile(r"translate\(\s*(-?[\d.]+)\s*,\s*(-?[\d.]+)")


def clear_rests(page: etree._Element, lines: Sequence[float]) -> float:
    """Move rests that lie on other signs. ``lines``: heights of the lines of all staves
    from the top, in the page's units; rests stay above the second staff. Returns how far
    down the lowest of those moved reaches, 0 where none was."""
    every = _whole_rests([b for b in boxes(page) if b.kind not in _SOFT])
    rests = [b for b in every if b.kind == "rest"]
    if not any(_hit(r, r.owner, every) for r in rests):
        return 0.0
    low = 0.0
    floor = lines[5] - SPACE if len(lines) > 5 else float("inf")
    groups = {g.get("id"): g for g in page.iter("{*}g") if _is_rest(g)}
    for owner in dict.fromkeys(r.owner for r in sorted(rests, key=lambda r: (r.left, r.top))):
        own = [b for b in every if b.owner == owner]
        group = groups.get(owner)
        if group is None or not any(_hit(b, owner, every) for b in own):
            continue
        aside, by = _way(own, owner, every, floor)
        if aside or by:
            _move(group, aside, by)
            every = [b.moved(aside, by) if b.owner == owner else b for b in every]
            low = max(low, *(b.bottom + by for b in own))
    return low


def _whole_rests(every: Sequence[Box]) -> list[Box]:
    """The boxes with one for each rest, its dots included: nothing fits between them."""
    rests: dict[str, Box] = {}
    for box in every:
        if box.kind == "rest" or box.owner in rests:
            rests[box.owner] = rests[box.owner].joined(box) if box.owner in rests else box
    return [b for b in every if b.owner not in rests] + list(rests.values())


def _is_rest(group: etree._Element) -> bool:
    return (group.get("class") or "").split(" ")[0] == "rest" and bool(group.get("id"))


def _hit(box: Box, owner: str, every: Sequence[Box]) -> float:
    """How much of other signs a box covers."""
    wide = box.grown(_AIR)
    return sum(wide.overlap(b) for b in every if b.owner != owner)


def _way(own: Sequence[Box], owner: str, every: Sequence[Box], floor: float) -> tuple[float, float]:
    """By how much to move right and down: the least that is free, up or down before
    aside, else what covers least."""
    reach = max(ASIDE) + _AIR
    left, right = min(b.left for b in own) - reach, max(b.right for b in own) + reach
    near = [b for b in every if b.right > left and b.left < right]
    best: tuple[float, float, float, float] | None = None
    for aside in ASIDE:
        for step in range(FARTHEST + 1):
            for by in sorted({step * SPACE, -step * SPACE}, reverse=True):
                moved = [b.moved(aside, by) for b in own]
                if min(b.top for b in moved) < 0 or max(b.bottom for b in moved) > floor:
                    continue
                covered = sum(_hit(b, owner, near) for b in moved)
                found = (covered, step * SPACE + 4 * abs(aside), aside, by)
                if best is None or found[:2] < best[:2]:
                    best = found
    return best[2:] if best else (0.0, 0.0)


def _move(group: etree._Element, aside: float, by: float) -> None:
    for element in group.iter():
        for names, shift in ((("x", "cx"), aside), (("y", "cy"), by)):
            for name in names:
                if element.get(name) is not None:
                    element.set(name, f"{float(element.get(name)) + shift:g}")
        place = element.get("transform")
        if place:
            element.set(
                "transform",
                _MOVED.sub(
                    lambda m: f"translate({float(m[1]) + aside:g}, {float(m[2]) + by:g}", place
                ),
            )
