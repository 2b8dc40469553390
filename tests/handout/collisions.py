"""Finger marks on a painted system that lie on other signs or on one another.

Everything is painted by the paint path of the page: once without the marks, and the
marks alone, in layers so that those with touching rectangles are painted apart. Ink in
the same pixel is a collision. Staff and ledger lines are no signs: figures may stand on
them.
"""

from __future__ import annotations

from itertools import combinations

import numpy as np
from lxml import etree
from PySide6.QtCore import QPointF, QRectF

from tests.engraving.painted import PIXELS, SVG, ink
from workbench.engraving.drawing.flatten import Flat
from workbench.engraving.drawing.render import SystemDrawing
from workbench.engraving.paint import PaintedSystem

INKED = 100  # of 255


def _painted(svg: bytes, keep, width: float, height: float, ground: str) -> np.ndarray:
    """Where there is ink when only what ``keep`` wants of the page is painted."""
    root = etree.fromstring(svg)
    page = next(g for g in root.iter(f"{SVG}g") if g.get("class") == "page-margin")
    for child in list(page):
        if not keep(child):
            page.remove(child)
    for group in list(page.iter(f"{SVG}g")):
        kind = (group.get("class") or "").split(" ")[0]
        if kind == "ledgerLines":
            group.getparent().remove(group)
        if kind == "staff":
            for line in group.findall(f"{SVG}rect"):
                group.remove(line)
    for rect in [r for r in root.iter(f"{SVG}rect") if r.get("fill") == ground]:
        rect.getparent().remove(rect)
    return ink(root, width, height) > INKED


def is_mark(group) -> bool:
    return group.get("class") == "fing"


def mark_rects(system: PaintedSystem) -> dict[str, QRectF]:
    """The rectangles of the finger marks by id, with the height of their line of text."""
    root = etree.fromstring(system.flat.svg)
    found = {}
    for name in [g.get("id") for g in root.iter(f"{SVG}g") if is_mark(g)]:
        rect = system.rect(name)
        assert rect is not None, f"{name} is not painted"
        found[name] = rect
    return found


def _layers(rects: dict[str, QRectF]) -> list[set[str]]:
    """The marks in groups whose rectangles do not touch."""
    out: list[set[str]] = []
    for name, rect in rects.items():
        layer = next((x for x in out if not any(rects[o].intersects(rect) for o in x)), None)
        if layer is None:
            out.append(layer := set())
        layer.add(name)
    return out


def collisions(system: PaintedSystem, ground: str = "#ffffff") -> list[str]:
    """What lies on what, a sentence each; empty where every mark stands free."""
    flat = system.flat
    rects = mark_rects(system)
    size = (flat.width, flat.height, ground)
    layers = [("another sign", _painted(flat.svg, lambda g: not is_mark(g), *size))]
    for names in _layers(rects):
        alone = _painted(flat.svg, lambda g, names=names: g.get("id") in names, *size)
        layers.append(("another mark", alone))
    out: dict[str, None] = {}
    for (what, one), (_, other) in combinations(layers, 2):
        for y, x in np.argwhere(one & other):
            at = QPointF(x / PIXELS, y / PIXELS)
            near = [k for k, r in rects.items() if r.adjusted(-9, -9, 9, 9).contains(at)]
            out[f"{near[0] if near else 'a mark'} lies on {what}"] = None
    return list(out)


_NO_SIGN = {"ledgerLines", "fing", "slur", "tie", "lv"}  # a rest may lie under an arc


def rest_collisions(flat: Flat) -> list[str]:
    """Rests whose ink lies on another sign's, and rests on one another, told by their
    painted rectangles; empty where every rest stands free."""
    system = PaintedSystem(SystemDrawing(flat, 0, 0))
    names = [x for x in flat.ids if x.startswith("rest-")]
    rects = {x: r for x in names if (r := system.rect(x)) is not None}
    out = [
        f"{a} lies on {b}"
        for (a, one), (b, other) in combinations(rects.items(), 2)
        if one.adjusted(9, 9, -9, -9).intersects(other.adjusted(9, 9, -9, -9))
    ]
    both = _only(flat, True) & _only(flat, False)
    for y, x in np.argwhere(both):
        at = QPointF(x / PIXELS, y / PIXELS)
        near = [k for k, r in rects.items() if r.adjusted(-9, -9, 9, 9).contains(at)]
        out.append(f"{near[0] if near else 'a rest'} lies on another sign")
    return list(dict.fromkeys(out))


def _only(flat: Flat, rests: bool) -> np.ndarray:
    """Where there is ink of rests alone, or of all else but rests."""
    root = etree.fromstring(flat.svg)
    page = next(g for g in root.iter(f"{SVG}g") if g.get("class") == "page-margin")
    for shape in [e for e in page.iter() if len(e) == 0 and e.tag != f"{SVG}g"]:
        above = [(a.get("class") or "").split(" ")[0] for a in shape.iterancestors()]
        line = above[0] == "staff"
        if line or _NO_SIGN & set(above) or ("rest" in above) != rests:
            shape.getparent().remove(shape)
    return ink(root, flat.width, flat.height) > INKED
