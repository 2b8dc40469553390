"""Letters of the right hand under the tablature: those plucked together stand over one another."""

from __future__ import annotations

import pytest

from workbench.engraving.drawing.boxes import Box
from workbench.engraving.drawing.fingers import place
from workbench.engraving.mei.marked import FingerMark

LINES = [float(y) for y in range(0, 1500, 250)]


@pytest.mark.parametrize("start", range(0, 60, 6))
def test_figures_nearly_over_one_another_have_their_letters_in_rows(start) -> None:
    """A figure of two digits and one of one digit do not share their middle to the unit."""
    figures = [
        Box(start, 100.0, start + 240.0, 200.0, "note", "wide"),
        Box(start + 68.0, 600.0, start + 192.0, 700.0, "note", "narrow"),
        Box(start + 700.0, 600.0, start + 820.0, 700.0, "note", "next"),
    ]
    marks = [FingerMark(f"fr-{b.owner}", b.owner, "i", "right") for b in figures]
    found = {s.mark.target: s for s in place(marks, figures, LINES)}
    assert found["narrow"].y > found["wide"].y == found["next"].y
    assert not found["narrow"].box.overlap(found["wide"].box)
