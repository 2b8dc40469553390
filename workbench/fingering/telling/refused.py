"""The error for a fingering that was asked for and cannot be held."""

from __future__ import annotations

from workbench.fingering.telling.words import words
from workbench.language.fact import Fact
from workbench.music.errors import BadInput


class Refused(BadInput):
    """``why`` says what cannot be held; the words are made when the error is shown."""

    def __init__(self, why: Fact, /) -> None:
        super().__init__(why.kind)
        self.args = (why,)  # what copies and pickles are made with
        self.why = why

    def __str__(self) -> str:
        return words(self.why)
