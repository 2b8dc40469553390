"""Results kept by the identity of what was given."""

from __future__ import annotations

from dataclasses import replace

from tests.fingering.build import piece
from workbench.language import speech
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


def test_another_language_is_another_answer():
    @remembered
    def spoken(music):
        return speech.chosen()

    music = piece("C4:2")
    assert spoken(music) == "en"
    speech.choose("de")
    assert spoken(music) == "de"
    speech.choose("en")
    assert spoken(music) == "en"
