"""The right hand plays the figures of the 120 arpeggios as they are taught.

The figures are from memory (see giuliani.py). The strings are given by the chord, so that
nothing but the right hand is asked.
"""

from __future__ import annotations

import pytest

from tests.fingering.giuliani import FIGURES, strokes_of, study
from workbench.fingering.frame import build_frame
from workbench.fingering.right import solve_right
from workbench.fingering.types import Settings
from workbench.fingering.weights import weights_for
from workbench.instrument.table import instrument

GUITAR = instrument("guitar")
#: Share of strokes of all figures that have the taught finger; 1 would be every one.
LEAST = 0.92


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
    """(our finger, taught finger) of every stroke, by figure."""
    found = {}
    for name, text in FIGURES:
        piece, pins, taught = study(text)
        strings = {pin.note: pin.string for pin in pins}
        right, _ = solve_right(
            build_frame(piece), strings, GUITAR.strings, piece.tempo,
            weights_for(Settings()).right, "i-m", {},
        )  # fmt: skip
        found[name] = [(right[note], finger) for note, finger in taught.items()]
    return found


def test_most_figures_are_played_as_taught(played):
    rows = [pair for pairs in played.values() for pair in pairs]
    same = sum(ours == taught for ours, taught in rows)
    other = [name for name, pairs in played.items() if any(a != b for a, b in pairs)]
    assert same >= LEAST * len(rows), f"{same} of {len(rows)}; otherwise: {', '.join(other)}"


def test_the_thumb_has_the_bass(played):
    bass = [(ours, taught) for pairs in played.values() for ours, taught in pairs if taught == "p"]
    assert sum(ours == "p" for ours, _ in bass) >= 0.98 * len(bass)
