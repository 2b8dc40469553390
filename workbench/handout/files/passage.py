"""Some bars as a picture for the web: SVG with outlined text, or PNG."""

from __future__ import annotations

import struct
import zlib
from collections.abc import Sequence
from dataclasses import dataclass, replace
from pathlib import Path

from lxml import etree
from PySide6.QtCore import QPointF
from PySide6.QtGui import QImage, QPainter, QPainterPath

from workbench.engraving.app import ensure_gui, font, text_width
from workbench.engraving.drawing.breaks import MARGIN, plan
from workbench.engraving.drawing.flatten import SVG, Flat
from workbench.engraving.drawing.render import STAFF_HEIGHT, Engraver, SystemDrawing
from workbench.engraving.mei.document import to_mei
from workbench.engraving.options import MeiOptions
from workbench.engraving.paint import PaintedSystem
from workbench.fingering.types import Fingering
from workbench.handout.options import STAFF_MM
from workbench.instrument.table import instrument as instrument_of
from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.music.files import write_whole
from workbench.music.suffixes import PICTURES
from workbench.teaching.lessons.lesson import Lesson

INCH = 25.4  # millimetres
MOST_PIXELS = 20_000  # a side
_GAP = 260.0  # between systems, in engraving units
_DRAWN_AT = 1000
Systems = Sequence[tuple[Flat, int, int]]


@dataclass(frozen=True)
class PassageOptions:
    """``first`` and ``last`` are bar indices, inclusive. ``width_mm`` is the longest line;
    ``dpi`` the dots an inch of a PNG; ``transparent`` leaves out the white ground."""

    first: int
    last: int
    width_mm: float = 170.0
    dpi: int = 192
    transparent: bool = False

    def __post_init__(self) -> None:
        if not 0 <= self.first <= self.last:
            raise BadInput("The first bar comes after the last; choose them in order.")
        if not 50 <= self.width_mm <= 1000:
            raise BadInput("Choose a width of the picture from 50 to 1000 mm.")
        if not 36 <= self.dpi <= 1200:
            raise BadInput("Choose a resolution from 36 to 1200 dots an inch.")


@dataclass(frozen=True)
class PictureSize:
    """The size of a picture that was made: pixels for PNG, millimetres for SVG."""

    width: float
    height: float


def make_passage(
    lesson: Lesson, fingering: Fingering, path: str | Path, options: PassageOptions
) -> PictureSize:
    """Write bars of a lesson as a picture, in the format that the file's name asks for,
    whole or not at all.

    Raises BadInput for another ending, for bars that the piece does not have, or where
    the file cannot be written.
    """
    path = Path(path)
    suffix = path.suffix.lower()
    if suffix not in PICTURES:
        raise BadInput(
            "{path}: a picture is written as .svg or .png; end the name with one of them.",
            path=path,
        )
    systems = passage_systems(lesson, fingering, options)
    title = say("{title}, bars {first}–{last}", title=lesson.title,
                first=lesson.piece.bars[options.first].number,
                last=lesson.piece.bars[options.last].number)  # fmt: skip
    if suffix == ".svg":
        data, size = svg_bytes(systems, options, title)
    else:
        image = passage_image(systems, options)
        data, size = (
            png_bytes(image, options.dpi, title),
            PictureSize(image.width(), image.height()),
        )
    write_whole(path, data)
    return size


def passage_systems(lesson: Lesson, fingering: Fingering, options: PassageOptions) -> Systems:
    """The passage engraved in systems no wider than asked; each with its bars."""
    ensure_gui()
    piece = lesson.piece
    if options.last >= len(piece.bars):
        raise BadInput("The piece has {n} bars; choose others.", n=len(piece.bars))
    instrument = instrument_of(lesson.instrument, lesson.capo)
    line = options.width_mm / STAFF_MM * STAFF_HEIGHT
    engraver, shown = Engraver(), MeiOptions(first=options.first, last=options.last)
    part = replace(piece, bars=piece.bars[options.first : options.last + 1])
    widths = engraver.bar_widths(piece, fingering, instrument, MeiOptions())
    needed = sum(widths[bar.index] for bar in part.bars) + widths[-1] + MARGIN
    ground = None if options.transparent else "#ffffff"
    if needed <= line:
        mei = to_mei(piece, fingering, instrument, shown)
        flats = engraver.pages(mei, None, paper=ground)
        return [(flats[0], options.first, options.last)]
    breaks = plan(part, widths, line - MARGIN)
    mei = to_mei(piece, fingering, instrument, replace(shown, breaks=breaks))
    flats = engraver.pages(mei, line, paper=ground)
    starts = [options.first, *breaks]
    ends = [*(b - 1 for b in breaks), options.last]
    return list(zip(flats, starts, ends, strict=True))


def _extent(systems: Systems) -> tuple[float, float]:
    """Width and height in engraving units."""
    high = sum(flat.height for flat, _, _ in systems) + _GAP * (len(systems) - 1)
    return max(flat.width for flat, _, _ in systems), high


def passage_image(systems: Systems, options: PassageOptions) -> QImage:
    """The passage in pixels."""
    wide, high = _extent(systems)
    scale = STAFF_MM / STAFF_HEIGHT / INCH * options.dpi
    width, height = round(wide * scale), round(high * scale)
    if max(width, height) > MOST_PIXELS:
        raise BadInput(
            "The picture would be {width} by {height} pixels; choose fewer bars or a lower "
            "resolution.",
            width=width,
            height=height,
        )
    image = QImage(max(1, width), max(1, height), QImage.Format.Format_ARGB32)
    image.fill(0x00000000 if options.transparent else 0xFFFFFFFF)
    painter = QPainter(image)
    painter.setRenderHints(QPainter.RenderHint.Antialiasing | QPainter.RenderHint.TextAntialiasing)
    at = 0.0
    for flat, first, last in systems:
        PaintedSystem(SystemDrawing(flat, first, last)).paint(painter, QPointF(0, at), scale)
        at += (flat.height + _GAP) * scale
    painter.end()
    return image


def png_bytes(image: QImage, dpi: int, title: str) -> bytes:
    """The image as PNG (W3C PNG, ISO/IEC 15948), 8 bits a sample with alpha: the same
    bytes for the same picture, its resolution and title within."""
    picture = image.convertToFormat(QImage.Format.Format_RGBA8888)
    width, height = picture.width(), picture.height()
    pixels, step = bytes(picture.constBits()), picture.bytesPerLine()
    rows = b"".join(b"\x00" + pixels[step * y : step * y + 4 * width] for y in range(height))
    metre = round(dpi / INCH * 1000)

    def chunk(kind: bytes, body: bytes) -> bytes:
        check = zlib.crc32(kind + body)
        return struct.pack(">I", len(body)) + kind + body + struct.pack(">I", check)

    return (
        b"\x89PNG\r\n\x1a\n"
        + chunk(b"IHDR", struct.pack(">IIBBBBB", width, height, 8, 6, 0, 0, 0))
        + chunk(b"pHYs", struct.pack(">IIB", metre, metre, 1))
        + chunk(b"iTXt", b"Title\x00\x00\x00\x00\x00" + title.encode())
        + chunk(b"IDAT", zlib.compress(rows, 9))
        + chunk(b"IEND", b"")
    )


def svg_bytes(systems: Systems, options: PassageOptions, title: str) -> tuple[bytes, PictureSize]:
    """The passage as one SVG 1.1 drawing. Text is outlined, so that it looks the same where
    the fonts are not; what it says stands in the title and the labels."""
    wide, high = _extent(systems)
    unit = STAFF_MM / STAFF_HEIGHT
    root = etree.Element(
        f"{{{SVG}}}svg",
        {"width": f"{wide * unit:.2f}mm", "height": f"{high * unit:.2f}mm",
         "viewBox": f"0 0 {wide:g} {high:g}", "version": "1.1", "role": "img"},
        nsmap={None: SVG, "xlink": "http://www.w3.org/1999/xlink"},
    )  # fmt: skip
    etree.SubElement(root, f"{{{SVG}}}title").text = title
    signs = etree.SubElement(root, f"{{{SVG}}}defs")
    if not options.transparent:
        ground = {"width": f"{wide:g}", "height": f"{high:g}", "fill": "#ffffff"}
        etree.SubElement(root, f"{{{SVG}}}rect", ground)
    at, known = 0.0, set[str]()
    for flat, _, _ in systems:
        place = etree.SubElement(root, f"{{{SVG}}}g", {"transform": f"translate(0,{at:g})"})
        for child in list(etree.fromstring(flat.svg)):
            if child.tag == f"{{{SVG}}}defs":
                for sign in list(child):
                    if sign.get("id") not in known:
                        known.add(str(sign.get("id")))
                        signs.append(sign)
            else:
                place.append(child)
        at += flat.height + _GAP
    for text in list(root.iter(f"{{{SVG}}}text")):
        _outline(text)
    etree.cleanup_namespaces(root)
    data = etree.tostring(root, encoding="utf-8", xml_declaration=True)
    return bytes(data), PictureSize(round(wide * unit, 2), round(high * unit, 2))


def _outline(text: etree._Element) -> None:
    """A run of text as a path of its outlines, labelled with what it says."""
    said = "".join(text.itertext())
    size = float(text.get("font-size", "0"))
    bold, italic = text.get("font-weight") == "bold", text.get("font-style") == "italic"
    family = text.get("font-family", "")
    x, y = float(text.get("x", "0")), float(text.get("y", "0"))
    anchor = text.get("text-anchor", "start")
    if anchor != "start":
        width = text_width(said, size, family, bold, italic)
        x -= width / 2 if anchor == "middle" else width
    path = QPainterPath()
    path.addText(QPointF(0, 0), font(_DRAWN_AT, family, bold=bold, italic=italic), said)
    scale = size / _DRAWN_AT
    keep = {name: value for name, value in text.attrib.items()
            if name in ("fill", "id", "class", "transform")}  # fmt: skip
    outline = etree.Element(
        f"{{{SVG}}}path", {**keep, "d": _path(path, x, y, scale), "aria-label": said}
    )
    outline.tail = text.tail
    parent = text.getparent()
    assert parent is not None
    parent.replace(text, outline)


def _path(path: QPainterPath, x: float, y: float, scale: float) -> str:
    """SVG path data of a path drawn at ``scale`` from (x, y)."""
    out: list[str] = []
    curve = 0
    for at in range(path.elementCount()):
        element = path.elementAt(at)
        # the bindings give these two as attributes whose types they do not tell
        point = f"{x + float(element.x) * scale:.6g} {y + float(element.y) * scale:.6g}"
        if element.isMoveTo():
            out.append(("Z" if out else "") + "M" + point)
        elif element.isLineTo():
            out.append("L" + point)
        else:
            out.append(("C" if curve % 3 == 0 else " ") + point)
            curve += 1
    return "".join(out) + ("Z" if out else "")
