"""The bars that differ most from what scores print, side by side, as a web page."""

from __future__ import annotations

import base64
from collections.abc import Callable, Sequence
from html import escape
from pathlib import Path
from typing import TYPE_CHECKING

from workbench.language.speech import chosen, say

if TYPE_CHECKING:
    from workbench.engraving.small import SmallBars
    from workbench.fingering.learning.disagreement import BarMet
    from workbench.fingering.types import FingeredBar
    from workbench.instrument.model import Hand, Instrument
    from workbench.music.model import Piece

BARS = 20
WIDE, TALL = 620, 300  # pixels a picture may take
STYLE = """
body { font: 16px/1.5 serif; margin: 2em auto; max-width: 84em; padding: 0 1em; }
section { border-top: 1px solid; margin-top: 1.5em; }
.pair { display: flex; flex-wrap: wrap; gap: 2em; }
figure { margin: 0; } figcaption { font-style: italic; }
img { max-width: 100%; background: white; }
"""


def write_report(
    path: Path,
    pieces: Sequence[Piece],
    on: Instrument,
    of: Hand,
    progress: Callable[[int, int], None] | None = None,
) -> tuple[BarMet, ...]:
    """Write the page; the bars on it, worst first. Left: as printed, all else solved around
    it; right: the engine's own first choice."""
    from workbench.engraving.small import SmallBars
    from workbench.fingering.engine import solve
    from workbench.fingering.learning.disagreement import worst_bars
    from workbench.fingering.learning.observed import chain
    from workbench.fingering.pins.printed import printed_pins
    from workbench.fingering.types import Settings
    from workbench.fingering.weights import schools, weights_for
    from workbench.music.files import whole_file

    weights = weights_for(Settings(), on.scale_mm).left
    other = {k: weights_for(Settings(school=k), on.scale_mm).left for k in schools()}
    chains = []
    for i, piece in enumerate(pieces):
        if progress:
            progress(i, 2 * len(pieces))
        chains.append(chain(piece, piece.written, on, of, weights))
    worst = worst_bars(chains, weights, other, BARS)
    small = SmallBars()
    parts: dict[int, str] = {}
    wanted = sorted({row.piece for row in worst})
    for done, at in enumerate(wanted):
        if progress:
            progress(len(pieces) + done * len(pieces) // len(wanted), 2 * len(pieces))
        piece = pieces[at]
        pins = printed_pins(piece, on, of).pins
        printed, ours = solve(piece, on, of, pins=pins), solve(piece, on, of)
        for rank, row in enumerate(worst):
            if row.piece == at:
                pictures = [
                    _picture(small, piece, row.bar, f.bars[row.bar], on) for f in (printed, ours)
                ]
                parts[rank] = _section(piece, row, pictures)
    page = _page([parts[i] for i in range(len(worst))])
    with whole_file(path) as part:
        part.write_text(page, encoding="utf-8")
    return worst


def _picture(small: SmallBars, piece: Piece, bar: int, hands: FingeredBar, on: Instrument) -> str:
    from PySide6.QtCore import QBuffer, QByteArray, QIODevice

    from workbench.engraving.options import STAFF, SmallLook

    look = SmallLook(STAFF, "#000000", WIDE, TALL, ratio=2.0, zoom=1.6)
    image = small.whole(piece, bar, hands, on, look)
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    image.save(buffer, "PNG")  # type: ignore[call-overload]
    coded = base64.b64encode(data.data()).decode("ascii")
    return f'<img width="{image.width() // 2}" src="data:image/png;base64,{coded}"'


def _section(piece: Piece, row: BarMet, pictures: Sequence[str]) -> str:
    number = piece.bars[row.bar].number
    head = say("{title}, bar {number}", title=piece.title, number=number)
    words = say("{met} of {printed} printed fingers met.", met=row.met, printed=row.printed)
    if row.schools and row.schools[0][1] > row.met:
        words += " " + say(
            "{school} meets {met}.", school=_title(row.schools[0][0]), met=row.schools[0][1]
        )
    captions = (say("as printed"), say("the first choice"))
    figures = "".join(
        f'<figure>{image} alt="{escape(head)}: {escape(caption)}">'
        f"<figcaption>{escape(caption)}</figcaption></figure>"
        for image, caption in zip(pictures, captions, strict=True)
    )
    return (
        f"<section><h2>{escape(head)}</h2><p>{escape(words)}</p>"
        f'<div class="pair">{figures}</div></section>'
    )


def _title(school: str) -> str:
    from workbench.fingering.weights import schools

    return say(schools()[school][0])


def _page(sections: Sequence[str]) -> str:
    title = escape(say("Bars that differ most from the print"))
    return (
        f'<!DOCTYPE html>\n<html lang="{chosen()}"><head><meta charset="utf-8">'
        f"<title>{title}</title><style>{STYLE}</style></head>\n"
        f"<body><h1>{title}</h1>\n" + "\n".join(sections) + "\n</body></html>\n"
    )
