"""How small the score is painted so that a system is seen whole."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from workbench.engraving.paint import ScoreImage

LEAST = 0.6  # pixels to an image unit; below it a system is rather scrolled
ANY = 9.0


class Whole:
    """Where large text or a low window leave no room for a system, the music is made smaller.
    ``scale`` is the most pixels to an image unit with which the tallest one is seen whole."""

    def __init__(self) -> None:
        self.scale = ANY
        self._height = 0.0

    def forget(self) -> None:
        """Another piece."""
        self.scale = ANY

    def fit(self, image: ScoreImage | None, height: float) -> None:
        """Follow the image and the height in pixels there is for it. The scale grows only where
        the height has changed: other widths have other systems, which might go on for ever."""
        placed = image.placed if image is not None else ()
        tallest = max((item.rect.height() for item in placed), default=0.0)
        if tallest:
            whole = max(LEAST, height / tallest)
            self.scale = whole if height != self._height else min(whole, self.scale)
            self._height = height
