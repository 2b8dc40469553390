"""Verovio's SVG made plain enough for Qt's reader.

The inner ``<svg>`` gives way to the outer view box, styles to attributes, and
nested ``<tspan>``s to one ``<text>`` a run (see ``texts``).
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field

from lxml import etree

from workbench.engraving import ids
from workbench.engraving.app import SANS, SERIF
from workbench.engraving.drawing.boxes import boxes
from workbench.engraving.drawing.fingers import RING, place
from workbench.engraving.drawing.halfties import draw as draw_half_ties
from workbench.engraving.drawing.rests import clear_rests
from workbench.engraving.drawing.texts import Face, Run, circle, draw, own_ink, set_text
from workbench.engraving.mei.marked import FingerMark, HalfTie

Tint = Callable[[str], str | None]  # element id to its own ink

SVG = "http://www.w3.org/2000/svg"
_ID = "id"
BELOW = 60.0  # units under what is lowest


@dataclass(frozen=True)
class Flat:
    """A flattened drawing. ``width``/``height`` in engraving units (staff space
    180); ``ids`` in document order; ``bars`` index of a bar to (left, right) edges;
    ``staff_top``/``staff_bottom`` the outer lines of the first and last staff;
    ``lines`` the heights of all lines from the top."""

    svg: bytes
    width: float
    height: float
    ids: tuple[str, ...]
    bars: dict[int, tuple[float, float]] = field(default_factory=dict)
    staff_top: float = 0.0
    staff_bottom: float = 0.0
    lines: tuple[float, ...] = ()


def flatten(
    svg: str,
    ink: str = "#000000",
    marks: Sequence[FingerMark] = (),
    paper: str | None = None,
    ties: Sequence[HalfTie] = (),
    tint: Tint | None = None,
) -> Flat:
    """Flatten one page of Verovio's SVG, drawn in ``ink``, and set finger marks and half
    ties into it. With ``paper`` a number on staff lines gets that ground; ``tint`` gives
    elements an ink of their own by their id."""
    source = etree.fromstring(svg.encode("utf-8"))
    inner = next(e for e in source if _name(e) == "svg")
    _, _, width, height = (float(x) for x in inner.get("viewBox").split())
    root = etree.Element(f"{{{SVG}}}svg", nsmap={None: SVG, "xlink": _XLINK})
    root.set("viewBox", f"0 0 {width:g} {height:g}")
    root.set("width", f"{width:g}")
    root.set("height", f"{height:g}")
    for child in source:
        if _name(child) == "defs":
            root.append(child)
    body = etree.SubElement(root, f"{{{SVG}}}g", fill=ink)
    for child in list(inner):
        body.append(child)
    if tint is not None:
        _tint(body, tint)
    _clean(body, ink)
    bars, lines = _bars(body)
    top, bottom = min(lines, default=0.0), max(lines, default=0.0)
    page, low = _page(body), 0.0
    if page is not None:
        _, dy = _shift(page)
        rests = clear_rests(page, [y - dy for y in lines])
        low = rests + dy + BELOW if rests else 0.0
    if ties:
        _set_ties(body, ties, bars)
    low = max(low, _set_marks(body, marks, lines, ink, paper, tint))
    if low > height:
        height = low
        root.set("viewBox", f"0 0 {width:g} {height:g}")
        root.set("height", f"{height:g}")
    names = tuple(e.get(_ID) for e in body.iter() if e.get(_ID))
    return Flat(etree.tostring(root), width, height, names, bars, top, bottom, tuple(lines))


_XLINK = "http://www.w3.org/1999/xlink"


def _name(element: etree._Element) -> str:
    return etree.QName(element).localname if isinstance(element.tag, str) else ""


def _tint(body: etree._Element, tint: Tint) -> None:
    """Give groups their own ink; ``data-ink`` tells it to strokes and texts inside."""
    for group in body.iter(f"{{{SVG}}}g"):
        own = tint(group.get(_ID) or "")
        if own:
            group.set("fill", own)
            group.set("data-ink", own)


def _clean(body: etree._Element, ink: str) -> None:
    for element in list(body.iter()):
        name = _name(element)
        classes = (element.get("class") or "").split()
        if "placeholder" in classes:
            for child in [c for c in element if _name(c) != "g"]:
                element.remove(child)
        if "notehead" in classes:
            owner = element.getparent().get(_ID) or ""
            element.set(_ID, ids.head(owner))
        if name in ("title", "desc", "style"):
            parent = element.getparent()
            if parent is not None:
                parent.remove(element)
        elif name == "text":
            set_text(element, ink)
        elif element.get("stroke-width") and _straight(element):
            _bar_shape(element)
        elif element.get("stroke-width"):
            element.set("stroke", own_ink(element) or ink)
            if element.get("fill-opacity") == "0" or _open_line(element):
                element.set("fill", "none")


def _straight(element: etree._Element) -> bool:
    """A level or upright line: a path of one ``M x y L x y``."""
    words = (element.get("d") or "").replace("M", "").replace("L", "").split()
    return (
        len(words) == 4
        and (words[0] == words[2] or words[1] == words[3])
        and not element.get("stroke-dasharray")
    )


def _bar_shape(path: etree._Element) -> None:
    """Turn a straight stroke into a filled rectangle: thin strokes drop out of
    Qt's raster painting at some scales, filled shapes do not."""
    words = path.attrib.pop("d").replace("M", "").replace("L", "").split()
    x0, y0, x1, y1 = (float(w) for w in words)
    pen = float(path.attrib.pop("stroke-width"))
    square = pen / 2 if path.attrib.pop("stroke-linecap", "") == "square" else 0.0
    left, right = sorted((x0, x1))
    top, bottom = sorted((y0, y1))
    if y0 == y1:
        left, right, top, bottom = left - square, right + square, top - pen / 2, top + pen / 2
    else:
        left, right, top, bottom = left - pen / 2, left + pen / 2, top - square, bottom + square
    path.tag = f"{{{SVG}}}rect"
    for name, value in (("x", left), ("y", top), ("width", right - left), ("height", bottom - top)):
        path.set(name, f"{value:g}")


def _open_line(element: etree._Element) -> bool:
    data = element.get("d") or ""
    return _name(element) == "polyline" or (bool(data) and "C" not in data and "c" not in data)


def _set_marks(
    body: etree._Element,
    marks: Sequence[FingerMark],
    lines: Sequence[float],
    ink: str,
    paper: str | None,
    tint: Tint | None,
) -> float:
    """Draw the finger marks; returns how far down they reach."""
    page = _page(body)
    if page is None or not marks or not lines:
        return 0.0
    _, dy = _shift(page)
    low = 0.0
    tab = [y - dy for y in (lines[5:] or lines)]
    for one in place(marks, list(boxes(page)), tab):
        group = etree.SubElement(page, f"{{{SVG}}}g", id=one.mark.id)
        group.set("class", "note" if one.kind == "grace" else "fing")
        if paper and one.kind != "right":
            box = one.box.grown(10.0)
            etree.SubElement(
                group,
                f"{{{SVG}}}rect",
                x=f"{box.left:g}",
                y=f"{box.top:g}",
                width=f"{box.right - box.left:g}",
                height=f"{box.bottom - box.top:g}",
                fill=paper,
            )
        right = one.kind == "right"
        face = Face(SERIF, bold=True, italic=True) if right else Face(SANS, bold=True)
        own = (tint(one.mark.id) if tint else None) or ink
        if one.kind == "string":
            middle = ((one.box.left + one.box.right) / 2, (one.box.top + one.box.bottom) / 2)
            circle(group, *middle, RING - 9.0, own)
        draw(group, Run(one.mark.text, one.size, face), one.x, one.y, own)
        low = max(low, one.box.bottom + dy + BELOW)
    return low


def _page(body: etree._Element) -> etree._Element | None:
    return next((g for g in body.iter(f"{{{SVG}}}g") if g.get("class") == "page-margin"), None)


def _set_ties(
    body: etree._Element, ties: Sequence[HalfTie], bars: dict[int, tuple[float, float]]
) -> None:
    page = _page(body)
    if page is not None:
        dx, _ = _shift(page)
        draw_half_ties(page, ties, list(boxes(page)), [(a - dx, b - dx) for a, b in bars.values()])


def _shift(page: etree._Element) -> tuple[float, float]:
    inside = page.get("transform").removeprefix("translate(").rstrip(")")
    dx, dy = (float(v) for v in inside.split(","))
    return dx, dy


def _bars(body: etree._Element) -> tuple[dict[int, tuple[float, float]], list[float]]:
    """Bar edges and heights of the lines of all staves from the top, in the root's units."""
    dx = dy = 0.0
    bars: dict[int, tuple[float, float]] = {}
    tops: set[float] = set()
    for element in body.iter(f"{{{SVG}}}g"):
        kind = (element.get("class") or "").split(" ")[0]
        if kind == "page-margin":
            dx, dy = _shift(element)
        elif kind == "measure":
            edges: list[float] = []
            for line in element.iterfind(f"{{{SVG}}}g[@class='staff']/{{{SVG}}}rect"):
                left, wide = float(line.get("x")), float(line.get("width"))
                edges += [left + dx, left + wide + dx]
                tops.add(float(line.get("y")) + float(line.get("height")) / 2 + dy)
            index = ids.bar_of(element.get(_ID) or "")
            if edges and index is not None:
                bars[index] = (min(edges), max(edges))
    return bars, sorted(tops)
