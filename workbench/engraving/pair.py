"""The strip of an arrangement under its original, bar under bar."""

from __future__ import annotations

from collections.abc import Callable

from workbench.engraving import ids
from workbench.engraving.drawing.flatten import Tint
from workbench.engraving.mei.above import together
from workbench.engraving.options import MeiOptions
from workbench.engraving.strip import Strip
from workbench.music.model import Piece

Mark = Callable[[str], str | None]  # note id of the original to an ink of its own


class PairStrip(Strip):
    """Makes images of a piece with ``above`` set above it. In the drawing a note of the
    upper piece is called as by ``ids.over``; ``mark`` gives such notes an ink of their own,
    by their id in the piece itself."""

    def __init__(
        self, above: Piece, width: float, *, ink: str, tab: bool = True, mark: Mark | None = None
    ) -> None:
        options = MeiOptions(tab=tab, left=False, right=False, strings="", above=above)
        super().__init__(width, ink=ink, options=options)
        self._above, self._mark = above, mark
        self._pair: tuple[Piece, Piece] | None = None

    def _known(self, piece: Piece) -> Piece:
        if self._pair is None or self._pair[0] is not piece:
            self._pair = piece, together(piece, self._above)
        return self._pair[1]

    def _tint(self, piece: Piece) -> Tint | None:
        mark = self._mark
        if mark is None:
            return None

        def tint(element_id: str) -> str | None:
            note = ids.under(element_id)
            return None if note is None else mark(note) or mark(ids.whole(note))

        return tint
