"""Words of the engraving as plain text elements in the shipped fonts, one level deep.

Music signs inside text become outlines.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from lxml import etree

from workbench.engraving import ids
from workbench.engraving.app import SANS, SERIF, text_width
from workbench.engraving.drawing import glyphs

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


@dataclass
class Run:
    """Words in one face at one size."""

    text: str
    size: float
    face: Face


def own_ink(element: etree._Element) -> str | None:
    """The ink that a group around the element gives it; None for the common one."""
    for parent in element.iterancestors():
        if parent.get("data-ink"):
            return str(parent.get("data-ink"))
    return None


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


def set_text(text: etree._Element, ink: str) -> None:
    """Replace a text element by a group of plain one-level texts and outlines."""
    face, own = _face(text)
    inner = own_ink(text)
    if inner:  # the other voices' figures are told apart by their weight as well
        face, ink = replace(face, bold=False), inner
    x, y = float(text.get("x") or 0), float(text.get("y") or 0)
    anchor = text.get("text-anchor") or "start"
    runs: list[Run] = []
    for words, size, run_face, element in _runs(text, face, 0.0):
        for holder in (element, *element.iterancestors()):
            if holder is text:
                break
            anchor = holder.get("text-anchor") or anchor
            x = float(holder.get("x") or x)
            y = float(holder.get("y") or y)
        for part, music in _pieces(words):
            if music:
                shown = size * (0.82 if ids.is_tempo(own) else 1.0)
                runs.append(Run(part, shown, replace(run_face, family="music")))
            else:
                own_size = run_face.size if run_face.size else size * run_face.scale
                runs.append(Run(part, own_size, run_face))
    if ids.is_tempo(own):
        y -= 36.0  # clear of the time signature
    group = etree.Element(f"{{{SVG}}}g")
    widths = [_width(r) for r in runs]
    start = x - {"middle": sum(widths) / 2, "end": sum(widths)}.get(anchor, 0.0)
    numbers = ids.numbers_of_remarks(own)
    if numbers is not None:
        for place_in_row, number in enumerate(numbers):
            _sheet(group, number, start + 500.0 * place_in_row, y, ink)
    else:
        for run, width in zip(runs, widths, strict=True):
            draw(group, run, start, y, ink)
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


def _width(run: Run) -> float:
    if run.face.family == "music":
        found = glyphs.outline(ord(run.text))
        return found[1] * run.size / 1000 if found else 0.0
    return text_width(run.text, run.size, run.face.family, run.face.bold, run.face.italic)


def draw(group: etree._Element, run: Run, x: float, y: float, ink: str) -> None:
    """Write words at the baseline start ``x``, ``y``."""
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


def circle(group: etree._Element, x: float, y: float, radius: float, ink: str) -> None:
    """A ring around the point ``x``, ``y``: what stands in it is the number of a string."""
    ring = etree.SubElement(group, f"{{{SVG}}}circle", cx=f"{x:g}", cy=f"{y:g}", r=f"{radius:g}")
    ring.set("stroke", ink)
    ring.set("stroke-width", "18")
    ring.set("fill", "none")


def _sheet(group: etree._Element, number: str, x: float, y: float, ink: str) -> None:
    """A number on a small sheet of paper with a corner turned down: the teacher's note of
    that number. Circles are for strings, boxes for sections."""
    half, corner, middle = 215.0, 120.0, y - 130.0
    left, top, right, bottom = x, middle - half, x + 2 * half, middle + half
    fold = f"{right - corner:g},{top:g}"
    sheet = etree.SubElement(
        group,
        f"{{{SVG}}}path",
        d=f"M{left:g},{top:g} L{fold} L{right:g},{top + corner:g} L{right:g},{bottom:g} "
        f"L{left:g},{bottom:g} Z M{fold} L{right - corner:g},{top + corner:g} "
        f"L{right:g},{top + corner:g}",
    )
    sheet.set("stroke", ink)
    sheet.set("stroke-width", "24")
    sheet.set("stroke-linejoin", "round")
    sheet.set("fill", "none")
    size = 290.0 if len(number) < 2 else 240.0
    width = text_width(number, size, SANS, True, False)
    draw(
        group,
        Run(number, size, Face(SANS, bold=True)),
        x + half - 0.06 * half - width / 2,
        middle + size * 0.4,
        ink,
    )
