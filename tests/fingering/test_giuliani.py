"""The right hand plays the figures of the 120 arpeggios as they are taught.

The figures are from memory (see giuliani.py). The strings are given by the chord, so that
nothing but the right hand is asked.
"""

from __future__ import annotations

import pytest

from tests.fingering.giuliani import FIGURES, strokes_of
from tests.fingering.right_agreement import figures, summed

#: Share of strokes of all figures that have the taught finger; 1 would be every one.
LEAST = 0.99


def test_the_table_is_what_a_hand_can_do():
    assert len(FIGURES) >= 30 and len({text for _, text in FIGURES}) == len(FIGURES)
    for _, text in FIGURES:
        for bass in (5, 6):
            for stroke in strokes_of(text, bass):
                fingers, strings = zip(*sorted(stroke, key=lambda s: -s[1]), strict=True)
                assert len(set(strings)) == len(strings)
                assert list(fingers) == sorted(fingers, key="pima".index)


@pytest.fixture(scope="module")
def played():
    return figures()


def test_the_figures_are_played_as_taught(played):
    told, ours, _ = summed(played)
    other = [row.name for row in played if row.met(row.ours) < len(row.ours)]
    assert ours >= LEAST * told, f"{ours} of {told}; otherwise: {', '.join(other)}"


def test_the_thumb_has_the_bass(played):
    bass = [o for row in played for t, o in zip(row.told[0], row.ours, strict=True) if t == "p"]
    assert set(bass) == {"p"}
