"""Published guitar studies and what their editions print, read by other means than ours.

The studies stand in tests/data/guitar-editions with source and licence. What each file
prints is read here by music21, which shares nothing with our reader of fingerings.
"""

from __future__ import annotations

import json
from fractions import Fraction
from functools import cache
from pathlib import Path

import pytest

from workbench.arranging.arrange import arrange
from workbench.instrument.table import instrument
from workbench.music.reading.score import read_score

STUDIES = Path(__file__).parent.parent / "data" / "guitar-editions"
NAMES = sorted(path.stem for path in STUDIES.glob("*.mxl"))
FEW = ("sor-op60-01", "carcassi-op60-22", "sor-op35-no23")
GUITAR = instrument("guitar")


def rest_slow(names, few=FEW):
    """Names for parametrize; all but a few are slow."""
    return [n if n in few else pytest.param(n, marks=pytest.mark.slow) for n in names]


def file_prints(path):
    """(bar, onset, MIDI number): left fingers that stand at it in the file."""
    from music21 import converter

    found = {}
    for part in converter.parse(path).parts:
        for index, measure in enumerate(part.getElementsByClass("Measure")):
            for element in measure.recurse().notes:
                onset = Fraction(element.getOffsetInHierarchy(measure)).limit_denominator(65535)
                for mark in element.articulations:
                    if type(mark).__name__ == "Fingering":
                        for pitch in element.pitches:
                            key = (index, onset, pitch.midi)
                            found.setdefault(key, set()).add(int(mark.fingerNumber))
    return found


def laid_rows(name, places, prints=frozenset()):
    """The edition's marks as (bar, onset, MIDI number, finger, string), laid on ``places``, the
    (bar, onset, MIDI number) that begin in the score. Pickups and bars after one count their
    onsets in the list from another beginning: the shift at which most of a bar's rows stand on
    a note, those that the score prints there too (``prints``: place and finger) counted more,
    is theirs."""
    rows = json.loads((STUDIES / f"{name}.json").read_text(encoding="utf-8"))["notes"]
    out = []
    for bar in sorted({row[0] for row in rows}):
        mine = [(Fraction(onset), *rest) for at, onset, *rest in rows if at == bar]
        here = {(onset, midi) for at, onset, midi in places if at == bar}
        told = {(onset, midi, left) for at, onset, midi, left in prints if at == bar}
        shifts = {0} | {at - row[0] for row in mine for at, midi in here if midi == row[1]}

        def worth(shift, mine=mine, here=here, told=told):
            moved = [(row[0] + shift, *row[1:3]) for row in mine]
            return sum((x[:2] in here) + 2 * (x in told) for x in moved), -abs(shift)

        best = max(shifts, key=worth)
        out += [(bar, onset + best, *rest) for onset, *rest in mine]
    return out


def printed_rows(name):
    """The edition's marks, where the score file prints them: (bar, onset, MIDI, finger, string)."""
    rows = json.loads((STUDIES / f"{name}.json").read_text(encoding="utf-8"))["notes"]
    here = file_prints(STUDIES / f"{name}.mxl")
    for bar, onset, midi, left, string in rows:
        place = (bar, Fraction(onset), midi)
        if left is None or left in here.get(place, ()):
            yield (*place, left if left is None or left <= 4 else None, string)


@cache
def placed(name):
    piece = read_score(STUDIES / f"{name}.mxl", parts="all")
    return arrange(piece, GUITAR, transpose=0).piece


def missing(rows, piece, told, left_out):
    """Rows that are neither in ``told`` (note id to finger and string) nor named as left out."""
    held, named = {}, set()
    for n in piece.notes:
        place = (piece.bar_of[n.id], n.onset, n.midi)
        held.setdefault(place, []).append(told.get(n.id, (None, None)))
        if n.id in left_out:
            named.add(place)
    return [
        row
        for row in rows
        if row[:3] not in named
        and not any(
            row[3] in (None, left) and row[4] in (None, string)
            for left, string in held.get(row[:3], [])
        )
    ]
