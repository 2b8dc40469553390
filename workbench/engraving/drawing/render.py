"""From MEI to flattened drawings of systems."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from pathlib import Path

import verovio

from workbench.engraving.drawing.breaks import line_breaks
from workbench.engraving.drawing.flatten import Flat, Tint, flatten
from workbench.engraving.mei.document import to_mei
from workbench.engraving.mei.marked import Marked
from workbench.engraving.options import MeiOptions
from workbench.fingering.types import Fingering
from workbench.instrument.model import Instrument
from workbench.music.model import Piece

#: Engraving units: ten to a unit of Verovio's page, 180 to a staff space.
UNITS = 10
STAFF_HEIGHT = 720.0
_MAX_WIDTH = 100000

_BASE = {
    "header": "none",
    "footer": "none",
    "adjustPageHeight": True,
    "pageHeight": 60000,
    "pageMarginTop": 20,
    "pageMarginBottom": 20,
    "pageMarginLeft": 25,
    "pageMarginRight": 10,
    "svgFormatRaw": True,
    "outputFormatRaw": True,
    "xmlIdSeed": 1,
    "removeIds": False,
    "font": "Leipzig",
    "spacingLinear": 0.27,
    "spacingNonLinear": 0.6,
    "spacingStaff": 6,
    "spacingBracketGroup": 6,
    "spacingBraceGroup": 6,
    "leftMarginNote": 2.0,
    "leftMarginAccid": 2.0,
    "staffLineWidth": 0.17,
    "minLastJustification": 0.6,
    "barLineWidth": 0.3,
    "harmDist": 1.2,
}


@dataclass(frozen=True)
class SystemDrawing:
    """One system: its drawing and the bars (indices, inclusive) it holds."""

    flat: Flat
    first: int
    last: int


def _find_fonts() -> None:
    """Verovio keeps the place of its music fonts for each thread alone, and sets it
    only in the thread that loads it first."""
    verovio.setDefaultResourcePath(str(Path(verovio.__file__).parent / "data"))


class Engraver:
    """Draws pieces. Holds one Verovio toolkit; use it from one thread at a time."""

    def __init__(self) -> None:
        _find_fonts()
        verovio.enableLog(verovio.LOG_OFF)
        self._kit = verovio.toolkit()

    def pages(
        self,
        marked: Marked,
        width: float | None,
        ink: str = "#000000",
        paper: str | None = None,
        *,
        fingers: bool = True,
        tint: Tint | None = None,
    ) -> list[Flat]:
        """Drawings of a document, one for each ``pb``. ``width`` in engraving
        units; None lets everything run on in one line. Without ``fingers`` the finger
        marks are left out. ``tint`` gives elements their own ink."""
        _find_fonts()
        options: dict[str, object] = dict(_BASE)
        if width is None:
            options |= {"breaks": "none", "adjustPageWidth": True, "pageWidth": _MAX_WIDTH}
        else:
            page = max(100, min(_MAX_WIDTH, round(width / UNITS)))
            options |= {"breaks": "encoded", "adjustPageWidth": False, "pageWidth": page}
        self._kit.setOptions(options)
        if not self._kit.loadData(marked.mei):
            raise RuntimeError("Verovio refused the MEI document")
        return [
            flatten(
                self._kit.renderToSVG(number),
                ink,
                marked.fingers if fingers else (),
                paper,
                marked.ties,
                tint,
            )
            for number in range(1, self._kit.getPageCount() + 1)
        ]

    def bar_widths(
        self,
        piece: Piece,
        fingering: Fingering | None,
        instrument: Instrument | None,
        options: MeiOptions,
        progress: Callable[[float], None] | None = None,
    ) -> dict[int, float]:
        """Natural width of every bar, without clef and key; the first bar's measure
        holds them, so the head's width is given under -1. ``progress`` takes the share
        that is done, and may raise to call it off."""
        widths: dict[int, float] = {}
        head = 0.0
        indices = [b.index for b in piece.bars]
        for start in range(0, len(indices), 24):
            if progress is not None:
                progress(start / len(indices))
            part = indices[start : start + 24]
            mei = to_mei(
                piece,
                fingering,
                instrument,
                replace(options, first=part[0], last=part[-1], breaks=()),
            )
            flat = self.pages(mei, None, fingers=False)[0]
            for index in part:
                left, right = flat.bars.get(index, (0.0, 1500.0))
                widths[index] = right - left
            signs = abs(piece.bars[part[0]].key.fifths)
            clef = 900.0 + 190.0 * signs + (450.0 if start == 0 else 0.0)
            widths[part[0]] = max(600.0, widths[part[0]] - clef)
            head = max(head, 900.0 + 190.0 * signs)
        widths[-1] = head
        return widths

    def breaks(
        self,
        piece: Piece,
        fingering: Fingering | None,
        instrument: Instrument | None,
        options: MeiOptions,
        width: float,
        progress: Callable[[float], None] | None = None,
    ) -> tuple[int, ...]:
        """Bar indices that begin a system, so that systems of ``width`` are evenly full."""
        widths = self.bar_widths(piece, fingering, instrument, options, progress)
        return line_breaks(piece, widths, width)

    def systems(
        self,
        piece: Piece,
        fingering: Fingering | None,
        instrument: Instrument | None,
        options: MeiOptions,
        width: float,
        ink: str = "#000000",
        paper: str | None = None,
    ) -> list[SystemDrawing]:
        """The whole piece in systems of ``width`` engraving units."""
        breaks = options.breaks or self.breaks(piece, fingering, instrument, options, width)
        mei = to_mei(piece, fingering, instrument, replace(options, breaks=breaks))
        starts = [piece.bars[0].index, *breaks]
        ends = [*(b - 1 for b in breaks), piece.bars[-1].index]
        flats = self.pages(mei, width, ink, paper)
        return [SystemDrawing(f, a, b) for f, a, b in zip(flats, starts, ends, strict=True)]
