"""Which instrument a score is for."""

from __future__ import annotations

from fractions import Fraction
from pathlib import Path

import pytest

from workbench.instrument.suiting import suited
from workbench.music.model import Bar, Note, PartInfo, Piece, Pitch, WrittenFingers
from workbench.music.reading.score import read_score

STUDIES = Path(__file__).parents[1] / "data" / "guitar-editions"
UKULELE_RANGE, BELOW_IT = (60, 72), (45, 72)


def piece(title="", name="", midis=UKULELE_RANGE, printed=False):
    notes = tuple(
        Note(f"n{k}", Fraction(k), Fraction(1), Pitch("CCDDEFFGGAAB"[m % 12], 0, m // 12 - 1))
        for k, m in enumerate(midis)
    )
    bar = Bar(index=0, number="1", time_signature=(4, 4), length=Fraction(4), notes=notes)
    written = (WrittenFingers("n0", left=2),) if printed else ()
    parts = (PartInfo(1, name, len(notes)),)
    return Piece(title, (bar,), parts=parts, written=written)


@pytest.mark.parametrize(
    ("made", "usual", "found"),
    [
        (piece(name="Gitarre"), "ukulele", "guitar"),
        (piece("24 Studies for the Guitar", "Part 1"), "ukulele", "guitar"),
        (piece("Guitar songs", "Ukulele"), "guitar", "ukulele"),  # the part's name says more
        (piece(name="Ukulele"), "ukulele-low-g", "ukulele-low-g"),
        (piece(name="Guitar"), "custom:D2,A2,D3,G3,B3,E4@650", "custom:D2,A2,D3,G3,B3,E4@650"),
        (piece(midis=BELOW_IT, printed=True), "ukulele", "guitar"),
        (piece(midis=BELOW_IT), "ukulele", "ukulele"),
        (piece(midis=(30, 60), printed=True), "ukulele", "ukulele"),
        (piece(printed=True), "ukulele", "ukulele"),
        (piece(), "mandolin", "mandolin"),
        (Piece("Empty", ()), "ukulele", "ukulele"),
    ],
)
def test_an_instrument_is_told_by_name_or_by_printed_fingers(made, usual, found):
    assert suited(made, usual) == found


@pytest.mark.parametrize("name", ["sor-op60-01", "sor-op45n03"])
def test_published_guitar_studies_are_taken_for_the_guitar(name):
    """Their files name no instrument."""
    assert suited(read_score(STUDIES / f"{name}.mxl"), "ukulele") == "guitar"
