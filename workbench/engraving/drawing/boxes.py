"""Rectangles of everything drawn in a flattened system, for placing marks around it."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

from lxml import etree

from workbench.engraving.drawing import glyphs

_NUMBER = re.compile(r"-?\d+(?:\.\d+)?")
_SKIP = {"ledgerLines", "staff", "grpSym", "system"}
KINDS = {
    "notehead",
    "stem",
    "flag",
    "beam",
    "accid",
    "dots",
    "dot",
    "rest",
    "mRest",
    "barLine",
    "clef",
    "keySig",
    "meterSig",
    "tie",
    "slur",
    "lv",
    "tupletNum",
    "tupletBracket",
    "artic",
    "fermata",
    "repeatMark",
    "ending",
    "reh",
    "tuplet",
    "tempo",
    "harm",
    "dir",
    "mNum",
    "note",
    "graceGrp",
}


@dataclass(frozen=True)
class Box:
    """``owner``: xml:id of the nearest note, rest or mark above the shape."""

    left: float
    top: float
    right: float
    bottom: float
    kind: str
    owner: str = ""

    def overlap(self, other: Box) -> float:
        """Shared area."""
        wide = min(self.right, other.right) - max(self.left, other.left)
        high = min(self.bottom, other.bottom) - max(self.top, other.top)
        return wide * high if wide > 0 and high > 0 else 0.0

    def moved(self, dx: float, dy: float) -> Box:
        return Box(
            self.left + dx, self.top + dy, self.right + dx, self.bottom + dy, self.kind, self.owner
        )

    def joined(self, other: Box) -> Box:
        """The box around both."""
        return Box(
            min(self.left, other.left),
            min(self.top, other.top),
            max(self.right, other.right),
            max(self.bottom, other.bottom),
            self.kind,
            self.owner,
        )

    def grown(self, by: float) -> Box:
        return Box(
            self.left - by, self.top - by, self.right + by, self.bottom + by, self.kind, self.owner
        )


def boxes(parent: etree._Element, kind: str = "", owner: str = "") -> Iterator[Box]:
    """Boxes of the shapes under ``parent``, in the coordinates of the page margin.

    Slanted beams and arcs come as several boxes along their course. Staff and
    ledger lines are left out: marks may stand on them.
    """
    for child in parent:
        if not isinstance(child.tag, str):
            continue
        name = etree.QName(child).localname
        if name == "g":
            words = (child.get("class") or "").split()
            if child.get("data-box"):
                left, top, right, bottom = (float(v) for v in child.get("data-box").split())
                yield Box(left, top, right, bottom, kind, owner)
                continue
            own = words[0] if words else ""
            inner = own if own in KINDS or own in _SKIP else kind
            marked = own in KINDS and own not in ("notehead", "stem", "flag", "accid", "dots")
            inner_owner = (child.get("id") or owner) if marked else owner
            yield from boxes(child, inner, inner_owner)
        elif kind not in _SKIP:
            yield from _shape(child, name, kind, owner)


def _shape(element: etree._Element, name: str, kind: str, owner: str) -> Iterator[Box]:
    if name == "use":
        href = element.get("{http://www.w3.org/1999/xlink}href") or ""
        size = glyphs.extent(href.lstrip("#").split("-")[0])
        place = [float(n) for n in _NUMBER.findall(element.get("transform") or "")]
        if size is None or len(place) < 2:
            return
        scale = place[2] if len(place) > 2 else 1.0
        x, y, wide, high = (v * scale for v in size)
        left, bottom = place[0] + x, place[1] - y
        yield Box(left, bottom - high, left + wide, bottom, kind, owner)
    elif name in ("rect", "ellipse", "circle"):
        value = {
            k: float(element.get(k) or 0)
            for k in ("x", "y", "width", "height", "cx", "cy", "rx", "ry", "r")
        }
        if name == "rect":
            yield Box(
                value["x"],
                value["y"],
                value["x"] + value["width"],
                value["y"] + value["height"],
                kind,
                owner,
            )
        else:
            rx, ry = value["rx"] or value["r"], value["ry"] or value["r"]
            yield Box(
                value["cx"] - rx, value["cy"] - ry, value["cx"] + rx, value["cy"] + ry, kind, owner
            )
    elif name in ("path", "polygon", "polyline"):
        numbers = [
            float(n) for n in _NUMBER.findall(element.get("d") or element.get("points") or "")
        ]
        points = list(zip(numbers[::2], numbers[1::2], strict=False))
        if points:
            pen = float(element.get("stroke-width") or 0) / 2
            yield from _course(element, points, pen, kind, owner)


def _course(
    element: etree._Element,
    points: list[tuple[float, float]],
    pen: float,
    kind: str,
    owner: str,
) -> Iterator[Box]:
    data = element.get("d") or ""
    if kind in ("tie", "slur", "lv") and "C" in data and len(points) >= 4:
        arc = [_cubic(points[:4], k / 12) for k in range(13)]
        for a, b in pairwise(arc):
            yield _around([a, b], 22.0, kind, owner)
    elif kind == "beam" and len(points) >= 4:
        a, b, c, d = points[:4]
        upper, lower = ((a, b), (d, c)) if a[1] < d[1] else ((d, c), (a, b))
        for k in range(8):
            corners = [
                _between(*upper, k / 8),
                _between(*upper, (k + 1) / 8),
                _between(*lower, k / 8),
                _between(*lower, (k + 1) / 8),
            ]
            yield _around(corners, 0.0, kind, owner)
    else:
        yield _around(points, pen, kind, owner)


def _between(a: tuple[float, float], b: tuple[float, float], t: float) -> tuple[float, float]:
    return (a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t)


def _cubic(p: list[tuple[float, float]], t: float) -> tuple[float, float]:
    u = 1 - t
    weights = (u**3, 3 * u * u * t, 3 * u * t * t, t**3)
    return (
        sum(w * q[0] for w, q in zip(weights, p, strict=True)),
        sum(w * q[1] for w, q in zip(weights, p, strict=True)),
    )


def _around(points: list[tuple[float, float]], pen: float, kind: str, owner: str) -> Box:
    xs, ys = [p[0] for p in points], [p[1] for p in points]
    return Box(min(xs) - pen, min(ys) - pen, max(xs) + pen, max(ys) + pen, kind, owner)
