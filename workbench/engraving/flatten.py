"""Verovio's SVG made plain enough for Qt's reader.

The inner ``<svg>`` gives way to the outer view box, styles to attributes, and
nested ``<tspan>``s to one ``<text>`` a run, in the shipped fonts. Music signs
inside text become outlines.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace

from lxml import etree

from workbench.engraving import glyphs
from workbench.engraving.app import SANS, SERIF, text_width
from workbench.engraving.boxes import boxes
from workbench.engraving.fingers import FingerMark, place

SVG = "http://www.w3.org/2000/svg"
_ID = "id"
#: The shipped faces run wider than the text face the engraver reckons with.
SHRINK = 0.86


@dataclass(frozen=True)
class Face:
    """How a kind of text is set; ``scale`` multiplies the engraver's size,
    ``size`` replaces it (staff space = 180)."""

    family: str = SERIF
    bold: bool = False
    italic: bool = False
    scale: float = SHRINK
    size: float | None = None


_FACES = {
    "ending": Face(SANS, size=300),
    "tempo": Face(SERIF, bold=True, size=350),
    "reh": Face(SANS, bold=True, size=380),
    "dir": Face(SERIF, italic=True, size=330),
    "harm": Face(SANS, bold=True, size=345),
    "mNum": Face(SANS, size=250),
    "tuplet": Face(SERIF, italic=True),
    "note": Face(SANS, bold=True, size=310),
}


@dataclass(frozen=True)
class Flat:
    """A flattened drawing. ``width``/``height`` in engraving units (staff space
    180); ``ids`` in document order; ``bars`` bar id to (left, right) edges;
    ``staff_top``/``staff_bottom`` the outer lines of the first and last staff;
    ``lines`` the heights of all lines from the top."""

    svg: bytes
    width: float
    height: float
    ids: tuple[str, ...]
    bars: dict[str, tuple[float, float]] = field(default_factory=dict)
    staff_top: float = 0.0
    staff_bottom: float = 0.0
    lines: tuple[float, ...] = ()


@dataclass
class _Run:
    text: str
    size: float
    face: Face


def flatten(
    svg: str,
    ink: str = "#000000",
    marks: Sequence[FingerMark] = (),
    paper: str | None = None,
) -> Flat:
    """Flatten one page of Verovio's SVG, drawn in ``ink``, and set the finger
    marks into it. With ``paper`` a number on staff lines gets that ground."""
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
    _clean(body, ink)
    bars, lines = _bars(body)
    top, bottom = min(lines, default=0.0), max(lines, default=0.0)
    low = _set_marks(body, marks, lines, ink, paper)
    if low > height:
        height = low
        root.set("viewBox", f"0 0 {width:g} {height:g}")
        root.set("height", f"{height:g}")
    ids = tuple(e.get(_ID) for e in body.iter() if e.get(_ID))
    return Flat(etree.tostring(root), width, height, ids, bars, top, bottom, tuple(lines))


_XLINK = "http://www.w3.org/1999/xlink"


def _name(element: etree._Element) -> str:
    return etree.QName(element).localname if isinstance(element.tag, str) else ""


def _clean(body: etree._Element, ink: str) -> None:
    for element in list(body.iter()):
        name = _name(element)
        classes = (element.get("class") or "").split()
        if "placeholder" in classes:
            for child in [c for c in element if _name(c) != "g"]:
                element.remove(child)
        if "notehead" in classes:
            owner = element.getparent().get(_ID) or ""
            element.set(_ID, f"head-{owner}")
        if name in ("title", "desc", "style"):
            parent = element.getparent()
            if parent is not None:
                parent.remove(element)
        elif name == "text":
            _set_text(element, ink)
        elif element.get("stroke-width") and _straight(element):
            _bar_shape(element)
        elif element.get("stroke-width"):
            element.set("stroke", ink)
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
    for name, value in (("x", left), ("y", top), ("width", right - left),
                        ("height", bottom - top)):
        path.set(name, f"{value:g}")


def _open_line(element: etree._Element) -> bool:
    data = element.get("d") or ""
    return _name(element) == "polyline" or (bool(data) and "C" not in data and "c" not in data)


def _face(text: etree._Element) -> tuple[Face, str]:
    """The face for a text element and the id of the mark it belongs to."""
    for parent in text.iterancestors():
        kind = (parent.get("class") or "").split(" ")[0]
        own = parent.get(_ID) or ""
        if kind in _FACES:
            return _FACES[kind], own
    return Face(), ""


def _written(text: str | None) -> bool:
    """True for words, and spaces between words; false for the file's indentation."""
    return text is not None and text != "" and (bool(text.strip()) or "\n" not in text)


def _runs(
    element: etree._Element, face: Face, size: float
) -> Iterator[tuple[str, float, Face, etree._Element]]:
    if element.get("font-size"):
        size = float(element.get("font-size").removesuffix("px"))
    if element.get("font-weight"):
        face = replace(face, bold=element.get("font-weight") == "bold")
    if element.get("font-style"):
        face = replace(face, italic=element.get("font-style") == "italic")
    if _written(element.text):
        yield element.text, size, face, element
    for child in element:
        yield from _runs(child, face, size)
        if _written(child.tail):
            yield child.tail, size, face, element


def _set_text(text: etree._Element, ink: str) -> None:
    """Replace a text element by a group of plain one-level texts and outlines."""
    face, own = _face(text)
    x, y = float(text.get("x") or 0), float(text.get("y") or 0)
    anchor = text.get("text-anchor") or "start"
    runs: list[_Run] = []
    for words, size, run_face, element in _runs(text, face, 0.0):
        for holder in (element, *element.iterancestors()):
            if holder is text:
                break
            anchor = holder.get("text-anchor") or anchor
            x = float(holder.get("x") or x)
            y = float(holder.get("y") or y)
        for part, music in _pieces(words):
            if music:
                shown = size * (0.82 if own.startswith("tempo-") else 1.0)
                runs.append(_Run(part, shown, replace(run_face, family="music")))
            else:
                own_size = run_face.size if run_face.size else size * run_face.scale
                runs.append(_Run(part, own_size, run_face))
    if own.startswith("tempo-"):
        y -= 36.0  # clear of the time signature
    group = etree.Element(f"{{{SVG}}}g")
    widths = [_width(r) for r in runs]
    start = x - {"middle": sum(widths) / 2, "end": sum(widths)}.get(anchor, 0.0)
    if own.startswith("mark-"):
        for place_in_row, number in enumerate(own.split("-")[1].split(".")):
            _circle(group, number, start + 500.0 * place_in_row, y, ink)
    else:
        for run, width in zip(runs, widths, strict=True):
            _draw(group, run, start, y, ink)
            start += width
    if own and (text.getparent().get("class") or "").startswith("mNum"):
        words = "".join(r.text for r in runs)
        if words in ("0", "1"):
            group = etree.Element(f"{{{SVG}}}g")
    elif runs:
        tall = max(r.size for r in runs)
        end = x + sum(widths) - {"middle": sum(widths) / 2, "end": sum(widths)}.get(anchor, 0.0)
        left = end - sum(widths)
        group.set("data-box", f"{left:g} {y - 0.73 * tall:g} {end:g} {y + 0.08 * tall:g}")
    text.getparent().replace(text, group)


def _pieces(words: str) -> Iterator[tuple[str, bool]]:
    plain = ""
    for char in words.replace("\n", " "):
        if glyphs.is_music_sign(char):
            if plain:
                yield plain, False
                plain = ""
            yield char, True
        else:
            plain += char
    if plain:
        yield plain, False


def _width(run: _Run) -> float:
    if run.face.family == "music":
        found = glyphs.outline(ord(run.text))
        return found[1] * run.size / 1000 if found else 0.0
    return text_width(run.text, run.size, run.face.family, run.face.bold, run.face.italic)


def _draw(group: etree._Element, run: _Run, x: float, y: float, ink: str) -> None:
    if run.face.family == "music":
        found = glyphs.outline(ord(run.text))
        if found:
            scale = run.size / 1000
            path = etree.SubElement(group, f"{{{SVG}}}path", d=found[0], fill=ink)
            path.set("transform", f"translate({x:g},{y:g}) scale({scale:g},{-scale:g})")
        return
    if not run.text.strip():
        return
    lead = len(run.text) - len(run.text.lstrip())
    x += text_width(" " * lead, run.size, run.face.family, run.face.bold, run.face.italic)
    out = etree.SubElement(group, f"{{{SVG}}}text", x=f"{x:g}", y=f"{y:g}", fill=ink)
    out.set("font-family", run.face.family)
    out.set("font-size", f"{run.size:g}")
    if run.face.bold:
        out.set("font-weight", "bold")
    if run.face.italic:
        out.set("font-style", "italic")
    out.text = run.text.strip()


def _set_marks(
    body: etree._Element,
    marks: Sequence[FingerMark],
    lines: Sequence[float],
    ink: str,
    paper: str | None,
) -> float:
    """Draw the finger marks; returns how far down they reach."""
    page = next((g for g in body.iter(f"{{{SVG}}}g") if g.get("class") == "page-margin"), None)
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
                group, f"{{{SVG}}}rect", x=f"{box.left:g}", y=f"{box.top:g}",
                width=f"{box.right - box.left:g}", height=f"{box.bottom - box.top:g}", fill=paper,
            )
        right = one.kind == "right"
        face = Face(SERIF, bold=True, italic=True) if right else Face(SANS, bold=True)
        _draw(group, _Run(one.mark.text, one.size, face), one.x, one.y, ink)
        low = max(low, one.box.bottom + dy + 60.0)
    return low


def _shift(page: etree._Element) -> tuple[float, float]:
    inside = page.get("transform").removeprefix("translate(").rstrip(")")
    dx, dy = (float(v) for v in inside.split(","))
    return dx, dy


def _circle(group: etree._Element, number: str, x: float, y: float, ink: str) -> None:
    """A number in a ring: the teacher's note of that number."""
    radius = 215.0
    ring = etree.SubElement(group, f"{{{SVG}}}circle", cx=f"{x + radius:g}", r=f"{radius:g}")
    ring.set("cy", f"{y - 130:g}")
    ring.set("stroke", ink)
    ring.set("stroke-width", "24")
    ring.set("fill", "none")
    size = 310.0 if len(number) < 2 else 260.0
    width = text_width(number, size, SANS, True, False)
    _draw(group, _Run(number, size, Face(SANS, bold=True)), x + radius - width / 2,
          y - 130 + size * 0.36, ink)


def _bars(body: etree._Element) -> tuple[dict[str, tuple[float, float]], list[float]]:
    """Bar edges and heights of the lines of all staves from the top, in the root's units."""
    dx = dy = 0.0
    bars: dict[str, tuple[float, float]] = {}
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
            if edges:
                bars[element.get(_ID)] = (min(edges), max(edges))
    return bars, sorted(tops)
