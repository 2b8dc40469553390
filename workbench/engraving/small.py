"""One bar alone and small, as a picture beside its name: its tablature, or its staff.

Clef, key and marks are left out: what is wanted is to know the bar by sight.
"""

from __future__ import annotations

from lxml import etree
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QImage, QPainter

from workbench.engraving.app import ensure_gui
from workbench.engraving.drawing.render import Engraver, SystemDrawing
from workbench.engraving.mei.document import to_mei
from workbench.engraving.mei.marked import Marked
from workbench.engraving.mei.tree import MEI
from workbench.engraving.options import TABLATURE, MeiOptions, SmallLook
from workbench.engraving.paint import PaintedSystem
from workbench.fingering.types import Audit, FingeredBar, Fingering
from workbench.instrument.model import Instrument
from workbench.music.model import Piece

SCALE = 0.031  # picture units an engraving unit where there is room: figures of 10 units
EDGE = 190.0  # engraving units kept above and below the outer lines of tablature


class SmallBars:
    """Draws bars of any piece. Holds an engraver: use it from one thread at a time."""

    def __init__(self) -> None:
        ensure_gui()
        self._engraver = Engraver()

    def draw(
        self,
        piece: Piece,
        index: int,
        hands: FingeredBar | None,
        instrument: Instrument,
        look: SmallLook,
    ) -> QImage:
        """The written bar ``index``; its staff where there is no tablature to show."""
        placed = hands is not None and any(n.string is not None for n in hands.notes)
        tab = look.kind == TABLATURE and placed
        nothing = Audit(0, 0, 1.0)
        fingering = None if hands is None else Fingering(0, False, (hands,), nothing)
        options = MeiOptions(
            tab=tab, left=False, right=False, chords=False, tempo=False, first=index, last=index
        )
        mei = to_mei(piece, fingering, instrument, options)
        flat = self._engraver.pages(_one_staff(mei, "2" if tab else "1"), None, look.ink)[0]
        left, right = flat.bars.get(index, (0.0, flat.width))
        box = QRectF(left, 0.0, right - left, flat.height)
        if tab and flat.lines:
            box.setTop(flat.lines[0] - EDGE)
            box.setBottom(flat.lines[-1] + EDGE)
        return _picture(PaintedSystem(SystemDrawing(flat, index, index)), box, look)

    def whole(
        self,
        piece: Piece,
        index: int,
        hands: FingeredBar,
        instrument: Instrument,
        look: SmallLook,
    ) -> QImage:
        """The written bar ``index`` with staff, tablature and both hands' fingers."""
        fingering = Fingering(0, False, (hands,), Audit(0, 0, 1.0))
        options = MeiOptions(chords=False, tempo=False, first=index, last=index)
        mei = to_mei(piece, fingering, instrument, options)
        flat = self._engraver.pages(mei, None, look.ink)[0]
        box = QRectF(0.0, 0.0, flat.width, flat.height)
        return _picture(PaintedSystem(SystemDrawing(flat, index, index)), box, look)


def _one_staff(marked: Marked, number: str) -> Marked:
    """The document with one of its staves, without clef, key and whatever hangs on notes."""
    root = etree.fromstring(marked.mei.encode("utf-8"))
    for tag in ("staffDef", "staff"):
        for found in list(root.iter(f"{{{MEI}}}{tag}")):
            if found.get("n") != number:
                found.getparent().remove(found)
    for group in root.iter(f"{{{MEI}}}staffGrp"):
        group.attrib.pop("symbol", None)
    for measure in root.iter(f"{{{MEI}}}measure"):
        measure.attrib.pop("n", None)
        for child in list(measure):
            if child.tag != f"{{{MEI}}}staff" and (number == "2" or not _between(child)):
                measure.remove(child)
    for tag in ("keySig", "meterSig"):
        for found in list(root.iter(f"{{{MEI}}}{tag}")):
            found.getparent().remove(found)
    for ending in root.iter(f"{{{MEI}}}ending"):  # its number stands beside the picture
        ending.tag = f"{{{MEI}}}section"
        ending.attrib.clear()
    for clef in root.iter(f"{{{MEI}}}clef"):
        clef.set("visible", "false")
    ties = () if number == "2" else tuple(tie for tie in marked.ties if tie.incoming)
    return Marked(etree.tostring(root, encoding="unicode"), (), ties)


def _between(child: etree._Element) -> bool:
    return child.tag in (f"{{{MEI}}}tie", f"{{{MEI}}}slur")


def _picture(system: PaintedSystem, box: QRectF, look: SmallLook) -> QImage:
    """The part of a system that lies in ``box``, as large as it may be."""
    scale = min(
        SCALE * look.zoom, look.width / max(1.0, box.width()), look.height / max(1.0, box.height())
    )
    wide, tall = box.width() * scale * look.ratio, box.height() * scale * look.ratio
    clear = QImage.Format.Format_ARGB32_Premultiplied
    image = QImage(max(1, round(wide)), max(1, round(tall)), clear)
    image.fill(Qt.GlobalColor.transparent)
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    system.paint(painter, QPointF(-box.left(), -box.top()) * scale * look.ratio, scale * look.ratio)
    painter.end()
    image.setDevicePixelRatio(look.ratio)
    return image
