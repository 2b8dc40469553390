"""Results kept by the identity of what was given."""

from __future__ import annotations

from dataclasses import replace

from tests.fingering.build import piece
from workbench.language import speech
from workbench.language.message import message
from workbench.music.remembered import KEPT, remembered


def test_the_very_same_piece_is_looked_at_once():
    asked = []

    @remembered
    def bars(music, times=1):
        asked.append(music)
        return len(music.bars) * times

    music = piece("C4:2", "E4:2")
    assert (bars(music), bars(music), len(asked)) == (2, 2, 1)
    assert (bars(music, 3), bars(music, times=3), len(asked)) == (6, 6, 3)
    assert bars(replace(music, bars=music.bars[:1])) == 1  # another piece, another answer
    for _ in range(KEPT):
        bars(replace(music))
    before = len(asked)
    bars(music)
    assert len(asked) == before + 1  # only the last ones are kept


def test_what_is_remembered_is_said_in_the_language_of_the_moment():
    @remembered
    def found(music):
        return message("bar {bar}", bar=len(music.bars))

    music = piece("C4:2")
    assert str(found(music)) == "bar 1"
    speech.choose("de")
    assert str(found(music)) == "Takt 1"
